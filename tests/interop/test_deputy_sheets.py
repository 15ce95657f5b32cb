"""The deputy's papers as PDF, judged by poppler, zbar and zxing: one page each, fonts inside, codes that read."""

from __future__ import annotations

import subprocess
from datetime import UTC, datetime
from pathlib import Path

import pytest

from hearthkey.adapters.pictures import read_codes
from hearthkey.adapters.places import faces, word_list
from hearthkey.core import channels, deputy
from hearthkey.core.errors import Refused
from hearthkey.core.hand_over_sheet import Paper
from hearthkey.core.languages import Language
from hearthkey.core.secret import Secret
from hearthkey.formats import deputy_sheet, deputy_texts, stop_set_texts
from hearthkey.formats.deputy_sheet import LetterFacts, PartFacts
from hearthkey.formats.laid_pdf import Draw, drawn
from hearthkey.formats.laid_sheet import Run
from hearthkey.formats.sheet_pdf import Fonts
from tests.fakes.dice import SeededDice
from tests.judges import needs

LIST = word_list()
PARTS = deputy.split(Secret(bytes(range(16))), "A7F3", SeededDice("papers").below)
DAY = datetime(2026, 5, 12, tzinfo=UTC)


def part_facts(number: int, language: Language) -> PartFacts:
    """One of the three."""
    one = PARTS[number - 1]
    return PartFacts(one, deputy.words_of(one, LIST), DAY, language, practice=True)


def letter_facts(language: Language, **other: object) -> LetterFacts:
    """The letter of Quince Cottage."""
    told: dict[str, object] = {
        "household": "Quince Cottage",
        "made": DAY,
        "list_end": datetime(2028, 6, 1, tzinfo=UTC),
        "gateway_end": datetime(2028, 8, 1, tzinfo=UTC),
        "authority_end": datetime(2036, 5, 9, tzinfo=UTC),
        "device": ("Odile’s tablet", datetime(2028, 5, 11, tzinfo=UTC)),
        "set_name": "A7F3",
        "numbers": (2, 3),
        "call": "Tomasz, 01632 960123",
        "language": language,
        "practice": True,
        **other,
    }
    return LetterFacts(**told)  # type: ignore[arg-type]  # each test names fields of it


@pytest.fixture(scope="module")
def draw() -> Draw:
    """The renderer that needs no window."""
    return drawn(Fonts(*faces()))


def judged(path: Path) -> tuple[str, str]:
    """What pdfinfo says, and the text; fonts are all inside. Sources: pdfinfo(1), pdffonts(1), pdftotext(1)."""
    info = subprocess.run([needs("pdfinfo"), path], capture_output=True, text=True, check=True).stdout
    fonts = subprocess.run([needs("pdffonts"), path], capture_output=True, text=True, check=True).stdout
    rows = fonts.splitlines()[2:]
    assert rows
    assert all(row.split()[-5] == "yes" for row in rows), fonts
    text = subprocess.run([needs("pdftotext"), "-layout", path, "-"], capture_output=True, text=True, check=True).stdout
    return info, text


@pytest.mark.parametrize(("paper", "size"), [(Paper.A4, "595.28 x 841.89"), (Paper.LETTER, "612 x 792")])
@pytest.mark.parametrize("language", list(Language))
def test_the_letter_is_one_page_with_its_dates(
    draw: Draw, tmp_path: Path, language: Language, paper: Paper, size: str
) -> None:
    """Broken if it fails: the family finds half a letter, or one without the day on which the door shuts."""
    facts = letter_facts(language)
    path = tmp_path / "letter.pdf"
    path.write_bytes(
        draw(
            lambda measure: deputy_sheet.letter(facts, paper, measure),
            paper,
            facts.title,
            language.value,
            facts.letters,
        )
    )
    info, text = judged(path)
    assert "Pages:           1" in info
    assert size in info
    flat = " ".join(text.split())
    for wanted in ("A7F3", "2028", "2036", "Tomasz, 01632 960123", "hearthkey deputy restore", ".sealed.tar"):
        assert wanted in flat


