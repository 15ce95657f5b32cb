"""The mark of a step in a list: where it stands, as a shape; the words beside it say the same."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QPainter, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from hearthkey.ui.theme.theme import Theme

MARK = 20
"""Side of a mark's cell, in pixels at normal type."""


class StepMark(QWidget):
    """A disc with a tick where it is done, a ring with a dot where it is next, an empty ring where it is later.

    Args:
        done: it is behind.
        now: it is the next one.
        due: its day has come.
        last: no thread leads on from it.
    """

    def __init__(self, theme: Theme, *, done: bool, now: bool, due: bool, last: bool) -> None:
        super().__init__()
        self._theme, self._done, self._now, self._due, self._last = theme, done, now, due, last
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Expanding)
        theme.changed.connect(self.updateGeometry)

    def sizeHint(self) -> QSize:  # noqa: N802 - Qt's name
        """A cell at least; the thread to the next mark takes the rest."""
        return QSize(self._theme.px(MARK), self._theme.px(MARK))

    def paintEvent(self, _event: object) -> None:  # noqa: N802 - Qt's name
        """Paint the thread to the next step, then the mark."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        unit = self._theme.px(MARK) / MARK
        middle = QPointF(self.width() / 2, 10 * unit)
        ink = self._theme.color("act" if self._due else "ink")
        if not self._last:
            painter.setPen(QPen(self._theme.color("rule"), 1.2 * unit))
            painter.drawLine(QPointF(middle.x(), middle.y() + 9 * unit), QPointF(middle.x(), self.height() + unit))
        painter.setPen(QPen(ink, 1.6 * unit))
        painter.setBrush(ink if self._done else Qt.BrushStyle.NoBrush)
        painter.drawEllipse(middle, 6 * unit, 6 * unit)
        if self._done:
            painter.setPen(QPen(self._theme.color("raised"), 1.6 * unit))
            tick = ((-2.8, 0.2), (-0.8, 2.2), (3.0, -2.2))
            painter.drawPolyline([middle + QPointF(x * unit, y * unit) for x, y in tick])
        elif self._now:
            painter.setBrush(ink)
            painter.setPen(Qt.PenStyle.NoPen)
            painter.drawEllipse(QRectF(middle.x() - 2.6 * unit, middle.y() - 2.6 * unit, 5.2 * unit, 5.2 * unit))
        painter.end()
