"""The head of the desk: whose device it is, and how long its code is good."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QGridLayout, QSizePolicy, QVBoxLayout, QWidget

from hearthkey.ui.announcing import announce
from hearthkey.ui.controls.labels import Label, OneLine, Rule
from hearthkey.ui.desk.foot import RIM, DeskButton, inset
from hearthkey.ui.pickup import words
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme


class DeskHead(QWidget):
    """Title and day at the left, clock and "+10 min" at the right, the double rule below.

    Signals:
        more: ten minutes more are wanted.
    """

    more = Signal()

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._runs = self._short = False
        self.title = OneLine(theme, Role.DESK_TITLE)
        self.day = OneLine(theme, Role.DESK, color="ink2")
        for line in (self.title, self.day):
            line.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Fixed)
        self.clock = Label(theme, Role.DESK_CLOCK)
        self.clock.setAlignment(Qt.AlignmentFlag.AlignRight)
        self._under = Label(theme, Role.DESK, self.tr("left for this code"), color="ink2")
        self._under.setAlignment(Qt.AlignmentFlag.AlignRight)
        self.more_button = DeskButton(theme, self.tr("+&10 min"))
        self.more_button.setAccessibleName(self.tr("Ten minutes more"))
        self.more_button.clicked.connect(self.more)
        self._grid = QGridLayout()
        self._grid.setContentsMargins(RIM, 0, 0, 0)
        self._grid.setVerticalSpacing(0)
        self._grid.setColumnStretch(0, 1)
        self._grid.addWidget(self.title, 0, 0)
        self._grid.addWidget(self.day, 1, 0)
        self._grid.addWidget(self.clock, 0, 1, Qt.AlignmentFlag.AlignRight)
        self._grid.addWidget(self._under, 1, 1, Qt.AlignmentFlag.AlignRight)
        self._grid.addWidget(self.more_button, 0, 2, Qt.AlignmentFlag.AlignVCenter)
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 0, 0)
        self._column.addLayout(self._grid)
        self._column.addLayout(inset(Rule(theme, oxford=True)))
        theme.changed.connect(self._measure)
        self._measure()

    def _measure(self) -> None:
        self._column.setSpacing(self._theme.px(14))
        self._grid.setHorizontalSpacing(self._theme.px(14))
        # The title stays where it is when the clock goes.
        tall = max(self.clock.sizeHint().height(), self.more_button.sizeHint().height())
        self._grid.setRowMinimumHeight(0, tall)

    def shorten(self, *, short: bool) -> None:
        """Leave out the lines under title and clock where there is little room."""
        self._short = short
        self.day.setVisible(not short)
        self._under.setVisible(self._runs and not short)

    def show_device(self, title: str, day: str) -> None:
        """Say whose device is in hand, and what day it is."""
        self.title.setText(title)
        self.title.setToolTip(title)
        self.day.setText(day)

    def show_clock(self, *, runs: bool, seconds: int) -> None:
        """Show the clock while a code is good, covered or not."""
        self._runs = runs
        for part in (self.clock, self.more_button):
            part.setVisible(runs)
        self.shorten(short=self._short)
        if runs:
            self.count(seconds)

    def count(self, seconds: int) -> None:
        """So many seconds are left; the last minutes are announced."""
        self.clock.setText(words.clock(seconds))
        minutes = max(1, seconds // 60)
        left = self.tr("one minute left") if minutes == 1 else self.tr("{minutes} minutes left")
        self.clock.setAccessibleName(left.format(minutes=minutes))
        if seconds in words.ANNOUNCED and self.clock.isVisible():
            announce(self, self.clock.accessibleName())
