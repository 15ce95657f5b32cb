"""The strokes of a life line: how a pass runs from one day to another, and the marks on it."""

from __future__ import annotations

import math
from enum import Enum

from PySide6.QtCore import QLineF, QPointF, Qt
from PySide6.QtGui import QBrush, QColor, QPainter, QPen, QPolygonF

from hearthkey.ui.theme.tokens import Tokens


class Run(Enum):
    """How a stretch of a life line is drawn."""

    SOLID = "in force"
    HOLLOW = "in use, never proved"
    DASHES = "waiting"
    DOTS = "stopped from here on"
    FINE = "draft"
    PAST = "over"
    DUE = "due"
    NONE = "nothing"


class Mark(Enum):
    """What stands on a life line."""

    MADE = "made"
    HANDED_OVER = "handed over"
    PROOF = "proved"
    STOPPED = "stopped"
    RENEW = "a good time to renew"
    END = "ends"
    FINAL = "revoked"
    EARLIER = "began earlier"
    TODAY = "today"


def _pen(color: str, width: float, dashes: tuple[float, float] | None = None) -> QPen:
    pen = QPen(QColor(color), width)
    pen.setCapStyle(Qt.PenCapStyle.FlatCap)
    pen.setJoinStyle(Qt.PenJoinStyle.MiterJoin)
    if dashes is not None:
        pen.setDashPattern([dashes[0] / width, dashes[1] / width])
    return pen


def paint_run(painter: QPainter, run: Run, begin: QPointF, end: QPointF, tokens: Tokens, *, size: float = 1.0) -> None:
    """Paint a stretch between two points, in any direction."""
    length = math.hypot(end.x() - begin.x(), end.y() - begin.y())
    if run is Run.NONE or length < 0.5:
        return
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.translate(begin)
    painter.rotate(math.degrees(math.atan2(end.y() - begin.y(), end.x() - begin.x())))
    if run is Run.HOLLOW:
        painter.setPen(_pen(tokens.ink, 1.2 * size))
        for side in (-2.0 * size, 2.0 * size):
            painter.drawLine(QLineF(0, side, length, side))
    else:
        painter.setPen(
            {
                Run.SOLID: _pen(tokens.ink, 4 * size),
                Run.DUE: _pen(tokens.act, 4 * size),
                Run.DASHES: _pen(tokens.ink, 1.6 * size, (5 * size, 4 * size)),
                Run.DOTS: _pen(tokens.ink2, 1.6 * size, (1.6 * size, 3.6 * size)),
                Run.FINE: _pen(tokens.ink2, 1.2 * size, (2 * size, 3 * size)),
                Run.PAST: _pen(tokens.ink2, 2 * size),
            }[run]
        )
        painter.drawLine(QLineF(0, 0, length, 0))
    painter.restore()


def paint_mark(
    painter: QPainter,
    mark: Mark,
    place: QPointF,
    tokens: Tokens,
    *,
    ground: QColor,
    size: float = 1.0,
    turn: float = 0.0,
    ink: str = "",
) -> None:
    """Paint a mark on a line that runs to the right, or turned by degrees.

    Args:
        ground: what lies under it; hollow marks are filled with it.
        ink: a colour other than the ink, for lines that want the householder or are over.
    """
    color = ink or tokens.ink
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.translate(place)
    painter.scale(size, size)
    painter.setBrush(QBrush(ground))
    painter.setPen(_pen(color, 1.4))
    if mark is Mark.MADE:
        painter.drawEllipse(QPointF(0, 0), 3.2, 3.2)
    elif mark is Mark.HANDED_OVER:
        painter.drawPolygon(QPolygonF([QPointF(0, -4.8), QPointF(4.8, 0), QPointF(0, 4.8), QPointF(-4.8, 0)]))
    elif mark is Mark.RENEW:
        painter.drawPolygon(QPolygonF([QPointF(0, -5.6), QPointF(5.4, 4), QPointF(-5.4, 4)]))
    else:
        painter.rotate(turn)
        _bars(painter, mark, color)
    painter.restore()


def _bars(painter: QPainter, mark: Mark, color: str) -> None:
    if mark is Mark.END:
        painter.setPen(_pen(color, 2))
        painter.drawLine(QPointF(0, -6), QPointF(0, 6))
    elif mark is Mark.PROOF:
        painter.setPen(_pen(color, 2))
        painter.drawLine(QPointF(0, -8), QPointF(0, 0))
    elif mark is Mark.FINAL:
        painter.setPen(_pen(color, 1.2))
        painter.drawLine(QPointF(-4.4, -6), QPointF(-4.4, 6))
        painter.setPen(_pen(color, 3.4))
        painter.drawLine(QPointF(0, -6), QPointF(0, 6))
    elif mark is Mark.EARLIER:
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(color))
        painter.drawPolygon(QPolygonF([QPointF(-5, 0), QPointF(1, -4), QPointF(1, 4)]))
