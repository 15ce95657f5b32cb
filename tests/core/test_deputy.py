"""The deputy's parts as words and as codes: read back whatever was typed, and every mistake told."""

from __future__ import annotations

from datetime import UTC, datetime
from itertools import combinations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from hearthkey.adapters.places import word_list
from hearthkey.core import deputy
from hearthkey.core.deputy import Part, PartNote, SetNote
from hearthkey.core.errors import Refused
from hearthkey.core.secret import Secret
from tests.fakes.dice import SeededDice

LIST = word_list()
SECRET = Secret(bytes(range(16)))
PARTS = deputy.split(SECRET, "A7F3", SeededDice("parts").below)
OTHERS = deputy.split(SECRET, "0B21", SeededDice("others").below)


def words(part: Part) -> list[str]:
    """Its fifteen words."""
    return deputy.words_of(part, LIST).reveal().split(" ")


def same(first: Part, second: Part) -> bool:
    """Whether two are one."""
    return first.octets == second.octets


def refused(text: str) -> Refused:
    """Why a text is not taken for a part."""
    with pytest.raises(Refused) as caught:
        deputy.read(text, LIST)
    return caught.value


@given(st.binary(min_size=16, max_size=16), st.integers(0, 0xFFFF), st.integers(1, 3))
def test_words_and_codes_say_the_same_part(share: bytes, name: int, number: int) -> None:
    """Broken if it fails: a part that was printed is not the part that is read."""
    part = Part(f"{name:04X}", number, 2, 3, Secret(share))
    spoken = deputy.words_of(part, LIST).reveal()
    assert len(spoken.split(" ")) == deputy.WORDS
    assert same(deputy.read(spoken, LIST), part)
    assert same(deputy.read(deputy.code_of(part).reveal(), LIST), part)


def test_any_two_bring_back_what_was_split() -> None:
    """Broken if it fails: the deputies sit together and nothing opens."""
    for pair in combinations(PARTS, 2):
        assert deputy.joined(pair) == SECRET
        assert deputy.joined(pair[::-1]) == SECRET
    assert deputy.joined(PARTS) == SECRET


def test_words_are_read_as_people_type_and_copy_them() -> None:
    """Broken if it fails: capitals, numbers, commas or a sheet copied line by line keep somebody out."""
    found = words(PARTS[0])
    ways = [
        " ".join(found).upper(),
        ", ".join(found),
        "\n".join(f"{place}. {word}" for place, word in enumerate(found, 1)),
        "\n".join(f"{at + 1} {found[at]}   {at + 6} {found[at + 5]}   {at + 11} {found[at + 10]}" for at in range(5)),
    ]
    assert all(same(deputy.read(way, LIST), PARTS[0]) for way in ways)


def test_a_word_that_is_not_on_the_list_is_told_by_its_place() -> None:
    """Broken if it fails: somebody compares fifteen words to find the one that is misspelt."""
    found = words(PARTS[1])
    found[6] = "quincee"
    error = refused(" ".join(found))
    assert (error.code, error.facts["place"]) == ("deputy-word-unknown", 7)


def test_every_wrong_or_swapped_word_is_noticed() -> None:
    """Broken if it fails: parts with a slip are taken, and the copy seems to be broken."""
    found = words(PARTS[2])
    for place in range(deputy.WORDS):
        wrong = [*found]
        wrong[place] = LIST[(LIST.index(found[place]) + 1) % len(LIST)]
        assert refused(" ".join(wrong)).code == "deputy-part-wrong"
    for first, second in combinations(range(deputy.WORDS), 2):
        swapped = [*found]
        swapped[first], swapped[second] = found[second], found[first]
        if swapped != found:
            assert refused(" ".join(swapped)).code == "deputy-part-wrong"


@pytest.mark.parametrize("count", [0, 1, 14, 16])
def test_too_few_and_too_many_words_are_told(count: int) -> None:
    """Broken if it fails: a forgotten word is told as a broken part."""
    error = refused(" ".join((words(PARTS[0]) * 2)[:count]))
    assert (error.code, error.facts["count"]) == ("deputy-words-count", count)


@pytest.mark.parametrize("text", ["HKD1/", "HKD1/12", "HKD1/" + "Z" * 48, "HKD1/" + "٣" * 48, "HKD1/" + "0" * 49])
def test_codes_of_other_things_are_refused(text: str) -> None:
    """Broken if it fails: any code in the picture counts as a part."""
    assert refused(text).code == "deputy-code-other"


def test_the_largest_words_are_no_part() -> None:
    """Broken if it fails: fifteen words beyond 192 bits end in a fault."""
    assert refused(" ".join([LIST[-1]] * deputy.WORDS)).code == "deputy-part-wrong"


def test_a_part_of_a_newer_app_is_told_as_such() -> None:
    """Broken if it fails: a paper from a later version is told as mistyped, and somebody types for an hour."""
    octets = bytearray(PARTS[0].octets.reveal())
    octets[0] = 0x22
    text = deputy.CODE + (bytes(octets[:20]) + deputy._check(bytes(octets[:20]))).hex()  # noqa: SLF001 - as a later app would
    assert refused(text).code == "deputy-part-newer"


def test_one_part_alone_is_refused() -> None:
    """Broken if it fails: one holder opens the household, or learns nothing of what is missing."""
    with pytest.raises(Refused) as caught:
        deputy.joined(PARTS[:1])
    assert (caught.value.code, caught.value.facts) == ("deputy-parts-too-few", {"have": 1, "need": 2})


def test_the_same_part_twice_is_one() -> None:
    """Broken if it fails: one holder opens the household by saying the words twice."""
    with pytest.raises(Refused, match="deputy-part-twice"):
        deputy.joined((PARTS[1], PARTS[1]))


def test_parts_of_two_sets_are_not_put_together() -> None:
    """Broken if it fails: a part of last year spoils the recovery without a word."""
    with pytest.raises(Refused) as caught:
        deputy.joined((PARTS[0], OTHERS[1]))
    assert caught.value.facts["sets"] == ("0B21", "A7F3")


def test_neither_a_part_nor_its_mark_gives_another_away() -> None:
    """Broken if it fails: what the register keeps would do instead of a part."""
    told = repr(PARTS[0])
    assert PARTS[0].share.reveal().hex() not in PARTS[0].mark
    assert "Secret(…)" in told
    assert len({one.mark for one in (*PARTS, *OTHERS)}) == 6


def test_the_drill_is_due_a_year_after_the_part_that_waited_longest() -> None:
    """Broken if it fails: one part is tried every year, and another one never."""
    made, later = datetime(2026, 5, 1, tzinfo=UTC), datetime(2027, 2, 1, tzinfo=UTC)
    parts = (PartNote(1, "a", later), PartNote(2, "b", None), PartNote(3, "c", later))
    assert SetNote("A7F3", made, 2, "lock", "locked", parts).due == datetime(2027, 5, 1, tzinfo=UTC)


def test_parts_and_copies_keep_out_of_each_other_s_folder() -> None:
    """Broken if it fails: who finds one folder has the whole household."""
    deputy.check_apart(["holiday.jpg"])
    deputy.check_no_parts(["holiday.jpg", "deputy-letter.pdf"])
    with pytest.raises(Refused, match="deputy-beside-copy"):
        deputy.check_apart(["quince-2026.sealed.tar"])
    with pytest.raises(Refused, match="copy-beside-part"):
        deputy.check_no_parts(["deputy-part-2.pdf"])
