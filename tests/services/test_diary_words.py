"""What diary entries are made of, kept with them by the verbs."""

from __future__ import annotations

from contextlib import suppress

from hearthkey.core.diary_words import heard
from hearthkey.core.errors import Refused
from hearthkey.core.phrases import Listing, Phrase
from hearthkey.services.settling import SettleRequest
from hearthkey.services.writing_diary import note
from tests.fakes.clock import NOW
from tests.fakes.home import Home


def test_what_is_taken_back_keeps_its_words(home: Home) -> None:
    """Else a window in another language would say in English that a change was taken back or done again."""
    undoing, register = home.house.undoing, home.house.register
    settling = home.house.settling
    undoing.watch(lambda: settling.apply(settling.preview(SettleRequest(tunnel="full"))))
    undoing.undo()
    undoing.redo()
    undoing.watch(lambda: home.stop("Odile tablet"))
    undoing.undo()
    undoing.redo()
    verbs = [one.verb for one in register.diary()]
    assert verbs.count("undo") == verbs.count("redo") == 2
    for entry in register.diary():
        assert isinstance(heard(entry.words, entry.sentence), Phrase | Listing), entry.sentence


def test_an_entry_and_its_words_are_written_both_or_none(home: Home) -> None:
    """Else words of an entry that never came about would be taken for those of the next one."""
    register = home.house.register
    before = register.diary()
    with suppress(Refused), register.change() as change:
        note(register, change, verb="settle", sentence=Phrase("{name} was founded.", {"name": "Quince"}), now=NOW)
        raise Refused("undo-nothing")
    assert register.diary() == before
    with register.change() as change:
        note(register, change, verb="settle", sentence="Plain.", now=NOW)
    assert register.diary()[-1].words == ""
    assert register.diary()[-1].sentence == "Plain."


def test_words_that_were_altered_fall_back_to_english() -> None:
    """Else somebody with the file could have the window say what the chain does not vouch for."""
    words = '{"phrase":"{whom} was let in.","facts":{"whom":"Odile"}}'
    assert isinstance(heard(words, "Odile was let in."), Phrase)
    again = heard(words.replace("let in", "stopped"), "Odile was let in.")
    assert type(again) is str
    assert again == "Odile was let in."
