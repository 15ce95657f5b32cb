"""Paints what lies under the rows: leaves, folds, grid, rules, ribbon, string, wall and hatch."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QLinearGradient, QPainter, QPen

from hearthkey.ui.board.ruling import Ruling

CREASE = 6
"""Width of the shade at a fold, pixels."""

HATCH = 10
"""From one line of the hatch to the next, pixels."""


class Wash(NamedTuple):
    """A band of colour behind a row.

    Args:
        top, bottom: pixels.
        token: its colour.
        bar: with the bar of ink at its left that says "selected".
    """

    top: float
    bottom: float
    token: str
    bar: bool


class Level(NamedTuple):
    """A horizontal rule.

    Args:
        y: its upper edge, pixels.
        thick: pixels.
        token: its colour.
        full: from the margin; otherwise from the device's name.
    """

    y: float
    thick: float
    token: str
    full: bool


def paint_ground(
    painter: QPainter,
    area: QRectF,
    ruling: Ruling,
    *,
    washes: Sequence[Wash],
    levels: Sequence[Level],
    offset: float,
    wall_to: float | None,
) -> None:
    """Paint everything below the rows.

    Args:
        area: what has to be painted; whole height, any part of it.
        offset: how far the sheet is scrolled, so that patterns stay where they are on it.
        wall_to: where the wall ends at the bottom; None where the hatch goes on as well.
    """
    paint_leaves(painter, area, ruling)
    _washes(painter, ruling, washes)
    paint_grid(painter, area, ruling)
    if wall_to is None:
        _hatch(painter, area, ruling, offset)
    _levels(painter, ruling, levels)
    paint_run(painter, area, ruling)
    _wall(painter, area, ruling, wall_to)


def paint_leaves(painter: QPainter, area: QRectF, ruling: Ruling) -> None:
    """Every second leaf has a ground of its own, and each fold a crease."""
    tokens, left = ruling.theme.tokens, ruling.columns.axis.left
    painter.setRenderHint(QPainter.RenderHint.Antialiasing, on=False)
    for piece in ruling.axis.pieces:
        if ruling.axis.shaded((piece.left + piece.right) / 2):
            box = QRectF(left + piece.left, area.top(), piece.right - piece.left, area.height())
            painter.fillRect(box, QColor(tokens.facet))
    for piece in ruling.axis.pieces[:-1]:
        _crease(painter, area, ruling, round(left + piece.right))


def _crease(painter: QPainter, area: QRectF, ruling: Ruling, x: float) -> None:
    shade = ruling.theme.tokens.shade
    if shade is None:
        painter.fillRect(QRectF(x - 1, area.top(), 1, area.height()), ruling.theme.color("hair"))
        return
    dark, clear = QColor(shade), QColor(shade)
    dark.setAlphaF(0.75)
    clear.setAlphaF(0.0)
    gradient = QLinearGradient(QPointF(x - CREASE, 0), QPointF(x, 0))
    gradient.setColorAt(0, clear)
    gradient.setColorAt(1, dark)
    painter.fillRect(QRectF(x - CREASE, area.top(), CREASE, area.height()), gradient)
    light, gone = QColor(ruling.theme.tokens.raised), QColor(ruling.theme.tokens.raised)
    light.setAlphaF(0.55)
    gone.setAlphaF(0.0)
    gradient = QLinearGradient(QPointF(x, 0), QPointF(x + CREASE, 0))
    gradient.setColorAt(0, light)
    gradient.setColorAt(1, gone)
    painter.fillRect(QRectF(x, area.top(), CREASE, area.height()), gradient)


def paint_grid(painter: QPainter, area: QRectF, ruling: Ruling, *, strong: bool | None = None) -> None:
    """The lines of the grid; all of them, or the strong or the light ones alone."""
    light, dark = ruling.theme.color("hair2"), ruling.theme.color("hair")
    for line in ruling.grid:
        if strong is None or strong is line.strong:
            x = round(ruling.columns.axis.left + line.x)
            painter.fillRect(QRectF(x, area.top(), 1, area.height()), dark if line.strong else light)


def paint_run(painter: QPainter, area: QRectF, ruling: Ruling) -> None:
    """The ribbon's run and the string in its middle."""
    run = ruling.run
    painter.fillRect(QRectF(ruling.ribbon - run / 2, area.top(), run, area.height()), ruling.theme.color("sel"))
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.fillRect(QRectF(ruling.ribbon - 0.75, area.top(), 1.5, area.height()), ruling.theme.color("ink"))


def _washes(painter: QPainter, ruling: Ruling, washes: Sequence[Wash]) -> None:
    left, right = ruling.columns.wash_left, ruling.columns.rule_right
    for wash in washes:
        box = QRectF(left, wash.top, right - left, wash.bottom - wash.top)
        painter.fillRect(box, ruling.theme.color(wash.token))
        if wash.bar:
            painter.fillRect(QRectF(left, wash.top, 4, box.height()), ruling.theme.color("ink"))


def _levels(painter: QPainter, ruling: Ruling, levels: Sequence[Level]) -> None:
    columns = ruling.columns
    for level in levels:
        left = columns.who.left if level.full else columns.device.left
        painter.setRenderHint(QPainter.RenderHint.Antialiasing, level.thick != 1)
        box = QRectF(left, level.y, columns.rule_right - left, level.thick)
        painter.fillRect(box, ruling.theme.color(level.token))


def _shut(ruling: Ruling) -> float | None:
    """Where the wall stands, if it does on this sheet."""
    if ruling.wall is None:
        return None
    x, cut = ruling.x(ruling.wall)
    return x if cut == 0 else None


def _hatch(painter: QPainter, area: QRectF, ruling: Ruling, offset: float) -> None:
    wall = _shut(ruling)
    if wall is None:
        return
    right = ruling.columns.axis.right
    box = QRectF(wall + 4, area.top(), right - wall - 4, area.height())
    if box.width() <= 0:
        return
    painter.save()
    painter.setClipRect(box, Qt.ClipOperation.IntersectClip)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setPen(QPen(ruling.theme.color("hair"), 1.4))
    step = HATCH * 2**0.5
    # Each line runs up to the right; where it meets the top of the area depends on the place on the sheet alone.
    start = box.left() - (box.left() + area.top() + offset) % step
    lines = []
    while start < box.right() + area.height():
        lines.append(QLineF(start, area.top(), start - area.height(), area.bottom()))
        start += step
    painter.drawLines(lines)
    painter.restore()


def _wall(painter: QPainter, area: QRectF, ruling: Ruling, wall_to: float | None) -> None:
    wall = _shut(ruling)
    if wall is None:
        return
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    ink = ruling.theme.color("ink")
    bottom = area.bottom() if wall_to is None else min(area.bottom(), wall_to)
    painter.fillRect(QRectF(round(wall) - 0.75, area.top(), 1.5, bottom - area.top()), ink)
    if wall_to is None:
        painter.setRenderHint(QPainter.RenderHint.Antialiasing, on=False)
        painter.fillRect(QRectF(round(wall) + 3, area.top(), 1, area.height()), ink)
