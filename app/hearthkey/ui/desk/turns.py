"""Whose turn it is: the devices of one sitting, the one in hand, and how far each has come."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace
from datetime import datetime
from enum import IntEnum

from hearthkey.core.passes import Pass, State


class Step(IntEnum):
    """The three steps, as whoever holds the device counts them."""

    SCAN = 1
    WORDS = 2
    CONNECT = 3


@dataclass(frozen=True)
class Turn:
    """One device of the sitting.

    Args:
        one: its pass, as it was last seen.
        picked_up: when its file was fetched, UTC, or None.
        typed: whether the words were shown and covered again after that.
    """

    one: Pass
    picked_up: datetime | None = None
    typed: bool = False

    @property
    def done(self) -> bool:
        """Whether its key has left for good."""
        return self.one.handed_over is not None

    def step(self, *, words_shown: bool) -> Step:
        """The step in hand."""
        if self.done or (self.typed and not words_shown):
            return Step.CONNECT
        return Step.WORDS if words_shown or self.picked_up is not None else Step.SCAN


@dataclass(frozen=True)
class Turns:
    """All of one sitting, in order; every change makes another.

    Args:
        all: at least one.
        at: which of them is in hand, from 0.
    """

    all: tuple[Turn, ...]
    at: int = 0

    @property
    def current(self) -> Turn:
        """The one in hand."""
        return self.all[self.at]

    @property
    def next(self) -> int | None:
        """Whose turn is next: the first after this one that is not done, then those that were passed over."""
        count = len(self.all)
        order = [(self.at + step) % count for step in range(1, count)]
        return next((number for number in order if not self.all[number].done), None)

    @property
    def previous(self) -> int | None:
        """Who stood before this one, done or not."""
        return self.at - 1 if self.at else None

    def go(self, number: int) -> Turns:
        """Take another one in hand."""
        return replace(self, at=number)

    def picked_up(self, at: datetime) -> Turns:
        """The one in hand has its file."""
        return self._with(replace(self.current, picked_up=at))

    def typed(self) -> Turns:
        """The words were shown to whoever has the one in hand, and are covered again."""
        return self._with(replace(self.current, typed=self.current.picked_up is not None))

    def begun_anew(self) -> Turns:
        """Another code is opened for the one in hand: what it has already counts no more."""
        return self._with(Turn(self.current.one))

    def seen(self, passes: Iterable[Pass], now: datetime) -> Turns | None:
        """The same with passes as they are now, without those that never get in any more; None where none is left."""
        known = {one.serial: one for one in passes if one.state(now) in {State.WAITING, State.IN_USE}}
        left = [number for number, turn in enumerate(self.all) if turn.one.serial in known]
        if not left:
            return None
        at = next((place for place, number in enumerate(left) if number >= self.at), len(left) - 1)
        return Turns(tuple(replace(self.all[number], one=known[self.all[number].one.serial]) for number in left), at)

    def _with(self, turn: Turn) -> Turns:
        return replace(self, all=(*self.all[: self.at], turn, *self.all[self.at + 1 :]))


def sitting(passes: Iterable[Pass]) -> Turns:
    """Begin with the first of the passes; there has to be one."""
    return Turns(tuple(Turn(one) for one in passes))
