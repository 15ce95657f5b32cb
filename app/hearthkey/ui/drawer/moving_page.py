"""Moving day: what will be new, what that asks for and of whom, and a list to tick that can go back."""

from __future__ import annotations

from functools import partial
from itertools import pairwise

from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from hearthkey.core.errors import HearthkeyError
from hearthkey.core.moving import MovingPlan
from hearthkey.core.moving_steps import Kind as New
from hearthkey.core.moving_steps import Task
from hearthkey.core.names import as_address
from hearthkey.core.plans import Changes
from hearthkey.core.sentences import moving as words
from hearthkey.services.moving import MoveRequest
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.announcing import announce
from hearthkey.ui.controls.buttons import Button, Kind
from hearthkey.ui.controls.fields import Labelled, Line
from hearthkey.ui.controls.labels import Prose, Voice
from hearthkey.ui.controls.tick import Tick
from hearthkey.ui.drawer.moving_steps import MovingSteps
from hearthkey.ui.drawer.page import Page, inset
from hearthkey.ui.errands import Errands
from hearthkey.ui.text import mended, said, spoken
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.ways import Ways

PAUSE = 250
"""Milliseconds without a key before what was typed is looked at."""


class MovingPage(Page):
    """Plans a move and keeps its list; every change itself is made where it belongs."""

    def __init__(self, theme: Theme, errands: Errands, ways: Ways, parent: QWidget | None = None) -> None:
        super().__init__(theme, self.tr("Moving day"), parent=parent)
        self._errands, self._ways = errands, ways
        self._seen: Snapshot | None = None
        self.plan: MovingPlan | None = None
        self.kept = self._busy = self._sure = False
        self._pause = QTimer(self, singleShot=True, interval=PAUSE)
        self._pause.timeout.connect(self.look)
        self.bare = Prose(theme, Role.BODY, said(words.BARE_ADDRESS), color="act")
        self.ticks = {
            New.PROVIDER: Tick(theme, self.tr("Another provider"), self.tr("A new line, so a new address outside.")),
            New.ROUTER: Tick(theme, self.tr("Another router"), self.tr("The box that passes packets on.")),
            New.HOST: Tick(theme, self.tr("Another host name"), self.tr("What devices look for from outside.")),
            New.SUBNET: Tick(theme, self.tr("Other subnets at home"), self.tr("The addresses of things at home.")),
            New.BOX: Tick(theme, self.tr("Another gateway box"), self.tr("The computer that lets devices in.")),
        }
        self.host, self.home = Line(theme), Line(theme)
        self.host_asked = Labelled(theme, self.tr("The new host name"), self.host)
        self.home_asked = Labelled(theme, self.tr("What will be at home, with commas between"), self.home)
        self.form = QWidget()
        self.voice = Voice(theme)
        self.steps = MovingSteps(theme)
        self.told = Prose(theme, Role.STATE, color="ink2")
        self.trouble = Prose(theme, Role.BODY, color="act")
        self.commit = Button(theme, self.tr("&Keep this list"), kind=Kind.COMMIT, height=34)
        self.call_off = Button(theme, self.tr("&Call it off"), height=34)
        self._build()
        self._connect()
        self.follow(errands.seen, self.show_snapshot)
        if errands.last is not None:
            self.show_snapshot(errands.last)

    def _build(self) -> None:
        column = QVBoxLayout(self.form)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(6)
        column.addLayout(inset(Prose(self.theme, Role.BODY, self.tr("What will be new?"))))
        for new, asked in (
            (New.PROVIDER, None),
            (New.ROUTER, None),
            (New.HOST, self.host_asked),
            (New.SUBNET, self.home_asked),
            (New.BOX, None),
        ):
            column.addWidget(self.ticks[new])
            if asked is not None:
                column.addWidget(asked)
                asked.hide()
        self.put(self.bare)
        self.body.addWidget(self.form)
        self.put(self.voice, self.steps)
        self.body.addStretch(1)
        self.show_foot()
        for part in (self.told, self.trouble):
            self.foot.addLayout(inset(part))
            part.hide()
        row = QHBoxLayout()
        row.setSpacing(4)
        row.addWidget(self.commit)
        row.addWidget(self.call_off)
        row.addStretch(1)
        self.foot.addLayout(row)

    def _connect(self) -> None:
        for tick in self.ticks.values():
            tick.toggled.connect(self._typed)
        for line in (self.host, self.home):
            line.textEdited.connect(self._typed)
            line.returnPressed.connect(self.look)
        self.steps.done.connect(self._tick)
        self.steps.undone.connect(self._take_back)
        self.steps.lead.connect(self._lead)
        self.commit.clicked.connect(self._commit)
        self.call_off.clicked.connect(self._end)

    # What is

    def show_snapshot(self, snapshot: Snapshot) -> None:
        """Ask whether a move is under way; what is being typed is looked at again."""
        self._seen = snapshot
        household = snapshot.household
        self.bare.setVisible(household is not None and as_address(household.gateway_host) is not None)
        if household is not None:
            self._errands.look_move(self, self._kept, self._failed)

    def _kept(self, plan: MovingPlan | None) -> None:
        was, self.kept = self.kept, plan is not None
        if plan is None and not was:
            self._typed()
        else:
            self.show_plan(plan)

    def show_plan(self, plan: MovingPlan | None) -> None:
        """Show a plan, or that there is none."""
        self.plan = plan
        self.voice.setVisible(plan is not None)
        if plan is not None:
            self.voice.speak(said(words.headline(plan)))
        self.form.setVisible(not self.kept)
        able = self._seen is not None and not self._seen.read_only and not self._busy
        self.steps.show_plan(plan, kept=self.kept, able=able)
        for before, after in pairwise([*self._stops(), *self.steps.buttons, self.commit, self.call_off]):
            QWidget.setTabOrder(before, after)
        whole = self.kept and plan is not None and plan.next is None
        self.commit.say(self.tr("The move is &over") if self.kept else self.tr("&Keep this list"))
        self.commit.setVisible(plan is not None and (whole or not self.kept))
        self.commit.setEnabled(able)
        self.call_off.setVisible(self.kept and not whole)
        self.call_off.say(self.tr("&Yes, call it off") if self._sure else self.tr("&Call it off"))
        self.call_off.setEnabled(able)
        self.show_foot(shown=plan is not None)

    def _stops(self) -> list[QWidget]:
        """What the Tab key stops at in the form, in order."""
        under = {New.HOST: self.host, New.SUBNET: self.home}
        return [part for new, tick in self.ticks.items() for part in (tick, under.get(new)) if part is not None]

    # While it is typed

    def request(self) -> MoveRequest:
        """What is ticked and typed."""
        kinds = [new for new, tick in self.ticks.items() if tick.isChecked()]
        home = [one.strip() for one in self.home.text().split(",") if one.strip()]
        return MoveRequest(
            [one for one in kinds if one not in {New.HOST, New.SUBNET}],
            self.host.text().strip() if New.HOST in kinds else None,
            home if New.SUBNET in kinds else None,
        )

    def _typed(self, _how: object = None) -> None:
        self.host_asked.setVisible(self.ticks[New.HOST].isChecked())
        self.home_asked.setVisible(self.ticks[New.SUBNET].isChecked())
        if self.kept:
            return
        self._peace()
        if not any(tick.isChecked() for tick in self.ticks.values()) or self._half():
            self._pause.stop()
            self.show_plan(None)
        else:
            self._pause.start()

    def _half(self) -> bool:
        """Whether something is ticked and not typed yet."""
        request = self.request()
        return request.new_host == "" or request.new_home == []

    def look(self) -> None:
        """Have what was typed looked at."""
        self._pause.stop()
        request = self.request()
        if not self.kept and not self._half():
            self._errands.preview_move(request, self, partial(self._planned, request), self._failed)

    def _planned(self, request: MoveRequest, plan: MovingPlan) -> None:
        if request == self.request() and not self.kept:
            self._peace()
            self.show_plan(plan)
            announce(self.voice, self.voice.text())

    # Deeds

    def _commit(self) -> None:
        if self.plan is None:
            return
        if self.kept:
            self._end()
        else:
            self._go()
            self._errands.begin_move(self.request(), self, self._begun, self._failed)

    def _begun(self, changes: Changes) -> None:
        self.kept = True
        for tick in self.ticks.values():
            tick.setChecked(False)
        self._done(changes)

    def _tick(self, task: str) -> None:
        self._go()
        self._errands.tick_move(Task(task), self, self._done, self._failed)

    def _take_back(self, task: str) -> None:
        if self.plan is None:
            return
        self._go()
        undo = said(words.back(self.plan.move, Task(task)))
        self._errands.take_move_back(Task(task), self, partial(self._undone, undo), self._failed)

    def _undone(self, undo: str, changes: Changes) -> None:
        self._done(changes)
        self._say(f"{spoken(changes.sentence)} {undo}")

    def _end(self) -> None:
        whole = self.plan is not None and self.plan.next is None
        if not whole and not self._sure:
            self._sure = True
            self._say(self.tr("The list goes; what was done stays as it is."))
            self.show_plan(self.plan)
            return
        self._go()
        self._errands.end_move(self, self._done, self._failed, call_off=not whole)

    def _lead(self, way: str) -> None:
        signal = getattr(self._ways, way)
        if way == "renew":
            signal.emit("")
        else:
            signal.emit()

    # Outcomes

    def _go(self) -> None:
        self._busy = True
        self._peace()

    def _done(self, changes: Changes) -> None:
        self._busy = self._sure = False
        self._errands.look_move(self, self._kept, self._failed)
        self._say(spoken(changes.sentence))

    def _failed(self, error: HearthkeyError) -> None:
        self._busy = self._sure = False
        self.trouble.speak(mended(error))
        self.trouble.show()
        announce(self, self.trouble.text())
        if not self.kept:
            self.show_plan(None)
        self.show_foot()

    def _say(self, text: str) -> None:
        self.told.speak(text)
        self.told.show()
        self.show_foot()
        announce(self, text)

    def _peace(self) -> None:
        self.trouble.hide()
        self.told.hide()

    def opened(self) -> None:
        """Forget what the last visit of this page said."""
        self._sure = False
        self._peace()
