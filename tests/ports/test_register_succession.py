"""The register while one CA follows another: roles, steps and signers; what happened stays written."""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator
from contextlib import closing
from dataclasses import replace
from datetime import timedelta
from pathlib import Path

import pytest

from hearthkey.adapters.register import FILE_NAME, SqliteRegister
from hearthkey.core.household import Authority
from hearthkey.core.revocation import ListBeside, SignedList
from hearthkey.core.spares import Scope, SignedSpare, SpareList
from hearthkey.core.succession import Cause, Step
from tests.fakes.clock import NOW
from tests.fakes.home import founded

END = NOW + timedelta(days=3000)


@pytest.fixture
def register(tmp_path: Path) -> Iterator[SqliteRegister]:
    """A copy of Quince Cottage's register."""
    founded().put_into(tmp_path / "data")
    with closing(SqliteRegister(tmp_path / "data" / FILE_NAME)) as opened:
        yield opened


def first(register: SqliteRegister) -> Authority:
    """The CA that the household was founded with."""
    found = register.first_authority()
    assert found is not None
    return found


def begin(register: SqliteRegister, mark: str = "b") -> Authority:
    """Write a next CA."""
    made = Authority(b"next " + mark.encode(), mark * 64, END, "keyring", first(register).fingerprint)
    with register.change() as change:
        change.begin_succession(made, f"CN=next {mark}", b"cross", Cause.PLANNED, NOW)
    return made


def test_one_ca_is_all_there_is_at_first(register: SqliteRegister) -> None:
    """Broken if it fails: a household with one CA behaves otherwise than before."""
    one = first(register)
    assert (register.authority(), register.authorities(), register.succession()) == (one, [one], None)
    newest = register.newest_list()
    assert newest is not None
    assert (newest.ders, newest.signer) == ((newest.der,), one.fingerprint)


def test_roles_follow_the_steps_and_back(register: SqliteRegister) -> None:
    """Broken if it fails: passes are made by the wrong CA, or the vault's names change with the one in charge."""
    old, new = first(register), begin(register)
    assert new.short == old.short
    assert (register.authority(), register.authorities()) == (old, [old, new])
    for step in (Step.TRUST, Step.GATEWAY):
        with register.change() as change:
            change.take_step(step, NOW)
    assert register.authority() == new
    for step in (Step.GATEWAY, Step.TRUST, Step.BEGIN):
        with register.change() as change:
            change.take_back(step, NOW)
    assert (register.authority(), register.authorities(), register.succession()) == (old, [old], None)
    another = begin(register, "c")
    with register.change() as change:
        change.take_step(Step.FINISH, NOW)
    assert (register.authority(), register.authorities()) == (another, [another])
    last = begin(register, "d")
    assert register.authorities() == [another, last]


@pytest.mark.parametrize(
    "statement",
    [
        "DELETE FROM authority",
        "DELETE FROM succession",
        "DELETE FROM succession_step",
        "DELETE FROM list_signer",
        "UPDATE succession_step SET taken_back = 1 WHERE step = 'finish'",
    ],
)
def test_what_happened_stays(register: SqliteRegister, tmp_path: Path, statement: str) -> None:
    """Broken if it fails: a CA that was put away can be brought back, or nobody knows that it ever was."""
    begin(register)
    with register.change() as change:
        change.take_step(Step.FINISH, NOW)
    with (
        closing(sqlite3.connect(tmp_path / "data" / FILE_NAME)) as other,
        pytest.raises(sqlite3.IntegrityError, match=r"kept for ever|never comes back"),
    ):
        other.execute(statement)


def test_lists_of_both_and_the_spares_of_both(register: SqliteRegister) -> None:
    """Broken if it fails: the gateway gets the lists in another order, or spare lists pile up for ever."""
    old, new = first(register), begin(register)
    signed = SignedList(7, b"new", NOW, END, new.fingerprint, (ListBeside(old.fingerprint, b"old", older=True),))
    spare = SpareList(Scope.EVERYBODY, "", frozenset({"0a"}), 7, 8)
    for _ in range(2):
        with register.change() as change:
            change.replace_spares([SignedSpare(spare, replace(signed, number=8))])
    with register.change() as change:
        change.add_list(signed)
    assert register.list_numbered(7) == signed
    assert register.signed_spare(8) == replace(signed, number=8)
    assert signed.ders == (b"old", b"new")
    with register.change() as change:
        change.replace_spares([])
    assert register.signed_spare(8) is None
    assert register.newest_list() == signed
