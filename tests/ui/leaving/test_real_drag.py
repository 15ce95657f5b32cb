"""The real thing: a card dragged by a real pointer into a window of another process, on a real X server."""

from __future__ import annotations

import os
import select
import subprocess
import sys
from collections.abc import Iterator
from contextlib import ExitStack, contextmanager
from pathlib import Path

import pytest

from tests.judges import needs
from tests.ui.leaving.household import LAPTOP

ROOT = Path(__file__).parents[3]
STEPS = 12
PATIENCE = 60.0
"""Seconds after which a process that says nothing is taken to be stuck; no verdict depends on less."""


@contextmanager
def screen() -> Iterator[str]:
    """An X server of its own; its display."""
    read, write = os.pipe()
    server = subprocess.Popen(
        [needs("Xvfb"), "-displayfd", str(write), "-screen", "0", "1280x800x24", "-nolisten", "tcp"],
        pass_fds=(write,),
        stderr=subprocess.DEVNULL,
    )
    os.close(write)
    try:
        with os.fdopen(read, encoding="ascii") as told:
            yield f":{told.readline().strip()}"
    finally:
        server.terminate()
        server.wait(PATIENCE)


@contextmanager
def program(name: str, display: str, *words: str) -> Iterator[subprocess.Popen[bytes]]:
    """One of the two windows, in a process of its own."""
    surroundings = {
        **os.environ,
        "DISPLAY": display,
        "QT_QPA_PLATFORM": "xcb",
        "DBUS_SESSION_BUS_ADDRESS": "disabled:",
        "PYTHONPATH": os.pathsep.join([str(ROOT / "app"), str(ROOT)]),
    }
    started = subprocess.Popen(
        [sys.executable, str(Path(__file__).with_name(name)), *words],
        env=surroundings,
        stdout=subprocess.PIPE,
        stderr=subprocess.DEVNULL,
        bufsize=0,  # so that waiting for the next line sees every line
    )
    try:
        yield started
    finally:
        started.terminate()
        started.communicate(timeout=PATIENCE)


def heard(process: subprocess.Popen[bytes], word: str) -> list[str]:
    """The next thing a window says, which has to begin with that word."""
    assert process.stdout is not None
    told, _, _ = select.select([process.stdout], [], [], PATIENCE)
    assert told, f"nothing was said where {word!r} was awaited"
    said = process.stdout.readline().decode("ascii").split(maxsplit=3)
    assert said[:1] == [word], said
    return said[1:]


def carried(begin: tuple[int, int], end: tuple[int, int]) -> list[str]:
    """The hand's movement, in the words of the program that moves the pointer."""
    words = ["mousemove", str(begin[0]), str(begin[1]), "sleep", "0.1", "mousedown", "1"]
    for step in range(1, STEPS + 1):
        x, y = (round(a + (b - a) * step / STEPS) for a, b in zip(begin, end, strict=True))
        words += ["sleep", "0.08", "mousemove", str(x), str(y)]
    return [*words, "sleep", "0.2", "mouseup", "1"]


@pytest.mark.skipif(sys.platform != "linux", reason="Xvfb and xdotool are for X11")
def test_a_card_becomes_a_file_in_another_window(tmp_path: Path) -> None:
    """If this failed, dragging a bundle to a stick, a folder or a message would leave nothing there."""
    hand = needs("xdotool")
    runtime = tmp_path / "runtime"
    with ExitStack() as stack:
        display = stack.enter_context(screen())
        target = stack.enter_context(program("drop_target.py", display))
        source = stack.enter_context(program("drag_source.py", display, str(runtime)))
        begin = tuple(int(word) for word in heard(source, "ready"))
        end = tuple(int(word) for word in heard(target, "ready"))
        subprocess.run(
            [hand, *carried((begin[0], begin[1]), (end[0], end[1]))],
            env={**os.environ, "DISPLAY": display},
            check=True,
            timeout=PATIENCE,
        )
        path, mode, content = heard(target, "dropped")
        assert Path(path).is_relative_to(runtime)
        assert (mode, content.strip()) == ("600", "Quince Cottage")
        assert heard(source, "ended") == [LAPTOP.serial, "True"]
        assert Path(path).is_file(), "the file stays a while: the other window may fetch it late"
