"""Hears when the desktop is locked, so that nothing is left open behind a locked screen."""

from __future__ import annotations

from PySide6.QtCore import SLOT, QObject, Signal, Slot
from PySide6.QtDBus import QDBusConnection

_SAVERS = (
    ("org.freedesktop.ScreenSaver", "/org/freedesktop/ScreenSaver"),
    ("org.freedesktop.ScreenSaver", "/ScreenSaver"),
    ("org.gnome.ScreenSaver", "/org/gnome/ScreenSaver"),
    ("org.cinnamon.ScreenSaver", "/org/cinnamon/ScreenSaver"),
    ("org.mate.ScreenSaver", "/org/mate/ScreenSaver"),
    ("org.xfce.ScreenSaver", "/org/xfce/ScreenSaver"),
)
"""Names under which desktops say that their screen saver became active; from memory."""

_LOGIN = "org.freedesktop.login1"


class SessionLock(QObject):
    """Listens on the two buses; where there is none, it hears nothing and says nothing.

    Signals:
        locked: the desktop was locked just now.
    """

    locked = Signal()

    def __init__(
        self,
        parent: QObject | None = None,
        *,
        session: QDBusConnection | None = None,
        system: QDBusConnection | None = None,
    ) -> None:
        super().__init__(parent)
        self._session = QDBusConnection.sessionBus() if session is None else session
        self._system = QDBusConnection.systemBus() if system is None else system
        if self._session.isConnected():
            for interface, path in _SAVERS:
                _listen(self._session, ("", path, interface, "ActiveChanged"), self, SLOT("saver(bool)"))
        if self._system.isConnected():  # org.freedesktop.login1(5): a session's signal Lock
            _listen(self._system, (_LOGIN, "", f"{_LOGIN}.Session", "Lock"), self, SLOT("lock()"))

    @Slot(bool)
    def saver(self, active: bool) -> None:  # noqa: FBT001 - the shape of the signal
        """The screen saver says whether it is active."""
        if active:
            self.locked.emit()

    @Slot()
    def lock(self) -> None:
        """The login manager asks a session to lock."""
        self.locked.emit()


def _listen(bus: QDBusConnection, signal: tuple[str, str, str, str], to: QObject, slot: str) -> None:
    # The stub asks for bytes; what the library takes is the text that SLOT makes (6.11.3, tried).
    bus.connect(*signal, to, slot)  # type: ignore[call-overload]  # as said above
