"""What else to do after a loss, outside this program: a list with ticks that are remembered."""

from __future__ import annotations

from functools import partial

from PySide6.QtCore import QPointF, QRectF, QSignalBlocker, QSize, Qt
from PySide6.QtGui import QPainter, QPen
from PySide6.QtWidgets import QCheckBox, QSizePolicy, QVBoxLayout, QWidget

from hearthkey.core.sentences.aftercare import AFTER_A_LOSS, OPEN_CONNECTION
from hearthkey.ui.controls.labels import Label, Prose
from hearthkey.ui.errands import Errands
from hearthkey.ui.text import said
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme

_WIDE = 10_000
"""Pixels at which nothing wraps."""

_BOX, _GAP = 15, 10
"""Pixels at normal size of type: the square, and the space after it."""


class Tick(QCheckBox):
    """One step: a square, the deed in the strong face, and what it saves."""

    def __init__(self, theme: Theme, what: str, why: str, parent: QWidget | None = None) -> None:
        super().__init__(what, parent)
        self._theme = theme
        self._why = why
        self.setAccessibleName(f"{what}: {why}")
        self.setCursor(Qt.CursorShape.PointingHandCursor)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Preferred)
        theme.changed.connect(self.updateGeometry)

    def hitButton(self, _place: object) -> bool:  # noqa: N802 - Qt's name
        """The whole row answers."""
        return True

    def sizeHint(self) -> QSize:  # noqa: N802 - Qt's name
        """Two lines and a little air; how high it really is depends on its width."""
        return QSize(self._theme.px(240), self.heightForWidth(_WIDE))

    def minimumSizeHint(self) -> QSize:  # noqa: N802 - Qt's name
        """It may be as narrow as it has to."""
        return QSize(self._theme.px(120), self.heightForWidth(_WIDE))

    def hasHeightForWidth(self) -> bool:  # noqa: N802 - Qt's name
        """Text wraps."""
        return True

    def heightForWidth(self, width: int) -> int:  # noqa: N802 - Qt's name
        """As high as both texts in that width."""
        return round(sum(self._heights(width))) + self._theme.px(8)

    def _heights(self, width: int) -> tuple[float, float]:
        room = max(width - self._theme.px(_BOX + _GAP + 3), 40)
        flags = int(Qt.TextFlag.TextWordWrap)
        first, second = (
            self._theme.fonts.metrics(role).boundingRect(QRectF(0, 0, room, 10_000), flags, text).height()
            for role, text in ((Role.BODY_STRONG, self.text()), (Role.STATE, self._why))
        )
        return first, second

    def paintEvent(self, _event: object) -> None:  # noqa: N802 - Qt's name
        """Paint square, deed and reason; a done one steps back but stays readable."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        side, top = self._theme.px(_BOX), self._theme.px(5)
        left = 1.0
        box = QRectF(left, top, side, side)
        ink = self._theme.color("ink")
        painter.setPen(QPen(ink, 1.5))
        painter.drawRect(box)
        if self.isChecked():
            painter.setPen(QPen(ink, 2.2, Qt.PenStyle.SolidLine, Qt.PenCapStyle.SquareCap))
            unit = side / 15
            corners = ((3, 8), (6, 11), (12, 4))
            painter.drawPolyline([box.topLeft() + QPointF(x * unit, y * unit) for x, y in corners])
        first, second = self._heights(self.width())
        room = QRectF(left + side + self._theme.px(_GAP), self._theme.px(3), 0, first)
        room.setRight(self.width())
        flags = int(Qt.TextFlag.TextWordWrap)
        painter.setFont(self._theme.font(Role.BODY_STRONG))
        painter.setPen(self._theme.color("ink2" if self.isChecked() else "ink"))
        painter.drawText(room, flags, self.text())
        room.translate(0, first)
        room.setHeight(second)
        painter.setFont(self._theme.font(Role.STATE))
        painter.setPen(self._theme.color("ink2"))
        painter.drawText(room, flags, self._why)
        if self.hasFocus():
            painter.setPen(QPen(ink, 2))
            painter.drawRect(QRectF(self.rect()).adjusted(1, 1, -1, -1))
        painter.end()


class Aftercare(QWidget):
    """The steps in order."""

    def __init__(self, theme: Theme, errands: Errands, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._errands = errands
        self._serial = ""
        self.ticks = {step.key: Tick(theme, said(step.what), said(step.why)) for step in AFTER_A_LOSS}
        column = QVBoxLayout(self)
        column.setContentsMargins(3, 4, 3, 4)
        column.setSpacing(0)
        column.addWidget(Label(theme, Role.BODY_STRONG, self.tr("What else to do now, in this order")))
        for key, tick in self.ticks.items():
            column.addWidget(tick)
            tick.toggled.connect(partial(self._toggled, key))
        column.addSpacing(6)
        column.addWidget(Prose(theme, Role.STATE, said(OPEN_CONNECTION), color="ink2"))

    def open(self, serial: str) -> None:
        """Show what is done already for a device."""
        self._serial = serial
        self._show(frozenset())
        self._errands.ticks(serial, self, self._show)

    def _show(self, done: frozenset[str]) -> None:
        for key, tick in self.ticks.items():
            with QSignalBlocker(tick):
                tick.setChecked(key in done)
            tick.update()

    def _toggled(self, key: str, done: bool) -> None:  # noqa: FBT001 - Qt's argument
        self._errands.tick(self._serial, key, done=done)
