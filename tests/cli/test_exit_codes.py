"""How a verb ends tells a script whose move it is."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from hearthkey.adapters.register import FILE_NAME
from hearthkey.cli import board
from hearthkey.cli.main import TRACE, run
from hearthkey.core.errors import Bug
from tests.cli.running import Cottage
from tests.fakes.home import PracticeHouse, World, opener


def test_done_is_nought(cottage: Cottage) -> None:
    """Broken if it fails: a script takes what was done for a failure."""
    assert cottage.run("list").code == 0


@pytest.mark.parametrize(
    "words",
    [
        [],
        ["flee"],
        ["stop"],
        ["export", "Ines phone"],
        ["export", "Ines phone", "--form", "scroll"],
        ["list", "--what"],
    ],
)
def test_words_that_are_not_understood_are_two(words: list[str]) -> None:
    """Broken if it fails: a slip of the finger does something."""
    with pytest.raises(SystemExit) as ended:
        run(words, opener(World()))
    assert ended.value.code == 2


@pytest.mark.parametrize(
    ("words", "said"),
    [
        (["show", "Ines fridge"], 'No device is called "Ines fridge". hearthkey list shows all of them.'),
        (
            ["lists", "--into", "x", "--number", "99"],
            "There is no revocation list 99. hearthkey lists shows all of them.",
        ),
        (["rehearse"], "DEVICE or --file FILE is missing. hearthkey VERB --help shows what belongs there."),
        (["add", "Ines", "watch"], "--kind KIND is missing. hearthkey VERB --help shows what belongs there."),
    ],
)
def test_refused_is_three_and_says_what_to_do(cottage: Cottage, words: list[str], said: str) -> None:
    """Broken if it fails: somebody is turned away without a way on."""
    ran = cottage.run(*words)
    assert (ran.code, ran.out, ran.err.strip()) == (3, "", said)


def test_unavailable_is_four(cottage: Cottage) -> None:
    """Broken if it fails: a script cannot tell "try again later" from "that will never do"."""
    cottage.world.vault.trouble = "keyring-silent"
    ran = cottage.unlocked("stop", "Ines phone")
    assert ran.code == 4
    assert ran.err.splitlines()[-1].startswith("The keyring has not answered for 20 seconds.")


def test_a_second_copy_is_four(cottage: Cottage) -> None:
    """Broken if it fails: a script writes into a household that somebody has open."""
    first = PracticeHouse(cottage.data, cottage.world)
    first.enter()
    ran, looked = cottage.unlocked("stop", "Ines phone"), cottage.run("list")
    first.leave()
    assert ran.code == 4
    assert "Another copy of the app has this household open." in ran.err
    assert looked.code == 0


@pytest.mark.parametrize("fault", [ValueError("an {odd} thing"), Bug("list-dates-crossed")])
def test_a_fault_of_the_app_is_five(cottage: Cottage, monkeypatch: pytest.MonkeyPatch, fault: Exception) -> None:
    """Broken if it fails: somebody reads a trace, or believes it was their mistake."""

    def stumble(*_: object) -> None:
        raise fault

    monkeypatch.delenv(TRACE, raising=False)
    monkeypatch.setattr(board, "list_verb", stumble)
    ran = cottage.run("list")
    assert ran.code == 5
    assert "This is a fault of the app." in ran.err
    assert "Traceback" not in ran.err


@pytest.mark.parametrize("how", [KeyboardInterrupt, EOFError])
def test_cancelled_is_a_hundred_and_thirty(
    cottage: Cottage, monkeypatch: pytest.MonkeyPatch, how: type[BaseException]
) -> None:
    """Broken if it fails: changing one's mind is told as an error."""

    def cancel(*_: object) -> None:
        raise how

    monkeypatch.setattr(board, "list_verb", cancel)
    ran = cottage.run("list")
    assert (ran.code, ran.err.strip()) == (130, "Cancelled. Nothing is half done.")


def test_a_disk_that_says_no_is_four(cottage: Cottage, monkeypatch: pytest.MonkeyPatch) -> None:
    """Broken if it fails: what the system refuses ends in a trace."""

    def refuse(*_: object) -> None:
        raise PermissionError(13, "Permission denied", "list.txt")

    monkeypatch.setattr(board, "list_verb", refuse)
    ran = cottage.run("list")
    assert ran.code == 4
    assert ran.err.startswith("The system refused: Permission denied list.txt.")


def test_an_empty_folder_says_how_to_begin(cottage: Cottage) -> None:
    """Broken if it fails: the first thing somebody reads leads nowhere; or looking makes a household."""
    cottage.data = cottage.data.with_name("empty")
    ran = cottage.run("list")
    assert ran.code == 3
    assert "Start with hearthkey found" in ran.err
    assert not cottage.data.exists()


@pytest.mark.parametrize("verb", ["list", "show", "diary", "lists"])
@pytest.mark.parametrize(
    ("damage", "said"),
    [
        (lambda _: b"not a register at all " * 50, "is damaged"),
        (lambda whole: whole[:60], "is damaged"),
        (lambda whole: whole[:5000], "is damaged"),
        (lambda whole: whole[:60] + b"\x00\x00\x00\x63" + whole[64:], "was written by a newer app"),
    ],
    ids=["foreign", "cut", "torn", "newer"],
)
def test_a_register_that_cannot_be_read_is_told_and_left_as_it_is(
    cottage: Cottage, verb: str, damage: Callable[[bytes], bytes], said: str
) -> None:
    """Broken if it fails: a damaged file ends in a trace, or a household is offered anew in its place."""
    path = cottage.data / FILE_NAME
    path.write_bytes(damage(path.read_bytes()))
    before = path.read_bytes()
    ran = cottage.run(verb)
    assert ran.code == 4
    assert said in ran.err
    assert "hearthkey found" not in ran.err
    assert path.read_bytes() == before
