"""The CA key is lost, or perhaps stolen: what that means, what to do first, and where it begins."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from hearthkey.core.errors import HearthkeyError
from hearthkey.core.plans import Changes
from hearthkey.core.secret import Secret
from hearthkey.core.succession import Cause, Plan, Step
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.announcing import announce
from hearthkey.ui.controls.buttons import Button, Kind
from hearthkey.ui.controls.choice import Choice
from hearthkey.ui.controls.labels import Prose
from hearthkey.ui.drawer.page import Page, inset
from hearthkey.ui.drawer.succession_page import advice
from hearthkey.ui.errands import Errands
from hearthkey.ui.pages.founding_passphrase import PassphrasePart
from hearthkey.ui.text import mended
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.ways import Ways


class KeyGonePage(Page):
    """A short aid to decide; what is decided is done on the page of the next CA, but for what needs new words."""

    def __init__(self, theme: Theme, errands: Errands, ways: Ways, parent: QWidget | None = None) -> None:
        super().__init__(theme, self.tr("The CA key is gone"), parent=parent)
        self._errands, self._ways = errands, ways
        self._seen: Snapshot | None = None
        self.plan: Plan | None = None
        self._busy = False
        self.what = Choice(
            theme,
            self.tr("What has happened"),
            [(Cause.STOLEN.value, self.tr("Perhaps stolen")), (Cause.LOST.value, self.tr("Lost"))],
        )
        self.advice = Prose(theme, Role.BODY, lines=1.4)
        self.stop_button = Button(theme, self.tr("Stop a &device first"), height=32)
        self.copies_button = Button(theme, self.tr("&Sealed copies"), height=32)
        self.words = PassphrasePart(theme, errands)
        self.trouble = Prose(theme, Role.BODY, color="act")
        self.commit = Button(theme, "", kind=Kind.COMMIT, height=34)
        self._build()
        self._connect()
        self.follow(errands.seen, self.show_snapshot)
        if errands.last is not None:
            self.show_snapshot(errands.last)

    def _build(self) -> None:
        self.body.addWidget(self.what, 0, Qt.AlignmentFlag.AlignLeft)
        self.put(self.advice)
        deeds = QVBoxLayout()
        deeds.setSpacing(2)
        for button in (self.stop_button, self.copies_button):
            deeds.addWidget(button, 0, Qt.AlignmentFlag.AlignLeft)
        self.body.addLayout(deeds)
        self.put(self.words)
        self.body.addStretch(1)
        self.show_foot()
        self.foot.addLayout(inset(self.trouble))
        self.trouble.hide()
        row = QHBoxLayout()
        row.addWidget(self.commit)
        row.addStretch(1)
        self.foot.addLayout(row)

    def _connect(self) -> None:
        self.what.chosen.connect(lambda _key: self._ask())
        self.stop_button.clicked.connect(lambda: self._ways.lost.emit(""))
        self.copies_button.clicked.connect(self._ways.sealed)
        self.words.changed.connect(self._judge)
        self.words.committed.connect(self.go_on)
        self.commit.clicked.connect(self.go_on)

    # What is

    def show_snapshot(self, snapshot: Snapshot) -> None:
        """Ask what would be done, where there is a household."""
        self._seen = snapshot
        if snapshot.authority is not None:
            self._ask()

    def _cause(self) -> Cause:
        return Cause(self.what.value())

    def _ask(self) -> None:
        self._errands.look_succession(self._cause(), self, self.show_plan, self._failed)

    def show_plan(self, plan: Plan) -> None:
        """Say what it means, and what comes first."""
        seen = self._seen
        if seen is None:
            return
        self.plan = plan
        told = advice(plan, seen, self._cause())
        self.advice.speak("\n\n".join(told))
        lost = self._cause() is Cause.LOST
        self.stop_button.setVisible(not lost)
        self.copies_button.setVisible(lost)
        wants_words = lost and plan.next is Step.BEGIN
        if wants_words and self.words.isHidden():
            self.words.draw()
        self.words.setVisible(wants_words)
        if not wants_words:
            self.words.forget()
        self._judge()

    def _judge(self) -> None:
        plan, seen = self.plan, self._seen
        if plan is None or seen is None:
            return
        able = not seen.read_only and not self._busy
        begins, lost = plan.next is Step.BEGIN, self._cause() is Cause.LOST
        if begins:
            self.commit.say(self.tr("&Make a new CA beside it") if lost else self.tr("&Begin with the next CA"))
        elif not lost and plan.cause is Cause.PLANNED:
            self.commit.say(self.tr("&Go on as after a theft"))
        else:
            self.commit.say(self.tr("&Go on with the next CA"))
        self.commit.setEnabled(able and not (begins and lost and self.words.secret() is None))

    # Deeds

    def go_on(self) -> None:
        """Begin with new words, turn what is underway, or lead to the page on which the steps are taken."""
        plan = self.plan
        if plan is None or not self.commit.isEnabled():
            return
        self.trouble.hide()
        cause, secret = self._cause(), self.words.secret()
        if plan.next is Step.BEGIN and cause is Cause.LOST:
            if secret is not None:
                self._begin(secret)
        elif plan.next is not Step.BEGIN and cause is Cause.STOLEN and plan.cause is Cause.PLANNED:
            self._busy = True
            self._errands.succession_stolen(self, self._done, self._failed)
        else:
            self._ways.succession_for.emit(cause.value)
        self._judge()

    def _begin(self, secret: Secret[str]) -> None:
        self._busy = True
        self._errands.begin_succession(secret, Cause.LOST, self, self._done, self._failed)

    def _done(self, _changes: Changes) -> None:
        self._busy = False
        self.words.forget()
        self._ways.succession_for.emit(self._cause().value)

    def _failed(self, error: HearthkeyError) -> None:
        self._busy = False
        self.trouble.speak(mended(error))
        self.trouble.show()
        announce(self, self.trouble.text())
        self._judge()

    def opened(self) -> None:
        """Forget what the last visit of this page said."""
        self.trouble.hide()
