"""The window without a mouse."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget
from pytestqt.qtbot import QtBot

from hearthkey.ui.drawer.diary_page import DiaryPage
from hearthkey.ui.drawer.enrol_page import EnrolPage
from hearthkey.ui.drawer.gateway_page import GatewayPage
from hearthkey.ui.drawer.help_page import HelpPage
from hearthkey.ui.drawer.page import Page
from hearthkey.ui.drawer.settings_page import SettingsPage
from hearthkey.ui.drawer.template_page import TemplatePage
from hearthkey.ui.window import Window

CONTROL = Qt.KeyboardModifier.ControlModifier
PLAIN = Qt.KeyboardModifier.NoModifier
PAGES = [
    (Qt.Key.Key_N, CONTROL, EnrolPage),
    (Qt.Key.Key_D, CONTROL, DiaryPage),
    (Qt.Key.Key_Comma, CONTROL, SettingsPage),
    (Qt.Key.Key_T, CONTROL, TemplatePage),
    (Qt.Key.Key_F1, PLAIN, HelpPage),
    (Qt.Key.Key_G, CONTROL, GatewayPage),
]


def press(_qtbot: QtBot, key: Qt.Key, modifier: Qt.KeyboardModifier = PLAIN) -> None:
    """Press a key wherever the focus is."""
    focus = QApplication.focusWidget()
    assert focus is not None
    QTest.keyClick(focus, key, modifier)


@pytest.mark.parametrize(("key", "modifier", "page"), PAGES)
def test_a_key_opens_its_page_and_esc_closes_it(
    window: Window, qtbot: QtBot, key: Qt.Key, modifier: Qt.KeyboardModifier, page: type[Page]
) -> None:
    """Broken if it fails: a part of the work needs a mouse."""
    press(qtbot, key, modifier)
    qtbot.waitUntil(lambda: isinstance(window.drawer.page(), page))
    press(qtbot, Qt.Key.Key_Escape)
    qtbot.waitUntil(lambda: not window.drawer.is_open)
    focus = QApplication.focusWidget()
    assert focus is not None
    assert window.board.isAncestorOf(focus)


def test_lost_or_stolen_opens_over_everything_and_esc_changes_nothing(window: Window, qtbot: QtBot) -> None:
    """Broken if it fails: the phone is gone and the way to stop it is somewhere in a menu."""
    before = window.outside.errands.last
    press(qtbot, Qt.Key.Key_L, CONTROL)
    qtbot.waitUntil(window.lost.isVisible)
    press(qtbot, Qt.Key.Key_Escape)
    qtbot.waitUntil(lambda: not window.lost.isVisible())
    assert window.outside.errands.last is before


def test_find_leads_to_the_row(window: Window, qtbot: QtBot) -> None:
    """Broken if it fails: with forty devices nobody finds Odile's."""
    press(qtbot, Qt.Key.Key_F, CONTROL)
    focus = QApplication.focusWidget()
    assert focus is window.top.field
    QTest.keyClicks(window.top.field, "odi")
    chosen = window.board.selected()
    assert chosen is not None
    assert chosen.person == "Odile"
    press(qtbot, Qt.Key.Key_Escape)
    assert window.top.field.text() == ""


def test_f6_walks_every_part_that_is_there(window: Window, qtbot: QtBot) -> None:
    """Broken if it fails: a part of the window is reached by Tab alone, after forty presses."""
    visited: list[QWidget] = []
    for _ in range(len(window.regions())):
        press(qtbot, Qt.Key.Key_F6)
        focus = QApplication.focusWidget()
        visited += [one for one in window.regions() if focus is not None and (one is focus or one.isAncestorOf(focus))]
    assert {window.top, window.board, window.tray, window.footer} <= set(visited)


def test_ctrl_h_hands_over_what_is_selected(window: Window, qtbot: QtBot) -> None:
    """Broken if it fails: the tray is the only way out."""
    assert window.outside.errands.last is not None
    waiting = next(one for one in window.outside.errands.last.passes if one.handed_over is None)
    window.board.select(waiting.identity)
    press(qtbot, Qt.Key.Key_H, CONTROL)
    qtbot.waitUntil(lambda: window.pages.currentWidget() is window.hand_over)
