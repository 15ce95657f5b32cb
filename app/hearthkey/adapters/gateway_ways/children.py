"""Runs a program to its end: within a time limit, with little memory, and ended at once when cancelled."""

from __future__ import annotations

import contextlib
import os
import selectors
import signal
import subprocess
import threading
import time
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from pathlib import Path

from hearthkey.core.errors import Cancelled

KEPT = 256 * 1024
"""So many octets of what a program says are kept, from the beginning; the rest is read and forgotten."""

TURN = 0.05
"""Seconds between two looks at the cancel event."""

CHUNK = 64 * 1024


@dataclass(frozen=True)
class Ended:
    """What came of a program.

    Args:
        status: its exit status, negative where a signal ended it; None where it was ended at its time limit.
        out, err: the beginning of what it said.
    """

    status: int | None
    out: bytes
    err: bytes


@contextlib.contextmanager
def started(
    argv: Sequence[str], *, env: Mapping[str, str], folder: Path, merged: bool = False
) -> Iterator[subprocess.Popen[bytes]]:
    """Start a program as the head of a process group; at the end of the block the whole group is ended.

    It has no terminal, so that nothing can ask a question there.

    Args:
        merged: whether standard error goes where standard output goes.

    Raises:
        FileNotFoundError: there is no such program.
    """
    process = subprocess.Popen(
        argv,
        stdin=subprocess.PIPE,
        stdout=subprocess.PIPE,
        stderr=subprocess.STDOUT if merged else subprocess.PIPE,
        env=dict(env),
        cwd=folder,
        start_new_session=True,
        # Python ignores SIGXFSZ, and what it starts is to do so too: then a file over the limit is an error
        # of the program's (EFBIG) and not its end.
        restore_signals=False,
    )
    try:
        yield process
    finally:
        # It was not waited for yet, so the group's number cannot have gone to anybody else.
        with contextlib.suppress(ProcessLookupError, PermissionError):
            os.killpg(process.pid, signal.SIGKILL)
        for pipe in (process.stdin, process.stdout, process.stderr):
            if pipe is not None:
                with contextlib.suppress(OSError):
                    pipe.close()
        process.wait()


def run(
    argv: Sequence[str],
    *,
    env: Mapping[str, str],
    folder: Path,
    seconds: float,
    cancel: threading.Event | None = None,
    merged: bool = False,
) -> Ended:
    """Run a program to its end, or end it.

    Args:
        seconds: the time limit.
        cancel: ends it at once when set.

    Raises:
        Cancelled: the event was set.
        FileNotFoundError: there is no such program.
    """
    refuse_cancelled(cancel)
    with started(argv, env=env, folder=folder, merged=merged) as process:
        if process.stdin is not None:
            process.stdin.close()
        return _until_end(process, time.monotonic() + seconds, cancel)


def refuse_cancelled(cancel: threading.Event | None) -> None:
    """Do nothing, unless the householder changed their mind.

    Raises:
        Cancelled: they did.
    """
    if cancel is not None and cancel.is_set():
        raise Cancelled("cancelled")


def _until_end(process: subprocess.Popen[bytes], until: float, cancel: threading.Event | None) -> Ended:
    pipes = [pipe for pipe in (process.stdout, process.stderr) if pipe is not None]
    heard = {pipe.fileno(): bytearray() for pipe in pipes}
    end = os.pidfd_open(process.pid)
    try:
        with selectors.DefaultSelector() as selector:
            for one in (end, *heard):
                os.set_blocking(one, False)
                selector.register(one, selectors.EVENT_READ)
            status = None
            while status is None and (left := until - time.monotonic()) > 0:
                refuse_cancelled(cancel)
                ready = {key.fd for key, _ in selector.select(min(left, TURN))}
                status = _status(process) if end in ready else None
                # Another process may still hold the pipes' other ends, so that only what is there already is read.
                for one in heard.keys() if status is not None else ready & heard.keys():
                    if not _listen(one, heard[one]) and status is None:
                        selector.unregister(one)
            said = [bytes(one) for one in heard.values()]
            return Ended(status, said[0], said[1] if len(said) > 1 else b"")
    finally:
        os.close(end)


def _listen(pipe: int, heard: bytearray) -> bool:
    """Read what is there now; False once there will be no more."""
    try:
        chunk = os.read(pipe, CHUNK)
    except BlockingIOError:
        return True
    heard += chunk[: KEPT - len(heard)]
    return bool(chunk)


def _status(process: subprocess.Popen[bytes]) -> int:
    """The exit status, left where it is, so that the number of the process stays its own until its group is ended."""
    seen = os.waitid(os.P_PID, process.pid, os.WEXITED | os.WNOWAIT)
    if seen is None:
        return 0
    return seen.si_status if seen.si_code == os.CLD_EXITED else -seen.si_status
