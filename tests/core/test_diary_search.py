"""Looking things up in the diary: plain typing finds accents, and nobody's entries are taken for somebody else's."""

from __future__ import annotations

import pytest
from hypothesis import example, given
from hypothesis import strategies as st

from hearthkey.core.diary_search import Subject, Subjects, folded, wanted
from tests.ui.practice import NOW, made_pass

PEOPLE = Subjects(
    made_pass(person, device, made=NOW, ends=NOW)
    for person, device in (
        ("Odile", "tablet"),
        ("Odile", "tablet 2"),
        ("Ines", "phone"),
        ("Ines Łucja", "phone"),
        ("Tomasz", "old phone"),
    )
)
TABLET = Subject("Odile", "tablet", "Odile’s tablet")


@pytest.mark.parametrize(
    ("typed", "written"),
    [("grosse", "Große"), ("ines lucja", "Ínés Łucja"), ("odile's", "Odile’s"), ("oeuf", "Œuf"), ("한", "한글")],
)
def test_plain_typing_finds_accents(typed: str, written: str) -> None:
    """Broken if it fails: whoever has no key for a letter does not find the entry."""
    assert folded(typed) in folded(written)


@given(st.text(max_size=40))
@example("\N{MATHEMATICAL SANS-SERIF BOLD CAPITAL A}")
def test_folding_twice_changes_nothing(text: str) -> None:
    """Broken if it fails: a word that was found once is not found again."""
    assert folded(folded(text)) == folded(text)


def test_the_longer_name_is_not_taken_for_the_shorter_one_in_it() -> None:
    """Broken if it fails: the entries of the second tablet stand among those of the first."""
    assert PEOPLE.of("Odile’s tablet 2 was stopped.") == {Subject("Odile", "tablet 2", "Odile’s tablet 2")}
    assert PEOPLE.of("Odile’s tablet was stopped.") == {TABLET}
    assert {one.person for one in PEOPLE.of("Ines Łucja’s phone and Ines’s phone were stopped.")} == {
        "Ines",
        "Ines Łucja",
    }


def test_a_name_inside_a_word_is_nobody() -> None:
    """Broken if it fails: an entry about Tomaszek's files counts as one about Tomasz."""
    assert PEOPLE.of("Tomaszek and the inesses were here; tablet, phone.") == frozenset()
    assert PEOPLE.of("Tomasz: sheets in Polish.") == {Subject("Tomasz", "", "Tomasz")}


def test_what_is_chosen_and_typed_holds_together() -> None:
    """Broken if it fails: a filter and a search widen each other."""
    sentence = "Odile’s tablet was stopped with revocation list 3."
    text, told = folded(sentence), PEOPLE.of(sentence)
    assert wanted("STÖPPED list", person="Odile").fits(text, told)
    assert wanted(title="Odile’s tablet").fits(text, told)
    assert not wanted("stopped", person="Ines").fits(text, told)
    assert not wanted("let in", person="Odile").fits(text, told)
    assert not wanted(title="Odile’s tablet 2").fits(text, told)
    assert wanted().anything
    assert wanted().fits(text, frozenset())
