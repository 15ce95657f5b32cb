"""The sheet as it will be, drawn while the household is being typed in."""

from __future__ import annotations

from datetime import datetime, timedelta
from typing import NamedTuple

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QPainter, QPen, QPolygonF
from PySide6.QtWidgets import QSizePolicy, QWidget

from hearthkey.core.certificates import AUTHORITY_DAYS, BACKDATED, GATEWAY_DAYS
from hearthkey.core.phrases import Style
from hearthkey.core.revocation import GOOD_FOR
from hearthkey.ui.board.axis import Axis, fold
from hearthkey.ui.board.ticks import grid, labels
from hearthkey.ui.controls.strokes import Mark, Run, paint_mark, paint_run
from hearthkey.ui.dates import day, written
from hearthkey.ui.text import spoken
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.signs import Sign, paint_sign
from hearthkey.ui.theme.theme import Theme

HEAD, ROW, NAMES = 46, 48, 126
"""Pixels at normal size: the head with the ribbon, a row, the column of names."""

ROWS = 8
"""The house's name, its three lines, people's name, and three empty rows."""


class HouseLine(NamedTuple):
    """A line of the house.

    Args:
        name: what it is.
        words: what stands on it.
        end: when it ends, UTC.
        run: how it is drawn.
    """

    name: str
    words: str
    end: datetime
    run: Run


