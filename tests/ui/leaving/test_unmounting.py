"""A stick is let go of over D-Bus: a real bus of the test's own, and a service of other hands' library on it."""

from __future__ import annotations

import itertools
import json
import subprocess
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

import pytest
from PySide6.QtDBus import QDBusConnection
from pytestqt.qtbot import QtBot

from hearthkey.ui.unmounting import Unmounting, object_of
from tests.judges import needs

SERVICE = Path(__file__).with_name("disk_service.py")
_numbers = itertools.count(1)


@pytest.fixture(scope="module")
def address(tmp_path_factory: pytest.TempPathFactory) -> Iterator[str]:
    """A bus that has nobody on it yet."""
    listen = f"--address=unix:path={tmp_path_factory.mktemp('bus')}/socket"
    with subprocess.Popen(
        [needs("dbus-daemon"), "--session", "--nofork", "--print-address", listen], stdout=subprocess.PIPE
    ) as bus:
        assert bus.stdout is not None
        yield bus.stdout.readline().decode().strip()
        bus.terminate()


@contextmanager
def service(address: str, *words: str) -> Iterator[list[list[object]]]:
    """The disk service, and the calls that reached it, to be read once the block is over."""
    calls: list[list[object]] = []
    with subprocess.Popen([sys.executable, str(SERVICE), address, *words], stdout=subprocess.PIPE, text=True) as made:
        assert made.stdout is not None
        assert made.stdout.readline() == "ready\n"
        yield calls
        made.terminate()
        calls += [json.loads(line) for line in made.stdout]


def let_go(qtbot: QtBot, address: str, device: str = "/dev/sdb1", seconds: float = 30) -> list[str]:
    """Let go of a stick, and what was told."""
    told: list[str] = []
    bus = QDBusConnection.connectToBus(address, f"test {next(_numbers)}")
    one = Unmounting(bus, device, lambda: told.append("free"), lambda: told.append("by hand"), seconds=seconds)
    one.begin()
    qtbot.waitUntil(lambda: bool(told), timeout=20_000)
    return told


QUIET = {"auth.no_user_interaction": ["b", True]}


@pytest.mark.parametrize(
    ("words", "expected", "last"),
    [
        (("power-off", "ejectable"), "free", "PowerOff"),
        (("ejectable",), "free", "Eject"),
        ((), "free", "Get"),
        (("no-drive",), "free", "Get"),
        (("power-off", "forbidden-poweroff"), "free", "PowerOff"),
        (("power-off", "busy-poweroff"), "by hand", "PowerOff"),
        (("busy-unmount", "power-off"), "by hand", "Unmount"),
        (("forbidden-unmount", "power-off"), "by hand", "Unmount"),
    ],
    ids=str,
)
def test_a_stick_may_be_pulled_once_it_is_unmounted(
    qtbot: QtBot, address: str, words: tuple[str, ...], expected: str, last: str
) -> None:
    """If this failed, "you may pull it now" would be said of a stick that is still written to, or in use elsewhere."""
    with service(address, *words) as calls:
        assert let_go(qtbot, address) == [expected]
    assert calls[0] == ["sdb1", "Unmount", [QUIET]]
    assert calls[-1][1] == last


@pytest.mark.parametrize(
    ("words", "expected"),
    [(("silent-unmount",), "by hand"), (("silent-get",), "free"), (("power-off", "silent-poweroff"), "free")],
    ids=str,
)
def test_a_service_that_is_silent_is_not_waited_for(
    qtbot: QtBot, address: str, words: tuple[str, ...], expected: str
) -> None:
    """If this failed, a service that hangs would leave the householder before a stick that says nothing."""
    with service(address, *words):
        assert let_go(qtbot, address, seconds=0.5) == [expected]


def test_without_the_service_the_file_manager_does_it(qtbot: QtBot, address: str) -> None:
    """If this failed, a desktop without that service would never hear what to do with the stick."""
    assert let_go(qtbot, address) == ["by hand"]


def test_without_a_bus_the_file_manager_does_it(qtbot: QtBot, tmp_path: Path) -> None:
    """If this failed, a computer without a system bus would never hear what to do with the stick."""
    assert let_go(qtbot, f"unix:path={tmp_path}/nowhere") == ["by hand"]


def test_another_volume_than_ours_is_not_unmounted(qtbot: QtBot, address: str) -> None:
    """If this failed, a wrong stick would be let go of, and ours said to be free."""
    with service(address, "power-off") as calls:
        assert let_go(qtbot, address, "/dev/sdc1") == ["by hand"]
    assert [one[:2] for one in calls] == [["sdc1", "Unmount"]]


@pytest.mark.parametrize(
    ("device", "name"), [("/dev/sdb1", "sdb1"), ("/dev/dm-1", "dm_2d1"), ("/dev/mmcblk0p1", "mmcblk0p1")]
)
def test_a_device_is_an_object_of_the_service(device: str, name: str) -> None:
    """If this failed, an encrypted stick could not be let go of."""
    assert object_of(device) == f"/org/freedesktop/UDisks2/block_devices/{name}"
