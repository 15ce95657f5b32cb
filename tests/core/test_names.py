"""Names of people, devices and households: what is welcome, and what is turned away with a sentence."""

from __future__ import annotations

import unicodedata

import pytest
from hypothesis import given
from hypothesis import strategies as st

from hearthkey.core import names
from hearthkey.core.errors import Refused


def refusal(text: str) -> Refused:
    """Return what a name is refused with."""
    with pytest.raises(Refused) as refused:
        names.display_name(text, "household name")
    return refused.value


@pytest.mark.parametrize(
    "text", ["Quince Cottage", "Odile", "אודיל", "خالد", "Zoë", "祖母", "O'Neill & Søn", "Nº 7", "7"]
)
def test_names_of_people_are_welcome(text: str) -> None:
    """Broken if it fails: somebody cannot write their own name, right-to-left letters included."""
    assert names.display_name(text, "person’s name") == text


@pytest.mark.parametrize("text", ["", " ", "   ", "\u00a0", "--", "…", "'", "🍐"])
def test_a_name_without_letter_or_figure_is_refused(text: str) -> None:
    """Broken if it fails: a device nobody can call by a name."""
    assert refusal(text).code == "name-empty"


def test_sixty_four_characters_fit_and_sixty_five_do_not() -> None:
    """Broken if it fails: a certificate breaks RFC 5280 appendix A.1 (ub-organization-name is 64)."""
    assert names.display_name("q" * 64, "household name") == "q" * 64
    refused = refusal("q" * 65)
    assert (refused.code, refused.facts) == ("name-too-long", {"what": "household name", "limit": 64, "length": 65})


def test_a_huge_name_is_too_long_like_any_other() -> None:
    """Broken if it fails: a pasted book is treated as a name."""
    assert refusal("q" * 1_000_000).code == "name-too-long"


@pytest.mark.parametrize(
    "character",
    ["\x00", "\t", "\n", "\r", "\x1b", "\x7f", "\x85", "\u2028", "\u2029", "\ud800", "\ue000", "\U0010ffff"],
)
def test_control_characters_are_refused_by_place(character: str) -> None:
    """Broken if it fails: a name moves the cursor of a terminal or breaks a line of the diary."""
    refused = refusal(f"In{character}es")
    assert (refused.code, refused.facts["place"]) == ("name-unprintable", 3)
    assert refused.facts["character"] == f"U+{ord(character):04X}"


@pytest.mark.parametrize("character", list("\u061c\u200e\u200f\u202a\u202b\u202c\u202d\u202e\u2066\u2067\u2068\u2069"))
def test_marks_that_turn_the_text_are_refused(character: str) -> None:
    """Broken if it fails: a name shows something other than what is signed (UAX #9, table of directional marks)."""
    assert refusal(f"Ines{character}enohp").code == "name-unprintable"


def test_composed_and_decomposed_letters_are_one_name() -> None:
    """Broken if it fails: "Zoë" typed on two computers is two people (UAX #15, NFC)."""
    decomposed = unicodedata.normalize("NFD", "Zoë")
    assert decomposed != "Zoë"
    assert names.display_name(decomposed, "person’s name") == "Zoë"


def test_the_length_is_counted_after_composing() -> None:
    """Broken if it fails: a name of 64 letters with accents is called too long."""
    assert len(names.display_name("e\u0301" * 64, "household name")) == 64


def test_spaces_around_and_between_are_one() -> None:
    """Broken if it fails: two names that look alike are two devices."""
    assert names.display_name("  Quince   Cottage ", "household name") == "Quince Cottage"


@given(st.text())
def test_whatever_passes_once_passes_again_unchanged(text: str) -> None:
    """Broken if it fails: a name changes when it is read back and checked again."""
    try:
        name = names.display_name(text, "household name")
    except Refused:
        return
    assert names.display_name(name, "household name") == name
    assert 0 < len(name) <= 64


@pytest.mark.parametrize(
    ("text", "stem"),
    [
        ("Ines’s phone", "ines-phone"),
        ("Zoë's Gerät", "zoe-gerat"),
        ("../../etc/passwd", "etc-passwd"),
        ("con", "con"),
        ("祖母", "k7m2p9xw"),
        ("x" * 200, "x" * 48),
    ],
)
def test_file_stems_are_safe_everywhere(text: str, stem: str) -> None:
    """Broken if it fails: a device's name decides in which folder its bundle lands."""
    assert names.file_stem(text, "k7m2p9xw") == stem
