"""What is said about taking over a household that was made by hand."""

from __future__ import annotations

from hearthkey.core.adopt_plan import AdoptPlan
from hearthkey.core.household import Authority
from hearthkey.core.phrases import Phrase
from hearthkey.core.sentences.diary import day
from hearthkey.core.sentences.sentence import Sentence


def plan(about: AdoptPlan) -> tuple[Sentence, ...]:
    """What taking over would do, a sentence each."""
    count = len(about.passes)
    words = (
        "No device is taken over.",
        "One device is taken over; its pass goes on as it is, and it waits for you to say whose it is.",
        "{count} passes are taken over; they go on as they are, and wait for you to say whose they are.",
    )
    gateway = (
        "The gateway keeps its certificate."
        if about.kept_gateway is not None
        else "The gateway gets a new certificate; until it is delivered, the old one goes on."
    )
    return (
        Sentence("{household} goes on under its own CA.", {"household": about.household.certified_name}),
        Sentence(words[min(count, 2)], {"count": count}),
        Sentence(gateway, {}),
        _withdrawn(about),
    )


def _withdrawn(about: AdoptPlan) -> Sentence:
    words = (
        "The next list has number {number}; nobody is on it.",
        "The next list has number {number}, and the one who was withdrawn stays so.",
        "The next list has number {number}, and the {count} that were withdrawn stay so.",
    )
    count = len(about.entries)
    return Sentence(words[min(count, 2)], {"count": count, "number": about.list_number})


def adopted(about: AdoptPlan, authority: Authority) -> Phrase:
    """It was taken over, for the diary."""
    facts = {
        "household": about.household.certified_name,
        "ends": day(authority.not_after),
        "count": len(about.passes),
        "withdrawn": len(about.entries),
        "number": about.list_number,
    }
    if len(about.passes) == 1:
        return Phrase(
            "{household} was taken over as it was made elsewhere: its CA, which ends {ends}, 1 pass and {withdrawn} on "
            "the list. Revocation list {number} was signed.",
            facts,
        )
    return Phrase(
        "{household} was taken over as it was made elsewhere: its CA, which ends {ends}, {count} passes and "
        "{withdrawn} on the list. Revocation list {number} was signed.",
        facts,
    )


def named(serial: str, title: str) -> Phrase:
    """Somebody said whose a pass is, for the diary."""
    return Phrase(
        "The pass {serial}, which was made elsewhere, is that of {title}.", {"serial": serial, "title": title}
    )
