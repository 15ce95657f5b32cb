"""What only some want to see: a word that opens it and closes it again."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QVBoxLayout, QWidget

from hearthkey.ui.controls.buttons import Button, Kind
from hearthkey.ui.theme.theme import Theme


class Fold(QWidget):
    """A word button, and under it what it shows."""

    def __init__(self, theme: Theme, words: str, inside: QWidget, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._words = words
        self._inside = inside
        self.button = Button(theme, words, kind=Kind.WORD, height=26)
        self.button.clicked.connect(lambda: self.open(shown=not self.is_open))
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(6)
        column.addWidget(self.button, 0, Qt.AlignmentFlag.AlignLeft)
        column.addWidget(inside)
        self.open(shown=False)

    @property
    def is_open(self) -> bool:
        """Whether it is shown."""
        return self._inside.isVisibleTo(self)

    def open(self, *, shown: bool) -> None:
        """Show or hide it; a screen reader hears which."""
        self._inside.setVisible(shown)
        state = self.tr("shown") if shown else self.tr("hidden")
        self.button.setAccessibleName(f"{self._words}, {state}")
