"""Sticks and cards that are plugged in, and when they may be pulled."""

from __future__ import annotations

import shutil
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Protocol, TypeVar

from PySide6.QtCore import QObject, QProcess, QStorageInfo, QTimer

from hearthkey.ui.tasks import Failed, Then

T = TypeVar("T")

UNMOUNT = "udisksctl"
"""The desktop's own program for unmounting; where it is missing, the file manager does it by hand."""

UNMOUNT_SECONDS = 30
"""A slow stick may have much to write; after that the file manager is the better judge."""

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
        pool: runs the look elsewhere: a drive that hangs must not hang the window.
        look: what finds the drives.
        unmount: the program that unmounts, or None where there is none.
    """

    def __init__(
        self,
        pool: Pool,
        parent: QObject | None = None,
        *,
        look: Callable[[], tuple[Drive, ...]] = plugged_in,
        unmount: str | None = shutil.which(UNMOUNT),
    ) -> None:
        super().__init__(parent)
        self._pool = pool
        self._look = look
        self._unmount = unmount
        self._running: list[QProcess] = []

    def look(self, context: QObject, then: Then[tuple[Drive, ...]], failed: Failed) -> None:
        """Find what is plugged in."""
        self._pool(self._look, context, then, failed)

    def let_go(self, drive: Drive, free: Callable[[], None], by_hand: Callable[[], None]) -> None:
        """Unmount a drive.

        Args:
            free: called when it may be pulled.
            by_hand: called when the file manager has to do it.
        """
        if self._unmount is None:
            by_hand()
            return
        process = QProcess(self)
        self._running.append(process)
        patience = QTimer(process)
        patience.setSingleShot(True)
        patience.timeout.connect(process.kill)

        def over(*_how: object) -> None:
            if process not in self._running:
                return
            self._running.remove(process)
            patience.stop()
            ended = process.exitStatus() == QProcess.ExitStatus.NormalExit
            gone = process.error() == QProcess.ProcessError.UnknownError and ended and process.exitCode() == 0
            process.deleteLater()
            (free if gone else by_hand)()

        process.finished.connect(over)
        process.errorOccurred.connect(over)
        process.start(self._unmount, ["unmount", "--block-device", drive.device, "--no-user-interaction"])
        patience.start(UNMOUNT_SECONDS * 1000)
