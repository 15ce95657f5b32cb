"""How a pick-up ended, and the way on."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from hearthkey.core.passes import Pass
from hearthkey.core.sentences import tickets as sentences
from hearthkey.core.ticket_events import Ending, Event
from hearthkey.ui.controls.buttons import Button, Kind
from hearthkey.ui.controls.labels import Label, Voice
from hearthkey.ui.text import said
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme


class OverCard(QWidget):
    """The code has gone; now the passphrase may come.

    Signals:
        passphrase_wanted: show it.
        again_wanted: open another pick-up.
    """

    passphrase_wanted = Signal()
    again_wanted = Signal()

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.told = Voice(theme)
        self.now = Label(theme, Role.BODY, wrap=True)
        self.passphrase = Button(theme, self.tr("Show the &passphrase"), kind=Kind.COMMIT)
        self.passphrase.clicked.connect(self.passphrase_wanted)
        self.again = Button(theme, self.tr("&Open another"))
        self.again.clicked.connect(self.again_wanted)
        row = QHBoxLayout()
        row.setSpacing(4)
        row.addWidget(self.passphrase)
        row.addWidget(self.again)
        row.addStretch(1)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(12)
        column.addWidget(self.told)
        column.addWidget(self.now)
        column.addLayout(row)
        column.addStretch(1)

    def show_ending(self, ending: Event, one: Pass) -> None:
        """Say how it ended, and what to do now."""
        picked_up = ending.ending is Ending.PICKED_UP
        self.told.setText(said(sentences.event(ending)))
        if picked_up:
            now = self.tr("The {device} has the file. Say the passphrase, or show it: the code is gone.")
        elif ending.ending is Ending.GUESSED:
            now = self.tr("Somebody in this network is guessing. Use a stick, or look who is in the Wi-Fi.")
        else:
            now = self.tr("The {device} has nothing yet. The old code leads nowhere any more.")
        self.now.setText(now.format(device=one.device))
        self.passphrase.setVisible(picked_up)
