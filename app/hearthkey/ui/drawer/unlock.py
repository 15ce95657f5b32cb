"""Asks for the household's passphrase in the place where it is needed."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QHBoxLayout, QLineEdit, QVBoxLayout, QWidget

from hearthkey.core.errors import HearthkeyError
from hearthkey.core.secret import Secret
from hearthkey.ui.announcing import announce
from hearthkey.ui.controls.buttons import Button, Kind
from hearthkey.ui.controls.fields import Line
from hearthkey.ui.controls.labels import Label, Prose
from hearthkey.ui.drawer.page import inset
from hearthkey.ui.errands import Errands
from hearthkey.ui.text import mended
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme


class UnlockRow(QWidget):
    """A passphrase field with its button; trouble is said under it.

    Signals:
        opened: the CA key is open; the field is empty again and the row has hidden itself.
    """

    opened = Signal()

    def __init__(self, theme: Theme, errands: Errands, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._errands = errands
        self._busy = False
        question = Label(theme, Role.STATE, self.tr("Passphrase of the household"), color="ink2")
        self.line = Line(theme)
        self.line.setEchoMode(QLineEdit.EchoMode.Password)
        self.line.setAccessibleName(question.text())
        question.setBuddy(self.line)
        self.show_button = Button(theme, "", kind=Kind.WORD)
        self.unlock_button = Button(theme, self.tr("Unlock"), height=32)
        self._below = Prose(theme, Role.STATE, color="ink2")
        row = QHBoxLayout()
        row.setSpacing(4)
        row.addWidget(self.line, 1)
        row.addWidget(self.show_button)
        row.addWidget(self.unlock_button)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(2)
        column.addLayout(inset(question))
        column.addLayout(row)
        column.addLayout(inset(self._below))
        self._say("")
        self._veil(hidden=True)
        self.line.returnPressed.connect(self.unlock)
        self.unlock_button.clicked.connect(self.unlock)
        self.show_button.clicked.connect(self._turn)

    def ask(self) -> None:
        """Come into sight and take the focus; what was typed before is still there."""
        self.show()
        self.line.setFocus()

    def forget(self) -> None:
        """Drop what was typed, and hide."""
        self.line.setText("")
        self._veil(hidden=True)
        self._say("")
        self.hide()

    def below(self) -> str:
        """What stands under the field."""
        return self._below.text()

    def unlock(self) -> None:
        """Try what was typed; while the key is being opened, a second try is not begun."""
        if self._busy:
            return
        self._busy = True
        self.line.setReadOnly(True)
        self._say(self.tr("Opening the CA key, slow on purpose"))
        self._errands.unlock(Secret(self.line.text().strip()), self, self._opened, self._failed)

    def _opened(self, _none: None) -> None:
        self._rest()
        self.forget()
        self.opened.emit()

    def _failed(self, error: HearthkeyError) -> None:
        self._rest()
        self._say(mended(error), color="act")
        self.line.selectAll()
        self.line.setFocus()

    def _rest(self) -> None:
        self._busy = False
        self.line.setReadOnly(False)

    def _say(self, words: str, *, color: str = "ink2") -> None:
        self._below.recolor(color)
        self._below.speak(words)
        self._below.setVisible(bool(words))
        self.line.setAccessibleDescription(words)
        announce(self, words)

    def _turn(self) -> None:
        self._veil(hidden=self.line.echoMode() is QLineEdit.EchoMode.Normal)

    def _veil(self, *, hidden: bool) -> None:
        mode = QLineEdit.EchoMode.Password if hidden else QLineEdit.EchoMode.Normal
        self.line.setEchoMode(mode)
        self.show_button.say(self.tr("Show") if hidden else self.tr("Hide"))
        self.show_button.setAccessibleName(self.tr("Show the passphrase") if hidden else self.tr("Hide the passphrase"))
