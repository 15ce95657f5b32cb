"""Stopping, letting in and revoking inside a device's page: first what follows, then the deed."""

from __future__ import annotations

from enum import Enum

from PySide6.QtCore import Signal
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from hearthkey.core.errors import HearthkeyError
from hearthkey.core.network import Caution
from hearthkey.core.plans import Changes, LetInPlan, RevokePlan, SparePlanned, StopPlan
from hearthkey.core.revocation import Reason
from hearthkey.core.sentences import gateway, plans
from hearthkey.core.sentences.sentence import Sentence
from hearthkey.ui.announcing import announce
from hearthkey.ui.controls.buttons import Button, Kind
from hearthkey.ui.controls.labels import Label, Prose, Voice
from hearthkey.ui.drawer.page import inset
from hearthkey.ui.drawer.reasons import Reasons
from hearthkey.ui.drawer.unlock import UnlockRow
from hearthkey.ui.errands import Errands
from hearthkey.ui.text import caution, mended, said
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme

LONG_AWAY = 24
"""Hours after which a new pass is wiser than letting the old one back in (common practice, no source)."""

Plan = StopPlan | SparePlanned | LetInPlan | RevokePlan


class Verb(Enum):
    """What can be done to a device here."""

    STOP = "stop"
    LET_IN = "let in"
    REVOKE = "revoke"


class Deed(QWidget):
    """One deed at a time: what follows in a sentence, the passphrase where it is needed, the button.

    Stopping can be taken back, so it is done at once where the household is open.

    Signals:
        opened: it takes the place of the steps.
        done: Changes; the page already shows the new state.
        put_away: nothing was done.
    """

    opened = Signal()
    done = Signal(object)
    put_away = Signal()

    def __init__(self, theme: Theme, errands: Errands, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._errands = errands
        self._verb = Verb.STOP
        self._identity = ""
        self._asked = 0
        self._busy = False
        self._plan: Plan | None = None
        self.question = Label(theme, Role.STATE, self.tr("Why is it revoked?"), color="ink2")
        self.reasons = Reasons(theme)
        self.voice = Voice(theme)
        self.note = Prose(theme, Role.STATE, color="ink2")
        self.trouble = Prose(theme, Role.BODY, color="act")
        self.unlock = UnlockRow(theme, errands)
        self.commit = Button(theme, "", kind=Kind.COMMIT, height=34)
        self.not_now = Button(theme, self.tr("Not now"), kind=Kind.PLAIN, height=34)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(10)
        for part in (self.question, self.reasons, self.voice, self.note, self.trouble):
            column.addLayout(inset(part))
            part.hide()
        column.addWidget(self.unlock)
        row = QHBoxLayout()
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(4)
        row.addWidget(self.commit)
        row.addWidget(self.not_now)
        row.addStretch(1)
        column.addLayout(row)
        self.reasons.chosen.connect(self._reason)
        self.commit.clicked.connect(self.go_on)
        self.not_now.clicked.connect(self._leave)
        self.unlock.opened.connect(self._do)
        self.hide()

    def begin(self, verb: Verb, identity: str) -> None:
        """Ask what a deed would do. Asking for the same one again keeps what was chosen."""
        if self.isHidden() or (verb, identity) != (self._verb, self._identity):
            self._clear()
            self._verb, self._identity = verb, identity
            self.commit.say(
                {
                    Verb.STOP: self.tr("Stop now"),
                    Verb.LET_IN: self.tr("Let back in"),
                    Verb.REVOKE: self.tr("Revoke for good"),
                }[verb]
            )
            self.question.setVisible(verb is Verb.REVOKE)
            self.reasons.setVisible(verb is Verb.REVOKE)
        if verb is Verb.REVOKE:
            self.show()
            self._ready()
            self.reasons.focus()
        else:
            self._ask()

    def showEvent(self, event: QShowEvent) -> None:  # noqa: N802 - Qt's name
        """Tell that it has something to say now."""
        super().showEvent(event)
        self.opened.emit()

    def forget(self) -> None:
        """Put everything away without a word."""
        self._asked += 1
        self._clear()
        self.hide()

    def _clear(self) -> None:
        self._plan = None
        self.reasons.leave()
        self.unlock.forget()
        for part in (self.voice, self.note, self.trouble):
            part.speak("")
            part.hide()

    def _reason(self, _reason: Reason) -> None:
        self._ask()

    def _ask(self) -> None:
        self._asked += 1
        number = self._asked
        self._plan = None

        def planned(plan: Plan) -> None:
            if number != self._asked:
                return
            if isinstance(plan, SparePlanned) and plan.besides:
                # Here one device is meant: with the passphrase it stops alone.
                self._errands.preview_stop(self._identity, self, planned, refused)
            else:
                self._planned(plan)

        def refused(error: HearthkeyError) -> None:
            if number == self._asked:
                self._refused(error)

        reason = self.reasons.reason()
        if self._verb is Verb.STOP:
            self._errands.preview_loss(self._identity, self, planned, refused)
        elif self._verb is Verb.LET_IN:
            self._errands.preview_let_in(self._identity, self, planned, refused)
        elif reason is not None:
            self._errands.preview_revoke(self._identity, reason, self, planned, refused)

    def _planned(self, plan: Plan) -> None:
        self._plan = plan
        self.trouble.hide()
        if isinstance(plan, SparePlanned) or (isinstance(plan, StopPlan) and not self._locked()):
            self._do()
            return
        self._tell(self.voice, said(_sentence(plan)))
        if isinstance(plan, LetInPlan) and plan.hours_away >= LONG_AWAY:
            self._tell(self.note, caution(Caution("away-long", str(plan.hours_away))))
        self.show()
        self._ready()
        announce(self, self.voice.text())
        if isinstance(plan, StopPlan):
            self.unlock.ask()
        elif isinstance(plan, LetInPlan):
            self.commit.setFocus()

    def _refused(self, error: HearthkeyError) -> None:
        self._busy = False
        self._ready()
        self.show()
        if error.code == "household-locked":
            self.unlock.ask()
            return
        self._tell(self.trouble, mended(error))
        announce(self, self.trouble.text())
        self.not_now.setFocus()

    def go_on(self) -> None:
        """Do it; where the household is locked, ask for the passphrase first and go on by itself."""
        if self._plan is None or self._busy:
            return
        if not self._locked():
            self._do()
        elif self.unlock.isHidden():
            self.unlock.ask()
        else:
            self.unlock.unlock()

    def _do(self) -> None:
        plan = self._plan
        if plan is None or self._busy:
            return
        self._busy = True
        if isinstance(plan, StopPlan | SparePlanned):
            self._errands.lose(plan, self, self._over, self._refused)
        elif isinstance(plan, LetInPlan):
            self._errands.let_in(plan, self, self._over, self._refused)
        else:
            self._errands.revoke(plan, self, self._over, self._refused)

    def _over(self, changes: Changes) -> None:
        self._busy = False
        self.forget()
        self.done.emit(changes)

    def _leave(self) -> None:
        self.forget()
        self.put_away.emit()

    def _locked(self) -> bool:
        return self._errands.last is not None and self._errands.last.locked

    def _ready(self) -> None:
        self.commit.setEnabled(self._plan is not None)

    def _tell(self, part: Prose, words: str) -> None:
        part.speak(words)
        part.show()


def _sentence(plan: Plan) -> Sentence:
    if isinstance(plan, StopPlan):
        return plans.stop(plan)
    if isinstance(plan, SparePlanned):
        return gateway.spare(plan)
    return plans.let_in(plan) if isinstance(plan, LetInPlan) else plans.revoke(plan)
