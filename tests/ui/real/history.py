"""A clipboard's history, kept by a program of other hands."""

from __future__ import annotations

import json
import subprocess
import time
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

import pytest

from tests.judges import needs
from tests.ui.leaving.test_real_drag import PATIENCE
from tests.ui.real.desk import Hands

_RULE = """\
[Commands]
1\\Name=Leave out what is marked as a secret
1\\Automatic=true
1\\Input=x-kde-passwordManagerHint
1\\Remove=true
size=1
"""
"""CopyQ 6.4 knows the mark only where its owner says so; this is how it is said in its settings."""

_READ = "var all = []; for (var i = 0; i < size(); ++i) all.push(str(read(i))); JSON.stringify(all)"


class History:
    """What was copied so far."""

    def __init__(self, hands: Hands, command: str) -> None:
        self._surroundings = hands.surroundings
        self._command = command

    def entries(self) -> list[str]:
        """All of it, newest first; nothing where the program does not answer yet."""
        done = subprocess.run(
            [self._command, "eval", _READ],
            env=self._surroundings,
            check=False,
            capture_output=True,
            text=True,
            timeout=PATIENCE,
        )
        found: list[str] = json.loads(done.stdout) if done.returncode == 0 else []
        return found

    def until(self, entry: str) -> list[str]:
        """Wait until it has that entry."""
        end = time.monotonic() + PATIENCE
        while time.monotonic() < end:
            if entry in (found := self.entries()):
                return found
            time.sleep(0.2)
        pytest.fail(f"{entry!r} never came into the clipboard's history")


@contextmanager
def history(hands: Hands) -> Iterator[History]:
    """Keep a history of the clipboard, as somebody does who told it about the mark."""
    command = needs("copyq")
    settings = Path(hands.surroundings["HOME"]) / ".config" / "copyq"
    settings.mkdir(parents=True)
    (settings / "copyq-commands.ini").write_text(_RULE, encoding="ascii")
    server = subprocess.Popen(
        [command],
        env=hands.surroundings,
        stdin=subprocess.DEVNULL,
        stdout=subprocess.DEVNULL,
        stderr=subprocess.DEVNULL,
    )
    try:
        yield History(hands, command)
    finally:
        server.terminate()
        server.wait(PATIENCE)
