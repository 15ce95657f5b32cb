"""The signs of the sheet: a pass's state as a shape. Hollow is for now, solid is for sure."""

from __future__ import annotations

import math
from enum import Enum

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFont, QPainter, QPainterPath, QPen, QPolygonF
from PySide6.QtWidgets import QSizePolicy, QWidget

from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.theme.tokens import Tokens


class Sign(Enum):
    """What a bead on the ribbon can say."""

    DRAFT = "draft"
    WAITING = "waiting"
    NEVER_PROVED = "never proved"
    IN_USE = "in use"
    DUE = "due soon"
    GUEST = "guest"
    STOPPED = "stopped"
    REVOKED = "revoked"
    ENDED = "ended"
    UNKNOWN = "not known"


CLEARING = 10.0
"""Radius of the disc of ground colour that breaks the string around a bead."""


def paint_sign(
    painter: QPainter, sign: Sign, centre: QPointF, tokens: Tokens, *, ground: QColor, size: float = 1.0
) -> None:
    """Paint a sign.

    Args:
        centre: its middle.
        ground: what lies under it.
        size: 1.0 is the 16 px cell.
    """
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.translate(centre)
    painter.scale(size, size)
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(ground)
    painter.drawEllipse(QPointF(0, 0), CLEARING, CLEARING)
    _PAINT[sign](painter, tokens, ground)
    painter.restore()


def _pen(color: str, width: float, cap: Qt.PenCapStyle = Qt.PenCapStyle.FlatCap) -> QPen:
    pen = QPen(QColor(color), width)
    pen.setCapStyle(cap)
    pen.setJoinStyle(Qt.PenJoinStyle.MiterJoin)
    return pen


def _ring(painter: QPainter, tokens: Tokens, width: float = 1.6) -> None:
    painter.setPen(_pen(tokens.ink, width))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawEllipse(QPointF(0, 0), 5.9, 5.9)


def _draft(painter: QPainter, tokens: Tokens, _ground: QColor) -> None:
    _ring(painter, tokens)


def _waiting(painter: QPainter, tokens: Tokens, _ground: QColor) -> None:
    _ring(painter, tokens)
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(QColor(tokens.ink))
    painter.drawPie(QRectF(-5.9, -5.9, 11.8, 11.8), 0, 90 * 16)


def _never_proved(painter: QPainter, tokens: Tokens, _ground: QColor) -> None:
    painter.setPen(_pen(tokens.ink, 2.2))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    step = 360 * 16 // 7
    for number in range(7):
        painter.drawArc(QRectF(-5.9, -5.9, 11.8, 11.8), 90 * 16 - number * step, -round(step * 0.6))


def _in_use(painter: QPainter, tokens: Tokens, _ground: QColor) -> None:
    painter.setBrush(QColor(tokens.ink))
    painter.drawEllipse(QPointF(0, 0), 6.5, 6.5)


def _due(painter: QPainter, tokens: Tokens, _ground: QColor) -> None:
    painter.translate(0, -1.5)
    pen = _pen(tokens.act, 1.4)
    pen.setJoinStyle(Qt.PenJoinStyle.RoundJoin)
    painter.setPen(pen)
    painter.setBrush(QColor(tokens.act))
    painter.drawPolygon(QPolygonF([QPointF(0, -7.4), QPointF(8, 6.4), QPointF(-8, 6.4)]))
    painter.setPen(_pen(tokens.onact, 2.0))
    painter.drawLine(QPointF(0, -2.8), QPointF(0, 1.8))
    painter.drawLine(QPointF(0, 3.2), QPointF(0, 5.2))


def _guest(painter: QPainter, tokens: Tokens, _ground: QColor) -> None:
    painter.setPen(_pen(tokens.ink, 1.8))
    painter.drawLine(QPointF(-6.5, -6.8), QPointF(6.5, -6.8))
    painter.drawLine(QPointF(-6.5, 6.8), QPointF(6.5, 6.8))
    painter.setPen(_pen(tokens.ink, 1.6))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawPolygon(QPolygonF([QPointF(-4.8, -6.2), QPointF(4.8, -6.2), QPointF(0, 0)]))
    painter.setBrush(QColor(tokens.ink))
    painter.drawPolygon(QPolygonF([QPointF(0, 0), QPointF(4.8, 6.2), QPointF(-4.8, 6.2)]))


def _octagon(radius: float) -> QPolygonF:
    return QPolygonF(
        [
            QPointF(radius * math.cos(math.radians(angle)), radius * math.sin(math.radians(angle)))
            for angle in (22.5 + 45 * number for number in range(8))
        ]
    )


def _cross(painter: QPainter, color: str) -> None:
    painter.setPen(_pen(color, 1.9))
    painter.drawLine(QPointF(-2.7, -2.7), QPointF(2.7, 2.7))
    painter.drawLine(QPointF(-2.7, 2.7), QPointF(2.7, -2.7))


def _stopped(painter: QPainter, tokens: Tokens, _ground: QColor) -> None:
    painter.setPen(_pen(tokens.ink, 1.7))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawPolygon(_octagon(7.4))
    _cross(painter, tokens.ink)


def _revoked(painter: QPainter, tokens: Tokens, ground: QColor) -> None:
    painter.setBrush(QColor(tokens.ink))
    painter.drawPolygon(_octagon(7.4))
    _cross(painter, ground.name())


def _ended(painter: QPainter, tokens: Tokens, _ground: QColor) -> None:
    half, cut = 5.6, 4.6
    shape = QPainterPath(QPointF(-half, -half))
    for x, y in ((half - cut, -half), (half, cut - half), (half, half), (-half, half)):
        shape.lineTo(x, y)
    shape.closeSubpath()
    painter.fillPath(shape, QColor(tokens.ink2))


def _unknown(painter: QPainter, tokens: Tokens, _ground: QColor) -> None:
    _ring(painter, tokens)
    font = QFont(painter.font())
    font.setPixelSize(11)
    font.setBold(True)
    painter.setFont(font)
    painter.drawText(QRectF(-6, -6.5, 12, 13), Qt.AlignmentFlag.AlignCenter, "?")


_PAINT = {
    Sign.DRAFT: _draft,
    Sign.WAITING: _waiting,
    Sign.NEVER_PROVED: _never_proved,
    Sign.IN_USE: _in_use,
    Sign.DUE: _due,
    Sign.GUEST: _guest,
    Sign.STOPPED: _stopped,
    Sign.REVOKED: _revoked,
    Sign.ENDED: _ended,
    Sign.UNKNOWN: _unknown,
}


class SignLabel(QWidget):
    """A sign as a widget, beside the word that says the same."""

    def __init__(self, theme: Theme, sign: Sign, parent: QWidget | None = None, *, ground: str = "raised") -> None:
        super().__init__(parent)
        self._theme = theme
        self._ground = ground
        self.sign = sign
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)
        theme.changed.connect(self.update)

    def show_sign(self, sign: Sign) -> None:
        """Show another one."""
        self.sign = sign
        self.update()

    def sizeHint(self) -> QSize:  # noqa: N802 - Qt's name
        """The cell and a pixel all round."""
        side = self._theme.px(20)
        return QSize(side, side)

    def paintEvent(self, _event: object) -> None:  # noqa: N802 - Qt's name
        """Paint the sign in the middle."""
        painter = QPainter(self)
        middle = QPointF(self.width() / 2, self.height() / 2)
        ground = self._theme.color(self._ground)
        paint_sign(painter, self.sign, middle, self._theme.tokens, ground=ground, size=self._theme.fonts.scale)
        painter.end()
