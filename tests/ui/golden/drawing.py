"""The board as it is drawn for the golden pictures, and the difference between two pictures."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtGui import QColor, QImage, QPainter, qBlue, qGray, qGreen, qRed

from hearthkey.ui.board.view import BoardView
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.ways import Ways
from tests.ui.practice import snapshot

LOOKS = {"paper": (1120, 480), "lamp": (900, 400)}
"""Themes and sizes: with a column of next steps, and without."""

CLOSE = 32
"""Steps of 255 in red, green or blue that nobody sees in the edge of a letter."""

FEW = 60
"""Pixels that may differ by more: less than the smallest sign has."""

_FADED = 210
_RULE = 6
_WRONG = QColor("#c00020").rgb()


def place(look: str) -> Path:
    """Where the golden picture of a look lies."""
    return Path(__file__).with_name(f"board-{look}.png")


def board(theme: Theme) -> QImage:
    """The practice household on a sheet with one row selected."""
    view = BoardView(theme, Ways())
    view.resize(*LOOKS[theme.name])
    view.show(snapshot())
    view.people.go(4)
    picture = view.grab().toImage().convertToFormat(QImage.Format.Format_RGB32)
    view.deleteLater()
    return picture


def differing(one: QImage, other: QImage) -> list[tuple[int, int]]:
    """The pixels of two pictures of one size that differ so that somebody might see it."""
    wide, high = one.width(), one.height()
    if one == other:
        return []
    return [
        (x, y)
        for y in range(high)
        if one.copy(0, y, wide, 1) != other.copy(0, y, wide, 1)
        for x in range(wide)
        if _apart(one.pixel(x, y), other.pixel(x, y)) > CLOSE
    ]


def _apart(one: int, other: int) -> int:
    return max(abs(part(one) - part(other)) for part in (qRed, qGreen, qBlue))


def side_by_side(wanted: QImage, found: QImage, wrong: list[tuple[int, int]]) -> QImage:
    """Three pictures under each other: as it should be, as it is, and in red on a faded ground what differs."""
    faded = wanted.copy()
    for y in range(faded.height()):
        for x in range(faded.width()):
            grey = _FADED + qGray(faded.pixel(x, y)) * (255 - _FADED) // 255
            faded.setPixel(x, y, QColor(grey, grey, grey).rgb())
    for x, y in wrong:
        faded.setPixel(x, y, _WRONG)
    pictures = (wanted, found, faded)
    wide = max(one.width() for one in pictures)
    sheet = QImage(wide, sum(one.height() + _RULE for one in pictures), QImage.Format.Format_RGB32)
    sheet.fill(QColor(_WRONG))
    painter = QPainter(sheet)
    top = 0
    for one in pictures:
        painter.drawImage(0, top, one)
        top += one.height() + _RULE
    painter.end()
    return sheet
