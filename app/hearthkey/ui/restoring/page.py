"""Brings a household back on one page: the files, the passphrase, what is inside, and only then the button."""

from __future__ import annotations

from collections.abc import Sequence
from functools import partial
from pathlib import Path

from PySide6.QtCore import QEvent, Qt, QTimer, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from hearthkey.core.errors import HearthkeyError
from hearthkey.core.paper import Gathered
from hearthkey.core.plans import Changes
from hearthkey.services.restoring_inside import Inside
from hearthkey.ui.announcing import announce
from hearthkey.ui.controls.buttons import Button, Kind
from hearthkey.ui.controls.fields import Line
from hearthkey.ui.controls.labels import Prose
from hearthkey.ui.errands import Errands
from hearthkey.ui.pages.fold import Fold
from hearthkey.ui.pages.founding_words import Spot, spot_of, told
from hearthkey.ui.pages.page_head import PageHead
from hearthkey.ui.pages.pair import Pair
from hearthkey.ui.pages.tall import Tall
from hearthkey.ui.restore_errands import Opener, Source
from hearthkey.ui.restoring.drop_place import DropPlace, PickFiles, pick_files
from hearthkey.ui.restoring.inside_sheet import InsideSheet
from hearthkey.ui.restoring.openers import Openers
from hearthkey.ui.restoring.typed_lines import TypedLines
from hearthkey.ui.restoring.where_kept import WhereKept
from hearthkey.ui.text import spoken
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme


