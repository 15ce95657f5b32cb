"""Sentences about renewals, replaced devices, and visits."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime
from typing import TYPE_CHECKING

from hearthkey.core.passes import Pass
from hearthkey.core.phrases import Phrase
from hearthkey.core.sentences.diary import day, titles
from hearthkey.core.sentences.sentence import Sentence

if TYPE_CHECKING:  # who only lists dates needs none of them
    from hearthkey.core.plans import RenewPlan, ReplacePlan, SupersedePlan, TakeBackPlan


def plan(planned: RenewPlan) -> Sentence:
    """A renewal about to be made."""
    facts = {"title": planned.old.title, "ends": day(planned.ends), "overlap": day(planned.overlap_ends)}
    if not planned.overlaps:
        return Sentence(
            "{title} gets a new key and a pass until {ends}. Its old pass does not get in any more, so nothing "
            "overlaps.",
            facts,
        )
    return Sentence(
        "{title} gets a new key and a pass until {ends}. The old one stays as it is: both get in until {overlap}, or "
        "until the new one was seen to.",
        facts,
    )


def renewed(made: Pass, overlap_ends: datetime | None) -> Phrase:
    """A pass was renewed."""
    facts = {"title": made.title, "ends": day(made.not_after), "serial": made.serial}
    if overlap_ends is None:
        return Phrase("{title} got its next pass until {ends}, serial {serial}. Its bundle waits in the tray.", facts)
    return Phrase(
        "{title} got its next pass until {ends}, serial {serial}. Its bundle waits in the tray; the old pass gets in "
        "beside it until {overlap}, or until the new one is seen to.",
        {**facts, "overlap": day(overlap_ends)},
    )


def replaced(made: Pass, old: Sequence[Pass]) -> Phrase:
    """A device took the place of another."""
    return Phrase(
        "{title} takes the place of {old}. Its pass is good until {ends}, serial {serial}; its bundle waits in the "
        "tray.",
        {"title": made.title, "old": titles(tuple(old)), "ends": day(made.not_after), "serial": made.serial},
    )


def replace(planned: ReplacePlan) -> Sentence:
    """A device about to take the place of another."""
    return Sentence(
        "{new} gets a pass of its own, with a new key. {old} stops getting in once the gateway holds list {number}, "
        "and never gets in again once {new} was seen to. Until then it can be let back in.",
        {"new": planned.title, "old": titles(planned.old), "number": planned.list_number},
    )


def supersede(planned: SupersedePlan) -> Sentence:
    """Old passes about to go for good."""
    one = len(planned.chosen) == 1
    return Sentence(
        "The old pass of {title} never gets in again once the gateway holds list {number}. The new one is not "
        "affected. This is final."
        if one
        else "The old passes of {title} never get in again once the gateway holds list {number}. The new ones are not "
        "affected. This is final.",
        {"title": titles(planned.chosen), "number": planned.list_number},
    )


def superseded(planned: SupersedePlan, number: int) -> Phrase:
    """Old passes went for good."""
    chosen, why = planned.chosen, SAID_SO if not planned.proved else OVERLAP_OVER if planned.overlap_over else PROVED
    facts = {"titles": titles(chosen), "number": number, "why": Phrase(why)}
    if len(chosen) == 1:
        return Phrase(
            "The old pass of {titles} was withdrawn for good with revocation list {number} (superseded): {why}.",
            facts,
        )
    return Phrase(
        "The old passes of {titles} were withdrawn for good with revocation list {number} (superseded): {why}.", facts
    )


PROVED = "what follows was seen to get in"
OVERLAP_OVER = "the device was seen to get in, with which of the two nobody can say, and the time for both is over"
SAID_SO = "the householder said so"


def both_stay(old: Pass, overlap_ends: datetime) -> Sentence:
    """A link was opened from inside, with the old pass or with the new one."""
    return Sentence(
        "The link cannot tell the new pass of {title} from the old one, so both stay until {day}.",
        {"title": old.title, "day": day(overlap_ends)},
    )


def take_back(planned: TakeBackPlan) -> Sentence:
    """A renewal about to be taken back."""
    return Sentence(
        "The bundle that waits for {title} is erased here, and its pass never gets in. The pass that it was to follow "
        "stays as it is.",
        {"title": planned.chosen.title},
    )


def taken_back(chosen: Pass, number: int) -> Phrase:
    """A renewal was taken back."""
    return Phrase(
        "The next pass of {title} was taken back before it was handed over, with revocation list {number}. Its key was "
        "erased here; the pass before it stays as it is.",
        {"title": chosen.title, "number": number},
    )


def visit_planned(person: str, on: datetime) -> Phrase:
    """A visit was planned."""
    return Phrase("A visit is planned: {person}, on {day}.", {"person": person, "day": day(on)})


def visit_dropped(person: str, on: datetime) -> Phrase:
    """A visit was called off."""
    return Phrase("The visit on {day} was called off: {person}.", {"person": person, "day": day(on)})


WHY_LEFT = {
    "waits": "{title}: its next bundle is in the tray already.",
    "guest": "{title} is a guest’s and is meant to end.",
    "stopped": "{title} is stopped. Renew it by name, if it is to get in again.",
    "revoked": "{title} was revoked for good. A new pass: hearthkey add --replace.",
    "failed": "{title}: {why}",
    "not-begun": "{title} was not begun.",
}
"""Why a device is not renewed in a round."""


def left(title: str, why: str, told: str = "") -> Sentence:
    """Why a device was left as it is."""
    return Sentence(WHY_LEFT[why], {"title": title, "why": told})


def round_of(planned: Sequence[RenewPlan]) -> Sentence:
    """Renewals about to be made, one or many."""
    if len(planned) == 1:
        return plan(planned[0])
    return Sentence(
        "{count} devices get a new key and a new pass each. Their old passes stay as they are until the new ones were "
        "seen to.",
        {"count": len(planned)},
    )


def round_done(made: Sequence[str]) -> Sentence:
    """What a round has made, as titles of devices."""
    if len(made) == 1:
        return Sentence("{title} has a new pass. Its bundle waits in the tray.", {"title": made[0]})
    return Sentence("{count} devices have a new pass. Their bundles wait in the tray.", {"count": len(made)})


def round_left(titles_left: Sequence[str]) -> Sentence:
    """What a round that was stopped has not begun."""
    if len(titles_left) == 1:
        return Sentence("{title} was not begun and stays ticked.", {"title": titles_left[0]})
    return Sentence("{count} devices were not begun and stay ticked.", {"count": len(titles_left)})
