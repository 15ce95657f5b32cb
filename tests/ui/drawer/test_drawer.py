"""Opening, closing, moving, and what becomes of the focus."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from hearthkey.ui.drawer.drawer import Drawer
from hearthkey.ui.drawer.enrol_page import EnrolPage
from hearthkey.ui.drawer.help_page import HelpPage
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.ways import Ways
from tests.ui.drawer.conftest import Room
from tests.ui.drawer.household import FakeErrands


def test_the_focus_comes_back(room: Room, theme: Theme) -> None:
    """Broken: after closing the drawer the keyboard is nowhere."""
    room.open(HelpPage(theme))
    assert not room.board.hasFocus()
    room.drawer.shut()
    assert room.board.hasFocus()


def test_the_board_is_told_where_the_focus_has_nowhere_to_go(
    room: Room, theme: Theme, ways: Ways, qtbot: QtBot
) -> None:
    """Broken: the control that opened the drawer is gone, and the focus with it."""
    room.open(HelpPage(theme))
    room.board.hide()
    with qtbot.waitSignal(ways.closed):
        room.drawer.shut()


def test_esc_closes_and_keeps_what_was_typed(room: Room, theme: Theme, errands: FakeErrands, ways: Ways) -> None:
    """Broken: a slip of the finger costs everything that was typed."""
    page = EnrolPage(theme, errands, ways)
    room.open(page)
    page.form.device.setFocus()
    QTest.keyClicks(page.form.device, "tablet")
    QTest.keyClick(page.form.device, Qt.Key.Key_Escape)
    assert room.drawer.page() is None
    room.open(page)
    assert page.form.device.text() == "tablet"


def test_the_close_word_closes(room: Room, theme: Theme, qtbot: QtBot) -> None:
    """Broken: the mouse has no way out."""
    page = HelpPage(theme)
    room.open(page)
    with qtbot.waitSignal(room.drawer.went):
        page.close_button.click()
    assert not room.drawer.isVisible()


def test_another_page_takes_the_place(room: Room, theme: Theme, errands: FakeErrands, ways: Ways) -> None:
    """Broken: help over enrolling loses the way back to the board, or the draft stays on the sheet."""
    drafts: list[tuple[str, str]] = []
    ways.draft.connect(lambda person, device, _end: drafts.append((person, device)))
    page = EnrolPage(theme, errands, ways)
    room.open(page)
    page.form.device.setText("tablet")
    room.open(HelpPage(theme))
    assert drafts[-2:] == [("Ines", "tablet"), ("", "")]
    room.drawer.shut()
    assert room.board.hasFocus()


@pytest.mark.parametrize(("scale", "space", "wide"), [(1.0, 0, 412), (2.0, 0, 824), (2.0, 640, 640), (1.0, 300, 300)])
def test_it_grows_with_the_type_and_fits_its_room(
    room: Room, theme: Theme, scale: float, space: int, wide: int
) -> None:
    """Broken: large type is squeezed, or the drawer is wider than the window."""
    theme.choose("paper", scale)
    room.drawer.fit(space)
    room.open(HelpPage(theme))
    assert room.drawer.width() == wide


def test_it_slides_straight_to_its_width(qtbot: QtBot, theme: Theme, ways: Ways) -> None:
    """Broken: it stops half way, or stays in sight after closing."""
    drawer = Drawer(theme, ways)
    qtbot.addWidget(drawer)
    drawer.resize(10, 400)
    page = HelpPage(theme)
    drawer.open(page)
    qtbot.waitUntil(lambda: drawer.width() == drawer.full_width())
    assert page.width() == drawer.full_width() - Drawer.SPINE
    drawer.shut()
    qtbot.waitUntil(drawer.isHidden)
