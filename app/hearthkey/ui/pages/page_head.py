"""The head of a page that takes the board's place: headline, what it means, the way back, the double rule."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from hearthkey.ui.controls.buttons import Button
from hearthkey.ui.controls.labels import Label, Rule
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme


class PageHead(QWidget):
    """Stands where the window's headline stands otherwise, with the same measures."""

    def __init__(self, theme: Theme, back: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.sentence = Label(theme, Role.HEADLINE, wrap=True)
        self.meaning = Label(theme, Role.BODY, color="ink2", wrap=True)
        self.back = Button(theme, back, hint="Esc")
        words = QVBoxLayout()
        words.setSpacing(2)
        words.addWidget(self.sentence)
        words.addWidget(self.meaning)
        row = QHBoxLayout()
        row.addLayout(words, 1)
        row.addWidget(self.back, 0, Qt.AlignmentFlag.AlignBottom)
        column = QVBoxLayout(self)
        column.setContentsMargins(20, 0, 20, 0)
        column.setSpacing(6)
        column.addLayout(row)
        column.addWidget(Rule(theme, oxford=True))

    def say(self, sentence: str, meaning: str) -> None:
        """Say what the page is for."""
        self.sentence.setText(sentence)
        self.meaning.setText(meaning)
        self.setAccessibleName(f"{sentence}. {meaning}")
