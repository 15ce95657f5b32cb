"""The end of a hand-over: the device has its key, so it is erased here."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from hearthkey.core.errors import HearthkeyError
from hearthkey.core.passes import Pass
from hearthkey.core.plans import HandOverPlan
from hearthkey.core.sentences import plans
from hearthkey.ui.controls.buttons import Button, Kind
from hearthkey.ui.controls.labels import Label, Voice
from hearthkey.ui.text import mended, said
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme


class DeviceHasIt(QWidget):
    """One button; then, in the same place, what follows from it and the button that does it.

    Signals:
        asked: what follows is shown, in words.
        confirmed: do it.
    """

    asked = Signal(str)
    confirmed = Signal()

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._one: Pass | None = None
        self.begin = Button(theme, self.tr("It is on the device &now"), kind=Kind.COMMIT, height=34)
        self.begin.clicked.connect(self.ask)
        self._hint = Label(
            theme, Role.STATE, self.tr("Then its key is erased here and exists on the device alone."), color="ink2"
        )
        self._hint.setWordWrap(True)
        self.sentence = Voice(theme)
        self.commit = Button(theme, self.tr("&Erase the key here"), kind=Kind.COMMIT, height=34)
        self.commit.clicked.connect(self.confirmed)
        self.not_yet = Button(theme, self.tr("Not &yet"), hint="Esc", height=34)
        self.not_yet.clicked.connect(self.step_back)
        self._trouble = Label(theme, Role.STATE, color="act", wrap=True)
        first = QHBoxLayout()
        first.setSpacing(12)
        first.addWidget(self.begin)
        first.addWidget(self._hint, 1)
        second = QHBoxLayout()
        second.setSpacing(4)
        second.addWidget(self.commit)
        second.addWidget(self.not_yet)
        second.addStretch(1)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(10)
        column.addLayout(first)
        column.addWidget(self.sentence)
        column.addLayout(second)
        column.addWidget(self._trouble)
        self._turn(asking=False)

    def show_pass(self, one: Pass) -> None:
        """Begin anew with a pass."""
        self._one = one
        self.say("")
        self._turn(asking=False)

    def stops(self) -> tuple[QWidget, ...]:
        """What the Tab key stops at, in order."""
        return (self.begin, self.commit, self.not_yet)

    @property
    def asking(self) -> bool:
        """Whether what follows is shown."""
        return not self.commit.isHidden()

    def ask(self) -> None:
        """Show what follows. It cannot be taken back, so it takes a second press."""
        if self._one is None:
            return
        self.sentence.setText(said(plans.hand_over(HandOverPlan(self._one))))
        self.say("")
        self._turn(asking=True)
        self.not_yet.setFocus()
        self.asked.emit(self.sentence.text())

    def step_back(self) -> None:
        """Show the one button again."""
        self._turn(asking=False)
        self.begin.setFocus()

    def fail(self, error: HearthkeyError) -> None:
        """Say why the key is still here."""
        self.say(mended(error))

    def say(self, text: str) -> None:
        """Say something below, or nothing."""
        self._trouble.setText(text)
        self._trouble.setVisible(bool(text))

    def trouble(self) -> str:
        """What went wrong, as it stands there."""
        return self._trouble.text()

    def _turn(self, *, asking: bool) -> None:
        # What goes is hidden before what comes is shown, or the page would grow for a moment.
        coming, going = (self.sentence, self.commit, self.not_yet), (self.begin, self._hint)
        if not asking:
            coming, going = going, coming  # type: ignore[assignment]  # tuples of three and of two widgets
        for part in going:
            part.hide()
        for part in coming:
            part.show()
