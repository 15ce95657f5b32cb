"""What lies in drawers is asked for anew when it no longer does what it says, and not before."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from datetime import UTC, datetime, timedelta

import pytest

from hearthkey.core import keepsakes
from hearthkey.core.deputy import PartNote, SetNote
from hearthkey.core.duties import Act, Duty
from hearthkey.core.household import Authority
from hearthkey.core.keepsakes import Keepsakes, PaperNote, StopSetNote, keepsake_duties
from hearthkey.core.sentences import duties as words
from hearthkey.core.succession import Cause, Step, Succession
from tests.core.test_duties import made as a_pass

NOW = datetime(2026, 5, 12, 9, 30, tzinfo=UTC)
DAY = timedelta(days=1)
OLD = Authority(b"old", "aa" * 32, NOW + 900 * DAY, "keyring")
NEW = Authority(b"new", "bb" * 32, NOW + 4000 * DAY, "keyring", "aa" * 32)
PARTS = SetNote("A7F3", NOW - 50 * DAY, 2, "age1", "locked", (PartNote(1, "1", None),))
KNOWN = Keepsakes(
    founded=NOW - 400 * DAY,
    papers=(PaperNote(NOW - 300 * DAY, OLD.fingerprint),),
    stop_set=None,
    parts=None,
    parts_fresh=False,
    authority=OLD,
    succession=None,
    list_number=14,
    list_since=NOW - 3 * DAY,
    newcomer=None,
)


def following(taken: Mapping[Step, datetime], cause: Cause = Cause.PLANNED) -> Keepsakes:
    """The same while one CA follows another."""
    found = Succession(OLD, NEW, b"", cause, taken)
    return replace(KNOWN, succession=found, authority=found.in_charge)


def acts(known: Keepsakes) -> list[Act]:
    """What is asked for."""
    return [one.act for one in keepsake_duties(known)]


def test_a_household_with_everything_in_its_drawers_is_left_alone() -> None:
    """If this failed, a family would be nagged about papers that are right."""
    given = StopSetNote(NOW, 14, 40)
    assert acts(replace(KNOWN, parts=PARTS, parts_fresh=True, stop_set=given)) == []


def test_a_new_household_puts_its_key_on_paper_within_a_month() -> None:
    """If this failed, a household that began yesterday would die with its laptop and nobody would have said so."""
    (duty,) = keepsake_duties(replace(KNOWN, papers=()))
    assert duty == Duty("print-paper", KNOWN.founded + 30 * DAY, Act.PRINT_PAPER, KNOWN.founded)


@pytest.mark.parametrize("taken", [(Step.BEGIN,), (Step.BEGIN, Step.TRUST, Step.GATEWAY, Step.FINISH)])
def test_a_succession_asks_for_the_newer_key_on_paper(taken: tuple[Step, ...]) -> None:
    """If this failed, the paper in the drawer would have a key that devices forget."""
    known = following(dict.fromkeys(taken, NOW - 20 * DAY))
    (duty,) = keepsake_duties(known)
    assert (duty.act, duty.act_on) == (Act.PRINT_PAPER_ANEW, NOW - 6 * DAY)
    assert "the CA’s succession of 22 April 2026" in str(words.reason(duty))
    newer = PaperNote(NOW, NEW.fingerprint)
    printed = replace(known, papers=(*known.papers, newer))
    assert acts(printed) == []
    assert printed.paper == newer


def test_a_succession_that_was_taken_back_needs_no_other_paper() -> None:
    """If this failed, whoever tried the first step and thought better of it would print for nothing."""
    assert acts(following({})) == []


def test_the_deputy_s_letter_goes_by_who_is_in_charge() -> None:
    """If this failed, the letter would name an end of the CA that is no longer the end."""
    began = {Step.BEGIN: NOW - 20 * DAY, Step.TRUST: NOW - 18 * DAY}
    assert acts(_with_parts(following(began))) == []
    (duty,) = keepsake_duties(_with_parts(following({**began, Step.GATEWAY: NOW - 9 * DAY})))
    assert (duty.act, duty.act_on, duty.until) == (Act.MAKE_PARTS, NOW + 5 * DAY, PARTS.made)
    lost = _with_parts(following({Step.BEGIN: NOW - 9 * DAY}, Cause.LOST))
    assert acts(lost) == [Act.MAKE_PARTS]
    assert acts(replace(lost, parts=replace(PARTS, made=NOW))) == []


def _with_parts(known: Keepsakes) -> Keepsakes:
    return replace(known, papers=(PaperNote(NOW, NEW.fingerprint),), parts=PARTS, parts_fresh=True)


def test_parts_that_open_nothing_new_are_made_anew_at_once() -> None:
    """If this failed, two people would meet with parts that open no copy."""
    (duty,) = keepsake_duties(replace(KNOWN, parts=PARTS, parts_fresh=False))
    assert (duty.act, duty.act_on) == (Act.MAKE_PARTS, PARTS.made)


def test_a_newer_list_makes_the_stop_set_stale() -> None:
    """If this failed, a deputy who means well would let in again whoever was stopped since."""
    known = replace(KNOWN, stop_set=StopSetNote(NOW - 90 * DAY, 12, 30))
    assert known.stop_set_stale
    (duty,) = keepsake_duties(known)
    assert (duty.act, duty.act_on) == (Act.MAKE_STOP_SET, KNOWN.list_since)
    assert str(words.reason(duty)).startswith("It is of list 12; list 14 is out since 9 May 2026.")


def test_a_device_that_came_later_is_not_in_the_stop_set() -> None:
    """If this failed, the newest phone could not be stopped, and nobody would have said so."""
    given = StopSetNote(NOW - 10 * DAY, 14, 30)
    passes = [a_pass("0a", 300, 90), a_pass("0b", 4, 90), a_pass("0c", 6, 90)]
    since = keepsakes.newcomer(given, passes, NOW)
    assert since == NOW - 6 * DAY
    assert keepsakes.newcomer(given, passes[:1], NOW) is None
    assert keepsakes.newcomer(None, passes, NOW) is None
    (duty,) = keepsake_duties(replace(KNOWN, stop_set=given, newcomer=since))
    assert (duty.act, duty.act_on) == (Act.ADD_TO_STOP_SET, since + 14 * DAY)
