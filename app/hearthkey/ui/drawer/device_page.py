"""A device: what it is, its life line, its facts, and what can be done with it."""

from __future__ import annotations

from datetime import datetime

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QHBoxLayout, QSizePolicy, QWidget

from hearthkey.core.errors import Refused
from hearthkey.core.keysets import key_set
from hearthkey.core.kinds import Kinds
from hearthkey.core.network import Caution
from hearthkey.core.passes import LIVING, Pass
from hearthkey.core.plans import Changes
from hearthkey.core.sentences.board import state_words
from hearthkey.services.looking import living
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.announcing import announce
from hearthkey.ui.controls.buttons import Button, Kind
from hearthkey.ui.controls.labels import Label, Prose, Rule
from hearthkey.ui.drawer.certificate_view import CertificateView
from hearthkey.ui.drawer.deed import Deed, Verb
from hearthkey.ui.drawer.device_words import DeviceWords, Step, device_words
from hearthkey.ui.drawer.figures import Facts, in_groups
from hearthkey.ui.drawer.life_line import LifeLine
from hearthkey.ui.drawer.naming_card import NamingCard
from hearthkey.ui.drawer.page import Page
from hearthkey.ui.drawer.stick_question import StickQuestion
from hearthkey.ui.drawer.stops import Stop, stops
from hearthkey.ui.drawer.succession import Succession, pair_of
from hearthkey.ui.drawer.two_lines import beside
from hearthkey.ui.errands import Errands
from hearthkey.ui.kind_words import looked_at, made_for
from hearthkey.ui.text import caution, said, spoken
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.signs import Sign
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.ways import Ways


class ActWord(Button):
    """A word that wants care: underlined, in the colour that is used for nothing else."""

    def _colors(self) -> tuple[str, str, str]:
        ground, edge, ink = super()._colors()
        return (ground, edge, "act" if self.isEnabled() else ink)


