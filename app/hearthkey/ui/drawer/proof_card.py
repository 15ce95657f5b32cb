"""The code of a proof's link with its clock, and the link itself to be copied or read out."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QHBoxLayout, QSizePolicy, QVBoxLayout, QWidget

from hearthkey.ui.announcing import announce
from hearthkey.ui.controls.buttons import Button
from hearthkey.ui.controls.labels import Label, Prose
from hearthkey.ui.drawer.page import inset
from hearthkey.ui.pages.code_card import CodePicture
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme

ANNOUNCED = (300, 120, 60)
"""Seconds left at which the clock is said aloud."""


class ProofCard(QWidget):
    """A code, minutes and seconds, the link.

    Signals:
        longer: ten minutes more are wanted.
    """

    longer = Signal()

    SIDE = 224
    """Logical pixels of the code's card, whatever the type: a camera does not read better by larger letters."""

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._link = ""
        self._left = -1
        self.picture = CodePicture(theme)
        self.picture.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)
        self.picture.setFixedSize(self.SIDE, self.SIDE)
        self.clock = Label(theme, Role.CLOCK)
        self.link = Prose(theme, Role.STATE, color="ink2")
        self.copy_button = Button(theme, self.tr("Cop&y the link"))
        self.longer_button = Button(theme, self.tr("10 minutes &more"))
        self.copy_button.clicked.connect(self._copy)
        self.longer_button.clicked.connect(self.longer)
        beside = QVBoxLayout()
        beside.setSpacing(4)
        beside.addLayout(inset(self.clock))
        beside.addWidget(self.longer_button)
        beside.addStretch(1)
        beside.addWidget(self.copy_button)
        row = QHBoxLayout()
        row.setSpacing(8)
        row.addWidget(self.picture)
        row.addLayout(beside)
        row.addStretch(1)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(6)
        column.addLayout(row)
        column.addLayout(inset(self.link))
        QWidget.setTabOrder(self.longer_button, self.picture)
        QWidget.setTabOrder(self.picture, self.copy_button)

    def show_link(self, link: str, png: bytes, name: str) -> None:
        """Show a link.

        Args:
            png: its code.
            name: for a screen reader.
        """
        self._link, self._left = link, -1
        self.picture.show_code(png, name)
        self.link.speak(link)
        self.copy_button.say(self.tr("Cop&y the link"))

    def show_seconds(self, left: int) -> None:
        """Turn the clock."""
        if left == self._left:
            return
        before, self._left = self._left, left
        shown = self.tr("{minutes}:{seconds} left").format(minutes=left // 60, seconds=f"{left % 60:02}")
        self.clock.setText(shown)
        for mark in ANNOUNCED:
            if left <= mark < before:
                announce(self, self.tr("{minutes} min left").format(minutes=mark // 60))

    def _copy(self) -> None:
        QGuiApplication.clipboard().setText(self._link)
        self.copy_button.say(self.tr("Copied"))
        announce(self, self.tr("Copied"))
