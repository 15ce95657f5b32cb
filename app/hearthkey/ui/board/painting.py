"""Paints rows: names, life lines, words on a patch of ground, dates, next steps, focus."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise
from typing import NamedTuple

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPen

from hearthkey.ui.board.ground import Level, Wash
from hearthkey.ui.board.lifeline import ground_at, paint_life, paint_stop
from hearthkey.ui.board.names import span
from hearthkey.ui.board.placing import Part, line_y, place, rect
from hearthkey.ui.board.rows import Event, Row, Tone
from hearthkey.ui.board.ruling import Box, Ruling
from hearthkey.ui.entries import Entry, Fixture


class Drawn(NamedTuple):
    """A row that is about to be painted.

    Args:
        top: pixels of the sheet.
        wash: token of the band behind it, None for none.
        selected, ringed: with the bar of ink; with the ring of the focus.
        event: the stop that is being read.
    """

    entry: Entry
    row: Row
    box: Box
    top: float
    wash: str | None = None
    selected: bool = False
    ringed: bool = False
    event: Event | None = None

    @property
    def band(self) -> tuple[float, float]:
        """Top and bottom of the row without the space around it."""
        top = self.top + self.box.before
        return top, top + self.box.body


def washes(rows: Sequence[Drawn]) -> list[Wash]:
    """The bands behind rows."""
    return [Wash(one.band[0], one.band[1] - 1, one.wash, bar=one.selected) for one in rows if one.wash is not None]


def levels(rows: Sequence[Drawn], bottom: float) -> list[Level]:
    """The rules between rows.

    Args:
        bottom: of the sheet; a rule right above it would stand beside the double rule of the house.
    """
    found = []
    for one in rows:
        house = isinstance(one.entry.source, Fixture)
        end = one.top + one.box.height
        if house and one.entry.first:
            found += [Level(one.top, 1.5, "ink", full=True), Level(one.top + 4, 1, "ink", full=True)]
        if not one.entry.who:
            tall = one.box.height
            found += [
                Level(end - 1 + at * tall, 1, "hair", full=False) for at in range(int((bottom - end) // tall) + 1)
            ]
        elif not one.entry.last:
            found.append(Level(one.band[1] - 1, 1, "hair", full=False))
        elif not house and end < bottom - 12:
            found.append(Level(end - 1, 1, "rule", full=True))
    return found


def paint_rows(
    painter: QPainter, rows: Sequence[Drawn], ruling: Ruling, *, host: str = "", wanted: Sequence[str] = ()
) -> None:
    """Paint rows over their ground.

    Args:
        host: stands under "The house".
        wanted: casefolded words that are being looked for.
    """
    for one in rows:
        y = line_y(one.entry, one.box, one.top, ruling)
        paint_life(painter, one.row, y, ruling, one.wash)
        if one.event is not None:
            paint_stop(painter, ruling.x(one.event.at)[0], y, ruling)
        parts = place(one.entry, one.row, one.box, one.top, ruling, host=host, event=one.event)
        paint_patches(painter, parts, ruling, one.wash)
        for part in parts:
            paint_part(painter, part, ruling)
            if wanted and part.kind in {"who", "device"}:
                _found(painter, part, ruling, wanted)
            if part.kind == "step":
                _arrow(painter, part, one.row, ruling)
        if one.ringed:
            _ring(painter, one, ruling)


def paint_part(painter: QPainter, part: Part, ruling: Ruling) -> None:
    """Paint a run of text."""
    painter.setFont(ruling.names.font(part.role))
    painter.setPen(ruling.theme.color(part.ink))
    painter.drawText(QPointF(part.x, part.baseline), part.text)


def paint_patches(painter: QPainter, parts: Sequence[Part], ruling: Ruling, wash: str | None) -> None:
    """Lay ground under all words that lie on the axis, before any of them is painted.

    Args:
        wash: token of the band behind their row, None where there is none.
    """
    for part in parts:
        if ruling.stacked or part.kind in {"word", "fact"}:
            box = rect(part, ruling)
            # Descenders need less than the face reserves; more would cut the life line below.
            box.setBottom(min(box.bottom(), part.baseline + ruling.theme.px(4)))
            _patch(painter, box.adjusted(-2, 0, 2, 0), ruling, None if part.kind in {"who", "count"} else wash)


def _patch(painter: QPainter, box: QRectF, ruling: Ruling, wash: str | None) -> None:
    """Ground under words, so that no line of the grid runs through a letter."""
    left = ruling.columns.axis.left
    borders = [left + piece.right for piece in ruling.axis.pieces if box.left() < left + piece.right < box.right()]
    if left > box.left():
        borders.insert(0, left)
    edges = [box.left(), *borders, box.right()]
    painter.setRenderHint(QPainter.RenderHint.Antialiasing, on=False)
    for start, end in pairwise(edges):
        color = QColor(ground_at((start + end) / 2, ruling, wash))
        painter.fillRect(QRectF(start, box.top(), end - start, box.height()), color)


def _found(painter: QPainter, part: Part, ruling: Ruling, wanted: Sequence[str]) -> None:
    """Underline the letters that are being looked for."""
    folded = part.text.casefold()
    for word in wanted:
        at = folded.find(word)
        if at >= 0 and len(folded) == len(part.text):
            start, end = span(ruling.theme, part.role, part.text, at, at + len(word))
            line = QRectF(part.x + start, part.baseline + 2, end - start, 2)
            painter.fillRect(line, ruling.theme.color("qedge"))


def _arrow(painter: QPainter, part: Part, row: Row, ruling: Ruling) -> None:
    """The arrow before the next step."""
    scale = ruling.theme.fonts.scale
    middle = part.baseline - ruling.names.metrics(part.role).xHeight() / 2 - 0.5
    tip = part.x - 7 * scale
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    pen = QPen(ruling.theme.color("act" if row.tone is Tone.DUE else "ink"), 1.6)
    pen.setJoinStyle(Qt.PenJoinStyle.MiterJoin)
    painter.setPen(pen)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawLine(QPointF(tip - 14 * scale, middle), QPointF(tip - 1, middle))
    head = 4.5 * scale
    corners = [QPointF(tip - head, middle - head), QPointF(tip, middle), QPointF(tip - head, middle + head)]
    painter.drawPolyline(corners)


def _ring(painter: QPainter, one: Drawn, ruling: Ruling) -> None:
    """The ring of the focus, inside the row, so that the next row's hairline does not cut it."""
    top, bottom = one.band
    columns = ruling.columns
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.setPen(QPen(ruling.theme.color("ink"), 2))
    box = QRectF(columns.wash_left, top, columns.rule_right - columns.wash_left, bottom - top - 1)
    painter.drawRoundedRect(box.adjusted(1, 1.5, -1, -1.5), 2, 2)
