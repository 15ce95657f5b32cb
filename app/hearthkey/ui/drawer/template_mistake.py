"""A mistake in a template: what it is, on which line, and the way there."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from hearthkey.core.errors import HearthkeyError
from hearthkey.ui.announcing import announce
from hearthkey.ui.controls.buttons import Button
from hearthkey.ui.controls.labels import Prose
from hearthkey.ui.drawer.page import inset
from hearthkey.ui.text import mended
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme


def line_of(error: HearthkeyError) -> int:
    """The line that an error is about, counted from 1; 0 where it is about none."""
    line = error.facts.get("line")
    return line if isinstance(line, int) else 0


class TemplateMistake(QWidget):
    """Stays in sight while the text is mended; hidden where there is none.

    Signals:
        go_wanted: the line that the cursor is to be led to.
    """

    go_wanted = Signal(int)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._line = 0
        self.told = Prose(theme, Role.BODY, color="act")
        self.go = Button(theme, "", height=26)
        self.go.clicked.connect(lambda: self.go_wanted.emit(self._line))
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(4)
        column.addLayout(inset(self.told))
        column.addWidget(self.go, 0, Qt.AlignmentFlag.AlignLeft)
        self.hide()

    def tell(self, error: HearthkeyError | None) -> None:
        """Name it; the same one again is not said aloud again, and None takes it back."""
        before = self.told.text()
        told = "" if error is None else mended(error)
        self._line = 0 if error is None else line_of(error)
        self.told.speak(told)
        self.go.say(self.tr("Go to line {line}").format(line=self._line))
        self.go.setVisible(bool(self._line))
        self.setVisible(bool(told))
        if told != before:
            announce(self, told)