@pytest.mark.parametrize("number", [1, 2, 3])
def test_a_part_is_read_back_from_its_paper_by_two_readers_and_by_hand(draw: Draw, tmp_path: Path, number: int) -> None:
    """Broken if it fails: what lies with a deputy for ten years is not what opens the copy."""
    language = list(Language)[number - 1]
    facts = part_facts(number, language)
    path, picture = tmp_path / "part.pdf", tmp_path / "page"
    path.write_bytes(
        draw(lambda measure: deputy_sheet.part(facts, Paper.A4, measure), Paper.A4, facts.title, language.value, "")
    )
    info, text = judged(path)
    assert "Pages:           1" in info
    rows = "\n".join(line for line in text.splitlines() if line.split()[:1] and line.split()[0].isdecimal())
    assert deputy.read(rows, LIST).octets == facts.part.octets
    subprocess.run([needs("pdftoppm"), "-r", "100", "-png", "-singlefile", path, picture], check=True)
    page = picture.with_suffix(".png")
    (code,) = read_codes(page.read_bytes())
    assert deputy.from_code(code).octets == facts.part.octets
    ran = subprocess.run([needs("zbarimg"), "-q", "--raw", page], capture_output=True, text=True, check=True)
    assert ran.stdout.strip() == code


@pytest.mark.parametrize("number", [1, 2, 3])
def test_a_part_names_neither_the_household_nor_another_part(draw: Draw, tmp_path: Path, number: int) -> None:
    """Broken if it fails: one sheet says whose door it opens, or gives two parts to one finder."""
    facts, path = part_facts(number, Language.ENGLISH), tmp_path / "part.pdf"
    path.write_bytes(draw(lambda measure: deputy_sheet.part(facts, Paper.A4, measure), Paper.A4, facts.title, "en", ""))
    _info, text = judged(path)
    assert "Quince" not in text
    for other in PARTS:
        assert channels.gives_away(text, deputy.words_of(other, LIST)) is False or other is facts.part
        assert deputy.code_of(other).reveal() not in text


def test_the_letter_gives_nothing_away() -> None:
    """Broken if it fails: the one paper that everybody may read holds a part."""
    marks = deputy_sheet.letter(
        letter_facts(Language.ENGLISH), Paper.A4, lambda text, _face, size: len(text) * size / 2
    )
    told = " ".join(one.text for one in marks if isinstance(one, Run))
    assert not any(channels.gives_away(told, deputy.words_of(one, LIST)) for one in PARTS)


def test_the_letter_says_which_end_comes_first() -> None:
    """Broken if it fails: the family waits for a day that is not the one."""

    def told(**other: object) -> str:
        facts = letter_facts(Language.ENGLISH, **other)
        marks = deputy_sheet.letter(facts, Paper.A4, lambda text, _face, size: len(text) * size / 2)
        return " ".join(one.text for one in marks if isinstance(one, Run))

    assert "until 1 June 2028. Then the gateway’s list" in told()
    assert "until 1 March 2028. Then the gateway’s certificate ends" in told(
        gateway_end=datetime(2028, 3, 1, tzinfo=UTC)
    )
    assert "Since 1 March 2026 nobody gets in" in told(list_end=datetime(2026, 3, 1, tzinfo=UTC))
    assert "first device" not in told(device=None)


def test_a_letter_that_fits_no_page_is_refused() -> None:
    """Broken if it fails: the end of the letter is cut off where nobody looks."""
    facts = letter_facts(Language.ENGLISH, call="Tomasz " * 400)
    with pytest.raises(Refused, match="deputy-letter-too-long"):
        deputy_sheet.letter(facts, Paper.A4, lambda text, _face, size: len(text) * size / 2)


@pytest.mark.parametrize("texts", [deputy_texts.TEXTS, stop_set_texts.TEXTS])
def test_every_language_says_every_fact(texts: dict[str, tuple[str, str, str, str]]) -> None:
    """Broken if it fails: the German letter has no date."""
    for note, *told in texts.values():
        wanted = [sorted(one.split("}")[0] for one in text.split("{")[1:]) for text in told]
        assert wanted[0] == wanted[1] == wanted[2], note
