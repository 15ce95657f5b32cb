"""Real OpenSSH servers on loopback, and a relay that cuts or slows the connection on its way."""

from __future__ import annotations

import contextlib
import getpass
import os
import select
import shutil
import socket
import subprocess
import threading
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path
from typing import Self

import pytest

from hearthkey.core.target import By, Target
from tests.judges import needs

SFTP_SERVER = "/usr/lib/openssh/sftp-server"
_CONFIG = """
{more}
Port {port}
ListenAddress 127.0.0.1
HostKey {home}/host_key
AuthorizedKeysFile {home}/authorized_keys
UsePAM no
StrictModes no
PidFile none
PermitRootLogin yes
PasswordAuthentication no
KbdInteractiveAuthentication no
MaxStartups 100:30:200
LogLevel ERROR
KexAlgorithms curve25519-sha256
Subsystem sftp {subsystem}
"""
_CLIENT = """
Host quince-gate
    HostName 127.0.0.1
    Port {port}
    User {user}
    IdentityFile {home}/{identity}
    IdentitiesOnly yes
    IdentityAgent none
    UserKnownHostsFile {home}/known_hosts
"""


@dataclass(frozen=True)
class Server:
    """A server that runs.

    Args:
        log: what it wrote about itself.
        home: folder with its keys, and with the program folder `bin`, whose ssh reads the test's own configuration.
        port: on 127.0.0.1.
        host_key: as a pinned line.
    """

    home: Path
    port: int
    host_key: str
    log: Path

    def target(self, folder: Path | str, *, port: int | None = None) -> Target:
        """A folder there, by the alias of the user's configuration; by another port where a relay is on the way."""
        return Target(By.SSH, str(folder), "quince-gate", port or self.port, host_key=self.host_key)


def here(folder: Path) -> Target:
    """A folder on this computer."""
    return Target(By.FOLDER, str(folder))


def keys(home: Path) -> None:
    """Make keys: two for hosts, one user's that is let in and one that is not."""
    home.mkdir()
    for name in ("host_key", "other_host_key", "ines", "stranger"):
        make_key(home / name)
    shutil.copy(home / "ines.pub", home / "authorized_keys")


def make_key(path: Path) -> None:
    """Make a key pair."""
    subprocess.run([needs("ssh-keygen"), "-q", "-t", "ed25519", "-N", "", "-C", "", "-f", path], check=True)


def public(path: Path) -> str:
    """A public key as a pinned line."""
    return " ".join(path.with_suffix(".pub").read_text("ascii").split()[:2])


def be_the_user(home: Path, port: int, identity: str = "ines") -> None:
    """Write the configuration of the user, and an ssh that reads it: ssh asks the system, not HOME, where it lies."""
    config = _CLIENT.format(home=home, port=port, user=getpass.getuser(), identity=identity)
    (home / "config").write_text(config, "ascii")
    (home / "bin").mkdir(exist_ok=True)
    ssh = home / "bin" / "ssh"
    ssh.write_text(f'#!/bin/sh\nexec {shutil.which("ssh", path="/usr/bin:/bin")} -F {home}/config "$@"\n', "ascii")
    ssh.chmod(0o755)


def sshd() -> str | None:
    """Where the server's program is; it is not on everybody's path."""
    return shutil.which("sshd", path=f"{os.environ['PATH']}:/usr/sbin")


@contextmanager
def running(home: Path, *, subsystem: str = SFTP_SERVER, more: str = "") -> Iterator[Server]:
    """Run a server for the time of the block.

    Args:
        subsystem: the program that serves files.
        more: further lines of its configuration.
    """
    program = sshd() or needs("sshd")
    if os.geteuid() == 0:
        Path("/run/sshd").mkdir(mode=0o755, exist_ok=True)
    port = free_port()
    config = home / f"sshd_config-{port}"
    config.write_text(_CONFIG.format(port=port, home=home, subsystem=subsystem, more=more), "ascii")
    log = home / f"sshd-{port}.log"
    server = subprocess.Popen([program, "-D", "-f", config, "-E", log], stdin=subprocess.DEVNULL)
    try:
        until(lambda: answers(port), lambda: log.read_text("utf-8", "replace") if log.exists() else "no log")
        yield Server(home, port, public(home / "host_key"), log)
    finally:
        server.terminate()
        server.wait()


def free_port() -> int:
    """A port that nobody listens on."""
    with socket.socket() as one:
        one.bind(("127.0.0.1", 0))
        return int(one.getsockname()[1])


def answers(port: int) -> bool:
    """Whether somebody listens there."""
    try:
        with socket.create_connection(("127.0.0.1", port), 1):
            return True
    except ConnectionRefusedError:
        return False


def until(true: Callable[[], bool], otherwise: Callable[[], str]) -> None:
    """Wait for something, ten seconds at most."""
    nobody = threading.Event()
    for _ in range(1000):
        if true():
            return
        nobody.wait(0.01)
    pytest.fail(otherwise())


class Relay:
    """Passes octets on between a client and a server, one connection at a time.

    Args:
        to: port of the server.
        most: after so many octets of both directions the connection is cut; None for never.
        pace: octets a second and direction, None for as fast as it goes.
        deaf_after: after so many octets nothing is passed on any more, and the connection stays; None for never.
    """

    def __init__(
        self, to: int, *, most: int | None = None, pace: int | None = None, deaf_after: int | None = None
    ) -> None:
        self._to = to
        self._most, self._pace, self._deaf_after = most, pace, deaf_after
        self._listening = socket.create_server(("127.0.0.1", 0))
        self.port = int(self._listening.getsockname()[1])
        self.passed = 0
        self.connections = 0
        self.up = False
        self._over = threading.Event()
        self._thread = threading.Thread(target=self._serve, name="relay")

    def __enter__(self) -> Self:
        self._thread.start()
        return self

    def __exit__(self, *_: object) -> None:
        self._over.set()
        self._thread.join()
        self._listening.close()

    def cut_after(self, more: int) -> None:
        """Cut after so many octets from now."""
        self._most = self.passed + more

    def deafen_after(self, more: int) -> None:
        """Pass nothing on any more after so many octets from now."""
        self._deaf_after = self.passed + more

    def _serve(self) -> None:
        while not self._over.is_set():
            ready, _, _ = select.select([self._listening], [], [], 0.02)
            if ready:
                client, _ = self._listening.accept()
                self.connections += 1
                with client, contextlib.suppress(OSError), socket.create_connection(("127.0.0.1", self._to)) as server:
                    self.up = True
                    self._pass_on(client, server)
                self.up = False

    def _pass_on(self, client: socket.socket, server: socket.socket) -> None:
        other = {client: server, server: client}
        while not self._over.is_set():
            ready, _, _ = select.select([client, server], [], [], 0.02)
            for one in ready:
                if self._deaf_after is not None and self.passed >= self._deaf_after:
                    self._over.wait(0.02)
                    continue
                room = 16384 if self._most is None else min(16384, self._most - self.passed)
                if room <= 0:
                    return
                data = one.recv(room if self._pace is None else min(room, max(1, self._pace // 50)))
                if not data:
                    return
                other[one].sendall(data)
                self.passed += len(data)
                if self._pace is not None:
                    self._over.wait(len(data) / self._pace)
