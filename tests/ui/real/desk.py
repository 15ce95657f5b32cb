"""A householder's desk: a login with a keyring, a screen, two hands on mouse and keys, and the command line beside."""

from __future__ import annotations

import json
import shutil
import subprocess
import sys
import tempfile
import time
from collections.abc import Iterator, Mapping
from contextlib import contextmanager
from pathlib import Path
from typing import Any

import pytest

from tests.judges import needs, unable
from tests.keyring.desktop import Desktop
from tests.ui.leaving.test_real_drag import PATIENCE
from tests.ui.real.witness import Line, Witness

HERE = Path(__file__).parent
WORDS = "kettle lantern orchard meadow pantry gravel sunlit"
MANY = 60
"""Stops of the Tab key after which a control is taken to be out of its reach."""

_SYSTEM_PYTHON = "/usr/bin/python3"
_EARS = "girepository-1.0/Atspi-2.0.typelib"
_LAUNCHER = Path("/usr/libexec/at-spi-bus-launcher")


@contextmanager
def login() -> Iterator[Desktop]:
    """A login with a bus and an open keyring; its path is short, for a socket's may have 107 octets."""
    root = Path(tempfile.mkdtemp(prefix="hk-", dir="/tmp"))  # of mode 0700, and gone afterwards
    desktop = Desktop(root)
    try:
        desktop.start_bus()
        desktop.start_keyring()
        yield desktop
    finally:
        desktop.stop()
        shutil.rmtree(root, ignore_errors=True)


def on_x(display: str) -> dict[str, str]:
    """How Qt is told to draw on that X server."""
    return {"DISPLAY": display, "QT_QPA_PLATFORM": "xcb"}


class Hands:
    """Pointer, keys and command line of one householder.

    Args:
        desktop: the login.
        screen: how its programs find the screen, in words of their environment.
        data: the household's data folder.
        words: a file with the household's passphrase, for the command line.
    """

    def __init__(self, desktop: Desktop, screen: Mapping[str, str], data: Path, words: Path) -> None:
        self.surroundings = {**desktop.environment, **screen}
        self._data = data
        self._words = words

    # The command line

    def run(self, *words: str) -> dict[str, Any]:
        """One verb of the command line, in the same login."""
        done = subprocess.run(
            [sys.executable, "-m", "hearthkey", *words, "--data", str(self._data), "--json", "--quiet"],
            env=self.surroundings,
            capture_output=True,
            text=True,
            check=True,
            timeout=PATIENCE,
        )
        told: dict[str, Any] = json.loads(done.stdout)
        return told

    def unlocked(self, *words: str) -> dict[str, Any]:
        """One verb that needs the passphrase."""
        return self.run(*words, "--passphrase-file", str(self._words))

    def state(self) -> str:
        """What the first device is now."""
        return str(self.run("list")["devices"][0]["state"])

    def diary(self) -> list[str]:
        """The verbs that were done, oldest first."""
        return [entry["verb"] for entry in self.run("diary")["entries"]]

    # The window

    @contextmanager
    def window(self, *, clipboard_seconds: int = 45) -> Iterator[subprocess.Popen[bytes]]:
        """The window, in a process of its own; ended afterwards if nobody closed it."""
        started = subprocess.Popen(
            [sys.executable, str(HERE / "hasty.py"), "window", "--data", str(self._data)],
            env=self.surroundings
            | {"CLIPBOARD_SECONDS": str(clipboard_seconds), "QT_LINUX_ACCESSIBILITY_ALWAYS_ON": "1"},
        )
        try:
            yield started
        finally:
            if started.poll() is None:
                started.terminate()
                started.wait(PATIENCE)

    def find_window(self, title: str) -> str:
        """Wait until a window has that title, and return its number."""
        return self.do("search", "--sync", "--onlyvisible", "--name", title).splitlines()[0]

    def do(self, *words: str) -> str:
        """Move the pointer or press keys."""
        done = subprocess.run(
            [needs("xdotool"), *words],
            env=self.surroundings,
            capture_output=True,
            text=True,
            check=True,
            timeout=PATIENCE,
        )
        return done.stdout.strip()

    def key(self, *keys: str) -> None:
        """Press keys, one after the other."""
        self.do("key", "--delay", "40", *keys)

    def type(self, text: str) -> None:
        """Type a text."""
        self.do("type", "--delay", "25", text)


