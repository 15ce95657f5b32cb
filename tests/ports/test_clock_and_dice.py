"""The clock and the dice, real and made for tests, keep what the ports promise."""

from __future__ import annotations

from datetime import UTC, timedelta

import pytest

from hearthkey.adapters.clock import SystemClock
from hearthkey.adapters.dice import SystemDice
from hearthkey.services.ports import Clock, Dice
from tests.fakes.clock import NOW, FakeClock
from tests.fakes.dice import SeededDice

CLOCKS = pytest.mark.parametrize("clock", [SystemClock(), FakeClock()], ids=["system", "fake"])
DICE = pytest.mark.parametrize("dice", [SystemDice(), SeededDice()], ids=["system", "seeded"])


@CLOCKS
def test_the_time_is_utc_in_whole_seconds(clock: Clock) -> None:
    """Broken if it fails: certificates cannot say it (RFC 5280 section 4.1.2.5: no fractions)."""
    now = clock.now()
    assert now.tzinfo is UTC
    assert now.microsecond == 0


@CLOCKS
def test_seconds_never_run_backwards(clock: Clock) -> None:
    """Broken if it fails: an unlocked household stays so for ever, or locks at once."""
    first = clock.monotonic()
    assert clock.monotonic() >= first


def test_setting_the_fake_clock_lets_no_time_pass() -> None:
    """Broken if it fails: the tests cannot tell a clock set back from time that passes."""
    clock = FakeClock()
    before = clock.monotonic()
    clock.turn(days=-400)
    assert (clock.now(), clock.monotonic()) == (NOW - timedelta(days=400), before)
    clock.forward(seconds=5)
    assert clock.monotonic() == before + 5


@DICE
@pytest.mark.parametrize("count", [1, 7, 8, 32, 158])
def test_bits_stay_within_their_count(dice: Dice, count: int) -> None:
    """Broken if it fails: a serial is longer than twenty octets."""
    drawn = [dice.bits(count) for _ in range(200)]
    assert all(0 <= one < 1 << count for one in drawn)
    assert len(set(drawn)) > 1


@DICE
@pytest.mark.parametrize("limit", [2, 3, 256, 7776])
def test_below_stays_below(dice: Dice, limit: int) -> None:
    """Broken if it fails: a word is looked for behind the end of the list."""
    drawn = [dice.below(limit) for _ in range(200)]
    assert all(0 <= one < limit for one in drawn)
    assert len(set(drawn)) > 1


def test_seeded_dice_fall_the_same_way_again() -> None:
    """Broken if it fails: a failing test cannot be run again."""
    assert [SeededDice("a").bits(64)] == [SeededDice("a").bits(64)]
    assert SeededDice("a").bits(64) != SeededDice("b").bits(64)
