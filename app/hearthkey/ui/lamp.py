"""A lamp of the strip: a sign, its word, and the fact that explains it."""

from __future__ import annotations

import math

from PySide6.QtCore import QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QMouseEvent, QPainter
from PySide6.QtWidgets import QSizePolicy, QWidget

from hearthkey.ui.strip_words import Lit
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.signs import Sign, paint_sign
from hearthkey.ui.theme.theme import Theme

GAP = 6
INSET, AFTER = 14, 8
"""Pixels at the left, behind a hairline, and at the right, before the row's own gap."""
LINK = 11
"""Pixels that a link of a chain takes at normal type."""


class Lamp(QWidget):
    """Shows one thing that is known, or not known.

    Args:
        leads: a click on it leads somewhere.

    Signals:
        clicked: with the mouse; with the keyboard the strip's own button leads there.
    """

    clicked = Signal()

    def __init__(self, theme: Theme, *, leads: bool = True, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._leads = leads
        self._room: int | None = None
        self._short = False
        self.lit = Lit(Sign.UNKNOWN, "")
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Expanding)
        if leads:
            self.setCursor(Qt.CursorShape.PointingHandCursor)
        theme.changed.connect(self.updateGeometry)

    def light(self, lit: Lit) -> None:
        """Show a state; what is due is red and strong."""
        self.lit = lit
        self.setToolTip(lit.in_full)
        self.setAccessibleName(lit.told)
        self.setAccessibleDescription("\n".join(words for _sign, words in lit.links))
        self.updateGeometry()
        self.update()

    def width_with(self, *, fact: bool) -> int:
        """How wide the lamp is with its fact, or without."""
        return math.ceil(self._before() + self._word_width() + (self._fact_width() if fact else 0)) + AFTER

    def abridge(self, *, short: bool, room: int | None = None) -> None:
        """Leave the fact out, or show it again; where even the word has no room, it ends in dots."""
        if (short, room) != (self._short, self._room):
            self._short, self._room = short, room
            self.updateGeometry()
            self.update()

    def shows_fact(self) -> bool:
        """Whether the fact stands there."""
        return bool(self.lit.fact) and not self._short

    def _before(self) -> float:
        return INSET + self._theme.px(16) + GAP

    def _role(self) -> Role:
        return Role.BODY_STRONG if self.lit.due else Role.BODY

    def _word_width(self) -> float:
        return self._theme.fonts.metrics(self._role()).horizontalAdvance(self.lit.word)

    def _fact_width(self) -> float:
        wide = self._theme.fonts.metrics(Role.BODY).horizontalAdvance(self.lit.fact)
        return GAP + wide + self._links_width() if self.lit.fact else 0

    def _links_width(self) -> float:
        return GAP + len(self.lit.links) * self._theme.px(LINK) if self.lit.links else 0

    def sizeHint(self) -> QSize:  # noqa: N802 - Qt's name
        """Its parts, or the room that is left for them."""
        wide = self.width_with(fact=not self._short)
        return QSize(wide if self._room is None else min(wide, self._room), self._theme.px(24))

    minimumSizeHint = sizeHint  # noqa: N815 - Qt's name

    def mousePressEvent(self, event: QMouseEvent) -> None:  # noqa: N802 - Qt's name
        """Take the press, so that the release comes here too."""
        event.setAccepted(self._leads)

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:  # noqa: N802 - Qt's name
        """Lead on."""
        inside = self.rect().contains(event.position().toPoint())
        if self._leads and inside and event.button() is Qt.MouseButton.LeftButton:
            self.clicked.emit()

    def paintEvent(self, _event: object) -> None:  # noqa: N802 - Qt's name
        """Paint a hairline at the left, the sign, the word and the fact."""
        painter = QPainter(self)
        painter.fillRect(QRectF(0, 9, 1, self.height() - 18), self._theme.color("hair"))
        centre = QPointF(INSET + self._theme.px(16) / 2, self.height() / 2)
        ground = self._theme.color("desk")
        paint_sign(painter, self.lit.sign, centre, self._theme.tokens, ground=ground, size=self._theme.fonts.scale)
        left = self._before()
        self._write(painter, left, self.lit.word, self._role(), "act" if self.lit.due else "ink")
        if self.shows_fact():
            left += self._word_width() + GAP
            self._write(painter, left, self.lit.fact, Role.BODY, "ink2")
            left += self._theme.fonts.metrics(Role.BODY).horizontalAdvance(self.lit.fact) + GAP
            for number, (sign, _words) in enumerate(self.lit.links):
                middle = QPointF(left + (number + 0.5) * self._theme.px(LINK), self.height() / 2)
                small = self._theme.fonts.scale * LINK / 20
                paint_sign(painter, sign, middle, self._theme.tokens, ground=ground, size=small)
        painter.end()

    def _write(self, painter: QPainter, left: float, text: str, role: Role, color: str) -> None:
        room = self.width() - left - 2
        measures = self._theme.fonts.metrics(role)
        fits = measures.horizontalAdvance(text) <= room + AFTER
        shown = text if fits else measures.elidedText(text, Qt.TextElideMode.ElideRight, room)
        painter.setFont(self._theme.font(role))
        painter.setPen(self._theme.color(color))
        flags = int(Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft)
        painter.drawText(QRectF(left, 0, room + AFTER, self.height()), flags, shown)
