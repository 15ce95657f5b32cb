"""The desktop's lock, heard on a real message bus of the test's own."""

from __future__ import annotations

import subprocess
from collections.abc import Iterator

import pytest
from PySide6.QtDBus import QDBusConnection, QDBusMessage
from pytestqt.qtbot import QtBot

from hearthkey.ui.session_lock import SessionLock
from tests.judges import needs

PATIENCE = 20_000
"""Milliseconds after which the bus is taken to be stuck."""


@pytest.fixture
def bus() -> Iterator[str]:
    """The address of a bus that nobody else is on."""
    words = [needs("dbus-daemon"), "--session", "--nofork", "--nopidfile", "--print-address=1"]
    daemon = subprocess.Popen(words, stdout=subprocess.PIPE, text=True)
    try:
        assert daemon.stdout is not None
        yield daemon.stdout.readline().strip()
    finally:
        daemon.terminate()
        daemon.communicate()


def say(bus: str, path: str, member: str, *words: str) -> None:
    """Send a signal as a desktop does."""
    subprocess.run([needs("dbus-send"), f"--bus={bus}", "--type=signal", path, member, *words], check=True)


def test_a_locked_desktop_is_heard_and_an_unlocked_one_is_not(qtbot: QtBot, bus: str) -> None:
    """If this failed, a pick-up would stay open behind a locked screen."""
    session = QDBusConnection.connectToBus(bus, "session of the test")
    lock = SessionLock(session=session, system=QDBusConnection("none"))
    heard: list[str] = []
    lock.locked.connect(lambda: heard.append("locked"))
    saver = "org.freedesktop.ScreenSaver"
    with qtbot.waitSignal(lock.locked, timeout=PATIENCE):
        say(bus, "/org/freedesktop/ScreenSaver", f"{saver}.ActiveChanged", "boolean:false")
        say(bus, "/org/freedesktop/ScreenSaver", f"{saver}.ActiveChanged", "boolean:true")
    assert heard == ["locked"]
    QDBusConnection.disconnectFromBus("session of the test")


def test_the_login_manager_is_heard_too(qtbot: QtBot, bus: str) -> None:
    """If this failed, locking by the laptop's lid would leave everything open."""
    system = QDBusConnection.connectToBus(bus, "system of the test")
    owner = QDBusConnection.connectToBus(bus, "login manager of the test")
    assert owner.registerService("org.freedesktop.login1")
    lock = SessionLock(session=QDBusConnection("none"), system=system)
    with qtbot.waitSignal(lock.locked, timeout=PATIENCE):
        assert owner.send(_lock_signal())
    for name in ("system of the test", "login manager of the test"):
        QDBusConnection.disconnectFromBus(name)


def _lock_signal() -> QDBusMessage:
    return QDBusMessage.createSignal("/org/freedesktop/login1/session/_31", "org.freedesktop.login1.Session", "Lock")


def test_without_a_bus_nothing_is_heard_and_nothing_breaks() -> None:
    """If this failed, the window would not open where there is no bus."""
    assert SessionLock(session=QDBusConnection("none"), system=QDBusConnection("none")) is not None