class Ears:
    """What a screen reader hears of the window, and how it finds its way by that alone."""

    def __init__(self, reader: Witness, hands: Hands) -> None:
        self._reader = reader
        self._hands = hands

    def focus(self, name: str) -> Line:
        """Wait until the focus comes to a control of that name."""
        return self._reader.until(lambda line: str(line.get("focus", "")).startswith(name), f"the focus on {name!r}")

    def tab_to(self, name: str, key: str = "Tab") -> None:
        """Press Tab until a control of that name has the focus."""
        passed: list[str] = []
        self._reader.catch_up()
        for _ in range(MANY):
            self._hands.key(key)
            line = self._reader.until(lambda line: "focus" in line, f"the focus on its way to {name!r}")
            passed.append(line["focus"])
            if line["focus"].startswith(name) and any(one["name"].startswith(name) for one in self.here()):
                return
        pytest.fail(f"the Tab key does not come to {name!r}, but to {passed}")

    def here(self) -> list[Line]:
        """What has the focus now: a table has it together with one of its cells."""
        found: list[Line] = self._reader.ask("here", here=True)
        return found

    def announced(self, begin: str) -> str:
        """Wait until something that begins so is said aloud."""
        line = self._reader.until(lambda line: str(line.get("announced", "")).startswith(begin), f"{begin!r} aloud")
        return str(line["announced"])

    def heard(self, begin: str) -> list[str]:
        """Everything said aloud so far that begins so."""
        self._reader.catch_up()
        aloud = (str(line["announced"]) for line in self._reader.said if "announced" in line)
        return [one for one in aloud if one.startswith(begin)]

    def find(self, name: str) -> Line | None:
        """What is shown under that name now."""
        found: Line | None = self._reader.ask("found", find=name)
        return found

    def shown(self, name: str, *, ready: bool = True) -> Line:
        """Wait until something is shown under that name, and, if asked for, can be used."""
        end = time.monotonic() + PATIENCE
        while time.monotonic() < end:
            found = self.find(name)
            if found is not None and (found["sensitive"] or not ready):
                return found
            time.sleep(0.2)
        pytest.fail(f"nothing called {name!r} is shown")

    def tree(self) -> list[Line]:
        """Everything that is shown now."""
        nodes: list[Line] = self._reader.ask("tree", tree=True)
        return nodes


@contextmanager
def ears(hands: Hands) -> Iterator[Ears]:
    """The desktop's service for screen readers, and somebody who listens."""
    if not _LAUNCHER.exists():
        unable(f"{_LAUNCHER} is not there (Debian package at-spi2-core)")
    if not any(Path("/usr/lib").glob(f"*/{_EARS}")):
        unable(f"{_EARS} is not there (Debian package gir1.2-atspi-2.0)")
    asked = subprocess.run([_SYSTEM_PYTHON, "-c", "import gi"], capture_output=True, timeout=PATIENCE, check=False)
    if asked.returncode:
        unable("the system's Python has no gi (Debian package python3-gi)")
    surroundings = {name: value for name, value in hands.surroundings.items() if not name.startswith("PYTHON")}
    launcher = subprocess.Popen(
        [str(_LAUNCHER), "--launch-immediately"], env=surroundings, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL
    )
    try:
        with Witness([_SYSTEM_PYTHON, str(HERE / "reader.py")], surroundings) as reader:
            yield Ears(reader, hands)
    finally:
        launcher.terminate()
        launcher.wait(PATIENCE)


@contextmanager
def onlooker(hands: Hands) -> Iterator[Witness]:
    """Another program of the same login, that watches the clipboard."""
    with Witness([sys.executable, str(HERE / "onlooker.py")], hands.surroundings) as witness:
        yield witness
