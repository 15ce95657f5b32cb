"""Stopping a lost device by whatever list there is."""

from __future__ import annotations

from hearthkey.core.passes import State
from hearthkey.core.plans import SparePlanned, StopPlan
from tests.fakes.home import Home


def test_locked_with_a_spare_list_it_needs_no_key(home: Home) -> None:
    """Broken if it fails: the stop button asks for words although a list lies ready."""
    home.house.sparing.renew()
    home.house.keyholder.lock()
    plan = home.house.losing.preview(home.passes("Ines phone"))
    assert isinstance(plan, SparePlanned)
    home.house.losing.stop(plan)
    assert home.newest("Ines phone").state(home.world.clock.now()) is State.STOPPED


def test_locked_without_one_it_says_what_the_key_would_do(home: Home) -> None:
    """Broken if it fails: somebody without spare lists is refused instead of asked for the passphrase."""
    home.house.keyholder.lock()
    plan = home.house.losing.preview(home.passes("Ines phone"))
    assert isinstance(plan, StopPlan)
    home.unlock()
    home.house.losing.stop(plan)
    assert home.newest("Ines phone").state(home.world.clock.now()) is State.STOPPED


def test_unlocked_the_next_list_is_signed(home: Home) -> None:
    """Broken if it fails: spare lists are used up while the key is at hand."""
    home.house.sparing.renew()
    assert isinstance(home.house.losing.preview(home.passes("Ines phone")), StopPlan)
