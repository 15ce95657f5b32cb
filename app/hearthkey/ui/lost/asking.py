"""The first half of "Lost or stolen": two letters, a choice, Enter."""

from __future__ import annotations

from functools import partial

from PySide6.QtCore import QTimer, Signal
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from hearthkey.core.errors import HearthkeyError
from hearthkey.core.plans import Changes, StopPlan
from hearthkey.core.sentences import plans
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.announcing import announce
from hearthkey.ui.controls.buttons import Button, Kind
from hearthkey.ui.controls.labels import Label, Rule, Voice
from hearthkey.ui.errands import Errands
from hearthkey.ui.lost.field import SearchField
from hearthkey.ui.lost.gate import Gate
from hearthkey.ui.lost.rows import MatchList
from hearthkey.ui.lost.search import MOST, Finder, Found, Match
from hearthkey.ui.lost.words import why_not
from hearthkey.ui.text import mended, said
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme

PAUSE = 80
"""Milliseconds without a key before the plan is asked for; Enter asks at once."""

INSET = 3
"""Controls keep this much room for their ring; text beside them is set in by as much."""


class Asking(QWidget):
    """Field, rows, sentence, button.

    Signals:
        stopped: StopPlan and Changes, once it is done.
    """

    stopped = Signal(object, object)

    def __init__(self, theme: Theme, errands: Errands, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._errands = errands
        self._snapshot: Snapshot | None = None
        self._finder: Finder | None = None
        self._match: Match | None = None
        self._plan: StopPlan | None = None
        self._wanted = ""
        self._busy = False
        self.field = SearchField(theme)
        self.rows = MatchList(theme)
        self.voice = Voice(theme)
        self.commit = Button(theme, "", kind=Kind.COMMIT, hint=self.tr("Enter"), height=40)
        self._aside = Label(theme, Role.STATE, color="ink2", wrap=True)
        self._trouble = Label(theme, Role.BODY, color="act", wrap=True)
        self.gate = Gate(theme, errands)
        self._pause = QTimer(self)
        self._pause.setSingleShot(True)
        self._pause.setInterval(PAUSE)
        self._lay_out()
        self._connect()
        self._choose(None)

    def _lay_out(self) -> None:
        self._over = Rule(self._theme)
        self._acts = QWidget()
        act = QHBoxLayout(self._acts)
        act.setContentsMargins(0, 0, INSET, 0)
        act.setSpacing(11)
        act.addWidget(self.commit)
        act.addWidget(self._aside, 1)
        inner = QVBoxLayout()
        inner.setContentsMargins(INSET, 0, INSET, 0)
        inner.setSpacing(0)
        inner.addWidget(self._over)
        inner.addWidget(self.rows)
        inner.addSpacing(18)
        inner.addWidget(self.voice)
        inner.addWidget(self._trouble)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self.field)
        column.addSpacing(10)
        column.addLayout(inner)
        column.addSpacing(13)
        column.addWidget(self._acts)
        column.addWidget(self.gate)
        self._trouble.hide()

    def _connect(self) -> None:
        self.field.textChanged.connect(self._search)
        self.field.moved.connect(self._move)
        self.field.returnPressed.connect(self.stop)
        self.rows.chosen.connect(self._choose)
        self.commit.clicked.connect(self.stop)
        self._pause.timeout.connect(self._preview)
        self._theme.changed.connect(self._dress)
        self._dress()

    def _dress(self) -> None:
        # Two lines are kept, so that nothing below jumps while a sentence is on its way.
        self.voice.setMinimumHeight(round(2 * self._theme.fonts.metrics(Role.VOICE).lineSpacing()) + 4)

    # What is there

    def show_snapshot(self, snapshot: Snapshot) -> None:
        """Search in another snapshot; nothing is looked at before somebody types."""
        self._snapshot, self._finder = snapshot, None
        if self.isVisible():
            self._search()

    def begin(self, text: str) -> None:
        """Put the cursor into the field; what was typed the last time stands there, marked."""
        if text:
            self.field.setText(text)
        self._busy, self._wanted = False, ""
        self.gate.forget()
        self._say_trouble("")
        self._search()
        self.field.setFocus()
        self.field.selectAll()

    def fit(self, spare: int) -> None:
        """Have the rows take no more than this many pixels more than now."""
        self.rows.fit(self.rows.height() + spare)

    def _found(self) -> Found | None:
        if self._snapshot is None:
            return None
        if self._finder is None:
            self._finder = Finder(self._snapshot.passes, self._snapshot.at)
        return self._finder.find(self.field.text())

    def _search(self) -> None:
        found = self._found()
        if found is None or self._snapshot is None:
            return
        typed = bool(self.field.text().strip())
        self._over.setVisible(bool(found.first))
        self.rows.setVisible(bool(found.first))
        self.field.say(self._count(found, typed=typed))
        self.rows.offer(found.first, self._snapshot.at)
        if not found.of:
            self.voice.setText(self.tr("Nobody has a pass yet, so nothing can be lost."))
        elif typed and not found.count:
            self.voice.setText(self.tr("No person and no device has these letters."))
        self.voice.setVisible(bool(found.first or self.voice.text()))

    def _count(self, found: Found, *, typed: bool) -> str:
        if not typed:
            return self.tr("{of} devices").format(of=found.of)
        if found.count > MOST:
            return self.tr("{first} of {count}; one more letter").format(first=MOST, count=found.count)
        return self.tr("{count} of {of} devices").format(count=found.count, of=found.of)

    # What is chosen

    def _move(self, step: int) -> None:
        self.rows.go(step)
        announce(self.field, self.rows.told())

    def _choose(self, match: Match | None) -> None:
        same = self._match is not None and match is not None and match.shown == self._match.shown
        self._match = match
        if same and self._plan is not None:
            return
        self._plan, self._wanted = None, ""
        self.gate.forget()
        self._say_trouble("")
        stoppable = match is not None and match.stoppable and not self._looking_only()
        self._acts.setVisible(stoppable)
        if match is None:
            self.voice.setText("")
        elif not match.stoppable:
            self.voice.setText(why_not(match.shown, match.state))
        elif self._looking_only():
            self.voice.setText(self.tr("Another copy of the app has this household open. Stop it there."))
        else:
            self.voice.setText("")
            self._offer(match)
            self._pause.start()
        self.voice.setVisible(bool(self.voice.text()) or stoppable)

    def _offer(self, match: Match) -> None:
        title = match.shown.title.replace("&", "&&")
        self.commit.say(self.tr("Stop {title}").format(title=title))
        if self.commit.sizeHint().width() > self._theme.px(420):
            self.commit.say(self.tr("Stop it"))
        self.commit.setAccessibleName(self.tr("Stop {title}").format(title=match.shown.title))
        back = self.tr("You can let it back in at any time.")
        locked = self._snapshot is not None and self._snapshot.locked
        self._aside.setText(self.tr("Asks for the passphrase.") + "\n" + back if locked else back)

    def _looking_only(self) -> bool:
        return self._snapshot is not None and self._snapshot.read_only

    def _preview(self) -> None:
        self._pause.stop()
        if self._match is not None and self._match.stoppable:
            identity = self._match.shown.identity
            self._errands.preview_stop(
                identity, self, partial(self._planned, identity), partial(self._failed, identity)
            )

    def _planned(self, identity: str, plan: StopPlan) -> None:
        if self._match is None or self._match.shown.identity != identity:
            return
        self._plan = plan
        self.voice.setText(said(plans.stop(plan)))
        self.voice.setVisible(True)
        if self._wanted == identity:
            self.stop()

    # Stopping

    def stop(self) -> None:
        """Stop what is chosen: at once, or as soon as its plan is here, or after the passphrase."""
        if self._match is None or not self._match.stoppable or self._looking_only() or self._busy:
            return
        identity = self._match.shown.identity
        if self._plan is None:
            self._wanted = identity
            self._preview()
        elif self._snapshot is not None and self._snapshot.locked:
            self._ask_first()
        else:
            self._busy, self._wanted = True, ""
            plan = self._plan
            self._errands.stop(plan, self, partial(self._done, plan), partial(self._failed, identity))

    def _ask_first(self) -> None:
        self._acts.hide()
        self.gate.ask(self.tr("The list has to be signed. With the passphrase it is done at once."), self._opened)

    def _opened(self) -> None:
        """Go on after the passphrase: by now the snapshot of the unlocked household may not have come yet."""
        self._acts.show()
        if self._plan is not None and self._match is not None:
            plan, identity = self._plan, self._match.shown.identity
            self._busy, self._wanted = True, ""
            self._errands.stop(plan, self, partial(self._done, plan), partial(self._failed, identity))

    def _done(self, plan: StopPlan, changes: Changes) -> None:
        self._busy = False
        self._plan = None
        self.stopped.emit(plan, changes)

    def _failed(self, identity: str, error: HearthkeyError) -> None:
        if self._match is None or self._match.shown.identity != identity:
            return
        self._busy, self._wanted = False, ""
        if error.code == "household-locked":
            self._ask_first()
            return
        self._say_trouble(mended(error))

    def _say_trouble(self, sentence: str) -> None:
        self._trouble.setText(sentence)
        self._trouble.setVisible(bool(sentence))
        announce(self, sentence)
