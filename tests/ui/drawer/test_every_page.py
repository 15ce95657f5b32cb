"""What holds for every page of the drawer: names, tab order, nothing cut at any size of type."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLabel, QWidget

from hearthkey.ui.drawer.page import Page, tab_stops
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.ways import Ways
from tests.ui.drawer.conftest import Room
from tests.ui.drawer.household import FakeErrands
from tests.ui.drawer.pages import PAGES


def shown(page: Page) -> list[QWidget]:
    """The controls that the Tab key reaches, as a user meets them."""
    return [one for one in tab_stops(page) if one.isVisibleTo(page) and one.isEnabled()]


def settle(page: Page) -> None:
    """Let layouts take effect, as the first frame does."""
    for _ in range(3):
        page.body.activate()
        QTest.qWait(1)


@pytest.mark.parametrize("name", PAGES)
def test_every_control_has_a_name(name: str, theme: Theme, errands: FakeErrands, ways: Ways, room: Room) -> None:
    """Broken: a screen reader says "button" and nothing else."""
    page = PAGES[name](theme, errands, ways)
    room.open(page)
    nameless = [
        one
        for one in page.findChildren(QWidget)
        if one.focusPolicy() is not Qt.FocusPolicy.NoFocus and one.focusProxy() is None and not one.accessibleName()
        if not one.objectName().startswith("qt_") and one.isVisibleTo(page)
    ]
    assert not nameless
    assert page.accessibleName()


@pytest.mark.parametrize("name", PAGES)
def test_the_tab_key_walks_down_the_page(name: str, theme: Theme, errands: FakeErrands, ways: Ways, room: Room) -> None:
    """Broken: the focus jumps about, or a control cannot be reached without a mouse."""
    page = PAGES[name](theme, errands, ways)
    room.open(page)
    settle(page)
    walk = [one for one in shown(page) if not one.accessibleName().startswith("Call it")]
    heights = [_down(one, page) for one in walk]
    assert heights == sorted(heights), [(one.accessibleName(), y) for one, y in zip(walk, heights, strict=True)]


def _down(one: QWidget, page: Page) -> int:
    """How far down a control is, with all that scrolls rolled out between head and foot."""
    middle = QPoint(0, one.height() // 2)
    if page.content.isAncestorOf(one):
        return 1_000 + one.mapTo(page.content, middle).y()
    above = one.mapTo(page, middle).y() < page.height() // 4
    return one.mapTo(page, middle).y() + (0 if above else 100_000)


@pytest.mark.parametrize("name", PAGES)
def test_opening_puts_the_focus_inside_and_never_on_a_deed(
    name: str, theme: Theme, errands: FakeErrands, ways: Ways, room: Room
) -> None:
    """Broken: after opening, keys go to the board; or a stray Enter stops a device."""
    page = PAGES[name](theme, errands, ways)
    room.open(page)
    focused = QApplication.focusWidget()
    assert focused is not None
    assert page.isAncestorOf(focused)
    assert focused.accessibleName() not in {"Stop now", "Revoke for good…", "Revoke for good"}


@pytest.mark.parametrize("name", PAGES)
def test_esc_closes_wherever_the_focus_is(
    name: str, theme: Theme, errands: FakeErrands, ways: Ways, room: Room
) -> None:
    """Broken: a field swallows Esc, and the drawer cannot be left from it."""
    page = PAGES[name](theme, errands, ways)
    room.open(page)
    for control in shown(page):
        room.open(page)
        control.setFocus()
        QTest.keyClick(control, Qt.Key.Key_Escape)
        assert room.drawer.page() is None, control.accessibleName()


@pytest.mark.parametrize(("scale", "width", "height"), [(1.0, 1280, 612), (2.0, 640, 480), (2.0, 1280, 612)])
@pytest.mark.parametrize("name", PAGES)
def test_nothing_is_cut(
    name: str, scale: float, width: int, height: int, theme: Theme, errands: FakeErrands, ways: Ways, room: Room
) -> None:
    """Broken: with large type or long names somebody cannot read what is going to happen."""
    theme.choose("paper", scale)
    room.resize(width, height)
    room.drawer.fit(width)
    page = PAGES[name](theme, errands, ways)
    room.open(page)
    settle(page)
    assert room.drawer.width() == min(theme.px(412), width)
    if page.roll.isVisible():
        assert page.content.width() <= page.roll.viewport().width()
    cut = [told for one in page.findChildren(QWidget) if one.isVisibleTo(page) for told in _cut(one, page)]
    assert not cut


def _cut(one: QWidget, page: Page) -> list[str]:
    """What of a widget does not fit."""
    name = f"{type(one).__name__} {one.accessibleName() or (one.text() if isinstance(one, QLabel) else '')!r}"
    if one.objectName().startswith("qt_") or not type(one).__module__.startswith("hearthkey"):
        return []
    found = []
    left = one.mapTo(page, QPoint(0, 0)).x()
    if left < 0 or left + one.width() > page.width():
        found.append(f"{name} sticks out: {left} + {one.width()} of {page.width()}")
    if one.hasHeightForWidth() and one.height() < one.heightForWidth(one.width()):
        found.append(f"{name} is {one.height()} high, wants {one.heightForWidth(one.width())} in {one.width()}")
    elif one.width() < one.minimumSizeHint().width() or one.height() < one.minimumSizeHint().height():
        found.append(f"{name} is {one.size()}, wants {one.minimumSizeHint()}")
    if isinstance(one, QLabel) and not one.wordWrap() and one.width() < one.sizeHint().width():
        found.append(f"{name} is {one.width()} wide, wants {one.sizeHint().width()}")
    return found
