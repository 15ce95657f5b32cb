"""Servers that lie, hang, flood or talk rubbish: an end with a word for it, never a hang, never memory without end."""

from __future__ import annotations

import shlex
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from datetime import UTC, timedelta
from pathlib import Path

import pytest

from hearthkey.adapters.clock import SystemClock
from hearthkey.adapters.gateway_ways import GatewayWays, Limits
from hearthkey.core.errors import Unavailable
from hearthkey.core.target import SETS
from tests.gateway import servers
from tests.gateway.contract import LIMIT, NEW, OLD, deliver, lay_down, on_disk, whole
from tests.gateway.servers import SFTP_SERVER, Server

HASTY = Limits(connect=2)
PATIENT = Limits(connect=60, step=60)
LIAR = Path(__file__).with_name("lying_sftp.py")


@contextmanager
def served_by(keys: Path, text: str) -> Iterator[Server]:
    """Run a server whose file service is a shell script."""
    script = keys / "service.sh"
    script.write_text(f"#!/bin/sh\n{text}\n", "ascii")
    script.chmod(0o755)
    with servers.running(keys, subsystem=str(script)) as server:
        yield server


@contextmanager
def lied_to_by(keys: Path, mode: str) -> Iterator[Server]:
    """Run a server whose file service lies."""
    with served_by(keys, f"exec {shlex.join([sys.executable, '-I', str(LIAR), mode, SFTP_SERVER])}") as server:
        yield server


def work(door: GatewayWays, server: Server, folder: Path) -> None:
    """Do so much that every lie comes up."""
    with door.open(server.target(folder)) as gate:
        gate.in_force()
        lay_down(gate, NEW, OLD)
        gate.read(OLD.set_id, OLD.names, LIMIT)


FLOOD = "head -c 3000000 /dev/zero | tr '\\0' 'q' >&2"


@pytest.mark.parametrize(
    ("text", "code"),
    [
        ("exec cat >/dev/null", "gateway-silent"),
        ("exit 0", "gateway-cut"),
        ("exit 3", "gateway-cut"),
        ("echo Welcome to the kitchen; cat >/dev/null", "gateway-odd"),
        ("head -c 100000 /dev/urandom; cat >/dev/null", "gateway-odd"),
        (f"{FLOOD}; exit 1", "gateway-cut"),
        ("exec tr '\\0' 'q' </dev/zero >&2", "gateway-silent"),
        ("printf '\\033[2J\\007\\r%s' 'look here' >&2; exit 1", "gateway-cut"),
    ],
    ids=["hangs", "ends", "fails", "greets", "rubbish", "floods and ends", "floods without end", "control characters"],
)
def test_a_file_service_that_is_none(keys: Path, folder: Path, text: str, code: str) -> None:
    """Broken if it fails: the app hangs, fills the memory, or shows what a stranger wants it to show."""
    with served_by(keys, text) as server:
        opening = GatewayWays(HASTY if code == "gateway-silent" else PATIENT).open(server.target(folder))
        with pytest.raises(Unavailable) as caught, opening:
            pytest.fail("it opened")
    assert caught.value.code == code
    seen = str(caught.value.facts["seen"])
    assert 0 < len(seen) <= 300
    assert seen.isprintable()


def test_a_flood_before_the_work_is_borne(keys: Path, folder: Path, door: GatewayWays) -> None:
    """Broken if it fails: a talkative login at the gateway makes deliveries impossible."""
    with served_by(keys, f"{FLOOD}; exec {SFTP_SERVER}") as server, door.open(server.target(folder)) as gate:
        deliver(gate, OLD, None)
    assert on_disk(folder) == whole(OLD)


@pytest.mark.parametrize("mode", ["small", "huge"])
def test_sizes_are_not_believed(keys: Path, folder: Path, door: GatewayWays, mode: str) -> None:
    """Broken if it fails: a server that lies about sizes has half a file compared, or a huge one waited for."""
    with lied_to_by(keys, mode) as server, door.open(server.target(folder)) as gate:
        deliver(gate, OLD, None)
        (folder / SETS / "1-a").mkdir()
        (folder / SETS / "1-a" / "list.crl").write_bytes(b"q" * 100_000)
        assert gate.read("1-a", ["list.crl"], LIMIT) == {"list.crl": b"q" * 100_000}
        assert gate.read("1-a", ["list.crl"], 5000) == {"list.crl": b"q" * 5000}


def test_a_file_without_end_is_cut(keys: Path, folder: Path, door: GatewayWays) -> None:
    """Broken if it fails: one file without end fills the disk here."""
    with door.open(servers.here(folder)) as gate:
        deliver(gate, OLD, None)
    with lied_to_by(keys, "endless") as liar, door.open(liar.target(folder)) as gate:
        there = gate.read(OLD.set_id, ["list.crl", "list.pem"], LIMIT)
    assert {name: len(data) for name, data in there.items()} == {"list.crl": LIMIT, "list.pem": LIMIT}


def test_many_files_without_end_are_not_taken(keys: Path, folder: Path, door: GatewayWays) -> None:
    """Broken if it fails: many files of the largest size fill the memory here."""
    with door.open(servers.here(folder)) as gate:
        deliver(gate, OLD, None)
    little = GatewayWays(Limits(together=2 * LIMIT))
    with (
        lied_to_by(keys, "endless") as liar,
        little.open(liar.target(folder)) as gate,
        pytest.raises(Unavailable) as odd,
    ):
        gate.read(OLD.set_id, ["list.crl"] * 100, LIMIT)
    assert odd.value.code == "gateway-odd"


@pytest.mark.parametrize(
    ("mode", "code"),
    [
        ("longer", "gateway-odd"),
        ("mute", "gateway-silent"),
        ("stranger", "gateway-odd"),
        ("rubbish", "gateway-odd"),
        ("overlong", "gateway-odd"),
        ("gone", "gateway-cut"),
    ],
)
def test_a_server_that_goes_wrong_in_the_middle(
    keys: Path, folder: Path, door: GatewayWays, mode: str, code: str
) -> None:
    """Broken if it fails: a hang or a trace; and the set in force must stay."""
    with door.open(servers.here(folder)) as gate:
        deliver(gate, OLD, None)
    with lied_to_by(keys, mode) as liar, pytest.raises(Unavailable) as caught:
        work(GatewayWays(Limits(connect=60, step=3 if code == "gateway-silent" else 60)), liar, folder)
    assert caught.value.code == code
    assert 0 < len(str(caught.value.facts["seen"])) <= 300
    assert on_disk(folder) == whole(OLD)


def test_the_clock_at_the_gateway_is_the_one_that_is_read(keys: Path, folder: Path, door: GatewayWays) -> None:
    """Broken if it fails: two clocks that differ are said to agree, and devices are refused for no reason seen here."""
    with lied_to_by(keys, "late") as server, door.open(server.target(folder)) as gate:
        told = gate.now()
    assert told is not None
    assert (told.tzinfo, told.microsecond) == (UTC, 0)
    assert timedelta(minutes=55) < SystemClock().now() - told < timedelta(minutes=65)
    assert list(folder.iterdir()) == []
