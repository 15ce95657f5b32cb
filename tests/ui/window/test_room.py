"""Nothing is cut and nothing overlaps, whatever the window's size and the size of type."""

from __future__ import annotations

from dataclasses import replace

import pytest
from PySide6.QtCore import QPoint, QRect
from PySide6.QtWidgets import QLabel, QPushButton, QWidget
from pytestqt.qtbot import QtBot

from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.window import Window

ROOMS = [
    ((1280, 800), 1.0),
    ((1280, 800), 1.5),
    ((1280, 800), 2.0),
    ((1024, 640), 1.0),
    ((1024, 640), 2.0),
    ((640, 480), 1.0),
    ((640, 480), 2.0),
]
LONG = "Maximiliane-Theodora von und zu Quittenhausen-Unterbirnbach"


def shown(region: QWidget) -> list[QLabel | QPushButton]:
    """Every text and button that can be seen in a region."""
    found: list[QLabel | QPushButton] = [*region.findChildren(QLabel), *region.findChildren(QPushButton)]
    return [one for one in found if one.isVisible() and one.text()]


def place(widget: QWidget, region: QWidget) -> QRect:
    """Where it stands in the region."""
    return QRect(widget.mapTo(region, QPoint(0, 0)), widget.size())


def cut(one: QLabel | QPushButton) -> bool:
    """Whether a text has less room than it needs."""
    if isinstance(one, QLabel) and one.wordWrap():
        return one.heightForWidth(one.width()) > one.height() + 1
    if one.toolTip():  # the footer's sentence ends where the room does, and is told in full beside
        return False
    return one.sizeHint().width() > one.width() + 1


@pytest.mark.parametrize(("size", "scale"), ROOMS)
def test_rows_around_the_board_have_room(
    window: Window, theme: Theme, qtbot: QtBot, size: tuple[int, int], scale: float
) -> None:
    """Broken if it fails: a sentence ends in the middle of a word, or two lie on each other."""
    assert window.outside.errands.last is not None
    household = window.outside.errands.last.household
    assert household is not None
    window.outside.errands.seen.emit(replace(window.outside.errands.last, household=replace(household, name=LONG)))
    theme.choose("paper", scale)
    window.resize(*size)
    qtbot.waitUntil(lambda: window.size().toTuple() == size)
    qtbot.wait(50)
    for region in (window.top, window.headline, window.strip, window.footer):
        texts = [one for one in shown(region) if not isinstance(one, QLabel) or one.buddy() is None]
        assert [one.text() for one in texts if cut(one)] == []
        outside = [one.text() for one in texts if not region.rect().contains(place(one, region))]
        assert outside == []
        for number, one in enumerate(texts):
            for other in texts[number + 1 :]:
                assert not place(one, region).intersects(place(other, region)), (one.text(), other.text())
