"""A proof by hand: somebody told that it works; what follows is shown before it is written down."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from hearthkey.core.errors import HearthkeyError
from hearthkey.core.passes import Pass
from hearthkey.core.plans import Changes
from hearthkey.core.sentences import proofs as words
from hearthkey.services.proving import ToldPlan
from hearthkey.ui.announcing import announce
from hearthkey.ui.controls.buttons import Button, Kind
from hearthkey.ui.controls.labels import Prose, Voice
from hearthkey.ui.drawer.page import inset
from hearthkey.ui.errands import Errands
from hearthkey.ui.text import mended, said
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme


class ProofTold(QWidget):
    """What follows, and the button that does it; `begin` asks for it, and stands in the last row of the page.

    Signals:
        asking: what follows is shown, or not any more.
        done: it is written down.
    """

    asking = Signal()
    done = Signal()

    def __init__(self, theme: Theme, errands: Errands, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._errands = errands
        self._one: Pass | None = None
        self._plan: ToldPlan | None = None
        self.begin = Button(theme, "", height=32)
        self.sentence = Voice(theme)
        self.commit = Button(theme, self.tr("&Write it down"), kind=Kind.COMMIT, height=32)
        self.not_yet = Button(theme, self.tr("Not &yet"), height=32)
        self.trouble = Prose(theme, Role.STATE, color="act")
        second = QHBoxLayout()
        second.setSpacing(4)
        second.addWidget(self.commit)
        second.addWidget(self.not_yet)
        second.addStretch(1)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(8)
        column.addLayout(inset(self.sentence))
        column.addLayout(second)
        column.addLayout(inset(self.trouble))
        self.begin.clicked.connect(self.ask)
        self.commit.clicked.connect(self._write)
        self.not_yet.clicked.connect(self.step_back)
        self._turn(asking=False)

    @property
    def asks(self) -> bool:
        """Whether what follows is shown."""
        return not self.commit.isHidden()

    def show_pass(self, one: Pass) -> None:
        """Begin anew with a pass."""
        self._one, self._plan = one, None
        self.begin.say(self.tr("It works on mobile data, I was &told"))
        self._turn(asking=False)

    def ask(self) -> None:
        """Show what follows; it cannot be taken back, so it takes a second press."""
        if self._one is not None:
            self._errands.preview_told(self._one.serial, self, self._asked, self._fail)

    def step_back(self) -> None:
        """Show the one button again."""
        self._turn(asking=False)
        self.begin.setFocus()

    def _asked(self, plan: ToldPlan) -> None:
        self._plan = plan
        self.sentence.setText(said(words.told(plan.chosen, beside=plan.beside)))
        self._turn(asking=True)
        self.not_yet.setFocus()
        announce(self, self.sentence.text())

    def _write(self) -> None:
        if self._plan is not None:
            plan, self._plan = self._plan, None
            self._errands.told(plan, self, self._over, self._fail)

    def _over(self, _changes: Changes) -> None:
        self._turn(asking=False)
        self.done.emit()

    def _fail(self, error: HearthkeyError) -> None:
        self._turn(asking=False)
        self.trouble.speak(mended(error))
        self.trouble.show()
        announce(self, self.trouble.text())

    def _turn(self, *, asking: bool) -> None:
        for part in (self.sentence, self.commit, self.not_yet):
            part.setVisible(asking)
        self.trouble.hide()
        self.asking.emit()
