"""Where on the axis something is to be done: a shape for each place, and what it says."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QPainter, QPen, QPolygonF

from hearthkey.core.sentences import duties as words
from hearthkey.ui.board.axis import Axis
from hearthkey.ui.board.life import tr
from hearthkey.ui.board.ruling import Ruling
from hearthkey.ui.dates import short_day
from hearthkey.ui.due import DueDay
from hearthkey.ui.text import said

APART = 10.0
"""Days whose shapes would stand nearer to each other share one, in pixels."""

MOST = 12
"""More shapes than that would be a saw, which nobody reads: then those that are near each other share one."""

HALF, TALL = 4.0, 5.0
"""Of a shape, pixels at normal type; it stays below the feet of the labels."""

TOLD = 4
"""So many duties are told of one place, and so many days to a screen reader."""


@dataclass(frozen=True)
class Due:
    """A place on the axis.

    Args:
        x: pixels from the left end of the axis.
        days: that fall there, soonest first.
    """

    x: float
    days: tuple[DueDay, ...]


def dues(axis: Axis, days: Sequence[DueDay]) -> tuple[Due, ...]:
    """The places of days that lie on the axis; days that are near each other share one."""
    places = [(place.x, day) for day in days if not (place := axis.x(day.at)).cut]
    apart = APART
    while len(found := _gathered(places, apart)) > MOST:
        apart *= 1.5
    return found


def _gathered(places: Sequence[tuple[float, DueDay]], apart: float) -> tuple[Due, ...]:
    found: list[tuple[float, list[DueDay]]] = []
    for x, day in places:
        if found and x - found[-1][0] < apart:
            found[-1][1].append(day)
        else:
            found.append((x, [day]))
    return tuple(Due(x, tuple(those)) for x, those in found)


def listed(days: Sequence[DueDay]) -> str:
    """What a few days ask for, in one line each."""
    lines = [
        tr("{day}: {deed}").format(day=short_day(day.at), deed=said(words.title(duty)))
        for day in days[:TOLD]
        for duty in day.duties[:TOLD]
    ]
    count = sum(len(day.duties) for day in days)
    shown = lines[:TOLD]
    if count == len(shown) + 1:
        shown.append(tr("and one more"))
    elif count > len(shown):
        shown.append(tr("and {count} more").format(count=count - len(shown)))
    return "\n".join(shown)


def paint_dues(painter: QPainter, found: Sequence[Due], bottom: float, ruling: Ruling) -> None:
    """Hollow triangles that stand on the rule of the head.

    Args:
        bottom: the upper edge of that rule, pixels.
    """
    half, tall = HALF * ruling.theme.fonts.scale, TALL * ruling.theme.fonts.scale
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    pen = QPen(ruling.theme.color("ink"), 1.2)
    pen.setJoinStyle(Qt.PenJoinStyle.MiterJoin)
    painter.setPen(pen)
    painter.setBrush(ruling.theme.color("raised"))
    for one in found:
        x = ruling.columns.axis.left + one.x
        if abs(x - ruling.ribbon) >= ruling.run / 2 + half:
            corners = (QPointF(x - half, bottom), QPointF(x, bottom - tall), QPointF(x + half, bottom))
            painter.drawPolygon(QPolygonF(corners))


def at(found: Sequence[Due], x: float, reach: float) -> Due | None:
    """The shape nearest to a place, None where none is in reach; all in pixels of the axis."""
    near = min(found, key=lambda one: abs(one.x - x), default=None)
    return near if near is not None and abs(near.x - x) <= reach else None
