"""The diary's chain: whoever changes it afterwards is found at the first entry that does not fit."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

from hypothesis import given
from hypothesis import strategies as st

from hearthkey.core.diary import FIRST_LINK, DiaryEntry, first_misfit, link_of
from tests.fakes.clock import NOW


def written(count: int) -> list[DiaryEntry]:
    """Write a diary of that many entries."""
    entries: list[DiaryEntry] = []
    for number in range(1, count + 1):
        previous = entries[-1].link if entries else FIRST_LINK
        at, sentence = NOW + timedelta(minutes=number), f"Ines’s phone {number} was stopped."
        link = link_of(previous, number=number, at=at, verb="stop", sentence=sentence)
        entries.append(DiaryEntry(number, at, "stop", sentence, link))
    return entries


FIVE = written(5)


def test_a_link_is_what_anybody_can_compute() -> None:
    """Broken if it fails: a chain that nobody can check without this app (SHA-256 of a JSON array, by hand)."""
    # printf '["%064d",1,1795608000,"found","Grüße"]' 0 | sha256sum
    expected = "b079fbfb461057095b5e722b42926b05d5737b90232607137fc14a53887aaf09"
    link = link_of(FIRST_LINK, number=1, at=NOW, verb="found", sentence="Grüße")
    assert link == expected


def test_an_untouched_diary_fits() -> None:
    """Broken if it fails: every diary is called broken."""
    assert first_misfit(FIVE, written=5) is None
    assert first_misfit([], written=0) is None


@given(st.integers(0, 4), st.sampled_from(["sentence", "verb", "at", "link"]))
def test_an_edited_entry_is_found(place: int, what: str) -> None:
    """Broken if it fails: a sentence can be rewritten afterwards."""
    value: object = NOW + timedelta(days=9) if what == "at" else "0" * 64
    edited = [*FIVE]
    edited[place] = replace(FIVE[place], **{what: value})  # type: ignore[arg-type]  # names of fields
    assert first_misfit(edited, written=5) == place + 1


@given(st.integers(0, 4))
def test_a_deleted_entry_is_found(place: int) -> None:
    """Broken if it fails: something that was done can be left out."""
    assert first_misfit(FIVE[:place] + FIVE[place + 1 :], written=5) == place + 1


@given(st.integers(0, 3))
def test_two_swapped_entries_are_found(place: int) -> None:
    """Broken if it fails: what came first can be told the other way round."""
    swapped = [*FIVE]
    swapped[place], swapped[place + 1] = swapped[place + 1], swapped[place]
    assert first_misfit(swapped, written=5) == place + 1


def test_an_entry_rewritten_with_a_fitting_link_is_found_at_the_next() -> None:
    """Broken if it fails: whoever knows the recipe can rewrite one entry unseen."""
    link = link_of(FIVE[1].link, number=3, at=FIVE[2].at, verb="stop", sentence="Nothing happened.")
    forged = [*FIVE]
    forged[2] = replace(FIVE[2], sentence="Nothing happened.", link=link)
    assert first_misfit(forged, written=5) == 4


def test_a_cut_off_end_is_found() -> None:
    """Broken if it fails: the last things that were done can be torn out."""
    assert first_misfit(FIVE[:3], written=5) == 4
    assert first_misfit([], written=5) == 1


HEADS = ((2, FIVE[1].link), (4, FIVE[3].link))
"""Two sealed copies, made after the second and after the fourth entry."""


def test_an_untouched_diary_fits_the_heads_in_its_sealed_copies() -> None:
    """Broken if it fails: whoever keeps copies is told that the diary is broken."""
    assert first_misfit(FIVE, written=5, heads=HEADS) is None
    assert first_misfit(FIVE, written=5, heads=[(0, FIRST_LINK)]) is None


def test_an_end_that_was_cut_off_with_its_count_is_found_by_a_copy() -> None:
    """Broken if it fails: whoever lowers the count as well tears entries out unseen."""
    assert first_misfit(FIVE[:3], written=3) is None
    assert first_misfit(FIVE[:3], written=3, heads=HEADS) == 4


def test_a_chain_written_anew_is_found_by_a_copy() -> None:
    """Broken if it fails: whoever knows the recipe and writes everything anew from an entry on is believed."""
    forged = FIVE[:2]
    for one in FIVE[2:]:
        sentence = one.sentence.replace("stopped", "let back in")
        link = link_of(forged[-1].link, number=one.number, at=one.at, verb=one.verb, sentence=sentence)
        forged = [*forged, replace(one, sentence=sentence, link=link)]
    assert first_misfit(forged, written=5) is None
    assert first_misfit(forged, written=5, heads=HEADS) == 3
