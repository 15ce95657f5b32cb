"""The verbs from the command line: results on standard output, everything else beside it."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from hearthkey.adapters.register import FILE_NAME
from tests.cli.running import Cottage

EXPORT = ("export", "Ines phone", "--form", "bundle")


def test_a_phone_s_whole_way(cottage: Cottage, tmp_path: Path) -> None:
    """Broken if it fails: the main job cannot be done over ssh."""
    exported = cottage.run(*EXPORT, "--into", tmp_path / "stick")
    assert exported.code == 0
    assert Path(exported.out.splitlines()[0]).is_file()
    words = cottage.run("show", "Ines phone", "--words").out.strip()
    assert len(words.split()) == 7
    assert words not in exported.out + exported.err
    assert cottage.run("hand-over", "Ines phone", "--yes").code == 0
    assert cottage.state("Ines phone") == "in use"
    stopped = cottage.unlocked("stop", "Ines phone")
    assert stopped.out.splitlines()[0] == "Ines’s phone was stopped with revocation list 2."
    assert "It takes effect when the gateway holds list 2." in stopped.err
    assert cottage.state("Ines phone") == "stopped"
    assert cottage.unlocked("let-in", "Ines phone", "--yes").code == 0
    assert cottage.unlocked("revoke", "Ines phone", "--reason", "keyCompromise", "--yes").code == 0
    assert cottage.state("Ines phone") == "revoked"


def test_a_device_is_added(cottage: Cottage) -> None:
    """Broken if it fails: the family does not grow."""
    ran = cottage.unlocked("add", "Boiler engineer", "phone", "--kind", "linux", "--guest", "--json")
    (made,) = ran.told["devices"]
    assert (made["person"], made["name"], made["state"], made["guest"]) == ("Boiler engineer", "phone", "waiting", True)
    assert "passphrase" not in ran.out
    (secret,) = [one for name, one in cottage.world.vault.secrets.items() if made["serial"] in name]
    assert secret not in ran.out + ran.err


@pytest.mark.parametrize(
    ("words", "code"),
    [
        (["--until", "soon"], "date-malformed"),
        (["--until", "2026-02-30"], "date-malformed"),
        (["--until", "2020-01-01"], "end-in-the-past"),
        (["--until", "9999-12-31"], "end-after-authority"),
        (["--days", "0"], "days-out-of-range"),
        (["--days", "-5"], "days-out-of-range"),
        (["--days", "999999999999"], "days-out-of-range"),
        (["--key-set", "best"], "key-set-unknown"),
        (["--container", "wicker"], "container-unknown"),
    ],
)
def test_a_choice_that_does_not_fit_is_told(cottage: Cottage, words: list[str], code: str) -> None:
    """Broken if it fails: an odd date ends in a trace."""
    ran = cottage.unlocked("add", "Ines", "watch", "--kind", "linux", "--json", *words)
    assert (ran.code, ran.told["error"]["code"]) == (3, code)


@pytest.mark.parametrize(
    "words",
    [
        ["add", "Ines", "watch", "--kind", "linux"],
        ["hand-over", "Ines phone"],
        ["stop", "Ines phone"],
        ["let-in", "Odile tablet"],
        ["revoke", "Ines phone", "--reason", "superseded"],
    ],
)
def test_a_plan_changes_nothing_and_asks_nothing(cottage: Cottage, words: list[str]) -> None:
    """Broken if it fails: looking before leaping is leaping."""
    cottage.unlocked("stop", "Odile tablet")
    before = cottage.register(), dict(cottage.world.vault.secrets)
    ran = cottage.run(*words, "--plan", "--json")
    assert ran.code == 0
    assert ran.told["plan"]
    assert before == (cottage.register(), cottage.world.vault.secrets)


def test_a_plan_of_founding_makes_nothing(cottage: Cottage) -> None:
    """Broken if it fails: a household is founded by looking."""
    cottage.data = cottage.data.with_name("new")
    words = ["found", "Quince Cottage", "--gateway-host", "192.168.178.1", "--home-subnet", "198.51.100.0/24"]
    ran = cottage.run(*words, "--practice", "--key-file", "--plan", "--json")
    assert ran.told["cautions"] == ["gateway-only-at-home", "local-law", "kept-in-files"]
    assert "Caution: 192.168.178.1 is known inside the home only." in ran.err
    assert not cottage.data.exists()


def test_progress_is_said_beside_the_result(cottage: Cottage) -> None:
    """Broken if it fails: a script that reads the result reads chatter."""
    ran = cottage.unlocked("add", "Ines", "watch", "--kind", "linux", "--json")
    assert "Making one key ..." in ran.err
    assert list(json.loads(ran.out)) == ["devices"]
    quiet = cottage.unlocked("add", "Ines", "ring", "--kind", "linux", "--quiet")
    assert "..." not in quiet.err


def test_lists_are_shown_signed_and_written(cottage: Cottage, tmp_path: Path) -> None:
    """Broken if it fails: nobody can bring a list to the gateway."""
    cottage.world.clock.forward(days=1)
    assert cottage.unlocked("lists", "--sign").code == 0
    assert [one["number"] for one in cottage.run("lists", "--json").told["lists"]] == [1, 2]
    written = cottage.run("lists", "--into", tmp_path / "stick", "--number", "1", "--json").told
    assert [Path(one).name for one in written["files"]] == ["list-1.pem", "list-1.crl"]
    assert [Path(one).stat().st_size > 200 for one in written["files"]] == [True, True]


def test_the_diary_is_read_and_checked(cottage: Cottage) -> None:
    """Broken if it fails: what was done cannot be looked up."""
    assert len(cottage.run("diary").out.splitlines()) == 4
    told = cottage.run("diary", "--last", "2", "--json").told
    assert told["first_that_does_not_fit"] is None
    assert [one["number"] for one in told["entries"]] == [3, 4]


def test_the_household_is_shown_with_the_state_of_its_keyring(cottage: Cottage) -> None:
    """Broken if it fails: somebody with a closed keyring believes that the household is lost."""
    assert cottage.run("show", "--json").told["keyring"] == "ready"
    cottage.world.vault.trouble = "keyring-locked"
    ran = cottage.run("show", "--json")
    assert (ran.code, ran.told["keyring"], ran.told["ready"]) == (0, "keyring-locked", False)
    assert "Nothing is lost: open it" in cottage.run("show").out


def test_an_error_is_one_object_for_machines(cottage: Cottage) -> None:
    """Broken if it fails: a script has to read sentences."""
    ran = cottage.run("show", "o", "--json")
    error = ran.told["error"]
    assert list(error) == ["family", "code", "means", "do", "facts"]
    assert (error["family"], error["code"]) == ("refused", "device-ambiguous")
    assert error["facts"]["choices"] == ["Ines’s phone", "Tomasz’s laptop", "Odile’s tablet"]
    assert ran.err == ""


def test_looking_leaves_no_lock_behind(cottage: Cottage) -> None:
    """Broken if it fails: a list that was only looked at keeps others from writing."""
    cottage.run("list")
    assert cottage.unlocked("stop", "Ines phone").code == 0
    assert (cottage.data / FILE_NAME).stat().st_mode & 0o777 == 0o600
