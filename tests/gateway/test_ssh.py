"""A gateway by ssh, with a real server: one connection, commands, and what servers and disks can be short of."""

from __future__ import annotations

import os
import signal
import subprocess
import sys
import threading
from pathlib import Path

import pytest

import hearthkey
from hearthkey.adapters.gateway_ways import GatewayWays, Limits
from hearthkey.core.errors import Cancelled, Unavailable
from hearthkey.services.gateway_ports import Ran
from tests.gateway import servers
from tests.gateway.contract import NEW, OLD, deliver, lay_down, on_disk, whole
from tests.gateway.servers import Relay, Server

HASTY = Limits(connect=60, step=3, slowest=100_000, command=3)
"""For a server that hangs: the steps that have to work before take milliseconds."""
PATIENT = Limits(connect=600, step=600, command=600)


def test_everything_goes_over_one_connection(server: Server, door: GatewayWays, folder: Path) -> None:
    """Broken if it fails: each step waits for a key exchange, and an agent that asks back asks each time."""
    with Relay(server.port) as relay, door.open(server.target(folder, port=relay.port)) as gate:
        deliver(gate, OLD, None)
        deliver(gate, NEW, OLD)
        assert gate.run("true") == Ran(0, "")
        assert gate.now() is not None
        assert relay.connections == 1
    assert on_disk(folder) == whole(NEW)


def test_a_slow_link(server: Server, door: GatewayWays, folder: Path) -> None:
    """Broken if it fails: a far gateway never gets its files."""
    with Relay(server.port, pace=60_000) as relay, door.open(server.target(folder, port=relay.port)) as gate:
        deliver(gate, OLD, None)
    assert on_disk(folder) == whole(OLD)


def test_nothing_stays_on_this_computer(server: Server, door: GatewayWays, folder: Path) -> None:
    """Broken if it fails: the gateway's key lies about in the clear."""
    runtime = Path(os.environ["XDG_RUNTIME_DIR"])
    with door.open(server.target(folder)) as gate:
        deliver(gate, OLD, None)
        [visit] = runtime.iterdir()
        assert visit.stat().st_mode & 0o077 == 0
        assert {path.name for path in visit.iterdir()} == {"known", "m"}
    assert list(runtime.iterdir()) == []


def test_what_a_killed_run_left_is_tidied(server: Server, door: GatewayWays, folder: Path) -> None:
    """Broken if it fails: after a crash the gateway's key lies about in the clear for good."""
    runtime = Path(os.environ["XDG_RUNTIME_DIR"])
    left = runtime / "hearthkey-visit-left"
    left.mkdir()
    (left / "desk").write_bytes(b"the gateway's key")
    young = runtime / "hearthkey-visit-young"
    young.mkdir()
    os.utime(left, (0, 0))
    with door.open(server.target(folder)) as gate:
        [held] = set(runtime.iterdir()) - {young}
        os.utime(held, (0, 0))
        with door.open(server.target(folder)):
            assert gate.in_force() is None
    assert list(runtime.iterdir()) == [young]


VISIT = """
import sys
from hearthkey.adapters.gateway_ways import GatewayWays
from hearthkey.core.target import By, Target
folder, port, host_key = sys.argv[1:]
with GatewayWays().open(Target(By.SSH, folder, "quince-gate", int(port), host_key=host_key)):
    print("open", flush=True)
    sys.stdin.read()
"""


def test_the_connection_ends_with_the_app(server: Server, folder: Path) -> None:
    """Broken if it fails: after a crash a way to the gateway stays open, with nobody to watch it."""
    app = str(Path(hearthkey.__file__).parents[1])
    with Relay(server.port) as relay:
        visit = subprocess.Popen(
            [sys.executable, "-c", VISIT, str(folder), str(relay.port), server.host_key],
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
            env={**os.environ, "PYTHONPATH": app},
        )
        with visit:
            assert visit.stdout is not None
            assert visit.stdout.readline() == b"open\n"
            assert relay.up
            visit.send_signal(signal.SIGKILL)
        servers.until(lambda: not relay.up, lambda: "the connection is still up")


# Commands