class DevicePage(Page):
    """One device at a time; the newest of its passes that lives, else the newest, is the one that is shown."""

    def __init__(self, theme: Theme, errands: Errands, ways: Ways, parent: QWidget | None = None) -> None:
        super().__init__(theme, "", parent=parent)
        self._errands = errands
        self._ways = ways
        self._identity = ""
        self._passes: list[Pass] = []
        self.sentence = Prose(theme, Role.DEVICE, lines=1.4, strong=Role.DATE_STRONG)
        self.note = Prose(theme, Role.STATE, color="ink2")
        self.deed = Deed(theme, errands)
        self.steps = self._steps()
        self.life = LifeLine(theme)
        self.facts = Facts(theme)
        self.certificate = CertificateView(theme, errands)
        self.stick = StickQuestion(theme, errands)
        self.naming = NamingCard(theme, errands)
        self.copies_button = Button(theme, self.tr("Copies that left…"), kind=Kind.WORD)
        self.succession = Succession(theme, errands)
        self.another_button = Button(theme, self.tr("Replace this device…"), kind=Kind.WORD)
        self.older = Prose(theme, Role.STATE, color="ink2", lines=1.5)
        self._build_body()
        self._build_foot()
        self.copies_button.clicked.connect(lambda: ways.copies.emit(self._identity))
        self.another_button.clicked.connect(lambda: ways.another.emit(self._identity))
        for answered in (self.stick.settled, self.naming.named):
            answered.connect(lambda: self.first().setFocus())
        self.follow(errands.seen, self.show_snapshot)
        self.deed.opened.connect(self._row.hide)
        self.deed.done.connect(self._done)
        self.deed.put_away.connect(self._back_to_steps)

    # Building

    def _steps(self) -> dict[Step, Button]:
        words = {
            Step.HAND_OVER: self.tr("Hand over"),
            Step.LET_IN: self.tr("Let back in"),
            Step.PROVE: self.tr("Prove it"),
            Step.ANEW: self.tr("A new pass"),
            Step.RENEW: self.tr("Renew…"),
        }
        found = {}
        for step, text in words.items():
            found[step] = Button(self.theme, text, kind=Kind.PLAIN)
            found[step].clicked.connect(lambda _on=False, taken=step: self._take(taken))
        return found

    def _build_body(self) -> None:
        self._row = QWidget()
        row = QHBoxLayout(self._row)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(2)
        for button in self.steps.values():
            row.addWidget(button)
        row.addStretch(1)
        life = Label(self.theme, Role.BODY_STRONG, self.tr("Life line"))
        self.life.setAccessibleName(life.text())
        self.body.setSpacing(10)
        self.put(self.sentence, self.note)
        self.body.addWidget(self.stick)
        self.body.addWidget(self.naming)
        self.body.addWidget(self.deed)
        self.body.addWidget(self._row)
        self.body.addWidget(self.succession)
        self.put(Rule(self.theme, color="rule"), life)
        self.body.addSpacing(-8)
        self.put(self.life, Rule(self.theme, color="rule"), self.facts)
        self.body.addWidget(self.certificate)
        for button in (self.copies_button, self.another_button):
            self.body.addWidget(button, 0, Qt.AlignmentFlag.AlignLeft)
        self.put(self.older)
        self.body.addStretch(1)
        self.note.hide()

    def _build_foot(self) -> None:
        self.stop_button = Button(self.theme, self.tr("Stop now"), kind=Kind.HEAVY, sign=Sign.STOPPED, height=32)
        self.beside = Prose(self.theme, Role.STATE, color="ink2")
        self.beside.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Preferred)
        self.revoke_button = ActWord(self.theme, self.tr("Revoke for good…"), kind=Kind.WORD)
        self.stop_button.clicked.connect(lambda: self._begin(Verb.STOP))
        self.revoke_button.clicked.connect(lambda: self._begin(Verb.REVOKE))
        row = QHBoxLayout()
        row.setSpacing(6)
        row.addWidget(self.stop_button)
        row.addWidget(self.beside, 1)
        row.addWidget(self.revoke_button, 0, Qt.AlignmentFlag.AlignRight)
        self.foot.addLayout(row)

    # Showing

    def show_device(self, identity: str) -> None:
        """Be about a device. About the same one, everything stays as it was left."""
        if identity != self._identity:
            self._identity = identity
            self.deed.forget()
            self.stick.forget()
            self.note.hide()
            self.certificate.fold()
            self.roll.verticalScrollBar().setValue(0)
        if self._errands.last is not None:
            self.show_snapshot(self._errands.last)

    def identity(self) -> str:
        """The device that is shown."""
        return self._identity

    def newest(self) -> Pass | None:
        """The newest of its passes, which is the one that is shown."""
        return self._passes[-1] if self._passes else None

    def show_snapshot(self, snapshot: Snapshot) -> None:
        """Show the device as it is now; one that is gone leaves the page as it was."""
        found = [one for one in snapshot.passes if one.identity == self._identity]
        if not found:
            return
        now = snapshot.at
        self._passes = sorted(found, key=lambda one: (one.state(now) in LIVING, one.not_before))
        newest = self._passes[-1]
        words = device_words(newest, now)
        self.entitle(spoken(newest.title), words.sign)
        self.naming.about(newest, read_only=snapshot.read_only)
        self.sentence.speak(said(words.rest), stressed=said(words.state))
        self.life.show_stops(self._stops(newest, snapshot), words.sign)
        self.life.setAccessibleDescription(f"{said(words.state)} {said(words.rest)}")
        self._offer(words, snapshot)
        self._tell_facts(newest, snapshot.kinds)
        self._tell_older(now)
        self.certificate.about(newest.serial)
        self.ask_about_copies()

    def _stops(self, shown: Pass, snapshot: Snapshot) -> tuple[Stop, ...]:
        found = stops(shown, snapshot.at, replaced=len(self._passes) > 1)
        old, new = pair_of(self._passes, snapshot)
        return found if old is None or new is not shown else beside(found, old, snapshot.at)

    def opened(self) -> None:
        """A stick may have been plugged in meanwhile."""
        self.ask_about_copies()

    def ask_about_copies(self) -> None:
        """Where a stick was written to, ask whether it was wiped; not while the page cannot be seen."""
        if self.isVisible() and self._identity:
            self._errands.copies(self._identity, self.stick, self.stick.show_copies)

    def _offer(self, words: DeviceWords, snapshot: Snapshot) -> None:
        focused = next((one for one in self.steps.values() if one.hasFocus()), None)
        for step, button in self.steps.items():
            button.setVisible(step is words.step or step in words.others)
            button.setEnabled(not snapshot.read_only)
            button.weigh(Kind.COMMIT if step is words.step else Kind.PLAIN)
        self._row.setVisible(self.deed.isHidden() and (words.step is not None or bool(words.others)))
        if focused is not None and not focused.isVisible():  # or Qt would scroll to whatever comes next
            self.first().setFocus()
            self.roll.verticalScrollBar().setValue(0)
        alive = living(self._passes, snapshot.at)
        self.succession.show_device(self._passes, snapshot)
        self.another_button.setVisible(bool(alive))
        self.another_button.setEnabled(not snapshot.read_only)
        self.stop_button.setVisible(words.stops)
        self.stop_button.setEnabled(not snapshot.read_only)
        self.revoke_button.setVisible(bool(alive))
        self.revoke_button.setEnabled(not snapshot.read_only)
        self.beside.setVisible(words.stops)
        if snapshot.read_only:
            self.beside.speak(self.tr("Another copy has the household open; this one only looks."))
        elif snapshot.locked and not snapshot.stoppable_locked:
            self.beside.speak(self.tr("asks for the passphrase, can be taken back"))
        else:
            self.beside.speak(self.tr("can be taken back"))
        self.show_foot(shown=bool(alive))

    def _tell_facts(self, one: Pass, kinds: Kinds) -> None:
        container = one.container
        tell = self.facts.tell
        tell("kind", self.tr("made for"), *made_for(kinds, one.kind))
        tell("checked", self.tr("last checked"), *looked_at(kinds, one.kind))
        tell("identity", self.tr("known as"), one.identity, self.tr("(travels in clear)"))
        tell("key", self.tr("key"), *self._key_words(one.key_set))
        tell(
            "container",
            self.tr("container"),
            self.tr("PKCS#12, {name}").format(name=container),
            self.tr("(AES-256)") if container == "strong" else self.tr("(3DES, for old importers)"),
        )
        tell("serial", self.tr("serial"), in_groups(one.serial))

    def _key_words(self, name: str) -> tuple[str, str]:
        try:
            kind = key_set(name).key_type
        except Refused:
            kind = self.tr("unknown type")
        return kind, self.tr("(key set {name})").format(name=name)

    def _tell_older(self, now: datetime) -> None:
        told = [self.tr("Older passes of this device:")] if len(self._passes) > 1 else []
        for one in reversed(self._passes[:-1]):
            word, fact = (said(part) for part in state_words(one, now))
            told.append(", ".join(part for part in (word, fact, in_groups(one.serial)) if part))
        self.older.speak("\n".join(told))
        self.older.setVisible(bool(told))

    # Doing

    def _take(self, step: Step) -> None:
        if step is Step.HAND_OVER:
            self._ways.hand_over.emit(self._passes[-1].serial)
        elif step is Step.LET_IN:
            self._begin(Verb.LET_IN)
        elif step is Step.PROVE:
            self._ways.prove.emit(self._passes[-1].serial)
        elif step is Step.RENEW:
            self._ways.renew.emit(self._identity)
        else:
            self._ways.replace_device.emit(self._identity)

    def begin_stop(self) -> None:
        """Stop it, as the button does."""
        self._begin(Verb.STOP)

    def begin_let_in(self) -> None:
        """Ask what letting it back in would do."""
        self._begin(Verb.LET_IN)

    def begin_revoke(self) -> None:
        """Ask why it is revoked."""
        self._begin(Verb.REVOKE)

    def _begin(self, verb: Verb) -> None:
        self.note.hide()
        self.deed.begin(verb, self._identity)
        self._row.setVisible(self.deed.isHidden() and any(not one.isHidden() for one in self.steps.values()))
        self.roll.verticalScrollBar().setValue(0)

    def _done(self, changes: Changes) -> None:
        told = [caution(one) for one in changes.cautions]
        if changes.list_number is not None:
            told.append(caution(Caution("not-in-force", str(changes.list_number))))
        self.note.speak(" ".join(told))
        self.note.setVisible(bool(told))
        announce(self, " ".join(told))
        self._back_to_steps()

    def _back_to_steps(self) -> None:
        if self._errands.last is not None:
            self.show_snapshot(self._errands.last)
        self.first().setFocus()
        self.roll.verticalScrollBar().setValue(0)
