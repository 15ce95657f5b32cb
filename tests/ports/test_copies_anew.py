"""The register's table of copies, made anew so that codes on a screen are copies: nothing of the old one is lost."""

from __future__ import annotations

import shutil
import sqlite3
from contextlib import closing
from datetime import UTC, datetime
from pathlib import Path

import pytest

from hearthkey.adapters.register import FILE_NAME, SqliteRegister
from hearthkey.core.copies import Came, Copy, CopyFile, CopyWay, told
from hearthkey.core.proofs import Way
from hearthkey.core.sentences import copies as sentences
from hearthkey.core.sentences import proofs as said_of_proofs
from tests.fakes.clock import NOW

OLDER = Path(__file__).parents[1] / "past" / "register-8.db"
ROWS = (
    (3, "pkcs12", "stick", "QUINCE", '{"came":"made","folder":"/media/ines/QUINCE","files":["a.p12:00"]}', 9, None),
    (5, "bundle", "folder", "/home/ines/out", '{"came":"never","folder":"/home/ines/out","files":[]}', 10, 11),
    (9, "codes", "paper", "", '{"came":"made","folder":"","files":[]}', 12, None),
)
"""Copies of an older register; no app wrote one on paper, but its CHECK let it."""


def laws(path: Path) -> dict[str, str]:
    """Return indexes and triggers of the table of copies."""
    with closing(sqlite3.connect(path)) as connection:
        found = connection.execute(
            "SELECT name, sql FROM sqlite_master WHERE tbl_name = 'copy' AND type IN ('index', 'trigger')"
        )
        return dict(found.fetchall())


@pytest.fixture
def path(tmp_path: Path) -> Path:
    """A register of the schema before, with copies and a proof."""
    older = Path(shutil.copy(OLDER, tmp_path / FILE_NAME))
    with closing(sqlite3.connect(older, isolation_level=None)) as connection:
        serial = connection.execute("SELECT serial FROM pass ORDER BY id DESC").fetchone()[0]
        for number, form, way, place, names, made, tidied in ROWS:
            connection.execute(
                "INSERT INTO copy VALUES (?, ?, ?, ?, ?, ?, ?, ?)",
                (number, serial, form, way, place, names, made, tidied),
            )
        connection.execute("INSERT INTO proof (serial, at, way, address) VALUES (?, 9, 'web', '')", (serial,))
    return older


def test_every_copy_of_an_older_register_is_kept(path: Path) -> None:
    """Broken if it fails: the list of every copy forgets some of them on the day of an update."""
    before = laws(path)
    with closing(SqliteRegister(path)) as register:
        found = register.copies()
        assert [(one.number, one.form, one.way, one.place) for one in found] == [
            (3, "pkcs12", CopyWay.STICK, "QUINCE"),
            (5, "bundle", CopyWay.FOLDER, "/home/ines/out"),
            (9, "codes", CopyWay.OTHER, ""),
        ]
        assert found[0].files == (CopyFile("a.p12", "00"),)
        assert [one.came for one in found] == [Came.MADE, Came.NEVER, Came.MADE]
        assert found[1].tidied == datetime.fromtimestamp(11, UTC)
        with register.change() as change:
            shown = Copy(found[0].serial, "codes", CopyWay.SCREEN, "", "", (), NOW)
            assert change.expect_copy(shown) == 10
    assert laws(path) == before
    assert set(before) == {"copy_by_serial", "copy_is_kept"}


def test_copies_are_still_never_deleted_and_belong_to_a_pass(path: Path) -> None:
    """Broken if it fails: making the table anew has lost what guards it."""
    SqliteRegister(path).close()
    with closing(sqlite3.connect(path, isolation_level=None)) as connection:
        connection.execute("PRAGMA foreign_keys = ON")
        assert connection.execute("PRAGMA foreign_key_check").fetchall() == []
        for statement in (
            "DELETE FROM copy",
            "INSERT INTO copy (serial, form, way, place, names, made) VALUES ('none', 'codes', 'screen', '', '{}', 1)",
            "UPDATE copy SET way = 'other'",
        ):
            with pytest.raises(sqlite3.IntegrityError):
                connection.execute(statement)
        assert connection.execute("SELECT count(*) FROM copy").fetchone() == (3,)


def test_ways_that_are_not_known_are_told_and_close_nothing(path: Path) -> None:
    """Broken if it fails: one odd row, and the household cannot be opened any more."""
    with closing(SqliteRegister(path)) as register:
        passes = register.passes()
        odd = next(one for one in told(register.copies(), passes, NOW) if one.copy.way is CopyWay.OTHER)
        (proof,) = [proof for one in passes for proof in one.proofs]
    assert str(sentences.described(odd, "codes")) == "codes, in a way that is not known here"
    assert proof.way is Way.OTHER
    assert str(said_of_proofs.way(proof)) == "seen to get in"
