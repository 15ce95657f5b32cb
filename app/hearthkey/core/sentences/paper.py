"""What is said about the household's key on paper."""

from __future__ import annotations

from datetime import datetime

from hearthkey.core.paper_contents import PaperContents
from hearthkey.core.phrases import Phrase
from hearthkey.core.sentences.diary import day


def printed(place: str) -> Phrase:
    """The paper was made."""
    if place:
        return Phrase("The household’s key was put on paper, as {place}.", {"place": place})
    return Phrase("The household’s key was put on paper, at the printer.")


def tried(contents: PaperContents, *, still: bool) -> Phrase:
    """A paper was read and its key opened."""
    facts = {"day": day(contents.made)}
    if still:
        return Phrase(
            "The paper of {day} was read whole, its key opens, and the settings on it are those of today.", facts
        )
    return Phrase(
        "The paper of {day} was read whole, and its key opens. The settings have changed since: a new paper saves the "
        "work of changing them once more.",
        facts,
    )


def tried_older(contents: PaperContents, *, since: datetime, until: datetime) -> Phrase:
    """A paper of the older CA was read while a newer one is there."""
    return Phrase(
        "The paper of {day} was read whole, and its key opens. It was made before the CA’s succession of {since}: its "
        "key is the older one, good until {until}. Keep it until the old CA has been put away, and print a newer one "
        "beside it.",
        {"day": day(contents.made), "since": day(since), "until": day(until)},
    )


def restoring(contents: PaperContents) -> Phrase:
    """What bringing a household back from paper would do."""
    return Phrase(
        "{household} comes back with its key and its settings as they were on {day}, and the gateway gets a new "
        "certificate. People and devices are not on paper: {living}, and each needs a new one from here. Who was "
        "stopped is taken over from the gateway at the first delivery.",
        {
            "household": contents.household.certified_name,
            "day": day(contents.made),
            "living": _living(contents.living),
        },
    )


def _living(count: int) -> Phrase:
    """Passes that nobody here knows any more."""
    if count == 0:
        return Phrase("no pass was in use then")
    if count == 1:
        return Phrase("the one pass that was in use then gets in until it ends")
    return Phrase("the {count} passes that were in use then get in until they end", {"count": count})


def restored(contents: PaperContents) -> Phrase:
    """A household was brought back from paper."""
    return Phrase(
        "{household} was brought back from the paper of {day}: the key, the settings, and {withdrawn}.",
        {
            "household": contents.household.certified_name,
            "day": day(contents.made),
            "withdrawn": _withdrawn(len(contents.withdrawn)),
        },
    )


def _withdrawn(count: int) -> Phrase:
    if count == 0:
        return Phrase("nobody on the revocation list")
    if count == 1:
        return Phrase("1 pass on the revocation list")
    return Phrase("{count} passes on the revocation list", {"count": count})
