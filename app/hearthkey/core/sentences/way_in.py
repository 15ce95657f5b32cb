"""Says what the check of the way in found; the first broken link is the headline."""

from __future__ import annotations

from typing import NamedTuple

from hearthkey.core.reach.chain import Chain, Link
from hearthkey.core.sentences import way_in_tables as tables
from hearthkey.core.sentences.sentence import Sentence


class Told(NamedTuple):
    """One link in words.

    Args:
        title: what has to hold.
        verdict: whether it does.
        seen: what was seen.
        meaning: what that means for people; None where it goes without saying.
        try_next: the one thing to do; None where there is nothing to do.
    """

    title: Sentence
    verdict: Sentence
    seen: Sentence
    meaning: Sentence | None
    try_next: Sentence | None


def link(one: Link) -> Told:
    """A link in words."""
    seen, meaning, try_next = tables.FINDINGS[one.finding]
    return Told(
        title=Sentence(tables.PLACES[one.place.value], {}),
        verdict=Sentence(tables.VERDICTS[one.verdict.value], {}),
        seen=Sentence(seen, one.facts),
        meaning=Sentence(meaning, one.facts) if meaning else None,
        try_next=Sentence(try_next, one.facts) if try_next else None,
    )


def headline(chain: Chain) -> Sentence:
    """The whole check in one sentence."""
    first = chain.broken
    if first is not None:
        kind = "broken"
    elif chain.answered:
        kind = "good"
    else:
        kind, first = "open", chain.unknown
    facts = {} if first is None else {"place": Sentence(tables.STOPS[first.place.value], {})}
    return Sentence(tables.HEADLINES[f"{kind}-{chain.side.value}"], facts)


def side(chain: Chain) -> Sentence:
    """Where this laptop stood."""
    return Sentence(tables.SIDES[chain.side.value], {})
