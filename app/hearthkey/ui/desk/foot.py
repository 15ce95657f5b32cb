"""The foot of the desk: what can be done now, and where it goes on."""

from __future__ import annotations

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QGridLayout, QHBoxLayout, QWidget

from hearthkey.ui.controls.buttons import Button, Kind
from hearthkey.ui.controls.labels import Label, Rule
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme

RIM = Button.RING
"""Pixels round each button for its focus ring; what stands above or below a button begins as far inside."""

NAME = 300
"""Pixels at normal type that the next device's title takes at most."""


def inset(widget: QWidget) -> QHBoxLayout:
    """A widget that ends where the edge of a button does, not where its focus ring would."""
    row = QHBoxLayout()
    row.setContentsMargins(RIM, 0, RIM, 0)
    row.addWidget(widget)
    return row


class DeskButton(Button):
    """A button to be hit with a finger over the table's edge."""

    PAD = 20
    TYPE, STRONG, KEY = Role.DESK, Role.DESK_STRONG, Role.BODY

    def __init__(self, theme: Theme, text: str, *, kind: Kind = Kind.PLAIN, hint: str = "") -> None:
        super().__init__(theme, text, kind=kind, hint=hint, height=50)


class DeskFoot(QWidget):
    """Two groups of buttons side by side, or one above the other where there is no room for both.

    Signals:
        act: the committing button was pressed; what it does is the desk's to know.
        second: the one beside it.
        onward: the next device.
        leave: leave the desk.
        confirmed: the device has it.
        put_off: it has not, and the next one's turn comes all the same.
        stay: it has not, and the desk stays.
    """

    act = Signal()
    second = Signal()
    onward = Signal()
    leave = Signal()
    confirmed = Signal()
    put_off = Signal()
    stay = Signal()

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self.act_button = DeskButton(theme, self.tr("Try a&gain"), kind=Kind.COMMIT)
        self.second_button = DeskButton(theme, self.tr("&Bigger"))
        self.count = Label(theme, Role.DESK, color="ink2")
        self.next_button = DeskButton(theme, self.tr("&Finish"), hint="Ctrl+→")
        self.leave_button = DeskButton(theme, self.tr("&Leave the desk"), hint="Esc")
        self.confirm_button = DeskButton(theme, self.tr("Yes, &erase the key here"), kind=Kind.COMMIT)
        self.put_off_button = DeskButton(theme, self.tr("Not &yet, go on"))
        self.stay_button = DeskButton(theme, self.tr("&Stay here"), hint="Esc")
        self._pairs = (
            (self.act_button, self.act),
            (self.second_button, self.second),
            (self.next_button, self.onward),
            (self.leave_button, self.leave),
            (self.confirm_button, self.confirmed),
            (self.put_off_button, self.put_off),
            (self.stay_button, self.stay),
        )
        for button, signal in self._pairs:
            button.clicked.connect(signal)
        self.asking = False
        self._lay_out()
        self.ask(asking=False)
        theme.changed.connect(self._measure)
        self._measure()

    def _lay_out(self) -> None:
        self._left, self._right = QHBoxLayout(), QHBoxLayout()
        part: QWidget
        for part in (self.act_button, self.second_button, self.confirm_button, self.put_off_button):
            self._left.addWidget(part)
        self._left.addStretch(1)
        self._right.addStretch(1)
        for part in (self.count, self.next_button, self.leave_button, self.stay_button):
            self._right.addWidget(part)
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._grid.addLayout(inset(Rule(self._theme, color="rule")), 0, 0, 1, 2)
        self._grid.addLayout(self._left, 1, 0)
        self._grid.addLayout(self._right, 1, 1)
        self._two = False

    def minimumSizeHint(self) -> QSize:  # noqa: N802 - Qt's name
        """The wider of the two groups decides nothing: keys are left out, and rows take turns."""
        return QSize(0, super().minimumSizeHint().height())

    def _measure(self) -> None:
        self._grid.setVerticalSpacing(self._theme.px(8))
        for row in (self._left, self._right):
            row.setSpacing(self._theme.px(6))
        self.count.setContentsMargins(0, 0, self._theme.px(6), 0)
        self.fit()

    def say(self, text: str, *, commits: bool, works: bool) -> None:
        """What the first button does now; no text hides it."""
        self.act_button.setVisible(bool(text) and not self.asking)
        if text:
            self.act_button.say(text)
            self.act_button.weigh(Kind.COMMIT if commits else Kind.PLAIN)
        self.act_button.setEnabled(works)

    def offer(self, text: str) -> None:
        """What the second one does; no text hides it."""
        self.second_button.setVisible(bool(text) and not self.asking)
        if text:
            self.second_button.say(text)

    def lead(self, text: str, name: str, *, commits: bool) -> None:
        """Where it goes on; no text where it goes nowhere.

        Args:
            text: with a place for the title of the next device, where there is one.
            name: that title; what there is no room for ends in "…", and a screen reader still gets all of it.
        """
        self.next_button.setVisible(bool(text) and not self.asking)
        if text:
            most = self._theme.px(NAME)
            short = self.next_button.fontMetrics().elidedText(name, Qt.TextElideMode.ElideRight, most)
            self.next_button.say(text.format(title=short.replace("&", "&&")))
            self.next_button.setAccessibleName(text.replace("&", "").format(title=name))
            self.next_button.weigh(Kind.COMMIT if commits else Kind.PLAIN)
        self.fit()

    def ask(self, *, asking: bool, others: bool = True, works: bool = True) -> None:
        """Take the place of the buttons with the answers to a question, or give it back.

        Args:
            others: whether there is somebody else to go on with.
            works: whether they can be pressed.
        """
        self.asking = asking
        for button in (self.confirm_button, self.put_off_button, self.stay_button):
            button.setEnabled(works)
        for answer in (self.confirm_button, self.stay_button):
            answer.setVisible(asking)
        self.put_off_button.setVisible(asking and others)
        for part in (self.leave_button, self.count):
            part.setVisible(not asking)

    def stops(self) -> tuple[QWidget, ...]:
        """What the Tab key stops at, in order."""
        return tuple(button for button, _signal in self._pairs)

    def take_focus(self) -> None:
        """Put the focus on what is done next; asked about what cannot be taken back, on what leaves all as it is."""
        if self.asking:
            self.stay_button.setFocus()
            return
        for button in (self.act_button, self.next_button, self.leave_button):
            if button.isVisible() and button.isEnabled():
                button.setFocus()
                return

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: N802 - Qt's name
        """Place the groups anew."""
        super().resizeEvent(event)
        self.fit()

    def fit(self) -> None:
        """Leave the keys out where there is no room for them; then put one group above the other."""
        buttons = [button for button, _signal in self._pairs if not button.isHidden()]
        spare = self._theme.px(6) * len(buttons) + self._theme.px(24)
        spare += 0 if self.count.isHidden() else self.count.sizeHint().width()
        short = sum(button.width_with(key=True) for button in buttons) + spare > self.width()
        for button in buttons:
            button.abridge(short=short)
        two = short and sum(button.width_with(key=False) for button in buttons) + spare > self.width()
        if two is not self._two:
            self._two = two
            self._grid.removeItem(self._right)
            self._grid.addLayout(self._right, 2 if two else 1, 0 if two else 1, 1, 2 if two else 1)
