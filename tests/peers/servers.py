"""Starts servers of other hands for the length of a test, waits until they serve, and ends them again by their id."""

from __future__ import annotations

import os
import signal
import socket
import subprocess
import sys
from collections.abc import Callable, Iterator, Mapping, Sequence
from contextlib import contextmanager, suppress
from dataclasses import dataclass
from pathlib import Path

from tests.judges import needs, unable

LOOPBACK = "127.0.0.1"
LIMIT_SECONDS = 30.0
"""How long a server may take to come up and a client to finish before a test is given up. No verdict hangs on it."""
_LOOK_SECONDS = 0.02
_END_SECONDS = 5.0

Command = Sequence[str | Path]


@dataclass
class Server:
    """A running program; what it says, on both of its outputs, goes to one file.

    Args:
        process: the program itself.
        log: where its words are.
    """

    process: subprocess.Popen[bytes]
    log: Path

    def said(self) -> str:
        """Everything it has said so far."""
        return self.log.read_text(encoding="utf-8", errors="replace")

    def wait_until(self, happened: Callable[[Server], bool], what: str) -> None:
        """Look again and again until something has happened; give up loudly.

        Raises:
            AssertionError: the server ended, or the limit is over; with all that it said.
        """
        for _ in range(int(LIMIT_SECONDS / _LOOK_SECONDS)):
            if happened(self):
                return
            with suppress(subprocess.TimeoutExpired):
                code = self.process.wait(_LOOK_SECONDS)
                # Its last words may be the very thing that was waited for.
                if happened(self):
                    return
                raise AssertionError(f"ended with {code} before {what}; it said:\n{self.said()}")
        raise AssertionError(f"not {what} within {LIMIT_SECONDS} s; it said:\n{self.said()}")

    def wait_for_words(self, words: str) -> None:
        """Wait until the server has said something; raises as `wait_until`."""
        self.wait_until(says(words), f"having said {words!r}")

    def end(self) -> None:
        """End it, kindly first; returns when it is gone."""
        for kind in (signal.SIGTERM, signal.SIGKILL):
            if self.process.poll() is None:
                self.process.send_signal(kind)
            with suppress(subprocess.TimeoutExpired):
                self.process.wait(_END_SECONDS)
                return


Ready = Callable[[Server], bool]


def says(words: str) -> Ready:
    """Ready once the server has said these words."""
    return lambda server: words in server.said()


def listens(port: int) -> Ready:
    """Ready once somebody takes a TCP connection at a port of 127.0.0.1 (and finds it closed at once)."""

    def taken(_: Server) -> bool:
        with suppress(OSError), socket.create_connection((LOOPBACK, port), _END_SECONDS):
            return True
        return False

    return taken


def free_port() -> int:
    """A TCP port of 127.0.0.1 that nobody listens at right now."""
    with socket.socket() as asked:
        asked.bind((LOOPBACK, 0))
        port: int = asked.getsockname()[1]
        return port


@contextmanager
def running(
    command: Command,
    log: Path,
    ready: Ready,
    *,
    within: Sequence[str] = (),
    environment: Mapping[str, str] | None = None,
) -> Iterator[Server]:
    """Run a server for the length of a `with` block.

    Args:
        command: has to stay in the foreground, so that its id is the one we know.
        log: a new file for what it says.
        ready: when the block may begin.
        within: the room it runs in, see `Room.within`.
        environment: added to ours.

    Raises:
        AssertionError: it did not come up.
    """
    with log.open("wb") as out:
        process = subprocess.Popen(
            (*within, *command),
            stdin=subprocess.DEVNULL,
            stdout=out,
            stderr=subprocess.STDOUT,
            env={**os.environ, **(environment or {})},
        )
    server = Server(process, log)
    try:
        server.wait_until(ready, "ready")
        yield server
    finally:
        server.end()
        shown(server.log.name, server.said())


def shown(who: str, said: str) -> None:
    """Print what a program said: pytest keeps it, and shows it if the test fails."""
    sys.stdout.write(f"--- {who}:\n{said}\n")


@dataclass(frozen=True)
class Answer:
    """How a client fared: its exit code and all that it said."""

    code: int
    said: str


def ask(
    command: Command, *, within: Sequence[str] = (), given: bytes = b"", environment: Mapping[str, str] | None = None
) -> Answer:
    """Run a client to its end, with no keyboard that it could ask at.

    Raises:
        subprocess.TimeoutExpired: it did not end within the limit.
    """
    done = subprocess.run(
        (*within, *command),
        input=given,
        stdout=subprocess.PIPE,
        stderr=subprocess.STDOUT,
        env={**os.environ, **(environment or {})},
        timeout=LIMIT_SECONDS,
        check=False,
    )
    answer = Answer(done.returncode, done.stdout.decode(errors="replace"))
    shown(Path(command[0]).name, answer.said)
    return answer


@dataclass(frozen=True)
class Room:
    """A network of its own that holds nothing but 127.0.0.1 (Linux, network_namespaces(7)).

    For servers that cannot be told to listen at one address only: nobody else can reach them there, and every port
    is free.

    Args:
        within: what a command begins with to run inside.
    """

    within: tuple[str, ...]


@contextmanager
def room() -> Iterator[Room]:
    """Keep a room for the length of a `with` block; where none can be had, the test ends as without a judge."""
    unshare, nsenter, ip = needs("unshare"), needs("nsenter"), needs("ip")
    user = () if os.geteuid() == 0 else ("--user", "--map-root-user")
    # It becomes `cat`, which ends by itself when its input does: also when this process is killed.
    keeper = subprocess.Popen(
        (unshare, "--net", *user, "sh", "-c", f'"{ip}" link set lo up && echo up && exec cat'),
        stdin=subprocess.PIPE,
        stdout=subprocess.PIPE,
        stderr=subprocess.STDOUT,
    )
    with keeper:
        if keeper.stdout is None:
            raise RuntimeError("the room has no way to say that it is there")
        told = keeper.stdout.readline()
        if told.strip() != b"up":
            unable(f"no network of its own can be made here: {told.decode(errors='replace').strip()}")
        joined = ("--user", "--preserve-credentials") if user else ()
        yield Room((nsenter, "--target", str(keeper.pid), *joined, "--net", "--"))
