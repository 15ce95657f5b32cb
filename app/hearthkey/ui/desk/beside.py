"""What stands beside the code: the steps, and at their foot the one sentence that matters now."""

from __future__ import annotations

from PySide6.QtWidgets import QVBoxLayout, QWidget

from hearthkey.ui.desk.note import NoteLine
from hearthkey.ui.desk.steps import Steps
from hearthkey.ui.theme.theme import Theme

_ABOVE, _BELOW = 1, 3
"""Places of the air above and below the sentence: it stands at the foot of the steps, or in their place."""


class Beside(QWidget):
    """Steps and sentence, as much of them as there is room for."""

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self.steps = Steps(theme)
        self.note = NoteLine(theme)
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 0, 0)
        self._column.addWidget(self.steps)
        self._column.addStretch(1)
        self._column.addWidget(self.note)
        self._column.addStretch(0)

    def fit(self, wide: int, high: int, *, asking: bool) -> None:
        """Leave out what matters least: the other steps first; then the sentence, or the steps where it asks."""
        wanted = bool(self.note.text())
        note = self.note.heightForWidth(wide) + self._theme.px(12) if wanted else 0
        self.steps.fit(wide, high - note)
        both = self.steps.least(wide) + note <= high
        self.steps.setVisible(both or not asking)
        self.note.setVisible(wanted and (both or asking))
        self._column.setStretch(_ABOVE, int(both))
        self._column.setStretch(_BELOW, int(not both))
