"""Asks for the passphrase where something has to be signed, and then goes on by itself."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtWidgets import QVBoxLayout, QWidget

from hearthkey.ui.controls.labels import Label
from hearthkey.ui.drawer.unlock import UnlockRow
from hearthkey.ui.errands import Errands
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme


class Gate(QWidget):
    """A question, a row for the passphrase, and what follows once it is open."""

    def __init__(self, theme: Theme, errands: Errands, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._then: Callable[[], None] | None = None
        self._why = Label(theme, Role.BODY, color="ink2", wrap=True)
        self._why.setContentsMargins(3, 0, 3, 0)
        self.row = UnlockRow(theme, errands)
        self.row.opened.connect(self._go_on)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(4)
        column.addWidget(self._why)
        column.addWidget(self.row)
        self.hide()

    def ask(self, why: str, then: Callable[[], None]) -> None:
        """Show the row; once it has opened the household, hide it and go on."""
        self._then = then
        self._why.setText(why)
        self.show()
        self.row.ask()

    def forget(self) -> None:
        """Ask no more, and drop what was typed."""
        self._then = None
        self.row.forget()
        self.hide()

    def _go_on(self) -> None:
        then, self._then = self._then, None
        self.hide()
        if then is not None:
            then()
