"""Taking things back in the window, on the real household: by the menu’s words and by keys."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import QAction
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from hearthkey.core.connect_choices import ConnectChoices
from hearthkey.services.settling import SettleRequest
from hearthkey.ui.leading import Leading
from hearthkey.ui.window import Window
from tests.ui.window.test_doing import give_up, the_laptop


def action(window: Window, begins: str) -> QAction:
    """The menu's entry that begins so."""
    return next(one for one in window.menu.actions() if one.text().startswith(begins))


def name(window: Window) -> str:
    """What the household is called."""
    assert window.outside.errands.last is not None
    assert window.outside.errands.last.household is not None
    return window.outside.errands.last.household.name


def test_the_menu_says_what_is_taken_back_and_the_keys_do_it(window: Window, qtbot: QtBot) -> None:
    """Broken if it fails: Ctrl+Z does something that nobody was told of, or the footer does not say what it did."""
    errands = window.outside.errands
    assert window.findChild(Leading) is not None
    assert not action(window, "Undo").isEnabled()
    before = name(window)
    request = SettleRequest(name="Quince House")
    errands.preview_settle(request, window, lambda plan: errands.settle(plan, window, None, give_up), give_up)
    qtbot.waitUntil(lambda: name(window) == "Quince House")
    assert action(window, "Undo").text() == "Undo: the household’s settings"
    assert window.footer.undo_button.isVisible()
    QTest.keyClick(window, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    qtbot.waitUntil(lambda: name(window) == before)
    assert window.footer.text().startswith("The change of the household’s settings was taken back.")
    assert not action(window, "Undo").isEnabled()
    assert action(window, "Redo").text() == "Redo: the household’s settings"
    both = Qt.KeyboardModifier.ControlModifier | Qt.KeyboardModifier.ShiftModifier
    QTest.keyClick(window, Qt.Key.Key_Z, both)
    qtbot.waitUntil(lambda: name(window) == "Quince House")
    assert "was made again after all" in window.footer.text()


def test_what_is_final_says_why_and_makes_way(window: Window, qtbot: QtBot) -> None:
    """Broken if it fails: Ctrl+Z after a hand-over takes something else back."""
    errands = window.outside.errands
    errands.choose_call("Ines, 555 0100", window, lambda _none: None, give_up)
    qtbot.waitUntil(lambda: action(window, "Undo").isEnabled())
    errands.hand_over(the_laptop(window).serial, window, None, give_up)
    qtbot.waitUntil(lambda: action(window, "Undo").text() == "Undo: hand over Tomasz’s laptop")
    assert not window.footer.undo_button.isVisible()
    action(window, "Undo").trigger()
    qtbot.waitUntil(lambda: action(window, "Undo").text() == "Undo: whom to call")
    assert "its key exists on the device alone" in window.footer.text()


def test_choices_for_profiles_are_in_the_menu_and_go_back(window: Window, qtbot: QtBot) -> None:
    """Broken if it fails: whoever chose by a slip how phones connect hears of no way back."""
    errands, kept = window.outside.errands, list[ConnectChoices]()
    errands.keep_connect_choices(ConnectChoices(by_itself=True))
    qtbot.waitUntil(lambda: action(window, "Undo").text() == "Undo: the choices for configuration profiles")
    QTest.keyClick(window, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    qtbot.waitUntil(lambda: not action(window, "Undo").isEnabled())
    errands.connect_choices(window, kept.append)
    qtbot.waitUntil(lambda: bool(kept))
    assert kept == [ConnectChoices()]
    assert window.footer.text() == "The change of the choices for configuration profiles was taken back."
