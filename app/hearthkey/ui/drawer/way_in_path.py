"""The way in as a path: the links one under the other, the packet where it is, a gap behind the first broken one."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from PySide6.QtCore import QPointF, QRectF, QSize
from PySide6.QtGui import QPainter, QPen
from PySide6.QtWidgets import QHBoxLayout, QSizePolicy, QVBoxLayout, QWidget

from hearthkey.core.reach.chain import Link, Place, Verdict
from hearthkey.core.sentences import way_in as words
from hearthkey.core.sentences import way_in_tables as tables
from hearthkey.core.sentences.sentence import Sentence
from hearthkey.ui.controls.emptying import empty
from hearthkey.ui.controls.labels import Prose
from hearthkey.ui.strip_words import LINK_SIGNS
from hearthkey.ui.text import said
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.signs import Sign, paint_sign
from hearthkey.ui.theme.theme import Theme

CELL = 24
"""Side of a sign's cell, in pixels at normal type."""


class Station(QWidget):
    """One link's sign, and the path on to the next.

    Args:
        verdict: None where nothing is known yet.
        here: the packet is here.
        last: no path leads on.
        cut: what comes after cannot be reached from here.
    """

    def __init__(self, theme: Theme, verdict: Verdict | None, *, here: bool, last: bool, cut: bool) -> None:
        super().__init__()
        self._theme, self._verdict, self._here, self._last, self._cut = theme, verdict, here, last, cut
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Expanding)
        theme.changed.connect(self.updateGeometry)

    def sizeHint(self) -> QSize:  # noqa: N802 - Qt's name
        """A cell at least; the path takes the rest."""
        return QSize(self._theme.px(CELL), self._theme.px(CELL))

    def paintEvent(self, _event: object) -> None:  # noqa: N802 - Qt's name
        """Paint the path, then the sign on it, then the packet."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        unit = self._theme.px(CELL) / CELL
        middle = QPointF(self.width() / 2, CELL / 2 * unit)
        if not self._last:
            pen = QPen(self._theme.color("act" if self._cut else "ink"), (1.2 if self._cut else 1.8) * unit)
            if self._cut or self._verdict is None:
                pen.setDashPattern([1.0, 4.0])
            painter.setPen(pen)
            painter.drawLine(middle, QPointF(middle.x(), self.height() + middle.y()))
        sign = Sign.DRAFT if self._verdict is None else LINK_SIGNS[self._verdict]
        ground = self._theme.color("raised")
        paint_sign(painter, sign, middle, self._theme.tokens, ground=ground, size=unit)
        if self._here:
            painter.setPen(QPen(self._theme.color("ink"), 1.2 * unit))
            painter.setBrush(self._theme.color("quince"))
            painter.drawRect(QRectF(middle.x() - 4 * unit, middle.y() - 3 * unit, 8 * unit, 6 * unit))
        painter.end()


class WayInPath(QWidget):
    """All links of a check, as far as they are known."""

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._rows = QVBoxLayout(self)
        self._rows.setContentsMargins(0, 0, 0, 0)
        self._rows.setSpacing(0)

    def show_links(self, places: Sequence[Place], known: Mapping[Place, Link], *, live: bool) -> None:
        """Show the path anew.

        Args:
            places: every link there is, in the order of the packet.
            known: those that something is known of.
            live: a check is under way, so that the packet is at the first that is not known.
        """
        empty(self._rows)
        at = next((place for place in places if place not in known), None) if live else None
        broken = False
        for place in places:
            link = known.get(place)
            broken = broken or (link is not None and link.verdict is Verdict.BROKEN)
            station = Station(
                self._theme,
                None if link is None else link.verdict,
                here=place is at,
                last=place is places[-1],
                cut=broken,
            )
            self._rows.addWidget(self._row(station, place, link))

    def _row(self, station: Station, place: Place, link: Link | None) -> QWidget:
        lines = QVBoxLayout()
        lines.setContentsMargins(0, 2, 0, 12)
        lines.setSpacing(1)
        told = None if link is None else words.link(link)
        broken = link is not None and link.verdict is Verdict.BROKEN
        title = said(Sentence(tables.PLACES[place.value], {}) if told is None else told.title)
        heading = Prose(self._theme, Role.BODY_STRONG if link is not None else Role.BODY, title)
        heading.recolor("act" if broken else "ink" if link is not None else "ink2")
        lines.addWidget(heading)
        if told is not None:
            verdict, seen = said(told.verdict), said(told.seen)
            lines.addWidget(Prose(self._theme, Role.STATE, f"{verdict}. {seen}", color="act" if broken else "ink2"))
            for part in (told.meaning, told.try_next):
                if part is not None:
                    role = Role.STATE_WORD if part is told.try_next else Role.STATE
                    lines.addWidget(Prose(self._theme, role, said(part), color="ink"))
        row = QWidget()
        across = QHBoxLayout(row)
        across.setContentsMargins(0, 0, 0, 0)
        across.setSpacing(8)
        across.addWidget(station)
        across.addLayout(lines, 1)
        return row
