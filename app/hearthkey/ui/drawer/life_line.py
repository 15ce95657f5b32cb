"""The life line of a pass as stops, one under the other, with today as the quince tag among them."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPen, QPolygonF
from PySide6.QtWidgets import QGridLayout, QWidget

from hearthkey.ui.controls.emptying import empty
from hearthkey.ui.controls.labels import Label, Prose
from hearthkey.ui.controls.strokes import Mark, Run, paint_mark, paint_run
from hearthkey.ui.dates import short_day
from hearthkey.ui.drawer.stops import Stop
from hearthkey.ui.text import said
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.signs import Sign, paint_sign
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.theme.tokens import Tokens


class LifeLine(QWidget):
    """Stops on a rail: mark, date, what happens. Lines and marks are painted, words are labels."""

    ROW, RAIL, TAIL, APART = 31, 9, 9, 6

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._stops: tuple[Stop, ...] = ()
        self._sign = Sign.NEVER_PROVED
        self._dates: list[Label] = []
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._grid.setVerticalSpacing(0)
        self._grid.setColumnStretch(1, 1)
        theme.changed.connect(self._measure)

    def show_stops(self, stops: Sequence[Stop], sign: Sign) -> None:
        """Show the stops of a pass; the sign of its state stands on today's tag."""
        self._stops, self._sign = tuple(stops), sign
        empty(self._grid)
        self._dates = []
        for row, stop in enumerate(self._stops):
            today = stop.mark is Mark.TODAY
            color = "onq" if today else "ink2" if stop.ahead else "ink"
            date = Label(self._theme, Role.BODY_STRONG if today else Role.BODY, short_day(stop.at), color=color)
            date.setAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
            words = Prose(self._theme, Role.BODY, said(stop.words), color="ink2" if today or stop.ahead else "ink")
            self._grid.addWidget(date, row, 0)
            self._grid.addWidget(words, row, 1, Qt.AlignmentFlag.AlignVCenter)
            self._dates.append(date)
        self._measure()

    def _measure(self) -> None:
        measured = [
            self._theme.fonts.metrics(Role.BODY_STRONG).horizontalAdvance(short_day(stop.at)) for stop in self._stops
        ]
        left = self._theme.px(self.RAIL + 13)
        self._grid.setColumnMinimumWidth(0, left + round(max(measured, default=0)) + 2)
        self._grid.setHorizontalSpacing(self._theme.px(22))
        for row in range(self._grid.rowCount()):
            self._grid.setRowMinimumHeight(row, self._theme.px(self.ROW) if row < len(self._stops) else 0)
        self.updateGeometry()
        self.update()

    def _middles(self) -> list[float]:
        return [date.geometry().center().y() + 0.5 for date in self._dates]

    def paintEvent(self, _event: object) -> None:  # noqa: N802 - Qt's name
        """Paint the rail, then what stands on it."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        tokens, size = self._theme.tokens, self._theme.fonts.scale
        ground = self._theme.color("raised")
        rail, middles = self._theme.px(self.RAIL), self._middles()
        for stop, above, below in zip(self._stops, middles, middles[1:], strict=False):
            paint_run(painter, stop.run, QPointF(rail, above), QPointF(rail, below), tokens, size=size)
            left = rail - self._theme.px(self.APART)
            paint_run(painter, stop.beside, QPointF(left, above), QPointF(left, below), tokens, size=size)
        for number, (stop, y) in enumerate(zip(self._stops, middles, strict=True)):
            place = QPointF(rail, y)
            if stop.mark is Mark.TODAY:
                self._paint_tag(painter, place)
            elif stop.mark is Mark.STOPPED:
                paint_sign(painter, Sign.STOPPED, place, tokens, ground=ground, size=size)
            else:
                ink = tokens.act if Run.DUE in {stop.run, self._stops[max(0, number - 1)].run} else ""
                paint_mark(painter, stop.mark, place, tokens, ground=ground, size=size, turn=90, ink=ink)
        painter.end()

    def _paint_tag(self, painter: QPainter, place: QPointF) -> None:
        tokens, size = self._theme.tokens, self._theme.fonts.scale
        right = self._grid.columnMinimumWidth(0) + self._theme.px(6)
        half = self._theme.px(11)
        tail = self._theme.px(self.TAIL)
        box = QRectF(0.5, round(place.y()) - half + 0.5, right, 2 * half)
        shape = QPolygonF(
            [
                box.topLeft(),
                QPointF(box.right() + tail, box.top()),
                QPointF(box.right(), place.y()),
                QPointF(box.right() + tail, box.bottom()),
                box.bottomLeft(),
            ]
        )
        painter.setPen(QPen(self._theme.color("qedge"), 1))
        painter.setBrush(self._theme.color("quince"))
        painter.drawPolygon(shape)
        paint_sign(painter, self._sign, place, _on_quince(tokens), ground=self._theme.color("quince"), size=size * 0.92)


def _on_quince(tokens: Tokens) -> Tokens:
    """The tokens for a sign that lies on the ribbon: one ink, whatever the theme."""
    return replace(tokens, ink=tokens.onq, ink2=tokens.onq, act=tokens.onq, onact=tokens.quince)
