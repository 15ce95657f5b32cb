"""What stands on the axis: one regular series of labels for each leaf, and the lines of the grid."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from itertools import pairwise

from hearthkey.core.phrases import Moment, Style
from hearthkey.ui.board.axis import Axis, Leaf, Piece

CLEAR = 44.0
"""Nothing stands nearer to the ribbon than this, in pixels."""

GAP = 6.0
"""Between two labels, in pixels."""

OVERHANG = 12.0
"""How far a label may reach beyond its leaf."""

CROWDED = 6.0
"""Lines of the grid that stand nearer to each other than this leave some out, in pixels."""

Measure = Callable[[str, bool], float]
"""The width of a label in pixels; the second argument says whether it is strong."""


@dataclass(frozen=True)
class Tick:
    """A label under its leaf's name.

    Args:
        x: its middle, pixels from the left end of the axis.
        strong: the first day of a year or the first Monday of a month.
        width: pixels.
    """

    x: float
    text: str
    strong: bool
    width: float

    @property
    def left(self) -> float:
        """Its left end."""
        return self.x - self.width / 2

    @property
    def right(self) -> float:
        """Its right end."""
        return self.x + self.width / 2


@dataclass(frozen=True)
class Line:
    """A line of the grid."""

    x: float
    strong: bool


def labels(axis: Axis, measure: Measure, clear: float = CLEAR) -> tuple[Tick, ...]:
    """Every leaf's series, as fine as it fits: nothing overlaps, nothing lies near the ribbon.

    Args:
        clear: kept free on either side of the ribbon, pixels.
    """
    placed: list[Tick] = []
    for piece in axis.pieces:
        after = placed[-1].right + GAP if placed else -OVERHANG
        placed += _series(axis, piece, measure, clear, after)
    return tuple(placed)


def grid(axis: Axis) -> tuple[Line, ...]:
    """Mondays, quarters and years; strong where a month or a year begins."""
    lines = []
    for piece in axis.pieces:
        for moment, strong in _grid_moments(piece):
            x = piece.x(moment)
            if piece.left + 2 < x < piece.right - 2:
                lines.append(Line(x, strong))
    return tuple(lines)


def _grid_moments(piece: Piece) -> Iterator[tuple[datetime, bool]]:
    if piece.leaf is Leaf.DAYS:
        every = 1 if _apart_by(piece, timedelta(days=1)) else 7
        yield from ((day, day.weekday() == 0) for day in _days(piece) if every == 1 or day.weekday() == 0)
    elif piece.leaf is Leaf.WEEKS:
        yield from ((monday, monday.day <= 7) for monday in _mondays(piece))
    elif piece.leaf is Leaf.YEARS:
        yield from ((moment, False) for moment in _months(piece, 12))
    else:
        quarters = timedelta(days=90) if piece.leaf is not Leaf.YEAR else timedelta(days=30)
        step = (1 if piece.leaf is Leaf.YEAR else 3) if _apart_by(piece, quarters) else 12
        yield from ((moment, moment.month == 1) for moment in _months(piece, step))


def _apart_by(piece: Piece, step: timedelta) -> bool:
    """Whether lines that far apart in time stand far enough apart on the sheet."""
    return piece.x(piece.start + step) - piece.left >= CROWDED


def _series(axis: Axis, piece: Piece, measure: Measure, clear: float, after: float) -> list[Tick]:
    if piece.leaf in {Leaf.WEEKS, Leaf.DAYS}:
        return _weeks(axis, piece, measure, clear, after)
    for ticks in _candidates(piece, measure):
        inside = [
            one
            for one in ticks
            if max(after, piece.left - OVERHANG) <= one.left
            and one.right <= _limit(axis, piece)
            and (one.right <= axis.today - clear or one.left >= axis.today + clear)
        ]
        if inside and _apart(inside):
            return inside
    return []


def _weeks(axis: Axis, piece: Piece, measure: Measure, clear: float, after: float) -> list[Tick]:
    """A leaf with the ribbon in it: one series to its right, and what fits to its left."""
    limit = _limit(axis, piece)
    mondays = list(_mondays(piece))
    series = [(mondays[::step], 7) for step in (1, 2, 4)]
    if piece.leaf is Leaf.DAYS:
        series.insert(0, (list(_days(piece)), 1))
    for days, apart in series:
        before = _named(piece, days, apart, measure, (max(after, piece.left - 4), axis.today - clear))
        ahead = _named(piece, days, apart, measure, (axis.today + clear, limit))
        if ahead and _apart(ahead):
            # At the left there is room for one or two at most: all of them, or the first alone.
            return (before if _apart(before) else before[:1]) + ahead
    return []


def _named(
    piece: Piece, days: Sequence[datetime], apart: int, measure: Measure, room: tuple[float, float]
) -> list[Tick]:
    """Days between two places, each month named at its first.

    Args:
        apart: so many days lie between two of them; a label is strong where no other of its month comes before.
    """
    found: list[Tick] = []
    month = 0
    for day in days:
        new = day.month != month
        text = Moment(day, Style.DAY_AND_MONTH) if new else f"{day.day}"
        tick = _tick(piece, day, text, measure, strong=new and day.day <= apart)
        if room[0] <= tick.left and tick.right <= room[1]:
            found.append(tick)
            month = day.month
    return found


def _limit(axis: Axis, piece: Piece) -> float:
    return piece.right + (OVERHANG if piece is axis.pieces[-1] else 0.0)


def _apart(ticks: Sequence[Tick]) -> bool:
    return all(one.right + GAP <= other.left for one, other in pairwise(ticks))


def _candidates(piece: Piece, measure: Measure) -> Iterator[list[Tick]]:
    """Series from fine to coarse."""
    if piece.leaf is Leaf.YEARS:
        years = list(_months(piece, 12))
        for step in (1, 2, 3, 5, 10):
            # Of the series with this step the one that ends last says most about the end of the CA.
            begin = (len(years) - 1) % step if years else 0
            yield [_tick(piece, moment, f"{moment.year}", measure, strong=False) for moment in years[begin::step]]
    else:
        for step in (1, 3, 6, 12, 24, 60):
            yield [_month(piece, moment, measure) for moment in _months(piece, step)]


def _month(piece: Piece, moment: datetime, measure: Measure) -> Tick:
    strong = moment.month == 1
    text = f"{moment.year}" if strong else Moment(moment, Style.SHORT_MONTH)
    return _tick(piece, moment, text, measure, strong=strong)


def _tick(piece: Piece, moment: datetime, text: str, measure: Measure, *, strong: bool) -> Tick:
    return Tick(piece.x(moment), text, strong, measure(text, strong))


def _days(piece: Piece) -> Iterator[datetime]:
    """Beginnings of days."""
    day = datetime(piece.start.year, piece.start.month, piece.start.day, tzinfo=UTC) + timedelta(days=1)
    while day <= piece.end:
        yield day
        day += timedelta(days=1)


def _mondays(piece: Piece) -> Iterator[datetime]:
    return (day for day in _days(piece) if day.weekday() == 0)


def _months(piece: Piece, step: int) -> Iterator[datetime]:
    """Beginnings of months; counted from January, so that quarters are quarters."""
    year, month = piece.start.year, 1
    while (moment := datetime(year, month, 1, tzinfo=UTC)) <= piece.end:
        if moment >= piece.start:
            yield moment
        month += step
        year, month = year + (month - 1) // 12, (month - 1) % 12 + 1
