"""Sheet and card as Qt makes them, on both papers and in every language, judged by poppler."""

from __future__ import annotations

import re
import subprocess
from pathlib import Path

import pytest
from pytestqt.qtbot import QtBot

from hearthkey.core.channels import gives_away
from hearthkey.core.hand_over_sheet import Paper
from hearthkey.core.languages import Language
from hearthkey.core.secret import Secret
from hearthkey.formats import hand_over_texts
from hearthkey.formats.laid_sheet import Face, Run
from hearthkey.ui.printing.painter import PaperPainter
from hearthkey.ui.theme.theme import Theme
from tests.fakes.kinds import KINDS
from tests.formats.test_words import WORDS
from tests.judges import needs
from tests.ui.printing.test_paper_page import Shown

WORDS_SIZE = 27
"""Points of a word on the card; nothing else is as large."""


def judged(path: Path, paper: Paper) -> str:
    """The text of a PDF, once it is sure that it is one page of that paper with all its fonts inside."""
    info = subprocess.run([needs("pdfinfo"), path], capture_output=True, text=True, check=True).stdout
    told = {line.split(":", 1)[0]: line.split(":", 1)[1].strip() for line in info.splitlines() if ":" in line}
    wide, high = (round(float(one)) for one in told["Page size"].split("pts")[0].split("x"))
    assert told["Pages"] == "1"
    assert (wide, high) == (round(paper.value[0]), round(paper.value[1]))
    fonts = subprocess.run([needs("pdffonts"), path], capture_output=True, text=True, check=True).stdout
    rows = [row.split() for row in fonts.splitlines()[2:]]
    assert rows
    # Columns from the right: object and generation, unicode map, subset, embedded.
    assert all((row[-5], row[-3]) == ("yes", "yes") for row in rows), fonts
    text = subprocess.run([needs("pdftotext"), path, "-"], capture_output=True, text=True, check=True).stdout
    return " ".join(text.split())


@pytest.mark.parametrize("paper", Paper)
def test_the_words_are_on_the_card_alone(qtbot: QtBot, theme: Theme, tmp_path: Path, paper: Paper) -> None:
    """Broken if it fails: a sheet carries the words, a card does not, or some paper or language breaks the page."""
    shown = Shown(qtbot, theme, tmp_path)
    page = shown.page
    try:
        page.choices.page_size.segments()[list(Paper).index(paper)].click()
        for place, language in enumerate(Language):
            page.choices.tongue.segments()[place].click()
            text = {}
            for what in ("sheet", "card"):
                shown.choose(what)
                head = hand_over_texts.text(
                    "device" if what == "sheet" else "words-title", language, person="Odile", device="tablet"
                )
                shown.wait(lambda head=head: head in shown.text())  # type: ignore[misc]  # bound at once
                page.note.speak("")
                page.save_button.click()
                shown.wait(lambda: "Saved as" in page.note.text())
                saved = max(shown.into.iterdir(), key=lambda one: one.stat().st_mtime_ns)
                text[what] = judged(saved, paper)
                saved.unlink()
            words = [one.text for one in page.preview.marks if isinstance(one, Run) and one.size == WORDS_SIZE]
            assert len(words) == 7
            assert text["card"].split().count(words[0]) == 1
            assert all(word in text["card"].split() for word in words)
            assert not gives_away(text["sheet"], Secret(" ".join(words)))
            assert KINDS.find("android-older").steps("pkcs12", language)[0].do in text["sheet"]
            for given_away in ("tablet", "Quince", "http", ".p12"):
                assert given_away not in text["card"]
    finally:
        shown.errands.close()


def test_letters_stay_letters(theme: Theme, tmp_path: Path) -> None:
    """Broken if it fails: a word that is copied out of the PDF has a ligature in it and is no passphrase any more."""
    risky = [one for one in WORDS if re.search("f[bfhijklt]|tt", one)]
    assert 400 < len(risky) < 7 * 110
    pages = [
        [Run(20 + 80 * (place % 7), 20 + 7 * (place // 7), word, face, 6) for place, word in enumerate(risky)]
        for face in Face
    ]
    file = tmp_path / "words.pdf"
    file.write_bytes(PaperPainter(theme.fonts).pdf_pages(pages, Paper.A4, ""))
    read = subprocess.run([needs("pdftotext"), "-raw", file, "-"], capture_output=True, text=True, check=True).stdout
    assert sorted(read.split()) == sorted(risky * len(Face))
