"""Passphrases that somebody typed are judged by how long they stand guessing."""

from __future__ import annotations

import pytest

from hearthkey.core.errors import Refused
from hearthkey.core.secret import Secret
from hearthkey.services import passphrases


@pytest.mark.parametrize(
    "text",
    ["aaaaaaaaaaaaaaaaaaaa", "passwordpassword", "quincequincequince", "123456789012345678", "qwertyuiopasdfgh"],
)
def test_what_is_soon_guessed_is_refused(text: str) -> None:
    """Broken if it fails: whoever steals the key text opens it."""
    with pytest.raises(Refused) as refused:
        passphrases.chosen(text)
    assert (refused.value.code, refused.value.facts) == ("passphrase-weak", {})


def test_a_long_unlikely_one_is_taken() -> None:
    """Broken if it fails: nobody can choose their own."""
    assert passphrases.chosen(" plum kettle ivory lantern ").reveal() == "plum kettle ivory lantern"


def test_one_longer_than_the_judge_can_read_is_taken() -> None:
    """Broken if it fails: the best passphrase of all ends in a trace (zxcvbn takes 72 characters)."""
    long = "plum kettle ivory lantern gravel otter quilt " * 10
    assert passphrases.chosen(long).reveal() == long.strip()


@pytest.mark.parametrize("again", ["plum kettle ivory lanterN", "", "plum  kettle ivory lantern"])
def test_a_second_typing_that_differs_is_refused(again: str) -> None:
    """Broken if it fails: a slip of the finger locks the household for ever."""
    with pytest.raises(Refused) as refused:
        passphrases.confirmed(Secret("plum kettle ivory lantern"), again)
    assert refused.value.code == "passphrase-differs"


def test_the_same_once_more_is_taken() -> None:
    """Broken if it fails: nobody ever gets past the second typing."""
    first = Secret("plum kettle ivory lantern")
    passphrases.confirmed(first, " plum kettle ivory lantern\n")
    assert first == Secret("plum kettle ivory lantern")
