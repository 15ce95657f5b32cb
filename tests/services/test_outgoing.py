"""What goes with the old CA is renewed in time."""

from __future__ import annotations

from datetime import timedelta
from pathlib import Path

from hearthkey.core.duties import Act
from hearthkey.core.succession import Cause
from hearthkey.core.succession_days import succession_duties
from hearthkey.services.snapshot import take
from tests.fakes.home import PASSPHRASE, at_home


def test_a_round_takes_what_goes_with_the_old_ca(tmp_path: Path) -> None:
    """If this fails, round or day list leaves out devices that are locked out when the old CA goes."""
    with at_home(tmp_path / "data") as home:
        home.hand_over("Odile tablet")
        until = home.world.clock.now() + timedelta(days=200)
        home.house.succeeding.begin(PASSPHRASE, Cause.PLANNED)
        assert home.house.renewing.due(until) == []
        assert take(home.house).device_steps == ()
        home.house.succeeding.go_on(told=True)
        home.house.succeeding.go_on(told=True)
        assert [one.person for one in home.house.renewing.due(until)] == ["Odile"]
        assert home.house.renewing.due(until - timedelta(days=10)) == []
        seen = take(home.house)
        asked = succession_duties(seen.succession, seen.device_steps, seen.at)
        assert [(one.act, one.names[-1:]) for one in asked] == [
            (Act.DEVICES_FOLLOW, ("Odile’s tablet",)),
            (Act.FINISH_SUCCESSION, ()),
        ]
