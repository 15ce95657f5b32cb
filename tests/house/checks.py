"""Runs the checks two at a time; what each said is printed whole when it is done.

    python -m tests.house.checks CHECK WINDOW [TOLD]

CHECK and WINDOW are the environments without and with Qt; TOLD is the summary of what was done before, which is printed
again above the summary of the checks.
"""

from __future__ import annotations

import contextlib
import os
import shutil
import signal
import subprocess
import sys
import tempfile
import threading
import time
from collections.abc import Callable, Iterator, Sequence
from concurrent.futures import ThreadPoolExecutor, as_completed
from dataclasses import dataclass
from pathlib import Path
from types import FrameType

ROOT = Path(__file__).parents[2]

AT_ONCE = 2
"""Steps that run beside each other. Most of them keep one processor busy, and some of their tests start more."""

GRACE_SECONDS = 20.0
"""How long a step that was interrupted may take to clean up after itself before it is ended harder."""

WITH_OTHERS = ("tests/crash", "tests/gateway", "tests/interop", "tests/keyring", "tests/peers", "tests/tickets")
"""Tests that mostly wait for programs of other hands; together about as long as all the others but the window's."""


@dataclass(frozen=True)
class Step:
    """One check.

    Args:
        name: as the summary has it.
        command: what runs it; 0 says that all is well.
    """

    name: str
    command: tuple[str, ...]


@dataclass(frozen=True)
class Ended:
    """How a step went: its exit code, its seconds and all that it said."""

    step: Step
    code: int
    seconds: float
    said: str

    @property
    def line(self) -> str:
        """Its line of the summary."""
        return f"{'FAILED' if self.code else 'ok':<6} {self.seconds:4.0f} s  {self.step.name}"


class Interrupted(Exception):
    """Somebody wants it to end; carries the exit code that tells so."""

    def __init__(self, code: int) -> None:
        super().__init__(code)
        self.code = code


class Crew:
    """Runs steps, each in a session of its own, so that all of a step and nothing else is ended with it.

    A session of its own also takes the terminal away from the tests, which could otherwise be stopped by it.
    """

    def __init__(self) -> None:
        self._changed = threading.Condition()
        self._running: list[int] = []
        self._over = False

    def run(self, step: Step) -> Ended | None:
        """Run a step to its end; None where all was over before it began."""
        with tempfile.TemporaryFile() as out:
            with self._changed:
                if self._over:
                    return None
                began = time.monotonic()
                try:
                    process = subprocess.Popen(
                        step.command,
                        stdin=subprocess.DEVNULL,
                        stdout=out,
                        stderr=subprocess.STDOUT,
                        cwd=ROOT,
                        start_new_session=True,
                    )
                except OSError as error:
                    return Ended(step, 127, 0.0, f"{error}\n")
                self._running.append(process.pid)
            # Its result is not fetched yet: until then nobody else can get its number, and the signal meets only it.
            os.waitid(os.P_PID, process.pid, os.WEXITED | os.WNOWAIT)
            with self._changed:
                _send(process.pid, signal.SIGKILL)
                self._running.remove(process.pid)
                self._changed.notify_all()
            code = process.wait()
            out.seek(0)
            return Ended(step, code, time.monotonic() - began, out.read().decode(errors="replace"))

    def end(self) -> None:
        """Let nothing more begin, and end what runs, kindly first; returns when it is gone."""
        with self._changed:
            self._over = True
            for kind in (signal.SIGINT, signal.SIGTERM, signal.SIGKILL):
                for leader in self._running:
                    _send(leader, kind)
                if self._changed.wait_for(lambda: not self._running, GRACE_SECONDS):
                    return


def _send(leader: int, kind: signal.Signals) -> None:
    """Send a signal to all of a step that is still there."""
    with contextlib.suppress(ProcessLookupError, PermissionError):
        os.killpg(leader, kind)


def run(steps: Sequence[Step], at_once: int, tell: Callable[[str], object]) -> list[Ended]:
    """Run steps in their order, some at a time, and tell what each said when it is done.

    Raises:
        Interrupted: SIGINT, SIGTERM or SIGHUP came; what had been started is gone.
    """
    crew, ended = Crew(), []
    with _heard(), ThreadPoolExecutor(at_once) as pool:
        try:
            for done in as_completed([pool.submit(crew.run, step) for step in steps]):
                one = done.result()
                if one is not None:
                    ended.append(one)
                    tell(f"\n== {one.step.name}\n{one.said}{one.line}\n")
        except Interrupted:
            crew.end()
            raise
    return ended


@contextlib.contextmanager
def _heard() -> Iterator[None]:
    """Hear the signals that mean "end", also where the shell that started us had them ignored."""

    def hear(number: int, _frame: FrameType | None) -> None:
        for kind in before:
            signal.signal(kind, signal.SIG_IGN)
        raise Interrupted(128 + number)

    before = {kind: signal.signal(kind, hear) for kind in (signal.SIGINT, signal.SIGTERM, signal.SIGHUP)}
    try:
        yield
    finally:
        for kind, handler in before.items():
            signal.signal(kind, handler)


def steps(check: Path, window: Path) -> list[Step]:
    """All checks; the longest begin first, and what is left at the end is short."""
    python, with_qt = str(check / "bin" / "python"), str(window / "bin" / "python")
    here = "--ignore={}".format
    return [
        Step("ruff check", (python, "-m", "ruff", "check", ".")),
        Step("ruff format", (python, "-m", "ruff", "format", "--check", ".")),
        Step("tests of the window", (with_qt, "-m", "pytest", "tests/ui")),
        Step("tests with programs of others", (*keyring(), python, "-m", "pytest", *WITH_OTHERS)),
        Step("all other tests", (*keyring(), python, "-m", "pytest", here("tests/ui"), *map(here, WITH_OTHERS))),
        Step("mypy, strict", (with_qt, "-m", "mypy")),
        Step("rings (import-linter)", ("sh", "packaging/parts/rings.sh", python)),
    ]


def keyring() -> tuple[str, ...]:
    """What a command begins with to have a bus and a keyring of its own, where this machine has such programs."""
    if shutil.which("dbus-run-session") is None or shutil.which("gnome-keyring-daemon") is None:
        return ()
    return ("sh", "packaging/parts/with-keyring.sh")


def main(arguments: Sequence[str]) -> int:
    """Run all checks; 0 where all is well, also with what was done before."""
    check, window, *told = arguments

    def tell(text: str) -> None:
        sys.stdout.write(text)
        sys.stdout.flush()

    try:
        ended = run(steps(Path(check), Path(window)), min(AT_ONCE, os.cpu_count() or 1), tell)
    except Interrupted as wish:
        tell("\nInterrupted; what had been started was ended.\n")
        return wish.code
    tell("".join(["\n", *told, *(f"{one.line}\n" for one in ended)]))
    return int(any(one.code for one in ended) or any("FAILED" in text for text in told))


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
