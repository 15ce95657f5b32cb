"""The register's file: older, newer, damaged, looked at by a second copy."""

from __future__ import annotations

import shutil
import sqlite3
import stat
from contextlib import closing
from pathlib import Path

import pytest

from hearthkey.adapters.register import FILE_NAME, SqliteRegister, newest, version_at
from hearthkey.adapters.register import migrations as steps
from hearthkey.adapters.register.schema import MIGRATIONS, Migration
from hearthkey.core.diary import first_misfit
from hearthkey.core.errors import Unavailable
from hearthkey.core.passes import State
from tests.fakes.clock import NOW
from tests.fakes.home import founded

PAST = Path(__file__).parents[1] / "past"
SPOKEN = 8
"""Up to this version an entry of the diary did not know what its sentence was made of."""


def laid(folder: Path, content: bytes | None = None) -> Path:
    """Lay a register's file into a folder."""
    path = folder / FILE_NAME
    path.write_bytes(founded().register if content is None else content)
    return path


def code_of(path: Path, *, read_only: bool = False) -> str:
    """Return the code of what opening a file ends with."""
    with pytest.raises(Unavailable) as unavailable:
        SqliteRegister(path, read_only=read_only)
    return unavailable.value.code


def widen(connection: sqlite3.Connection) -> None:
    """A step of a later day."""
    connection.execute("ALTER TABLE household ADD COLUMN motto TEXT")


def stumble(connection: sqlite3.Connection) -> None:
    """A step that fails half way."""
    connection.execute("ALTER TABLE household ADD COLUMN motto TEXT")
    raise KeyboardInterrupt


def step(path: Path, later: Migration) -> None:
    """Take a file through one more migration."""
    with closing(sqlite3.connect(path, isolation_level=None)) as connection:
        steps.migrate(connection, path, {**MIGRATIONS, newest() + 1: later})


def columns(path: Path) -> list[str]:
    """Return the columns of the household's table."""
    with closing(sqlite3.connect(path)) as connection:
        return [row[1] for row in connection.execute("PRAGMA table_info(household)")]


@pytest.mark.parametrize("version", range(1, newest() + 1))
def test_a_register_of_every_past_version_is_opened_and_listed(tmp_path: Path, version: int) -> None:
    """Broken if it fails: an older household cannot be opened any more (made by tests/past/make.py)."""
    path = Path(shutil.copy(PAST / f"register-{version}.db", tmp_path / FILE_NAME))
    assert version_at(path) == version
    with closing(SqliteRegister(path)) as register:
        household = register.household()
        assert household is not None
        assert household.certified_name == "Quince Cottage (practice)"
        assert [(one.title, one.state(NOW)) for one in register.passes()] == [
            ("Ines’s phone", State.REVOKED),
            ("Tomasz’s laptop", State.STOPPED),
            ("Odile’s tablet", State.WAITING),
        ]
        assert [one.number for one in register.lists()] == [1, 2, 3]
        assert register.diary_written() == len(register.diary()) == 7
        assert all(one.words for one in register.diary()) == (version > SPOKEN)
        assert first_misfit(register.diary(), written=7) is None


def test_a_migration_keeps_a_copy_first(tmp_path: Path) -> None:
    """Broken if it fails: a step that goes wrong costs the household."""
    path = laid(tmp_path)
    step(path, widen)
    (copy,) = steps.copies_of(path)
    assert copy.name == f"register.before-{newest() + 1}.db"
    assert (version_at(path), version_at(copy)) == (newest() + 1, newest())
    assert "motto" in columns(path)
    assert "motto" not in columns(copy)
    assert stat.S_IMODE(copy.stat().st_mode) == 0o600


def test_a_migration_that_fails_changes_nothing(tmp_path: Path) -> None:
    """Broken if it fails: a file of no version that any app knows."""
    path = laid(tmp_path)
    with pytest.raises(KeyboardInterrupt):
        step(path, stumble)
    assert version_at(path) == newest()
    assert "motto" not in columns(path)
    step(path, widen)
    assert version_at(path) == newest() + 1


def test_a_new_register_needs_no_copy(tmp_path: Path) -> None:
    """Broken if it fails: a copy of nothing lies about."""
    with closing(SqliteRegister(tmp_path / FILE_NAME)) as register:
        assert register.household() is None
        assert steps.copies_of(register.path) == []
    assert version_at(register.path) == newest()


def test_copies_are_dropped_with_the_key(tmp_path: Path) -> None:
    """Broken if it fails: a key that was handed over still lies in the copy of a migration."""
    path = laid(tmp_path)
    with closing(SqliteRegister(path)) as register:
        shutil.copy(path, path.with_name("register.before-2.db"))
        serial = register.passes()[0].serial
        with register.change() as change:
            change.hand_over(serial, NOW)
        register.scrub()
        assert steps.copies_of(path) == []
        assert path.with_name("register.db-wal").stat().st_size == 0


@pytest.mark.parametrize("read_only", [False, True])
def test_a_newer_register_is_left_alone(tmp_path: Path, read_only: bool) -> None:  # noqa: FBT001 - both ways in
    """Broken if it fails: an older app writes into a file that it does not understand."""
    path = laid(tmp_path)
    step(path, widen)
    before = path.read_bytes()
    assert code_of(path, read_only=read_only) == "register-newer"
    assert path.read_bytes() == before


@pytest.mark.parametrize(
    "damage",
    [
        lambda _: b"this was never a register, but it is longer than a hundred octets " * 4,
        lambda whole: whole[:50],
        lambda whole: b"\x00" * len(whole),
    ],
    ids=["foreign", "cut", "zeros"],
)
def test_a_file_that_is_no_register_is_told(tmp_path: Path, damage: object) -> None:
    """Broken if it fails: a damaged file ends in a trace, or is taken for an empty household."""
    assert callable(damage)
    path = laid(tmp_path, damage(founded().register))
    before = path.read_bytes()
    assert code_of(path) == "register-damaged"
    assert path.read_bytes() == before


def test_a_torn_page_is_told_when_it_is_read(tmp_path: Path) -> None:
    """Broken if it fails: a damaged page shows a household with somebody missing."""
    whole = bytearray(founded().register)
    size = int.from_bytes(whole[16:18], "big")
    whole[size : 40 * size] = b"\xa5" * (39 * size)
    path = laid(tmp_path, bytes(whole))
    with pytest.raises(Unavailable) as unavailable:
        SqliteRegister(path).passes()
    assert unavailable.value.code == "register-damaged"


def test_a_second_copy_looks_and_changes_nothing(tmp_path: Path) -> None:
    """Broken if it fails: two copies of the app sign two lists with one number."""
    path = laid(tmp_path)
    with closing(SqliteRegister(path)) as first, closing(SqliteRegister(path, read_only=True)) as second:
        with first.change() as change:
            change.hand_over(first.passes()[0].serial, NOW)
        assert second.passes() == first.passes()
        with pytest.raises(Unavailable) as unavailable:
            second.expect_secrets(["a/b"], "file")
        assert unavailable.value.code == "second-copy"


def test_looking_where_nothing_is_makes_nothing(tmp_path: Path) -> None:
    """Broken if it fails: `hearthkey list` leaves an empty household behind."""
    with closing(SqliteRegister(tmp_path / FILE_NAME, read_only=True)) as register:
        assert register.household() is None
    assert list(tmp_path.iterdir()) == []


def test_a_folder_that_is_gone_is_told(tmp_path: Path) -> None:
    """Broken if it fails: a data folder on a pulled stick ends in a trace."""
    assert code_of(tmp_path / "gone" / FILE_NAME) == "folder-read-only"
