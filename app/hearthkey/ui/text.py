"""Sentences of the core in the language of the desktop, with ways on that the window has."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication

from hearthkey.core.errors import HearthkeyError
from hearthkey.core.network import Caution
from hearthkey.core.phrases import Listing, Moment, Phrase, Polyglot, row
from hearthkey.core.sentences import cautions, errors
from hearthkey.core.sentences.sentence import UNKNOWN, Sentence, shown
from hearthkey.core.sentences.words import FIXED
from hearthkey.ui.dates import when
from hearthkey.ui.languages import spoken_here

CONTEXT = "sentences"
"""The translation context of every template in `core.sentences`."""
FIXED_CONTEXT = "words"
"""The translation context of words that a fact is one of."""

_HERE = {
    "no-household": "Found one first.",
    "device-exists": "Give this one a name of its own, or replace the pass of the other.",
    "device-revoked": "Give this one a name of its own, or give the old one a new pass.",
    "device-unknown": "The sheet shows all of them.",
    "device-ambiguous": "Choose it on the sheet.",
    "pass-unknown": "The sheet shows all of them.",
    "pass-not-alive": "Give it a new pass.",
    "pass-handed-over": "If the bundle was lost, replace the pass.",
    "passphrase-lost": "Replace the pass.",
    "already-stopped": "Let it back in, or revoke it for good.",
    "revoked-is-final": "Give it a new pass.",
    "keyring-absent": "Open the app in the desktop where the household lives.",
    "keyring-unsafe": "Set the desktop’s own keyring, then do it again.",
    "ticket-address-none": "Join the Wi-Fi at home, then do it again. A stick needs no network.",
    "ticket-closed": "Open another.",
    "addresses-unknown": "A stick needs no network.",
    "no-target": "Say it once, on the gateway’s page.",
    "host-key-unknown": "Say anew where the gateway is; its key is then shown to be compared.",
    "succession-underway": "The next step stands on this page.",
    "copy-none-at-gateway": "Bring one there, on the page of the sealed copies.",
    "succession-not-planned": "The next step stands on the page of the next CA.",
    "succession-none": "The plan stands on this page.",
    "succession-last-step": "When every device is through, put it away.",
    "succession-too-early": "Take the steps before that one.",
    "succession-tell": "Bring it the gateway pack and try one device, then go on.",
    "succession-no-way-back": "Go on with the next step.",
    "succession-cannot-vouch": "Choose “Lost”: devices go first. Then no pass of this CA can be stopped any more.",
    "clock-behind": "Set the clock, then do it again. If it is right now and was ahead then, say so on the household’s "
    "page.",
    "second-copy": "Close it first. Looking works meanwhile.",
}
"""By code: the way on in the window, where the common sentence names a command instead."""


def said(sentence: Sentence) -> str:
    """Translate the template and the facts, then fill them in."""
    template = QCoreApplication.translate(CONTEXT, sentence.template)
    return str(Sentence(template, {name: spoken(fact, name) for name, fact in sentence.facts.items()}))


def spoken(fact: object, name: str = "") -> str:
    """A fact in the language of the desktop.

    Args:
        name: what the sentence calls it; some facts have a fixed set of words.
    """
    if isinstance(fact, Sentence):
        return said(fact)
    if isinstance(fact, Phrase | Polyglot | Moment):
        return _remembered(fact)
    if isinstance(fact, tuple | list | Listing):
        return _listed(fact)
    if fact is None:
        return QCoreApplication.translate(CONTEXT, UNKNOWN)
    if name in FIXED and fact in FIXED[name]:
        return QCoreApplication.translate(FIXED_CONTEXT, str(fact))
    return shown(fact)


def _remembered(fact: Phrase | Polyglot | Moment) -> str:
    if isinstance(fact, Phrase):
        return said(Sentence(fact.template, fact.facts))
    return when(fact) if isinstance(fact, Moment) else fact.translations.get(spoken_here(), str(fact))


def _listed(things: tuple[object, ...] | list[object] | Listing) -> str:
    listing = things if isinstance(things, Listing) else Listing(spoken(one) for one in things)
    comma, joint = (QCoreApplication.translate(CONTEXT, one) for one in (listing.comma, listing.joint))
    return row(tuple(spoken(one) for one in listing.items), comma, joint)


def mended(error: HearthkeyError) -> str:
    """What an error means and what to do here, in one breath."""
    told = errors.say(error)
    here = _HERE.get(error.code)
    do = told.do if here is None else Sentence(here, error.facts)
    return f"{said(told.means)} {said(do)}".strip()


def caution(one: Caution) -> str:
    """A caution as a sentence."""
    return said(cautions.say(one))
