"""`hearthkey succession`: the plan, the steps, and what is said where something has happened."""

from __future__ import annotations

from pathlib import Path

import pytest

from tests.cli.running import Cottage
from tests.fakes.home import PASSPHRASE, founded
from tests.fakes.locksmith import QuickLocksmith


@pytest.fixture
def quick(cottage: Cottage) -> Cottage:
    """Quince Cottage, whose keys are guarded at once."""
    text = next(value for name, value in founded().secrets.items() if name.endswith("/ca"))
    cottage.world.locksmith = QuickLocksmith({text: (founded().key, PASSPHRASE)})
    return cottage


def test_looking_changes_nothing(quick: Cottage) -> None:
    """Broken if it fails: looking before leaping is leaping, or nobody hears by when to begin."""
    before = quick.register()
    ran = quick.run("succession")
    assert (ran.code, "Begin with the next one by" in ran.out) == (0, True)
    told = quick.run("succession", "--json").told
    assert [one["step"] for one in told["steps"]] == ["begin", "trust", "gateway", "devices", "finish"]
    assert (told["next"], told["back"], told["devices"]) == ("begin", None, [])
    assert before == quick.register()


def test_a_theft_and_a_loss_are_told_what_to_do_first(quick: Cottage) -> None:
    """Broken if it fails: whoever lost the laptop or the words begins with the wrong end."""
    assert "Stop what was stolen first" in quick.run("succession", "--stolen").out
    lost = quick.run("succession", "--lost")
    assert "First look for a sealed copy" in lost.out
    assert [one["step"] for one in quick.run("succession", "--lost", "--json").told["steps"]][2] == "devices"


def test_after_a_loss_copies_open_with_the_new_words(quick: Cottage, tmp_path: Path) -> None:
    """Broken if it fails: every copy from then on is closed with the words that are lost."""
    before = quick.unlocked("seal", "--into", tmp_path / "before", "--json").told["files"][0]
    quick.words.write_text("visor ladle oaken tidy plum mosaic harbor\n", encoding="ascii")
    assert quick.unlocked("succession", "begin", "--lost", "--yes").code == 0
    after = quick.run("seal", "--into", tmp_path / "after", "--json").told["files"][0]
    assert [quick.unlocked("try", copy).code for copy in (before, after)] == [3, 0]


def test_every_step_and_one_back(quick: Cottage) -> None:
    """Broken if it fails: the command line stops half-way between two CAs."""
    assert quick.run("succession", "go-on").code == 3
    assert quick.unlocked("succession", "begin").code == 3
    began = quick.unlocked("succession", "begin", "--yes")
    assert (began.code, "The old one vouches for it." in began.out) == (0, True)
    assert quick.unlocked("succession", "begin", "--yes").code == 3
    told = quick.unlocked("succession", "go-on", "--json")
    assert (told.code, told.told["error"]["code"]) == (3, "succession-tell")
    for _ in range(2):
        assert quick.unlocked("succession", "go-on", "--told").code == 0
    assert quick.unlocked("succession", "finish", "--told", "--yes", "--json").told["error"]["code"] == (
        "succession-devices-left"
    )
    shown = quick.run("succession")
    assert "Ines’s phone has a pass of the old CA" in shown.out
    assert quick.run("succession", "stolen").code == 3
    assert "without waiting for anybody" in quick.run("succession", "stolen", "--yes").out
    assert quick.run("succession", "--json").told["cause"] == "stolen"
    assert quick.unlocked("succession", "take-back", "--yes").code == 0
    assert quick.run("succession", "--json").told["back"] == "trust"
    assert "Put the old CA away" in quick.run("dates").out
