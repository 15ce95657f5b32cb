"""The sheet in a window too low for it: it scrolls."""

from __future__ import annotations

from PySide6.QtCore import QPoint, QSize, Qt, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QFrame, QScrollArea, QWidget

from hearthkey.ui.controls.thin_bar import ThinBar
from hearthkey.ui.theme.theme import Theme


class _Contents(QWidget):
    """As narrow as the window is: its parts leave out what they have no room for."""

    def minimumSizeHint(self) -> QSize:  # noqa: N802 - Qt's name
        """Its height alone."""
        return QSize(0, super().minimumSizeHint().height())


class Scrolling(QScrollArea):
    """Shows `contents` at the height they need at least, or higher where the window is.

    Signals:
        resized: there is another room to show them in.
    """

    resized = Signal()

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setVerticalScrollBar(ThinBar(theme))
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setWidgetResizable(True)
        self.viewport().setAutoFillBackground(False)
        self.contents = _Contents()
        self.setWidget(self.contents)
        self.contents.setAutoFillBackground(False)  # what lies under the area shows through

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: N802 - Qt's name
        """Tell."""
        super().resizeEvent(event)
        self.resized.emit()

    def reveal(self, part: QWidget) -> None:
        """Bring a part into sight; its upper edge, where it is higher than the room. Tab does so by itself."""
        if not self.contents.isAncestorOf(part):
            return
        top = part.mapTo(self.contents, QPoint(0, 0)).y()
        bar = self.verticalScrollBar()
        bar.setValue(min(max(bar.value(), top + part.height() - self.viewport().height()), top))
