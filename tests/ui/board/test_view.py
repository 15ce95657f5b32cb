"""The board in hand: keys, mouse, Find, selection, what a click leads to."""

from __future__ import annotations

from datetime import UTC, datetime

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QContextMenuEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QMenu
from pytestqt.qtbot import QtBot

from hearthkey.core.passes import Pass
from hearthkey.ui.board.menu import actions
from hearthkey.ui.board.rows import Column
from hearthkey.ui.board.view import BoardView
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.ways import Ways
from tests.ui.practice import NOW, PASSES, made_pass, snapshot

Key = Qt.Key


def _devices(board: BoardView) -> list[str]:
    return [f"{entry.who} {getattr(entry.source, 'device', '')}" for entry in board.people.rows.entries]


def _here(board: BoardView) -> str:
    return _devices(board)[board.people.chosen()] if board.people.chosen() >= 0 else ""


def _press(board: BoardView, *keys: Key) -> None:
    for key in keys:
        QTest.keyClick(board.people, key)


def _point(board: BoardView, row: int, column: Column) -> QPoint:
    return board.people.visualRect(board.people.rows.index(row, column)).center()


def test_down_goes_from_device_to_device(board: BoardView) -> None:
    """A key would land on nothing between two people."""
    board.people.go(0)
    walked = []
    for _ in range(len(PASSES)):
        walked.append(_here(board))
        _press(board, Key.Key_Down)
    assert walked == _devices(board)
    assert board.house.chosen() == 0
    assert board.selected() is None


def test_up_from_the_house_leads_back(board: BoardView) -> None:
    """Whoever went down to the house by key would be caught there."""
    board.house.go(0)
    QTest.keyClick(board.house, Key.Key_Up)
    assert _here(board) == "Boiler engineer phone"
    assert board.house.chosen() == -1


@pytest.mark.parametrize(
    ("key", "device"),
    [(Key.Key_End, "Boiler engineer phone"), (Key.Key_Home, "Ines phone"), (Key.Key_Up, "Tomasz laptop")],
)
def test_far_keys(board: BoardView, key: Key, device: str) -> None:
    """Home and End would not reach the ends of the sheet."""
    board.people.go(4)
    _press(board, key)
    assert _here(board) == device


def test_left_and_right_walk_the_life_line(board: BoardView) -> None:
    """The dates of a life line would be in the picture only."""
    board.people.go(4)
    told = []
    for key in (Key.Key_Left, Key.Key_Left, Key.Key_Left, Key.Key_Right, Key.Key_Right, Key.Key_Right):
        _press(board, key)
        event = board.people.event_here()
        told.append("" if event is None else f"{event.at:%d %b %Y} {event.text}")
    assert told == [
        "21 Apr 2026 handed over",
        "20 Apr 2026 made",
        "20 Apr 2026 made",
        "21 Apr 2026 handed over",
        "12 May 2026 today: never proved",
        "19 Apr 2028 ends",
    ]
    _press(board, Key.Key_Escape)
    assert board.people.event_here() is None


def test_enter_opens_the_device(qtbot: QtBot, board: BoardView, ways: Ways) -> None:
    """The keyboard would have no way into the drawer."""
    board.select(PASSES[3].identity)
    with qtbot.waitSignal(ways.device) as opened:
        _press(board, Key.Key_Return)
    assert opened.args == [PASSES[3].identity]


def test_enter_opens_a_row_of_the_house(qtbot: QtBot, board: BoardView) -> None:
    """The revocation list could be seen and not reached."""
    board.house.go(1)
    with qtbot.waitSignal(board.house_opened) as opened:
        QTest.keyClick(board.house, Key.Key_Return)
    assert opened.args == ["list"]


def test_click_opens_and_selects(qtbot: QtBot, board: BoardView, ways: Ways) -> None:
    """A single click would do nothing."""
    with qtbot.waitSignal(ways.device) as opened:
        QTest.mouseClick(board.people.viewport(), Qt.MouseButton.LeftButton, pos=_point(board, 6, Column.AXIS))
    assert opened.args == [PASSES[6].identity]
    assert board.selected() == PASSES[6]


