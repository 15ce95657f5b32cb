"""The three words behind the wall, and where there is room for them."""

from __future__ import annotations

from collections.abc import Iterator
from typing import NamedTuple

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QColor, QPainter

from hearthkey.core.phrases import Style
from hearthkey.ui.board.life import tr
from hearthkey.ui.board.lifeline import ground_at
from hearthkey.ui.board.ruling import Ruling
from hearthkey.ui.dates import day, written
from hearthkey.ui.theme.fonts import Role


class Told(NamedTuple):
    """Lines that fit behind the wall.

    Args:
        middle: of the lines, pixels of the sheet.
        width: of the widest.
    """

    lines: tuple[str, ...]
    middle: float
    width: float


def told(ruling: Ruling) -> Told | None:
    """The fullest wording that fits behind the wall without meeting the words of the rows."""
    if ruling.wall is None:
        return None
    wall, cut = ruling.x(ruling.wall)
    names, right = ruling.names, ruling.columns.axis.right
    longest = names.width(Role.STATE_WORD, tr("stopped 28 September"))
    longest += names.width(Role.STATE, tr(", can be let back in"))
    left = max(wall + 8, ruling.words_left + longest + 8)
    if cut or ruling.stacked:
        return None
    for lines in _wordings(ruling):
        width = max(names.width(Role.SMALL_ITALIC, line) for line in lines)
        middle = max((wall + 4 + right) / 2, left + width / 2)
        if middle + width / 2 <= right - 4:
            return Told(lines, middle, width)
    return None


def _wordings(ruling: Ruling) -> Iterator[tuple[str, ...]]:
    wall = ruling.wall
    if wall is None:
        return
    nobody = tr("nobody gets in")
    yield nobody, tr("after {day}").format(day=day(wall)), tr("without a new list")
    yield nobody, tr("after {month}").format(month=written(wall, Style.MONTH))


def paint_told(painter: QPainter, words: Told, bottom: float, ruling: Ruling) -> None:
    """Paint the words, each line on a patch of ground.

    Args:
        bottom: of the last line, pixels.
    """
    metrics = ruling.names.metrics(Role.SMALL_ITALIC)
    painter.setFont(ruling.names.font(Role.SMALL_ITALIC))
    for number, line in enumerate(reversed(words.lines)):
        width = ruling.names.width(Role.SMALL_ITALIC, line)
        left, baseline = words.middle - width / 2, bottom - metrics.descent() - number * metrics.height()
        patch = QRectF(left - 3, baseline - metrics.ascent(), width + 6, metrics.height())
        for piece in ruling.axis.pieces:
            start = max(patch.left(), ruling.columns.axis.left + piece.left)
            end = min(patch.right(), ruling.columns.axis.left + piece.right)
            if start < end:
                ground = QColor(ground_at((start + end) / 2, ruling, None))
                painter.fillRect(QRectF(start, patch.top(), end - start, patch.height()), ground)
        painter.setPen(ruling.theme.color("ink2"))
        painter.drawText(QPointF(left, baseline), line)
