"""What a server or its disk is short of: extensions, permissions, room."""

from __future__ import annotations

import subprocess
from collections.abc import Iterator
from pathlib import Path

import pytest

from hearthkey.adapters.gateway_ways import GatewayWays
from hearthkey.core.errors import Unavailable
from hearthkey.core.pack import MANIFEST, PackFile
from hearthkey.core.target import IN_FORCE, SETS
from tests.gateway import servers
from tests.gateway.contract import LIMIT, NEW, OLD, deliver, lay_down, on_disk, whole
from tests.gateway.servers import SFTP_SERVER, Server


@pytest.mark.parametrize(
    "less", ["hardlink", "posix-rename", "fsync", "statvfs", "hardlink,posix-rename,fsync,statvfs"]
)
def test_a_server_that_can_do_less(keys: Path, door: GatewayWays, folder: Path, less: str) -> None:
    """Broken if it fails: a server without OpenSSH's own extensions cannot be delivered to."""
    poorer = servers.running(keys, subsystem=f"{SFTP_SERVER} -P {less}")
    with poorer as server, door.open(server.target(folder)) as gate:
        deliver(gate, OLD, None)
        deliver(gate, NEW, OLD)
        gate.put_set(NEW.set_id, [NEW[MANIFEST]], [], NEW.set_id)
        gate.switch(NEW.set_id)
    assert on_disk(folder) == whole(NEW)
    assert (folder / IN_FORCE / "gateway-key.pem").stat().st_mode & 0o777 == 0o600


def test_a_switch_that_was_cut_off_is_finished(server: Server, door: GatewayWays, folder: Path) -> None:
    """Broken if it fails: without posix-rename, a cut in the one bad moment leaves no set in force for good."""
    with door.open(server.target(folder)) as gate:
        deliver(gate, OLD, None)
        lay_down(gate, NEW, OLD)
        (folder / IN_FORCE).unlink()
        (folder / f"{IN_FORCE}.next").symlink_to(f"{SETS}/{NEW.set_id}")
        assert gate.in_force() == NEW.set_id
    assert on_disk(folder) == whole(NEW)


def test_a_link_that_leads_elsewhere_is_told(server: Server, door: GatewayWays, folder: Path, tmp_path: Path) -> None:
    """Broken if it fails: somebody else's files are read as if they were in force."""
    (folder / IN_FORCE).symlink_to(tmp_path)
    with pytest.raises(Unavailable) as odd, door.open(server.target(folder)):
        pytest.fail("it opened")
    assert odd.value.code == "gateway-odd"


def test_a_gateway_that_may_only_be_read(keys: Path, server: Server, door: GatewayWays, folder: Path) -> None:
    """Broken if it fails: a folder without permission to write is told in riddles."""
    with door.open(server.target(folder)) as gate:
        deliver(gate, OLD, None)
    with servers.running(keys, subsystem=f"{SFTP_SERVER} -R") as reading, door.open(reading.target(folder)) as gate:
        assert gate.in_force() == OLD.set_id
        assert gate.now() is None
        assert gate.read(OLD.set_id, OLD.names, LIMIT) == whole(OLD)
        with pytest.raises(Unavailable) as refused:
            lay_down(gate, NEW, OLD)
        assert refused.value.code == "gateway-read-only"
        with pytest.raises(Unavailable) as refused:
            gate.switch(NEW.set_id)
        assert refused.value.code == "gateway-read-only"
    assert on_disk(folder) == whole(OLD)


@pytest.fixture
def disk(tmp_path: Path) -> Iterator[Path]:
    """A memory disk of 256 KiB, or a named skip."""
    place = tmp_path / "disk"
    place.mkdir()
    mounted = subprocess.run(
        ["mount", "-t", "tmpfs", "-o", "size=256k", "tmpfs", str(place)], capture_output=True, check=False
    )
    if mounted.returncode != 0:
        pytest.skip("no memory disk can be mounted here (needs root)")
    try:
        yield place
    finally:
        subprocess.run(["umount", str(place)], check=True)


@pytest.mark.parametrize("way", ["ssh", "folder"])
def test_a_disk_without_room(server: Server, door: GatewayWays, disk: Path, way: str) -> None:
    """Broken if it fails: a full disk at the gateway costs it the set that it had, or stays full of ours."""
    target = server.target(disk) if way == "ssh" else servers.here(disk)
    with door.open(target) as gate:
        deliver(gate, OLD, None)
        (disk / "fill").write_bytes(b"q" * 150_000)
        large = PackFile("large.bin", b"q" * 120_000)
        with pytest.raises(Unavailable) as full:
            gate.put_set(NEW.set_id, [*NEW.files, large], [], OLD.set_id)
        assert full.value.code == "gateway-full"
        assert gate.in_force() == OLD.set_id
        assert {path.name for path in (disk / SETS).iterdir()} <= {OLD.set_id}
        (disk / "fill").unlink()
        deliver(gate, NEW, OLD)
    assert on_disk(disk) == whole(NEW)


@pytest.mark.parametrize("way", ["ssh", "folder"])
def test_a_disk_that_is_mounted_for_reading(server: Server, door: GatewayWays, disk: Path, way: str) -> None:
    """Broken if it fails: a worn-out card that only reads is told in riddles."""
    target = server.target(disk) if way == "ssh" else servers.here(disk)
    with door.open(target) as gate:
        deliver(gate, OLD, None)
        subprocess.run(["mount", "-o", "remount,ro", str(disk)], check=True)
        with pytest.raises(Unavailable) as refused:
            lay_down(gate, NEW, OLD)
        assert refused.value.code == "gateway-read-only"
        with pytest.raises(Unavailable) as refused:
            gate.switch(NEW.set_id)
        assert refused.value.code == "gateway-read-only"
        gate.keep_only([])
        assert gate.in_force() == OLD.set_id
    assert on_disk(disk) == whole(OLD)
