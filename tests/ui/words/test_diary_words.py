"""The diary in a window of another language: shown, found, copied and written in it; for machines in English."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

import pytest
from PySide6.QtCore import QLocale, QTranslator
from PySide6.QtWidgets import QApplication

from hearthkey.core.diary import DiaryEntry
from hearthkey.core.diary_words import written
from hearthkey.core.phrases import Phrase
from hearthkey.formats.diary_file import as_json_lines
from hearthkey.ui.drawer.diary_model import DiaryModel
from tests.ui.practice import NOW, entries

LANGUAGE = Phrase("The change of {what} was taken back.", {"what": "Haus"})
ENGLISH, GERMAN = "The change of Haus was taken back.", "Die Änderung an Haus wurde zurückgenommen."


class Few(QTranslator):
    """A language of one message."""

    def translate(self, _context: str, source: str, _what: str | None = None, _count: int = -1) -> str | None:
        """It, or nothing, which is not the same as an empty text."""
        return "Die Änderung an {what} wurde zurückgenommen." if source == LANGUAGE.template else None


@pytest.fixture
def german(qapp: QApplication) -> Iterator[None]:
    """German as far as these tests need it."""
    few, before = Few(), QLocale()
    qapp.installTranslator(few)
    QLocale.setDefault(QLocale("de_DE"))
    yield
    qapp.removeTranslator(few)
    QLocale.setDefault(before)


@pytest.fixture
def told() -> tuple[DiaryEntry, ...]:
    """An entry with its words, one with words of another sentence, and one of before words were kept."""
    good, bad, old = entries((NOW, "undo", ENGLISH), (NOW, "undo", "Nothing happened."), (NOW, "undo", ENGLISH))
    return replace(good, words=written(LANGUAGE)), replace(bad, words=written(LANGUAGE)), old


@pytest.mark.usefixtures("german")
def test_entries_are_shown_in_german(told: tuple[DiaryEntry, ...]) -> None:
    """Else whoever reads no English cannot read the diary, or reads there what its chain does not vouch for."""
    model = DiaryModel()
    model.show_entries(told)
    assert [model.said(one) for one in told] == [GERMAN, "Nothing happened.", ENGLISH]
    assert GERMAN in model.text()


@pytest.mark.usefixtures("german")
@pytest.mark.parametrize(("word", "found"), [("zurückgenommen", 1), ("taken back", 2), ("Änderung Haus", 1)])
def test_a_word_of_either_language_finds_an_entry(told: tuple[DiaryEntry, ...], word: str, found: int) -> None:
    """Else what is read cannot be looked up, or what a file for machines says."""
    model = DiaryModel()
    model.show_entries(told)
    model.search(word)
    assert model.rowCount() == found


@pytest.mark.usefixtures("german")
def test_the_file_for_machines_stays_english(told: tuple[DiaryEntry, ...]) -> None:
    """Else the chain of a file could not be checked, for it is over the English text."""
    lines = as_json_lines(told, lambda _sentence: ()).decode()
    assert lines.count(ENGLISH) == 2
    assert "Änderung" not in lines


def test_an_english_window_shows_the_text_under_the_chain(qapp: QApplication, told: tuple[DiaryEntry, ...]) -> None:
    """Else opening the diary would take apart every entry for nothing."""
    assert qapp is not None
    before = QLocale()
    QLocale.setDefault(QLocale("en_GB"))
    model = DiaryModel()
    model.show_entries(told)
    assert [model.said(one) for one in told] == [one.sentence for one in told]
    QLocale.setDefault(before)
