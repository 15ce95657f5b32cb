"""The register's part about renewals: what follows what stays for ever, and a visit can be called off."""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator
from contextlib import closing
from datetime import timedelta
from pathlib import Path

import pytest

from hearthkey.adapters.register import FILE_NAME, SqliteRegister
from hearthkey.core.errors import Refused
from hearthkey.core.renewal import Follow, Visit, Way
from tests.fakes.clock import NOW
from tests.fakes.home import founded


@pytest.fixture
def register(tmp_path: Path) -> Iterator[SqliteRegister]:
    """A copy of Quince Cottage's register, in which the second pass follows the first."""
    founded().put_into(tmp_path / "data")
    with closing(SqliteRegister(tmp_path / "data" / FILE_NAME)) as opened:
        with opened.change() as change:
            change.add_follow(follow(opened))
        yield opened


def follow(register: SqliteRegister) -> Follow:
    """The second pass after the first."""
    old, new, *_ = register.passes()
    return Follow(new.serial, old.serial, NOW + timedelta(days=30), NOW, Way.REPLACED)


def test_what_follows_is_read_as_it_was_written(register: SqliteRegister) -> None:
    """Broken if it fails: an old pass is let go for the wrong reason, or never."""
    assert register.follows() == [follow(register)]
    with pytest.raises(Refused), register.change() as change:
        change.add_follow(follow(register))


@pytest.mark.parametrize("statement", ["DELETE FROM follows", "UPDATE follows SET overlap_ends = 0"])
def test_what_follows_stays_as_it_is(register: SqliteRegister, statement: str) -> None:
    """Broken if it fails: a program that opens the file can make an old pass stay for ever."""
    register.close()
    with closing(sqlite3.connect(register.path)) as other, pytest.raises(sqlite3.IntegrityError, match="what follows"):
        other.execute(statement)


def test_a_visit_is_kept_once_and_called_off(register: SqliteRegister) -> None:
    """Broken if it fails: a visit that does not take place decides the day to act."""
    day = NOW.replace(hour=0)
    with register.change() as change:
        for person in ("Odile", "ODILE", "Nobody"):
            change.plan_visit(person, day)
        change.plan_visit("Ines", day - timedelta(days=1))
    assert register.visits() == [Visit("Ines", day - timedelta(days=1)), Visit("Odile", day)]
    with register.change() as change:
        change.drop_visit("odile", day)
        change.drop_visit("Ines", day)
    assert register.visits() == [Visit("Ines", day - timedelta(days=1))]
