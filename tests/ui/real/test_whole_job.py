"""The main job in the real window: a real X server, a real keyring daemon, a real pointer and real keys."""

from __future__ import annotations

import json
import os
import shutil
import subprocess
import sys
import tempfile
from collections.abc import Iterator
from contextlib import ExitStack, contextmanager
from pathlib import Path
from typing import Any

import pytest

from tests.judges import needs
from tests.keyring.desktop import Desktop
from tests.ui.leaving.test_real_drag import PATIENCE, carried, heard, program, screen

WORDS = "kettle lantern orchard meadow pantry gravel sunlit"
TITLE = "Quince Cottage"
CARD = (190, 733)
"""The middle of the first card in a window of 1280 by 800 at the screen's corner."""


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


class Hands:
    """Pointer, keys and command line of one householder."""

    def __init__(self, desktop: Desktop, display: str, data: Path, words: Path) -> None:
        self._surroundings = desktop.environment | {"DISPLAY": display, "QT_QPA_PLATFORM": "xcb"}
        self._data = data
        self._words = words
        self._xdotool = needs("xdotool")

    def run(self, *words: str) -> dict[str, Any]:
        """One verb of the command line, in the same login."""
        done = subprocess.run(
            [sys.executable, "-m", "hearthkey", *words, "--data", str(self._data), "--json", "--quiet"],
            env=self._surroundings,
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
        """What Tomasz's laptop is now."""
        return str(self.run("list")["devices"][0]["state"])

    def window(self) -> subprocess.Popen[bytes]:
        """Start the window."""
        return subprocess.Popen(
            [sys.executable, "-m", "hearthkey", "window", "--data", str(self._data)], env=self._surroundings
        )

    def do(self, *words: str) -> str:
        """Move the pointer or press keys."""
        done = subprocess.run(
            [self._xdotool, *words],
            env=self._surroundings,
            capture_output=True,
            text=True,
            check=True,
            timeout=PATIENCE,
        )
        return done.stdout.strip()


@pytest.mark.skipif(sys.platform != "linux", reason="Xvfb and xdotool are for X11")
def test_a_card_is_dragged_out_and_a_phone_is_stopped_by_keys_alone(tmp_path: Path) -> None:
    """Broken if it fails: the window works in tests and not on a desktop."""
    words = tmp_path / "words.txt"
    words.write_text(WORDS, encoding="ascii")
    with ExitStack() as stack:
        desktop = stack.enter_context(login())
        display = stack.enter_context(screen())
        hands = Hands(desktop, display, tmp_path / "data", words)
        hands.unlocked(
            "found",
            "Quince Cottage",
            "--practice",
            "--yes",
            *("--gateway-host", "home.quince.example", "--home-subnet", "198.51.100.0/24"),
        )
        hands.unlocked("add", "Tomasz", "laptop", "--kind", "linux")
        passphrase = hands.run("show", "Tomasz laptop", "--words")["passphrase"]
        window = hands.window()
        stack.callback(_ended, window)
        number = hands.do("search", "--sync", "--onlyvisible", "--name", TITLE).splitlines()[0]
        target = stack.enter_context(program("drop_target.py", display))
        end = tuple(int(word) for word in heard(target, "ready"))
        hands.do(*_slowly(carried(CARD, (end[0], end[1]))))
        path = heard(target, "dropped")[0]
        _opens(Path(path), passphrase)
        hands.do("windowfocus", "--sync", number, "key", "--window", number, "ctrl+l")
        hands.do("type", "--delay", "60", "to")
        hands.do("key", "Return")
        hands.do("sleep", "1", "type", "--delay", "60", WORDS)
        hands.do("key", "Return")
        _until_stopped(hands)
        hands.do("key", "ctrl+q")
        assert window.wait(PATIENCE) == 0
        assert hands.state() == "stopped"
        assert not Path(path).exists(), "the one-time file is tidied when the window closes"
        verbs = [entry["verb"] for entry in hands.run("diary")["entries"]]
        assert verbs == ["found", "add", "export", "stop"]


def _slowly(words: list[str]) -> list[str]:
    """The same movement with a rest after its beginning: the file is made and rehearsed meanwhile."""
    begun = words.index("mousedown") + 7
    return [*words[:begun], "sleep", "5", *words[begun:]]


def _ended(window: subprocess.Popen[bytes]) -> None:
    if window.poll() is None:
        window.terminate()
        window.wait(PATIENCE)


def _opens(path: Path, passphrase: str) -> None:
    """OpenSSL opens what was dropped."""
    subprocess.run(
        [needs("openssl"), "pkcs12", "-in", str(path), "-nokeys", "-passin", "env:WORDS"],
        env=os.environ | {"WORDS": passphrase},
        check=True,
        capture_output=True,
        timeout=PATIENCE,
    )


def _until_stopped(hands: Hands) -> None:
    for _ in range(60):
        if hands.state() == "stopped":
            return
        hands.do("sleep", "0.5")
    pytest.fail("the laptop is still not stopped")