def test_click_on_a_name_takes_the_row(board: BoardView) -> None:
    """A click on a person's name would select a cell that stands for nothing."""
    QTest.mouseClick(board.people.viewport(), Qt.MouseButton.LeftButton, pos=_point(board, 0, Column.WHO))
    assert board.people.currentIndex().column() == Column.DEVICE
    assert board.selected() == PASSES[0]


@pytest.mark.parametrize(
    ("row", "way", "said"), [(3, "hand_over", PASSES[3].serial), (5, "let_in", PASSES[5].identity)]
)
def test_click_on_the_next_step_does_it(
    qtbot: QtBot, board: BoardView, ways: Ways, row: int, way: str, said: str
) -> None:
    """The arrow and its word would lead elsewhere than they say."""
    with qtbot.waitSignal(getattr(ways, way)) as led:
        QTest.mouseClick(board.people.viewport(), Qt.MouseButton.LeftButton, pos=_point(board, row, Column.ACTION))
    assert led.args == [said]


@pytest.mark.parametrize("key", [Key.Key_Menu, Key.Key_F10])
def test_menu_key_shows_all_actions(qtbot: QtBot, board: BoardView, ways: Ways, key: Key) -> None:
    """Without a mouse a device could not be stopped from the sheet."""
    board.people.go(3)
    shift = Qt.KeyboardModifier.ShiftModifier if key == Key.Key_F10 else Qt.KeyboardModifier.NoModifier
    QTest.keyClick(board.people, key, shift)
    menu = QApplication.activePopupWidget()
    assert isinstance(menu, QMenu)
    words = [action.text() for action in menu.actions() if not action.isSeparator()]
    assert words == [
        "Show Tomasz’s laptop",
        "Hand over…",
        "Stop…",
        "New pass for this device…",
        "New device for Tomasz…",
        "Revoke for good…",
        "Tomasz leaves the household…",
    ]
    with qtbot.waitSignal(ways.stop) as led:
        menu.actions()[2].trigger()
    assert led.args == [PASSES[3].identity]
    menu.close()


def test_right_click_takes_the_row(board: BoardView) -> None:
    """The menu would be about another row than the one under the mouse."""
    point = _point(board, 5, Column.AXIS)
    reason = QContextMenuEvent.Reason.Mouse
    event = QContextMenuEvent(reason, point, board.people.viewport().mapToGlobal(point))
    QApplication.sendEvent(board.people.viewport(), event)
    assert board.selected() == PASSES[5]
    menu = QApplication.activePopupWidget()
    assert isinstance(menu, QMenu)
    menu.close()


@pytest.mark.parametrize(
    ("number", "words"),
    [
        (0, "Show Ines’s phone|Prove it…|Stop…|Renew…|Replace this device…|New device for Ines…|-|{last}"),
        (2, "Show Ines’s old phone|New pass for this device…|New device for Ines…"),
        (5, "Show Tomasz’s old phone|Let back in…|Renew…|Replace this device…|New device for Tomasz…|-|{last}"),
    ],
)
def test_menu_offers_what_the_state_allows(number: int, words: str, ways: Ways) -> None:
    """The menu would offer to stop what is stopped, or to revoke what is final."""
    found = actions(PASSES[number], NOW, ways, read_only=False)
    last = f"Revoke for good…|{PASSES[number].person} leaves the household…"
    assert "|".join("-" if act is None else act[0] for act in found) == words.format(last=last)
    assert len(actions(PASSES[number], NOW, ways, read_only=True)) == 1


def test_letters_lead_to_a_device(board: BoardView) -> None:
    """Typing a name at the sheet would do nothing."""
    board.people.go(0)
    for letters, device in (("o", "Ines old phone"), ("o", "Tomasz old phone"), ("o", "Odile phone")):
        board.people.keyboardSearch(letters)
        assert _here(board) == device


def test_find_marks_and_goes_on(board: BoardView) -> None:
    """Find would say how many there are and lead nowhere."""
    assert board.find("phone") == 5
    seen = [_here(board)]
    for _ in range(5):
        _press(board, Key.Key_F3)
        seen.append(_here(board))
    assert seen == [
        "Ines phone",
        "Ines old phone",
        "Tomasz old phone",
        "Odile phone",
        "Boiler engineer phone",
        "Ines phone",
    ]
    assert board.find("tomasz’s lap") == 2
    assert _here(board) == "Tomasz laptop"
    assert board.find("no such") == 0
    assert board.find("") == 0


