"""`hearthkey seal`, `try` and `restore`, and the copy that every change makes by itself."""

from __future__ import annotations

from pathlib import Path

import pytest

from tests.cli.running import Cottage
from tests.fakes.home import World


@pytest.fixture
def sealed(cottage: Cottage, tmp_path: Path) -> Path:
    """A copy on a stick, after Tomasz's laptop was stopped."""
    assert cottage.unlocked("stop", "Tomasz laptop", "--yes").code == 0
    ran = cottage.unlocked("seal", "--into", tmp_path / "stick", "--json")
    assert ran.code == 0, ran.err
    return Path(ran.told["files"][0])


def test_a_change_after_the_first_unlock_makes_a_copy_by_itself(cottage: Cottage) -> None:
    """Broken if it fails: copies are for those who remember to make them."""
    assert cottage.run("hand-over", "Ines phone", "--yes").code == 0
    assert cottage.run("seal", "--list").out.strip() == "No sealed copy was ever made."
    assert cottage.unlocked("stop", "Tomasz laptop", "--yes").code == 0
    assert cottage.run("hand-over", "Odile tablet", "--yes").code == 0
    told = cottage.run("seal", "--list", "--json").told["copies"]
    assert [Path(one["file"]).parent for one in told] == [cottage.data / "sealed"] * 2
    assert all(Path(one["file"]).stat().st_size > 10_000 and one["tried"] is None for one in told)


def test_a_keyring_that_is_closed_costs_the_copy_and_not_the_change(cottage: Cottage, sealed: Path) -> None:
    """Broken if it fails: nobody can look after the household while the keyring sulks, or nobody hears of it."""
    del sealed
    cottage.world.vault.trouble = "keyring-locked"
    ran = cottage.run("settle", "--name", "Plum House", "--yes")
    assert ran.code == 0, ran.err
    assert "No sealed copy was made this time." in ran.err
    assert cottage.run("list", "--json").told["household"].startswith("Plum House")


def test_a_copy_is_tried_and_then_listed_as_tried(cottage: Cottage, sealed: Path) -> None:
    """Broken if it fails: nobody knows whether the copy on the stick opens."""
    ran = cottage.unlocked("try", sealed)
    assert ran.code == 0, ran.err
    assert "is whole and fits" in ran.out
    assert any("tried 20" in line and str(sealed) in line for line in cottage.run("seal", "--list").out.splitlines())


def test_the_household_comes_back_on_another_computer(cottage: Cottage, sealed: Path, tmp_path: Path) -> None:
    """Broken if it fails: a dead laptop takes the household with it."""
    world = World(clock=cottage.world.clock, dice=cottage.world.dice, locks=cottage.world.locks)
    other = Cottage(tmp_path / "other", world, cottage.capsys, cottage.words)
    looked = other.unlocked("restore", sealed, "--plan")
    assert "3 bundles that wait have to be made anew" in looked.out
    assert other.run("list").code == 3
    ran = other.unlocked("restore", sealed, "--yes")
    assert ran.code == 0, ran.err
    assert "From now on Quince Cottage (practice) lives on this computer." in ran.err
    assert other.state("Tomasz laptop") == "stopped"
    assert other.unlocked("stop", "Ines phone", "--yes").code == 0
    assert other.unlocked("restore", sealed, "--yes").code == 3


def test_half_a_copy_is_refused_and_nothing_is_founded(cottage: Cottage, sealed: Path, tmp_path: Path) -> None:
    """Broken if it fails: half a stick ends in half a household."""
    half = tmp_path / "half.sealed.tar"
    half.write_bytes(sealed.read_bytes()[: sealed.stat().st_size // 2])
    other = Cottage(tmp_path / "other", World(locks=cottage.world.locks), cottage.capsys, cottage.words)
    ran = other.unlocked("restore", half, "--yes")
    assert ran.code == 3
    assert "This sealed copy is not whole" in ran.err
    assert other.run("list").code == 3
    assert other.world.vault.secrets == {}


def test_copies_may_have_a_passphrase_of_their_own(cottage: Cottage, tmp_path: Path) -> None:
    """Broken if it fails: whoever keeps the copy must know the household's passphrase too."""
    own = tmp_path / "own.txt"
    own.write_text("walnut pebble harness oriole tundra brisk fennel\n", encoding="ascii")
    ran = cottage.run("seal", "--into", tmp_path / "stick", "--own-passphrase", own, "--json")
    assert ran.code == 0, ran.err
    copy = ran.told["files"][0]
    assert cottage.unlocked("try", copy).code == 3
    assert cottage.unlocked("try", copy, "--own-passphrase", own).code == 0
