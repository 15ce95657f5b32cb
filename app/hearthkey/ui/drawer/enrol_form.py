"""The questions about a new device, all of them answerable by anybody."""

from __future__ import annotations

from datetime import datetime
from typing import NamedTuple

from PySide6.QtCore import QSignalBlocker, Signal
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from hearthkey.core.errors import HearthkeyError
from hearthkey.core.families import HANDHELD, Family
from hearthkey.core.kinds import Kinds
from hearthkey.core.passes import Pass
from hearthkey.services.enrolling import EnrolRequest
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.controls.buttons import Button, Kind
from hearthkey.ui.controls.fields import Labelled, Line
from hearthkey.ui.controls.labels import Prose
from hearthkey.ui.drawer.combo import Combo
from hearthkey.ui.drawer.enrol_details import EnrolDetails
from hearthkey.ui.drawer.page import inset
from hearthkey.ui.drawer.until import Until
from hearthkey.ui.drawer.whose import Whose
from hearthkey.ui.kind_words import words
from hearthkey.ui.sight import sight
from hearthkey.ui.text import mended, spoken
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme


class Typed(NamedTuple):
    """What stands in the form."""

    person: str
    device: str
    kind: str
    ends: datetime
    guest: bool

    @property
    def whole(self) -> bool:
        """Whether everything has an answer, so that what follows can be said."""
        return bool(self.person.strip() and self.device.strip() and self.kind)


