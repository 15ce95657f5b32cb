"""The lines of the household's paper: what a slip of the hand does to them."""

from __future__ import annotations

import hashlib

import pytest
from hypothesis import given
from hypothesis import strategies as st

from hearthkey.core import paper
from hearthkey.core.errors import Bug, Refused
from hearthkey.core.paper import Gathered, PaperLine

ALPHABET = "ABCDEFGHIJKLMNOPQRSTUVWXYZ234567"
CONTENT = b"\x30\x82\x02\x58" + hashlib.shake_256(b"Quince Cottage").digest(600)
LINES = paper.lines_of(CONTENT)


def typed(lines: tuple[PaperLine, ...] = LINES) -> list[str]:
    """The lines as they stand on paper."""
    return [f"{one.number:02}  {' '.join(one.groups)}" for one in lines]


def test_the_checksum_is_the_published_one() -> None:
    """Broken if it fails: nobody else can check a line. Source: CRC-24 of the digits 1 to 9 (from memory)."""
    assert paper.crc_24(b"123456789") == 0x21CF02
    assert paper.crc_24(b"") == 0xB704CE


def test_every_single_wrong_character_of_a_line_is_caught_by_its_own_checksum() -> None:
    """Broken if it fails: a slip becomes part of the CA key, and nobody knows in which line."""
    right = typed()[6]
    number, body = right[:2], right[4:].replace(" ", "")
    assert len(body) == 45
    for place, character in enumerate(body):
        for other in ALPHABET:
            if other != character:
                slipped = f"{number} {body[:place]}{other}{body[place + 1 :]}"
                assert paper.read_typed(slipped) == paper.Typed((), (7,))


def test_two_neighbours_that_changed_places_are_caught() -> None:
    """Broken if it fails: the commonest slip of a fast hand goes unseen, though a CRC of 24 bits sees any."""
    number, body = "07", typed()[6][4:].replace(" ", "")
    for place in range(len(body) - 1):
        swapped = body[:place] + body[place + 1] + body[place] + body[place + 2 :]
        if swapped != body:
            assert paper.read_typed(f"{number} {swapped}").bad == (7,)


@pytest.mark.parametrize("number", ["08", "17", "70", "00", "99"])
def test_a_line_under_another_number_is_caught(number: str) -> None:
    """Broken if it fails: two lines that changed places make another key."""
    assert paper.read_typed(f"{number}{typed()[6][2:]}").lines == ()


def test_one_too_many_or_too_few_is_caught() -> None:
    """Broken if it fails: a group typed twice, or left out, goes unseen."""
    for line in (f"{typed()[6]} ABCDE", typed()[6][:-6], typed()[6][:-1]):
        assert paper.read_typed(line) == paper.Typed((), (7,))


def test_small_letters_missing_spaces_and_digits_that_are_never_meant_are_no_slips() -> None:
    """Broken if it fails: typing is harder than it has to be."""
    text = "\n".join(one.lower().replace(" ", "", 3).replace("o", "0").replace("b", "8") for one in typed())
    spaced = "\n".join(f"{one[:2]}. {one[2:]}" for one in text.splitlines())
    found = paper.read_typed(spaced.replace("  ", " "))
    assert found.bad == tuple(one.number for one in LINES if one not in found.lines)
    plain = "\n".join(
        one[:4] + one[4:].lower().replace("o", "0").replace("i", "1").replace("b", "8") for one in typed()
    )
    assert paper.read_typed(plain) == paper.Typed(LINES, ())


def test_words_around_the_lines_are_passed_over() -> None:
    """Broken if it fails: what a PDF reader copies has to be tidied by hand first."""
    text = "\n".join(["Quince Cottage: the key on paper", "", *reversed(typed()), "2 of 2", "12 May 2026"])
    assert paper.read_typed(text) == paper.Typed(LINES, ())


def test_slips_and_gaps_are_named_and_everything_else_is_kept() -> None:
    """Broken if it fails: one slip costs an evening of typing."""
    rows = typed()
    slipped = [*rows[:4], rows[4].replace(rows[4][4], "A" if rows[4][4] != "A" else "B", 1), *rows[6:]]
    first = paper.read_typed("\n".join(slipped))
    so_far = Gathered().with_lines(first.lines, first.bad)
    assert so_far.bad == (5,)
    assert so_far.missing == (5, 6)
    with pytest.raises(Refused, match="paper-slips") as told:
        so_far.content()
    assert told.value.facts == {"slips": ("5",), "missing": ("5", "6"), "read": len(LINES) - 2}
    more = paper.read_typed(rows[4])
    so_far = so_far.with_lines(more.lines, more.bad)
    assert so_far.bad == ()
    with pytest.raises(Refused, match="paper-incomplete"):
        so_far.content()
    assert so_far.with_lines(paper.read_typed(rows[5]).lines).content() == CONTENT


def test_lines_of_two_papers_are_told_apart() -> None:
    """Broken if it fails: half of an old key and half of a new one are taken for one."""
    other = paper.lines_of(CONTENT[:30] + bytes([CONTENT[30] ^ 1]) + CONTENT[31:])
    with pytest.raises(Refused, match="paper-of-another"):
        Gathered().with_lines([*LINES, other[-1]])
    with pytest.raises(Refused, match="paper-of-another"):
        Gathered().with_lines([*LINES[:-1], other[-1]]).content()
    with pytest.raises(Refused, match="paper-of-another"):
        Gathered().with_lines([*LINES, PaperLine(len(LINES) + 1, bytes(25))]).content()


def test_nothing_read_is_told_as_such_and_the_first_line_may_come_last() -> None:
    """Broken if it fails: the app says a paper is incomplete that it never saw."""
    with pytest.raises(Refused, match="paper-unread"):
        Gathered().content()
    so_far = Gathered().with_lines(LINES[1:5])
    assert so_far.count is None
    assert so_far.missing == (1,)
    assert not so_far.whole
    assert so_far.with_lines(LINES[5:]).with_lines(LINES[:1]).content() == CONTENT


def test_what_has_no_room_is_refused() -> None:
    """Broken if it fails: the last lines fall off the page."""
    with pytest.raises(Refused, match="paper-too-large"):
        paper.lines_of(b"\x30\x82\x07\xd0" + bytes(2000))
    with pytest.raises(Bug, match="paper-not-der"):
        paper.lines_of(b"no DER")


@given(st.text(alphabet=st.characters(max_codepoint=0x2100), max_size=120))
def test_no_text_breaks_the_reading(text: str) -> None:
    """Broken if it fails: a stray character in a text file ends in a fault of the app."""
    found = paper.read_typed(text)
    assert all(1 <= one.number <= paper.MOST_LINES for one in found.lines)
