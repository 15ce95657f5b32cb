"""Makes every test clean up after itself: no unexpected warning, no thread and no process may be left."""

from __future__ import annotations

import contextlib
import logging
import os
import select
import threading
from pathlib import Path
from typing import TYPE_CHECKING

import pytest
from hypothesis import settings

if TYPE_CHECKING:
    from collections.abc import Iterator

# Without a screen Qt ends the whole process, so it never looks for one here.
os.environ["QT_QPA_PLATFORM"] = "offscreen"

GRACE_SECONDS = 10.0
"""How long a thread or a process of a test may take to end; only what stays is waited for so long."""

# On the deciding machine the same examples every time; at the desk new ones, and the failing ones are kept.
settings.register_profile("ci", derandomize=True, deadline=None, print_blob=True)
settings.register_profile("desk", deadline=None)
settings.load_profile("ci" if os.environ.get("CI") == "true" else "desk")


@pytest.fixture(autouse=True)
def log_is_quiet(request: pytest.FixtureRequest, caplog: pytest.LogCaptureFixture) -> Iterator[None]:
    """Fail the test for a warning it does not expect, and for an expected one that never came."""
    yield
    told = [
        record
        for phase in ("setup", "call")
        for record in caplog.get_records(phase)
        if record.levelno >= logging.WARNING
    ]
    expected = [str(mark.args[0]) for mark in request.node.iter_markers("expects_log")]
    surprises = [
        f"{record.name}: {record.getMessage()}"
        for record in told
        if not any(text in record.getMessage() for text in expected)
    ]
    assert not surprises, f"unexpected in the log: {surprises}"
    unheard = [text for text in expected if not any(text in record.getMessage() for record in told)]
    assert not unheard, f"expected in the log and not there: {unheard}"


@pytest.fixture(autouse=True)
def threads_end() -> Iterator[None]:
    """Fail the test for a thread it started and left running, and name it."""
    before = set(threading.enumerate())
    yield
    started = [thread for thread in threading.enumerate() if thread not in before]
    for thread in started:
        thread.join(GRACE_SECONDS)
    left = [thread.name for thread in started if thread.is_alive()]
    assert not left, f"threads left running: {left}"


@pytest.fixture(autouse=True)
def processes_end() -> Iterator[None]:
    """Fail the test for a process it started and left running, and name it (seen on Linux only)."""
    before = children()
    yield
    left = [f"{pid} ({name})" for pid, name in children().items() if pid not in before and not ends_in_time(pid)]
    assert not left, f"processes left running: {left}"


def children() -> dict[int, str]:
    """Return the running child processes of this one by id, with their program's name."""
    found: dict[int, str] = {}
    for listed in Path("/proc/self/task").glob("*/children"):
        # A thread or a child may end while it is being looked at.
        with contextlib.suppress(FileNotFoundError, ProcessLookupError):
            for pid in listed.read_text(encoding="ascii").split():
                found[int(pid)] = Path(f"/proc/{pid}/comm").read_text(encoding="utf-8", errors="replace").strip()
    return found


def ends_in_time(pid: int) -> bool:
    """Wait a moment for a child to end; True once it has (whether or not somebody fetched its result)."""
    try:
        watched = os.pidfd_open(pid)
    except ProcessLookupError:
        return True
    try:
        ended, _, _ = select.select([watched], [], [], GRACE_SECONDS)
        return bool(ended)
    finally:
        os.close(watched)
