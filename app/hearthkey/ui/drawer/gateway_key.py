"""First contact: the key that a server shows, to be compared by a person with what the gateway itself says."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from hearthkey.core.target import HostKey
from hearthkey.ui.announcing import announce
from hearthkey.ui.controls.buttons import Button
from hearthkey.ui.controls.labels import Label, Prose
from hearthkey.ui.drawer.figures import Figure
from hearthkey.ui.drawer.gateway_words import command, in_groups
from hearthkey.ui.drawer.page import inset
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme


class HostKeyCard(QWidget):
    """Shows a host key and asks whether it is the gateway's own. Neither answer is given by a key pressed in haste.

    Signals:
        same: it was compared, and it is.
        other: it was compared, and it is not.
    """

    same = Signal()
    other = Signal()

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.head = Label(theme, Role.BODY_STRONG, self.tr("Is this the gateway’s own key?"))
        self.alarm = Prose(theme, Role.BODY, color="act")
        self.who = Prose(theme, Role.BODY)
        self.shown = Figure(theme, self.tr("Host key that it shows"), "", role=Role.DATE_STRONG, tabs=True)
        self.ask = Prose(
            theme,
            Role.STATE,
            self.tr(
                "Whoever sits between this computer and the gateway could show another one. Run this at the "
                "gateway itself and compare:"
            ),
            color="ink2",
        )
        self.command = Figure(theme, self.tr("Command to run at the gateway"), "", tabs=True)
        self.same_button = Button(theme, self.tr("It is the same"), height=34)
        self.other_button = Button(theme, self.tr("It is another"), height=34)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(8)
        for part in (self.head, self.alarm, self.who, self.shown, self.ask, self.command):
            column.addLayout(inset(part))
        row = QHBoxLayout()
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(4)
        row.addWidget(self.same_button)
        row.addWidget(self.other_button)
        row.addStretch(1)
        column.addLayout(row)
        self.same_button.clicked.connect(self.same)
        self.other_button.clicked.connect(self.other)

    def show_key(self, place: str, key: HostKey, alarm: str) -> None:
        """Show a key, and put the focus on it.

        Args:
            place: where it was shown, in words.
            alarm: what is wrong with it, where another one was pinned before; else empty.
        """
        self.who.speak(self.tr("{where} shows this host key:").format(where=place))
        self.alarm.speak(alarm)
        self.alarm.setVisible(bool(alarm))
        self.shown.show_value(in_groups(key.fingerprint))
        self.command.show_value(command(key.line))
        self.shown.setFocus()
        announce(self, " ".join(part for part in (alarm, self.head.text(), key.fingerprint) if part))
