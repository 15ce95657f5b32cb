"""The household's settings while they are being changed: the form, what follows, and whose devices it touches."""

from __future__ import annotations

from functools import partial

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from hearthkey.core.errors import HearthkeyError
from hearthkey.core.former_hosts import still_use
from hearthkey.core.household import FormerHost
from hearthkey.core.sentences import settling as sentences
from hearthkey.core.sentences.moving import kept
from hearthkey.core.sentences.touches import of
from hearthkey.core.settling import SettlePlan
from hearthkey.core.touches import touches
from hearthkey.services.describing import QUIET
from hearthkey.services.settling import SettleRequest
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.announcing import announce
from hearthkey.ui.controls.buttons import Button
from hearthkey.ui.controls.labels import Prose, Voice
from hearthkey.ui.drawer.page import inset
from hearthkey.ui.drawer.settling_form import SettlingForm
from hearthkey.ui.errands import Errands
from hearthkey.ui.pages.fold import Fold
from hearthkey.ui.pages.founding_words import Spot, spot_of, told
from hearthkey.ui.text import said
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme

PAUSE = 150
"""Milliseconds without a key before what was typed is looked at."""


class Settlement(QWidget):
    """Asks what is to be different, and says what that means before it is done.

    Signals:
        changed: there is another plan now, or none; or something was typed.
    """

    changed = Signal()

    def __init__(self, theme: Theme, errands: Errands, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._errands = errands
        self.plan: SettlePlan | None = None
        self._passes: object = None
        self._pause = QTimer(self, singleShot=True, interval=PAUSE)
        self._pause.timeout.connect(self.look)
        self.form = SettlingForm(theme)
        self.voice = Voice(theme)
        self.besides = Prose(theme, Role.STATE, color="ink2")
        self.all = Prose(theme, Role.BODY, color="ink2")
        self.devices = Fold(theme, self.tr("All of these devices"), self._indented(self.all))
        self.touched = Prose(theme, Role.STATE, color="ink2", lines=1.5)
        self.overview = Fold(theme, self.tr("What would touch whom?"), self._indented(self.touched))
        self.former = Prose(theme, Role.STATE, color="ink2")
        self.let_go = Button(theme, "", height=30)
        self._former: FormerHost | None = None
        self.trouble = Prose(theme, Role.BODY, color="act")
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(10)
        column.addWidget(self.form)
        column.addLayout(inset(self.voice))
        column.addWidget(self.devices)
        column.addLayout(inset(self.besides))
        column.addWidget(self.form.details)
        column.addWidget(self.overview)
        column.addLayout(inset(self.former))
        column.addWidget(self.let_go, 0, Qt.AlignmentFlag.AlignLeft)
        column.addLayout(inset(self.trouble))
        for part in (self.former, self.let_go):
            part.hide()
        self.form.changed.connect(self._typed)
        self.let_go.clicked.connect(self._ask_to_let_go)
        self._tell()

    def _indented(self, words: Prose) -> QWidget:
        inside = QWidget()
        row = QVBoxLayout(inside)
        row.setContentsMargins(0, 0, 0, 0)
        row.addLayout(inset(words))
        return inside

    def controls(self) -> list[QWidget]:
        """What the Tab key stops at, in order."""
        return [*self.form.controls(), self.devices.button, *self.form.folded(), self.overview.button, self.let_go]

    def show_snapshot(self, snapshot: Snapshot) -> None:
        """Learn how the household is settled, and who is there; what is being typed is looked at again."""
        self.setVisible(snapshot.household is not None)
        if snapshot.household is None:
            return
        self.form.show_household(snapshot.household, read_only=snapshot.read_only)
        reached = touches(snapshot.household, snapshot.passes, snapshot.at)
        self.touched.speak("\n".join(said(of(one)) for one in reached))
        self._tell_former(snapshot)
        if self.form.differs and snapshot.passes != self._passes:
            self._pause.start()
        self._passes = snapshot.passes

    def _tell_former(self, snapshot: Snapshot) -> None:
        """Say for whose sake the gateway answers to the oldest former host; it can go once that is nobody."""
        self._former = next(iter(snapshot.former_hosts), None)
        users = () if self._former is None else still_use(self._former, snapshot.passes, snapshot.at)
        for part in (self.former, self.let_go):
            part.setVisible(self._former is not None)
        if self._former is not None:
            self.former.speak(said(kept(self._former, users)))
            self.let_go.say(self.tr("Let {host} go").format(host=self._former.host))
            self.let_go.setEnabled(not users and not snapshot.read_only)

    def _ask_to_let_go(self) -> None:
        if self._former is not None:
            request = SettleRequest(let_go=self._former.host)
            self._errands.preview_settle(request, self, self._show_plan, self.say)

    def _show_plan(self, plan: SettlePlan) -> None:
        self.plan = plan
        self._tell()
        announce(self.voice, f"{self.voice.text()} {self.besides.text()}".strip())
        self.changed.emit()

    def as_it_was(self) -> None:
        """Let go of what was typed."""
        self._pause.stop()
        self.form.as_it_was()
        self._forget()

    # While it is typed

    def _typed(self) -> None:
        self._forget()
        if self.form.differs:
            self._pause.start()
        else:
            self._pause.stop()
            self.form.peace()
            self.form.advise(())

    def _forget(self) -> None:
        self.plan = None
        self._tell()
        self.changed.emit()

    def look(self) -> None:
        """Have what was typed looked at."""
        self._pause.stop()
        request = self.form.request()
        self._errands.preview_settle(request, self, partial(self._planned, request), partial(self._refused, request))

    def _planned(self, request: SettleRequest, plan: SettlePlan) -> None:
        if request != self.form.request():
            return
        if request.tunnel_subnet == QUIET and self.form.propose(str(plan.after.tunnel_subnet)):
            self.look()
            return
        self.form.peace()
        self.form.advise(plan.cautions)
        self._show_plan(plan)

    def _refused(self, request: SettleRequest, error: HearthkeyError) -> None:
        if request != self.form.request():
            return
        self.form.peace()
        self._forget()
        self.say(error)

    def say(self, error: HearthkeyError) -> None:
        """Say what is in the way, at the line that it is about."""
        spot = spot_of(error, self.form.tunnel.text())
        if spot is Spot.HOME and self.form.request().home_subnets is None:
            spot = Spot.TUNNEL
        if not self.form.trouble(spot, told(error), always=True):
            self.trouble.speak(told(error))
            self.trouble.show()
            announce(self, told(error))

    def _tell(self) -> None:
        plan = self.plan
        self.trouble.hide()
        for part, found in (
            (self.voice, () if plan is None else sentences.consequence(plan)),
            (self.besides, () if plan is None else sentences.besides(plan)),
        ):
            part.speak(" ".join(said(one) for one in found))
            part.setVisible(bool(found))
        many = () if plan is None or len(plan.devices) <= sentences.NAMED else plan.devices
        self.all.speak("\n".join(many))
        self.devices.setVisible(bool(many))
