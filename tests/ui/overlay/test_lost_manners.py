"""Lost or stolen: focus, names, and whether everything can be read."""

from __future__ import annotations

from datetime import timedelta

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QShortcut
from PySide6.QtWidgets import QWidget
from pytestqt.qtbot import QtBot

from hearthkey.core.errors import Unavailable
from hearthkey.ui.theme.theme import Theme
from tests.ui.overlay.looking import beyond, cut, nameless, settle, stops
from tests.ui.overlay.room import Open
from tests.ui.practice import NOW, PASSES, made_pass, snapshot


def test_esc_keeps_the_text_and_gives_the_focus_back(room: Open) -> None:
    """Broken if it fails: Esc loses what was typed, or leaves the keyboard nowhere."""
    here = room()
    here.type("ines ta")
    here.press(Qt.Key.Key_Escape)
    assert not here.sheet.isVisible()
    assert here.behind.hasFocus()
    assert here.errands.asked("stop") == []
    here.ways.lost.emit("")
    assert here.field.text() == "ines ta"
    assert here.field.selectedText() == "ines ta"


def test_esc_is_not_taken_by_a_shortcut_of_the_window(room: Open) -> None:
    """Broken if it fails: Esc closes the drawer behind the sheet instead of the sheet."""
    here = room()
    taken: list[bool] = []
    shortcut = QShortcut(Qt.Key.Key_Escape, here.window)
    shortcut.activated.connect(lambda: taken.append(True))
    here.type("in")
    here.press(Qt.Key.Key_Escape)
    assert not here.sheet.isVisible()
    assert taken == []


def test_where_the_focus_was_can_be_gone(room: Open, qtbot: QtBot) -> None:
    """Broken if it fails: closing the sheet touches a widget that no longer exists."""
    here = room()
    here.type("in")
    here.behind.hide()
    with qtbot.waitSignal(here.ways.closed):
        here.press(Qt.Key.Key_Escape)


def test_text_given_along_is_searched(room: Open) -> None:
    """Broken if it fails: "lost" on a row of the board forgets which row."""
    here = room()
    here.ways.lost.emit("Tomasz’s laptop")
    assert here.names()[0] == "Tomasz’s laptop: waiting, in the tray"
    assert here.sheet.body.asking.rows.told().endswith("1 of 2")


def test_the_focus_stays_on_the_sheet(room: Open) -> None:
    """Broken if it fails: Tab wanders off behind the veil."""
    here = room()
    here.type("in")
    seen: list[QWidget] = []
    for _ in range(len(stops(here.sheet)) + 1):
        here.press(Qt.Key.Key_Tab)
        focus = here.window.focusWidget()
        assert focus is not None
        assert here.sheet.isAncestorOf(focus)
        seen.append(focus)
    assert here.field in seen
    assert here.sheet.body.asking.commit in seen
    here.field.setFocus()
    here.press(Qt.Key.Key_Backtab, Qt.KeyboardModifier.ShiftModifier)
    assert here.sheet.isAncestorOf(here.window.focusWidget())


def test_enter_on_a_button_presses_that_button(room: Open) -> None:
    """Broken if it fails: with the focus on Close, Enter stops the device."""
    here = room()
    here.type("in")
    here.sheet.body.head.close_button.setFocus()
    here.press(Qt.Key.Key_Return)
    assert not here.sheet.isVisible()
    assert here.errands.asked("stop") == []


def test_trouble_is_said_in_place(room: Open) -> None:
    """Broken if it fails: a full disk looks like success."""
    here = room()
    here.errands.refuse["stop"] = Unavailable("disk-full", path="lists")
    here.type("in")
    here.press(Qt.Key.Key_Return)
    assert here.sheet.body.asking.isVisible()
    assert any(words.startswith("The disk is full (lists).") for words in here.spoken)
    del here.errands.refuse["stop"]
    here.field.setFocus()
    here.press(Qt.Key.Key_Return)
    assert here.voice.startswith("Ines’s phone was stopped")


def test_a_new_look_keeps_the_chosen_row(room: Open) -> None:
    """Broken if it fails: while somebody chooses, a refresh moves the choice to another device."""
    here = room()
    here.type("in")
    here.press(Qt.Key.Key_Down)
    here.errands.now_is(snapshot(passes=PASSES[1:]))
    here.press(Qt.Key.Key_Return)
    assert here.errands.asked("stop") == [PASSES[1].identity]


def test_every_control_has_a_name(room: Open) -> None:
    """Broken if it fails: a screen reader says "button" and nothing else."""
    here = room(snapshot(locked=True))
    here.type("in")
    assert nameless(here.sheet) == []
    here.press(Qt.Key.Key_Return)
    assert nameless(here.sheet) == []
    assert here.names()[0] == "Ines’s phone: never proved, in use since 12 April"


LONG = made_pass(
    "Wilhelmina Bartholomea Featherstonehaugh-Cholmondeley of Quince",
    "the very old tablet in the kitchen drawer, second from the left",
    made=NOW,
    ends=NOW + timedelta(days=400),
    handed_over=NOW,
)
RIGHT_TO_LEFT = made_pass(
    "אינס כהן", "טלפון ישן", made=NOW, ends=NOW + timedelta(days=400), handed_over=NOW, code="rtl77777"
)


@pytest.mark.parametrize("scale", [1.0, 2.0])
@pytest.mark.parametrize("size", [(1280, 800), (1024, 640), (640, 480)])
@pytest.mark.parametrize("letters", ["in", "wilhelmina", "אי", "zz"])
def test_nothing_is_cut(room: Open, theme: Theme, scale: float, size: tuple[int, int], letters: str) -> None:
    """Broken if it fails: with large type or in a small window a name or a button is cut."""
    theme.choose("paper", scale)
    here = room(snapshot(passes=(*PASSES, LONG, RIGHT_TO_LEFT), locked=True), size)
    here.type("", text=letters)
    here.sheet.body.asking.stop()
    settle()
    assert cut(here.sheet) == []
    assert beyond(here.sheet) == []
    rows = here.sheet.body.asking.rows
    if rows.isVisible():
        assert rows.height() >= rows.sizeHintForRow(0)
    here.errands.unlock_now()
    here.sheet.body.asking.stop()
    settle()
    assert cut(here.sheet) == []


def test_a_low_window_shows_fewer_rows_but_the_chosen_one(room: Open, theme: Theme) -> None:
    """Broken if it fails: in a low window the button lies below the edge, or Down chooses out of sight."""
    theme.choose("paper", 2.0)
    here = room(size=(1024, 640))
    here.type("in")
    settle()
    rows = here.sheet.body.asking.rows
    assert rows.height() < rows.wanted()
    here.press(Qt.Key.Key_Down)
    settle()
    assert rows.visualRect(rows.currentIndex()).intersects(rows.viewport().rect())
    button = here.sheet.body.asking.commit
    assert button.mapTo(here.sheet, button.rect().bottomLeft()).y() <= here.sheet.height()


def test_it_can_slide_too(room: Open, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch) -> None:
    """Broken if it fails: with motion the sheet never arrives, or never leaves."""
    monkeypatch.setattr(Theme, "still", property(lambda _theme: False))
    here = room()
    here.type("in")
    qtbot.waitUntil(lambda: here.sheet.hangs)
    here.press(Qt.Key.Key_Escape)
    qtbot.waitUntil(lambda: not here.sheet.isVisible())
