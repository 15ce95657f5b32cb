"""A page that scrolls up and down where it is taller than the window."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFrame, QScrollArea, QWidget

from hearthkey.ui.controls.thin_bar import ThinBar
from hearthkey.ui.theme.theme import Theme


class Tall(QScrollArea):
    """A scroll area without a frame; its bar has its room always, so that nothing wraps anew when it comes."""

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setVerticalScrollBar(ThinBar(theme))
        self.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOn)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setWidgetResizable(True)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.viewport().setAutoFillBackground(False)

    def hold(self, page: QWidget) -> None:
        """Show a page; what lies under the area shows through."""
        self.setWidget(page)
        page.setAutoFillBackground(False)
