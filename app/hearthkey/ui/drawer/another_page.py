"""Another device in the place of one: what it is called and what it is, and what becomes of the old one."""

from __future__ import annotations

from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QWidget

from hearthkey.core.errors import HearthkeyError
from hearthkey.core.families import HANDHELD, Family
from hearthkey.core.kinds import Kinds
from hearthkey.core.passes import LIVING
from hearthkey.core.plans import Changes, ReplacePlan
from hearthkey.core.sentences import renewal as sentences
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.announcing import announce
from hearthkey.ui.controls.fields import Labelled, Line
from hearthkey.ui.controls.labels import Prose, Voice
from hearthkey.ui.drawer.combo import Combo
from hearthkey.ui.drawer.commit_foot import CommitFoot
from hearthkey.ui.drawer.page import Page
from hearthkey.ui.errands import Errands
from hearthkey.ui.kind_words import words
from hearthkey.ui.text import mended, said, spoken
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.ways import Ways

PAUSE = 150
"""Milliseconds without a key before what follows is worked out again."""


class AnotherPage(Page):
    """One device at a time; what was typed for it stays."""

    def __init__(self, theme: Theme, errands: Errands, ways: Ways, parent: QWidget | None = None) -> None:
        super().__init__(theme, self.tr("Another device in its place"), parent=parent)
        self._errands, self._ways = errands, ways
        self._identity = ""
        self._asked = 0
        self._kinds: Kinds | None = None
        self._plan: ReplacePlan | None = None
        self._pause = QTimer(self, singleShot=True, interval=PAUSE)
        self._pause.timeout.connect(self.look)
        self.about = Prose(theme, Role.DEVICE, lines=1.4)
        self.label = Line(theme)
        self.kind = Combo(theme, self.tr("What is the new one?"))
        self.kind.setPlaceholderText(self.tr("choose"))
        self._called = Labelled(theme, self.tr("What is the new one called?"), self.label)
        self.voice = Voice(theme)
        self.tail = CommitFoot(theme, errands, self.tr("Replace it"))
        self.put(self.about)
        self.body.addWidget(self._called)
        self.body.addWidget(Labelled(theme, self.tr("What is the new one?"), self.kind))
        self.put(self.voice)
        self.body.addStretch(1)
        self.show_foot()
        self.foot.addWidget(self.tail)
        self.label.textChanged.connect(self._changed)
        self.kind.currentIndexChanged.connect(self._changed)
        self.tail.agreed.connect(self._do)
        self.tail.put_aside.connect(self.leave)
        self.follow(errands.seen, self.show_snapshot)

    def begin(self, identity: str) -> None:
        """Be about a device; its kind is proposed for the new one."""
        seen = self._errands.last
        found = [] if seen is None else [one for one in seen.passes if one.identity == identity]
        if seen is None or not found:
            return
        self.show_snapshot(seen)
        if identity != self._identity:
            self._identity = identity
            self.label.setText(self.tr("new {device}").format(device=found[-1].device)[:64])
            self.kind.take(seen.kinds.of(found[-1].kind).name)
        self.entitle(self.tr("In the place of {title}").format(title=spoken(found[-1].title)))
        alive = any(one.state(seen.at) in LIVING for one in found)
        self.about.speak(
            self.tr("It stops getting in at once, and for good as soon as the new one was seen to get in.")
            if alive
            else self.tr("It does not get in any more.")
        )
        self.tail.forget()
        self._changed()

    def show_snapshot(self, snapshot: Snapshot) -> None:
        """Learn which kinds of device there are."""
        kinds = snapshot.kinds
        if kinds is self._kinds:
            return
        self._kinds, chosen = kinds, self.kind.key()
        entries: list[tuple[str, str]] = []
        held = [one for one in kinds if one.family in HANDHELD]
        others = [one for one in kinds if one.family not in HANDHELD and one.family is not Family.UNKNOWN]
        rest = [one for one in kinds if one.family is Family.UNKNOWN]
        for head, members in (
            (self.tr("Phones and tablets"), held),
            (self.tr("Computers"), others),
            (self.tr("Neither"), rest),
        ):
            entries += [("", head), *((one.name, words(one)) for one in members)]
        self.kind.offer(entries)
        self.kind.take(chosen)

    def _changed(self, *_answer: object) -> None:
        self._asked += 1
        self._plan = None
        self.tail.ready(ready=False)
        self.tail.peace()
        self._called.trouble("")
        if self._identity and self.label.text().strip() and self.kind.key():
            self._pause.start()

    def look(self) -> None:
        """Ask what would follow of what is chosen."""
        self._pause.stop()
        self._asked += 1
        number = self._asked

        def planned(plan: ReplacePlan) -> None:
            if number == self._asked:
                self._plan = plan
                self.voice.speak(said(sentences.replace(plan)))
                announce(self.voice, self.voice.text())
                self.tail.ready(ready=True)

        def refused(error: HearthkeyError) -> None:
            if number == self._asked:
                self._refused(error)

        self._errands.preview_another(self._identity, self.label.text(), self.kind.key(), self, planned, refused)

    def _refused(self, error: HearthkeyError) -> None:
        if error.code.startswith("name-") or error.code in {"device-exists", "device-revoked"}:
            self.tail.busy = False
            self._called.trouble(mended(error))
            announce(self, mended(error))
        else:
            self.tail.refused(error)

    def _do(self) -> None:
        if self._plan is not None:
            self._errands.another(self._plan, self, self._done, self._refused)

    def _done(self, changes: Changes) -> None:
        self.tail.forget()
        self._identity = ""
        seen = self._errands.last
        made = None if seen is None else next((one for one in seen.passes if one.serial == changes.serials[0]), None)
        if made is not None:
            self._ways.device.emit(made.identity)
