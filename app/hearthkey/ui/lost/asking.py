"""The first half of "Lost or stolen": two letters, a choice, Enter."""

from __future__ import annotations

from PySide6.QtCore import QTimer, Signal
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from hearthkey.core.errors import HearthkeyError
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.announcing import announce
from hearthkey.ui.controls.buttons import Button, Kind
from hearthkey.ui.controls.labels import Label, Rule, Voice
from hearthkey.ui.errands import Errands
from hearthkey.ui.lost.field import SearchField
from hearthkey.ui.lost.gate import Gate
from hearthkey.ui.lost.losing import Losing
from hearthkey.ui.lost.rows import MatchList
from hearthkey.ui.lost.search import MOST, Finder, Found, Match
from hearthkey.ui.lost.words import why_not
from hearthkey.ui.text import mended, spoken
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme

PAUSE = 80
"""Milliseconds without a key before the plan is asked for; Enter asks at once."""

INSET = 3
"""Controls keep this much room for their ring; text beside them is set in by as much."""


class Asking(QWidget):
    """Field, rows, sentence, button.

    Signals:
        stopped: the plan and Changes, once it is done.
    """

    stopped = Signal(object, object)

    def __init__(self, theme: Theme, errands: Errands, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._errands = errands
        self._snapshot: Snapshot | None = None
        self._finder: Finder | None = None
        self._match: Match | None = None
        self.losing = Losing(errands, self)
        self.field = SearchField(theme)
        self.rows = MatchList(theme)
        self.voice = Voice(theme)
        self.commit = Button(theme, "", kind=Kind.COMMIT, hint=self.tr("Enter"), height=40)
        self.other = Button(theme, "", height=40)
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
        act.addWidget(self.other)
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
        self.other.clicked.connect(self._otherwise)
        self.losing.planned.connect(self._planned)
        self.losing.words_needed.connect(self._ask_first)
        self.losing.stopped.connect(self.stopped)
        self.losing.failed.connect(self._failed)
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
        self.losing.choose("" if self._match is None else self._match.shown.identity)
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
        if same and self.losing.plan is not None:
            return
        self.losing.choose("" if match is None else match.shown.identity)
        self.other.hide()
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
        title = spoken(match.shown.title).replace("&", "&&")
        self.commit.say(self.tr("Stop {title}").format(title=title))
        if self.commit.sizeHint().width() > self._theme.px(420):
            self.commit.say(self.tr("Stop it"))
        self.commit.setAccessibleName(self.tr("Stop {title}").format(title=spoken(match.shown.title)))
        self._explain()

    def _explain(self) -> None:
        """What Enter needs, and that it can be taken back."""
        losing = self.losing
        back = self.tr("You can let them back in at any time.")
        if not losing.besides:
            back = self.tr("You can let it back in at any time.")
        ready = self._snapshot is not None and self._snapshot.stoppable_locked
        if losing.besides:
            self.commit.say(self.tr("Stop them all"))
            self.commit.setAccessibleName(self.losing.sentence)
            self._say_other(self.tr("Only this one"), self.tr("Stop only this one; asks for the passphrase"))
            first = self.tr("No passphrase.")
        elif losing.needs_words or (self._locked() and not ready and losing.plan is None):
            first = self.tr("Asks for the passphrase.")
            if losing.everybody is not None:
                self._say_other(
                    self.tr("Everybody, for now"), self.tr("Stop everybody for now, without the passphrase")
                )
        else:
            first = self.tr("No passphrase: a spare stop list lies ready.") if self._locked() else ""
        self._aside.setText("\n".join(filter(None, [first, back])))

    def _say_other(self, text: str, name: str) -> None:
        self.other.say(text)
        self.other.setAccessibleName(name)
        self.other.show()

    def _locked(self) -> bool:
        return self._snapshot is not None and self._snapshot.locked

    def _looking_only(self) -> bool:
        return self._snapshot is not None and self._snapshot.read_only

    def _preview(self) -> None:
        self._pause.stop()
        if self._match is not None and self._match.stoppable:
            self.losing.preview()

    def _planned(self) -> None:
        self.voice.setText(self.losing.sentence)
        self.voice.setVisible(True)
        self._explain()

    # Stopping

    def stop(self) -> None:
        """Stop what is chosen: at once, or as soon as its plan is here, or after the passphrase."""
        if self._match is not None and self._match.stoppable and not self._looking_only():
            self._pause.stop()
            self.losing.stop()

    def _otherwise(self) -> None:
        if self.losing.besides:
            self.losing.stop_this_one()
        else:
            self.losing.stop_everybody()

    def _ask_first(self) -> None:
        self._acts.hide()
        self.gate.ask(self.tr("The list has to be signed. With the passphrase it is done at once."), self._opened)

    def _opened(self) -> None:
        self._acts.show()
        self.losing.go_on()

    def _failed(self, error: HearthkeyError) -> None:
        self._say_trouble(mended(error))

    def _say_trouble(self, sentence: str) -> None:
        self._trouble.setText(sentence)
        self._trouble.setVisible(bool(sentence))
        announce(self, sentence)
