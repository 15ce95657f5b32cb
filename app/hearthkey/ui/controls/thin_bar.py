"""A scroll bar without arrows: a rule's worth of ink where there is more to see."""

from __future__ import annotations

from PySide6.QtCore import QRectF, QSize, Qt
from PySide6.QtGui import QPainter
from PySide6.QtWidgets import QScrollBar, QStyle, QStyleOptionSlider, QWidget

from hearthkey.ui.theme.theme import Theme


class ThinBar(QScrollBar):
    """A vertical scroll bar that keeps out of the way."""

    WIDTH = 12

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(Qt.Orientation.Vertical, parent)
        self._theme = theme
        theme.changed.connect(self.update)

    def sizeHint(self) -> QSize:  # noqa: N802 - Qt's name
        """As wide as a finger on a touch pad needs it."""
        return QSize(self.WIDTH, 40)

    def paintEvent(self, _event: object) -> None:  # noqa: N802 - Qt's name
        """Paint the handle alone, and nothing where all is in sight."""
        if self.maximum() <= self.minimum():
            return
        option = QStyleOptionSlider()
        self.initStyleOption(option)
        style = self.style()
        handle = style.subControlRect(
            QStyle.ComplexControl.CC_ScrollBar, option, QStyle.SubControl.SC_ScrollBarSlider, self
        )
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(Qt.PenStyle.NoPen)
        busy = self.isSliderDown() or self.underMouse()
        painter.setBrush(self._theme.color("ink" if busy else "rule"))
        wide = 6 if busy else 4
        box = QRectF(handle)
        painter.drawRoundedRect(QRectF(box.right() - wide - 1, box.top() + 1, wide, box.height() - 2), 2, 2)
        painter.end()
