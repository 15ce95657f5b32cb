"""A disk that is full: a clear word, nothing half done, and everything works once there is room."""

from __future__ import annotations

import os
import subprocess
from collections.abc import Iterator
from pathlib import Path

import pytest

from hearthkey.core.household import FILE
from tests.crash import verdict
from tests.crash.conftest import settle
from tests.crash.homes import Home
from tests.crash.nursery import Nursery
from tests.crash.test_export import whole_codes
from tests.judges import needs
from tests.keyring.desktop import Desktop

DISK = "2m"
ROOM_KIB = (32, 36, 40, 48, 56, 64, 80, 96, 128, 192, 256, 384, 640)
"""How much is left free: from just enough to open the register to more than any verb writes."""
NO_ROOM_KIB = (0, 8, 28)
"""So little that the register's shared memory, 32 KiB (sqlite.org/walformat.html section 2.1), has no room."""


@pytest.fixture
def small_disk(tmp_path: Path) -> Iterator[Path]:
    """A disk of two MiB."""
    if os.geteuid() != 0:
        pytest.skip("only root can mount a small disk to fill up")
    disk = tmp_path / "disk"
    disk.mkdir()
    mounted = subprocess.run(
        (needs("mount"), "-t", "tmpfs", "-o", f"size={DISK},mode=0700", "tmpfs", disk), capture_output=True, check=False
    )
    if mounted.returncode != 0:
        pytest.skip(f"no small disk can be mounted here: {mounted.stderr.decode(errors='replace').strip()}")
    yield disk
    subprocess.run((needs("umount"), disk), check=True)


@pytest.fixture
def home(desktop: Desktop, nursery: Nursery, small_disk: Path) -> Home:
    """Somewhere on the small disk."""
    return Home(desktop, nursery, small_disk, FILE)


def fill(disk: Path, room: int) -> Path:
    """Leave so much free, in KiB, and return the file that takes the rest."""
    filler = disk / "filler"
    state = os.statvfs(disk)
    with filler.open("wb") as file:
        if (size := state.f_bavail * state.f_frsize - room * 1024) > 0:
            os.posix_fallocate(file.fileno(), 0, size)
    return filler


def run_on_a_full_disk(home: Home, disk: Path, verb: str, rooms: tuple[int, ...] = ROOM_KIB) -> set[str | None]:
    """Run a verb with less and more room, and each time again once there is enough; return all that it said first."""
    home.put_back()
    before = verdict.judge(home)
    assert home.run(verb).refusal is None
    after = verdict.judge(home)
    said: list[str | None] = []
    for room in rooms:
        home.put_back()
        filler = fill(disk, room)
        said.append(home.run(verb).refusal)
        filler.unlink()
        assert home.list_devices()[0] == (3 if (before if said[-1] else after).rows[0] == 0 else 0)
        assert verdict.judge(home) == (before if said[-1] else after), (room, said)
        if said[-1]:
            assert home.run(verb).refusal is None
            assert verdict.judge(home) == after, room
    return set(said)


def test_founding(home: Home, small_disk: Path) -> None:
    """If this fails, a full disk on the first evening leaves half a household."""
    assert run_on_a_full_disk(home, small_disk, "found") == {"disk-full", None}


@pytest.fixture
def settled_home(home: Home) -> Home:
    """A household on the small disk."""
    return settle(home)


def test_enrolling(settled_home: Home, small_disk: Path) -> None:
    """If this fails, a full disk leaves a device without its passphrase, or a passphrase without its device."""
    assert run_on_a_full_disk(settled_home, small_disk, "add") == {"disk-full", None}


def test_exporting(settled_home: Home, small_disk: Path) -> None:
    """If this fails, a stick that is too small holds half a bundle, or is found out only in the middle of writing."""
    home, said = settled_home, set()
    for room in ROOM_KIB:
        home.put_back()
        filler = fill(small_disk, room)
        said.add(home.run("export").refusal)
        whole_codes(home.folder)
        assert not any(path.name.startswith(".") for path in home.folder.iterdir())
        filler.unlink()
        assert home.run("export").refusal is None
    assert said == {"no-room-for-copy", None}


@pytest.mark.parametrize("verb", ["start", "add"])
def test_no_room_to_open_the_register(settled_home: Home, small_disk: Path, verb: str) -> None:
    """If this fails, a disk that is full to the brim is called something else than full."""
    before = verdict.judge(settled_home)
    for room in NO_ROOM_KIB:
        settled_home.put_back()
        filler = fill(small_disk, room)
        assert settled_home.run(verb).refusal == "disk-full"
        filler.unlink()
        assert verdict.judge(settled_home) == before
