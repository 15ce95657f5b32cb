"""Stopping without a passphrase: the spare lists, and what they may never do."""

from __future__ import annotations

from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from hearthkey.core.errors import Refused
from hearthkey.core.passes import State
from hearthkey.core.revocation import Reason
from hearthkey.pki import judge, lists
from hearthkey.services.enrolling import EnrolRequest
from hearthkey.services.opening import the_authority
from tests.fakes.home import Home, at_home

EVERY = ("Ines phone", "Tomasz laptop", "Odile tablet")


def stop_locked(home: Home, device: str) -> int:
    """Stop a device without the passphrase."""
    home.house.keyholder.lock()
    changes = home.house.sparing.stop(home.house.sparing.preview_stop(home.passes(device)))
    assert changes.list_number is not None
    return changes.list_number


def listed(home: Home) -> dict[str, str | None]:
    """Who stands on the newest list, after its signature was judged."""
    signed = home.house.register.newest_list()
    assert signed is not None
    judge.check_list(signed.der, the_authority(home.house.register).certificate)
    return {one.serial: one.reason for one in lists.read_list(signed.der).entries}


def test_a_locked_household_stops_a_phone(home: Home) -> None:
    """Broken if it fails: whoever finds the phone gets in until somebody remembers the passphrase."""
    home.house.sparing.renew()
    number = stop_locked(home, "Ines phone")
    phone = home.newest("Ines phone")
    assert phone.state(home.world.clock.now()) is State.STOPPED
    assert listed(home) == {phone.serial: "certificateHold"}
    assert (home.house.data / "lists" / f"list-{number}.crl").exists()


def test_the_plan_names_who_stops_besides(home: Home) -> None:
    """Broken if it fails: stopping the second phone quietly takes a third person's access."""
    home.house.sparing.renew()
    stop_locked(home, "Ines phone")
    plan = home.house.sparing.preview_stop(home.passes("Tomasz laptop"))
    assert [one.title for one in plan.chosen] == ["Tomasz’s laptop"]
    assert [one.title for one in plan.besides] == ["Odile’s tablet"]
    assert plan.unaffected == 0
    home.house.sparing.stop(plan)
    assert set(listed(home)) == {home.newest(one).serial for one in EVERY}


def test_two_devices_of_one_person_go_with_the_list_of_that_person(home: Home) -> None:
    """Broken if it fails: a stolen bag with phone and tablet stops the whole family."""
    home.add(EnrolRequest("Ines", "tablet", "linux", key_set="compact"))
    home.house.sparing.renew()
    stop_locked(home, "Ines phone")
    plan = home.house.sparing.preview_stop(home.passes("Ines tablet"))
    assert (plan.besides, plan.unaffected) == ((), 2)


def test_without_spare_lists_the_passphrase_is_needed(home: Home) -> None:
    """Broken if it fails: the app promises a stop that it cannot make."""
    with pytest.raises(Refused, match="no-spare-list"):
        home.house.sparing.preview_stop(home.passes("Ines phone"))


def test_an_ordinary_list_makes_the_spare_ones_stale(home: Home) -> None:
    """Broken if it fails: a spare list from before a revocation lets the revoked phone in again."""
    home.house.sparing.renew()
    home.revoke("Odile tablet")
    assert not home.house.sparing.fresh()
    with pytest.raises(Refused, match="no-spare-list"):
        home.house.sparing.preview_stop(home.passes("Ines phone"))
    home.house.sparing.renew()
    stop_locked(home, "Ines phone")
    assert set(listed(home)) == {home.newest("Odile tablet").serial, home.newest("Ines phone").serial}


def test_what_a_spare_list_stopped_is_let_back_in_calmly_later(home: Home) -> None:
    """Broken if it fails: a phone stopped in a hurry stays out for ever, or comes back by an older number."""
    home.house.sparing.renew()
    number = stop_locked(home, "Ines phone")
    home.unlock()
    back = home.let_in("Ines phone")
    assert back.list_number is not None
    assert back.list_number > number
    assert listed(home) == {}


def test_a_new_device_has_its_spare_list_after_renewal(home: Home) -> None:
    """Broken if it fails: the newest phone of the family is the one that cannot be stopped."""
    home.house.sparing.renew()
    assert home.house.sparing.fresh()
    home.add(EnrolRequest("Odile", "phone", "linux", key_set="compact"))
    assert not home.house.sparing.fresh()
    home.house.sparing.renew()
    assert home.house.sparing.fresh()
    stop_locked(home, "Odile phone")


def test_spare_lists_leave_the_register_only_by_use(home: Home) -> None:
    """Broken if it fails: a file that locks somebody out lies where anybody can pick it up."""
    home.house.sparing.renew()
    spares = [home.house.register.signed_spare(one.number) for one in home.house.register.spare_lists()]
    assert len(spares) == 7
    home.house.listing.sign_anew()
    home.stop("Tomasz laptop")
    outside = [
        path.read_bytes() for path in home.house.data.rglob("*") if path.is_file() and "register" not in path.name
    ]
    assert outside
    for spare in spares:
        assert spare is not None
        assert not any(spare.der in data for data in outside)
    assert not {spare.number for spare in spares if spare} & {one.number for one in home.house.register.lists()}


@settings(max_examples=25, deadline=None)
@given(order=st.lists(st.sampled_from(["Ines phone", "Tomasz laptop", "Odile tablet", "unlock", "let in"]), max_size=7))
def test_no_order_of_losses_lets_anybody_back_in(order: list[str], tmp_path_factory: pytest.TempPathFactory) -> None:
    """Broken if it fails: some order of stops, unlocks and returns forgets somebody who was stopped."""
    folder: Path = tmp_path_factory.mktemp("losses")
    with at_home(folder / "data") as home:
        home.house.sparing.renew()
        out: set[str] = set()
        for step in order:
            home.world.clock.forward(minutes=1)
            if step == "unlock":
                home.unlock()
                home.house.sparing.renew()
            elif step == "let in":
                home.unlock()
                if home.newest("Ines phone").reason is Reason.CERTIFICATE_HOLD:
                    home.let_in("Ines phone")
                    out.discard(home.newest("Ines phone").serial)
                home.house.sparing.renew()
            else:
                try:
                    plan = home.house.sparing.preview_stop(home.passes(step))
                except Refused:
                    continue
                home.house.sparing.stop(plan)
                out |= {one.serial for one in plan.everyone}
            assert out <= set(listed(home))
            assert out == {one.serial for one in home.house.register.entries()}
