"""The window speaks another language: titles, lists, dates and sentences are put the way that language puts them."""

from __future__ import annotations

import pickle
from collections.abc import Iterator
from datetime import UTC, datetime
from pathlib import Path

import pytest
from PySide6.QtCore import QLocale, QTranslator
from PySide6.QtWidgets import QApplication

from hearthkey.core.errors import Refused
from hearthkey.core.household import possessive
from hearthkey.core.languages import Language
from hearthkey.core.phrases import AND, Listing, Moment, Phrase, Style, sentences, several
from hearthkey.core.sentences.sentence import Sentence
from hearthkey.ui import dates
from hearthkey.ui.languages import of_desktop, speak
from hearthkey.ui.preferences import Memory, Preferences
from hearthkey.ui.text import mended, said, spoken

NINTH = datetime(2028, 5, 9, 13, 5, tzinfo=UTC)


class Few(QTranslator):
    """A language of a few messages."""

    WORDS = {  # noqa: RUF012 - a table of the test
        ("sentences", "{person}’s {device}"): "{device} von {person}",
        ("sentences", "{first} and {next}"): "{first} und {next}",
        ("sentences", "{title} was handed over. Its key and passphrase were erased here."): "{title} ist übergeben.",
        ("sentences", "The pass of {title} is {state}."): "Der Pass von {title} ist {state}.",
        ("words", "ended"): "abgelaufen",
        ("dates", "d MMMM yyyy"): "d. MMMM yyyy",
    }

    def translate(self, context: str, source: str, _what: str | None = None, _count: int = -1) -> str | None:
        """One of them, or nothing, which is not the same as an empty text."""
        return self.WORDS.get((context, source))


@pytest.fixture
def german(qapp: QApplication) -> Iterator[None]:
    """German as far as these tests need it, and its calendar."""
    few = Few()
    qapp.installTranslator(few)
    QLocale.setDefault(QLocale("de_DE"))
    yield
    qapp.removeTranslator(few)
    QLocale.setDefault(QLocale.c())


@pytest.mark.usefixtures("german")
def test_whose_device_it_is() -> None:
    """The English possessive is no German."""
    title = possessive("Ines", "Handy")
    assert title == "Ines’s Handy"
    assert spoken(title) == "Handy von Ines"
    assert said(Sentence("{title}", {"title": title})) == "Handy von Ines"


@pytest.mark.usefixtures("german")
def test_lists_and_dates_within_a_sentence() -> None:
    """An English "and" or month would stand in the middle of a German sentence."""
    both = Listing((possessive("Ines", "Handy"), possessive("Tomasz", "Laptop")), AND)
    assert spoken(both) == "Handy von Ines und Laptop von Tomasz"
    assert spoken(Moment(NINTH, Style.DAY)) == dates.day(NINTH) == "9. Mai 2028"


@pytest.mark.usefixtures("german")
def test_what_was_done_is_said_in_the_language_though_the_diary_is_english() -> None:
    """The diary's chain is over English text; what the window says right after a deed is not."""
    title = possessive("Odile", "Tablet")
    done = Phrase("{title} was handed over. Its key and passphrase were erased here.", {"title": title})
    assert done == "Odile’s Tablet was handed over. Its key and passphrase were erased here."
    assert spoken(sentences([done])) == "Tablet von Odile ist übergeben."


@pytest.mark.usefixtures("german")
def test_words_that_a_fact_is_one_of() -> None:
    """A state is filled into a sentence as a plain word and has to be translated before."""
    refused = Refused("pass-not-alive", title=possessive("Ines", "Handy"), state="ended")
    assert mended(refused).startswith("Der Pass von Handy von Ines ist abgelaufen.")


def test_phrases_survive_the_way_to_another_process() -> None:
    """Errors come from helping processes; what they are made of must come along."""
    title = possessive("Ines", "phone")
    whole = several([title, title, title, title], 3)
    for one in (title, whole, Moment(NINTH, Style.TIME_UTC)):
        again = pickle.loads(pickle.dumps(one))  # noqa: S301 - our own bytes
        assert (type(again), again, spoken(again)) == (type(one), one, spoken(one))


@pytest.mark.parametrize(
    ("wanted", "spoken_then"),
    [
        (["de-AT", "en"], Language.GERMAN),
        (["fr-FR", "es-419"], Language.SPANISH),
        (["fr"], Language.ENGLISH),
        ([], Language.ENGLISH),
    ],
)
def test_the_desktop_s_first_language_that_is_known(wanted: list[str], spoken_then: Language) -> None:
    """Whoever reads French before Spanish is better served in Spanish than in English."""
    assert of_desktop(wanted) is spoken_then


@pytest.mark.parametrize("chosen", [None, *Language])
def test_the_choice_is_kept(tmp_path: Path, chosen: Language | None) -> None:
    """A choice that is forgotten at the next start was none: that is when it takes effect."""
    Memory(tmp_path).keep(Preferences(language=chosen))
    assert Memory(tmp_path).preferences().language is chosen


def test_without_translations_the_window_speaks_english(qapp: QApplication, tmp_path: Path) -> None:
    """A checkout in which nobody ran lrelease has to start all the same."""
    assert speak(qapp, tmp_path, Language.SPANISH) is Language.SPANISH
    assert spoken(possessive("Ines", "phone")) == "Ines’s phone"
    speak(qapp, tmp_path, Language.ENGLISH)
    for one in qapp.findChildren(QTranslator):
        qapp.removeTranslator(one)
        one.deleteLater()
