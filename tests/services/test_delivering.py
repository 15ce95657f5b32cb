"""Delivering: what differs is sent, all of it is read back, and nothing is said that was not seen."""

from __future__ import annotations

import base64
import hashlib
import shutil
import sqlite3
from collections.abc import Iterator
from dataclasses import replace
from datetime import timedelta
from pathlib import Path

import pytest

from hearthkey.adapters.register import FILE_NAME
from hearthkey.core.bundle import Form
from hearthkey.core.delivery import Differs
from hearthkey.core.errors import Refused, Unavailable
from hearthkey.core.in_force import Standing
from hearthkey.core.pack import LIST_DER, MANIFEST, read_manifest
from hearthkey.core.revocation import Reason
from hearthkey.core.target import By, Target
from hearthkey.pki import lists
from hearthkey.services.enrolling import EnrolRequest
from hearthkey.services.gateway_ports import Ran
from tests.fakes.gateway import HOST_KEY, FakeGate, FakeGateway
from tests.fakes.home import Home, at_home

TARGET = Target(By.SSH, "hearthkey", host="gateway.quince.example", reload="systemctl reload door")


@pytest.fixture
def home(tmp_path: Path) -> Iterator[Home]:
    """Quince Cottage, not for practice, with its gateway chosen."""
    with at_home(tmp_path / "data", practice=False) as opened:
        opened.world.gate.clock = opened.world.clock.now()
        opened.house.targeting.choose(TARGET, HOST_KEY)
        yield opened


def gate_of(home: Home) -> FakeGateway:
    """The gateway of a test."""
    return home.world.gate


def standing(home: Home) -> Standing:
    """What the strip would say."""
    return home.house.watching.state().standing


def listed(gate: FakeGateway) -> set[str]:
    """Who stands on the list that is in force."""
    assert gate.current is not None
    return {one.serial for one in lists.read_list(gate.sets[gate.current][LIST_DER]).entries}


def test_the_first_delivery_brings_a_whole_set(home: Home) -> None:
    """Broken if it fails: the gateway starts with half of what it needs."""
    done = home.house.delivering.deliver()
    gate = gate_of(home)
    assert gate.current == done.plan.set_id
    files = gate.sets[gate.current or ""]
    claimed, number = read_manifest(files[MANIFEST])
    assert claimed == {name: hashlib.sha256(data).hexdigest() for name, data in files.items() if name != MANIFEST}
    assert (number, done.list_number, done.clock_off) == (1, 1, 0)
    assert standing(home) is Standing.IN_FORCE
    assert gate.steps.index("switch") < gate.steps.index("run")


def test_the_same_again_sends_nothing(home: Home) -> None:
    """Broken if it fails: every look at the gateway wears its disk and stirs its programs."""
    home.house.delivering.deliver()
    gate = gate_of(home)
    gate.steps.clear()
    again = home.house.delivering.deliver()
    assert (again.uploaded, again.plan.unchanged) == (0, True)
    assert {"put_set", "switch", "run"}.isdisjoint(gate.steps)
    assert gate.opened == 2


def test_a_stop_needs_no_secret_and_sends_the_list_alone(home: Home) -> None:
    """Broken if it fails: with a locked keyring the stolen phone stays in."""
    home.house.delivering.deliver()
    home.house.sparing.renew()
    home.house.keyholder.lock()
    home.world.vault.trouble = "keyring-locked"
    home.house.sparing.stop(home.house.sparing.preview_stop(home.passes("Ines phone")))
    assert standing(home) is Standing.WAITING
    assert home.house.watching.state().waiting == ("Ines’s phone",)
    done = home.house.delivering.deliver()
    assert {name for name, how in done.plan.files.items() if how is not Differs.SAME} == {
        "list.pem",
        "list.crl",
        MANIFEST,
    }
    assert listed(gate_of(home)) == {home.newest("Ines phone").serial}
    assert standing(home) is Standing.IN_FORCE


@pytest.mark.parametrize("step", ["open", "in_force", "read", "put_set", "switch", "run"])
def test_wherever_it_breaks_the_gateway_has_a_whole_set_and_is_not_said_to_have_more(home: Home, step: str) -> None:
    """Broken if it fails: the app says "in force" of something that is not."""
    home.house.delivering.deliver()
    gate = gate_of(home)
    before = gate.current
    home.stop("Ines phone")
    gate.trouble[step] = "gateway-cut"
    with pytest.raises(Unavailable, match="gateway-cut"):
        home.house.delivering.deliver()
    assert gate.current is not None
    assert gate.current == before or step.startswith("run")
    assert set(read_manifest(gate.sets[gate.current][MANIFEST])[0]) < set(gate.sets[gate.current])
    assert standing(home) is Standing.UNKNOWN
    assert home.house.watching.state().waiting == ("Ines’s phone",)
    gate.trouble.clear()
    home.house.delivering.deliver()
    assert standing(home) is Standing.IN_FORCE
    assert listed(gate) == {home.newest("Ines phone").serial}


def test_a_gateway_that_writes_something_else_is_found_out(home: Home) -> None:
    """Broken if it fails: a full or failing disk at the gateway passes for a delivery."""
    home.house.delivering.deliver()
    gate = gate_of(home)
    before = gate.current
    home.stop("Ines phone")
    gate.damage = {LIST_DER}
    with pytest.raises(Unavailable, match="gateway-read-back"):
        home.house.delivering.deliver()
    assert gate.current == before
    assert standing(home) is Standing.UNKNOWN


