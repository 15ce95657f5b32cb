"""The last row of a page that does one thing: what is in the way, the passphrase where it is needed, the button."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from hearthkey.core.errors import HearthkeyError
from hearthkey.ui.announcing import announce
from hearthkey.ui.controls.buttons import Button, Kind
from hearthkey.ui.controls.labels import Prose
from hearthkey.ui.drawer.page import inset
from hearthkey.ui.drawer.unlock import UnlockRow
from hearthkey.ui.errands import Errands
from hearthkey.ui.text import mended
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme


class CommitFoot(QWidget):
    """A commit and a way out; where the household is locked, the passphrase is asked for in between.

    Args:
        words: what the button says.

    Signals:
        agreed: it is to be done now, and the household is open.
        put_aside: it is not to be done.
    """

    agreed = Signal()
    put_aside = Signal()

    def __init__(self, theme: Theme, errands: Errands, words: str, *, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._errands = errands
        self._ready = False
        self.busy = False
        self.trouble = Prose(theme, Role.BODY, color="act")
        self.unlock = UnlockRow(theme, errands)
        self.commit = Button(theme, words, kind=Kind.COMMIT, height=34)
        self.aside = Button(theme, self.tr("Put aside"), hint="Esc", height=34)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(8)
        column.addLayout(inset(self.trouble))
        column.addWidget(self.unlock)
        row = QHBoxLayout()
        row.setSpacing(4)
        row.addWidget(self.commit)
        row.addWidget(self.aside)
        row.addStretch(1)
        column.addLayout(row)
        self.trouble.hide()
        self.unlock.hide()
        self.commit.clicked.connect(self.go_on)
        self.aside.clicked.connect(self.put_aside)
        self.unlock.opened.connect(self._do)

    def controls(self) -> list[QWidget]:
        """What the Tab key stops at, in order."""
        asked = [self.unlock.line, self.unlock.show_button, self.unlock.unlock_button]
        return [*asked, self.commit, self.aside]

    def forget(self) -> None:
        """Begin anew: nothing planned, nothing typed, nothing in the way."""
        self.busy = False
        self.unlock.forget()
        self.trouble.hide()
        self.ready(ready=False)

    def ready(self, *, ready: bool) -> None:
        """There is a plan that can be done, or there is none."""
        self._ready = ready
        seen = self._errands.last
        self.commit.setEnabled(ready and not (seen is not None and seen.read_only))

    def peace(self) -> None:
        """Nothing is in the way any more."""
        self.trouble.hide()

    def refused(self, error: HearthkeyError) -> None:
        """Say what is in the way; a locked household asks for its passphrase instead."""
        self.busy = False
        if error.code == "household-locked":
            self.unlock.ask()
            return
        self.trouble.speak(mended(error))
        self.trouble.show()
        announce(self, self.trouble.text())

    def go_on(self) -> None:
        """Do it, after the passphrase where that is needed."""
        seen = self._errands.last
        if self.busy or not self.commit.isEnabled() or seen is None:
            return
        if not seen.locked:
            self._do()
        elif self.unlock.isHidden():
            self.unlock.ask()
        else:
            self.unlock.unlock()

    def _do(self) -> None:
        if self._ready and not self.busy:
            self.busy = True
            self.agreed.emit()
