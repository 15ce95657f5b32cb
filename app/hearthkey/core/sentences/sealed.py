"""What is said about sealed copies."""

from __future__ import annotations

from hearthkey.core.phrases import Phrase, sentences
from hearthkey.core.sealed import Contents, CopyNote
from hearthkey.core.sentences.diary import day


def sealed(note: CopyNote) -> Phrase:
    """A copy was made."""
    return Phrase("A sealed copy was written to {place} as {name}.", {"place": note.place, "name": note.name})


def tried(contents: Contents, behind: int) -> str:
    """A copy was opened and found whole."""
    whole = Phrase(
        "The sealed copy of {day} was opened, and everything in it is whole and fits.", {"day": day(contents.made)}
    )
    return sentences((whole, _since(behind)))


def _since(behind: int) -> Phrase:
    if behind == 0:
        return Phrase("Nothing was done since.")
    if behind == 1:
        return Phrase("One entry of the diary came later.")
    return Phrase("{count} entries of the diary came later.", {"count": behind})


def restored(contents: Contents) -> str:
    """A household was brought back."""
    back = Phrase(
        "{household} was brought back from the sealed copy of {day}.",
        {"household": contents.household, "day": day(contents.made)},
    )
    numbers = {"passes": contents.passes, "withdrawn": len(contents.withdrawn)}
    return sentences((back, Phrase("Passes: {passes}; on the revocation list: {withdrawn}.", numbers)))


def restoring(contents: Contents, waiting: int) -> str:
    """What bringing a household back would do."""
    told = [
        Phrase(
            "{household} comes back as it was on {day}. What was done later is not here: who was stopped after that is "
            "taken over from the gateway at the first delivery.",
            {"household": contents.household, "day": day(contents.made)},
        )
    ]
    if waiting == 1:
        told.append(Phrase("One bundle that waits has to be made anew: its key is in no copy."))
    if waiting > 1:
        told.append(
            Phrase("{count} bundles that wait have to be made anew: their keys are in no copy.", {"count": waiting})
        )
    return sentences(told)
