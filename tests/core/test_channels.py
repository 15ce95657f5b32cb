"""The two-channel guard."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from hearthkey.core.channels import Carries, Piece, composed, gives_away
from hearthkey.core.errors import Bug
from hearthkey.core.secret import Secret

WORDS = Secret("plum kettle ivory lantern gravel otter quilt")


def test_bundle_and_words_never_come_on_one_page() -> None:
    """If this failed, one photo of a sheet would open the bundle."""
    with pytest.raises(Bug, match="both-channels"):
        composed([Piece("http://198.51.100.23/abc", Carries.BUNDLE), Piece("plum", Carries.WORDS)])
    assert composed([Piece("a", Carries.BUNDLE), Piece("b")]) == ("a", "b")


def test_the_key_on_paper_and_its_passphrase_never_come_on_one_page() -> None:
    """If this failed, whoever finds the paper would have the household."""
    with pytest.raises(Bug, match="both-channels"):
        composed([Piece("OBQWG", Carries.KEY), Piece("plum", Carries.WORDS)])
    with pytest.raises(Bug, match="both-channels"):
        composed([Piece("OBQWG", Carries.KEY), Piece("Quince Cottage: plum kettle")], words=WORDS)
    assert composed([Piece("OBQWG", Carries.KEY), Piece("b")], words=WORDS) == ("OBQWG", "b")


@pytest.mark.parametrize(
    "text",
    ["Say: plum kettle", "1 plum, 2 kettle", "PLUM\nKETTLE", "ivory-lantern.zip", "otter…quilt", "gravel  otter"],
)
def test_two_neighbouring_words_are_found_however_they_are_written(text: str) -> None:
    """If this failed, a file name or a sheet could carry the passphrase in disguise."""
    assert gives_away(text, WORDS)
    with pytest.raises(Bug, match="both-channels"):
        composed([Piece(text)], words=WORDS)


@pytest.mark.parametrize("text", ["plum", "kettle plum", "plums kettles", "A lantern for the otter", ""])
def test_a_word_that_happens_to_stand_there_is_no_passphrase(text: str) -> None:
    """If this failed, a plum tree in the household's name would stop every sheet."""
    assert not gives_away(text, WORDS)


@given(st.text(max_size=40), st.integers(min_value=0, max_value=5), st.text(max_size=40))
def test_nothing_around_hides_two_words(before: str, first: int, after: str) -> None:
    """If this failed, the guard would depend on what stands around."""
    two = " ".join(WORDS.reveal().split()[first : first + 2])
    assert gives_away(f"{before} {two} {after}", WORDS)
