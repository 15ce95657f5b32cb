"""The key on paper in the window: Qt's own PDF, drawn by poppler and read back."""

from __future__ import annotations

import subprocess
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from PySide6.QtPrintSupport import QPrinter
from PySide6.QtWidgets import QWidget
from pytestqt.qtbot import QtBot

from hearthkey.adapters.pictures import read_codes
from hearthkey.core import paper
from hearthkey.core.household import KEYRING
from hearthkey.core.paper import Gathered
from hearthkey.formats import paper_der
from hearthkey.services import reading_paper
from hearthkey.ui.errands import Errands
from hearthkey.ui.printing.key_paper_page import KeyPaperPage
from hearthkey.ui.tasks import Tasks
from hearthkey.ui.theme.theme import Theme
from tests.fakes.home import World, founded, opener
from tests.judges import needs


class Shown:
    """The page over the real household."""

    def __init__(self, qtbot: QtBot, theme: Theme, folder: Path) -> None:
        self.qtbot, self.into = qtbot, folder / "saved"
        self.world: World = founded().put_into(folder / "data")
        self.errands = Errands(Tasks(), opener(self.world), folder / "data", place=KEYRING, service="practice")
        self.errands.open()
        qtbot.waitUntil(lambda: self.errands.last is not None)
        self.page = KeyPaperPage(theme, self.errands, folder=folder, pick=self._pick)
        qtbot.addWidget(self.page)
        self.page.resize(1280, 718)
        self.page.show()

    def _pick(self, _parent: QWidget, _title: str, _start: Path, then: Callable[[Path], None]) -> None:
        then(self.into)

    def open(self) -> None:
        """Open the page, and wait until the paper is there."""
        self.page.open()
        self.qtbot.waitUntil(lambda: bool(self.page.preview.marks))

    def last_entry(self) -> str:
        """The diary's newest sentence."""
        assert self.errands.last is not None
        return self.errands.last.diary[-1].sentence


@pytest.fixture
def shown(qtbot: QtBot, theme: Theme, tmp_path: Path) -> Iterator[Shown]:
    """The page, not yet open."""
    made = Shown(qtbot, theme, tmp_path)
    yield made
    made.errands.close()


def judged(pdf: Path, *, lines: int) -> None:
    """Poppler draws both pages, and the codes and the letters say the same; source: pdftoppm(1), pdftotext(1)."""
    picture = pdf.with_suffix(".png")
    subprocess.run([needs("pdftoppm"), "-r", "150", "-png", "-singlefile", pdf, pdf.with_suffix("")], check=True)
    scanned = reading_paper.gathered(picture.read_bytes(), "a.png", Gathered(), read_codes)
    read = subprocess.run([needs("pdftotext"), "-layout", "-f", "2", pdf, "-"], check=True, capture_output=True)
    text = read.stdout.decode()
    by_hand = Gathered().with_lines(paper.read_typed(text).lines)
    assert scanned.content() == by_hand.content()
    assert len(scanned.lines) == lines
    assert paper_der.decode(scanned.content()).household.name == "Quince Cottage"


def test_it_is_saved_and_printed_so_that_a_scanner_reads_it(shown: Shown, qtbot: QtBot, tmp_path: Path) -> None:
    """Broken if it fails: what the window prints is another paper than the command line's, or cannot be read."""
    shown.open()
    assert shown.page.facts is not None
    lines = len(paper.lines_of(paper_der.encode(shown.page.facts.contents)))
    shown.page.save_button.click()
    qtbot.waitUntil(lambda: "Saved as" in shown.page.note.text())
    (saved,) = shown.into.iterdir()
    assert saved.name == "quince-cottage-key-2026-11-25.pdf"
    assert saved.stat().st_mode & 0o777 == 0o600
    judged(saved, lines=lines)
    assert shown.last_entry() == f"The household’s key was put on paper, as {saved.name}."
    printer = QPrinter(QPrinter.PrinterMode.HighResolution)
    printer.setOutputFormat(QPrinter.OutputFormat.PdfFormat)
    printer.setOutputFileName(str(tmp_path / "printed.pdf"))
    shown.page.print_with(printer)
    qtbot.waitUntil(lambda: "at the printer" in shown.page.note.text())
    judged(tmp_path / "printed.pdf", lines=lines)
    assert shown.last_entry() == "The household’s key was put on paper, at the printer."


def test_both_pages_are_shown_in_every_language_and_on_both_papers(shown: Shown, qtbot: QtBot) -> None:
    """Broken if it fails: somebody prints what was never looked at."""
    shown.open()
    page = shown.page
    assert "To bring it back" in page.preview.accessibleDescription()
    page.number.segments()[1].click()
    assert "Without the app" in page.preview.accessibleDescription()
    page.page_size.segments()[1].click()
    assert "Without the app" in page.preview.accessibleDescription()
    page.tongue.segments()[1].click()
    qtbot.waitUntil(lambda: "Ohne die App" in page.preview.accessibleDescription())
    page.hide()
    assert page.preview.marks == ()
    assert not page.print_button.isEnabled()


def test_a_closed_keyring_is_told_and_nothing_can_be_printed(shown: Shown, qtbot: QtBot) -> None:
    """Broken if it fails: an empty paper is kept for years."""
    shown.world.vault.trouble = "keyring-locked"
    shown.page.open()
    qtbot.waitUntil(lambda: "keyring" in shown.page.note.text())
    assert not shown.page.save_button.isEnabled()
    assert shown.page.preview.marks == ()
