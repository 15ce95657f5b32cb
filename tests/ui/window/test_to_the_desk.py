"""The ways to the desk and back, in the real window."""

from __future__ import annotations

from dataclasses import replace

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from hearthkey.core.errors import Refused
from hearthkey.ui.desk.desk import Desk
from hearthkey.ui.sight import sight
from hearthkey.ui.window import Window

CONTROL, SHIFT = Qt.KeyboardModifier.ControlModifier, Qt.KeyboardModifier.ShiftModifier


@pytest.fixture
def desk(window: Window, monkeypatch: pytest.MonkeyPatch) -> Desk:
    """The desk of the window, in a house without a network: a test opens no door of this computer to others."""

    def nowhere(*asked: object) -> None:
        failed = asked[-1]
        assert callable(failed)
        failed(Refused("ticket-address-none", known=("127.0.0.1",)))

    monkeypatch.setattr(window.outside.errands, "open_ticket", nowhere)
    found = window.findChild(Desk)
    assert isinstance(found, Desk)
    return found


def test_keys_lead_there_and_esc_leads_back_to_the_board(window: Window, desk: Desk, qtbot: QtBot) -> None:
    """Broken if it fails: the desk is found with a mouse alone, or the way back ends nowhere."""
    window.board.setFocus()
    QTest.keyClick(window.board, Qt.Key.Key_D, CONTROL | SHIFT)
    assert desk.isVisible()
    assert desk.isFullScreen()
    assert desk.sitting.turns is not None
    last = window.outside.errands.last
    assert last is not None
    assert [turn.one for turn in desk.sitting.turns.all] == list(sight(last).waiting.values())
    QTest.keyClick(desk, Qt.Key.Key_Escape)
    assert not desk.isVisible()
    qtbot.waitUntil(window.isActiveWindow)
    focus = QApplication.focusWidget()
    assert focus is not None
    assert window.board.isAncestorOf(focus)


def test_no_key_of_the_window_reaches_past_the_desk(window: Window, desk: Desk, qtbot: QtBot) -> None:
    """Broken if it fails: a key pressed at the table opens the search over everybody's devices."""
    window.ways.desk.emit(())
    qtbot.waitUntil(desk.isActiveWindow)
    for key in (Qt.Key.Key_L, Qt.Key.Key_F, Qt.Key.Key_D, Qt.Key.Key_N):
        QTest.keyClick(desk, key, CONTROL)
    assert not window.lost.isVisible()
    assert not window.drawer.is_open
    assert QApplication.focusWidget() is not window.top.field


def test_the_tray_leads_there_where_more_than_one_waits(window: Window, desk: Desk) -> None:
    """Broken if it fails: nobody finds the desk on the day it is for, or it is offered for one device."""
    button, seen = window.tray.desk, window.outside.errands.last
    assert seen is not None
    assert button.isVisible()
    button.click()
    assert desk.isVisible()
    desk.sitting.leave()
    waiting = list(sight(seen).waiting)
    one_left = tuple(one for one in seen.passes if one.serial not in waiting[1:])
    window.tray.show_snapshot(replace(seen, passes=one_left))
    assert not button.isVisible()


def test_those_that_are_named_come_alone(window: Window, desk: Desk) -> None:
    """Broken if it fails: somebody who is not at the table has a turn all the same."""
    seen = window.outside.errands.last
    assert seen is not None
    chosen = list(sight(seen).waiting)[-1]
    window.ways.desk.emit((chosen, "not a serial"))
    assert desk.sitting.turns is not None
    assert [turn.one.serial for turn in desk.sitting.turns.all] == [chosen]


def test_the_hand_over_page_lets_go_before_the_desk_opens(window: Window, desk: Desk) -> None:
    """Broken if it fails: words stand on the page behind, while the desk shows the code that they belong to."""
    seen = window.outside.errands.last
    assert seen is not None
    window.ways.hand_over.emit(next(iter(sight(seen).waiting)))
    window.ways.desk.emit(())
    assert window.pages.currentWidget() is window.sheet
    assert window.hand_over.leaving.passphrase is None
    assert desk.isVisible()


def test_closing_the_window_closes_the_desk(window: Window, desk: Desk) -> None:
    """Broken if it fails: the app cannot end, or a door outlives it."""
    window.ways.desk.emit(())
    window.close()
    assert not desk.isVisible()
    assert desk.sitting.turns is None