def test_new_look_keeps_selection_and_scroll(board: BoardView) -> None:
    """After every change the reader would have to find their place again."""
    many = [made_pass(f"Guest {number:03}", "phone", made=NOW, ends=PASSES[0].not_after) for number in range(300)]
    board.show(snapshot(passes=(*PASSES, *many)))
    board.select(many[200].identity)
    board.select(many[200].serial)
    place = board.people.verticalScrollBar().value()
    assert place > 0
    picked: list[Pass | None] = []
    board.picked.connect(picked.append)
    board.show(snapshot(passes=(*PASSES, *many[:50], *many[51:])))
    assert board.selected() == many[200]
    assert board.people.verticalScrollBar().value() == place
    assert picked in ([], [many[200]])


def test_draft_is_shown_and_forgotten(board: BoardView, ways: Ways) -> None:
    """While a device is typed in, the sheet would not show where it will stand."""
    board.select(PASSES[1].identity)
    ways.draft.emit("Odile", "tablet", datetime(2028, 5, 24, tzinfo=UTC))
    assert "Odile tablet" in _devices(board)
    assert board.selected() == PASSES[1]
    ways.draft.emit("Odile", "", None)
    assert "Odile new device" in _devices(board)
    ways.draft.emit("", "", None)
    assert board.people.rows.number_of("draft") == -1


def test_nobody_yet(qtbot: QtBot, board: BoardView, ways: Ways) -> None:
    """On the first evening the sheet would be empty and say nothing."""
    board.show(snapshot(passes=()))
    assert board.question.isVisible()
    with qtbot.waitSignal(ways.new_device) as led:
        QTest.mouseClick(board.question.button, Qt.MouseButton.LeftButton)
    assert led.args == [""]
    assert "first line" in board.question.button.accessibleDescription()
    board.show(snapshot())
    assert not board.question.isVisible()
    assert not board.question.button.isVisible()


def test_narrow_sheets_leave_the_step_to_the_menu(board: BoardView) -> None:
    """On a narrow window the life lines would be squeezed by a column of arrows."""
    assert not board.people.isColumnHidden(Column.ACTION)
    board.set_compact(compact=True)
    assert board.people.isColumnHidden(Column.ACTION)
    board.set_compact(compact=False)
    board.resize(1000, 545)
    assert board.people.isColumnHidden(Column.ACTION)


def test_stacked_sheet_keeps_the_focus_on_a_visible_cell(board: BoardView) -> None:
    """A screen reader would stand on a column that is hidden."""
    board.people.go(2)
    board.resize(560, 545)
    assert board.people.isColumnHidden(Column.DEVICE)
    assert board.people.currentIndex().column() == Column.AXIS
    _press(board, Key.Key_Down)
    assert _here(board) == "Tomasz laptop"


def test_names_for_screen_readers(board: BoardView) -> None:
    """A part of the board would be read as "table" and no more."""
    assert board.people.accessibleName() == "People and their devices"
    assert board.house.accessibleName() == "The house"
    assert "folded" in board.header.accessibleDescription()
    assert board.focusProxy() is board.people


def test_rows_draw_closer_where_that_saves_a_scroll_bar(board: BoardView) -> None:
    """A scroll bar would appear for the sake of a few pixels."""
    assert board.people.rowHeight(1) == 39
    board.resize(1280, 520)
    assert board.people.rowHeight(1) == 35
    assert board.people.verticalScrollBar().maximum() == 0
    board.resize(1280, 400)
    assert board.people.rowHeight(1) == 39


def test_theme_changes_reach_the_sheet(board: BoardView, theme: Theme) -> None:
    """After a change of type size rows would keep their old height and names would be cut."""
    before = board.people.rowHeight(1)
    theme.choose("lamp", 1.5)
    assert board.people.rowHeight(1) > before
    assert board.header.height() == 75
