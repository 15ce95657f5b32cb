"""The page for the household's key on paper: both pages as they will be, to be printed or saved."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import Signal
from PySide6.QtGui import QHideEvent
from PySide6.QtPrintSupport import QPrinter
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from hearthkey.core.errors import HearthkeyError, Unavailable
from hearthkey.core.hand_over_sheet import Paper
from hearthkey.core.languages import Language
from hearthkey.core.names import file_stem
from hearthkey.core.plans import Changes
from hearthkey.formats import paper_sheet
from hearthkey.formats.laid_sheet import Mark
from hearthkey.formats.paper_sheet import PaperFacts
from hearthkey.ui.announcing import announce
from hearthkey.ui.controls.buttons import Button, Kind
from hearthkey.ui.controls.choice import Choice
from hearthkey.ui.controls.fields import Line
from hearthkey.ui.controls.labels import Prose
from hearthkey.ui.dates import day
from hearthkey.ui.errands import Errands
from hearthkey.ui.languages import NAMES
from hearthkey.ui.pages.page_head import PageHead
from hearthkey.ui.pages.pick_folder import PickFolder, pick_folder
from hearthkey.ui.pages.question import Question
from hearthkey.ui.pages.tall import Tall
from hearthkey.ui.printing.asking import ask_printer
from hearthkey.ui.printing.painter import PaperPainter
from hearthkey.ui.printing.preview import Preview
from hearthkey.ui.text import mended
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme


class KeyPaperPage(QWidget):
    """Takes the place of the board.

    Args:
        folder: where the first file dialog opens.

    Signals:
        left: back to the board.
        told: an outcome in words, for the footer.
    """

    left = Signal()
    told = Signal(str)

    def __init__(
        self,
        theme: Theme,
        errands: Errands,
        *,
        folder: Path,
        pick: PickFolder = pick_folder,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._theme, self._errands, self._folder, self._pick = theme, errands, folder, pick
        self.facts: PaperFacts | None = None
        self.sheets: tuple[tuple[Mark, ...], ...] = ()
        self.painter = PaperPainter(theme.fonts)
        self.head = PageHead(theme, self.tr("Back to the board"))
        self.tongue = Choice(theme, self.tr("Language"), [(one.value, name) for one, name in NAMES.items()])
        sizes = [(Paper.A4.name, Paper.A4.name), (Paper.LETTER.name, self.tr("Letter"))]
        self.page_size = Choice(theme, self.tr("Paper"), sizes)
        self.number = Choice(theme, self.tr("Page"), [("0", self.tr("1: codes")), ("1", self.tr("2: letters"))])
        self.preview = Preview(theme, self.painter)
        self.print_button = Button(theme, self.tr("&Print…"), kind=Kind.COMMIT, hint=self.tr("Ctrl+P"), height=34)
        self.save_button = Button(theme, self.tr("&Save as PDF…"), height=34)
        self.note = Prose(theme, Role.STATE, color="ink2")
        self.whose = Prose(theme, Role.BODY)
        self.setAccessibleName(self.tr("The key on paper"))
        self._lay_out()
        self._connect()

    def _lay_out(self) -> None:
        what = self.tr(
            "The CA key as it lies in the keyring, encrypted under the household’s passphrase, with the settings and "
            "the newest list number. It outlives every stick. People and devices are not on it: sealed copies have "
            "those."
        )
        buttons = QHBoxLayout()
        buttons.setSpacing(4)
        for button in (self.print_button, self.save_button):
            buttons.addWidget(button)
        buttons.addStretch(1)
        inside, tall = QWidget(), Tall(self._theme)
        left = QVBoxLayout(inside)
        left.setContentsMargins(17, 14, 17, 14)
        left.setSpacing(12)
        told = Prose(self._theme, Role.BODY, what, color="ink2")
        for flush in (told, self.note, self.whose):
            flush.setContentsMargins(Line.RING, 0, Line.RING, 0)
        left.addWidget(told)
        for label, part in (
            (self.tr("Language of whoever reads it"), self.tongue),
            (self.tr("Paper"), self.page_size),
            (self.tr("Shown here"), self.number),
        ):
            left.addWidget(Question(self._theme, label, part))
        left.addWidget(self.whose)
        left.addLayout(buttons)
        left.addWidget(self.note)
        left.addStretch(1)
        tall.hold(inside)
        sides = QHBoxLayout()
        sides.setContentsMargins(0, 0, 0, 0)
        sides.addWidget(tall, 2)
        sides.addWidget(self.preview, 3)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 14, 0, 0)
        column.setSpacing(0)
        column.addWidget(self.head)
        column.addLayout(sides, 1)
        self.head.say(
            self.tr("The household’s key on paper."),
            self.tr("The passphrase is never on it. Keep the two apart, both where they will be found."),
        )

    def _connect(self) -> None:
        self.head.back.clicked.connect(self.left)
        self.tongue.chosen.connect(lambda _key: self._ask())
        self.page_size.chosen.connect(lambda _key: self._set())
        self.number.chosen.connect(lambda _key: self.turn())
        self.print_button.clicked.connect(self.print)
        self.save_button.clicked.connect(self._save)

    # Opening and leaving

    def open(self) -> None:
        """Show the paper."""
        self._forget()
        self.number.take("0")
        self._ask()
        self.tongue.setFocus()

    def hideEvent(self, event: QHideEvent) -> None:  # noqa: N802 - Qt's name
        """Whoever comes back later finds a paper made anew."""
        super().hideEvent(event)
        if not event.spontaneous():
            self._forget()

    def _forget(self) -> None:
        self.facts, self.sheets = None, ()
        self.whose.hide()
        self.preview.show_page((), Paper.A4)
        self.note.speak("")
        for button in (self.print_button, self.save_button):
            button.setEnabled(False)

    # What is shown

    def _ask(self) -> None:
        self._errands.key_paper(Language(self.tongue.value()), self, self.show_facts, self._failed)

    def show_facts(self, facts: PaperFacts) -> None:
        """Show what the paper says."""
        self.facts = facts
        self._say_whose(facts)
        self._set()

    def _say_whose(self, facts: PaperFacts) -> None:
        """Which of two keys it is, while one CA follows another."""
        older = facts.older
        self.whose.setVisible(older is not None)
        if older is None:
            return
        if older.lost:
            told = self.tr("Of two keys this is the newer one, good until {end}. The older one is lost.")
        else:
            told = self.tr(
                "Of two keys this is the newer one, good until {end}. The older one, until {old}, is on the paper made "
                "before {since}: keep both until the old CA has been put away."
            )
        self.whose.speak(told.format(end=day(facts.until), old=day(older.until), since=day(older.since)))

    def paper(self) -> Paper:
        """On which paper."""
        return Paper[self.page_size.value()]

    def _set(self) -> None:
        if self.facts is None:
            return
        try:
            self.sheets = paper_sheet.pages(self.facts, self.paper(), self.painter.measure)
        except HearthkeyError as error:
            self._failed(error)
            return
        self.turn()
        last = self._errands.last
        for button in (self.print_button, self.save_button):
            button.setEnabled(last is None or not last.read_only)

    def turn(self) -> None:
        """Show the chosen page."""
        if self.sheets:
            self.preview.show_page(self.sheets[int(self.number.value())], self.paper())

    # What can be done

    def print(self) -> None:
        """Ask for a printer and print both pages."""
        if not self.print_button.isEnabled():
            return
        ask_printer(self, self.print_with)

    def print_with(self, printer: QPrinter) -> None:
        """Print both pages."""
        try:
            self.painter.print_pages(printer, self.sheets, self.paper())
        except Unavailable as error:
            self._failed(error)
        else:
            self._errands.key_paper_printed("", self, self._printed, self._failed)

    def _printed(self, _changes: Changes) -> None:
        self._say(self.tr("Both pages are at the printer."))

    def _save(self) -> None:
        self._pick(self, self.tr("Where to save the paper"), self._folder, self._save_to)

    def _save_to(self, folder: Path) -> None:
        if self.facts is None:
            return
        self._folder = folder
        household = self.facts.contents.household.name
        name = f"{file_stem(household, 'household')}-key-{self.facts.contents.made:%Y-%m-%d}.pdf"
        data = self.painter.pdf_pages(self.sheets, self.paper(), self.facts.title)
        self._errands.save_page(folder, name, data, self, self._saved, self._failed)

    def _saved(self, path: Path) -> None:
        told = self.tr("Saved as {file}. Print both pages, then delete the file.").format(file=path.name)
        self._errands.key_paper_printed(path.name, self, lambda _changes: self._say(told), self._failed)

    def _failed(self, error: HearthkeyError) -> None:
        self._say(mended(error))

    def _say(self, text: str) -> None:
        self.note.speak(text)
        self.told.emit(text)
        announce(self, text)
