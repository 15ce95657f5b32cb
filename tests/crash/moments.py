"""Moments at which a process may be killed: every step that changes the register, the keyring or a file.

A moment stands before each statement of SQLite that writes, begins or commits; before and after each secret put
into or taken out of the keyring; before each file is opened for writing, renamed or removed; in the middle and at
the end of each write to a file; before each fsync. Reading changes nothing, so there is no moment before it. Left
out are the statements that make the tables, all but the last of which are followed by one of the same transaction
before anything reaches the disk; and the inside of one SQLite statement: that a commit is whole or absent is
SQLite's own promise, and the tests of SQLite kill it there (sqlite.org/atomiccommit.html, from memory).
"""

from __future__ import annotations

import os
import signal
import sqlite3
import sys
from collections.abc import Callable
from pathlib import Path
from typing import Any

from keyring.backends.SecretService import Keyring

_PASSED_OVER = ("select", "--", "create ")
_INSIDE = ("insert ", "update ", "delete ")
_FILE_STEPS = {"os.rename", "os.remove", "os.truncate"}


class Moments:
    """Counts moments, notes each, and ends the process at the chosen one.

    Args:
        folders: files elsewhere are none of ours.
        trail: file that the names of moments are written to, one a line.
        stop_at: the number of the moment to end at, from 1; 0 for none.
        thin: leave out the statements inside transactions, of which nothing reaches the disk before the commit.
    """

    def __init__(self, folders: tuple[Path, ...], trail: Path, stop_at: int, *, thin: bool = False) -> None:
        self._passed_over = (*_PASSED_OVER, *_INSIDE) if thin else _PASSED_OVER
        self._folders = tuple(map(str, folders))
        self._trail = os.open(trail, os.O_WRONLY | os.O_CREAT | os.O_TRUNC, 0o600)
        self._write = os.write
        self._stop_at = stop_at
        self._count = 0
        self._begun: set[int] = set()

    def __call__(self, name: str) -> None:
        """One moment: the process may end here, as hard as a process can."""
        self._count += 1
        self._write(self._trail, (" ".join(name.split())[:70] + "\n").encode())
        if self._count == self._stop_at:
            os.kill(os.getpid(), signal.SIGKILL)

    def watch(self) -> None:
        """Watch from now on; there is no way back, so only a process that was made for this does it."""
        self._watch_register()
        self._watch_keyring()
        sys.addaudithook(self._on_event)
        os.write = self._write_in_two  # type: ignore[assignment] # same calls, narrower types
        os.fsync = _before(self, "fsync", os.fsync)  # type: ignore[assignment] # as above

    def _watch_register(self) -> None:
        connect = sqlite3.connect

        def watched(*arguments: Any, **options: Any) -> sqlite3.Connection:  # noqa: ANN401 - whatever sqlite3 takes
            connection: sqlite3.Connection = connect(*arguments, **options)
            connection.set_trace_callback(self._on_statement)
            return connection

        sqlite3.connect = watched  # type: ignore[assignment] # overloads are all passed on

    def _watch_keyring(self) -> None:
        for name in ("set_password", "delete_password"):
            setattr(Keyring, name, _around(self, name, getattr(Keyring, name)))

    def _on_statement(self, statement: str) -> None:
        text = statement.strip().lower()
        if not text.startswith(self._passed_over) and text != "pragma user_version":
            self(f"before {statement}")

    def _on_event(self, event: str, arguments: tuple[Any, ...]) -> None:
        if event == "open":
            path, _, flags = arguments
            if self._is_ours(path) and isinstance(flags, int) and flags & (os.O_WRONLY | os.O_RDWR):
                self(f"before open {Path(path).name}")
        elif event in _FILE_STEPS and self._is_ours(arguments[0]):
            self(f"before {event} {Path(arguments[0]).name}")

    def _is_ours(self, path: object) -> bool:
        return isinstance(path, str | os.PathLike) and os.fspath(path).startswith(self._folders)

    def _write_in_two(self, handle: int, data: bytes) -> int:
        """Write half of a file of ours, and the rest the next time."""
        if not self._is_ours(Path(f"/proc/self/fd/{handle}").readlink()):
            return self._write(handle, data)
        if handle in self._begun or len(data) < 2:
            written = self._write(handle, data)
            self._begun.discard(handle)
            self("after a whole write")
        else:
            self._begun.add(handle)
            written = self._write(handle, data[: len(data) // 2])
            self("after half a write")
        return written


def _before(moment: Moments, name: str, step: Callable[[int], None]) -> Callable[[int], None]:
    def watched(handle: int) -> None:
        moment(f"before {name}")
        step(handle)

    return watched


def _around(moment: Moments, name: str, step: Callable[..., object]) -> Callable[..., object]:
    def watched(*arguments: object) -> object:
        moment(f"before {name}")
        done = step(*arguments)
        moment(f"after {name}")
        return done

    return watched