class EnrolForm(QWidget):
    """Whose, called what, what is it, until when; details folded.

    Signals:
        changed: any answer is another one.
        replace_wanted: the device that was named has a pass, and it is to get a new one.
    """

    changed = Signal()
    replace_wanted = Signal()

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._old: Pass | None = None
        self._kinds: Kinds | None = None
        self._names: list[Button] = []
        self.whose = Whose(theme)
        self.device = Line(theme)
        self.kind = Combo(theme, self.tr("What is it?"))
        self.kind.setPlaceholderText(self.tr("choose"))
        self.until = Until(theme)
        self.details = EnrolDetails(theme)
        self.replace_button = Button(theme, self.tr("A new pass for that one"), height=26)
        self.about = Prose(theme, Role.DEVICE, lines=1.4)
        self._called = Labelled(theme, self.tr("What is it called?"), self.device, beside=self._suggestions())
        self._what = Labelled(theme, self.tr("What is it?"), self.kind)
        self._arrange()
        self.whose.changed.connect(self._changed)
        self.device.textChanged.connect(self._changed)
        self.kind.currentIndexChanged.connect(self._changed)
        self.until.changed.connect(self._changed)
        self.details.changed.connect(self._changed)
        self.replace_button.clicked.connect(self.replace_wanted)
        self.be_new()

    def _offer_kinds(self, kinds: Kinds) -> None:
        """Offer the kinds in groups, and keep what was chosen."""
        if kinds is self._kinds:
            return
        self._kinds = kinds
        held = [one for one in kinds if one.family in HANDHELD]
        desks = [one for one in kinds if one.family not in HANDHELD and one.family is not Family.UNKNOWN]
        rest = [one for one in kinds if one.family is Family.UNKNOWN]
        entries: list[tuple[str, str]] = []
        for head, members in (
            (self.tr("Phones and tablets"), held),
            (self.tr("Computers"), desks),
            (self.tr("Neither"), rest),
        ):
            entries += [("", head), *((one.name, words(one)) for one in members)]
        chosen = self.kind.key()
        with QSignalBlocker(self.kind):
            self.kind.offer(entries)
            self.kind.take(chosen)

    def _suggestions(self) -> QWidget:
        found = QWidget()
        names = QHBoxLayout(found)
        names.setContentsMargins(0, 0, 0, 0)
        names.setSpacing(6)
        for word in (self.tr("phone"), self.tr("tablet"), self.tr("laptop")):
            button = Button(self._theme, word, kind=Kind.WORD, height=20)
            button.setAccessibleName(self.tr("Call it {name}").format(name=word))
            button.clicked.connect(lambda _on=False, taken=word: self.device.setText(taken))
            names.addWidget(button)
            self._names.append(button)
        return found

    def controls(self) -> list[QWidget]:
        """What the Tab key stops at, question by question; suggestions come after the field that they fill."""
        asked = [*self.whose.controls(), self.device, *self._names, self.replace_button, self.kind, self.until.field]
        return [*asked, *self.until.lengths.segments()]

    def _arrange(self) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(6)
        column.addLayout(inset(self.about))
        column.addWidget(self.whose)
        column.addWidget(self._called)
        column.addWidget(self.replace_button)
        column.addWidget(self._what)
        column.addWidget(self.until)

    def _changed(self, *_answer: object) -> None:
        self.replace_button.hide()
        self.until.begin(self.until.today, guest=self._guest())
        self.changed.emit()

    def show_snapshot(self, snapshot: Snapshot) -> None:
        """Learn who is there, and what day it is."""
        self.whose.offer(sight(snapshot).family)
        self._offer_kinds(snapshot.kinds)
        self.until.begin(snapshot.at.date(), guest=self._guest())

    def be_new(self, person: str = "") -> None:
        """Ask about a device that has no pass yet."""
        self._old = None
        if person:
            self.whose.take(person)
        self._show()

    def be_replacement(self, old: Pass) -> None:
        """Ask about a new pass for a known device: whose and which are settled."""
        self._old = old
        with QSignalBlocker(self.kind):
            self.kind.take(old.kind if self._kinds is None else self._kinds.of(old.kind).name)
        self.about.speak(self.tr("For {title}. It keeps its identity.").format(title=spoken(old.title)))
        self.until.begin(self.until.today, guest=old.guest)
        self._show()

    def replaces(self) -> Pass | None:
        """The pass that a new one takes over from."""
        return self._old

    def typed(self) -> Typed:
        """What stands in the form."""
        ends, kind, old = self.until.end(), self.kind.key(), self._old
        if old is not None:
            return Typed(old.person, old.device, kind, ends, old.guest)
        return Typed(self.whose.person(), self.device.text(), kind, ends, self.whose.guest())

    def request(self) -> EnrolRequest:
        """What is asked of the household."""
        typed = self.typed()
        return EnrolRequest(
            person=typed.person,
            device=typed.device,
            kind=typed.kind,
            ends=typed.ends,
            guest=typed.guest,
            key_set=self.details.key_set(),
            container=self.details.container(),
            replace=self._old is not None,
        )

    def clear(self) -> None:
        """Forget what was typed."""
        with QSignalBlocker(self.device), QSignalBlocker(self.kind):
            self.device.setText("")
            self.kind.take("")
        self.whose.clear()
        self.details.clear()
        self.until.reset()
        self.settle()

    def settle(self) -> None:
        """Nothing stands in the way any more."""
        for part in (self.whose, self._called, self._what, self.until, self.details):
            part.trouble("")
        self.replace_button.hide()

    def missing(self) -> QWidget | None:
        """Say at the first question without an answer that it wants one, and return its field."""
        typed = self.typed()
        if not typed.person.strip():
            self.whose.trouble(self.tr("Choose a person, or give a name."))
            return self.whose.name if self.whose.name.isVisibleTo(self) else self.whose.many
        if not typed.device.strip():
            self._called.trouble(self.tr("Give it a name that the family uses."))
            return self.device
        if not typed.kind:
            self._what.trouble(self.tr("Choose what it is; the key is made to fit."))
            return self.kind
        return None

    def place(self, error: HearthkeyError) -> QWidget | None:
        """Say a trouble at the field that it is about, and return that field; None for one about no field."""
        words = mended(error)
        code, what = error.code, str(error.facts.get("what", ""))
        if code.startswith("name-") and what == "person’s name":
            self.whose.trouble(words)
            return self.whose.name if self.whose.name.isVisibleTo(self) else self.whose.many
        if code.startswith("name-") or code in {"device-exists", "device-revoked", "device-unknown"}:
            self._called.trouble(words)
            self.replace_button.setVisible(code in {"device-exists", "device-revoked"})
            return self.device
        if code == "kind-unknown":
            self._what.trouble(words)
            return self.kind
        if code.startswith("end-"):
            self.until.trouble(words)
            return self.until.field
        if code in {"key-set-unknown", "container-unknown"}:
            self.details.unfold()
            self.details.trouble(words)
            return self.details.fold_button
        return None

    def _guest(self) -> bool:
        return self.whose.guest() if self._old is None else self._old.guest

    def _show(self) -> None:
        for part in (self.whose, self._called):
            part.setVisible(self._old is None)
        self.about.setVisible(self._old is not None)
        self.settle()
