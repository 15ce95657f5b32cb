"""The diary of a real household in a German window: said, found and taken along in German, and chained in English."""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator
from contextlib import closing
from pathlib import Path

import pytest
from PySide6.QtCore import QTranslator
from PySide6.QtWidgets import QApplication

from hearthkey.adapters.register import FILE_NAME
from hearthkey.core.diary import DiaryEntry, first_misfit
from hearthkey.core.languages import Language
from hearthkey.services.enrolling import EnrolRequest
from hearthkey.services.settling import SettleRequest
from hearthkey.ui.drawer.diary_model import DiaryModel
from hearthkey.ui.languages import speak
from tests.fakes.home import Home, at_home
from tests.ui.desk.test_type import translations

__all__ = ["translations"]


@pytest.fixture
def german(qapp: QApplication, translations: Path) -> Iterator[None]:
    """The window speaks German, as translators made it."""
    speak(qapp, translations, Language.GERMAN)
    yield
    speak(qapp, translations, Language.ENGLISH)
    for one in qapp.findChildren(QTranslator):
        qapp.removeTranslator(one)
        one.deleteLater()


@pytest.fixture(scope="module")
def diary(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Home]:
    """Quince Cottage after some deeds of every sort, one of them taken back."""
    with at_home(tmp_path_factory.mktemp("german") / "data", quick=True) as home:
        house = home.house
        home.hand_over("Ines phone")
        home.add(EnrolRequest("Wren", "reader", "linux", guest=True))
        house.undoing.watch(lambda: home.stop("Odile tablet"))
        house.undoing.undo()
        house.undoing.redo()
        house.settling.apply(house.settling.preview(SettleRequest(dns_servers=("198.51.100.2",), tunnel="full")))
        home.revoke("Tomasz laptop")
        house.listing.sign_anew()
        yield home


def entries(home: Home) -> tuple[DiaryEntry, ...]:
    """The diary as the register has it."""
    return tuple(home.house.register.diary())


@pytest.mark.usefixtures("german")
def test_every_entry_is_said_in_german(diary: Home) -> None:
    """Broken: the relative who looks after the household reads it in a language that is not theirs."""
    model = DiaryModel()
    model.show_entries(entries(diary), diary.house.register.passes())
    for one in entries(diary):
        assert one.words, one.sentence
        assert model.said(one) != one.sentence, one.sentence
    said = "\n".join(model.said(one) for one in entries(diary))
    for word in ("Sperrliste", "Odile"):
        assert word in said
    assert "was stopped" not in said
    register = diary.house.register
    assert first_misfit(register.diary(), written=register.diary_written()) is None


@pytest.mark.usefixtures("german")
def test_it_is_found_by_words_of_either_language(diary: Home) -> None:
    """Broken: what is on the screen is not found, or what stands in an old printout is not."""
    model = DiaryModel()
    model.show_entries(entries(diary), diary.house.register.passes())
    whole = model.rowCount()
    for word in ("Sperrliste", "revocation list", "Odile"):
        model.search(word)
        assert 0 < model.rowCount() < whole, word
    model.search("Fernseher")
    assert model.rowCount() == 0


@pytest.mark.usefixtures("german")
def test_tampered_words_show_the_english_sentence(diary: Home, tmp_path: Path) -> None:
    """Broken: a row that the chain does not cover decides what the diary says."""
    first, second, *_ = entries(diary)
    swapped = DiaryEntry(first.number, first.at, first.verb, first.sentence, first.link, second.words)
    model = DiaryModel()
    model.show_entries((swapped,))
    assert model.said(swapped) == first.sentence
    with closing(sqlite3.connect(diary.house.data / FILE_NAME)) as register:
        for statement in ("DELETE FROM diary_words", "UPDATE diary_words SET words = ''"):
            with pytest.raises(sqlite3.IntegrityError):
                register.execute(statement)
    del tmp_path


def test_an_english_window_shows_what_is_chained(diary: Home) -> None:
    """Broken: the English of the window and that of the register drift apart."""
    model = DiaryModel()
    model.show_entries(entries(diary))
    assert [model.said(one) for one in entries(diary)] == [one.sentence for one in entries(diary)]
