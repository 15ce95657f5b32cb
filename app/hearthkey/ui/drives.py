"""Sticks and cards that are plugged in, and when they may be pulled."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Protocol, TypeVar

from PySide6.QtCore import QObject, QStorageInfo
from PySide6.QtDBus import QDBusConnection

from hearthkey.ui.tasks import Failed, Then
from hearthkey.ui.unmounting import Unmounting, system_bus

T = TypeVar("T")

_OUTSIDE = ("/usb", "/mmc_host/", "/firewire")
"""Buses that end in a socket of the case."""


@dataclass(frozen=True)
class Drive:
    """A removable volume that is mounted and can be written to.

    Args:
        name: its label, or where it is mounted.
        path: where it is mounted.
        device: its device file.
        free: octets.
    """

    name: str
    path: Path
    device: str
    free: int


class Pool(Protocol):
    """`Tasks.pool`, or what a test puts in its place."""

    def __call__(self, work: Callable[[], T], context: QObject, then: Then[T], failed: Failed) -> None:
        """Do work elsewhere."""


def plugged_in(
    volumes: Callable[[], Sequence[QStorageInfo]] = QStorageInfo.mountedVolumes, blocks: Path = Path("/sys/class/block")
) -> tuple[Drive, ...]:
    """Look for drives that can be pulled out.

    Args:
        volumes: everything that is mounted.
        blocks: where the kernel describes its block devices.
    """
    found: dict[str, Drive] = {}
    for one in volumes():
        device = bytes(one.device().data()).decode(errors="replace")
        if one.isReadOnly() or not one.isReady() or not removable(device, blocks):
            continue
        path = Path(one.rootPath())
        found.setdefault(device, Drive(one.name() or path.name or str(path), path, device, one.bytesAvailable()))
    return tuple(found.values())


def removable(device: str, blocks: Path) -> bool:
    """Whether a device file lies on something that can be pulled out.

    Args:
        device: for instance /dev/sdb1; an encrypted volume counts as what it lies on.
        blocks: where the kernel describes its block devices.
    """
    if not device.startswith("/dev/"):
        return False
    return _removable(blocks / Path(device).resolve().name)


def _removable(block: Path) -> bool:
    if not block.exists():
        return False
    under = block / "slaves"
    if under.is_dir() and (parts := list(under.iterdir())):
        return all(_removable(block.parent / part.name) for part in parts)
    real = block.resolve()
    if any(bus in str(real) for bus in _OUTSIDE):
        return True
    flags = (real / "removable", real.parent / "removable")
    return _first_text(flag for flag in flags if flag.is_file()) == "1"


def _first_text(files: Iterable[Path]) -> str:
    return next((file.read_text(encoding="ascii").strip() for file in files), "")


class Sticks(QObject):
    """Looks for drives and lets go of them, without ever keeping the window waiting.

    Args:
        pool: runs the look elsewhere: a drive that hangs must not hang the window, nor a bus that does.
        look: what finds the drives.
        bus: connects to the desktop's service for disks.
    """

    def __init__(
        self,
        pool: Pool,
        parent: QObject | None = None,
        *,
        look: Callable[[], tuple[Drive, ...]] = plugged_in,
        bus: Callable[[], QDBusConnection] = system_bus,
    ) -> None:
        super().__init__(parent)
        self._pool = pool
        self._look = look
        self._bus = bus

    def look(self, context: QObject, then: Then[tuple[Drive, ...]], failed: Failed) -> None:
        """Find what is plugged in."""
        self._pool(self._look, context, then, failed)

    def let_go(self, drive: Drive, free: Callable[[], None], by_hand: Callable[[], None]) -> None:
        """Unmount a drive.

        Args:
            free: called when it may be pulled.
            by_hand: called when the file manager has to do it.
        """

        def connected(bus: QDBusConnection) -> None:
            Unmounting(bus, drive.device, free, by_hand, self).begin()

        self._pool(self._bus, self, connected, lambda _error: by_hand())
