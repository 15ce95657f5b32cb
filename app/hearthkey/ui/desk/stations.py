"""The line at the foot of the desk: how far the device in hand has come."""

from __future__ import annotations

from itertools import pairwise

from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QPainter, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from hearthkey.ui.controls.strokes import Run, paint_run
from hearthkey.ui.desk.telling import Station, told
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme


class Stations(QWidget):
    """Beads on a line from left to right, solid as far as the device has come, with their words below."""

    LINE, BEAD, GAP, ROW = 11, 7.0, 15, 23

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._way: tuple[Station, ...] = ()
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        theme.changed.connect(self._dress)

    def show_way(self, way: tuple[Station, ...]) -> None:
        """Show another way."""
        if way != self._way:
            self._way = way
            self.setAccessibleName(told(way))
            self._dress()

    def _dress(self) -> None:
        self.updateGeometry()
        self.update()

    def high(self, wide: int) -> int:
        """The line and its words in that width: they take turns in two rows where one is too short for them."""
        return self._theme.px(self.LINE * 2 + 6 + self.ROW * (2 if self.staggered(wide) else 1))

    def _middles(self, wide: int) -> list[float]:
        edge = self._theme.px(self.LINE)
        step = (wide - 2 * edge) / max(1, len(self._way) - 1)
        return [edge + step * number for number in range(len(self._way))]

    def _labels(self, across: int) -> list[tuple[float, float]]:
        """Left and right of each label: inside the widget, else centred under its bead."""
        found = []
        for middle, one in zip(self._middles(across), self._way, strict=True):
            wide = self._theme.fonts.metrics(_role(one)).horizontalAdvance(one.words) + 2
            left = min(max(0.0, middle - wide / 2), max(0.0, across - wide))
            found.append((left, left + wide))
        return found

    def staggered(self, wide: int) -> bool:
        """Whether the words take turns in two rows."""
        labels = self._labels(wide)
        return any(one[1] + self._theme.px(12) > other[0] for one, other in pairwise(labels))

    def paintEvent(self, _event: object) -> None:  # noqa: N802 - Qt's name
        """Paint line, beads and words."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        theme, middles = self._theme, self._middles(self.width())
        y, size = theme.px(self.LINE) + 0.5, theme.fonts.scale
        gap = theme.px(self.GAP)
        for (begin, end), other in zip(pairwise(middles), self._way[1:], strict=True):
            run = Run.SOLID if other.reached else Run.HOLLOW
            paint_run(painter, run, QPointF(begin + gap, y), QPointF(end - gap, y), theme.tokens, size=size)
        for one, middle in zip(self._way, middles, strict=True):
            self._paint_bead(painter, one, QPointF(middle, y))
        self._paint_words(painter)
        painter.end()

    def _paint_bead(self, painter: QPainter, one: Station, place: QPointF) -> None:
        theme, ink = self._theme, self._theme.color("ink")
        reach = self.BEAD * theme.fonts.scale
        if one.now:
            painter.setPen(QPen(theme.color("qedge"), 1.5))
            painter.setBrush(theme.color("quince"))
            painter.drawEllipse(place, reach * 1.5, reach * 1.5)
            ink = theme.color("onq")
        painter.setPen(QPen(ink, 2 * theme.fonts.scale))
        painter.setBrush(ink if one.reached else Qt.BrushStyle.NoBrush)
        painter.drawEllipse(place, reach * (0.6 if one.now else 1.0), reach * (0.6 if one.now else 1.0))

    def _paint_words(self, painter: QPainter) -> None:
        theme, alternate = self._theme, self.staggered(self.width())
        top = theme.px(self.LINE * 2 + 6)
        for number, (one, (left, _right)) in enumerate(zip(self._way, self._labels(self.width()), strict=True)):
            painter.setFont(theme.font(_role(one)))
            painter.setPen(theme.color("ink" if one.reached else "ink2"))
            row = top + theme.px(self.ROW) * (number % 2 if alternate else 0)
            painter.drawText(QPointF(left, row + theme.fonts.metrics(_role(one)).ascent()), one.words)


def _role(one: Station) -> Role:
    return Role.DESK_SMALL_STRONG if one.now else Role.DESK_SMALL
