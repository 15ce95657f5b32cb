"""Which drives can be pulled, and when."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import TypeVar

import pytest
from PySide6.QtCore import QObject
from PySide6.QtDBus import QDBusConnection
from pytestqt.qtbot import QtBot

from hearthkey.core.errors import Unavailable
from hearthkey.ui.drives import Drive, Sticks, plugged_in, removable
from hearthkey.ui.tasks import Failed, Then
from tests.ui.leaving.household import STICK, at_once

T = TypeVar("T")

pytestmark = pytest.mark.usefixtures("qapp")


def kernel(tmp_path: Path) -> Path:
    """A computer with a built-in disk, a stick, a card, an encrypted stick, a disc drive and an encrypted disk."""
    devices = {
        "pci/ata1/block/sda": "0",
        "pci/usb1/1-2/block/sdb": "0",
        "pci/mmc_host/mmc0/block/mmcblk0": "0",
        "pci/ata2/block/sr0": "1",
    }
    blocks = tmp_path / "class" / "block"
    blocks.mkdir(parents=True)
    for path, flag in devices.items():
        disk = tmp_path / "devices" / path
        part = disk / f"{disk.name}{'p' if disk.name[-1].isdigit() else ''}1"
        part.mkdir(parents=True)
        (disk / "removable").write_text(f"{flag}\n", encoding="ascii")
        for one in (disk, part):
            (blocks / one.name).symlink_to(one)
    for name, on in (("dm-0", "sda1"), ("dm-1", "sdb1")):
        mapped = tmp_path / "devices" / "virtual" / name
        (mapped / "slaves").mkdir(parents=True)
        (mapped / "slaves" / on).symlink_to((blocks / on).resolve())
        (mapped / "removable").write_text("0\n", encoding="ascii")
        (blocks / name).symlink_to(mapped)
    return blocks


@pytest.mark.parametrize(
    ("device", "expected"),
    [
        ("/dev/sda1", False),
        ("/dev/sdb1", True),
        ("/dev/sdb", True),
        ("/dev/mmcblk0p1", True),
        ("/dev/sr0", True),
        ("/dev/dm-0", False),
        ("/dev/dm-1", True),
        ("/dev/nvme0n1p1", False),
        ("tmpfs", False),
        ("192.0.2.10:/export", False),
    ],
)
def test_what_has_a_socket_outside_can_be_pulled(tmp_path: Path, device: str, *, expected: bool) -> None:
    """If this failed, the list would offer the built-in disk, or miss the stick that was just plugged in."""
    assert removable(device, kernel(tmp_path)) is expected


def test_looking_at_this_computer_finds_only_whole_drives() -> None:
    """If this failed, a drive without a place or a name would be offered."""
    for drive in plugged_in():
        assert drive.path.is_dir()
        assert drive.name
        assert drive.device.startswith("/dev/")


def test_drives_are_looked_for_elsewhere() -> None:
    """If this failed, a drive that hangs would hang the window."""
    asked: list[str] = []
    found: list[tuple[Drive, ...]] = []

    def pool(work: Callable[[], T], context: QObject, then: Then[T], failed: Failed) -> None:
        asked.append("pool")
        at_once(work, context, then, failed)

    sticks = Sticks(pool, look=lambda: (STICK,))
    sticks.look(QObject(), found.append, lambda _error: None)
    assert asked == ["pool"]
    assert found == [(STICK,)]


def test_a_bus_is_reached_elsewhere(qtbot: QtBot) -> None:
    """If this failed, a bus that hangs would hang the window; what happens on it is in test_unmounting.py."""
    asked: list[str] = []
    told: list[str] = []

    def pool(work: Callable[[], T], context: QObject, then: Then[T], failed: Failed) -> None:
        asked.append("pool")
        at_once(work, context, then, failed)

    sticks = Sticks(pool, bus=lambda: QDBusConnection("nowhere"))
    sticks.let_go(STICK, lambda: told.append("free"), lambda: told.append("by hand"))
    qtbot.waitUntil(lambda: bool(told), timeout=20_000)
    assert (asked, told) == (["pool"], ["by hand"])


def test_a_bus_that_cannot_be_reached_at_all(qtbot: QtBot) -> None:
    """If this failed, nobody would hear what to do with the stick."""
    told: list[str] = []

    def none() -> QDBusConnection:
        raise Unavailable("world", path="", seen="no bus")

    sticks = Sticks(at_once, bus=none)
    sticks.let_go(STICK, lambda: told.append("free"), lambda: told.append("by hand"))
    qtbot.waitUntil(lambda: bool(told), timeout=20_000)
    assert told == ["by hand"]
