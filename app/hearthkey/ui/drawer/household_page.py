"""The household: its settings, to be changed; what runs until when, and the list and the certificate made anew."""

from __future__ import annotations

from collections.abc import Callable
from itertools import pairwise

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from hearthkey.core.errors import HearthkeyError
from hearthkey.core.household import Household
from hearthkey.core.network import Caution
from hearthkey.core.plans import Changes
from hearthkey.core.settling import SettlePlan
from hearthkey.services.settling import SettleRequest, request_for
from hearthkey.services.snapshot import Snapshot
from hearthkey.services.writing_diary import TOLERATED
from hearthkey.ui.announcing import announce
from hearthkey.ui.controls.buttons import Button, Kind
from hearthkey.ui.controls.labels import Label, Prose, Rule
from hearthkey.ui.dates import day
from hearthkey.ui.drawer.figures import Facts, in_groups
from hearthkey.ui.drawer.page import Page, inset
from hearthkey.ui.drawer.settlement import Settlement
from hearthkey.ui.drawer.unlock import UnlockRow
from hearthkey.ui.errands import Errands
from hearthkey.ui.text import caution, mended, spoken
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.ways import Ways

Deed = Callable[[], None]


def dated_ahead(snapshot: Snapshot) -> bool:
    """Whether something here is dated later than now, so that nothing can be signed by this clock."""
    dates = [entry.at for entry in snapshot.diary[-1:]]
    dates += [] if snapshot.newest_list is None else [snapshot.newest_list.this_update]
    return any(at > snapshot.at + TOLERATED for at in dates)


