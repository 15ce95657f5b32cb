"""The one sentence beside the code that says what matters now."""

from __future__ import annotations

from PySide6.QtGui import QPainter
from PySide6.QtWidgets import QWidget

from hearthkey.ui.controls.labels import Prose
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme


class NoteLine(Prose):
    """A sentence on the ground of what is selected, with a bar of ink at its left."""

    BAR = 4

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(theme, Role.DESK, strong=Role.DESK_STRONG, parent=parent)

    def _dress(self) -> None:
        super()._dress()
        across, down = self._theme.px(24), self._theme.px(14)
        self.setContentsMargins(across, down, across, down)

    def paintEvent(self, event: object) -> None:  # noqa: N802 - Qt's name
        """Paint ground and bar, then the sentence."""
        painter = QPainter(self)
        painter.fillRect(self.rect(), self._theme.color("sel"))
        painter.fillRect(0, 0, self.BAR, self.height(), self._theme.color("ink"))
        painter.end()
        super().paintEvent(event)
