"""Whom the check of the way in tries at the web front, and what that never costs."""

from __future__ import annotations

from dataclasses import replace

import pytest

from hearthkey.core.errors import Cancelled
from hearthkey.core.reach.chain import Link, Place
from hearthkey.services.enrolling import EnrolRequest
from hearthkey.services.reach_plan import CheckPlan
from hearthkey.services.reaching import CheckRequest
from tests.fakes.home import Home
from tests.services.gates import both, ca_mark, gate, reaching, world_of


def planned(home: Home, *, web_front: bool = True) -> CheckPlan:
    """A check about to be made."""
    page = "http://198.51.100.5:8123" if web_front else ""
    with home.house.register.change() as change:
        change.set_pack_options(replace(home.house.register.pack_options(), web_upstream=page))
    return reaching(home, world_of(home)).prepare(CheckRequest())


def test_the_newest_device_that_waits_is_tried(home: Home) -> None:
    """Nobody would be tried though somebody could, or somebody whose bundle is gone or who may not get in."""
    home.world.clock.forward(hours=1)
    home.unlock()
    home.add(EnrolRequest("Odile", "reader", "linux"))
    found = planned(home).trial
    assert found is not None
    assert (found.person, found.device) == ("Odile", "reader")
    assert found.credential.certificate == home.house.register.certificate(home.newest("Odile reader").serial)
    home.stop("Odile reader")
    home.hand_over("Ines phone")
    home.hand_over("Tomasz laptop")
    left = planned(home).trial
    assert left is not None
    assert left.device == "tablet"
    home.hand_over("Odile tablet")
    assert planned(home).trial is None


def test_without_a_web_front_no_bundle_is_opened(home: Home) -> None:
    """The keyring would be asked, and a key would lie in memory, for nothing."""
    plan = planned(home, web_front=False)
    assert (plan.trial, Place.FRONT_IN in plan.places) == (None, False)


@pytest.mark.parametrize("trouble", ["keyring-silent", "keyring-absent", "keyring-failed"])
def test_a_closed_keyring_is_no_error_and_is_asked_once(home: Home, trouble: str) -> None:
    """The whole check would fail, or hang as often as devices wait, where only its last link cannot be told."""
    home.world.vault.trouble = trouble
    home.world.vault.patience = 0
    assert planned(home).trial is None


def test_a_passphrase_that_is_gone_leaves_the_others(home: Home) -> None:
    """One lost passphrase would keep every device from being tried."""
    kept = planned(home).trial
    assert kept is not None
    lost = home.newest(f"{kept.person} {kept.device}")
    for name in [one for one in home.world.vault.secrets if lost.serial in one]:
        del home.world.vault.secrets[name]
    found = planned(home).trial
    assert found is not None
    assert (found.person, found.device) != (kept.person, kept.device)


def test_no_key_stands_in_what_the_plan_says_of_itself(home: Home) -> None:
    """A log or a traceback would show a device’s key."""
    plan = planned(home)
    assert plan.trial is not None
    key = plan.trial.credential.key.reveal()
    for said in (repr(plan), repr(plan.trial), str(plan)):
        assert "Credential" not in said
        assert repr(key)[2:40] not in said


def test_a_changed_mind_ends_it_between_the_links_of_the_front(home: Home) -> None:
    """Somebody who has stopped the check would still have a device shown at the front."""
    plan = planned(home)
    world = world_of(home)
    both(world, gate([ca_mark(home)]))
    heard: list[Link] = []
    with pytest.raises(Cancelled):
        reaching(home, world).walk(plan, heard.append, lambda: any(one.place is Place.FRONT for one in heard))
    assert heard[-1].place is Place.FRONT
    assert {Place.FRONT, Place.FRONT_IN} <= set(plan.places)
