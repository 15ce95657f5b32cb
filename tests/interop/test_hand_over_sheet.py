"""Sheets and cards as PDF, judged by poppler: one page, fonts inside, every word to be found."""

from __future__ import annotations

import subprocess
from datetime import UTC, datetime
from pathlib import Path

import pytest

from hearthkey.adapters.places import faces
from hearthkey.core.errors import Refused
from hearthkey.core.hand_over_sheet import CardFacts, Paper, SheetFacts
from hearthkey.core.languages import Language
from hearthkey.core.secret import Secret
from hearthkey.core.steps import Step
from hearthkey.formats import hand_over_sheet, hand_over_texts
from hearthkey.formats.laid_pdf import Draw, drawn
from hearthkey.formats.laid_sheet import LEFT, Face, Run
from hearthkey.formats.sheet_pdf import Fonts
from tests.judges import needs

WORDS = Secret("plum kettle ivory lantern gravel otter quilt")
STEP = Step(
    "Öffne die Datei und geh in den „Einstellungen“ zu „Verschlüsselung und Anmeldedaten“, dann zu „Zertifikat“.",
    "„Zertifikat aus dem Gerätespeicher installieren“",
)
SAMPLES = {
    Language.ENGLISH: (Step("Open the file.", "“Extract certificate”"), Step("Type the seven words.")),
    Language.GERMAN: (STEP,) * 7,
    Language.SPANISH: (Step("Abre el archivo.", "«Extraer certificado»"),) * 5,
}


def facts(language: Language, **other: object) -> SheetFacts:
    """Odile's tablet."""
    told: dict[str, object] = {
        "person": "Odile",
        "device": "tablet",
        "kind": "Android 13",
        "household": "Quince Cottage",
        "made": datetime(2026, 5, 12, tzinfo=UTC),
        "ends": datetime(2028, 5, 11, tzinfo=UTC),
        "steps": SAMPLES[language],
        "call": "Ines, 01632 960123",
        "language": language,
        "practice": True,
        **other,
    }
    return SheetFacts(**told)  # type: ignore[arg-type]  # each test names fields of it


@pytest.fixture(scope="module")
def draw() -> Draw:
    """The renderer that needs no window."""
    return drawn(Fonts(*faces()))


def page_of(draw: Draw, told: SheetFacts, paper: Paper) -> bytes:
    """The sheet as PDF."""
    letters = told.person + told.device + told.household + told.call + "".join(one.do + one.sees for one in told.steps)
    return draw(
        lambda measure: hand_over_sheet.sheet(told, paper, measure), paper, "sheet", told.language.value, letters
    )


def judged(path: Path) -> tuple[str, str]:
    """What pdfinfo says, and the text; fonts are all inside."""
    info = subprocess.run([needs("pdfinfo"), path], capture_output=True, text=True, check=True).stdout
    fonts = subprocess.run([needs("pdffonts"), path], capture_output=True, text=True, check=True).stdout
    rows = fonts.splitlines()[2:]
    assert rows
    assert all(row.split()[-5] == "yes" for row in rows), fonts
    text = subprocess.run([needs("pdftotext"), path, "-"], capture_output=True, text=True, check=True).stdout
    return info, " ".join(text.split())


@pytest.mark.parametrize("paper", Paper)
@pytest.mark.parametrize("language", Language)
def test_a_sheet_is_one_page_in_every_language_and_says_everything(
    draw: Draw, tmp_path: Path, language: Language, paper: Paper
) -> None:
    """If this failed, a relative would hold half of the steps, or a page of boxes."""
    told = facts(language)
    path = tmp_path / "sheet.pdf"
    path.write_bytes(page_of(draw, told, paper))
    info, text = judged(path)
    wide, high = (float(one) for one in info.split("Page size:")[1].split("pts")[0].split("x"))
    assert "Pages:           1" in info
    assert (round(wide), round(high)) == (round(paper.value[0]), round(paper.value[1]))
    for step in told.steps:
        assert step.do in text
        assert step.sees in text
    assert "Ines, 01632 960123" in text
    assert hand_over_texts.day(told.ends, language) in text


def test_a_card_has_the_seven_words_and_nothing_that_they_open(draw: Draw, tmp_path: Path) -> None:
    """If this failed, the card would tell a thief where to type the words."""
    card = CardFacts("Odile", WORDS, Language.SPANISH)
    path = tmp_path / "card.pdf"
    data = draw(lambda measure: hand_over_sheet.card(card, Paper.A4, measure), Paper.A4, "card", "es", WORDS.reveal())
    path.write_bytes(data)
    info, text = judged(path)
    assert "Pages:           1" in info
    assert all(word in text for word in WORDS.reveal().split())
    for given_away in ("tablet", "Quince", "archivo", "http", ".p12"):
        assert given_away not in text


def plain(text: str, face: Face, size: float) -> float:
    """A measure without fonts."""
    return len(text) * size * (0.55 if face is Face.STRONG else 0.5)


def test_what_does_not_fit_is_refused_and_long_names_are_not_cut() -> None:
    """If this failed, a second page would be lost at the printer, or a name would run off the paper."""
    long = facts(Language.GERMAN, person="Q" * 64, device="x" * 64, call="0" * 80)
    marks = hand_over_sheet.sheet(long, Paper.LETTER, plain)
    wide = Paper.LETTER.value[0]
    runs = [one for one in marks if isinstance(one, Run)]
    assert all(one.x >= LEFT and one.x + plain(one.text, one.face, one.size) <= wide - LEFT + 1 for one in runs)
    assert max(one.y for one in runs) < Paper.LETTER.value[1]
    with pytest.raises(Refused, match="sheet-too-long"):
        hand_over_sheet.sheet(facts(Language.GERMAN, steps=(Step("Wort " * 150),) * 7), Paper.LETTER, plain)
    with pytest.raises(Refused, match="sheet-too-many-steps"):
        hand_over_sheet.sheet(facts(Language.GERMAN, steps=(STEP,) * 8), Paper.A4, plain)


@pytest.mark.parametrize("language", Language)
def test_neither_message_has_what_the_other_has(language: Language) -> None:
    """If this failed, one intercepted message would be enough."""
    found = hand_over_sheet.messages("Odile", "tablet", WORDS, language)
    assert not set(WORDS.reveal().split()) & set(found.written.replace(",", " ").split())
    assert all(word in found.spoken.reveal() for word in WORDS.reveal().split())
    assert "tablet" not in found.spoken.reveal()
    assert "plum" not in repr(found)


@pytest.mark.parametrize("key", hand_over_texts.TEXTS)
def test_every_text_is_there_in_every_language_with_the_same_facts(key: str) -> None:
    """If this failed, a sheet would have a hole, or braces on it."""
    one = hand_over_texts.TEXTS[key]
    names = [{part.split("}")[0] for part in text.split("{")[1:]} for text in one[1:]]
    assert one.note
    assert all(one[1:])
    assert names[0] == names[1] == names[2]
