"""Where a template is written: its text, its slots, whose values they show, and what comes of it."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from hearthkey.core.passes import Pass, State
from hearthkey.core.slot_list import Listed
from hearthkey.core.templates import DEVICE, GATEWAY
from hearthkey.services import looking
from hearthkey.services.snapshot import Snapshot
from hearthkey.services.templating import Shown
from hearthkey.ui.announcing import announce
from hearthkey.ui.controls.buttons import Button, Kind
from hearthkey.ui.controls.fields import Labelled
from hearthkey.ui.controls.labels import Prose, Rule
from hearthkey.ui.drawer.combo import Combo
from hearthkey.ui.drawer.page import inset
from hearthkey.ui.drawer.template_slots import SlotList, as_written
from hearthkey.ui.drawer.template_text import Boxed, NumberedText
from hearthkey.ui.resources import resource
from hearthkey.ui.text import caution, spoken
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme

NOBODY = "nobody"
"""Key for a device's template that shows marks in place of a device."""


def starting_text(of: str) -> str:
    """A text to begin with, for a program that was made up."""
    return resource("templates", f"start-{of}.txt").decode("utf-8")


class TemplateBench(QWidget):
    """The lower part of the page.

    Args:
        file: how the file is named, which stands over what goes into it.

    Signals:
        typed: the text is another.
        turned_to: other values are wanted: the serial of a pass, or empty for marks.
        as_kept: what was typed since it was kept is to go.
    """

    typed = Signal()
    turned_to = Signal(str)
    as_kept = Signal()

    def __init__(self, theme: Theme, file: QWidget, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._of = GATEWAY
        self._passes: tuple[Pass, ...] | None = None
        self.text = NumberedText(theme, self.tr("Text"))
        self.begin = Button(theme, self.tr("Begin with an example"), kind=Kind.WORD, height=20)
        self.undo = Button(theme, self.tr("As it was kept"), kind=Kind.WORD, height=20)
        self.device = Combo(theme, self.tr("With the values of"))
        self.whose = Labelled(theme, self.tr("With the values of"), self.device)
        self.slots = SlotList(theme)
        self.caution = Prose(theme, Role.BODY, strong=Role.BODY_STRONG)
        self.result = NumberedText(theme, self._result_head(), lines=12)
        self.result.setReadOnly(True)
        self._lay_out(file)
        self._connect()

    def _lay_out(self, file: QWidget) -> None:
        self.offers = QWidget()
        offers = QHBoxLayout(self.offers)
        offers.setContentsMargins(0, 0, 0, 0)
        offers.addWidget(self.begin)
        offers.addWidget(self.undo)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(8)
        column.addWidget(Labelled(self._theme, self.tr("Text"), Boxed(self._theme, self.text), beside=self.offers))
        column.addWidget(self.whose)
        boxed = Boxed(self._theme, self.slots)
        hint = self.tr("Enter or a click puts one where the cursor is.")
        column.addWidget(Labelled(self._theme, self.tr("Slots, with what stands in them today"), boxed, hint=hint))
        column.addLayout(inset(Rule(self._theme, color="rule")))
        column.addWidget(file)
        column.addLayout(inset(self.caution))
        self._result = Labelled(self._theme, self._result_head(), Boxed(self._theme, self.result))
        column.addWidget(self._result)
        for part in (self.caution, self.undo, self.whose):
            part.hide()

    def _connect(self) -> None:
        self.text.textChanged.connect(self._typed)
        self.begin.clicked.connect(self._begin)
        self.undo.clicked.connect(self.as_kept)
        self.slots.taken.connect(self._put)
        self.device.activated.connect(lambda _row: self.turned_to.emit(self.serial() or ""))

    def controls(self) -> list[QWidget]:
        """What the Tab key stops at, from top to bottom."""
        return [self.begin, self.undo, self.text, self.device, self.slots]

    def _result_head(self) -> str:
        return self.tr("What it would write, secrets hidden")

    # What is written

    def offer_undo(self, *, offered: bool) -> None:
        """Offer the kept text again, where what is typed differs from it."""
        self.undo.setVisible(offered)

    def _typed(self) -> None:
        self.begin.setVisible(not self.text.text().strip())
        self.typed.emit()

    def _begin(self) -> None:
        self.text.replace(starting_text(self._of))
        self.text.setFocus()
        announce(self, self.tr("An example stands in the text. Write it over."))

    def _put(self, name: str) -> None:
        self.text.put(as_written(name))
        self.text.setFocus()
        announce(self, self.tr("{name} was put into the text").format(name=name))

    # Whose values

    def turn(self, of: str) -> None:
        """Be about the gateway or about devices."""
        self._of = of
        self.whose.setVisible(of == DEVICE)

    def show_snapshot(self, snapshot: Snapshot) -> None:
        """Offer the devices that are let in, each by its newest pass; the choice stays where it can."""
        if snapshot.passes == self._passes:
            return
        self._passes = snapshot.passes
        before = self.device.key()
        newest = {one.identity: one for one in looking.living(snapshot.passes, snapshot.at)}
        words = sorted((self._words(one, snapshot), one.serial) for one in newest.values())
        self.device.offer([(NOBODY, self.tr("nobody yet: marks")), *((serial, title) for title, serial in words)])
        self.device.take(before)
        if self.device.currentIndex() < 0:
            self.device.take(NOBODY)

    def _words(self, one: Pass, snapshot: Snapshot) -> str:
        waits = one.state(snapshot.at) is State.WAITING
        return self.tr("{title}, waiting").format(title=spoken(one.title)) if waits else spoken(one.title)

    def serial(self) -> str | None:
        """Whose values are shown; None for the gateway, or for marks."""
        key = self.device.key()
        return key if self._of == DEVICE and key not in {"", NOBODY} else None

    def show_slots(self, slots: tuple[Listed, ...]) -> None:
        """List the slots."""
        self.slots.slots_shown.show_slots(slots)

    # What comes of it

    def show_result(self, shown: Shown | None) -> None:
        """Show what it would write; None where there is nothing to show."""
        self.doubt(None)
        if shown is None:
            self.result.clear()
            self.caution.hide()
            return
        if shown.text != self.result.text():
            place = self.result.verticalScrollBar().value()
            self.result.show_text(shown.text)
            self.result.verticalScrollBar().setValue(place)
        warned = " ".join(caution(one) for one in shown.cautions)
        if warned and self.caution.isHidden():
            announce(self, warned)
        self.caution.speak(warned, stressed=self.tr("Not sealed."))
        self.caution.setVisible(bool(warned))

    def doubt(self, line: int | None) -> None:
        """Mark the line of a mistake, 0 where it has none, and say that the result is older; None takes both back."""
        self.text.mark(line or None)
        old = line is not None and bool(self.result.text())
        remark = self.tr("This is how it was before the mistake.") if old else ""
        self._result.remark(remark)
        self.result.setAccessibleDescription(remark)
