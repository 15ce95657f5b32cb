"""The next CA: its steps with their days, each device on its way, one step on or one back."""

from __future__ import annotations

from itertools import pairwise

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QHBoxLayout, QLineEdit, QVBoxLayout, QWidget

from hearthkey.core.errors import HearthkeyError
from hearthkey.core.in_force import house_ends
from hearthkey.core.plans import Changes
from hearthkey.core.renewal import waiting_of
from hearthkey.core.secret import Secret
from hearthkey.core.sentences import succession as words
from hearthkey.core.succession import Cause, Plan, Step
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.announcing import announce
from hearthkey.ui.controls.buttons import Button, Kind
from hearthkey.ui.controls.choice import Choice
from hearthkey.ui.controls.emptying import empty
from hearthkey.ui.controls.fields import Labelled, Line
from hearthkey.ui.controls.labels import Prose
from hearthkey.ui.drawer.page import Page, inset
from hearthkey.ui.drawer.succession_steps import StepList
from hearthkey.ui.drawer.unlock import UnlockRow
from hearthkey.ui.errands import Errands
from hearthkey.ui.text import caution, mended, said, spoken
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.ways import Ways


class SuccessionPage(Page):
    """How one CA follows another; before the beginning the plan, afterwards how far it has come."""

    def __init__(self, theme: Theme, errands: Errands, ways: Ways, parent: QWidget | None = None) -> None:
        super().__init__(theme, self.tr("The next CA"), parent=parent)
        self._errands, self._ways = errands, ways
        self._seen: Snapshot | None = None
        self.plan: Plan | None = None
        self._busy = self._sure = False
        self.opening = Prose(theme, Role.BODY)
        self.why = Choice(
            theme,
            self.tr("Why"),
            [
                (Cause.PLANNED.value, self.tr("In good time")),
                (Cause.STOLEN.value, self.tr("Perhaps stolen")),
                (Cause.LOST.value, self.tr("Lost")),
            ],
        )
        self.advice = QVBoxLayout()
        self.advice.setSpacing(8)
        self.steps = StepList(theme)
        self.line = Line(theme)
        self.line.setEchoMode(QLineEdit.EchoMode.Password)
        self.asked = Labelled(theme, self.tr("Passphrase of the household"), self.line)
        self.told = Prose(theme, Role.STATE, color="ink2")
        self.trouble = Prose(theme, Role.BODY, color="act")
        self.unlock = UnlockRow(theme, errands)
        self.commit = Button(theme, "", kind=Kind.COMMIT, height=34)
        self.back_button = Button(theme, self.tr("One step &back"), height=34)
        self.gone_button = Button(theme, self.tr("The old key may be stolen…"), height=26)
        self._build()
        self._connect()
        self.follow(errands.seen, self.show_snapshot)
        if errands.last is not None:
            self.show_snapshot(errands.last)

    def _build(self) -> None:
        self.put(self.opening)
        self.body.addWidget(self.why, 0, Qt.AlignmentFlag.AlignLeft)
        self.body.addLayout(self.advice)
        self.put(self.steps)
        self.body.addWidget(self.gone_button, 0, Qt.AlignmentFlag.AlignLeft)
        self.body.addStretch(1)
        self.show_foot()
        for part in (self.told, self.trouble):
            self.foot.addLayout(inset(part))
            part.hide()
        self.foot.addWidget(self.asked)
        self.foot.addWidget(self.unlock)
        self.unlock.hide()
        row = QHBoxLayout()
        row.setSpacing(4)
        row.addWidget(self.commit)
        row.addWidget(self.back_button)
        row.addStretch(1)
        self.foot.addLayout(row)

    def _connect(self) -> None:
        self.gone_button.clicked.connect(self._ways.key_gone)
        self.why.chosen.connect(lambda _key: self._ask())
        self.steps.renew.connect(self._renew)
        self.steps.hand_over.connect(self._ways.hand_over)
        self.steps.prove.connect(self._ways.prove)
        self.commit.clicked.connect(self.go_on)
        self.back_button.clicked.connect(self.step_back)
        self.line.textChanged.connect(self._judge)
        self.line.returnPressed.connect(self.go_on)
        self.unlock.opened.connect(self.go_on)
        self._errands.step.connect(self._step)

    # What is

    def show_snapshot(self, snapshot: Snapshot) -> None:
        """Ask how far the succession has come, where there is a household."""
        self.see(snapshot)
        if snapshot.authority is not None:
            self._ask()

    def see(self, snapshot: Snapshot) -> None:
        """Know the household as it is now; what is shown follows with the plan."""
        self._seen = snapshot

    def ask_about(self, cause: str) -> None:
        """Show the plan for what has happened."""
        self.why.take(cause)
        self._ask()

    def _ask(self) -> None:
        self._errands.look_succession(Cause(self.why.value()), self, self.show_plan, self._failed)

    def show_plan(self, plan: Plan) -> None:
        """Show the steps as they stand."""
        seen = self._seen
        if seen is None:
            return
        if plan != self.plan:
            self._sure = False
        self.plan = plan
        self.opening.speak(said(words.headline(plan, seen.at)))
        begun = plan.back is not None or plan.next is not Step.BEGIN
        self.why.setVisible(not begun)
        self._advise(plan, seen, begun=begun)
        self.steps.show_plan(plan, seen.at, able=not seen.read_only)
        for before, after in pairwise([self.why.taken(), *self.steps.buttons, self.line]):
            QWidget.setTabOrder(before, after)
        self._judge()

    def _advise(self, plan: Plan, seen: Snapshot, *, begun: bool) -> None:
        empty(self.advice)
        for one in () if begun else advice(plan, seen, plan.cause):
            self.advice.addLayout(inset(Prose(self.theme, Role.STATE, one, color="ink2")))

    def _looks(self) -> bool:
        """Whether the app can look at the gateway by itself."""
        seen = self._seen
        practice = seen is not None and seen.household is not None and seen.household.practice
        return seen is not None and seen.gateway_state.target is not None and not practice

    def _judge(self) -> None:
        """Offer what can be done now."""
        plan, seen = self.plan, self._seen
        if plan is None or seen is None:
            return
        able = not seen.read_only and not self._busy
        beginning, lost = plan.next is Step.BEGIN, plan.cause is Cause.LOST
        self.asked.setVisible(beginning and not lost)
        self.commit.setVisible(plan.next is not None)
        self.gone_button.setVisible(not beginning and plan.next is not None and plan.cause is Cause.PLANNED)
        self.commit.say(self._deed(plan))
        waits = plan.next is Step.DEVICES and plan.cause is Cause.PLANNED
        self.commit.setEnabled(able and not waits and (not beginning or lost or bool(self.line.text())))
        self.back_button.setVisible(plan.back is not None)
        self.back_button.setEnabled(able and plan.back is not None)
        if not beginning and not seen.locked:
            self.unlock.hide()

    def _delivers(self, plan: Plan) -> bool:
        """Whether the gateway has to be seen with what the last step made, before anything goes on."""
        return self._looks() and not plan.seen and plan.next not in {None, Step.BEGIN}

    def _deed(self, plan: Plan) -> str:
        if plan.next is Step.BEGIN and plan.cause is Cause.LOST:
            return self.tr("&Begin with new words…")
        if plan.next is Step.BEGIN:
            return self.tr("&Make the next CA")
        if self._delivers(plan):
            return self.tr("&Deliver to the gateway")
        if plan.next is Step.TRUST:
            return self.tr("&Go on") if self._looks() else self.tr("The &gateway has both")
        if plan.next is Step.GATEWAY:
            return self.tr("&Give it the new certificate")
        return self.tr("&Yes, put it away for good") if self._sure else self.tr("&Put the old CA away")

    # Deeds

    def _renew(self, identity: str) -> None:
        """Lead to the renewal; a device whose bundle of the old CA was never handed over has nothing to be followed."""
        waits = self._seen is not None and waiting_of(identity, self._seen.passes, self._seen.at) is not None
        (self._ways.replace_device if waits else self._ways.renew).emit(identity)

    def go_on(self) -> None:
        """Take the next step; a locked household is opened first, and the last step is asked for twice."""
        plan, seen = self.plan, self._seen
        if plan is None or seen is None or not self.commit.isEnabled() or self._busy:
            return
        self.trouble.hide()
        if plan.next is Step.BEGIN and plan.cause is Cause.LOST:
            self._ways.key_gone.emit()
        elif plan.next is Step.BEGIN:
            self._begin(plan)
        elif self._delivers(plan):
            self._ways.deliver.emit()
        elif seen.locked:
            self.unlock.ask()
        elif plan.next in {Step.TRUST, Step.GATEWAY}:
            self._busy = True
            self._errands.go_on_succession(self, self._done, self._failed, told=not self._looks())
        elif not self._sure:
            self._sure = True
            self._say(self._last_words(plan))
        else:
            self._busy = True
            anyway = plan.cause is not Cause.PLANNED
            self._errands.finish_succession(self, self._done, self._failed, told=not self._looks(), anyway=anyway)
        self._judge()

    def _begin(self, plan: Plan) -> None:
        if not self.line.text():
            return
        self._busy = True
        secret = Secret(self.line.text().strip())
        self.line.clear()
        self._errands.begin_succession(secret, plan.cause, self, self._done, self._failed)

    def _last_words(self, plan: Plan) -> str:
        left = len(plan.left)
        if left == 1:
            return self.tr("One device is not through and stands outside afterwards. There is no way back.")
        if left:
            told = self.tr("{count} devices are not through and stand outside afterwards. There is no way back.")
            return told.format(count=left)
        return self.tr("Everybody is through. There is no way back from here.")

    def step_back(self) -> None:
        """Take the last step back."""
        if self._seen is not None and self._seen.locked:
            self.unlock.ask()
            return
        self._busy = True
        self.trouble.hide()
        self._judge()
        self._errands.take_back_succession(self, self._done, self._failed)

    # Outcomes

    def _done(self, changes: Changes) -> None:
        self._busy = self._sure = False
        self._say(" ".join([spoken(changes.sentence), *(caution(one) for one in changes.cautions)]))
        self._judge()

    def _failed(self, error: HearthkeyError) -> None:
        self._busy = self._sure = False
        self.trouble.speak(mended(error))
        self.trouble.show()
        announce(self, self.trouble.text())
        self._judge()

    def _say(self, text: str) -> None:
        self.told.speak(text)
        self.told.show()
        announce(self, text)

    def _step(self, step: str) -> None:
        if self._busy and step:
            self.told.speak(f"{step} …")
            self.told.show()

    def opened(self) -> None:
        """Forget what the last visit of this page said."""
        self._sure = False
        self.told.hide()
        self.trouble.hide()


def advice(plan: Plan, seen: Snapshot, cause: Cause) -> list[str]:
    """What to think of first, where something has happened."""
    if cause is Cause.STOLEN:
        return [said(one) for one in words.stolen()]
    if cause is not Cause.LOST or seen.newest_list is None or seen.gateway is None:
        return []
    list_end, gateway_end = house_ends(seen.gateway_state.note, seen.newest_list, seen.gateway.not_after)
    told = words.lost(plan, list_end=list_end, gateway_end=gateway_end, spares=seen.stoppable_locked)
    return [said(one) for one in told]
