"""The folded axis: it never turns back, never tears at a fold, and its labels never meet."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from hearthkey.ui.board.axis import AHEAD, BACK, NARROW, WIDE, Leaf, fold
from hearthkey.ui.board.ticks import CLEAR, GAP, OVERHANG, grid, labels

NOW = datetime(2026, 5, 12, 9, 30, tzinfo=UTC)
END = datetime(2036, 5, 8, 9, 0, tzinfo=UTC)

moments = st.integers(0, 40 * 365 * 24).map(lambda hours: datetime(2020, 1, 1, tzinfo=UTC) + timedelta(hours=hours))
days = st.integers(0, 19 * 365 * 24).map(lambda hours: datetime(2021, 1, 1, tzinfo=UTC) + timedelta(hours=hours))
widths = st.floats(280, 2400)
lives = st.integers(10, 20 * 365).map(lambda number: timedelta(days=number))


def _measure(text: str, strong: bool) -> float:  # noqa: FBT001 - a `Measure` is called with both
    return len(text) * (6.0 if strong else 5.8)


@given(now=days, life=lives, width=widths, years=st.booleans(), one=moments, other=moments)
def test_time_never_turns_back(
    *, now: datetime, life: timedelta, width: float, years: bool, one: datetime, other: datetime
) -> None:
    """A later date would stand left of an earlier one."""
    axis = fold(now, now + life, width, years=years)
    first, second = sorted((one, other))
    assert axis.x(first).x <= axis.x(second).x + 1e-9


@given(now=days, life=lives, width=widths, years=st.booleans(), moment=moments)
def test_all_time_lies_on_the_sheet(
    *, now: datetime, life: timedelta, width: float, years: bool, moment: datetime
) -> None:
    """A mark would be painted outside the axis, or one that is cut off would look as if it were there."""
    axis = fold(now, now + life, width, years=years)
    place = axis.x(moment)
    assert -1e-9 <= place.x <= width + 1e-6
    assert (place.cut == -1) == (moment < axis.pieces[0].start)
    assert (place.cut == 1) == (moment > axis.pieces[-1].end)


@given(now=days, life=lives, width=widths, years=st.booleans())
def test_folds_do_not_tear(*, now: datetime, life: timedelta, width: float, years: bool) -> None:
    """A line that runs over a fold would jump."""
    axis = fold(now, now + life, width, years=years)
    moment = timedelta(seconds=1)
    assert abs(axis.width - width) < 1e-6
    for one, other in pairwise(axis.pieces):
        assert one.end == other.start
        assert one.right == other.left
        assert axis.x(one.end + moment).x - axis.x(one.end - moment).x < 0.01


@given(now=days, width=widths.filter(lambda width: width >= 320))
def test_a_week_keeps_its_width(*, now: datetime, width: float) -> None:
    """On a narrow window the next weeks would be too small to read."""
    axis = fold(now, now + timedelta(days=3650), width, years=width >= 450)
    weeks = axis.pieces[1]
    assert weeks.leaf is Leaf.WEEKS
    assert (weeks.right - weeks.left) / ((BACK + AHEAD).days / 7) >= 18 - 1e-6


@pytest.mark.parametrize(("width", "leaves"), [(774, WIDE), (500, NARROW)])
def test_leaves_have_their_measures(width: int, leaves: tuple[float, ...]) -> None:
    """The sheet would not be folded as it was drawn."""
    axis = fold(NOW, END, width)
    assert [round(piece.right - piece.left) for piece in axis.pieces] == [round(one) for one in leaves]


def test_labels_of_the_practice_sheet() -> None:
    """The head of the sheet would name other days than those below it."""
    found = labels(fold(NOW, END, 774), _measure)
    texts = "Jul 2026 20 Apr 1 Jun 8 15 22 29 6 Jul 2027 Jul 2028 Jul 2030 2033 2036"
    assert " ".join(tick.text for tick in found) == texts
    assert [tick.text for tick in found if tick.strong] == ["2026", "1 Jun", "6 Jul", "2027", "2028"]


@given(now=days, life=lives, width=widths, years=st.booleans(), scale=st.floats(0.8, 2.2))
def test_labels_never_meet(*, now: datetime, life: timedelta, width: float, years: bool, scale: float) -> None:
    """Two labels of the axis would run into each other, or one into the ribbon."""
    axis = fold(now, now + life, width, years=years)
    clear = CLEAR * max(1.0, scale)
    ticks = labels(axis, lambda text, strong: _measure(text, strong) * scale, clear)
    for one, other in pairwise(ticks):
        assert one.right + GAP <= other.left + 1e-6
    for tick in ticks:
        assert tick.right <= axis.today - clear or tick.left >= axis.today + clear
        assert tick.left >= -OVERHANG
        assert tick.right <= axis.width + OVERHANG


@given(now=days, life=lives, width=widths)
def test_grid_stands_on_the_sheet(*, now: datetime, life: timedelta, width: float) -> None:
    """A line of the grid would stand outside the axis or out of order."""
    lines = [line.x for line in grid(fold(now, now + life, width))]
    assert lines == sorted(lines)
    assert all(0 < x < width for x in lines)


def test_short_lived_authority_needs_no_years() -> None:
    """A CA that ends within the months would stretch a few weeks over a whole leaf."""
    axis = fold(NOW, datetime(2029, 3, 1, tzinfo=UTC), 774)
    assert [piece.leaf for piece in axis.pieces] == [Leaf.LAST_YEAR, Leaf.WEEKS, Leaf.MONTHS]
    assert axis.x(datetime(2029, 3, 1, tzinfo=UTC)).x == pytest.approx(774)
