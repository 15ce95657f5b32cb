"""Renewing in the real window: by key, from the sheet and from the day list, and what follows leads back."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from hearthkey.core.duties import Act
from hearthkey.core.passes import Pass
from hearthkey.ui.drawer.another_page import AnotherPage
from hearthkey.ui.drawer.days_page import DaysPage, days
from hearthkey.ui.drawer.help_page import HelpPage
from hearthkey.ui.drawer.leave_page import LeavePage
from hearthkey.ui.drawer.renew_page import RenewPage
from hearthkey.ui.window import Window

CONTROL = Qt.KeyboardModifier.ControlModifier
SLOW = 60_000
"""Milliseconds, on a busy machine."""


def tablet(window: Window) -> list[Pass]:
    """The passes of Ines's tablet, which ends in three weeks."""
    assert window.outside.errands.last is not None
    return [one for one in window.outside.errands.last.passes if (one.person, one.device) == ("Ines", "tablet")]


def press(key: Qt.Key, modifier: Qt.KeyboardModifier) -> None:
    """Press a key wherever the focus is."""
    focus = QApplication.focusWidget()
    assert focus is not None
    QTest.keyClick(focus, key, modifier)


def test_a_device_is_renewed_without_a_mouse(window: Window, qtbot: QtBot) -> None:
    """Broken if it fails: whoever cannot use a mouse cannot renew, or loses the page over the passphrase."""
    window.board.select(tablet(window)[0].identity)
    window.board.setFocus()
    press(Qt.Key.Key_R, CONTROL)
    page = window.drawer.page()
    assert isinstance(page, RenewPage)
    assert page.rows.ticked() == (tablet(window)[0].identity,)
    qtbot.waitUntil(lambda: next(iter(page.rows.ticks.values())).hasFocus())
    qtbot.waitUntil(page.commit.isEnabled, timeout=SLOW)
    press(Qt.Key.Key_Return, CONTROL)
    assert page.unlock.line.hasFocus()
    window.ways.help.emit("")
    assert isinstance(window.drawer.page(), HelpPage)
    press(Qt.Key.Key_R, CONTROL)
    assert window.drawer.page() is page


def test_the_day_list_and_the_menu_lead_there(window: Window) -> None:
    """Broken if it fails: somebody is told to renew, and has to look for where."""
    window.ways.days.emit()
    page, seen = window.drawer.page(), window.outside.errands.last
    assert isinstance(page, DaysPage)
    assert seen is not None
    found = days(seen)
    assert found is not None
    number = next(number for number, one in enumerate((*found.now, *found.later)) if one.act is Act.RENEW_PASS)
    page.buttons[number].click()
    assert isinstance(window.drawer.page(), RenewPage)
    window.ways.another.emit(tablet(window)[0].identity)
    assert isinstance(window.drawer.page(), AnotherPage)
    window.ways.leaves.emit("Ines")
    assert isinstance(window.drawer.page(), LeavePage)
