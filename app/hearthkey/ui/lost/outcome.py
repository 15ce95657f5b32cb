"""The second half of "Lost or stolen": what happened, what it needs, and how to take it back."""

from __future__ import annotations

from functools import partial

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from hearthkey.core.errors import HearthkeyError
from hearthkey.core.plans import Changes, LetInPlan, SparePlanned, StopPlan
from hearthkey.core.sentences.diary import titles, was
from hearthkey.ui.announcing import announce
from hearthkey.ui.controls.buttons import Button, Kind
from hearthkey.ui.controls.labels import Label, Voice
from hearthkey.ui.errands import Errands
from hearthkey.ui.lost.aftercare import Aftercare
from hearthkey.ui.lost.gate import Gate
from hearthkey.ui.lost.on_the_way import OnTheWay
from hearthkey.ui.text import caution, mended, spoken
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme


class Outcome(QWidget):
    """A sentence, the list's files, and two buttons.

    Signals:
        closed: enough.
    """

    closed = Signal()

    def __init__(self, theme: Theme, errands: Errands, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._errands = errands
        self._identity = ""
        self.voice = Voice(theme)
        self._more = Label(theme, Role.BODY, color="ink2", wrap=True)
        self._trouble = Label(theme, Role.BODY, color="act", wrap=True)
        self.way = OnTheWay(theme, errands)
        self.aftercare = Aftercare(theme, errands)
        self.gate = Gate(theme, errands)
        self.close_button = Button(theme, self.tr("Close"), kind=Kind.COMMIT, hint=self.tr("Enter"), height=40)
        self.close_button.clicked.connect(self.closed)
        self.undo_button = Button(theme, self.tr("Undo: let it back in"), hint=self.tr("Ctrl+Z"), height=40)
        self.undo_button.clicked.connect(self.undo)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(12)
        inner = QVBoxLayout()
        inner.setContentsMargins(3, 0, 3, 0)
        inner.setSpacing(12)
        for widget in (self.voice, self.way, self._more, self._trouble):
            inner.addWidget(widget)
        row = QHBoxLayout()
        row.setSpacing(6)
        row.addWidget(self.close_button)
        row.addWidget(self.undo_button)
        row.addStretch(1)
        column.addLayout(inner)
        column.addWidget(self.gate)
        column.addLayout(row)
        column.addWidget(self.aftercare)

    def stopped(self, plan: StopPlan | SparePlanned, changes: Changes) -> None:
        """Say that it was stopped."""
        whom = plan.everyone if isinstance(plan, SparePlanned) else plan.chosen
        self._identity = whom[0].identity if len({one.identity for one in whom}) == 1 else ""
        one = self.tr("{title} was stopped with list {number}.")
        several = self.tr("{title} were stopped with list {number}.")
        self._tell(one if was(whom) == "was" else several, titles(whom), changes)
        self.aftercare.open(whom[0].serial)
        self.aftercare.show()
        self.undo_button.setVisible(bool(self._identity))

    def let_in(self, plan: LetInPlan, changes: Changes) -> None:
        """Say that it was let back in."""
        self._tell(
            self.tr("{title} was let back in with list {number}. It gets in once the gateway holds that list."),
            titles(plan.chosen),
            changes,
        )
        self.aftercare.hide()
        self.undo_button.hide()

    def _tell(self, template: str, title: str, changes: Changes) -> None:
        self.gate.forget()
        self._say_trouble("")
        number = "?" if changes.list_number is None else changes.list_number
        sentence = template.format(title=spoken(title), number=number)
        self.voice.setText(sentence)
        last = self._errands.last
        by_hand = last is None or last.gateway_state.target is None
        lies = [self.tr("The list lies here: {path}").format(path=path) for path in changes.files[:1] if by_hand]
        more = "\n".join(lies + [caution(one) for one in changes.cautions])
        self.way.follow(changes.list_number or 0)
        self._more.setText(more)
        self._more.setVisible(bool(more))
        announce(self, f"{sentence} {more}".strip())
        self.close_button.setFocus()

    def undo(self) -> None:
        """Let it back in: plan and act in one go, for stopping it was this very window's doing."""
        if self._identity and self.undo_button.isVisible():
            self._errands.preview_let_in(self._identity, self, self._back, self._failed)

    def _back(self, plan: LetInPlan) -> None:
        self._errands.let_in(plan, self, partial(self.let_in, plan), self._failed)

    def _failed(self, error: HearthkeyError) -> None:
        if error.code == "household-locked":
            self.gate.ask(self.tr("The household was locked meanwhile. The list has to be signed."), self.undo)
            return
        self._say_trouble(mended(error))

    def _say_trouble(self, sentence: str) -> None:
        self._trouble.setText(sentence)
        self._trouble.setVisible(bool(sentence))
        announce(self, sentence)
