"""Paints a life line: its bars, what stands on it, and the bead on the ribbon."""

from __future__ import annotations

from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPen, QPolygonF

from hearthkey.ui.board.rows import Mark, Row, Segment, Shape, Stroke
from hearthkey.ui.board.ruling import Ruling
from hearthkey.ui.theme.signs import paint_sign

NEAR, NEAR_ROUND = 10, 17
"""No bar stands nearer to the middle of the bead than the first, no ring or lozenge than the second; pixels."""

TALL = 8
"""How high the tick of a proof stands on its line."""

APART = 10
"""The ring "made" and the tick of a proof are left out where "handed over" stands nearer than this."""


def paint_life(painter: QPainter, row: Row, y: float, ruling: Ruling, wash: str | None) -> None:
    """Paint a life line.

    Args:
        y: its middle.
        wash: token of the band behind its row, None where there is none.
    """
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    for segment in row.segments:
        _segment(painter, segment, row, y, ruling)
    _arrows(painter, row, y, ruling)
    for mark in _shown(row, ruling):
        _mark(painter, mark, row, y, ruling, wash)
    painter.restore()
    ground = ruling.theme.color("sel")
    centre = QPointF(ruling.ribbon, y)
    paint_sign(painter, row.sign, centre, ruling.theme.tokens, ground=ground, size=ruling.theme.fonts.scale)


def paint_stop(painter: QPainter, x: float, y: float, ruling: Ruling) -> None:
    """Circle the event that is being read."""
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.setPen(QPen(ruling.theme.color("ink"), 2))
    radius = ruling.theme.px(8) if abs(x - ruling.ribbon) > 1 else ruling.theme.px(11)
    painter.drawEllipse(QPointF(x, y), radius, radius)


def _ends(segment: Segment, ruling: Ruling) -> tuple[float, float]:
    start = ruling.columns.axis.left if segment.start is None else ruling.x(segment.start)[0]
    return start, ruling.x(segment.end)[0]


def _segment(painter: QPainter, segment: Segment, row: Row, y: float, ruling: Ruling) -> None:
    start, end = _ends(segment, ruling)
    near = NEAR_ROUND * ruling.theme.fonts.scale
    if end - start < 0.5 or ruling.ribbon - near < start < end <= ruling.ribbon + 0.5:
        return
    if ruling.ribbon - near < start < ruling.ribbon:  # a stub beside the bead would only be a smudge
        start = ruling.ribbon
    ink = ruling.theme.color(row.tone.line_ink)
    stroke = segment.stroke
    if stroke is Stroke.SOLID:
        painter.fillRect(QRectF(start, y - 2, end - start, 4), ink)
    elif stroke is Stroke.HOLLOW:
        for edge in (y - 2.6, y + 1.4):
            painter.fillRect(QRectF(start, edge, end - start, 1.2), ink)
    elif stroke is Stroke.PAST:
        painter.fillRect(QRectF(start, y - 1, end - start, 2), ink)
    else:
        width, dash, gap = {Stroke.DASHES: (1.6, 5, 4), Stroke.DOTS: (1.6, 1.6, 4), Stroke.FINE_DOTS: (1.2, 2, 3)}[
            stroke
        ]
        pen = QPen(ink, width)
        pen.setCapStyle(Qt.PenCapStyle.FlatCap)
        pen.setDashPattern([dash / width, gap / width])
        painter.setPen(pen)
        painter.drawLine(QLineF(start, y, end, y))


def _arrows(painter: QPainter, row: Row, y: float, ruling: Ruling) -> None:
    """An arrowhead where a line goes on beyond the sheet."""
    if not row.segments:
        return
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(ruling.theme.color(row.tone.line_ink))
    first, last = row.segments[0], row.segments[-1]
    if first.start is None or ruling.x(first.start)[1] < 0:
        left = ruling.columns.axis.left
        painter.drawPolygon(QPolygonF([QPointF(left - 4, y), QPointF(left + 2, y - 4), QPointF(left + 2, y + 4)]))
    if ruling.x(last.end)[1] > 0:
        right = ruling.columns.axis.right
        painter.drawPolygon(QPolygonF([QPointF(right + 4, y), QPointF(right - 2, y - 4), QPointF(right - 2, y + 4)]))


def _shown(row: Row, ruling: Ruling) -> list[Mark]:
    """Marks on the sheet, not under the bead and not upon each other."""
    found = []
    given = next((ruling.x(mark.at)[0] for mark in row.marks if mark.shape is Shape.HANDED_OVER), None)
    for mark in row.marks:
        x, cut = ruling.x(mark.at)
        near = NEAR_ROUND if mark.shape in {Shape.MADE, Shape.HANDED_OVER} else NEAR
        if cut or abs(x - ruling.ribbon) < near * ruling.theme.fonts.scale:
            continue
        if mark.shape is Shape.MADE and given is not None and abs(given - x) < APART:
            continue
        if mark.shape is Shape.PROOF and given is not None and abs(given - x) < APART:
            continue
        found.append(mark)
    return found


def _mark(painter: QPainter, mark: Mark, row: Row, y: float, ruling: Ruling, wash: str | None) -> None:
    x = ruling.x(mark.at)[0]
    ink = ruling.theme.color(row.tone.line_ink)
    if mark.shape in {Shape.MADE, Shape.HANDED_OVER}:
        painter.setBrush(QColor(ground_at(x, ruling, wash)))
        painter.setPen(QPen(ink, 1.5))
        if mark.shape is Shape.MADE:
            painter.drawEllipse(QPointF(x, y), 3.2, 3.2)
        else:
            corners = ((x - 5, y), (x, y - 5), (x + 5, y), (x, y + 5))
            painter.drawPolygon(QPolygonF([QPointF(*corner) for corner in corners]))
    elif mark.shape is Shape.PROOF:
        painter.fillRect(QRectF(round(x) - 1, y - TALL, 2, TALL), ink)
    elif mark.shape is Shape.FINAL:
        strong = ruling.theme.color("ink")
        painter.fillRect(QRectF(x - 5.5, y - 7, 1.2, 14), strong)
        painter.fillRect(QRectF(x - 2.2, y - 7, 3.4, 14), strong)
    else:
        half = 6 if mark.shape is Shape.END else 4
        painter.fillRect(QRectF(round(x) - 1, y - half, 2, 2 * half), ink)


def ground_at(x: float, ruling: Ruling, wash: str | None) -> str:
    """The colour that lies under a place of a row, as #RRGGBB."""
    tokens = ruling.theme.tokens
    if wash is not None:
        return str(getattr(tokens, wash))
    at = x - ruling.columns.axis.left
    inside = 0 <= at < ruling.axis.width
    return tokens.facet if inside and ruling.axis.shaded(at) else tokens.sheet
