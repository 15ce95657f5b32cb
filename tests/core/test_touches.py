"""How many devices a change touches is said before it is made, and is what the change then says of itself."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

import pytest

from hearthkey.core.household import Household
from hearthkey.core.network import FULL, subnet
from hearthkey.core.sentences import touches as words
from hearthkey.core.settling import plan_settling
from hearthkey.core.touches import Change, touches
from tests.core.test_renewal import NOW, made

HOUSEHOLD = Household(
    name="Quince Cottage",
    gateway_host="home.quince.example",
    identity_suffix="quince.example",
    home_subnets=(subnet("198.51.100.0/24", "home subnet"),),
    tunnel_subnet=subnet("203.0.113.0/24", "tunnel subnet"),
    dns_servers=(),
    tunnel="split",
)
PASSES = (
    made("0a", 20),
    made("0b", 90, device="phone", identity="b.quince.example"),
    made("0c", 90, device="reader", identity="c.quince.example", handed_over=None),
    made("0d", -1, device="radio", identity="d.quince.example"),
)
AFTER = {
    Change.HOST: {"gateway_host": "door.quince.example"},
    Change.SUFFIX: {"identity_suffix": "plum.example"},
    Change.INNER: {"tunnel_subnet": subnet("192.0.2.0/24", "tunnel subnet")},
    Change.HOME: {"home_subnets": (subnet("192.0.2.0/24", "home subnet"),)},
    Change.TUNNEL: {"tunnel": FULL},
}


@pytest.mark.parametrize("tunnel", ["split", FULL])
def test_each_change_touches_whom_it_then_says(tunnel: str) -> None:
    """Broken if it fails: somebody is promised that no phone is touched, and then every phone is."""
    household = replace(HOUSEHOLD, tunnel=tunnel)
    told = {one.change: one.devices for one in touches(household, PASSES, NOW)}
    for change, differs in AFTER.items():
        if change is Change.TUNNEL and tunnel == FULL:
            continue
        after = replace(household, **differs)  # type: ignore[arg-type] # its fields, by name
        assert plan_settling(household, after, PASSES, NOW).devices == told[change], change
    renewed = plan_settling(household, household, PASSES, NOW, renew=True)
    assert renewed.devices == told[Change.GATEWAY_RENEWED] == ()
    assert told[Change.AUTHORITY] == ("Odile’s tablet", "Odile’s phone")


def test_nobody_one_and_many_have_sentences_of_their_own() -> None:
    """Broken if it fails: "1 devices need"."""
    said = [str(words.of(one)) for one in touches(HOUSEHOLD, PASSES, NOW)]
    assert said[0] == "The gateway’s next certificate, under the same name: no device needs a new bundle."
    assert said[-1] == "Another CA: 2 devices need a new bundle."
    one = touches(HOUSEHOLD, PASSES, NOW + timedelta(days=30))[-1]
    assert str(words.of(one)) == "Another CA: Odile’s phone needs a new bundle."
    assert {each.change for each in touches(HOUSEHOLD, (), NOW)} == set(Change)