class HouseholdPage(Page):
    """The settings of the household; the app's own stand on a page of their own."""

    def __init__(self, theme: Theme, errands: Errands, ways: Ways, parent: QWidget | None = None) -> None:
        super().__init__(theme, self.tr("The household"), parent=parent)
        self._errands = errands
        self._busy = self._ahead = False
        self._pending: Deed | None = None
        self._back: Household | None = None
        self._led_to: SettlePlan | None = None
        self.settlement = Settlement(theme, errands)
        self.kept = Facts(theme)
        self.sign_button = Button(theme, self.tr("Sign the list anew"), height=32)
        self.renew_button = Button(theme, self.tr("New gateway certificate"), height=32)
        self.succession_button = Button(theme, self.tr("The next CA"), height=32)
        self.deputy_button = Button(theme, self.tr("Somebody takes over"), height=32)
        self.diary_button = Button(theme, self.tr("Diary"), hint=self.tr("Ctrl+D"), height=32)
        self.note = Prose(theme, Role.STATE, color="ink2")
        self.trouble = Prose(theme, Role.BODY, color="act")
        self.unlock = UnlockRow(theme, errands)
        self.step = Prose(theme, Role.STATE, color="ink2")
        self.commit = Button(theme, self.tr("Change it"), kind=Kind.COMMIT, hint=self.tr("Ctrl+Enter"), height=34)
        self.aside = Button(theme, self.tr("As it was"), height=34)
        self.back_button = Button(theme, self.tr("Change it back"), height=34)
        self._build()
        self._connect(ways)
        if errands.last is not None:
            self.show_snapshot(errands.last)
        self._judge()

    def _build(self) -> None:
        self.body.setSpacing(10)
        self.body.addWidget(self.settlement)
        self.put(Rule(self.theme, color="rule"), Label(self.theme, Role.BODY_STRONG, self.tr("Until when it runs")))
        self.put(self.kept)
        deeds = QVBoxLayout()
        deeds.setSpacing(2)
        for button in self._deeds_here():
            deeds.addWidget(button, 0, Qt.AlignmentFlag.AlignLeft)
        self.body.addLayout(deeds)
        self.body.addStretch(1)
        self.show_foot()
        self.foot.addLayout(inset(self.note))
        self.foot.addLayout(inset(self.trouble))
        self.foot.addWidget(self.unlock)
        self.foot.addLayout(inset(self.step))
        row = QHBoxLayout()
        row.setSpacing(4)
        for button in (self.commit, self.aside, self.back_button):
            row.addWidget(button)
        row.addStretch(1)
        self.foot.addLayout(row)
        for part in (self.note, self.trouble, self.unlock, self.step, self.back_button):
            part.hide()
        stops = [*self.settlement.controls(), *self._deeds_here()]
        for before, after in pairwise([*stops, self.unlock.line, self.unlock.show_button, self.unlock.unlock_button]):
            QWidget.setTabOrder(before, after)
        for before, after in pairwise([self.unlock.unlock_button, self.commit, self.aside, self.back_button]):
            QWidget.setTabOrder(before, after)

    def _deeds_here(self) -> tuple[Button, ...]:
        others = (self.succession_button, self.deputy_button, self.diary_button)
        return (self.sign_button, self.renew_button, *others)

    def _connect(self, ways: Ways) -> None:
        self.settlement.changed.connect(self._judge)
        self.sign_button.clicked.connect(self.sign_anew)
        self.renew_button.clicked.connect(self.renew)
        self.deputy_button.clicked.connect(ways.deputy)
        self.diary_button.clicked.connect(ways.diary)
        self.succession_button.clicked.connect(ways.succession)
        self.commit.clicked.connect(self.go_on)
        self.aside.clicked.connect(self._as_it_was)
        self.back_button.clicked.connect(self._change_back)
        self.unlock.opened.connect(self._go_on_open)
        self._errands.seen.connect(self.show_snapshot)
        self._errands.step.connect(self._step)
        for keys in ("Ctrl+Return", "Ctrl+Enter"):
            shortcut = QShortcut(QKeySequence(keys), self)
            shortcut.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
            shortcut.activated.connect(self.go_on)

    # What is

    def show_snapshot(self, snapshot: Snapshot) -> None:
        """Show the household as it is now; what is being typed stays."""
        able = snapshot.authority is not None and not snapshot.read_only
        for button in (self.sign_button, self.renew_button):
            button.setEnabled(able)
        self._ahead = dated_ahead(snapshot)
        self.sign_button.say(
            self.tr("The clock was ahead, and is right now: sign the list by it")
            if self._ahead
            else self.tr("Sign the list anew")
        )
        self.settlement.show_snapshot(snapshot)
        self._tell_kept(snapshot)
        self._judge()

    def _tell_kept(self, snapshot: Snapshot) -> None:
        authority, gateway, newest = snapshot.authority, snapshot.gateway, snapshot.newest_list
        tell = self.kept.tell
        if newest is not None:
            number = self.tr("(no. {number})").format(number=newest.number)
            tell("list", self.tr("revocation list"), day(newest.next_update), number)
        if gateway is not None:
            tell("gateway", self.tr("gateway"), day(gateway.not_after), f"({gateway.host})")
        if authority is not None:
            place = self.tr("(key in the keyring)") if authority.key_place == "keyring" else self.tr("(key in a file)")
            tell("authority", self.tr("CA"), day(authority.not_after), place)
            tell("sha", self.tr("CA, SHA-256"), in_groups(authority.fingerprint))
        found = snapshot.succession
        if found is not None and found.underway:
            other = found.old if found.new_issues else found.new
            tell("other", self.tr("the other CA"), day(other.not_after), self.tr("(trusted beside it)"))

    def _judge(self) -> None:
        """Offer what can be done now."""
        seen, plan = self._errands.last, self.settlement.plan
        able = seen is not None and not seen.read_only and not self._busy
        differs = self.settlement.form.differs
        self.commit.setEnabled(able and plan is not None and not plan.changes_nothing)
        self.aside.setEnabled(differs and not self._busy)
        if differs:
            self._back = None
            self.note.hide()
            self.trouble.hide()
        self.back_button.setVisible(self._back is not None)

    # Deeds

    def go_on(self) -> None:
        """Change it; where devices are touched and the sentence that says so is out of sight, show it first."""
        plan = self.settlement.plan
        if plan is None or not self.commit.isEnabled():
            return
        if plan.devices and self.unlock.isHidden() and self._led_to is not plan and not self._in_sight():
            self._led_to = plan
            self.roll.ensureWidgetVisible(self.settlement.voice)
            announce(self.settlement.voice, self.settlement.voice.text())
            return
        if plan.needs_key:
            self._with_key(self._settle_typed)
        else:
            self._settle(plan)

    def _in_sight(self) -> bool:
        voice = self.settlement.voice
        return voice.visibleRegion().boundingRect().height() >= voice.height()

    def sign_anew(self) -> None:
        """Sign the same list under a new date; a locked household is opened first."""
        self._with_key(self._sign)

    def renew(self) -> None:
        """Make the gateway's next certificate; a locked household is opened first."""
        self._with_key(self._renew)

    def _with_key(self, deed: Deed) -> None:
        """Do what needs the CA key; where the household is locked, ask for the passphrase and go on by itself."""
        seen = self._errands.last
        waits, self._pending = self._pending == deed and not self.unlock.isHidden(), deed
        if seen is None or not seen.locked:
            self._go_on_open()
        elif waits:
            self.unlock.unlock()
        else:
            self.unlock.ask()

    def _go_on_open(self) -> None:
        deed, self._pending = self._pending, None
        if deed is not None and not self._busy:
            deed()

    def _sign(self) -> None:
        self._begin(self._sign)
        self._errands.sign_list(self, self._signed, self._refused, righted=self._ahead)

    def _renew(self) -> None:
        self._begin(self._renew)
        request = SettleRequest(renew_gateway=True)
        self._errands.preview_settle(request, self, self._apply, self._refused)

    def _settle_typed(self) -> None:
        plan = self.settlement.plan
        if plan is not None:
            self._settle(plan)

    def _settle(self, plan: SettlePlan) -> None:
        self._begin(self._settle_typed)
        self._apply(plan, back=plan.before)

    def _change_back(self) -> None:
        if self._back is None or self._busy:
            return
        request = request_for(self._back)
        self._begin(self._change_back)
        self._errands.preview_settle(request, self, self._apply, self._refused)

    def _apply(self, plan: SettlePlan, back: Household | None = None) -> None:
        def over(changes: Changes) -> None:
            self._settled(plan, changes, back)

        self._errands.settle(plan, self, over, self._refused)

    def _begin(self, deed: Deed) -> None:
        self._busy, self._pending = True, deed
        self.trouble.hide()
        self._judge()

    # Outcomes

    def _signed(self, changes: Changes) -> None:
        told = [spoken(changes.sentence), *(caution(one) for one in changes.cautions)]
        if changes.list_number is not None:
            told.append(caution(Caution("not-in-force", str(changes.list_number))))
        self._over(told, self.sign_button)

    def _settled(self, plan: SettlePlan, changes: Changes, back: Household | None) -> None:
        told = [spoken(changes.sentence)]
        if plan.touches:
            self.settlement.as_it_was()
            self._back = None if plan.needs_key else back
        if plan.touches and plan.needs_key:
            told.append(self.tr("There is a way back: give the house its old name again, with the passphrase."))
        self._over(told, self.settlement.form.name if plan.touches else self.renew_button)

    def _over(self, told: list[str], focus: QWidget) -> None:
        """Say what was done; the focus stays in a field that it is in, for the button that was pressed may be gone."""
        self._busy, self._pending = False, None
        self._judge()
        self.note.speak(" ".join(told))
        self.note.show()
        if not any(line.hasFocus() for line in self.settlement.form.lines.values()):
            focus.setFocus()
        announce(self, self.note.text())

    def _refused(self, error: HearthkeyError) -> None:
        self._busy = False
        self._judge()
        if error.code == "household-locked":
            self.unlock.ask()
            return
        self._pending = None
        self.trouble.speak(mended(error))
        self.trouble.show()
        announce(self, self.trouble.text())

    def _as_it_was(self) -> None:
        self.settlement.as_it_was()
        self.settlement.form.name.setFocus()

    def _step(self, words: str) -> None:
        shown = bool(words) and self._busy
        self.step.speak(f"{words} …" if shown else "")
        self.step.setVisible(shown)
