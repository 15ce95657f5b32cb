"""Prove it: one step at a time, what is on the screen now and what to say, until the device was seen to get in."""

from __future__ import annotations

from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QApplication, QHBoxLayout, QWidget

from hearthkey.core.errors import HearthkeyError
from hearthkey.core.families import Family
from hearthkey.core.home_addresses import HomeAddress
from hearthkey.core.passes import Pass
from hearthkey.core.proof_doors import Ending, Event, Happened
from hearthkey.core.sentences import proofs as words
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.announcing import announce
from hearthkey.ui.controls.buttons import Button, Kind
from hearthkey.ui.controls.labels import Label, Prose, Rule, Voice
from hearthkey.ui.drawer.page import Page
from hearthkey.ui.drawer.proof_card import ProofCard
from hearthkey.ui.drawer.proof_door import ProofPlace
from hearthkey.ui.drawer.proof_steps import Stage, step_words
from hearthkey.ui.drawer.proof_told import ProofTold
from hearthkey.ui.errands import Errands
from hearthkey.ui.proof_errands import ShownProof
from hearthkey.ui.states import sign_of
from hearthkey.ui.text import mended, said, spoken
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme

_BEAT = 250
"""Milliseconds between two looks at the door."""


class ProofPage(Page):
    """Leads through the steps. The door stands open from the third one on, and is shut with the page."""

    def __init__(self, theme: Theme, errands: Errands, parent: QWidget | None = None) -> None:
        super().__init__(theme, "", parent=parent)
        self._errands = errands
        self._one: Pass | None = None
        self._stage = Stage.WIFI
        self._open = self._hearing = False
        self._able = True
        self._proved = False
        self.result = Voice(theme)
        self.after = Prose(
            theme, Role.BODY, self.tr("Wi-Fi may be switched on again. The sheet shows the day from now on.")
        )
        self.count = Label(theme, Role.STATE, color="ink2")
        self.head = Prose(theme, Role.PERSON)
        self.sees = Prose(theme, Role.BODY)
        self.say = Prose(theme, Role.DEVICE, lines=1.35)
        self.card = ProofCard(theme)
        self.place = ProofPlace(theme)
        self.back_button = Button(theme, self.tr("&Back"), height=34)
        self.next_button = Button(theme, self.tr("&Next"), kind=Kind.COMMIT, height=34)
        self.again_button = Button(theme, self.tr("&Open a new link"), height=34)
        self.done_button = Button(theme, self.tr("&Done"), kind=Kind.COMMIT, height=34)
        self.told = ProofTold(theme, errands)
        self._beat = QTimer(self, interval=_BEAT)
        self._beat.timeout.connect(self.look)
        self._build()
        self.follow(errands.seen, self.show_snapshot)

    def _build(self) -> None:
        self.body.setSpacing(8)
        self.body.addWidget(self.told)
        self.put(self.result, self.after, self.count, self.head)
        self._labels = [
            Label(self.theme, Role.STATE, self.tr("On the screen then"), color="ink2"),
            Label(self.theme, Role.STATE, self.tr("What to say"), color="ink2"),
        ]
        self.put(self._labels[1], self.say)
        self.put(self._labels[0], self.sees)
        self.body.addWidget(self.card)
        row = QHBoxLayout()
        row.setSpacing(4)
        for button in (self.next_button, self.back_button, self.again_button, self.done_button):
            row.addWidget(button)
        row.addStretch(1)
        self.body.addLayout(row)
        self._rule = Rule(self.theme, color="rule")
        self.put(self._rule)
        self.body.addWidget(self.place)
        self.body.addStretch(1)
        self.foot.addWidget(self.told.begin)
        self.told.asking.connect(self._turn_to_told)
        self.next_button.clicked.connect(lambda: self.go(Stage(min(self._stage + 1, Stage.READ))))
        self.back_button.clicked.connect(lambda: self.go(Stage(max(self._stage - 1, Stage.WIFI))))
        self.again_button.clicked.connect(self.open_door)
        self.done_button.clicked.connect(self.leave)
        self.card.longer.connect(self._longer)
        self.place.changed.connect(self._moved)
        self.told.done.connect(lambda: self._prove(self.tr("Written down, as it was told.")))

    # What is

    def show_pass(self, one: Pass) -> None:
        """Begin with a pass, at the first step."""
        self._shut()
        self._one = one
        self.told.show_pass(one)
        self.place.forget()
        self._say("")
        self.go(Stage.WIFI)
        if self._errands.last is not None:
            self.show_snapshot(self._errands.last)

    def serial(self) -> str:
        """The pass that is being proved."""
        return "" if self._one is None else self._one.serial

    def stage(self) -> Stage:
        """The step that is shown."""
        return self._stage

    def show_snapshot(self, snapshot: Snapshot) -> None:
        """Show whose it is, and how it stands by now."""
        found = next((one for one in snapshot.passes if one.serial == self.serial()), None)
        if found is None:
            return
        self._one = found
        self.entitle(self.tr("Prove {title}").format(title=spoken(found.title)), sign_of(found, snapshot.at))
        self.place.show_snapshot(snapshot)
        able = not snapshot.read_only and found.gets_in(snapshot.at)
        self._able = able
        self._show_foot()

    def _show_foot(self) -> None:
        self.show_foot(shown=self._able and self.done_button.isHidden() and not self.told.asks)

    def _turn_to_told(self) -> None:
        """While it is asked whether to write down what was told, nothing else is."""
        self._arrange(proved=self._proved)
        self.roll.verticalScrollBar().setValue(0)

    # Step by step

    def _family(self) -> Family:
        """Of the device's system."""
        last = self._errands.last
        return Family.UNKNOWN if self._one is None or last is None else last.kinds.of(self._one.kind).family

    def go(self, stage: Stage) -> None:
        """Show a step; the third one opens the door."""
        self._stage = stage
        spoken = step_words(stage, self._family())
        self.count.setText(self.tr("Step {number} of {count}").format(number=stage + 1, count=len(Stage)))
        self.head.speak(spoken.head)
        self.sees.speak(spoken.sees)
        self.say.speak(spoken.say)
        self._arrange(proved=False)
        if stage >= Stage.LINK and not self._open:
            self.open_door()
        announce(self, f"{self.count.text()}: {spoken.head}. {spoken.say}")

    def _arrange(self, *, proved: bool) -> None:
        self._proved = proved
        leads = not proved and not self.told.asks
        at_the_door = self._stage >= Stage.LINK and leads
        for part in (self.count, self.head, self.sees, self.say, *self._labels):
            part.setVisible(leads)
        self.card.setVisible(at_the_door and self._open)
        self.place.setVisible(at_the_door and self.place.wanted)
        self._rule.setVisible(self.place.isVisibleTo(self))
        focus = QApplication.focusWidget()
        self.after.setVisible(proved)
        self.done_button.setVisible(proved)
        self.again_button.setVisible(at_the_door and not self._open)
        self.next_button.setVisible(leads and self._stage is not Stage.READ)
        self.back_button.setVisible(leads and self._stage is not Stage.WIFI)
        self._show_foot()
        if focus in {self.next_button, self.back_button, self.again_button} and not focus.isVisibleTo(self):
            self.first_step().setFocus()

    def first_step(self) -> QWidget:
        """The button that leads on from here."""
        rows = (self.done_button, self.next_button, self.again_button, self.back_button)
        return next((one for one in rows if one.isVisibleTo(self)), self.told.not_yet)

    # The door

    def open_door(self) -> None:
        """Open a door, or another one in its place."""
        if self._one is None:
            return
        self._say("")
        self._errands.proof_addresses(self, self._addressed, self._refused)
        address, inside = self.place.chosen()
        self._errands.open_proof(self.serial(), address, inside, self, self.stand_open, self._refused)

    def _addressed(self, found: tuple[HomeAddress, ...]) -> None:
        self.place.offer(found)

    def stand_open(self, shown: ShownProof) -> None:
        """Show a door that stands open; one that came too late is shut."""
        if not self.isVisible() and self._stage < Stage.LINK:
            self._shut()
            return
        self._open = True
        self.place.stand_at(shown)
        title = "" if self._one is None else spoken(self._one.title)
        self.card.show_link(shown.link, shown.code, self.tr("Code that {title} opens").format(title=title))
        self._beat.start()
        self.look()
        self._arrange(proved=False)

    def look(self) -> None:
        """Turn the clock, and hear what happened at the door."""
        if not self._open:
            return
        left = self._errands.proof_seconds
        if left is not None:
            self.card.show_seconds(left)
        if self._errands.proof_stirs and not self._hearing:
            self._hearing = True
            self._errands.hear_proof(self, self.hear, self._refused)

    def hear(self, heard: Event | None) -> None:
        """Show what happened at the door."""
        self._hearing = False
        if heard is None or self._one is None:
            return
        told = said(words.event(self._one.title, heard))
        if heard.ending is Ending.PROVED:
            self._prove(told)
        elif heard.what is Happened.CLOSED:
            self._say(told)
            self._close_door()
        else:
            self._say(told)
            self.look()

    def _prove(self, told: str) -> None:
        # The door is left to end by itself, so that a page that is loaded once more says the same once more.
        self._beat.stop()
        self._open = False
        if self._one is not None:
            self.told.show_pass(self._one)
        self._say(told)
        self._arrange(proved=True)
        self.done_button.setFocus()

    def _close_door(self) -> None:
        self._shut()
        self._arrange(proved=False)

    def _shut(self) -> None:
        self._beat.stop()
        self._errands.shut_proof()
        self._open = self._hearing = False

    def _longer(self) -> None:
        self._errands.extend_proof(self, lambda _until: self.look(), self._troubled)

    def _moved(self) -> None:
        if self._stage >= Stage.LINK:
            self.open_door()

    def _refused(self, error: HearthkeyError) -> None:
        self._close_door()
        self._troubled(error)

    def _troubled(self, error: HearthkeyError) -> None:
        self._hearing = False
        self._say(mended(error))

    def _say(self, told: str) -> None:
        self.result.setText(told)
        self.result.setVisible(bool(told))
        announce(self, told)

    def closed(self) -> None:
        """Nobody is answered once the page is shut."""
        self._shut()
        self._stage = Stage.WIFI
