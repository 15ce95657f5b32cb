"""Finds devices by a few letters, fast enough to do so at every key."""

from __future__ import annotations

import unicodedata
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from datetime import datetime
from itertools import islice
from typing import NamedTuple

from hearthkey.core.passes import GETTING_IN, Pass, State
from hearthkey.ui.text import spoken

MOST = 6
"""Rows that are shown; who sees more types another letter."""


@dataclass(frozen=True)
class Match:
    """A device that the letters mean.

    Args:
        shown: the pass that stands for it: one that gets in, else a stopped one, else the newest.
        state: of that pass.
        found: which characters of the title were typed, as (first, after last).
    """

    shown: Pass
    state: State
    found: tuple[tuple[int, int], ...]

    @property
    def stoppable(self) -> bool:
        """Whether it gets in at present."""
        return self.state in GETTING_IN


@dataclass(frozen=True)
class Found:
    """What a search brought.

    Args:
        first: the best matches, at most `MOST`.
        count: how many devices match.
        of: how many devices there are.
    """

    first: tuple[Match, ...]
    count: int
    of: int


class _Row(NamedTuple):
    """A device to be looked at.

    Args:
        spaced: its title in small letters after a space, so that a word's beginning is a space and the word.
    """

    shown: Pass
    state: State
    alive: bool
    spaced: str


class Finder:
    """The devices of one snapshot, each with its title in small letters."""

    def __init__(self, passes: Iterable[Pass], now: datetime) -> None:
        devices: dict[str, list[Pass]] = {}
        for one in passes:
            devices.setdefault(one.identity, []).append(one)
        standing = (_standing(of_one, now) for of_one in devices.values())
        self._rows = [
            _Row(shown, state, state in GETTING_IN, f" {folded(spoken(shown.title))}") for shown, state in standing
        ]

    def find(self, text: str) -> Found:
        """Devices whose title has every typed word.

        Those that get in come first; among them titles that begin with what was typed, then those
        with words that do, then the rest.
        """
        whole = " ".join(folded(text).split())
        words = [word.removesuffix("'s") for word in whole.split()]
        if not words:
            return Found((), 0, len(self._rows))
        hits = self._rows
        for word in words:
            hits = [row for row in hits if word in row.spaced]
        first = tuple(
            Match(row.shown, row.state, marks(spoken(row.shown.title), words))
            for row in islice(_ranked(hits, whole, words), MOST)
        )
        return Found(first, len(hits), len(self._rows))


def _ranked(hits: list[_Row], whole: str, words: list[str]) -> Iterator[_Row]:
    """The best first; who asks for few has few sorted out."""
    begin, starts = f" {whole}", [f" {word}" for word in words]
    for alive in (True, False):
        kin = [row for row in hits if row.alive is alive]
        yield from (row for row in kin if row.spaced.startswith(begin))
        kin = [row for row in kin if not row.spaced.startswith(begin)]
        yield from (row for row in kin if all(start in row.spaced for start in starts))
        yield from (row for row in kin if not all(start in row.spaced for start in starts))


def _standing(passes: list[Pass], now: datetime) -> tuple[Pass, State]:
    """Which of a device's passes stands for it, and its state."""
    states = [(one, one.state(now)) for one in reversed(passes)]
    for wanted in (GETTING_IN, {State.STOPPED}):
        for one, state in states:
            if state in wanted:
                return one, state
    return states[0]


def folded(text: str) -> str:
    """Small letters without accents, so that "zoe" finds "Zoë"; the curved apostrophe is the straight one."""
    if text.isascii():
        return text.lower()
    plain = unicodedata.normalize("NFKD", text.replace("’", "'"))
    return "".join(one for one in plain if not unicodedata.combining(one)).casefold()


def marks(title: str, words: Iterable[str]) -> tuple[tuple[int, int], ...]:
    """Where the words stand in a title as it is written, for underlining.

    Folding can make two letters of one ("ß") or none (a combining accent), so places are counted
    letter by letter.
    """
    places: list[int] = []
    small = ""
    for place, letter in enumerate(title):
        part = folded(letter)
        small += part
        places += [place] * len(part)
    found = set[tuple[int, int]]()
    for word in words:
        start = f" {small}".find(f" {word}")
        start = small.find(word) if start < 0 else start
        if start >= 0:
            found.add((places[start], places[start + len(word) - 1] + 1))
    return tuple(sorted(found))
