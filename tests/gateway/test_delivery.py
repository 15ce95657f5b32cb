"""The verb "deliver" over a real sshd and into a real folder."""

from __future__ import annotations

import hashlib
import subprocess
from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import pytest

from hearthkey.adapters.gateway_ways import GatewayWays
from hearthkey.core.errors import HearthkeyError, Refused
from hearthkey.core.in_force import Standing
from hearthkey.core.pack import LIST_DER, MANIFEST
from hearthkey.core.target import IN_FORCE, By, Target
from hearthkey.pki import lists
from tests.fakes.home import Home, at_home
from tests.gateway.servers import Relay, Server, public
from tests.judges import needs


@pytest.fixture
def home(tmp_path: Path, door: GatewayWays) -> Iterator[Home]:
    """Quince Cottage, not for practice, with the real ways to a gateway."""
    with at_home(tmp_path / "data", practice=False) as opened:
        opened.house.__dict__["gateway_door"] = door
        yield opened


def listed(folder: Path) -> set[str]:
    """Who stands on the list in force."""
    return {one.serial for one in lists.read_list((folder / IN_FORCE / LIST_DER).read_bytes()).entries}


def choose(home: Home, target: Target) -> None:
    """Say where the gateway is, after its host key was compared."""
    home.house.targeting.choose(target, home.house.targeting.host_key(target))


def test_the_whole_job_by_ssh(home: Home, server: Server, folder: Path) -> None:
    """Broken if it fails: the stop of a stolen phone does not arrive (manifest judged by sha256sum)."""
    choose(home, replace(server.target(folder), host_key="", reload=f"touch {folder}/reloaded"))
    home.house.sparing.renew()
    first = home.house.delivering.deliver()
    assert (folder / "reloaded").exists()
    checked = subprocess.run(
        [needs("sha256sum"), "--check", "--strict", "--quiet", MANIFEST], cwd=folder / IN_FORCE, check=False
    )
    assert checked.returncode == 0
    assert (folder / IN_FORCE / "gateway-key.pem").stat().st_mode & 0o777 == 0o600
    home.house.keyholder.lock()
    home.world.vault.trouble = "keyring-locked"
    home.house.sparing.stop(home.house.sparing.preview_stop(home.passes("Ines phone")))
    second = home.house.delivering.deliver()
    assert (first.uploaded > 10, second.uploaded) == (True, 3)
    assert listed(folder) == {home.newest("Ines phone").serial}
    assert home.house.watching.state().standing is Standing.IN_FORCE
    assert home.house.delivering.deliver().uploaded == 0


def test_the_whole_job_by_folder(home: Home, tmp_path: Path) -> None:
    """Broken if it fails: a gateway that takes its files from a stick gets half of them."""
    stick = tmp_path / "stick"
    stick.mkdir()
    choose(home, Target(By.FOLDER, str(stick)))
    home.house.delivering.deliver()
    home.stop("Ines phone")
    home.house.delivering.deliver()
    names = {path.relative_to(stick / IN_FORCE).as_posix() for path in (stick / IN_FORCE).rglob("*") if path.is_file()}
    assert {MANIFEST, "gateway.p12", "settings-sheet.txt", "groups/ffdhe3072.pem", "nftables.conf"} <= names
    assert listed(stick) == {home.newest("Ines phone").serial}


@pytest.mark.parametrize("octets", [3_000, 9_000, 15_000, 21_000, 40_000, 70_000])
def test_a_cut_connection_leaves_a_whole_set_and_an_honest_strip(
    home: Home, server: Server, folder: Path, octets: int
) -> None:
    """Broken if it fails: half a set counts at the gateway, or the strip says what nobody saw."""
    choose(home, server.target(folder))
    home.house.delivering.deliver()
    home.stop("Ines phone")
    with Relay(server.port) as relay:
        through = replace(server.target(folder), port=relay.port)
        with home.house.register.change() as change:
            note = home.house.register.gateway_note()
            change.set_target(through)
            change.note_gateway(note)
        relay.cut_after(octets)
        try:
            home.house.delivering.deliver()
        except HearthkeyError:
            assert home.house.watching.state().standing is Standing.UNKNOWN
        else:
            assert home.house.watching.state().standing is Standing.IN_FORCE
    claimed = {}
    for line in (folder / IN_FORCE / MANIFEST).read_text("ascii").splitlines()[1:]:
        digest, name = line.split("  ")
        claimed[name] = digest
    for name, digest in claimed.items():
        assert hashlib.sha256((folder / IN_FORCE / name).read_bytes()).hexdigest() == digest
    with home.house.register.change() as change:
        change.set_target(server.target(folder))
    home.house.delivering.deliver()
    assert listed(folder) == {home.newest("Ines phone").serial}


def test_a_changed_host_key_stops_everything(home: Home, server: Server, folder: Path) -> None:
    """Broken if it fails: somebody between laptop and gateway gets the gateway's key."""
    choose(home, server.target(folder))
    other = home.house.register.target()
    assert other is not None
    with home.house.register.change() as change:
        change.set_target(replace(other, host_key=public(server.home / "other_host_key")))
    with pytest.raises(Refused, match="host-key-changed"):
        home.house.delivering.deliver()
    assert list(folder.iterdir()) == []
