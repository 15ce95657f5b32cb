"""Founding at a real terminal: the words are offered, nothing typed is echoed, a weak one is turned away."""

from __future__ import annotations

import os
import select
import subprocess
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path

import pytest

from tests.cli.running import environment, program

PATIENCE = 60
"""Seconds until a program that says nothing is given up; no verdict depends on how long it takes."""
FOUND = ["found", "Quince Cottage", "--gateway-host", "home.quince.example", "--home-subnet", "198.51.100.0/24"]
GOOD = "plum kettle ivory lantern gravel otter quilt"


@dataclass
class Terminal:
    """A program at a terminal of its own; its results go elsewhere."""

    running: subprocess.Popen[str]
    ours: int
    seen: str = ""

    def until(self, text: str) -> str:
        """Read until the program says something, and return all of it since the last time."""
        before = len(self.seen)
        while text not in self.seen[before:]:
            ready, _, _ = select.select([self.ours], [], [], PATIENCE)
            assert ready, f"waited for {text!r} and saw {self.seen!r}"
            try:
                said = os.read(self.ours, 4096)
            except OSError:  # the program has closed the terminal
                break
            self.seen += said.decode()
        return self.seen[before:]

    def type(self, text: str) -> None:
        """Type a line."""
        os.write(self.ours, text.encode())

    def end(self) -> tuple[int, str]:
        """Wait for the end, and return exit code and standard output."""
        self.until("\x00")
        out, _ = self.running.communicate(timeout=PATIENCE)
        return self.running.returncode, out


@contextmanager
def at_terminal(home: Path, *words: str) -> Iterator[Terminal]:
    """Run the program with a terminal for standard input and standard error."""
    ours, theirs = os.openpty()
    running = subprocess.Popen(
        [sys.executable, "-m", "hearthkey", *words, "--data", str(home / "data")],
        cwd=home,
        env=environment(home),
        stdin=theirs,
        stdout=subprocess.PIPE,
        stderr=theirs,
        text=True,
        start_new_session=True,
    )
    os.close(theirs)
    try:
        yield Terminal(running, ours)
    finally:
        running.kill()
        running.wait()
        os.close(ours)
        if running.stdout is not None:
            running.stdout.close()


def test_founding_and_stopping_at_a_terminal(tmp_path: Path) -> None:
    """Broken if it fails: nobody can found a household; or the passphrase is echoed on the screen."""
    with at_terminal(tmp_path, *FOUND, "--practice", "--key-file") as terminal:
        asked = terminal.until("[y/N]")
        assert "the secrets of this household lie as files" in asked
        terminal.type("y\n")
        offered = terminal.until("Passphrase: ").split("drawn by lot:")[1].split("Write them down")[0].strip()
        assert len(offered.split()) == 7
        terminal.type(f"{offered}\n")
        code, out = terminal.end()
        assert terminal.seen.count(offered) == 1
    assert code == 0
    assert out.startswith("Quince Cottage (practice) was founded.")
    assert offered not in out
    (tmp_path / "words.txt").write_text(offered, encoding="ascii")
    opened: list[str | Path] = ["--data", tmp_path / "data", "--passphrase-file", tmp_path / "words.txt"]
    assert program(tmp_path, "add", "Ines", "phone", "--kind", "linux", *opened).code == 0
    assert program(tmp_path, "stop", "Ines phone", *opened).out.startswith("Ines’s phone was stopped")


@pytest.mark.parametrize(
    ("lines", "said"),
    [
        (["passwordpassword\n"], "would not stand long guessing"),
        (["too short\n"], "is shorter than 15 characters"),
        (["plum kettle ivöry lantern\n"], "is not on every keyboard"),
        (["\n"], "The passphrase is empty"),
        ([f"{GOOD}\n", f"{GOOD}s\n"], "The two passphrases differ"),
    ],
)
def test_a_passphrase_that_will_not_do_is_turned_away(tmp_path: Path, lines: list[str], said: str) -> None:
    """Broken if it fails: the CA lies under a passphrase that is guessed, or that nobody can type again."""
    with at_terminal(tmp_path, *FOUND, "--key-file", "--yes") as terminal:
        terminal.until("Passphrase: ")
        terminal.type(lines[0])
        for line in lines[1:]:
            terminal.until("once more: ")
            terminal.type(line)
        code, _ = terminal.end()
        assert said in terminal.seen
        assert GOOD not in terminal.seen
    assert code == 3
    assert not (tmp_path / "data" / "keys").exists()
    assert program(tmp_path, "list", "--data", tmp_path / "data").code == 3


@pytest.mark.parametrize("answer", ["n\n", "\x04"], ids=["no", "end of input"])
def test_changing_one_s_mind_makes_nothing(tmp_path: Path, answer: str) -> None:
    """Broken if it fails: a household is founded although somebody said no."""
    with at_terminal(tmp_path, *FOUND, "--key-file") as terminal:
        terminal.until("[y/N]")
        terminal.type(answer)
        code, _ = terminal.end()
        assert "Cancelled. Nothing is half done." in terminal.seen
    assert code == 130


def test_an_end_of_input_at_the_passphrase_is_cancelling(tmp_path: Path) -> None:
    """Broken if it fails: Ctrl-D is told as a fault of the app."""
    with at_terminal(tmp_path, *FOUND, "--key-file", "--yes") as terminal:
        terminal.until("Passphrase: ")
        terminal.type("\x04")
        code, _ = terminal.end()
    assert code == 130
