"""What the gateway's tests have: a real OpenSSH server for all of them, and a folder for each."""

from __future__ import annotations

import errno
import os
import tempfile
from collections.abc import Iterator
from pathlib import Path

import pytest

from hearthkey.adapters.gateway_ways import GatewayWays
from hearthkey.core.target import By, Target
from tests.fakes.gateway import HOST_KEY, FakeGateway
from tests.gateway import servers
from tests.gateway.contract import Way, on_disk
from tests.gateway.servers import Server
from tests.judges import needs


@pytest.fixture(scope="session", autouse=True)
def shared_server(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Server | None]:
    """One server for the whole run, before any test counts its processes; None where there is no sshd."""
    if servers.sshd() is None:
        yield None
        return
    home = tmp_path_factory.mktemp("ssh") / "home"
    servers.keys(home)
    with servers.running(home) as server:
        yield server


@pytest.fixture
def keys(shared_server: Server | None, monkeypatch: pytest.MonkeyPatch) -> Iterator[Path]:
    """Keys of hosts and users; and be a user whose ssh knows the host `quince-gate` and has a key for it."""
    if shared_server is None:
        needs("sshd")
        pytest.fail("unreachable")
    home = shared_server.home
    servers.be_the_user(home, shared_server.port)
    (home / "known_hosts").unlink(missing_ok=True)
    monkeypatch.setenv("PATH", str(home / "bin"), prepend=":")
    with tempfile.TemporaryDirectory(prefix="run-") as run:  # the test's own folder has too long a name for a socket
        monkeypatch.setenv("XDG_RUNTIME_DIR", run)
        yield home


@pytest.fixture
def server(shared_server: Server | None, keys: Path) -> Server:
    """The server, for a user that is let in."""
    del keys
    assert shared_server is not None
    return shared_server


@pytest.fixture
def door() -> GatewayWays:
    """The ways to it."""
    return GatewayWays()


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    """The gateway's folder."""
    made = tmp_path / "gate"
    made.mkdir()
    return made


@pytest.fixture
def by_ssh(server: Server, door: GatewayWays, folder: Path) -> Way:
    """A real server."""
    return Way(door, server.target(folder), lambda: on_disk(folder), folder)


@pytest.fixture
def by_folder(door: GatewayWays, folder: Path) -> Way:
    """A folder with links."""
    return Way(door, Target(By.FOLDER, str(folder)), lambda: on_disk(folder), folder)


@pytest.fixture
def linkless(by_folder: Way, monkeypatch: pytest.MonkeyPatch) -> Way:
    """A folder on a file system that knows no links; what FAT says is played: EPERM (symlink(2), link(2))."""

    def refuse(*_: object, **__: object) -> None:
        raise PermissionError(errno.EPERM, os.strerror(errno.EPERM))

    monkeypatch.setattr(os, "symlink", refuse)
    monkeypatch.setattr(os, "link", refuse)
    return by_folder


@pytest.fixture
def in_memory() -> Way:
    """The fake that the services' tests use."""
    fake = FakeGateway()
    target = Target(By.SSH, "/srv/gate", "gate.quince.example", host_key=HOST_KEY.line)
    return Way(fake, target, lambda: fake.sets[fake.current] if fake.current is not None else {}, None)


@pytest.fixture(params=["by_ssh", "by_folder", "linkless", "in_memory"])
def way(request: pytest.FixtureRequest) -> Way:
    """Each way in turn."""
    made: Way = request.getfixturevalue(request.param)
    return made


@pytest.fixture(params=["by_ssh", "by_folder", "linkless"])
def real(request: pytest.FixtureRequest) -> Way:
    """Each way with a folder on a disk, in turn."""
    made: Way = request.getfixturevalue(request.param)
    return made
