"""Kills renewals where it hurts: the next start finds the old pass alone, or both, and never none."""

from __future__ import annotations

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
