"""The diary: what was done, in sentences, each entry chained to the last by SHA-256."""

from __future__ import annotations

import hashlib
import json
from collections.abc import Iterable
from dataclasses import dataclass
from datetime import datetime

FIRST_LINK = "0" * 64


@dataclass(frozen=True)
class DiaryEntry:
    """One line of the diary.

    Args:
        number: counts from 1 without gaps.
        at: UTC, whole seconds.
        verb: which verb wrote it.
        sentence: what happened, naming no secret.
        link: hex SHA-256 over the previous link and this entry, see `link_of`.
        words: what the sentence is made of, see `core.diary_words`; outside the chain, and empty where nobody knows.
    """

    number: int
    at: datetime
    verb: str
    sentence: str
    link: str
    words: str = ""


def link_of(previous: str, *, number: int, at: datetime, verb: str, sentence: str) -> str:
    """Chain an entry: SHA-256 of a JSON array, UTF-8, without spaces, keys in fixed places."""
    text = json.dumps(
        [previous, number, int(at.timestamp()), verb, sentence], ensure_ascii=False, separators=(",", ":")
    )
    return hashlib.sha256(text.encode()).hexdigest()


def first_misfit(entries: Iterable[DiaryEntry], *, written: int, heads: Iterable[tuple[int, str]] = ()) -> int | None:
    """Return the number of the first entry that does not fit, or None.

    Args:
        entries: in order.
        written: how many were ever written; fewer than that means that the end was cut off.
        heads: where the diary ended when something outside of it took that down, as count and link: a chain that was
            written anew from somewhere fits in itself, but not to them.
    """
    told = dict(heads)
    previous, expected, fitted = FIRST_LINK, 1, 0
    for entry in entries:
        link = link_of(previous, number=entry.number, at=entry.at, verb=entry.verb, sentence=entry.sentence)
        if entry.number != expected or entry.link != link:
            return expected
        if expected in told:
            if told[expected] != link:
                return fitted + 1
            fitted = expected
        previous, expected = entry.link, expected + 1
    return expected if expected <= max([written, *told]) else None
