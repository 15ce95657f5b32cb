"""A low window, or large type: the headline speaks lower, the rest scrolls, and an open drawer takes the room."""

from __future__ import annotations

from dataclasses import replace

import pytest
from PySide6.QtCore import QPoint, QRect, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QWidget
from pytestqt.qtbot import QtBot

from hearthkey.ui.controls.labels import Prose
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.window import Window

LONG = "Maximiliane-Theodora von und zu Quittenhausen-Unterbirnbach"


@pytest.fixture
def low(window: Window, theme: Theme, qtbot: QtBot) -> Window:
    """The smallest window with type at twice its size."""
    theme.choose("paper", 2.0)
    window.resize(640, 480)
    qtbot.waitUntil(lambda: window.size().toTuple() == (640, 480))
    qtbot.wait(50)
    return window


def in_sight(window: Window, part: QWidget) -> QRect:
    """What of a part can be seen."""
    view = window.sheet.viewport()
    return QRect(part.mapTo(view, QPoint(0, 0)), part.size()) & view.rect()


def sentences(window: Window) -> list[Prose]:
    """What the headline says, each sentence in a widget of its own."""
    return [one for one in window.headline.findChildren(Prose) if one.isVisible()]


def test_everything_is_reached_by_scrolling(low: Window) -> None:
    """In the smallest window the tray would lie under the footer, and half a word at the top."""
    bar = low.sheet.verticalScrollBar()
    assert bar.value() == 0 < bar.maximum()
    assert in_sight(low, low.headline).height() == low.headline.height()
    for part in (low.strip, low.tray):
        low.sheet.reveal(part)
        assert in_sight(low, part).height() == part.height()
    assert low.sheet.contents.width() == low.sheet.viewport().width()
    assert low.board.height() >= low.board.minimumHeight() > 0


def test_f6_and_find_scroll_to_what_they_lead_to(low: Window) -> None:
    """The keyboard would be in a part of the window that cannot be seen."""
    low.headline.more.setFocus()
    for _ in low.regions():
        QTest.keyClick(low, Qt.Key.Key_F6)
        focus = low.focusWidget()
        assert focus is not None
        if low.sheet.isAncestorOf(focus):
            assert in_sight(low, focus).height() >= min(focus.height(), low.sheet.viewport().height() // 2)
    low.sheet.verticalScrollBar().setValue(0)
    low.top.begin_find()
    QTest.keyClicks(low.top.field, "to")
    assert in_sight(low, low.board.people).height() > low.board.people.height() // 2


def test_headline_says_everything_however_long(low: Window, qtbot: QtBot) -> None:
    """Whose pass ends first would be cut off, or told to screen readers alone."""
    seen = low.outside.errands.last
    assert seen is not None
    low.outside.errands.seen.emit(replace(seen, passes=tuple(replace(one, person=LONG) for one in seen.passes)))
    qtbot.wait(50)
    assert [LONG in one.text() for one in sentences(low)] == [True]
    low.headline.more.click()
    qtbot.wait(50)
    said = sentences(low)
    assert " ".join(one.text() for one in said) == low.headline.accessibleName()
    assert all(one.height() >= one.heightForWidth(one.width()) for one in said)
    assert low.headline.more.text() == "less"
    low.headline.more.click()
    assert len(sentences(low)) == 1


def test_a_high_window_folds_nothing(window: Window, theme: Theme) -> None:
    """The second sentence would be hidden where there is room for it."""
    assert theme.fonts.scale == 1.0
    assert not window.headline.more.isVisible()
    assert len(sentences(window)) == 2
    assert window.sheet.verticalScrollBar().maximum() == 0


@pytest.mark.parametrize("size", [(1280, 800), (640, 480)])
def test_an_open_drawer_takes_the_room_that_the_board_leaves(
    window: Window, theme: Theme, qtbot: QtBot, size: tuple[int, int]
) -> None:
    """With large type the board would give way to an empty desk."""
    theme.choose("paper", 2.0)
    window.resize(*size)
    assert window.outside.errands.last is not None
    window.ways.device.emit(window.outside.errands.last.passes[0].identity)
    qtbot.waitUntil(lambda: window.drawer.width() == window.width())
    qtbot.wait(50)
    assert not window.left.isVisible()
    assert not window.headline.isVisible()
    assert window.drawer.height() == window.sheet.viewport().height()
    page = window.drawer.page()
    assert page is not None
    assert page.width() == window.width() - window.drawer.SPINE
    window.ways.back.emit()
    qtbot.waitUntil(window.left.isVisible)
    assert window.headline.isVisible()


def test_drawer_stands_beside_the_board_where_both_have_room(window: Window, qtbot: QtBot) -> None:
    """At normal type the drawer would hide the board."""
    window.resize(1280, 800)
    window.ways.settings.emit()
    qtbot.waitUntil(lambda: window.drawer.width() == window.drawer.WIDTH)
    assert window.left.isVisible()
    assert window.headline.isVisible()
