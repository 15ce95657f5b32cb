"""The letter and the parts of a set that was just drawn: shown one at a time, printed or saved, and then kept."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

from PySide6.QtCore import Signal
from PySide6.QtPrintSupport import QPrinter
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from hearthkey.core.deputy import PART_FILE
from hearthkey.core.errors import HearthkeyError, Unavailable
from hearthkey.core.hand_over_sheet import Paper
from hearthkey.core.languages import Language
from hearthkey.formats import deputy_sheet
from hearthkey.formats.laid_sheet import Mark
from hearthkey.ui.controls.buttons import Button, Kind
from hearthkey.ui.controls.choice import Choice
from hearthkey.ui.controls.fields import Labelled
from hearthkey.ui.controls.labels import Prose
from hearthkey.ui.deputy_errands import Papers
from hearthkey.ui.drawer.page import inset
from hearthkey.ui.errands import Errands
from hearthkey.ui.languages import NAMES
from hearthkey.ui.pages.pick_folder import PickFolder
from hearthkey.ui.printing.asking import ask_printer
from hearthkey.ui.printing.painter import PaperPainter
from hearthkey.ui.printing.preview import Preview
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme

LETTER = "0"
"""The key of the letter; parts go by their numbers."""


class DeputySheets(QWidget):
    """The sheets of one set; `standing`, `keep_button` and `drop_button` stand in the last row of the page.

    Args:
        start: where the first folder dialog opens.

    Signals:
        kept: all of them went out, and they are to count.
        dropped: they are to be thrown away.
        told: an outcome in words.
        failed: an error.
    """

    kept = Signal(object)
    dropped = Signal()
    told = Signal(str)
    failed = Signal(object)

    def __init__(
        self, theme: Theme, errands: Errands, start: Path, pick: PickFolder, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._errands, self._start, self._pick = errands, start, pick
        self.papers: Papers | None = None
        self.out: set[str] = set()
        self.painter = PaperPainter(theme.fonts)
        which = [
            (LETTER, self.tr("Letter")),
            *((str(one), self.tr("Part {number}").format(number=one)) for one in (1, 2, 3)),
        ]
        self.which = Choice(theme, self.tr("Sheet"), which)
        self.tongue = Choice(theme, self.tr("Language"), [(one.value, name) for one, name in NAMES.items()])
        sizes = [(Paper.A4.name, Paper.A4.name), (Paper.LETTER.name, self.tr("Letter"))]
        self.page_size = Choice(theme, self.tr("Paper"), sizes)
        self.preview = Preview(theme, self.painter)
        self.preview.setMinimumHeight(theme.px(480))
        self.print_button = Button(theme, self.tr("&Print…"), height=32)
        self.save_button = Button(theme, self.tr("&Save as PDF…"), height=32)
        self.standing = Prose(theme, Role.STATE, color="ink2")
        self.keep_button = Button(theme, self.tr("All are &given out"), kind=Kind.COMMIT, height=34)
        self.drop_button = Button(theme, self.tr("Throw them away"), height=34)
        self._lay_out(theme)
        for choice in (self.which, self.tongue, self.page_size):
            choice.chosen.connect(lambda _key: self.turn())
        self.print_button.clicked.connect(self.print)
        self.save_button.clicked.connect(self._save)
        self.keep_button.clicked.connect(lambda: self.kept.emit(self.papers))
        self.drop_button.clicked.connect(self.dropped)

    def _lay_out(self, theme: Theme) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(10)
        what = self.tr(
            "Print each sheet by itself and give each part to somebody else. They count only once you say that all "
            "are given out; until then the sheets from before do."
        )
        column.addLayout(inset(Prose(theme, Role.BODY, what)))
        for label, part in (
            (self.tr("Sheet"), self.which),
            (self.tr("Language of whoever reads it"), self.tongue),
            (self.tr("Paper"), self.page_size),
        ):
            column.addWidget(Labelled(theme, label, part))
        column.addLayout(row_of(self.print_button, self.save_button))
        column.addWidget(self.preview, 1)

    def hold(self, papers: Papers) -> None:
        """Show a set, the letter first."""
        self.papers, self.out = papers, set()
        self.which.take(LETTER)
        self.turn()

    def forget(self) -> None:
        """Have no set any more."""
        self.papers, self.out = None, set()
        self.preview.show_page((), Paper.A4)

    def cover(self) -> None:
        """Show the letter, which gives nothing away."""
        self.which.take(LETTER)
        self.turn()

    def paper(self) -> Paper:
        """On which paper."""
        return Paper[self.page_size.value()]

    def turn(self) -> None:
        """Show the chosen sheet."""
        if self.papers is None:
            return
        try:
            self.preview.show_page(self._marks(self.papers), self.paper())
        except HearthkeyError as error:
            self.failed.emit(error)
        self._stand()

    def _marks(self, papers: Papers) -> tuple[Mark, ...]:
        number, tongue = int(self.which.value()), Language(self.tongue.value())
        if number == 0:
            return deputy_sheet.letter(replace(papers.letter, language=tongue), self.paper(), self.painter.measure)
        facts = replace(papers.parts[number - 1], language=tongue)
        return deputy_sheet.part(facts, self.paper(), self.painter.measure)

    def _stand(self) -> None:
        """Say which parts have not been out yet; the letter may wait."""
        missing = [one for one in ("1", "2", "3") if one not in self.out]
        if not missing:
            self.standing.speak(self.tr("Every part was printed or saved."))
        elif len(missing) == 1:
            told = self.tr("Part {number} was neither printed nor saved yet.")
            self.standing.speak(told.format(number=missing[0]))
        else:
            told = self.tr("Parts {numbers} were neither printed nor saved yet.")
            self.standing.speak(told.format(numbers=", ".join(missing)))
        self.keep_button.setEnabled(not missing)

    # What can be done

    def print(self) -> None:
        """Ask for a printer and print the sheet that is shown."""
        ask_printer(self, self.print_with)

    def print_with(self, printer: QPrinter) -> None:
        """Print the sheet that is shown."""
        try:
            self.painter.print(printer, self.preview.marks, self.paper())
        except Unavailable as error:
            self.failed.emit(error)
            return
        self._went(self.which.value(), self.tr("It is at the printer."))

    def _save(self) -> None:
        self._pick(self, self.tr("Where to save the sheet"), self._start, self._save_to)

    def _save_to(self, folder: Path) -> None:
        if self.papers is None:
            return
        self._start, key = folder, self.which.value()
        name = "deputy-letter.pdf" if key == LETTER else f"{PART_FILE}{key}.pdf"
        data = self.painter.pdf(self.preview.marks, self.paper(), "")
        told = self.tr("Saved as {file}. Print it, then delete the file.").format(file=name)
        self._errands.save_part(folder, name, data, self, lambda _path: self._went(key, told), self.failed.emit)

    def _went(self, key: str, told: str) -> None:
        self.out.add(key)
        self._stand()
        self.told.emit(told)


def row_of(*buttons: Button) -> QHBoxLayout:
    """Buttons side by side, from the left."""
    row = QHBoxLayout()
    row.setSpacing(4)
    for button in buttons:
        row.addWidget(button)
    row.addStretch(1)
    return row
