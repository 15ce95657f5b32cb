"""What goes with the old CA is renewed in time."""

from __future__ import annotations

from datetime import timedelta
from pathlib import Path

from hearthkey.core.succession import Cause
from tests.fakes.home import PASSPHRASE, at_home


def test_a_round_takes_what_goes_with_the_old_ca(tmp_path: Path) -> None:
    """If this fails, the round of half a year leaves out devices that are locked out when the old CA goes."""
    with at_home(tmp_path / "data") as home:
        home.hand_over("Odile tablet")
        until = home.world.clock.now() + timedelta(days=200)
        home.house.succeeding.begin(PASSPHRASE, Cause.PLANNED)
        assert home.house.renewing.due(until) == []
        home.house.succeeding.go_on(told=True)
        home.house.succeeding.go_on(told=True)
        assert [one.person for one in home.house.renewing.due(until)] == ["Odile"]
        assert home.house.renewing.due(until - timedelta(days=10)) == []
