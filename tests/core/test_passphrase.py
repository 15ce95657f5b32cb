"""Passphrases: where they come from, how much they stand, and what may be typed."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from hearthkey.adapters.places import word_list
from hearthkey.core import passphrase
from hearthkey.core.errors import Refused
from tests.fakes.dice import SeededDice


def test_the_list_is_the_large_one() -> None:
    """Broken if it fails: fewer words, fewer bits. EFF large word list: 7,776 words, for five dice."""
    words = word_list()
    assert len(words) == len(set(words)) == 6**5
    assert all(word.isascii() and word == word.lower() and word.strip() == word for word in words)


@pytest.mark.parametrize(
    ("count", "bits"), [(1, 12.92), (4, 51.70), (5, 64.62), (6, 77.55), (7, 90.47), (8, 103.40), (10, 129.25)]
)
def test_the_entropy_of_words(count: int, bits: float) -> None:
    """Broken if it fails: the promise of 90 bits is a wrong sum (log2 of 7,776 is 12.925 a word)."""
    assert passphrase.bits(7776, count) == pytest.approx(bits, abs=0.005)


def test_seven_words_are_drawn_and_spaces_stand_between() -> None:
    """Broken if it fails: a hyphen would stand between words, and four words of the list have one inside."""
    words = word_list()
    made = passphrase.make(words, SeededDice().below).reveal()
    assert len(made.split(" ")) == 7
    assert set(made.split(" ")) <= set(words)
    assert sum("-" in word for word in words) == 4


def test_every_word_can_be_drawn() -> None:
    """Broken if it fails: some words never come up, so there are fewer bits than are promised."""
    asked: list[int] = []

    def last(limit: int) -> int:
        asked.append(limit)
        return limit - 1

    assert passphrase.make(("quince", "pear"), last).reveal() == " ".join(["pear"] * 7)
    assert asked == [2] * 7


def test_what_the_app_makes_may_be_typed() -> None:
    """Broken if it fails: the app refuses its own words."""
    made = passphrase.make(word_list(), SeededDice().below)
    assert passphrase.typed(f"  {made.reveal()} ") == made


@pytest.mark.parametrize(
    ("text", "code"),
    [
        ("", "passphrase-empty"),
        ("   ", "passphrase-empty"),
        ("fourteen chars", "passphrase-too-short"),
        ("plum kettle ivory lantérn", "passphrase-not-ascii"),
        ("plum kettle\tivory lantern", "passphrase-not-ascii"),
        ("plum kettle\u00a0ivory lantern", "passphrase-not-ascii"),
        ("🍐" * 20, "passphrase-not-ascii"),
        ("q" * 1025, "passphrase-too-long"),
    ],
)
def test_what_may_not_be_typed(text: str, code: str) -> None:
    """Broken if it fails: a passphrase that opens here and not on the phone (RFC 7292 appendix B.1)."""
    with pytest.raises(Refused) as refused:
        passphrase.typed(text)
    assert refused.value.code == code


def test_the_place_is_told_and_the_character_is_not() -> None:
    """Broken if it fails: part of a passphrase reaches a log."""
    with pytest.raises(Refused) as refused:
        passphrase.typed("plum é kettle ivory")
    assert refused.value.facts == {"place": 6}


@given(st.text(st.characters(min_codepoint=0x20, max_codepoint=0x7E), min_size=15, max_size=1024))
def test_every_keyboard_character_may_be_typed(text: str) -> None:
    """Broken if it fails: a sign on every keyboard is refused."""
    plain = text.strip()
    if len(plain) >= 15:
        assert passphrase.typed(text).reveal() == plain