class RestorePage(QWidget):
    """The page.

    Args:
        start: where the first file dialog opens.
        key_folder: where key files would lie, for the caution.

    Signals:
        left: back to where it was opened from.
        gateway_wanted: the household is back, and its gateway is to be looked at; whether it came from paper.
    """

    left = Signal()
    gateway_wanted = Signal(bool)

    def __init__(
        self,
        theme: Theme,
        errands: Errands,
        start: Path,
        *,
        key_folder: str = "",
        pick: PickFiles = pick_files,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._theme, self._errands = theme, errands
        self._source = Source()
        self._opener: Opener | None = None
        self._busy, self._by_parts = False, False
        self.head = PageHead(theme, self.tr("Back"))
        self.form, self.tall = QWidget(), Tall(theme)
        self.drop = DropPlace(theme, start, pick=pick)
        self.typed = TypedLines(theme)
        self.by_hand = Fold(theme, self.tr("Type the lines of a paper"), self.typed)
        self.where = WhereKept(theme, key_folder)
        self.openers = Openers(theme, errands, start, pick=pick)
        self.line, self.own, self.own_fold = self.openers.line, self.openers.own, self.openers.own_fold
        self.open_button = Button(theme, self.tr("&Open it"), kind=Kind.COMMIT, height=34)
        self.note = Prose(theme, Role.BODY, color="ink2")
        self.sheet = InsideSheet(theme)
        self.setAccessibleName(self.tr("Bring a household back"))
        self._lay_out()
        self._connect()
        self._judge()

    def _lay_out(self) -> None:
        column = QVBoxLayout(self.form)
        column.setContentsMargins(17, 12, 21, 14)
        column.setSpacing(10)
        for part in (self.drop, self.by_hand, self.where, self.openers):
            column.addWidget(part)
        row = QHBoxLayout()
        row.addWidget(self.open_button)
        row.addStretch(1)
        column.addLayout(row)
        self.note.setContentsMargins(Line.RING, 0, Line.RING, 0)
        column.addWidget(self.note)
        column.addStretch(1)
        self.tall.hold(Pair(self._theme, self.form, self.sheet, least=860, gap=0, stretch=(48, 52)))
        page = QVBoxLayout(self)
        page.setContentsMargins(0, 14, 0, 0)
        page.setSpacing(0)
        page.addWidget(self.head)
        page.addWidget(self.tall, 1)

    def _connect(self) -> None:
        self.head.back.clicked.connect(self.left)
        self.drop.came.connect(self.take_files)
        self.typed.read.connect(self._gathered)
        self.openers.changed.connect(self._typed)
        self.openers.turned.connect(self._turned)
        self.openers.wanted.connect(self.look_inside)
        self.open_button.clicked.connect(self.look_inside)
        self.sheet.wanted.connect(self.restore)
        self.sheet.board.connect(self.left)
        self.sheet.gateway.connect(self._to_gateway)
        self._errands.step.connect(self._step)

    # Opening and leaving

    def begin(self) -> None:
        """Begin anew, and ask whether the keyring answers."""
        self._source, self._opener = Source(), None
        self.head.say(
            self.tr("Bring a household back, from a sealed copy or from its paper."),
            self.tr("Look inside first. Nothing is written before the last button."),
        )
        self.form.show()
        self.by_hand.show()
        self.typed.forget()
        self.by_hand.open(shown=False)
        self.drop.show_files(())
        self.where.begin(self._errands.place)
        self.sheet.show_nothing()
        self.openers.begin()
        self._say("")
        self._rest(busy=False)
        self._errands.ask_keyring(self, lambda _none: None, self.where.show_trouble)
        self.drop.button.setFocus()

    def hideEvent(self, event: QEvent) -> None:  # noqa: N802 - Qt's name
        """Whoever comes back later finds no passphrase here."""
        super().hideEvent(event)  # type: ignore[arg-type]  # Qt hands a hide event on
        if not event.spontaneous():
            self._opener = None
            self.openers.forget()
            self.sheet.learned.hold(None)

    # The files

    def take_files(self, files: Sequence[Path]) -> None:
        """Read files that were dropped or chosen."""
        self._rest(busy=True)
        names = [one.name for one in files]
        self._errands.read_files(files, self._source, self, partial(self.show_source, names), self.show_trouble)

    def show_source(self, names: list[str], source: Source) -> None:
        """Files were read."""
        self._rest(busy=False)
        self._source = source
        self.drop.show_files(names)
        self.by_hand.setVisible(source.copy is None)
        self.openers.fit(source)
        self._changed()
        if source.copy is None:
            self.by_hand.open(shown=not source.gathered.whole)
            self.typed.show_scanned(source.gathered)
            if source.gathered == Gathered():
                self._say(self.tr("No code of a paper was found there. Scan it again, straight, or type its lines."))
                return
        self._say(self._ready() if source.complete else "")
        if source.complete:
            self.openers.ask()

    def _turned(self) -> None:
        if self._source.complete:
            self._say(self._ready())

    def _ready(self) -> str:
        if self.openers.by_parts:
            return self.tr("A sealed copy. Two parts of one set are wanted now.")
        if self._source.copy is not None:
            return self.tr("A sealed copy. Its passphrase is wanted now.")
        return self.tr("The paper has been read. Its passphrase is wanted now.")

    def _gathered(self) -> None:
        if self._source.copy is None:
            self._source = Source(gathered=self.typed.gathered)
            self.openers.fit(self._source)
            self._changed()
            if self._source.complete:
                self._say(self._ready())

    # What is inside

    def _typed(self) -> None:
        if self.openers.filled or self.own.text():
            self._changed()
        self._judge()

    def _changed(self) -> None:
        """What was opened is not what stands here any more."""
        if self.sheet.inside is not None and not self.sheet.done:
            self.sheet.show_nothing()
        self._opener = None
        self._judge()

    def _judge(self) -> None:
        self.open_button.setEnabled(not self._busy and self._source.complete and self.openers.filled)

    def look_inside(self) -> None:
        """Open it, and show what is inside."""
        if not self.open_button.isEnabled():
            return
        self._rest(busy=True)
        if self.openers.by_parts:
            parts = self.openers.parts.parts
            self._errands.join_parts(self._source, parts, self, self._look_with, self.show_trouble)
        else:
            self._look_with(self.openers.opener())

    def _look_with(self, opener: Opener) -> None:
        then = partial(self.show_inside, opener, by_parts=self.openers.by_parts)
        self._errands.look_inside(self._source, opener, self, then, self.show_trouble)

    def show_inside(self, opener: Opener, inside: Inside, *, by_parts: bool = False) -> None:
        """It is open; whoever did it with parts has yet to learn the passphrase."""
        self._rest(busy=False)
        self._by_parts = by_parts
        self.openers.forget()
        self._opener = opener
        self.sheet.show_inside(inside)
        self._say(self.tr("It is open. What is inside stands beside."))
        self.sheet.commit.setFocus(Qt.FocusReason.OtherFocusReason)
        QTimer.singleShot(0, self, lambda: self.tall.ensureWidgetVisible(self.sheet))

    # Bringing it back

    def restore(self) -> None:
        """Bring it back, if it has been opened."""
        if self._busy or self._opener is None or self.sheet.inside is None:
            return
        self._rest(busy=True)
        self._errands.restore(self._source, self._opener, self.where.place(), self, self.show_done, self.show_trouble)

    def show_done(self, changes: Changes) -> None:
        """It is back."""
        learned = self._opener.passphrase if self._by_parts and self._opener is not None else None
        self._opener = None
        self.form.hide()
        name = "" if self.sheet.inside is None else self.sheet.inside.household
        self.head.say(self.tr("{household} is back.").format(household=name), "")
        self.sheet.show_done(spoken(changes.sentence), learned)
        self._say("")
        announce(self, spoken(changes.sentence))

    def _to_gateway(self) -> None:
        self.gateway_wanted.emit(self.sheet.inside is not None and self.sheet.inside.on_paper)

    def show_trouble(self, error: HearthkeyError) -> None:
        """Say what stood in the way, where it can be mended."""
        self._rest(busy=False)
        spot = spot_of(error, "")
        if spot is Spot.KEPT:
            self.where.show_trouble(error)
            self.where.choice.setFocus()
            self._say("")
            return
        self._say(told(error), "act")
        QTimer.singleShot(0, self, lambda: self.tall.ensureWidgetVisible(self.note))
        if error.code == "wrong-passphrase":
            self.openers.ask()
            self.line.selectAll()

    def _rest(self, *, busy: bool) -> None:
        self._busy = busy
        for part in (self.drop, self.by_hand, self.where, self.openers, self.sheet.commit):
            part.setEnabled(not busy)
        self._judge()

    def _step(self, words: str) -> None:
        if self._busy and words and self.isVisible():
            self._say(f"{words} …")

    def _say(self, text: str, color: str = "ink2") -> None:
        if text and text != self.note.text():
            announce(self, text)
        self.note.recolor(color)
        self.note.speak(text)

    def keyPressEvent(self, event: QKeyEvent) -> None:  # noqa: N802 - Qt's name
        """Ctrl+Enter does what the strongest button does."""
        enter = event.key() in {Qt.Key.Key_Return, Qt.Key.Key_Enter}
        if enter and event.modifiers() & Qt.KeyboardModifier.ControlModifier:
            if self._opener is None:
                self.look_inside()
            else:
                self.restore()
        else:
            super().keyPressEvent(event)
