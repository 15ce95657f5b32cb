"""Among ten thousand devices a look costs what is new, and leaves selection, focus and place alone."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from datetime import timedelta

import pytest
from PySide6.QtTest import QAbstractItemModelTester
from pytestqt.qtbot import QtBot

from hearthkey.core.passes import Pass
from hearthkey.core.revocation import Reason
from hearthkey.ui.board.heights import Heights
from hearthkey.ui.board.ruling import Ruling
from hearthkey.ui.board.view import BoardView
from hearthkey.ui.sight import Sight, sight_after
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.ways import Ways
from tests.ui.practice import NOW, made_pass, snapshot

COUNT = 10_000
MANY = tuple(
    made_pass(f"P{number // 4}", f"d{number % 4}", made=NOW, ends=NOW + timedelta(days=700)) for number in range(COUNT)
)
HERE = 5003


def look(before: Sight | None, passes: tuple[Pass, ...] = MANY) -> Sight:
    """A look at the household as the lane makes it; nothing of it is the object of an earlier one."""
    later = NOW if before is None else before.at + timedelta(minutes=1)
    return sight_after(before, snapshot(later, passes=tuple(replace(one) for one in passes)))


def stopped(number: int) -> tuple[Pass, ...]:
    """All of them, one stopped."""
    one = replace(MANY[number], reason=Reason.CERTIFICATE_HOLD, since=NOW)
    return (*MANY[:number], one, *MANY[number + 1 :])


def enrolled(number: int) -> tuple[Pass, ...]:
    """All of them, and one more behind the one with that number."""
    one = made_pass(MANY[number].person, "new", made=NOW, ends=NOW + timedelta(days=700))
    return (*MANY[: number + 1], one, *MANY[number + 1 :])


CHANGES = {"refresh": MANY, "stop": stopped(HERE - 1), "enrol": enrolled(HERE - 4), "forget": MANY[:7] + MANY[8:]}


@pytest.fixture(scope="module")
def first() -> Sight:
    """The first look."""
    return look(None)


@pytest.fixture
def full(qtbot: QtBot, theme: Theme, first: Sight) -> Iterator[BoardView]:
    """A board with ten thousand rows, one of them selected far down."""
    view = BoardView(theme, Ways())
    qtbot.addWidget(view)
    view.resize(1280, 545)
    view.show(first)
    with qtbot.waitExposed(view):
        view.show()
    view.people.setFocus()
    view.people.go(HERE)
    yield view
    view.show(snapshot())


@pytest.mark.parametrize("change", list(CHANGES))
def test_selection_focus_and_place_stay(full: BoardView, first: Sight, change: str) -> None:
    """Whoever reads far down the sheet would be thrown off the row by a change somewhere else."""
    tester = QAbstractItemModelTester(full.people.rows, QAbstractItemModelTester.FailureReportingMode.Fatal)
    place = full.people.rowViewportPosition(HERE)
    full.show(look(first, CHANGES[change]))
    chosen = full.selected()
    assert chosen is not None
    assert chosen.serial == MANY[HERE].serial
    assert full.people.currentIndex().row() == full.people.chosen()
    assert full.people.hasFocus()
    if change in {"refresh", "stop"}:
        assert full.people.rowViewportPosition(HERE) == place
    assert tester.model() is full.people.rows


@pytest.mark.parametrize(
    ("change", "most"), [("refresh", 0), ("stop", 2), ("enrol", 7), ("forget", 5)]
)  # of a person's four or five rows each may begin or end the person now
def test_only_what_changed_is_measured(
    full: BoardView, first: Sight, change: str, most: int, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The window would stand still while the heights of ten thousand rows are worked out."""
    asked: list[int] = []
    of = Heights.of

    def counted(heights: Heights, ruling: Ruling, number: int) -> int:
        asked.append(number)
        return of(heights, ruling, number)

    house = len(full.house.rows.entries)
    monkeypatch.setattr(Heights, "of", counted)
    full.show(look(first, CHANGES[change]))
    assert len(asked) <= most + house


@pytest.mark.parametrize("change", list(CHANGES))
def test_heights_are_those_of_a_sheet_laid_anew(full: BoardView, first: Sight, change: str) -> None:
    """After a change a row would overlap the next one, or leave a gap."""
    full.show(look(first, CHANGES[change]))
    ruling = full.people.ruling
    assert ruling is not None
    entries = full.people.rows.entries
    assert len(entries) == len(CHANGES[change])
    wanted = [ruling.box(entry, number).height for number, entry in enumerate(entries)]
    assert [full.people.rowHeight(number) for number in range(len(entries))] == wanted


def test_a_drawer_beside_it_measures_nothing(full: BoardView, monkeypatch: pytest.MonkeyPatch) -> None:
    """Opening the drawer would stop the window."""
    asked: list[int] = []
    monkeypatch.setattr(Heights, "of", lambda _heights, _ruling, number: asked.append(number))
    full.set_compact(compact=True)
    full.resize(868, 545)
    assert asked == []
