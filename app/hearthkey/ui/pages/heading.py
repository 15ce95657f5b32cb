"""The head of a page that stands in place of the board: a date, one sentence, what it means, its buttons."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from hearthkey.ui.controls.buttons import Button
from hearthkey.ui.controls.labels import Label, Prose, Rule
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme


class Heading(QWidget):
    """Sentences at the left, buttons at the right, the double rule under both.

    Args:
        buttons: from left to right.
    """

    def __init__(self, theme: Theme, buttons: Sequence[Button] = (), parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._date = Label(theme, Role.BODY, color="ink2")
        self.sentence = Prose(theme, Role.HEADLINE)
        self.meaning = Prose(theme, Role.BODY, color="ink2")
        words = QVBoxLayout()
        words.setSpacing(2)
        for widget in (self._date, self.sentence, self.meaning):
            words.addWidget(widget)
        row = QHBoxLayout()
        row.setSpacing(2)
        row.addLayout(words, 1)
        for button in buttons:
            row.addWidget(button, 0, Qt.AlignmentFlag.AlignBottom)
        column = QVBoxLayout(self)
        column.setContentsMargins(20, 14, 20, 0)
        column.setSpacing(12)
        column.addLayout(row)
        column.addWidget(Rule(theme, oxford=True))

    def say(self, sentence: str, meaning: str, date: str = "") -> None:
        """Say what there is to say; without a date its line is left out."""
        self._date.setText(date)
        self._date.setVisible(bool(date))
        self.sentence.speak(sentence)
        self.meaning.speak(meaning)
        self.meaning.setVisible(bool(meaning))
        self.setAccessibleName(f"{sentence} {meaning}".strip())
