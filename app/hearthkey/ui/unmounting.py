"""Lets go of a stick by the desktop's own service for disks, asked over D-Bus and never waited for.

The service is org.freedesktop.UDisks2 on the system bus (udisks(8) and its D-Bus reference, from memory): a volume
/dev/sdb1 is the object block_devices/sdb1; Filesystem.Unmount writes out what waits and takes it out of the file
system; then Drive.PowerOff where the drive can, else Drive.Eject where that is possible. Options go along as a{sv}.
"""

from __future__ import annotations

import itertools
from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import QObject, QTimer
from PySide6.QtDBus import QDBusConnection, QDBusMessage, QDBusObjectPath, QDBusPendingCallWatcher, QDBusVariant

SERVICE = "org.freedesktop.UDisks2"
ROOT = "/org/freedesktop/UDisks2"
BUSY = f"{SERVICE}.Error.DeviceBusy"

UNMOUNT_SECONDS = 30
"""A slow stick may have much to write; after that the file manager is the better judge."""

ASK_SECONDS = 5
"""For what the service knows by heart."""

Reply = Callable[[list[object] | None, str], None]
"""Hears what was answered, or None and the name of the error."""

_numbers = itertools.count(1)


def system_bus() -> QDBusConnection:
    """A connection of our own to the system bus; made away from the window's thread, for a bus may hang."""
    return QDBusConnection.connectToBus(QDBusConnection.BusType.SystemBus, f"hearthkey disks {next(_numbers)}")


def object_of(device: str) -> str:
    """The service's object for a device file; what is no letter, digit or _ becomes _ and two hex digits."""
    name = Path(device).resolve().name
    escaped = "".join(
        one if one.isascii() and (one.isalnum() or one == "_") else f"_{byte:02x}"
        for one in name
        for byte in one.encode()[:1]
    )
    return f"{ROOT}/block_devices/{escaped}"


class Unmounting(QObject):
    """One stick being let go of; tells exactly once how that ended, and is then done with.

    Args:
        bus: a connection, which need not have come about.
        device: the device file of a mounted volume.
        free: called when the stick may be pulled.
        by_hand: called when somebody has to do it in the file manager.
    """

    def __init__(
        self,
        bus: QDBusConnection,
        device: str,
        free: Callable[[], None],
        by_hand: Callable[[], None],
        parent: QObject | None = None,
        *,
        seconds: float = UNMOUNT_SECONDS,
    ) -> None:
        super().__init__(parent)
        self._bus = bus
        self._block = object_of(device)
        self._free = free
        self._by_hand = by_hand
        self._unmounted = False
        self._over = False
        self._waiting: set[QDBusPendingCallWatcher] = set()
        self._patience = QTimer(self, singleShot=True, interval=round(seconds * 1000))
        self._patience.timeout.connect(self._too_long)

    def begin(self) -> None:
        """Unmount, then let the drive rest."""
        if not self._bus.isConnected():
            self._end(self._by_hand)
            return
        self._patience.start()
        options = {"auth.no_user_interaction": True}
        self._call(self._block, f"{SERVICE}.Filesystem", "Unmount", [options], self._now_unmounted)

    def _now_unmounted(self, answer: list[object] | None, _error: str) -> None:
        if answer is None:
            self._end(self._by_hand)
            return
        self._unmounted = True
        self._get(self._block, f"{SERVICE}.Block", "Drive", self._drive_known)

    def _drive_known(self, answer: list[object] | None, _error: str) -> None:
        path = _value(answer)
        drive = path.path() if isinstance(path, QDBusObjectPath) else ""
        if drive in {"", "/"}:
            self._end(self._free)
            return

        def power_known(answer: list[object] | None, _error: str) -> None:
            if _value(answer) is True:
                self._rest(drive, "PowerOff")
            else:
                self._get(drive, f"{SERVICE}.Drive", "Ejectable", eject_known)

        def eject_known(answer: list[object] | None, _error: str) -> None:
            if _value(answer) is True:
                self._rest(drive, "Eject")
            else:
                self._end(self._free)

        self._get(drive, f"{SERVICE}.Drive", "CanPowerOff", power_known)

    def _rest(self, drive: str, method: str) -> None:
        """Let the drive rest; where it may not, ours is unmounted all the same, but a second volume may be in use."""

        def over(answer: list[object] | None, error: str) -> None:
            self._end(self._by_hand if answer is None and error == BUSY else self._free)

        self._call(drive, f"{SERVICE}.Drive", method, [{"auth.no_user_interaction": True}], over)

    def _too_long(self) -> None:
        self._end(self._free if self._unmounted else self._by_hand)

    def _end(self, told: Callable[[], None]) -> None:
        if self._over:
            return
        self._over = True
        self._patience.stop()
        self._waiting.clear()
        QDBusConnection.disconnectFromBus(self._bus.name())
        told()
        self.deleteLater()

    # The bus

    def _get(self, path: str, interface: str, name: str, then: Reply) -> None:
        self._call(path, "org.freedesktop.DBus.Properties", "Get", [interface, name], then, seconds=ASK_SECONDS)

    def _call(
        self,
        path: str,
        interface: str,
        method: str,
        arguments: list[object],
        then: Reply,
        *,
        seconds: float = UNMOUNT_SECONDS,
    ) -> None:
        message = QDBusMessage.createMethodCall(SERVICE, path, interface, method)
        message.setArguments(arguments)
        watcher = QDBusPendingCallWatcher(self._bus.asyncCall(message, round(seconds * 1000)), self)
        self._waiting.add(watcher)

        def over(_call: object) -> None:
            self._waiting.discard(watcher)
            if self._over:
                return
            failed = watcher.isError()
            then(None if failed else watcher.reply().arguments(), watcher.error().name() if failed else "")

        watcher.finished.connect(over)


def _value(answer: list[object] | None) -> object:
    """The one value of a property."""
    first = answer[0] if answer else None
    return first.variant() if isinstance(first, QDBusVariant) else first
