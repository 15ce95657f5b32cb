"""A throwaway login of Quince Cottage: its own home, its own bus, its own keyring daemon, and nobody else's."""

from __future__ import annotations

import os
import subprocess
from contextlib import closing
from pathlib import Path

import secretstorage
from jeepney import MatchRule  # type: ignore[import-untyped] # has no types
from jeepney.bus_messages import message_bus  # type: ignore[import-untyped] # as above
from jeepney.io.blocking import DBusConnection, Proxy, open_dbus_connection  # type: ignore[import-untyped] # too
from secretstorage import Collection, Item

import hearthkey
from hearthkey.adapters.vault_keyring import SERVICE
from tests.judges import needs

LOGIN = "a login of Quince Cottage"
NO_BUS = "disabled:"
"""What DBUS_SESSION_BUS_ADDRESS says where there is no bus."""
WAIT_SECONDS = 30.0
"""How long a daemon may take to come up before the test is given up."""

_SECRETS = "org.freedesktop.secrets"
_OTHER_LOGINS = (
    "DISPLAY",
    "WAYLAND_DISPLAY",
    "PYTHON_KEYRING_BACKEND",
    "XDG_CONFIG_HOME",
    "XDG_CACHE_HOME",
    "GNOME_KEYRING_CONTROL",
)
# No folder of services: nothing can be started over this bus that the test did not start.
_BUS = """\
<!DOCTYPE busconfig PUBLIC "-//freedesktop//DTD D-Bus Bus Configuration 1.0//EN"
 "http://www.freedesktop.org/standards/dbus/1.0/busconfig.dtd">
<busconfig>
  <type>session</type>
  <listen>unix:path={socket}</listen>
  <policy context="default">
    <allow send_destination="*" eavesdrop="true"/>
    <allow eavesdrop="true"/>
    <allow own="*"/>
  </policy>
</busconfig>
"""


class Desktop:
    """One login. Its keyring keeps what it holds from one start of the daemon to the next.

    Args:
        root: an empty folder of mode 0700 with a short path, for a socket's path is short.
    """

    def __init__(self, root: Path) -> None:
        self._root = root
        for name in ("home", "runtime", "data"):
            (root / name).mkdir(mode=0o700)
        self._bus: subprocess.Popen[str] | None = None
        self._keyring: subprocess.Popen[bytes] | None = None
        self.address = NO_BUS

    @property
    def runtime(self) -> Path:
        """The folder of one-time files."""
        return self._root / "runtime"

    @property
    def environment(self) -> dict[str, str]:
        """The environment of a program in this login."""
        kept = {name: value for name, value in os.environ.items() if name not in _OTHER_LOGINS}
        return kept | {
            "HOME": str(self._root / "home"),
            "XDG_RUNTIME_DIR": str(self._root / "runtime"),
            "XDG_DATA_HOME": str(self._root / "data"),
            "DBUS_SESSION_BUS_ADDRESS": self.address,
            "PYTHONPATH": str(Path(hearthkey.__file__).parents[1]),
        }

    def start_bus(self) -> None:
        """Start the session's bus."""
        settings = self._root / "bus.conf"
        settings.write_text(_BUS.format(socket=self._root / "bus"), encoding="ascii")
        self._bus = subprocess.Popen(
            (needs("dbus-daemon"), f"--config-file={settings}", "--nofork", "--nopidfile", "--print-address=1"),
            stdout=subprocess.PIPE,
            stderr=subprocess.DEVNULL,
            env=self.environment,
            text=True,
        )
        if self._bus.stdout is None or not (address := self._bus.stdout.readline().strip()):
            raise RuntimeError("the bus did not come up")
        self.address = address

    def start_keyring(self, login: str | None = LOGIN) -> None:
        """Start the keyring daemon, opened with a login's password, or closed where there is none.

        The first password that it ever gets makes the keyring.
        """
        command = [needs("gnome-keyring-daemon"), "--foreground", "--components=secrets"]
        with (self._root / "keyring.log").open("ab") as log:
            self._keyring = subprocess.Popen(
                command if login is None else [*command, "--unlock"],
                stdin=subprocess.PIPE,
                stdout=log,
                stderr=log,
                env=self.environment,
            )
        if self._keyring.stdin is None:
            raise RuntimeError("the keyring daemon has no standard input")
        self._keyring.stdin.write((login or "").encode())
        self._keyring.stdin.close()
        self._until_it_answers()

    def _until_it_answers(self) -> None:
        changed = MatchRule(type="signal", interface=message_bus.interface, member="NameOwnerChanged")
        changed.add_arg_condition(0, _SECRETS)
        with closing(self._connection()) as connection, connection.filter(changed) as told:
            bus = Proxy(message_bus, connection)
            bus.AddMatch(changed)
            if not bus.NameHasOwner(_SECRETS)[0]:
                connection.recv_until_filtered(told, timeout=WAIT_SECONDS)

    @property
    def keyring_pid(self) -> int:
        """Process id of the keyring daemon."""
        if self._keyring is None:
            raise RuntimeError("no keyring daemon runs")
        return self._keyring.pid

    def stop_keyring(self) -> None:
        """End the keyring daemon; the keyring's file stays."""
        if self._keyring is not None:
            self._keyring.terminate()
            self._keyring.wait(WAIT_SECONDS)
            self._keyring = None

    def stop(self) -> None:
        """End everything that this login started."""
        self.stop_keyring()
        if self._bus is not None:
            self._bus.terminate()
            self._bus.wait(WAIT_SECONDS)
            if self._bus.stdout is not None:
                self._bus.stdout.close()
            self._bus = None
        self.address = NO_BUS

    def _connection(self) -> DBusConnection:
        return open_dbus_connection(bus=self.address)

    def secrets(self, service: str = SERVICE) -> dict[str, str]:
        """Everything that the keyring keeps for a service, by name, as another program sees it."""
        with closing(self._connection()) as connection:
            return {
                item.get_attributes()["username"]: item.get_secret().decode() for item in _items(connection, service)
            }

    def put_back(self, wanted: dict[str, str], service: str = SERVICE) -> None:
        """Make the keyring hold exactly what `secrets` once returned."""
        with closing(self._connection()) as connection:
            for item in _items(connection, service):
                item.delete()
            collection = secretstorage.get_default_collection(connection)
            for name, value in wanted.items():
                attributes = {"application": "Python keyring library", "service": service, "username": name}
                collection.create_item(name, attributes, value.encode(), replace=True)

    def close_keyring(self) -> None:
        """Lock the keyring, as a desktop does when nobody is at it; only a new start opens it."""
        with closing(self._connection()) as connection:
            collection: Collection = secretstorage.get_default_collection(connection)
            collection.lock()


def _items(connection: DBusConnection, service: str) -> list[Item]:
    return list(secretstorage.search_items(connection, {"service": service}))
