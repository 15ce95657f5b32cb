"""Whose turn it is at the desk, worked out from values alone."""

from __future__ import annotations

from dataclasses import replace

from hearthkey.core.families import Family
from hearthkey.core.proofs import Proof, Way
from hearthkey.core.revocation import Reason
from hearthkey.ui.desk.telling import Moment, stations, step_words, told
from hearthkey.ui.desk.turns import Step, Turn, sitting
from tests.ui.desk.household import GUEST, TABLE, TABLET, handed
from tests.ui.leaving.household import LAPTOP
from tests.ui.practice import NOW


def test_those_who_were_passed_over_come_again() -> None:
    """Broken if it fails: whoever was fetching the reading glasses is forgotten, or somebody's turn comes twice."""
    turns = sitting(TABLE)
    assert (turns.next, turns.previous) == (1, None)
    last = turns.go(2)
    assert (last.next, last.previous) == (0, 1)
    first_done = last.seen((handed(TABLET), LAPTOP, GUEST), NOW)
    assert first_done is not None
    assert first_done.next == 1
    all_done = last.seen([handed(one) for one in TABLE], NOW)
    assert all_done is not None
    assert all_done.next is None


def test_a_pass_that_was_revoked_leaves_the_table() -> None:
    """Broken if it fails: the desk offers what the gateway refuses, or points at the wrong device afterwards."""
    turns = sitting(TABLE).go(1)
    without = turns.seen((TABLET, replace(LAPTOP, reason=Reason.SUPERSEDED), GUEST), NOW)
    assert without is not None
    assert [turn.one for turn in without.all] == [TABLET, GUEST]
    assert without.current.one == GUEST
    assert turns.seen((), NOW) is None


def test_the_step_in_hand() -> None:
    """Broken if it fails: the table reads the wrong line aloud."""
    new, fetched = Turn(TABLET), Turn(TABLET, picked_up=NOW)
    assert new.step(words_shown=False) is Step.SCAN
    assert new.step(words_shown=True) is Step.WORDS
    assert fetched.step(words_shown=False) is Step.WORDS
    assert replace(fetched, typed=True).step(words_shown=False) is Step.CONNECT
    assert replace(fetched, typed=True).step(words_shown=True) is Step.WORDS
    assert Turn(handed(TABLET)).step(words_shown=False) is Step.CONNECT


def test_words_that_were_seen_before_the_file_came_do_not_count_as_typed() -> None:
    """Broken if it fails: the desk goes on to step three while the device has nothing."""
    assert not sitting(TABLE).typed().current.typed
    assert sitting(TABLE).picked_up(NOW).typed().current.typed


def test_the_stations_end_where_the_register_says_so() -> None:
    """Broken if it fails: something is called proved that nobody saw, or stays open although it was."""
    new = stations(Turn(TABLET), NOW)
    assert [one.now for one in new] == [False, True, False, False, False]
    proved = replace(handed(TABLET), proofs=(Proof(NOW, Way.TUNNEL, "203.0.113.7"),))
    done = stations(Turn(proved, picked_up=NOW), NOW)
    assert [one.reached for one in done] == [True] * 4
    assert "Still to come" not in told(done)
    half = told(stations(Turn(handed(TABLET)), NOW))
    assert half.endswith("Still to come: proved on mobile data.")


def test_a_computer_types_and_leaves_the_wi_fi() -> None:
    """Broken if it fails: somebody holds a laptop over a screen."""
    moment = Moment(code=True, link="http://198.51.100.23:49152/abc")
    scan = step_words(Step.SCAN, Turn(LAPTOP), Family.LINUX, moment)
    assert scan.under == moment.link
    assert "camera" in step_words(Step.SCAN, Turn(TABLET), Family.ANDROID, moment).head
    assert "mobile data" not in step_words(Step.CONNECT, Turn(LAPTOP), Family.LINUX, moment).under
