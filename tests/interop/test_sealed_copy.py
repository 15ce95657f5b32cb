"""A sealed copy without this app: `age` and `tar` open it, SQLite and OpenSSL read what is in it."""

from __future__ import annotations

import os
import pty
import sqlite3
import subprocess
import tarfile
from contextlib import closing
from pathlib import Path

import pytest

from hearthkey.core import deputy
from hearthkey.core.diary import first_misfit
from hearthkey.core.secret import Secret
from hearthkey.core.succession import Step
from hearthkey.pki import copy_lock, deputy_lock
from tests.fakes.home import PASSPHRASE, PracticeHouse, World, at_home
from tests.judges import needs

PAST = Path(__file__).parent.parent / "past"
OLD_ONES = sorted(PAST.glob("[0-9]*.sealed.tar"))
GROWN = sorted(PAST.glob("grown-*.sealed.tar"))


def with_words(command: list[str], words: Secret[str], folder: Path) -> bytes:
    """Run a program that asks for a passphrase at a terminal, and return what it printed."""
    ours, theirs = pty.openpty()
    try:
        process = subprocess.Popen(
            ["setsid", "--ctty", "--wait", *command],
            cwd=folder,
            stdin=theirs,
            stdout=subprocess.PIPE,
            stderr=subprocess.PIPE,
        )
        os.write(ours, f"{words.reveal()}\n".encode())
        said, trouble = process.communicate(timeout=60)
    finally:
        os.close(ours)
        os.close(theirs)
    assert process.returncode == 0, trouble.decode()
    return said


def test_age_and_tar_open_a_copy_and_the_ca_key_in_it(tmp_path: Path) -> None:
    """Otherwise a family whose app has gone could not get at its own CA; README.md says so, "without this app"."""
    age, openssl = needs("age"), needs("openssl")
    with at_home(tmp_path / "data") as home:
        home.house.__dict__["copy_locks"] = copy_lock
        home.house.sealing.make_ready(PASSPHRASE)
        _note, changes = home.house.sealing.seal(tmp_path / "stick")
        titles = {one.identity for one in home.house.register.passes()}
    subprocess.run(["tar", "-xf", changes.files[0]], cwd=tmp_path, check=True)
    command = [age, "--decrypt", "--identity", "identity.age", "--output", "inner.tar", "household.tar.age"]
    with_words(command, PASSPHRASE, tmp_path)
    with tarfile.open(tmp_path / "inner.tar") as inner:
        inner.extractall(tmp_path / "inner", filter="data")
    with closing(sqlite3.connect(tmp_path / "inner" / "register.db")) as register:
        assert {one for (one,) in register.execute("SELECT identity FROM device")} == titles
        certificate = register.execute("SELECT certificate FROM authority").fetchone()[0]
    (tmp_path / "inner" / "ca.der").write_bytes(certificate)
    key = with_words([age, "--decrypt", "ca-key.age"], PASSPHRASE, tmp_path / "inner")
    public = [
        subprocess.run(command, input=given, capture_output=True, cwd=tmp_path / "inner", check=True).stdout
        for command, given in (
            ([openssl, "pkey", "-inform", "DER", "-pubout"], key),
            ([openssl, "x509", "-inform", "DER", "-in", "ca.der", "-noout", "-pubkey"], b""),
        )
    ]
    assert public[0] == public[1]


@pytest.mark.parametrize("path", OLD_ONES, ids=lambda path: path.name)
def test_a_copy_of_every_released_version_comes_back(path: Path, tmp_path: Path) -> None:
    """Otherwise the promise that a copy of five years ago opens would be a promise only."""
    house = PracticeHouse(tmp_path / "data", World())
    house.__dict__["copy_locks"] = copy_lock
    house.enter()
    try:
        with house.restoring.preview(path.read_bytes(), PASSPHRASE) as plan:
            house.restoring.apply(plan)
        assert {one.title for one in house.register.passes()} == {"Ines’s phone", "Tomasz’s laptop", "Odile’s tablet"}
        assert len(house.register.entries()) == 2
    finally:
        house.leave()


def test_there_is_a_copy_of_a_past_version() -> None:
    """Otherwise the tests around this one would look at nothing."""
    assert OLD_ONES
    assert GROWN


@pytest.mark.parametrize("by_parts", [False, True], ids=["by the passphrase", "by two parts"])
@pytest.mark.parametrize("path", GROWN, ids=lambda path: path.name)
def test_a_grown_household_comes_back_with_all_that_grew(path: Path, tmp_path: Path, *, by_parts: bool) -> None:
    """Otherwise a copy brings the devices back and forgets the second CA, the renewals, or who may take over."""
    world = World()
    world.clock.forward(days=301)
    house = PracticeHouse(tmp_path / "data", world)
    house.__dict__.update(copy_locks=copy_lock, deputy_locks=deputy_lock)
    house.enter()
    try:
        data, words = path.read_bytes(), PASSPHRASE
        if by_parts:
            lines = path.with_name(path.name.replace(".sealed.tar", ".parts.txt")).read_text(encoding="ascii")
            parts = [deputy.read(line, house.deputies.words) for line in lines.splitlines()[::2]]
            words = house.deputies.opening(data, tuple(parts)).household
        with house.restoring.preview(data, words) as plan:
            house.restoring.apply(plan)
        register = house.register
        succession = register.succession()
        assert succession is not None
        assert set(succession.taken) == {Step.BEGIN, Step.TRUST}
        assert len(register.authorities()) == 2
        (follow,) = register.follows()
        assert {one.serial for one in register.passes() if one.device == "laptop"} == {follow.old, follow.new}
        assert [one.person for one in register.visits()] == ["Odile"]
        assert [one.host for one in register.former_hosts()] == ["home.quince.example"]
        assert register.deputy_set() is not None
        assert register.stop_set() is not None
        house.keyholder.unlock(register, house.vault, words)
        house.succeeding.go_on(told=True)
        assert first_misfit(register.diary(), written=register.diary_written()) is None
    finally:
        house.leave()
