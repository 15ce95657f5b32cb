"""Renewing: which devices, for how long both passes get in, and how far the round has come."""

from __future__ import annotations

from itertools import pairwise

from PySide6.QtCore import Qt, QTimer
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QHBoxLayout, QWidget

from hearthkey.core.errors import HearthkeyError
from hearthkey.core.plans import Changes, RenewPlan
from hearthkey.core.renewal import OVERLAP_DAYS
from hearthkey.core.sentences import renewal as sentences
from hearthkey.services.renewing import Round
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.announcing import announce
from hearthkey.ui.controls.buttons import Button, Kind
from hearthkey.ui.controls.fields import Labelled, Line
from hearthkey.ui.controls.labels import Prose, Rule
from hearthkey.ui.drawer.page import Page, inset
from hearthkey.ui.drawer.renew_rows import RenewRows
from hearthkey.ui.drawer.unlock import UnlockRow
from hearthkey.ui.drawer.visits import Visits
from hearthkey.ui.errands import Errands
from hearthkey.ui.pages.fold import Fold
from hearthkey.ui.text import mended, said, spoken
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.ways import Ways

PAUSE = 150
"""Milliseconds without a key or a click before what follows is worked out again."""


class RenewPage(Page):
    """A round of one device or of many; it can be stopped between two of them, and taken up again."""

    def __init__(self, theme: Theme, errands: Errands, ways: Ways, parent: QWidget | None = None) -> None:
        super().__init__(theme, self.tr("Renew"), parent=parent)
        self._errands, self._ways = errands, ways
        self._asked = 0
        self._round: Round | None = None
        self._ahead: list[RenewPlan] = []
        self._made: list[str] = []
        self._running = self._stopping = False
        self._pause = QTimer(self, singleShot=True, interval=PAUSE)
        self._pause.timeout.connect(self.look)
        self.rows = RenewRows(theme)
        self.due_button = Button(theme, self.tr("Tick what ends soon"), kind=Kind.WORD, height=26)
        self.overlap = Line(theme, str(OVERLAP_DAYS))
        self.visits = Visits(theme, errands)
        self.visits_fold = Fold(theme, self.tr("Visits…"), self.visits)
        self.voice = Prose(theme, Role.BODY)
        self.outcome = Prose(theme, Role.BODY)
        self.trouble = Prose(theme, Role.BODY, color="act")
        self.unlock = UnlockRow(theme, errands)
        self.step = Prose(theme, Role.STATE, color="ink2")
        self.commit = Button(theme, "", kind=Kind.COMMIT, hint=self.tr("Ctrl+Enter"), height=34)
        self.stop = Button(theme, self.tr("Stop after this one"), height=34)
        self.desk = Button(theme, self.tr("Hand them over at the desk"), kind=Kind.COMMIT, height=34)
        self.aside = Button(theme, self.tr("Put aside"), hint="Esc", height=34)
        self._arrange()
        self._connect()
        self.follow(errands.seen, self.show_snapshot)

    def _arrange(self) -> None:
        what = self.tr(
            "A new key; to the gateway the device stays the same. The old pass goes once the new one was seen to get "
            "in, and not before."
        )
        self.body.setSpacing(10)
        self.put(Prose(self.theme, Role.STATE, what, color="ink2"), self.outcome, self.voice)
        self.body.addWidget(self.rows)
        self.body.addWidget(self.due_button, 0, Qt.AlignmentFlag.AlignLeft)
        self.body.addSpacing(-10)
        self.body.addWidget(self.visits_fold)
        self.put(Rule(self.theme, color="rule"))
        question, hint = self.tr("Days that both get in, at most"), self.tr("Never beyond the old one’s end.")
        self.body.addWidget(Labelled(self.theme, question, self.overlap, hint=hint))
        self.body.addStretch(1)
        self.show_foot()
        for part in (self.trouble, self.step):
            self.foot.addLayout(inset(part))
        self.foot.addWidget(self.unlock)
        row = QHBoxLayout()
        row.setSpacing(4)
        for button in self._row():
            row.addWidget(button)
        row.addStretch(1)
        self.foot.addLayout(row)

    def _connect(self) -> None:
        self.rows.changed.connect(self._changed)
        self.overlap.textChanged.connect(self._changed)
        self.due_button.clicked.connect(lambda: self.rows.take(self.rows.due()))
        self.visits.chosen.connect(lambda person: self.rows.take(self.rows.of(person)))
        self.commit.clicked.connect(self.go_on)
        self.stop.clicked.connect(self._stop)
        self.desk.clicked.connect(lambda: self._ways.desk.emit(tuple(self._made)))
        self.aside.clicked.connect(self.leave)
        self.unlock.opened.connect(self._go)
        for keys in ("Ctrl+Return", "Ctrl+Enter"):
            shortcut = QShortcut(QKeySequence(keys), self)
            shortcut.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
            shortcut.activated.connect(self.go_on)
        self._look_over()

    def _order(self) -> None:
        """Boxes that came anew stand behind everything else for Qt, and belong before it."""
        visits = [self.visits.person, self.visits.day, self.visits.keep]
        after = [self.due_button, self.visits_fold.button, *self.visits.buttons, *visits, self.overlap]
        foot = [self.unlock.line, self.unlock.show_button, self.unlock.unlock_button, *self._row()]
        for before, behind in pairwise([self.close_button, *self.rows.ticks.values(), *after, *foot]):
            QWidget.setTabOrder(before, behind)

    def _row(self) -> list[QWidget]:
        return [self.commit, self.stop, self.desk, self.aside]

    def first(self) -> QWidget:
        """The first box, or what can be done where there is none."""
        return next(iter(self.rows.ticks.values()), super().first())

    def begin(self, identity: str) -> None:
        """Be about one device, or with none about a round; a round that is under way goes on."""
        if self._running:
            return
        self._made = []
        self.outcome.speak("")
        self.trouble.speak("")
        self.unlock.forget()
        if self._errands.last is not None:
            self.visits.show_snapshot(self._errands.last)
        self.rows.begin(identity, self._errands.last)
        self._order()
        self._changed()

    def show_snapshot(self, snapshot: Snapshot) -> None:
        """Show who can be renewed now; while a round is under way, only that it goes on."""
        self.visits.show_snapshot(snapshot)
        if not self._running:
            self.rows.show_snapshot(snapshot)
            self._order()
            self._look_over_at(snapshot)

    # What follows

    def _changed(self) -> None:
        self._asked += 1
        self._round = None
        self.trouble.speak("")
        if self.rows.ticked():
            self._pause.start()
        else:
            self._pause.stop()
        self.voice.speak("" if self._made else self.tr("Nothing is ticked."))
        self._look_over()

    def _days(self) -> int:
        """What was typed as a number; 0, which the household refuses, where it is none."""
        text = self.overlap.text().strip()
        return int(text) if text.isascii() and text.isdigit() and len(text) < 6 else 0

    def look(self) -> None:
        """Ask what would follow of what is chosen."""
        self._pause.stop()
        self._asked += 1
        number = self._asked

        def planned(found: Round) -> None:
            if number == self._asked:
                self._round = found
                self.voice.speak(said(sentences.round_of(found.plans)))
                announce(self.voice, self.voice.text())
                self._look_over()

        def refused(error: HearthkeyError) -> None:
            if number == self._asked:
                self._refused(error)

        self._errands.preview_round(self.rows.ticked(), self._days(), self, planned, refused)

    def _refused(self, error: HearthkeyError) -> None:
        self.trouble.speak(mended(error))
        announce(self, mended(error))
        self._look_over()

    def _look_over(self) -> None:
        seen = self._errands.last
        if seen is not None:
            self._look_over_at(seen)

    def _look_over_at(self, snapshot: Snapshot) -> None:
        count = len(self.rows.ticked())
        self.commit.say(self.tr("Renew it") if count == 1 else self.tr("Renew {count}").format(count=count))
        self.commit.setVisible(not self._running and (count > 0 or not self._made))
        self.commit.setEnabled(self._round is not None and not snapshot.read_only)
        self.stop.setVisible(self._running)
        self.stop.setEnabled(not self._stopping)
        self.desk.setVisible(bool(self._made) and not self._running)
        self.rows.allow(able=not self._running)
        self.overlap.setEnabled(not self._running)
        for part in (self.voice, self.outcome, self.trouble):
            part.setVisible(bool(part.text()))
        self.step.setVisible(self._running and bool(self.step.text()))

    # Making it

    def go_on(self) -> None:
        """Begin; where the household is locked, ask for the passphrase and go on by itself."""
        seen = self._errands.last
        if self._running or self._round is None or seen is None or seen.read_only:
            return
        if not seen.locked:
            self._go()
        elif self.unlock.isHidden():
            self.unlock.ask()
        else:
            self.unlock.unlock()

    def _go(self) -> None:
        if self._round is None or self._running:
            return
        self._ahead, self._made = list(self._round.plans), []
        self._running, self._stopping = True, False
        self.outcome.speak("")
        self._next()

    def _next(self) -> None:
        if not self._ahead or self._stopping:
            self._over()
            return
        done, count = len(self._made) + 1, len(self._made) + len(self._ahead)
        told = self.tr("{title}, {done} of {count}")
        self.step.speak(told.format(title=spoken(self._ahead[0].old.title), done=done, count=count))
        announce(self.step, self.step.text())
        self._look_over()
        self._errands.renew(self._ahead[0], self, self._one, self._failed)

    def _one(self, changes: Changes) -> None:
        self._ahead.pop(0)
        self._made += changes.serials
        self._next()

    def _failed(self, error: HearthkeyError) -> None:
        self._over()
        if error.code == "household-locked":
            self.unlock.ask()
        else:
            self._refused(error)

    def _stop(self) -> None:
        self._stopping = True
        self._look_over()

    def _over(self) -> None:
        self._running = False
        seen = self._errands.last
        made = set(self._made)
        titles = [] if seen is None else [spoken(one.title) for one in seen.passes if one.serial in made]
        self.step.speak("")
        if seen is not None:
            self.rows.show_snapshot(seen)
        self.rows.take([one.old.identity for one in self._ahead])
        told = [said(sentences.round_done(titles))] if titles else []
        if self._ahead:
            told.append(said(sentences.round_left([one.old.title for one in self._ahead])))
        self.outcome.speak(" ".join(told))
        announce(self.outcome, self.outcome.text())
        self._look_over()
        self._errands.round_over()
        (self.desk if self._made else self.aside).setFocus()
