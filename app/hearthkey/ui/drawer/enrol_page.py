"""A new device, or a new pass for a known one: from the question whose it is to the bundle in the tray."""

from __future__ import annotations

from itertools import pairwise

from PySide6.QtCore import Qt, QTimer
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QAbstractButton, QHBoxLayout, QWidget

from hearthkey.core.errors import HearthkeyError
from hearthkey.core.passes import Pass
from hearthkey.core.plans import Changes, EnrolPlan
from hearthkey.core.sentences import plans
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui import kind_words
from hearthkey.ui.announcing import announce
from hearthkey.ui.controls.buttons import Button, Kind
from hearthkey.ui.controls.labels import Prose, Rule, Voice
from hearthkey.ui.drawer.enrol_form import EnrolForm
from hearthkey.ui.drawer.figures import Facts
from hearthkey.ui.drawer.page import Page, inset
from hearthkey.ui.drawer.unlock import UnlockRow
from hearthkey.ui.errands import Errands
from hearthkey.ui.text import caution, mended, said
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.signs import Sign
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.ways import Ways

PAUSE = 150
"""Milliseconds without a key press before what follows is worked out again."""


class EnrolPage(Page):
    """Asks, says what follows while it is typed, and makes the pass."""

    def __init__(self, theme: Theme, errands: Errands, ways: Ways, parent: QWidget | None = None) -> None:
        super().__init__(theme, "", parent=parent)
        self._errands = errands
        self._ways = ways
        self._asked = 0
        self._busy = False
        self._shown = False
        self._pause = QTimer(self, singleShot=True, interval=PAUSE)
        self._pause.timeout.connect(self._ask)
        self.form = EnrolForm(theme)
        self.voice = Voice(theme)
        self.facts = Facts(theme)
        self.warned = Prose(theme, Role.STATE, color="ink2")
        self.trouble = Prose(theme, Role.BODY, color="act")
        self.unlock = UnlockRow(theme, errands)
        self.step = Prose(theme, Role.STATE, color="ink2")
        self.commit = Button(theme, self.tr("Make the pass"), kind=Kind.COMMIT, hint=self.tr("Ctrl+Enter"), height=34)
        self.aside = Button(theme, self.tr("Put aside"), hint="Esc", height=34)
        self._arrange()
        self.form.changed.connect(self._changed)
        self.form.replace_wanted.connect(self._replace_named)
        self.commit.clicked.connect(self.go_on)
        self.aside.clicked.connect(self.leave)
        self.unlock.opened.connect(self._make)
        self.follow(errands.seen, self.show_snapshot)
        errands.step.connect(self._step)
        for keys in ("Ctrl+Return", "Ctrl+Enter"):
            shortcut = QShortcut(QKeySequence(keys), self)
            shortcut.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
            shortcut.activated.connect(self.go_on)
        self.start("")

    def _arrange(self) -> None:
        self.body.setSpacing(10)
        self.body.addWidget(self.form)
        self.put(Rule(self.theme, color="rule"), self.voice, self.warned, self.facts)
        self.body.addWidget(self.form.details)
        self.body.addStretch(1)
        self.show_foot()
        self.foot.addLayout(inset(self.trouble))
        self.foot.addWidget(self.unlock)
        self.foot.addLayout(inset(self.step))
        row = QHBoxLayout()
        row.setSpacing(4)
        row.addWidget(self.commit)
        row.addWidget(self.aside)
        row.addStretch(1)
        self.foot.addLayout(row)
        for part in (self.trouble, self.unlock, self.step, self.warned):
            part.hide()

    # Beginning

    def start(self, person: str) -> None:
        """Ask about a new device, of a person if one is named; what was typed is still there."""
        self.entitle(self.tr("A new device"))
        if self._errands.last is not None:
            self.show_snapshot(self._errands.last)
        self.form.be_new(person)
        self._changed()

    def replace(self, identity: str) -> None:
        """Ask about a new pass for a known device."""
        seen = self._errands.last
        found = [] if seen is None else [one for one in seen.passes if one.identity == identity]
        if seen is None or not found:
            return
        self._be_replacement(max(found, key=lambda one: one.not_before), seen)

    def _be_replacement(self, old: Pass, seen: Snapshot) -> None:
        self.entitle(self.tr("A new pass"), Sign.DRAFT)
        self.show_snapshot(seen)
        self.form.be_replacement(old)
        self._changed()

    def _replace_named(self) -> None:
        typed, seen = self.form.typed(), self._errands.last
        names = (" ".join(typed.person.split()).casefold(), " ".join(typed.device.split()).casefold())
        for one in reversed(() if seen is None else seen.passes):
            if seen is not None and (one.person.casefold(), one.device.casefold()) == names:
                self._be_replacement(one, seen)
                self.form.until.field.setFocus()
                return

    def show_snapshot(self, snapshot: Snapshot) -> None:
        """Learn of people who came; nothing that was typed is touched."""
        self.form.show_snapshot(snapshot)
        self._order()
        self.commit.setEnabled(not snapshot.read_only)

    def _order(self) -> None:
        """People who came have new segments, which Qt puts behind everything else."""
        for before, after in pairwise([self.close_button, *self.form.controls()]):
            QWidget.setTabOrder(before, after)

    def first(self) -> QWidget:
        """Whoever is chosen already, so that the arrow keys go on from there; with nobody known yet, the name."""
        if self.form.whose.nobody and self.form.whose.name.isVisibleTo(self):
            return self.form.whose.name
        chosen = [one for one in self.form.whose.controls() if isinstance(one, QAbstractButton) and one.isChecked()]
        return chosen[0] if chosen and chosen[0].isVisibleTo(self) else super().first()

    def opened(self) -> None:
        """The draft stands on the sheet again."""
        self._shown = True
        self._changed()

    def closed(self) -> None:
        """The draft leaves the sheet; what was typed stays here."""
        self._shown = False
        self._pause.stop()
        self._ways.draft.emit("", "", None)

    # While it is typed

    def _changed(self) -> None:
        self._asked += 1
        typed = self.form.typed()
        if self._shown:
            self._ways.draft.emit(typed.person.strip(), typed.device.strip(), typed.ends)
        self.trouble.hide()
        if typed.whole:
            self._pause.start()
            return
        self._pause.stop()
        self.form.settle()
        self.voice.speak(self.tr("Here it will say what follows, before anything is made."))
        self.voice.recolor("ink2")
        self.facts.hide()
        self.warned.hide()

    def _ask(self) -> None:
        self._asked += 1
        number = self._asked

        def planned(plan: EnrolPlan) -> None:
            if number == self._asked:
                self._planned(plan)

        def refused(error: HearthkeyError) -> None:
            if number == self._asked:
                self._refused(error)

        self._errands.preview_enrol(self.form.request(), self, planned, refused)

    def _planned(self, plan: EnrolPlan) -> None:
        self.form.settle()
        told = said(plans.enrol(plan))
        if told != self.voice.text():
            announce(self.voice, told)
        self.voice.recolor("ink")
        self.voice.speak(told)
        tell = self.facts.tell
        why = kind_words.why(plan.kind)
        if plan.key_set != plan.kind.key_set:
            why = self.tr("Chosen here instead of {name}.").format(name=plan.kind.key_set.name)
        tell("key", self.tr("key"), f"{plan.key_set.key_type} ({plan.key_set.name}).", why)
        if plan.identity is None:
            tell("identity", self.tr("known as"), self.tr("a code, so no name travels in clear"))
        else:
            tell("identity", self.tr("known as"), plan.identity, self.tr("as before"))
        tell("bundle", self.tr("bundle"), self.tr("waits in the tray under a passphrase"))
        self.facts.show()
        self.warned.speak("\n".join(caution(one) for one in plan.cautions))
        self.warned.setVisible(bool(plan.cautions))

    # Making it

    def go_on(self) -> None:
        """Make the pass; where the household is locked, ask for the passphrase and go on by itself."""
        seen = self._errands.last
        if self._busy or (seen is not None and seen.read_only):
            return
        field = self.form.missing()
        if field is not None:
            self._point_at(field)
        elif seen is not None and seen.locked and not self.unlock.isHidden():
            self.unlock.unlock()
        elif seen is not None and seen.locked:
            self.unlock.ask()
        else:
            self._make()

    def _make(self) -> None:
        if self._busy:
            return
        self._busy = True
        self._pause.stop()
        self._asked += 1
        self.trouble.hide()
        self._errands.enrol(self.form.request(), self, self._made, self._refused)

    def _made(self, _changes: Changes) -> None:
        self._busy = False
        self.unlock.forget()
        if self.form.replaces() is None:
            self.form.clear()
        shown, self._shown = self._shown, False  # a form that begins anew is no draft
        self.start("")
        self._shown = shown
        self._ways.draft.emit("", "", None)
        self._ways.back.emit()

    def _refused(self, error: HearthkeyError) -> None:
        making, self._busy = self._busy, False
        self.form.settle()
        if error.code == "household-locked":
            self.unlock.ask()
            return
        field = self.form.place(error)
        if field is None:
            self.trouble.speak(mended(error))
            self.trouble.show()
        announce(self, mended(error))
        if making and field is not None:
            self._point_at(field)

    def _point_at(self, field: QWidget) -> None:
        field.setFocus()
        self.roll.ensureWidgetVisible(field)
        announce(self, field.accessibleDescription())

    def _step(self, words: str) -> None:
        shown = bool(words) and self._busy
        self.step.speak(f"{words} …" if shown else "")
        self.step.setVisible(shown)
