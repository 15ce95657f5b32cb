"""The line at the bottom: what was said and done, how to take it back, where the diary is."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtGui import QPainter
from PySide6.QtWidgets import QHBoxLayout, QSizePolicy, QWidget

from hearthkey.ui.announcing import announce
from hearthkey.ui.controls.buttons import Button
from hearthkey.ui.controls.labels import Label, OneLine
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.ways import Ways


class Footer(QWidget):
    """Says the outcome of the last verb and, while one runs, its present step."""

    def __init__(self, theme: Theme, ways: Ways, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._said = OneLine(theme, Role.BODY)
        self._said.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
        self._kept = ""
        self._undo: Callable[[], None] | None = None
        self.undo_button = Button(theme, self.tr("Undo"), hint=self.tr("Ctrl+Z"), height=26)
        self.undo_button.clicked.connect(self.undo)
        self.undo_button.hide()
        self._hint = Label(theme, Role.STATE, self.tr("F6 next part of the window"), color="ink2")
        self.diary = Button(theme, self.tr("Diary"), hint=self.tr("Ctrl+D"), height=26)
        self.diary.clicked.connect(ways.diary)
        row = QHBoxLayout(self)
        row.setContentsMargins(20, 0, 17, 0)
        row.setSpacing(8)
        row.addWidget(self._said, 1)
        row.addWidget(self.undo_button)
        row.addSpacing(12)
        row.addWidget(self._hint)
        row.addWidget(self.diary)
        theme.changed.connect(self._measure)
        self._measure()

    def _measure(self) -> None:
        self.setFixedHeight(self._theme.px(34))
        self.update()

    def say(self, sentence: str, undo: Callable[[], None] | None = None) -> None:
        """Say what was done, aloud too, and offer to take it back where that is possible."""
        self._kept = sentence
        self._undo = undo
        self._said.setText(sentence)
        self._said.setToolTip(sentence)
        self.undo_button.setVisible(undo is not None)
        announce(self, sentence)

    def step(self, words: str) -> None:
        """Say the present step; when it is over, the last outcome stands again."""
        self._said.setText(f"{words} …" if words else self._kept)

    def undo(self) -> None:
        """Take the last thing back, once."""
        undo, self._undo = self._undo, None
        self.undo_button.hide()
        if undo is not None:
            undo()

    def text(self) -> str:
        """What stands there."""
        return self._said.text()

    def paintEvent(self, _event: object) -> None:  # noqa: N802 - Qt's name
        """A rule above."""
        painter = QPainter(self)
        painter.fillRect(0, 0, self.width(), 1, self._theme.color("rule"))
        painter.end()
