"""What is said about the household's key on paper."""

from __future__ import annotations

from hearthkey.core.paper_contents import PaperContents
from hearthkey.core.sentences.diary import day


def printed(place: str) -> str:
    """The paper was made."""
    if place:
        return f"The household’s key was put on paper, as {place}."
    return "The household’s key was put on paper, at the printer."


def tried(contents: PaperContents, *, still: bool) -> str:
    """A paper was read and its key opened."""
    if still:
        return (
            f"The paper of {day(contents.made)} was read whole, its key opens, and the settings on it are those of "
            "today."
        )
    return (
        f"The paper of {day(contents.made)} was read whole, and its key opens. The settings have changed since: a new "
        "paper saves the work of changing them once more."
    )


def restoring(contents: PaperContents) -> str:
    """What bringing a household back from paper would do."""
    return (
        f"{contents.household.certified_name} comes back with its key and its settings as they were on "
        f"{day(contents.made)}, and the gateway gets a new certificate. People and devices are not on paper: "
        f"{_living(contents.living)}, and each needs a new one from here. Who was stopped is taken over from the "
        "gateway at the first delivery."
    )


def _living(count: int) -> str:
    """Passes that nobody here knows any more."""
    if count == 0:
        return "no pass was in use then"
    if count == 1:
        return "the one pass that was in use then gets in until it ends"
    return f"the {count} passes that were in use then get in until they end"


def restored(contents: PaperContents) -> str:
    """A household was brought back from paper."""
    return (
        f"{contents.household.certified_name} was brought back from the paper of {day(contents.made)}: the key, the "
        f"settings, and {_withdrawn(len(contents.withdrawn))}."
    )


def _withdrawn(count: int) -> str:
    if count == 0:
        return "nobody on the revocation list"
    return f"{count} {'pass' if count == 1 else 'passes'} on the revocation list"
