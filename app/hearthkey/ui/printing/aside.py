"""The side of a page that has its choices: as wide as they need, scrolling where they are higher than the window."""

from __future__ import annotations

from PySide6.QtCore import QSize
from PySide6.QtWidgets import QWidget

from hearthkey.ui.controls.thin_bar import ThinBar
from hearthkey.ui.pages.tall import Tall
from hearthkey.ui.theme.theme import Theme


class Aside(Tall):
    """Never narrower than what it holds, for choices side by side cannot wrap."""

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(theme, parent)
        self.inside = QWidget()
        self.hold(self.inside)
        theme.changed.connect(self.updateGeometry)

    def minimumSizeHint(self) -> QSize:  # noqa: N802 - Qt's name
        """The width of what it holds, and of the bar."""
        wide = self.inside.minimumSizeHint().width() + ThinBar.WIDTH
        return QSize(wide, super().minimumSizeHint().height())