def test_a_failing_command_puts_settings_back(home: Home) -> None:
    """Broken if it fails: a gateway that refuses its new files is left with them and does not start again."""
    home.house.delivering.deliver()
    gate = gate_of(home)
    before = gate.current
    home.house.targeting.set_options(home.house.register.pack_options().__class__(extra_secret=True))
    gate.answers = [Ran(1, "no such unit")]
    with pytest.raises(Unavailable, match="reload-failed"):
        home.house.delivering.deliver()
    assert gate.current == before
    assert standing(home) is Standing.WAITING


def test_a_failing_command_never_brings_an_older_list_back(home: Home) -> None:
    """Broken if it fails: the stolen phone gets in at the gateway's next start."""
    home.house.delivering.deliver()
    gate = gate_of(home)
    home.stop("Ines phone")
    gate.answers = [Ran(1, "no such unit")]
    with pytest.raises(Unavailable, match="reload-failed-list-kept"):
        home.house.delivering.deliver()
    assert listed(gate) == {home.newest("Ines phone").serial}
    assert standing(home) is Standing.NOT_LOADED
    home.house.delivering.deliver()
    assert standing(home) is Standing.IN_FORCE


def test_a_restored_laptop_forgets_nobody(home: Home, tmp_path: Path) -> None:
    """Broken if it fails: an older copy of the register lets a revoked phone in again."""
    home.house.delivering.deliver()
    old = tmp_path / "old.db"
    with sqlite3.connect(home.house.data / FILE_NAME) as now, sqlite3.connect(old) as copy:
        now.backup(copy)
    home.add(EnrolRequest("Odile", "phone", "linux", key_set="compact"))
    lost = home.newest("Odile phone").serial
    home.revoke("Odile phone")
    home.revoke("Ines phone", Reason.CESSATION_OF_OPERATION)
    home.stop("Tomasz laptop")
    home.house.delivering.deliver()
    gate = gate_of(home)
    there = listed(gate)
    home.house.leave()
    for path in home.house.data.glob("register.db*"):
        path.unlink()
    shutil.copy(old, home.house.data / FILE_NAME)
    home.house.__dict__.pop("register", None)
    home.reopen()
    home.house.keyholder.lock()
    with pytest.raises(Refused, match="gateway-list-newer"):
        home.house.delivering.deliver()
    assert there == {one.serial for one in home.house.register.entries()}
    home.unlock()
    done = home.house.delivering.deliver()
    assert done.list_number > 4
    assert listed(gate) == there
    assert lost in there


def test_a_practice_household_stays_at_home(tmp_path: Path) -> None:
    """Broken if it fails: somebody who only tries the app out changes a real gateway."""
    with at_home(tmp_path / "data") as home:
        with pytest.raises(Refused, match="practice-stays-home"):
            home.house.targeting.choose(TARGET, HOST_KEY)
        with pytest.raises(Refused, match="practice-stays-home"):
            home.house.delivering.deliver()


def test_an_unlocked_household_signs_an_old_list_anew_on_the_way(home: Home) -> None:
    """Broken if it fails: the list's date comes nearer although the app is used every month."""
    home.house.delivering.deliver()
    home.world.clock.forward(days=29)
    home.unlock()
    assert home.house.delivering.deliver().list_number == 1
    home.world.clock.forward(days=2)
    home.world.gate.clock = home.world.clock.now()
    home.unlock()
    assert home.house.delivering.deliver().list_number == 2
    until = home.house.watching.state().note.list_until
    assert until is not None
    assert until - home.world.clock.now() == timedelta(days=800)


def test_what_changes_while_files_travel_waits_for_the_next_time(home: Home, monkeypatch: pytest.MonkeyPatch) -> None:
    """Broken if it fails: settings changed during a delivery count as delivered and never arrive."""
    options = home.house.register.pack_options()
    travel = FakeGate.switch

    def slowly(gate: FakeGate, set_id: str) -> None:
        travel(gate, set_id)
        home.house.targeting.set_options(replace(options, outer_mtu=1492))

    monkeypatch.setattr(FakeGate, "switch", slowly)
    home.house.delivering.deliver()
    assert standing(home) is Standing.WAITING
    monkeypatch.undo()
    home.house.delivering.deliver()
    assert standing(home) is Standing.IN_FORCE


def test_another_place_is_another_gateway(home: Home) -> None:
    """Broken if it fails: what was seen at the old gateway is said of the new one."""
    home.house.delivering.deliver()
    home.house.targeting.choose(Target(By.FOLDER, "/media/stick"), None)
    assert standing(home) is Standing.NEVER


def test_a_visit_on_another_thread_sees_and_leaves_the_same(home: Home) -> None:
    """Broken if it fails: the window's delivery works on a register of its own making."""
    with home.house.visit() as delivering:
        delivering.deliver()
    assert standing(home) is Standing.IN_FORCE


def test_spare_lists_go_nowhere_unless_they_are_used(home: Home, tmp_path: Path) -> None:
    """Broken if it fails: a list that locks somebody out lies at the gateway, on a stick or in a folder."""
    house = home.house
    house.sparing.renew()
    spares = [house.register.signed_spare(one.number) for one in house.register.spare_lists()]
    house.delivering.deliver()
    house.packing.save(tmp_path / "pack")
    house.packing.save_archive(tmp_path / "pack")
    house.listing.publish(house.listing.numbered(None), tmp_path / "lists")
    for form in Form:
        house.exporting.export(home.newest("Ines phone"), form, tmp_path / "bundle")
    outside = [data for files in home.world.gate.sets.values() for data in files.values()]
    for folder in (tmp_path / "pack", tmp_path / "lists", tmp_path / "bundle", house.data / "lists"):
        outside += [path.read_bytes() for path in folder.rglob("*") if path.is_file()]
    assert len(outside) > 40
    for spare in spares:
        assert spare is not None
        assert not any(spare.der in data or base64.b64encode(spare.der)[:60] in data for data in outside)
