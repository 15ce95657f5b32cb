"""What the other tests of this folder stand on: servers come up, are heard, are out of reach, and end."""

from __future__ import annotations

import sys
from pathlib import Path

import pytest

from tests.peers.servers import LOOPBACK, Room, ask, free_port, listens, running, says


def pages(port: int) -> tuple[str, ...]:
    """A server that anybody has who has Python."""
    return (sys.executable, "-u", "-m", "http.server", "--bind", LOOPBACK, str(port))


def caller(port: int) -> tuple[str, ...]:
    """A client that says what it got."""
    return (sys.executable, "-c", f"import socket; socket.create_connection(('{LOOPBACK}', {port}), 5); print('met')")


def test_it_serves_inside_the_block_and_is_gone_after_it(tmp_path: Path) -> None:
    """If this fails, tests meet servers that are not up yet, or leave them running."""
    port = free_port()
    with running(pages(port), tmp_path / "log", listens(port)) as server:
        assert ask(caller(port)).said == "met\n"
    assert server.process.returncode is not None
    assert "ConnectionRefused" in ask(caller(port)).said


def test_it_is_gone_after_a_block_that_failed(tmp_path: Path) -> None:
    """If this fails, one failing test leaves a server behind for all the others."""
    port = free_port()
    with (
        pytest.raises(LookupError),
        running(pages(port), tmp_path / "log", listens(port)) as server,
    ):
        raise LookupError
    assert server.process.returncode is not None


def test_one_that_cannot_start_says_why(tmp_path: Path) -> None:
    """If this fails, a server with wrong settings costs half a minute and tells nothing."""
    command = (sys.executable, "-c", "raise SystemExit('no such setting')")
    with (
        pytest.raises(AssertionError, match="ended with 1 before ready; it said:\nno such setting"),
        running(command, tmp_path / "log", says("never")),
    ):
        raise LookupError


def test_nobody_reaches_into_a_room(room: Room, tmp_path: Path) -> None:
    """If this fails, servers that listen at every address are open to the network while tests run."""
    port = free_port()
    with running(pages(port), tmp_path / "log", says("Serving"), within=room.within):
        assert ask(caller(port), within=room.within).said == "met\n"
        assert "ConnectionRefused" in ask(caller(port)).said
