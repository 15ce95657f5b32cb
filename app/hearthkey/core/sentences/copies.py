"""What is said of copies that left: where each is, what can be said of it, and what became of it."""

from __future__ import annotations

from hearthkey.core.copies import Copy, CopyWay, Found, Standing, Told
from hearthkey.core.passes import Pass
from hearthkey.core.phrases import Listing, Phrase
from hearthkey.core.revocation import Reason
from hearthkey.core.sentences.diary import day
from hearthkey.core.sentences.sentence import Sentence
from hearthkey.core.sentences.words import FORMS

_TEMPLATE = "template:"

_MADE = {
    CopyWay.FOLDER: "{form}, in the folder {place}",
    CopyWay.STICK: "{form}, on the stick “{place}”",
    CopyWay.TICKET: "{form}, picked up by {place}",
    CopyWay.DRAG: "{form}, dragged out of the window; where to, the desktop does not say",
    CopyWay.SCREEN: "{form}, shown on this screen",
    CopyWay.OTHER: "{form}, in a way that is not known here",
}
_PERHAPS = {
    CopyWay.FOLDER: "{form}, perhaps in the folder {place}",
    CopyWay.STICK: "{form}, perhaps on the stick “{place}”",
    CopyWay.TICKET: "{form}, offered for pick-up; whether a phone got it is not known",
    CopyWay.DRAG: "{form}, perhaps dragged out of the window",
    CopyWay.OTHER: "{form}, perhaps, in a way that is not known here",
}
FLASH = Sentence(
    "Deleting takes the file’s name away. A stick may keep what was in it until something else is written there; that "
    "stays under the bundle’s passphrase.",
    {},
)
"""Why nothing is overwritten: flash memory puts new data elsewhere."""

FLASH_OPEN = Sentence(
    "Deleting takes the file’s name away. A stick may keep what was in it until something else is written there. "
    "If it holds a secret without a passphrase, keep the stick or destroy it.",
    {},
)
"""The same for a file of an own template, which need not be under the passphrase."""

_FOUND = {
    Found.OURS: "It is still there, just as it was written.",
    Found.PARTLY: "A part of it is still there, just as it was written.",
    Found.CHANGED: "Something else of that name is there now. It is left alone; look at it yourself.",
    Found.GONE: "It is not there any more.",
    Found.AWAY: "The place cannot be reached now. If it is a stick, plug it in.",
    Found.ELSEWHERE: "Where it is now cannot be looked at from here.",
}


def form(one: Copy) -> Sentence:
    """What it is."""
    if one.form.startswith(_TEMPLATE):
        return Sentence("your own “{name}”", {"name": one.form.removeprefix(_TEMPLATE)})
    parts = [FORMS.get(part, part) for part in one.form.split("+")]
    if len(parts) == 1:
        return Sentence(parts[0], {})
    return Sentence("one of {forms}", {"forms": Listing(Phrase(part) for part in parts)})


def described(one: Told, form_words: str) -> Sentence:
    """What it is, and where it is or may be.

    Args:
        form_words: what `form` says, in the language of whoever reads it.
    """
    table = _PERHAPS if one.standing is Standing.PERHAPS else _MADE
    return Sentence(table[one.copy.way], {"form": form_words, "place": one.copy.place})


def standing(one: Told) -> Sentence:
    """What can be said of it now."""
    if one.standing is Standing.TIDIED and one.copy.tidied is not None:
        return Sentence("gone since {day}", {"day": day(one.copy.tidied)})
    if one.standing is Standing.HARMLESS:
        revoked = one.of.reason not in {None, Reason.CERTIFICATE_HOLD}
        since = one.of.since if revoked and one.of.since is not None else one.of.not_after
        words = "opens nothing: revoked on {day}" if revoked else "opens nothing: the pass ended on {day}"
        return Sentence(words, {"day": day(since)})
    if one.standing is Standing.SHOWN:
        return Sentence("left no file here; a photo of it still needs the passphrase", {})
    if one.standing is Standing.PERHAPS:
        return Sentence("not known whether it left", {})
    return Sentence("not known to be gone", {})


def found(what: Found) -> Sentence:
    """What a look found."""
    return Sentence(_FOUND[what], {})


def on_flash(one: Copy) -> Sentence:
    """What deleting does and does not do."""
    return FLASH_OPEN if one.form.startswith(_TEMPLATE) else FLASH


def _which(one: Told) -> dict[str, object]:
    what = described(one, Phrase(*form(one.copy)))
    return {"title": one.of.title, "day": day(one.copy.made), "what": Phrase(*what)}


def shown(chosen: Pass) -> Phrase:
    """For the diary: codes came to the screen."""
    return Phrase("The codes of {title} were rehearsed and shown on the screen.", {"title": chosen.title})


def said_gone(one: Told) -> Phrase:
    """For the diary: the householder says so."""
    return Phrase("The copy of {title} from {day} ({what}) is gone, as was said here.", _which(one))


def deleted(one: Told, count: int) -> Phrase:
    """For the diary: the app deleted it, or found it gone."""
    if count:
        return Phrase("The copy of {title} from {day} ({what}) was deleted here.", _which(one))
    return Phrase("The copy of {title} from {day} ({what}) was looked for and is not there any more.", _which(one))


def not_gone(one: Told) -> Phrase:
    """For the diary: it was taken back."""
    return Phrase("The copy of {title} from {day} ({what}) is not gone after all.", _which(one))
