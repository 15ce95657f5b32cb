"""Runs the command line: in this process over a practice world, or as a program of its own."""

from __future__ import annotations

import json
import os
import subprocess
import sys
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import pytest

from hearthkey.adapters.register import FILE_NAME
from hearthkey.cli.main import run
from tests.fakes.home import World, opener

APP = Path(__file__).parents[2] / "app"


@dataclass(frozen=True)
class Ran:
    """How a verb ended, and what it said where."""

    code: int
    out: str
    err: str

    @property
    def told(self) -> dict[str, Any]:
        """The one JSON object on standard output."""
        found: dict[str, Any] = json.loads(self.out)
        return found


@dataclass
class Cottage:
    """A founded household, its world, and the file with its passphrase."""

    data: Path
    world: World
    capsys: pytest.CaptureFixture[str]
    words: Path

    def run(self, *words: str | Path) -> Ran:
        """Run one verb in this process."""
        self.capsys.readouterr()
        code = run([*map(str, words), "--data", str(self.data)], opener(self.world))
        return Ran(code, *self.capsys.readouterr())

    def unlocked(self, *words: str | Path) -> Ran:
        """Run one verb with the passphrase from its file."""
        return self.run(*words, "--passphrase-file", self.words)

    def register(self) -> bytes:
        """What the register's file holds while nobody has it open."""
        return (self.data / FILE_NAME).read_bytes()

    def state(self, device: str) -> str:
        """The state of a device's newest pass."""
        return str(self.run("show", device, "--json").told["passes"][-1]["state"])


def environment(home: Path) -> dict[str, str]:
    """An environment without keyring and without display, whose home is a folder of the test's."""
    return {
        "DBUS_SESSION_BUS_ADDRESS": "disabled:",
        "HOME": str(home),
        "LC_ALL": "C.UTF-8",
        "PATH": os.environ["PATH"],
        "PYTHONPATH": str(APP),
        "XDG_DATA_HOME": str(home / "data"),
    }


def program(home: Path, *words: str | Path) -> Ran:
    """Run one verb as a program, with nothing on standard input."""
    ran = subprocess.run(
        [sys.executable, "-m", "hearthkey", *map(str, words)],
        cwd=home,
        env=environment(home),
        stdin=subprocess.DEVNULL,
        capture_output=True,
        text=True,
        check=False,
    )
    return Ran(ran.returncode, ran.stdout, ran.stderr)
