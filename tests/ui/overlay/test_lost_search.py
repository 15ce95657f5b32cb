"""Finding a device by a few letters."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

import pytest

from hearthkey.core.passes import Pass, State
from hearthkey.ui.lost.search import MOST, Finder, Match, folded, marks
from hearthkey.ui.lost.words import state_words, why_not
from tests.ui.practice import NOW, PASSES, made_pass


def titles(text: str, passes: tuple[Pass, ...] = PASSES) -> list[str]:
    """What a search brings."""
    return [match.shown.title for match in Finder(passes, NOW).find(text).first]


def living(person: str, device: str, code: str = "") -> Pass:
    """A pass that gets in."""
    return made_pass(person, device, made=NOW, ends=NOW + timedelta(days=400), handed_over=NOW, code=code)


@pytest.mark.parametrize(
    ("typed", "found"),
    [
        ("in", ["Ines’s phone", "Ines’s tablet", "Boiler engineer’s phone", "Ines’s old phone"]),
        ("od", ["Odile’s phone", "Odile’s reader"]),
        ("ines ph", ["Ines’s phone", "Ines’s old phone"]),
        ("phone tom", ["Tomasz’s old phone"]),
        ("ines’s tab", ["Ines’s tablet"]),
        ("INES’S TAB", ["Ines’s tablet"]),
        ("zz", []),
        ("", []),
        ("   ", []),
    ],
)
def test_letters_find_devices(typed: str, found: list[str]) -> None:
    """Broken if it fails: in a hurry somebody stops the wrong device, or finds none."""
    assert titles(typed) == found


def test_who_gets_in_stands_before_who_does_not() -> None:
    """Broken if it fails: Enter falls on a device that was revoked long ago."""
    first = Finder(PASSES, NOW).find("old").first
    assert [match.state for match in first] == [State.REVOKED, State.STOPPED]
    assert Finder((*PASSES, living("Odile", "very old phone")), NOW).find("old").first[0].stoppable


def test_the_whole_title_stands_before_a_longer_one() -> None:
    """Broken if it fails: "lost" on a row of the board chooses another device whose name has the same words."""
    passes = (living("Tomasz", "work laptop", "a"), living("Tomasz", "laptop", "b"))
    assert titles("Tomasz’s laptop", passes) == ["Tomasz’s laptop", "Tomasz’s work laptop"]


def test_a_device_with_two_passes_is_one_row_and_shows_the_living_one() -> None:
    """Broken if it fails: after a replacement the device stands there twice, or as ended."""
    old = replace(living("Ines", "watch", "watch777"), not_after=NOW - timedelta(days=1))
    new = replace(living("Ines", "watch", "watch777"), serial="02")
    for order in ((old, new), (new, old)):
        found = Finder(order, NOW).find("watch")
        assert (found.count, found.of) == (1, 1)
        assert found.first[0].shown == new


def test_accents_and_other_scripts_are_found() -> None:
    """Broken if it fails: somebody with an accent in the name cannot be found from a plain keyboard."""
    passes = (living("Zoë", "phone", "a"), living("Ærøskøbing", "ß-reader", "b"), living("אינס", "טלפון", "c"))
    assert titles("zoe", passes) == ["Zoë’s phone"]
    assert titles("ss-re", passes) == ["Ærøskøbing’s ß-reader"]
    assert titles("אי", passes) == ["אינס’s טלפון"]


@pytest.mark.parametrize(
    ("title", "words", "found"),
    [
        ("Ines’s phone", ("in",), [(0, 2)]),
        ("Boiler engineer’s phone", ("in",), [(10, 12)]),
        ("Ines’s phone", ("ines", "ph"), [(0, 4), (7, 9)]),
        ("Zoe\u0308's phone", ("zoe",), [(0, 3)]),
        ("ß-reader", ("s",), [(0, 1)]),
    ],
)
def test_the_found_letters_are_marked_where_they_stand(
    title: str, words: tuple[str, ...], found: list[tuple[int, int]]
) -> None:
    """Broken if it fails: the underline stands under other letters than those that were typed."""
    assert list(marks(title, words)) == found


def test_folding_is_plain() -> None:
    """Broken if it fails: letters that look alike to a person do not to the search."""
    assert (folded("ZOË"), folded("Straße"), folded("O’Neill")) == ("zoe", "strasse", "o'neill")


def test_ten_thousand_devices_give_six_rows_and_the_whole_count() -> None:
    """Broken if it fails: a large household floods the sheet."""
    many = tuple(living(f"Person {n}", "phone", f"c{n}") for n in range(10_000))
    found = Finder(many, NOW).find("person 77")
    assert len(found.first) == MOST
    assert found.count == sum("77" in f"{n}"[:2] or "77" in f"{n}" for n in range(10_000))
    assert found.of == 10_000


def test_grey_rows_say_why() -> None:
    """Broken if it fails: a device that cannot be stopped looks as if it could."""
    told = {match.state: why_not(match.shown, match.state) for match in Finder(PASSES, NOW).find("o").first}
    told |= {match.state: why_not(match.shown, match.state) for match in Finder(PASSES, NOW).find("old").first}
    assert told[State.STOPPED].startswith("Tomasz’s old phone is stopped already.")
    assert told[State.REVOKED] == "Ines’s old phone gets in no more. There is nothing to stop."
    revoked: Match = Finder(PASSES, NOW).find("ines old").first[0]
    assert state_words(revoked.shown, NOW) == ("revoked 11 April", "gets in no more")
