"""A box to be ticked, with words and a line under them."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QPainter, QPen
from PySide6.QtWidgets import QCheckBox, QSizePolicy, QWidget

from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme

_WIDE = 10_000
"""Pixels at which nothing wraps."""

_BOX, _GAP = 15, 10
"""Pixels at normal size of type: the square, and the space after it."""


class Tick(QCheckBox):
    """A square, the words in the strong face, and under them what they come to.

    Args:
        steps_back: a ticked one is done with, and written in the second ink.
    """

    def __init__(
        self, theme: Theme, what: str, why: str, parent: QWidget | None = None, *, steps_back: bool = True
    ) -> None:
        super().__init__(what, parent)
        self._steps_back = steps_back
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
        """Paint square and words; a done one steps back but stays readable."""
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
        painter.setPen(self._theme.color("ink2" if self.isChecked() and self._steps_back else "ink"))
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
