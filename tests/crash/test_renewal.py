"""Kills renewals where it hurts: the next start finds the old pass alone, or both, and never none."""

from __future__ import annotations

from pathlib import Path

import pytest

from hearthkey.core.household import FILE
from tests.crash import verdict
from tests.crash.homes import Home
from tests.crash.nursery import Nursery
from tests.crash.test_killed import crash, kill_at_every_moment, last_moment, outlines
from tests.keyring.desktop import Desktop


@pytest.fixture(scope="module")
def proved(desktop: Desktop, nursery: Nursery, tmp_path_factory: pytest.TempPathFactory) -> Home:
    """Quince Cottage, where the next pass of Tomasz's laptop was proved and the old one is still good."""
    home = Home(desktop, nursery, tmp_path_factory.mktemp("proved"), FILE)
    for verb in ("found", "move-in", "renew-whole"):
        assert home.run(verb).refusal is None
    home.save()
    return home


def test_replacing(settled: dict[str, Home]) -> None:
    """If this fails, a power cut leaves a new device that replaces nothing, or stops the old one for nothing."""
    kill_at_every_moment(settled[FILE], "replace", thin=True)


@pytest.mark.parametrize(("edge", "happened"), [("before COMMIT", False), ("at the end", True)])
def test_renewing(settled: dict[str, Home], edge: str, *, happened: bool) -> None:
    """If this fails, a power cut leaves a new pass that follows nothing, or a passphrase that belongs to none.

    What lies between is that of enrolling, which is killed at every moment.
    """
    home = settled[FILE]
    expected = outlines(home, "renew")[happened]
    assert crash(home, "renew", last_moment(home, "renew", edge)) == edge
    assert home.run("start").refusal is None
    assert verdict.judge(home) == expected


@pytest.fixture(scope="module")
def renewed(desktop: Desktop, nursery: Nursery, tmp_path_factory: pytest.TempPathFactory) -> Home:
    """Quince Cottage, where the next pass of Tomasz's laptop is in the tray."""
    home = Home(desktop, nursery, tmp_path_factory.mktemp("renewed"), FILE)
    for verb in ("found", "move-in", "renew"):
        assert home.run(verb).refusal is None
    home.save()
    return home


def test_taking_a_renewal_back(renewed: Home) -> None:
    """If this fails, a power cut leaves a key in the tray that opens nothing, or takes the old pass along."""
    kill_at_every_moment(renewed, "take-renewal-back", thin=True)


def test_leaving(settled: dict[str, Home]) -> None:
    """If this fails, a power cut lets somebody who left get in by half of what was theirs."""
    kill_at_every_moment(settled[FILE], "leaves", thin=True)


def test_a_round_stops_between_two_devices(desktop: Desktop, nursery: Nursery, tmp_path: Path) -> None:
    """If this fails, a power cut in a round leaves a device half renewed, or one that no later round takes.

    What lies within a renewal is that of enrolling; here the cuts are at each transaction's two edges.
    """
    home = Home(desktop, nursery, tmp_path, FILE)
    for verb in ("found", "move-in", "let-in"):
        assert home.run(verb).refusal is None
    home.save()
    before, after = outlines(home, "renew-round")
    assert len(after.passes) == len(before.passes) + 2
    home.put_back()
    trail = home.run("renew-round").trail
    edges = [number for number, name in enumerate(trail, 1) if name in {"before COMMIT", "at the end"}]
    found = []
    for stop_at in edges:
        assert crash(home, "renew-round", stop_at) == trail[stop_at - 1]
        assert home.run("start").refusal is None
        found.append(len(verdict.judge(home).passes) - len(before.passes))
        assert home.run("renew-round").refusal is None
        assert verdict.judge(home).verbs[-1] == "renew"
    assert found == sorted(found)
    assert set(found) == {0, 1, 2}


def test_superseding(proved: Home) -> None:
    """If this fails, a power cut takes the old pass away without a list that says so, or leaves it for good."""

    def check_works() -> None:
        register = verdict.open_register(proved)
        try:
            laptop = [one for one in register.passes() if one.title == "Tomasz’s laptop"]
        finally:
            register.close()
        assert [one.reason is None for one in laptop] == [False, True]
        assert laptop[-1].proved is not None

    kill_at_every_moment(proved, "supersede", thin=True, check_after=check_works)
