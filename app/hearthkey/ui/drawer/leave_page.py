"""Somebody leaves the household: what goes, and what else is to be changed."""

from __future__ import annotations

from itertools import pairwise

from PySide6.QtWidgets import QVBoxLayout, QWidget

from hearthkey.core.passes import LIVING
from hearthkey.core.plans import Changes
from hearthkey.core.sentences import goodbye as words
from hearthkey.services.goodbye import GoodbyePlan
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.announcing import announce
from hearthkey.ui.controls.emptying import empty
from hearthkey.ui.controls.labels import Label, Prose, Rule, Voice
from hearthkey.ui.controls.tick import Tick
from hearthkey.ui.drawer.commit_foot import CommitFoot
from hearthkey.ui.drawer.page import Page
from hearthkey.ui.errands import Errands
from hearthkey.ui.text import said, spoken
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme


class LeavePage(Page):
    """One person at a time. The list of what else to change stays after the passes have gone."""

    def __init__(self, theme: Theme, errands: Errands, parent: QWidget | None = None) -> None:
        super().__init__(theme, "", parent=parent)
        self._errands = errands
        self._person = ""
        self._plan: GoodbyePlan | None = None
        self.voice = Voice(theme)
        self.devices = Prose(theme, Role.BODY, lines=1.5)
        self.also = Label(theme, Role.BODY_STRONG, self.tr("Also change"))
        self.tail = CommitFoot(theme, errands, self.tr("Revoke them all for good"))
        self._chores = QVBoxLayout()
        self._chores.setSpacing(0)
        self.ticks: list[Tick] = []
        self.put(self.devices, self.voice, Rule(theme, color="rule"), self.also)
        self.body.addLayout(self._chores)
        self.body.addStretch(1)
        self.show_foot()
        self.foot.addWidget(self.tail)
        self.tail.agreed.connect(self._do)
        self.tail.put_aside.connect(self.leave)
        self.follow(errands.seen, self.show_snapshot)

    def first(self) -> QWidget:
        """The way out: nothing here is done by a stray Enter."""
        return self.tail.aside

    def begin(self, person: str) -> None:
        """Be about a person."""
        self._person = person
        self._plan = None
        self.entitle(self.tr("{person} leaves").format(person=person))
        self.tail.forget()
        self._ask()

    def show_snapshot(self, snapshot: Snapshot) -> None:
        """Ask anew where something of theirs has changed, as long as it was not done."""
        plan = self._plan
        if plan is None or self.tail.busy or self.tail.isHidden():
            return
        theirs = [one for one in snapshot.passes if one.person == plan.person and one.state(snapshot.at) in LIVING]
        if {one.serial for one in theirs} != {one.serial for one in plan.chosen}:
            self._ask()

    def _ask(self) -> None:
        self.tail.ready(ready=False)
        self.tail.show()
        self._errands.preview_goodbye(self._person, self, self._planned, self.tail.refused)

    def _planned(self, plan: GoodbyePlan) -> None:
        if plan.person != self._person:
            return
        self._plan = plan
        self.devices.speak("\n".join(dict.fromkeys(spoken(one.title) for one in plan.chosen)))
        self.voice.speak(said(words.plan(plan.person, plan.revoke)))
        empty(self._chores)
        self.ticks = [Tick(self.theme, said(words.what(one)), said(words.why(one))) for one in plan.chores]
        for tick in self.ticks:
            self._chores.addWidget(tick)
        for before, behind in pairwise([self.close_button, *self.ticks, *self.tail.controls()]):
            QWidget.setTabOrder(before, behind)
        self.tail.ready(ready=True)

    def _do(self) -> None:
        if self._plan is not None:
            self._errands.see_off(self._plan, self, self._done, self.tail.refused)

    def _done(self, changes: Changes) -> None:
        self.tail.forget()
        self.tail.hide()
        self.voice.speak(spoken(changes.sentence))
        announce(self.voice, spoken(changes.sentence))
        (self.ticks[0] if self.ticks else self.close_button).setFocus()
