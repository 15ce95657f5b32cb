"""The time axis: folded into leaves of different scale, from the past to the end of the CA, or a part of it from near.

Whatever is shown, today stands at one place, so that nobody loses it while zooming.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from enum import StrEnum
from typing import NamedTuple

LAST_YEAR, BACK, AHEAD = timedelta(days=365), timedelta(days=28), timedelta(days=63)
"""Where the sheet begins, and what the leaf of the weeks holds, seen from today."""

WIDE, NARROW = (88.0, 352.0, 246.0, 88.0), (46.0, 234.0, 146.0, 74.0)
"""Widths of the four leaves in pixels, on an axis of 774 and on one of 500."""

SMALLEST = sum(NARROW[:3])
"""The narrowest axis whose leaves keep their measures, with the years closed; pixels."""

_WEEK_FLOOR = 18 * (BACK + AHEAD).days / 7


class Leaf(StrEnum):
    """A part of the axis with a scale of its own."""

    DAYS = "days"
    YEAR = "year"
    LAST_YEAR = "last year"
    WEEKS = "weeks"
    MONTHS = "months"
    YEARS = "years"


FOLDED = (Leaf.LAST_YEAR, Leaf.WEEKS, Leaf.MONTHS, Leaf.YEARS)
"""The leaves of the whole axis, from left to right."""


class Zoom(StrEnum):
    """How much of time is on the sheet, from near to far."""

    MONTH = "month"
    YEAR = "year"
    ALL = "all"

    def stepped(self, steps: int) -> Zoom:
        """So many steps farther, or nearer where they are negative; never beyond the ends."""
        every = list(Zoom)
        return every[min(len(every) - 1, max(0, every.index(self) + steps))]


NEAR = {Zoom.MONTH: (Leaf.DAYS, timedelta(days=31)), Zoom.YEAR: (Leaf.YEAR, timedelta(days=366))}
"""What one leaf shows from near, and how far it reaches beyond today."""


@dataclass(frozen=True)
class Piece:
    """A leaf as it lies on the sheet.

    Args:
        start, end: what it shows, UTC.
        left, right: where, in pixels from the left end of the axis.
    """

    leaf: Leaf
    start: datetime
    end: datetime
    left: float
    right: float

    def x(self, moment: datetime) -> float:
        """Where a moment of this leaf lies."""
        return self.left + (self.right - self.left) * ((moment - self.start) / (self.end - self.start))


class Place(NamedTuple):
    """Where a moment lies.

    Args:
        x: pixels from the left end of the axis, never outside it.
        cut: -1 before the sheet begins, 1 after it ends, 0 on it.
    """

    x: float
    cut: int


@dataclass(frozen=True)
class Axis:
    """The axis of one sheet.

    Args:
        now: today, UTC; the ribbon hangs there.
        pieces: the leaves, from left to right, each beginning where the last one ends.
    """

    now: datetime
    pieces: tuple[Piece, ...]

    @property
    def width(self) -> float:
        """Pixels."""
        return self.pieces[-1].right

    @property
    def today(self) -> float:
        """Where the ribbon hangs."""
        return self.x(self.now).x

    def x(self, moment: datetime) -> Place:
        """Where a moment lies."""
        if moment < self.pieces[0].start:
            return Place(0.0, -1)
        for piece in self.pieces:
            if moment <= piece.end:
                return Place(piece.x(moment), 0)
        return Place(self.width, 1)

    def shaded(self, x: float) -> bool:
        """Whether the ground at x is that of every second leaf; a single leaf is the plain sheet."""
        return len(self.pieces) > 1 and self.leaf_at(x) % 2 == 0

    def leaf_at(self, x: float) -> int:
        """The number of the leaf that lies at x; the nearest one beyond the ends."""
        for number, piece in enumerate(self.pieces):
            if x < piece.right:
                return number
        return len(self.pieces) - 1


def lay(axis: Axis, zoom: Zoom) -> Axis:
    """An axis from as near as is wanted, with today where it was.

    Args:
        axis: the whole one, folded.
    """
    if zoom is Zoom.ALL:
        return axis
    leaf, ahead = NEAR[zoom]
    back = ahead * (axis.today / (axis.width - axis.today))
    return Axis(axis.now, (Piece(leaf, axis.now - back, axis.now + ahead, 0.0, axis.width),))


def fold(now: datetime, end: datetime, width: float, *, years: bool = True, since: datetime | None = None) -> Axis:
    """Fold the axis.

    Args:
        now: today, UTC.
        end: when the CA ends, UTC.
        width: pixels.
        years: show the years; without them what lies there is cut off at the right.
        since: the first moment that somebody may look for, UTC; where it is longer ago than a year, the leaf of the
            past begins there.
    """
    turn = datetime(now.year + 3, 1, 1, tzinfo=UTC)
    if turn < end <= turn + LAST_YEAR:  # a leaf for less than a year would run faster than the months before it
        turn = end
    last = max(turn, end)
    past = now - LAST_YEAR if since is None else min(since, now - LAST_YEAR)
    borders = [past, now - BACK, now + AHEAD, turn]
    if years and last > turn:
        borders.append(last)
    pieces, left = [], 0.0
    for leaf, start, stop, wide in zip(FOLDED, borders, borders[1:], _widths(width, len(borders) - 1), strict=False):
        pieces.append(Piece(leaf, start, stop, left, left + wide))
        left += wide
    return Axis(now, tuple(pieces))


def _widths(total: float, leaves: int) -> list[float]:
    wide, narrow = WIDE[:leaves], NARROW[:leaves]
    most, least = sum(wide), sum(narrow)
    if total >= most:
        return [one * total / most for one in wide]
    if total >= least:
        part = (total - least) / (most - least)
        return [low + (high - low) * part for low, high in zip(narrow, wide, strict=True)]
    others = least - narrow[1]
    if total - _WEEK_FLOOR < others / 3:  # too narrow for any rule: everything shrinks alike
        return [one * total / least for one in narrow]
    return [_WEEK_FLOOR if one == narrow[1] else one * (total - _WEEK_FLOOR) / others for one in narrow]
