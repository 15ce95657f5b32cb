"""What is said about sealed copies."""

from __future__ import annotations

from hearthkey.core.sealed import Contents, CopyNote
from hearthkey.core.sentences.diary import day


def sealed(note: CopyNote) -> str:
    """A copy was made."""
    return f"A sealed copy was written to {note.place} as {note.name}."


def tried(contents: Contents, behind: int) -> str:
    """A copy was opened and found whole."""
    since = (
        "Nothing was done since."
        if behind == 0
        else f"{behind} {'entry' if behind == 1 else 'entries'} of the diary came later."
    )
    return f"The sealed copy of {day(contents.made)} was opened, and everything in it is whole and fits. {since}"


def restored(contents: Contents) -> str:
    """A household was brought back."""
    return (
        f"{contents.household} was brought back from the sealed copy of {day(contents.made)}: "
        f"{contents.passes} {'pass' if contents.passes == 1 else 'passes'}, "
        f"{len(contents.withdrawn)} on the revocation list."
    )


def restoring(contents: Contents, waiting: int) -> str:
    """What bringing a household back would do."""
    lost = (
        ""
        if waiting == 0
        else f" {waiting} {'bundle that waits has' if waiting == 1 else 'bundles that wait have'} to be made anew: "
        "their keys are in no copy."
    )
    return (
        f"{contents.household} comes back as it was on {day(contents.made)}. What was done later is not here: who was "
        f"stopped after that is taken over from the gateway at the first delivery.{lost}"
    )