class SheetSoFar(QWidget):
    """Three lines of the house on the folded axis, and room for people."""

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._now: datetime | None = None
        self._name, self._host, self._in_file = "", "", False
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        theme.changed.connect(self._dress)

    def _dress(self) -> None:
        self.updateGeometry()
        self.update()

    def sizeHint(self) -> QSize:  # noqa: N802 - Qt's name
        """Head and rows."""
        return QSize(self._theme.px(560), self._theme.px(HEAD + ROWS * ROW) + 4)

    def minimumSizeHint(self) -> QSize:  # noqa: N802 - Qt's name
        """The same height; names and the shortest axis."""
        return QSize(self._theme.px(NAMES) + 320, self.sizeHint().height())

    def draw(self, now: datetime, *, name: str, host: str, in_file: bool) -> None:
        """Draw what was typed.

        Args:
            now: today, UTC.
            name, host: of the household; may be empty still.
            in_file: the CA key is kept in a file.
        """
        self._now, self._name, self._host, self._in_file = now, name.strip(), host.strip(), in_file
        told = [f"{line.name}: {line.words}, {day(line.end)}" for line in self.lines()]
        self.setAccessibleName(self.tr("The sheet so far"))
        self.setAccessibleDescription(". ".join([*told, self._wall_words()]))
        self.update()

    def lines(self) -> tuple[HouseLine, ...]:
        """The three lines of the house; none before anybody knows what day it is."""
        if self._now is None:
            return ()
        authority_end = self._now + timedelta(days=AUTHORITY_DAYS)
        gateway_end = self._now - BACKDATED + timedelta(days=GATEWAY_DAYS)
        kept = self.tr("made now, kept in a file") if self._in_file else self.tr("made now, kept in the keyring")
        certificate = self.tr("its certificate")
        host = f"{self._host}, {certificate}" if self._host else certificate
        return (
            HouseLine(self.tr("CA"), kept, authority_end, Run.SOLID),
            HouseLine(self.tr("revocation list"), self.tr("no. 1, made with it"), self._now + GOOD_FOR, Run.SOLID),
            HouseLine(self.tr("gateway"), host, gateway_end, Run.DASHES),
        )

    def _wall_words(self) -> str:
        if self._now is None:
            return ""
        return self.tr("from {day} nobody gets in without a newer list").format(day=day(self._now + GOOD_FOR))

    # Painting

    def paintEvent(self, _event: object) -> None:  # noqa: N802 - Qt's name
        """Paint ground, ribbon, lines and words."""
        if self._now is None:
            return
        theme = self._theme
        left = theme.px(NAMES)
        axis = fold(self._now, self._now + timedelta(days=AUTHORITY_DAYS), max(self.width() - left - theme.px(18), 60))
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        self._ground(painter, axis, left)
        self._rules(painter)
        self._wall(painter, axis, left)
        for number, line in enumerate(self.lines(), 1):
            self._line(painter, axis, left, line, theme.px(HEAD + number * ROW))
        self._names(painter, axis, left)
        self._ribbon_head(painter, left + axis.today)
        painter.end()

    def _bottom(self) -> int:
        return self._theme.px(HEAD + ROWS * ROW)

    def _ground(self, painter: QPainter, axis: Axis, left: float) -> None:
        theme, top, bottom = self._theme, self._theme.px(HEAD), self._bottom()
        for number, piece in enumerate(axis.pieces):
            if number % 2 == 0:
                box = QRectF(
                    left + piece.left, top - theme.px(24), piece.right - piece.left, bottom - top + theme.px(24)
                )
                painter.fillRect(box, theme.color("facet"))
        painter.setRenderHint(QPainter.RenderHint.Antialiasing, on=False)
        for line in grid(axis):
            shade = theme.color("hair" if line.strong else "hair2")
            painter.fillRect(QRectF(round(left + line.x), top, 1, bottom - top), shade)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        run = max(22, theme.px(22))
        painter.fillRect(QRectF(left + axis.today - run / 2, top, run, bottom - top), theme.color("sel"))
        painter.fillRect(QRectF(left + axis.today - 0.75, top, 1.5, bottom - top), theme.color("ink"))
        small = theme.fonts.metrics(Role.SMALL)
        strong = theme.fonts.metrics(Role.SMALL_STRONG)
        for tick in labels(
            axis, lambda text, bold: (strong if bold else small).horizontalAdvance(spoken(text)), theme.px(44)
        ):
            painter.setFont(theme.font(Role.SMALL_STRONG if tick.strong else Role.SMALL))
            painter.setPen(theme.color("ink2"))
            painter.drawText(QPointF(left + tick.left, top - theme.px(8)), spoken(tick.text))

    def _rules(self, painter: QPainter) -> None:
        theme = self._theme
        painter.setRenderHint(QPainter.RenderHint.Antialiasing, on=False)
        for number in range(1, ROWS):
            y = theme.px(HEAD + number * ROW)
            painter.fillRect(0, y, self.width(), 1, theme.color("hair"))
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        for y in (theme.px(HEAD), self._bottom()):
            painter.fillRect(QRectF(0, y, self.width(), 1.5), theme.color("ink"))

    def _wall(self, painter: QPainter, axis: Axis, left: float) -> None:
        """Where the list ends, unless another one takes its place."""
        if self._now is None:
            return
        theme, ink = self._theme, self._theme.color("ink")
        x, top, bottom = round(left + axis.x(self._now + GOOD_FOR).x), theme.px(HEAD), self._bottom()
        painter.fillRect(QRectF(x - 0.75, top, 1.5, bottom - top), ink)
        painter.fillRect(QRectF(x + 3, top, 1, bottom - top), ink)
        painter.setFont(theme.font(Role.SMALL_ITALIC))
        painter.setPen(theme.color("ink2"))
        height = theme.px(2 * ROW) - 10
        box = QRectF(x + theme.px(10), theme.px(HEAD + 6 * ROW) + 6, self.width() - x - theme.px(10), height)
        side = Qt.AlignmentFlag.AlignLeft
        if box.width() < theme.px(96):  # no room behind the wall: before it, then
            box = QRectF(x - theme.px(150), box.top(), theme.px(142), height)
            side = Qt.AlignmentFlag.AlignRight
        painter.drawText(box, int(Qt.TextFlag.TextWordWrap | Qt.AlignmentFlag.AlignTop | side), self._wall_words())

    def _line(self, painter: QPainter, axis: Axis, left: float, line: HouseLine, top: float) -> None:
        theme, tokens, size = self._theme, self._theme.tokens, self._theme.fonts.scale
        y = top + theme.px(38)
        today = left + axis.today
        end = left + axis.x(line.end).x
        paint_run(painter, line.run, QPointF(today, y), QPointF(end, y), tokens, size=size)
        paint_mark(painter, Mark.END, QPointF(end, y), tokens, ground=theme.color("sheet"), size=size)
        paint_sign(painter, Sign.DRAFT, QPointF(today, y), tokens, ground=theme.color("sel"), size=size)
        painter.setFont(theme.font(Role.DEVICE))
        painter.setPen(theme.color("ink"))
        painter.drawText(QPointF(0, top + theme.px(27)), line.name)
        self._words(painter, QPointF(today + theme.px(17), top + theme.px(27)), line.words)

    def _words(self, painter: QPainter, at: QPointF, words: str) -> None:
        """Words over whatever is drawn there, on a patch of ground."""
        measures = self._theme.fonts.metrics(Role.STATE)
        shown = measures.elidedText(words, Qt.TextElideMode.ElideMiddle, self.width() - at.x() - 4)
        patch = QRectF(at.x() - 2, at.y() - measures.ascent(), measures.horizontalAdvance(shown) + 4, measures.height())
        painter.fillRect(patch, self._theme.color("sheet"))
        painter.setFont(self._theme.font(Role.STATE))
        painter.setPen(self._theme.color("ink2"))
        painter.drawText(at, shown)

    def _names(self, painter: QPainter, axis: Axis, left: float) -> None:
        theme = self._theme
        painter.setFont(theme.font(Role.PERSON))
        painter.setPen(theme.color("ink"))
        measures = theme.fonts.metrics(Role.PERSON)
        house = measures.elidedText(self._name or self.tr("The house"), Qt.TextElideMode.ElideRight, self.width())
        room = left + axis.today - theme.px(16)
        if measures.horizontalAdvance(house) > room:
            at = QRectF(-2, theme.px(HEAD) + 10, measures.horizontalAdvance(house) + 4, measures.height())
            painter.fillRect(at, theme.color("sheet"))
        painter.drawText(QPointF(0, theme.px(HEAD + 30)), house)
        painter.drawText(QPointF(0, theme.px(HEAD + 4 * ROW + 30)), self.tr("Then people"))
        words = self.tr("One line for each device, from the day it is made to the day it ends.")
        start = left + axis.today + theme.px(17)
        wall = left + axis.x(self._now + GOOD_FOR).x if self._now is not None else 0.0
        end = wall - 6 if wall - start > theme.px(170) else self.width() - 4
        box = QRectF(start, theme.px(HEAD + 4 * ROW + 6), end - start, theme.px(ROW) - 8)
        flags = int(Qt.TextFlag.TextWordWrap | Qt.AlignmentFlag.AlignVCenter)
        lies = theme.fonts.metrics(Role.STATE).boundingRect(box, flags, words).adjusted(-2, 0, 2, 0)
        painter.fillRect(lies, theme.color("sheet"))
        painter.setFont(theme.font(Role.STATE))
        painter.setPen(theme.color("ink2"))
        painter.drawText(box, flags, words)

    def _ribbon_head(self, painter: QPainter, x: float) -> None:
        """The ribbon's head: 72 by 24, with a swallowtail; today in it."""
        if self._now is None:
            return
        theme = self._theme
        text = written(self._now, Style.SHORT_WEEKDAY)
        half = max(theme.px(36), theme.fonts.metrics(Role.SMALL_STRONG).horizontalAdvance(text) / 2 + 8)
        top, band, tail, run = 0.5, theme.px(24), theme.px(40), theme.px(11)
        shape = QPolygonF(
            [
                QPointF(x - half, top),
                QPointF(x + half, top),
                QPointF(x + half, band),
                QPointF(x + run, band),
                QPointF(x + run, tail),
                QPointF(x, tail - run),
                QPointF(x - run, tail),
                QPointF(x - run, band),
                QPointF(x - half, band),
            ]
        )
        painter.setPen(QPen(theme.color("qedge"), 1))
        painter.setBrush(theme.color("quince"))
        painter.drawPolygon(shape)
        painter.setFont(theme.font(Role.SMALL_STRONG))
        painter.setPen(theme.color("onq"))
        painter.drawText(QRectF(x - half, top, 2 * half, band), int(Qt.AlignmentFlag.AlignCenter), text)
