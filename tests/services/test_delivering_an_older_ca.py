"""A copy from before the CA changed meets the gateway of after: nobody whom it stopped gets in again."""

from __future__ import annotations

from pathlib import Path

import pytest

from hearthkey.core.errors import Refused
from hearthkey.core.in_force import Standing
from hearthkey.core.succession import Cause
from hearthkey.core.target import By, Target
from tests.fakes.gateway import HOST_KEY
from tests.fakes.home import PASSPHRASE, Home, PracticeHouse, World, at_home


def sealed(home: Home, folder: Path) -> bytes:
    """A sealed copy as of now."""
    _, changes = home.house.sealing.seal(folder)
    return Path(changes.files[0]).read_bytes()


def restored(home: Home, data: bytes, folder: Path) -> PracticeHouse:
    """The household of a copy on another computer, unlocked, with the same gateway."""
    there = home.world
    house = PracticeHouse(folder, World(clock=there.clock, locksmith=there.locksmith, gate=there.gate))
    house.enter()
    with house.restoring.preview(data, PASSPHRASE) as plan:
        house.restoring.apply(plan)
    house.keyholder.unlock(house.register, house.vault, PASSPHRASE)
    return house


def test_an_older_copy_leaves_the_gateway_of_the_next_ca_alone(tmp_path: Path) -> None:
    """Broken if it fails: the old CA's set goes back, with it whoever was revoked, and new passes are locked out."""
    with at_home(tmp_path / "data", practice=False, quick=True) as home:
        gate, delivering = home.world.gate, home.house.delivering
        gate.clock = home.world.clock.now()
        home.house.targeting.choose(Target(By.SSH, "hearthkey", host="gateway.quince.example"), HOST_KEY)
        delivering.deliver()
        home.house.sealing.make_ready(PASSPHRASE)
        before = sealed(home, tmp_path / "before")
        home.revoke("Ines phone")
        home.house.succeeding.begin(PASSPHRASE, Cause.STOLEN)
        delivering.deliver()
        midway = dict(gate.sets), gate.current
        for _ in range(2):
            home.house.succeeding.go_on()
            delivering.deliver()
        home.house.succeeding.finish(anyway=True)
        home.world.clock.forward(hours=1)
        gate.clock = home.world.clock.now()
        delivering.deliver()
        after = sealed(home, tmp_path / "after")

        old = restored(home, before, tmp_path / "old")
        try:
            there = dict(gate.sets), gate.current
            gate.steps.clear()
            for visit in (old.delivering.look, old.delivering.deliver):
                with pytest.raises(Refused, match="gateway-list-of-another"):
                    visit()
            assert (gate.sets, gate.current) == there
            assert {"put_set", "switch", "keep_only", "run"}.isdisjoint(gate.steps)
            assert old.register.entries() == []
            assert old.watching.state().standing is Standing.WAITING
            gate.sets, gate.current = midway[0], midway[1]
            with pytest.raises(Refused, match="gateway-list-of-another"):
                old.delivering.deliver()
            assert gate.current == midway[1]
            assert {one.serial for one in old.register.entries()} >= {home.newest("Ines phone").serial}
            gate.sets, gate.current = {}, None
            old.delivering.deliver()
            gate.sets, gate.current = there
        finally:
            old.leave()

        new = restored(home, after, tmp_path / "new")
        try:
            assert {one.serial for one in new.register.entries()} == {
                one.serial for one in home.house.register.passes()
            }
            new.delivering.deliver()
            assert new.watching.state().standing is Standing.IN_FORCE
        finally:
            new.leave()
