"""Asks whose a device is that was taken over with a CA made elsewhere; hidden where that is known."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from hearthkey.core.adopt_plan import UNNAMED
from hearthkey.core.errors import HearthkeyError
from hearthkey.core.passes import Pass
from hearthkey.core.plans import Changes
from hearthkey.ui.controls.buttons import Button, Kind
from hearthkey.ui.controls.fields import Labelled, Line
from hearthkey.ui.controls.labels import Prose
from hearthkey.ui.drawer.page import inset
from hearthkey.ui.errands import Errands
from hearthkey.ui.text import mended
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme


class NamingCard(QWidget):
    """Two fields and a button.

    Signals:
        named: somebody said it.
    """

    named = Signal()

    def __init__(self, theme: Theme, errands: Errands, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._errands = errands
        self._serial = ""
        self.told = Prose(theme, Role.DEVICE, self.tr("It was made elsewhere. Whose is it?"), lines=1.4)
        self.person, self.device = Line(theme), Line(theme)
        self.whose = Labelled(theme, self.tr("Whose device is it?"), self.person)
        self.which = Labelled(theme, self.tr("What is it called?"), self.device)
        self.commit = Button(theme, self.tr("Name it"), kind=Kind.COMMIT, height=32)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(6)
        column.addLayout(inset(self.told))
        column.addWidget(self.whose)
        column.addWidget(self.which)
        column.addWidget(self.commit, 0, Qt.AlignmentFlag.AlignLeft)
        self.person.textChanged.connect(self._typed)
        self.device.textChanged.connect(self._typed)
        for line in (self.person, self.device):
            line.returnPressed.connect(self._name)
        self.commit.clicked.connect(self._name)
        self.hide()

    def about(self, one: Pass, *, read_only: bool) -> None:
        """Ask about a pass, if nobody has said yet whose it is."""
        self.setVisible(one.person in {UNNAMED, self.tr("Somebody")} and one.handed_over is not None)
        if one.serial != self._serial:
            self._serial = one.serial
            self.person.clear()
            self.device.setText(one.device)
        self.person.setEnabled(not read_only)
        self.device.setEnabled(not read_only)
        self._judge()

    def _typed(self) -> None:
        self.whose.trouble("")
        self._judge()

    def _judge(self) -> None:
        self.commit.setEnabled(
            self.person.isEnabled() and bool(self.person.text().strip()) and bool(self.device.text().strip())
        )

    def _name(self) -> None:
        if self.commit.isEnabled():
            self.commit.setEnabled(False)
            self._errands.name_pass(
                self._serial, self.person.text(), self.device.text(), self, self._done, self._refused
            )

    def _done(self, _changes: Changes) -> None:
        self.named.emit()

    def _refused(self, error: HearthkeyError) -> None:
        self._judge()
        self.whose.trouble(mended(error))
