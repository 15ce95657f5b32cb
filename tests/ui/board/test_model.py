"""The model tells the truth about its rows, and a new look never resets it."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from PySide6.QtCore import QModelIndex, QPersistentModelIndex, Qt
from PySide6.QtTest import QAbstractItemModelTester
from pytestqt.qtbot import QtBot

from hearthkey.core.passes import Pass
from hearthkey.ui.board.life import pass_row
from hearthkey.ui.board.model import BoardModel
from hearthkey.ui.board.rows import Column, Row
from hearthkey.ui.entries import Entry, people
from tests.ui.practice import NOW, PASSES, made_pass


def _work(entry: Entry) -> Row:
    assert isinstance(entry.source, Pass)
    return pass_row(entry.source, NOW)


def _show(model: BoardModel, passes: Sequence[Pass]) -> None:
    model.show(people(passes, NOW), _work)


def _keys(model: BoardModel) -> list[str]:
    return [entry.key for entry in model.entries]


def test_model_passes_qts_tester(qtbot: QtBot) -> None:
    """A view or a screen reader would be told of rows that are not there."""
    del qtbot
    model = BoardModel()
    tester = QAbstractItemModelTester(model, QAbstractItemModelTester.FailureReportingMode.Fatal)
    for passes in (PASSES, PASSES[:3], PASSES[::-1], (), PASSES[4:], PASSES):
        _show(model, passes)
    assert model.rowCount() == len(PASSES)
    assert tester.model() is model


@settings(max_examples=60, deadline=None)
@given(st.lists(st.permutations(range(len(PASSES))).flatmap(lambda one: st.integers(0, 9).map(lambda n: one[:n]))))
def test_any_look_after_any_other(looks: list[list[int]]) -> None:
    """After some change the rows would stand in another order than the register's, or one would be lost."""
    model = BoardModel()
    tester = QAbstractItemModelTester(model, QAbstractItemModelTester.FailureReportingMode.Fatal)
    resets: list[bool] = []
    model.modelReset.connect(lambda: resets.append(True))
    for look in looks:
        chosen = [PASSES[number] for number in look]
        _show(model, chosen)
        assert _keys(model) == [entry.key for entry in people(chosen, NOW)]
    assert not resets
    assert tester.model() is model


def test_rows_keep_their_identity(qtbot: QtBot) -> None:
    """A selected device would lose its selection when another one is added above it."""
    del qtbot
    model = BoardModel()
    _show(model, PASSES)
    kept = [QPersistentModelIndex(model.index(number, Column.DEVICE)) for number in range(model.rowCount())]
    names = [index.data() for index in kept]
    added = made_pass("Ines", "watch", made=NOW, ends=PASSES[0].not_after)
    _show(model, (added, *PASSES[::-1]))
    assert [index.data() for index in kept] == names
    assert [index.row() for index in kept] != list(range(len(PASSES)))


def test_a_move_moves_one_row(qtbot: QtBot) -> None:
    """Revoking one device would move the whole sheet under the reader's eyes."""
    del qtbot
    model = BoardModel()
    _show(model, PASSES)
    moved: list[tuple[int, int]] = []
    model.rowsMoved.connect(lambda _a, start, _c, _d, to: moved.append((start, to)))
    model.show([model.entries[number] for number in (1, 2, 3, 4, 5, 0, 6, 7, 8)], _work)
    assert moved == [(0, 6)]


@pytest.mark.parametrize("column", list(Column))
def test_every_cell_is_spoken(column: Column, qtbot: QtBot) -> None:
    """A screen reader would find a cell without words."""
    del qtbot
    model = BoardModel()
    _show(model, PASSES)
    spoken = [
        model.index(number, column).data(Qt.ItemDataRole.AccessibleTextRole) for number in range(model.rowCount())
    ]
    assert all(isinstance(text, str) and text for text in spoken)
    heads = [
        model.headerData(number, Qt.Orientation.Vertical, Qt.ItemDataRole.AccessibleTextRole)
        for number in range(model.rowCount())
    ]
    assert heads[:2] == ["phone", "tablet"]


def test_names_are_not_taken(qtbot: QtBot) -> None:
    """Down would land on a name that stands for several devices."""
    del qtbot
    model = BoardModel()
    _show(model, PASSES)
    assert not model.flags(model.index(0, Column.WHO)) & Qt.ItemFlag.ItemIsSelectable
    assert model.flags(model.index(0, Column.AXIS)) & Qt.ItemFlag.ItemIsSelectable
    assert model.flags(QModelIndex()) == Qt.ItemFlag.NoItemFlags


def test_ten_thousand_rows_are_worked_out_when_seen(qtbot: QtBot) -> None:
    """A household of many years would open slowly, because every row is worked out before the first is seen."""
    del qtbot
    many = [made_pass(f"P{number % 40}", f"d{number}", made=NOW, ends=PASSES[0].not_after) for number in range(10_000)]
    worked: list[str] = []

    def work(entry: Entry) -> Row:
        worked.append(entry.key)
        return _work(entry)

    model = BoardModel()
    model.show(people(many, NOW), work)
    assert model.rowCount() == 10_000
    assert worked == []
    assert model.index(9_000, Column.AXIS).data() == "waiting, in the tray"
    assert len(worked) == 1
    assert all(one.place < other.place or other.first for one, other in pairwise(model.entries))
