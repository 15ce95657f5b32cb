"""What stands on the sheet "Lost or stolen", from its head to its last line."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QAbstractButton, QHBoxLayout, QStyle, QVBoxLayout, QWidget

from hearthkey.core.plans import Changes, SparePlanned, StopPlan
from hearthkey.ui.controls.labels import Prose, Rule
from hearthkey.ui.errands import Errands
from hearthkey.ui.lost.asking import Asking
from hearthkey.ui.lost.head import Head
from hearthkey.ui.lost.outcome import Outcome
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme

INSET = 24
"""Pixels from the edge to the controls; text begins three further in."""

LOOSE = 400
"""In a window that is lower than this (pixels at normal size of type) the air goes first."""


class Body(QWidget):
    """Head, then what is asked or what happened, then what is to be done elsewhere."""

    def __init__(self, theme: Theme, errands: Errands, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self.head = Head(theme)
        self.asking = Asking(theme, errands)
        self.outcome = Outcome(theme, errands)
        self.asking.stopped.connect(self._stopped)
        elsewhere = Prose(theme, Role.STATE, color="ink2", strong=Role.STATE_WORD)
        elsewhere.speak(
            self.tr("lock or find the device from afar, block the SIM, change the mail password."),
            stressed=self.tr("Next, outside this program:"),
        )
        self._below = QWidget()
        foot = QHBoxLayout(self._below)
        foot.setContentsMargins(INSET + 3, 12, INSET + 3, 14)
        foot.addWidget(elsewhere, 1)
        upper = self._upper = QVBoxLayout()
        upper.setSpacing(0)
        upper.addWidget(self.head)
        upper.addSpacing(12)
        upper.addWidget(self.asking)
        upper.addWidget(self.outcome)
        column = self._column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addLayout(upper)
        column.addWidget(Rule(theme))
        column.addWidget(self._below)
        column.addStretch(1)
        self.outcome.hide()
        for button in self.findChildren(QAbstractButton):
            button.installEventFilter(self)

    def begin(self, text: str) -> None:
        """Ask."""
        self.head.asks(asked=True)
        self._below.show()
        self.outcome.hide()
        self.asking.show()
        self.asking.begin(text)

    def _stopped(self, plan: StopPlan | SparePlanned, changes: Changes) -> None:
        self.head.asks(asked=False)
        self._below.hide()
        self.asking.hide()
        self.outcome.show()
        self.outcome.stopped(plan, changes)

    def fit(self, width: int, height: int) -> int:
        """Take as much room as there is, and say how much is wanted; where it is little, fewer rows are shown."""
        loose = height >= self._theme.px(LOOSE)
        self._upper.setContentsMargins(INSET, 20 if loose else 4, INSET, 17 if loose else 4)
        self.head.loosen(loose=loose)
        self.asking.fit(height - self._column.totalHeightForWidth(width))
        wanted = self._column.totalHeightForWidth(width)
        if wanted > height:
            bar = self.style().pixelMetric(QStyle.PixelMetric.PM_ScrollBarExtent)
            wanted = self._column.totalHeightForWidth(width - bar)
        self.setMinimumHeight(wanted)
        return wanted

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:  # noqa: N802 - Qt's name
        """Enter presses the button that has the focus; a key held down presses nothing."""
        if event.type() != QEvent.Type.KeyPress or not isinstance(event, QKeyEvent):
            return False
        if event.key() not in {Qt.Key.Key_Return, Qt.Key.Key_Enter}:
            return False
        if isinstance(watched, QAbstractButton) and not event.isAutoRepeat():
            watched.click()
        return True
