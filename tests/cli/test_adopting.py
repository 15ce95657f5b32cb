"""`hearthkey look-over`, `adopt` and `name-pass`."""

from __future__ import annotations

from pathlib import Path

import pytest

from tests.adopt.by_hand import HOST, LOCK, family
from tests.cli.running import Cottage, Ran
from tests.fakes.home import PASSPHRASE, World


@pytest.fixture
def empty(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> Cottage:
    """A computer without a household, and one made by hand in a folder beside."""
    family(tmp_path / "by-hand")
    (tmp_path / "words.txt").write_text(PASSPHRASE.reveal() + "\n", encoding="ascii")
    (tmp_path / "lock.txt").write_bytes(LOCK + b"\n")
    return Cottage(tmp_path / "data", World(), capsys, tmp_path / "words.txt")


def adopted(cottage: Cottage, *more: str) -> Ran:
    """Take it over."""
    folder = cottage.words.parent
    words = ("--name", "Quince Cottage", "--host", HOST, "--home", "198.51.100.0/24", "--gateway-key-set", "compact")
    return cottage.unlocked("adopt", folder / "by-hand", *words, "--key-passphrase", folder / "lock.txt", *more)


def test_a_look_says_what_is_there_and_changes_nothing(empty: Cottage) -> None:
    """Broken if it fails: nobody learns what is weak before it is theirs to keep."""
    folder = empty.words.parent / "by-hand"
    ran = empty.run("look-over", folder)
    assert ran.code == 0, ran.err
    assert "The CA is CN=Quince CA, P-256, and ends on 11 February 2035." in ran.out
    assert "in the way: The CA’s private key is not open." in ran.out
    assert "weak: A private key lies here without a passphrase." in ran.out
    assert "RFC 5280 section 8" in ran.out
    assert not (empty.data / "register.db").exists()
    told = empty.run("look-over", folder, "--key-passphrase", folder.parent / "lock.txt", "--json").told
    assert (told["adoptable"], told["highest_list"], len(told["devices"])) == (True, 6, 3)
    assert [(one["code"], one["grave"]) for one in told["findings"]] == [("key-open", "weak")]
    assert empty.run("look-over", folder / "none", "--json").told["error"]["code"] == "folder-missing"


def test_a_household_is_taken_over_and_its_passes_named(empty: Cottage) -> None:
    """Broken if it fails: a household made by hand cannot be kept by this app."""
    looked = adopted(empty, "--plan")
    assert looked.code == 0, looked.err
    assert "3 passes are taken over; they go on as they are, and wait for you to say whose they are." in looked.out
    assert empty.run("list").code == 3
    ran = adopted(empty, "--yes", "--json")
    assert ran.code == 0, ran.err
    assert (ran.told["list_number"], ran.told["kept_gateway"], ran.told["withdrawn"]) == (7, True, ["1002"])
    assert (empty.data / "lists" / "list-7.pem").exists()
    waiting = empty.run("name-pass", "--json").told["waiting"]
    assert [(one["serial"], one["device"]) for one in waiting][:1] == [("1001", "ines-phone")]
    named = empty.run("name-pass", "1001", "--person", "Ines", "--device", "phone")
    assert named.code == 0, named.err
    assert empty.state("Ines phone") == "in use"
    assert empty.run("name-pass", "1001", "--person", "Ines").code == 3
    assert "odile-tablet" in empty.run("list").out
    assert adopted(empty, "--yes").code == 3


def test_a_wrong_key_passphrase_is_told(empty: Cottage) -> None:
    """Broken if it fails: the householder looks for the wrong passphrase."""
    (empty.words.parent / "lock.txt").write_text("other\n")
    ran = adopted(empty, "--yes", "--json")
    assert (ran.code, ran.told["error"]["code"]) == (3, "found-key-locked")
