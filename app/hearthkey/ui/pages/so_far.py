"""The right half of the founding page: the sheet so far, a way to look around first, and one to come back."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtGui import QPainter
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from hearthkey.ui.controls.buttons import Button
from hearthkey.ui.controls.labels import Label, Prose
from hearthkey.ui.pages.pair import Pair
from hearthkey.ui.pages.sheet_so_far import SheetSoFar
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme


class SoFar(QWidget):
    """Title, drawing, other ways to begin.

    Args:
        practice: opens the practice household.
        restore: opens the page that brings a household back.
    """

    def __init__(
        self, theme: Theme, practice: Callable[[], None], restore: Callable[[], None], parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._theme = theme
        self.sheet = SheetSoFar(theme)
        self.practice = Button(theme, self.tr("Look around in a practice household"))
        self.practice.clicked.connect(lambda _on=False: practice())
        self.restore = Button(theme, self.tr("From a sealed copy …"))
        self.restore.setAccessibleDescription(
            self.tr("A household that you had comes back from its sealed copy, or from its key on paper.")
        )
        self.restore.clicked.connect(lambda _on=False: restore())
        first = Prose(theme, Role.BODY, color="ink2", strong=Role.BODY_STRONG)
        first.speak(
            self.tr("Quince Cottage is a practice household. Nothing in it is real, and nothing can be broken."),
            stressed=self.tr("Not sure yet?"),
        )
        self.adopt = Button(theme, self.tr("I have a CA already …"))
        self.adopt.setAccessibleDescription(
            self.tr("A CA that was made by hand is looked over, and taken over with all its passes.")
        )
        head = QHBoxLayout()
        head.addWidget(Label(theme, Role.TITLE, self.tr("The sheet so far")), 1)
        head.addWidget(Label(theme, Role.BODY, self.tr("changes as you type"), color="ink2"))
        column = QVBoxLayout(self)
        column.setContentsMargins(22, 14, 20, 16)
        column.setSpacing(14)
        column.addLayout(head)
        column.addWidget(self.sheet)
        column.addSpacing(6)
        column.addWidget(first)
        flush = QHBoxLayout()  # so that the buttons' edges are in line with the text above
        flush.setContentsMargins(0, 0, 0, 0)
        flush.setSpacing(0)
        flush.addSpacing(-Button.RING)
        known = Pair(theme, _at_left(self.restore), _at_left(self.adopt), least=290, gap=4, stretch=(0, 1))
        flush.addWidget(Pair(theme, _at_left(self.practice), known, least=570, gap=4, stretch=(0, 1)))
        column.addLayout(flush)
        column.addStretch(1)

    def paintEvent(self, _event: object) -> None:  # noqa: N802 - Qt's name
        """Paint the sheet's ground."""
        painter = QPainter(self)
        painter.fillRect(self.rect(), self._theme.color("sheet"))
        painter.end()


def _at_left(button: Button) -> QWidget:
    """The button at the left of whatever room there is."""
    held = QWidget()
    row = QHBoxLayout(held)
    row.setContentsMargins(0, 0, 0, 0)
    row.addWidget(button)
    row.addStretch(1)
    return held
