"""The axis from near and from far: today stays, ticks fit, and what is due stands where it falls."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, timedelta
from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st
from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtGui import QHelpEvent, QWheelEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QToolTip, QWidget
from pytestqt.qtbot import QtBot

from hearthkey.core.proofs import Proof, Way
from hearthkey.ui.board.axis import Leaf, Zoom, fold, lay
from hearthkey.ui.board.dues import APART, MOST, dues, listed
from hearthkey.ui.board.ticks import CLEAR, GAP, grid, labels
from hearthkey.ui.board.view import BoardView
from hearthkey.ui.due import by_day
from hearthkey.ui.sight import sight
from tests.ui.practice import NOW, PASSES, made_pass, snapshot

END = datetime(2036, 5, 8, 9, 0, tzinfo=UTC)
days = st.integers(0, 19 * 365 * 24).map(lambda hours: datetime(2021, 1, 1, tzinfo=UTC) + timedelta(hours=hours))
widths = st.floats(280, 2400)
zooms = st.sampled_from(list(Zoom))


def _measure(text: str, strong: bool) -> float:  # noqa: FBT001 - a `Measure` is called with both
    return len(text) * (6.0 if strong else 5.8)


@given(now=days, width=widths, zoom=zooms, years=st.booleans(), past=st.integers(0, 4000))
def test_today_stays_where_it_is(*, now: datetime, width: float, zoom: Zoom, years: bool, past: int) -> None:
    """Whoever zooms would lose today, and with it every bead."""
    whole = fold(now, now + timedelta(days=3650), width, years=years, since=now - timedelta(days=past))
    axis = lay(whole, zoom)
    assert axis.today == pytest.approx(whole.today)
    assert axis.width == pytest.approx(width)
    assert axis.pieces[0].start <= now - timedelta(days=1)


@given(now=days, width=widths, zoom=zooms, scale=st.floats(0.8, 2.2))
def test_labels_and_grid_fit_from_near_too(*, now: datetime, width: float, zoom: Zoom, scale: float) -> None:
    """Labels would run into each other, into the ribbon or off the sheet; lines would be a grey wash."""
    axis = lay(fold(now, now + timedelta(days=3650), width), zoom)
    clear = CLEAR * max(1.0, scale)
    ticks = labels(axis, lambda text, strong: _measure(text, strong) * scale, clear)
    for one, other in pairwise(ticks):
        assert one.right + GAP <= other.left + 1e-6
    assert all(tick.right <= axis.today - clear or tick.left >= axis.today + clear for tick in ticks)
    lines = [line.x for line in grid(axis)]
    assert lines == sorted(lines)
    assert zoom is Zoom.ALL or all(other - one > 4 for one, other in pairwise(lines))


@pytest.mark.parametrize(
    ("zoom", "width", "texts"),
    [
        (Zoom.MONTH, 774, "4 May 18 May 25 1 Jun 8"),
        (Zoom.YEAR, 774, "Feb Mar Apr Jul Aug Sep Oct Nov Dec 2027 Feb Mar Apr May"),
        (Zoom.YEAR, 400, "Oct 2027 Apr"),
    ],
)
def test_labels_of_the_practice_sheet_from_near(zoom: Zoom, width: int, texts: str) -> None:
    """The head of the sheet would name other days than those below it."""
    found = labels(lay(fold(NOW, END, width), zoom), _measure)
    assert " ".join(tick.text for tick in found) == texts


def test_on_a_wide_sheet_every_day_of_the_month_is_named() -> None:
    """A wide screen would say no more than a narrow one."""
    found = [tick.text for tick in labels(lay(fold(NOW, END, 1400), Zoom.MONTH), _measure)]
    assert found[found.index("15 May") :][:4] == ["15 May", "16", "17", "18"]
    assert found[found.index("1 Jun") :] == ["1 Jun", *map(str, range(2, 13))]


def test_the_past_reaches_back_to_the_first_proof() -> None:
    """A proof of five years ago would be cut off at the left, as if nobody had ever seen it."""
    first = datetime(2021, 3, 1, tzinfo=UTC)
    axis = fold(NOW, END, 774, since=first)
    assert axis.pieces[0].leaf is Leaf.LAST_YEAR
    assert axis.x(first) == (0.0, 0)
    assert fold(NOW, END, 774, since=NOW - timedelta(days=9)) == fold(NOW, END, 774)
    assert all(other.x - one.x > 4 for one, other in pairwise(grid(axis)[:4]))


def test_steps_end_at_the_ends() -> None:
    """Turning the wheel on would jump from the month to all of it."""
    assert Zoom.MONTH.stepped(-1) is Zoom.MONTH
    assert Zoom.MONTH.stepped(1) is Zoom.YEAR
    assert Zoom.YEAR.stepped(5) is Zoom.ALL


def test_what_is_due_stands_where_it_falls_and_a_dozen_at_most() -> None:
    """The shapes of three hundred and fifty devices would be a saw, or one of them would stand nowhere."""
    many = tuple(
        made_pass("Ines", f"phone {n}", made=NOW - timedelta(days=2 * n), ends=NOW + timedelta(days=730 - 2 * n))
        for n in range(350)
    )
    seen = sight(snapshot(passes=many))
    found = by_day(seen.duties or (), seen.at)
    for zoom in Zoom:
        axis = lay(fold(NOW, END, 774), zoom)
        shapes = dues(axis, found)
        assert 0 < len(shapes) <= MOST
        assert all(other.x - one.x >= APART for one, other in pairwise(shapes))
        told = [day for one in shapes for day in one.days]
        assert told == [day for day in found if not axis.x(day.at).cut]


def test_a_shape_says_what_it_asks_for() -> None:
    """A shape would be a riddle."""
    seen = sight(snapshot())
    assert listed(seen.due_days[:1]) == "14 May 2026: Let Boiler engineer’s phone end, or give it more days"
    lines = listed(seen.due_days).splitlines()
    assert len(lines) == 5
    assert lines[-1].startswith("and ")


def wheel(target: QWidget, turned: int, *, ctrl: bool = True) -> None:
    """Turn the wheel over a widget."""
    held = Qt.KeyboardModifier.ControlModifier if ctrl else Qt.KeyboardModifier.NoModifier
    where = QPointF(100, 20)
    event = QWheelEvent(
        where, QPointF(target.mapToGlobal(where.toPoint())), QPoint(), QPoint(0, turned),
        Qt.MouseButton.NoButton, held, Qt.ScrollPhase.NoScrollPhase, False,  # noqa: FBT003 - Qt's arguments
    )  # fmt: skip
    QApplication.sendEvent(target, event)


def test_ctrl_and_the_wheel_zoom_and_the_wheel_alone_does_not(board: BoardView) -> None:
    """Scrolling would zoom, or the wheel would do nothing where the mouse is."""
    shown: list[Zoom] = []
    board.zoomed.connect(shown.append)
    wheel(board.people.viewport(), 120)
    wheel(board.house.viewport(), 120)
    wheel(board.house.viewport(), 120)
    wheel(board.header, -240)
    assert shown == [Zoom.YEAR, Zoom.MONTH, Zoom.ALL]
    wheel(board.people.viewport(), 120, ctrl=False)
    assert len(shown) == 3
    for _ in range(3):
        wheel(board.header, 40)
    assert shown[3:] == [Zoom.YEAR]


def test_the_ribbon_and_the_rows_stay_while_the_axis_comes_near(board: BoardView) -> None:
    """Rows would jump with every step."""
    board.people.go(3)
    before = board.people.ruling
    assert before is not None
    tops = [board.people.rowViewportPosition(row) for row in range(5)]
    for zoom in Zoom:
        board.show_time(zoom)
        assert board.people.ruling is not None
        assert board.people.ruling.ribbon == before.ribbon
        assert [board.people.rowViewportPosition(row) for row in range(5)] == tops
        assert board.people.chosen() == 3


def test_a_screen_reader_hears_how_the_axis_lies_and_what_is_due(board: BoardView) -> None:
    """Whoever cannot see the sheet would not know what part of time is on it."""
    told = board.header.accessibleDescription().splitlines()
    assert told[0].startswith("Time runs to the right and is folded: last year")
    assert told[1].startswith("To be done next, ")
    board.show_time(Zoom.MONTH)
    assert board.header.accessibleDescription().startswith("Time runs to the right: one month ahead, day by day.")
    board.show_time(Zoom.ALL)
    old = replace(PASSES[0], proofs=(Proof(datetime(2021, 3, 1, tzinfo=UTC), Way.TOLD, ""),))
    board.show(snapshot(passes=(old, *PASSES[1:])))
    assert "the past since 2021" in board.header.accessibleDescription()
    assert "since 2021" in [text.text for text in board.header.texts()]


def test_a_shape_tells_by_tooltip_and_opens_the_day_list(board: BoardView, qtbot: QtBot) -> None:
    """What is due could be seen and not reached."""
    assert board.header.ruling is not None
    first = board.header.dues[0]
    spot = QPoint(round(board.header.ruling.columns.axis.left + first.x), board.header.height() - 4)
    QApplication.sendEvent(board.header, QHelpEvent(QHelpEvent.Type.ToolTip, spot, board.header.mapToGlobal(spot)))
    assert QToolTip.text() == listed(first.days)
    QToolTip.hideText()
    with qtbot.waitSignal(board.header.asked):
        QTest.mouseClick(board.header, Qt.MouseButton.LeftButton, pos=spot)