def test_a_command_reaches_the_shell_as_it_is(server: Server, door: GatewayWays, folder: Path) -> None:
    """Broken if it fails: the householder's command is another one by the time it runs."""
    with door.open(server.target(folder)) as gate:
        assert gate.run("""x='a  b'; printf '%s|' "$x" '\\t' "it's" *none*; echo ü >&2; exit 7""") == Ran(
            7, "a b|\\t|it's|*none*|ü"
        )
        assert gate.run("-n") != Ran(0, "")
        assert gate.run("exit 255") == Ran(255, "")
        assert gate.run("printf 'a\\033[2J\\007\\nb\\342\\200\\256c'") == Ran(0, "a [2J b c")
        assert gate.in_force() is None


def test_a_command_that_talks_without_end(server: Server, door: GatewayWays, folder: Path) -> None:
    """Broken if it fails: what a command prints fills the memory, or the command never ends."""
    with door.open(server.target(folder)) as gate:
        assert gate.run("head -c 3000000 /dev/zero | tr '\\0' q") == Ran(0, "q" * 300)


def test_a_command_that_does_not_end(server: Server, folder: Path) -> None:
    """Broken if it fails: the app waits for ever."""
    with GatewayWays(HASTY).open(server.target(folder)) as gate:
        with pytest.raises(Unavailable) as silent:
            gate.run("echo reloading; sleep 30")
        assert silent.value.code == "gateway-silent"
        assert silent.value.facts["seen"] == "reloading"
        assert gate.in_force() is None


@pytest.mark.parametrize("more", ["ForceCommand internal-sftp", "MaxSessions 1"])
def test_an_account_for_files_alone(keys: Path, door: GatewayWays, folder: Path, more: str) -> None:
    """Broken if it fails: an account that runs no commands, or one thing at a time, cannot be delivered to."""
    files_alone = servers.running(keys, more=more)
    with files_alone as server, door.open(server.target(folder)) as gate:
        deliver(gate, OLD, None)
        assert gate.now() is not None
    assert on_disk(folder) == whole(OLD)


# Cancelling


def test_cancelling_ends_a_step_that_hangs(server: Server, folder: Path) -> None:
    """Broken if it fails: cancelling waits for the time limit, here ten minutes."""
    cancel = threading.Event()
    timer = threading.Timer(0.2, cancel.set)
    with GatewayWays(PATIENT).open(server.target(folder), cancel) as gate:
        timer.start()
        with pytest.raises(Cancelled):
            gate.run("sleep 300")
    timer.join()


def test_cancelling_ends_a_connection_that_hangs(server: Server, folder: Path) -> None:
    """Broken if it fails: as above, while the gateway does not answer."""
    cancel = threading.Event()
    timer = threading.Timer(0.2, cancel.set)
    with Relay(server.port, deaf_after=0) as relay:
        timer.start()
        with pytest.raises(Cancelled), GatewayWays(PATIENT).open(server.target(folder, port=relay.port), cancel):
            pytest.fail("it opened")
    timer.join()


def test_cancelling_ends_a_step_with_files_that_hangs(server: Server, folder: Path) -> None:
    """Broken if it fails: as above, in the middle of a delivery; the set in force stays."""
    cancel = threading.Event()
    timer = threading.Timer(0.2, cancel.set)
    patient = GatewayWays(PATIENT)
    with Relay(server.port) as relay, patient.open(server.target(folder, port=relay.port), cancel) as gate:
        deliver(gate, OLD, None)
        relay.deafen_after(3000)
        timer.start()
        with pytest.raises(Cancelled):
            lay_down(gate, NEW, OLD)
    timer.join()
    assert on_disk(folder) == whole(OLD)


def test_a_step_that_hangs_is_told(server: Server, folder: Path) -> None:
    """Broken if it fails: the app waits for ever for a gateway that was switched off in the middle."""
    with Relay(server.port) as relay, GatewayWays(HASTY).open(server.target(folder, port=relay.port)) as gate:
        deliver(gate, OLD, None)
        relay.deafen_after(3000)
        with pytest.raises(Unavailable) as silent:
            lay_down(gate, NEW, OLD)
        assert silent.value.code == "gateway-silent"
        with pytest.raises(Unavailable) as cut:
            gate.in_force()
        assert cut.value.code == "gateway-cut"
    assert on_disk(folder) == whole(OLD)
