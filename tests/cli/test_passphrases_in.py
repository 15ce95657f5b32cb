"""Passphrases come from a prompt or a file: never from the arguments, and never half."""

from __future__ import annotations

import argparse
import getpass
import io
import sys
from collections.abc import Iterator
from pathlib import Path

import pytest

from hearthkey.cli.arguments import parser
from tests.cli.running import Cottage
from tests.fakes.home import PASSPHRASE

RIGHT = PASSPHRASE.reveal()


def options(known: argparse.ArgumentParser) -> Iterator[tuple[str, argparse.Action]]:
    """Every option of the command line, with its verb."""
    for action in known._actions:  # noqa: SLF001 - argparse has no other way to be asked
        if isinstance(action, argparse._SubParsersAction):  # noqa: SLF001 - as above
            for verb, words in action.choices.items():
                yield from ((verb, one) for one in words._actions)  # noqa: SLF001 - as above


def test_no_option_takes_a_passphrase() -> None:
    """Broken if it fails: a passphrase stands in the list of processes and in the shell's history."""
    named = {
        option
        for _, action in options(parser())
        for option in action.option_strings
        if any(word in option for word in ("pass", "secret", "pin", "key-text")) and action.type is not Path
    }
    assert named == set()
    assert any("--passphrase-file" in action.option_strings for _, action in options(parser()))


def test_one_in_the_arguments_opens_nothing(cottage: Cottage) -> None:
    """Broken if it fails: the argument that names a file is taken for the passphrase itself."""
    ran = cottage.run("stop", "Ines phone", "--passphrase-file", RIGHT, "--json")
    assert (ran.code, ran.told["error"]["code"]) == (3, "file-missing")


@pytest.mark.parametrize("text", [RIGHT, RIGHT + "\n", f"  {RIGHT}\r\n", RIGHT + "\nand a second line\n"])
def test_the_first_line_of_the_file_counts(cottage: Cottage, text: str) -> None:
    """Broken if it fails: a file written by another editor opens nothing."""
    cottage.words.write_bytes(text.encode())
    assert cottage.unlocked("stop", "Ines phone").code == 0


@pytest.mark.parametrize(
    ("content", "code"),
    [
        (b"", "passphrase-empty"),
        (b"\n" + RIGHT.encode(), "passphrase-empty"),
        (b"\xff\xfe\x00p", "file-unreadable"),
        ("plum kettle ivöry lantern".encode(), "wrong-passphrase"),
        ("🍐".encode() * 9, "wrong-passphrase"),
        (RIGHT[:-1].encode(), "wrong-passphrase"),
        (b"q" * 5_000_000, "wrong-passphrase"),
    ],
    ids=["empty", "first line empty", "not text", "accent", "pear", "one letter short", "endless"],
)
def test_a_file_that_opens_nothing_is_told(cottage: Cottage, content: bytes, code: str) -> None:
    """Broken if it fails: a damaged file ends in a trace; or the sentence hints at which part was wrong."""
    cottage.words.write_bytes(content)
    ran = cottage.unlocked("stop", "Ines phone", "--json")
    assert (ran.code, ran.told["error"]["code"]) == (3, code)
    assert cottage.state("Ines phone") == "waiting"


def test_a_file_without_an_end_is_read_no_further_than_a_line(cottage: Cottage) -> None:
    """Broken if it fails: naming a device fills the memory."""
    ran = cottage.run("stop", "Ines phone", "--passphrase-file", "/dev/zero", "--json")
    assert (ran.code, ran.told["error"]["code"]) == (3, "wrong-passphrase")


def test_a_folder_is_no_file(cottage: Cottage) -> None:
    """Broken if it fails: a folder's name ends in a trace."""
    ran = cottage.run("stop", "Ines phone", "--passphrase-file", cottage.data, "--json")
    assert (ran.code, ran.told["error"]["code"]) == (3, "file-unreadable")


def test_standard_input_is_a_file_too(cottage: Cottage, monkeypatch: pytest.MonkeyPatch) -> None:
    """Broken if it fails: a password keeper cannot pipe it in."""
    monkeypatch.setattr(sys, "stdin", io.StringIO(RIGHT + "\n"))
    assert cottage.run("stop", "Ines phone", "--passphrase-file", "-").code == 0


def test_without_a_terminal_nothing_is_asked(cottage: Cottage, monkeypatch: pytest.MonkeyPatch) -> None:
    """Broken if it fails: a script hangs at a question nobody sees."""
    monkeypatch.setattr(sys, "stdin", io.StringIO(""))
    ran = cottage.run("stop", "Ines phone", "--json")
    assert (ran.code, ran.told["error"]["code"]) == (3, "passphrase-needed")


@pytest.mark.parametrize(
    "words", [["hand-over", "Ines phone"], ["revoke", "Ines phone", "--reason", "1"], ["let-in", "Odile tablet"]]
)
def test_without_a_terminal_a_yes_has_to_be_given(
    cottage: Cottage, monkeypatch: pytest.MonkeyPatch, words: list[str]
) -> None:
    """Broken if it fails: what cannot be undone is done because nobody could be asked."""
    cottage.unlocked("stop", "Odile tablet")
    monkeypatch.setattr(sys, "stdin", io.StringIO("y\n"))
    before = cottage.register()
    ran = cottage.unlocked(*words, "--json")
    assert (ran.code, ran.told["error"]["code"]) == (3, "yes-needed")
    assert cottage.register() == before


class Terminal(io.StringIO):
    """Standard input that is a terminal."""

    def isatty(self) -> bool:
        """Yes."""
        return True


@pytest.fixture
def typed(monkeypatch: pytest.MonkeyPatch) -> list[str]:
    """What will be typed where nothing is echoed, first to last."""
    lines: list[str] = []
    monkeypatch.setattr(sys, "stdin", Terminal("y\n"))
    monkeypatch.setattr(getpass, "getpass", lambda _: lines.pop(0))
    return lines


def test_a_slip_at_the_terminal_may_be_mended(cottage: Cottage, typed: list[str]) -> None:
    """Broken if it fails: one wrong key costs the whole verb; or --json gives two objects."""
    typed += ["plum kettle", " " + RIGHT + " "]
    ran = cottage.run("stop", "Ines phone", "--json")
    assert ran.code == 0
    assert ran.told["list_number"] == 2
    assert ran.err.count("The passphrase does not open it.") == 1


def test_three_slips_are_enough(cottage: Cottage, typed: list[str]) -> None:
    """Broken if it fails: the question never ends."""
    typed += ["one", "two", "three", RIGHT]
    ran = cottage.run("stop", "Ines phone")
    assert ran.code == 3
    assert ran.err.count("The passphrase does not open it.") == 3
    assert typed == [RIGHT]


@pytest.mark.parametrize(
    ("answer", "code", "state"), [("y\n", 0, "in use"), ("\n", 130, "waiting"), ("", 130, "waiting")]
)
def test_only_a_yes_is_a_yes(
    cottage: Cottage, monkeypatch: pytest.MonkeyPatch, answer: str, code: int, state: str
) -> None:
    """Broken if it fails: pressing Enter erases a key."""
    monkeypatch.setattr(sys, "stdin", Terminal(answer))
    assert cottage.run("hand-over", "Ines phone").code == code
    assert cottage.state("Ines phone") == state
