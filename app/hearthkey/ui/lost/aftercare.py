"""What else to do after a loss, outside this program: a list with ticks that are remembered."""

from __future__ import annotations

from functools import partial

from PySide6.QtCore import QSignalBlocker
from PySide6.QtWidgets import QVBoxLayout, QWidget

from hearthkey.core.sentences.aftercare import AFTER_A_LOSS, OPEN_CONNECTION
from hearthkey.ui.controls.labels import Label, Prose
from hearthkey.ui.controls.tick import Tick
from hearthkey.ui.errands import Errands
from hearthkey.ui.text import said
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme


class Aftercare(QWidget):
    """The steps in order."""

    def __init__(self, theme: Theme, errands: Errands, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._errands = errands
        self._serial = ""
        self.ticks = {step.key: Tick(theme, said(step.what), said(step.why)) for step in AFTER_A_LOSS}
        column = QVBoxLayout(self)
        column.setContentsMargins(3, 4, 3, 4)
        column.setSpacing(0)
        column.addWidget(Label(theme, Role.BODY_STRONG, self.tr("What else to do now, in this order")))
        for key, tick in self.ticks.items():
            column.addWidget(tick)
            tick.toggled.connect(partial(self._toggled, key))
        column.addSpacing(6)
        column.addWidget(Prose(theme, Role.STATE, said(OPEN_CONNECTION), color="ink2"))

    def open(self, serial: str) -> None:
        """Show what is done already for a device."""
        self._serial = serial
        self._show(frozenset())
        self._errands.ticks(serial, self, self._show)

    def _show(self, done: frozenset[str]) -> None:
        for key, tick in self.ticks.items():
            with QSignalBlocker(tick):
                tick.setChecked(key in done)
            tick.update()

    def _toggled(self, key: str, done: bool) -> None:  # noqa: FBT001 - Qt's argument
        self._errands.tick(self._serial, key, done=done)
