"""The page for paper and words: the sheet, the passphrase card, the two messages; shown, printed, saved, copied."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import Signal
from PySide6.QtGui import QGuiApplication, QHideEvent
from PySide6.QtPrintSupport import QPrinter
from PySide6.QtWidgets import QHBoxLayout, QStackedWidget, QVBoxLayout, QWidget

from hearthkey.core.errors import HearthkeyError, Unavailable
from hearthkey.core.hand_over_sheet import CardFacts, Messages, Paper, card_file
from hearthkey.core.names import file_stem
from hearthkey.core.passes import State
from hearthkey.formats import hand_over_sheet
from hearthkey.formats.laid_sheet import Mark
from hearthkey.ui.announcing import announce
from hearthkey.ui.controls.buttons import Button, Kind
from hearthkey.ui.controls.labels import Prose, Voice
from hearthkey.ui.errands import Errands
from hearthkey.ui.pages.page_head import PageHead
from hearthkey.ui.pages.pick_folder import PickFolder, pick_folder
from hearthkey.ui.printing.aside import Aside
from hearthkey.ui.printing.asking import ask_printer
from hearthkey.ui.printing.choices import PaperChoices, What
from hearthkey.ui.printing.painter import PaperPainter
from hearthkey.ui.printing.preview import Preview
from hearthkey.ui.sheet_errands import Leaf
from hearthkey.ui.text import mended, spoken
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.ways import Ways

NEEDS_WORDS = frozenset({What.CARD, What.WRITTEN, What.SPOKEN})
"""What there is only while the bundle waits."""


class PaperPage(QWidget):
    """Takes the place of the board.

    Args:
        folder: where the first file dialog opens.

    Signals:
        told: an outcome in words, for the footer.
    """

    told = Signal(str)

    def __init__(
        self,
        theme: Theme,
        errands: Errands,
        ways: Ways,
        *,
        folder: Path,
        pick: PickFolder = pick_folder,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._theme, self._errands, self._ways = theme, errands, ways
        self._folder, self._pick = folder, pick
        self._serial = ""
        self._leaf: Leaf | None = None
        self.painter = PaperPainter(theme.fonts)
        self.head = PageHead(theme, self.tr("Back to the board"))
        self.aside = Aside(theme)
        self.choices = PaperChoices(theme)
        self.preview = Preview(theme, self.painter)
        self.words = Voice(theme)
        self.print_button = Button(theme, self.tr("&Print…"), kind=Kind.COMMIT, hint=self.tr("Ctrl+P"), height=34)
        self.save_button = Button(theme, self.tr("&Save as PDF…"), height=34)
        self.copy_button = Button(theme, self.tr("&Copy"), height=34)
        self.note = Prose(theme, Role.STATE, color="ink2")
        self.setAccessibleName(self.tr("Paper and words"))
        self._lay_out()
        self._connect()

    def _lay_out(self) -> None:
        buttons = QHBoxLayout()
        buttons.setSpacing(4)
        for button in (self.print_button, self.save_button, self.copy_button):
            buttons.addWidget(button)
        buttons.addStretch(1)
        left = QVBoxLayout(self.aside.inside)
        left.setContentsMargins(20, 14, 20, 14)
        left.setSpacing(12)
        left.addWidget(self.choices)
        left.addLayout(buttons)
        left.addWidget(self.note)
        left.addStretch(1)
        said = QWidget()
        inside = QVBoxLayout(said)
        inside.setContentsMargins(28, 28, 28, 28)
        inside.addWidget(self.words)
        inside.addStretch(1)
        self.shown = QStackedWidget()
        self.shown.addWidget(self.preview)
        self.shown.addWidget(said)
        sides = QHBoxLayout()
        sides.setContentsMargins(0, 0, 0, 0)
        sides.addWidget(self.aside, 2)
        sides.addWidget(self.shown, 3)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self.head)
        column.addLayout(sides, 1)

    def _connect(self) -> None:
        self.head.back.clicked.connect(self._ways.back)
        self.choices.changed.connect(self._ask)
        self.choices.call_typed.connect(self._call)
        self.print_button.clicked.connect(self.print)
        self.save_button.clicked.connect(self._save)
        self.copy_button.clicked.connect(self._copy)
        self._ways.lock.connect(self._forget)

    # Opening and leaving

    def open(self, serial: str) -> None:
        """Show the sheet of a pass."""
        self._forget()
        self._serial, self._leaf = serial, None
        self.choices.begin()
        self._errands.sheet(serial, None, self, self._first, self._failed)

    def _first(self, leaf: Leaf) -> None:
        one = leaf.chosen
        self.choices.show_leaf(leaf, waiting=one.state(leaf.facts.made) is State.WAITING)
        self.head.say(
            self.tr("Paper and words for {title}").format(title=spoken(one.title)),
            self.tr("The sheet may lie beside the bundle. The card and what is said on the phone never do."),
        )
        self.aside.updateGeometry()
        self._came(leaf)
        self.choices.take_focus()

    def hideEvent(self, event: QHideEvent) -> None:  # noqa: N802 - Qt's name
        """Whoever comes back later finds no words on screen."""
        super().hideEvent(event)
        if not event.spontaneous():
            self._forget()

    def _forget(self) -> None:
        self.preview.show_page((), Paper.A4)
        self.words.speak("")
        self.note.speak("")
        for button in (self.print_button, self.save_button, self.copy_button):
            button.setEnabled(False)

    # What is shown

    def _ask(self) -> None:
        """Something else was chosen: first everything goes off."""
        self._forget()
        what, language = What(self.choices.what()), self.choices.language()
        if what is What.SHEET:
            form = self.choices.taken_form()
            self._errands.sheet(self._serial, language, self, self._came, self._failed, form=form)
        elif what is What.CARD:
            self._errands.card(self._serial, language, self, self._came_card, self._failed)
        else:
            self._errands.messages(self._serial, language, self, self._came_messages, self._failed)

    def _came(self, leaf: Leaf) -> None:
        self._leaf = leaf
        if self.choices.what() != What.SHEET.value:
            return
        self._show(lambda paper: hand_over_sheet.sheet(leaf.facts, paper, self.painter.measure))

    def _came_card(self, card: CardFacts) -> None:
        if self.choices.what() == What.CARD.value:
            self._show(lambda paper: hand_over_sheet.card(card, paper, self.painter.measure))
            self.note.speak(self.tr("The seven words alone. Print it when nobody waits at the printer."))

    def _came_messages(self, found: Messages) -> None:
        what = self.choices.what()
        if what not in {What.WRITTEN.value, What.SPOKEN.value}:
            return
        written = what == What.WRITTEN.value
        self.words.speak(found.written if written else found.spoken.reveal())
        self.shown.setCurrentIndex(1)
        self.copy_button.setEnabled(written)
        self.note.speak(
            self.tr("This one goes with the file. The other is said on the phone, at another time.")
            if written
            else self.tr("This one cannot be copied: it would end up in the same message as the file.")
        )

    def _show(self, lay: Callable[[Paper], tuple[Mark, ...]]) -> None:
        try:
            marks = lay(self.choices.paper())
        except HearthkeyError as error:
            self._failed(error)
            return
        self.preview.show_page(marks, self.choices.paper())
        self.shown.setCurrentIndex(0)
        self.print_button.setEnabled(True)
        self.save_button.setEnabled(True)

    # What can be done

    def print(self) -> None:
        """Ask for a printer and print the page."""
        if not self.print_button.isEnabled():
            return
        ask_printer(self, self.print_with)

    def print_with(self, printer: QPrinter) -> None:
        """Print the page that is shown."""
        try:
            self.painter.print(printer, self.preview.marks, self.choices.paper())
        except Unavailable as error:
            self._failed(error)
        else:
            self._say(self.tr("It is at the printer."))

    def _save(self) -> None:
        self._pick(self, self.tr("Where to save the page"), self._folder, self._save_to)

    def _save_to(self, folder: Path) -> None:
        leaf = self._leaf
        if leaf is None or not self.preview.marks:
            return
        self._folder = folder
        what = self.choices.what()
        data = self.painter.pdf(self.preview.marks, self.choices.paper(), "")
        stem = file_stem(leaf.chosen.title, leaf.chosen.identity)
        name = card_file(leaf.chosen) if what == What.CARD.value else f"{stem}-{what}.pdf"
        self._errands.save_page(folder, name, data, self, self._saved, self._failed)

    def _saved(self, path: Path) -> None:
        self._say(self.tr("Saved as {file}.").format(file=path.name))

    def _copy(self) -> None:
        QGuiApplication.clipboard().setText(self.words.text())
        self._say(self.tr("Copied. Send it along with the file."))

    def _call(self, text: str) -> None:
        self._errands.choose_call(text, self, lambda _none: self._ask(), self._failed)

    def _failed(self, error: HearthkeyError) -> None:
        self._say(mended(error))

    def _say(self, text: str) -> None:
        self.note.speak(text)
        self.told.emit(text)
        announce(self, text)
