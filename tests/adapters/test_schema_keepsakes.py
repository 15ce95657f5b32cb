"""Papers and stop sets of before the register remembered them, taken from its diary."""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator
from contextlib import closing

import pytest

from hearthkey.adapters.register import migrations, schema_keepsakes, schema_years
from hearthkey.adapters.register.schema import MIGRATIONS

THIS = next(number for number, step in MIGRATIONS.items() if step is schema_years.ninth)
FIRST, SECOND = "aa" * 32, "bb" * 32


@pytest.fixture
def before() -> Iterator[sqlite3.Connection]:
    """A register as it was one version ago, with a CA, a paper and two stop sets in its diary."""
    assert migrations.newest() >= THIS
    with closing(sqlite3.connect(":memory:", isolation_level=None)) as connection:
        for number in range(1, THIS):
            MIGRATIONS[number](connection)
        for name in (FIRST, SECOND):
            connection.execute(
                "INSERT INTO authority (subject, certificate, fingerprint, not_after, key_place) "
                "VALUES (?, x'00', ?, 9, 'file')",
                (name, name),
            )
        for number, (at, verb, told) in enumerate(
            (
                (100, "paper", "The household’s key was put on paper, at the printer."),
                (200, "deputy", "1 stop list beside revocation list 7 was written for a deputy, who can stop …"),
                (300, "deputy", "4 stop lists beside revocation list 12 were written for a deputy, who can stop …"),
                (400, "deputy", "Part 1 of set A7F3 was tried, and it is right."),
                (900, "paper", "The household’s key was put on paper, at the printer."),
            ),
            1,
        ):
            connection.execute("INSERT INTO diary VALUES (?, ?, ?, ?, '')", (number, at, verb, told))
        yield connection


def test_what_was_given_out_before_is_known_afterwards(before: sqlite3.Connection) -> None:
    """Broken if it fails: whoever printed the paper long ago is told that there is none."""
    schema_keepsakes.keepsakes(before)
    assert before.execute("SELECT made, authority FROM paper_made").fetchall() == [(100, FIRST), (900, FIRST)]
    assert before.execute("SELECT made, base FROM stop_set").fetchall() == [(200, 7), (300, 12)]


def test_a_paper_from_the_middle_of_a_succession_does_not_count(before: sqlite3.Connection) -> None:
    """Broken if it fails: a paper with nobody knows whose key is taken for the right one."""
    before.execute("INSERT INTO succession VALUES (1, 1, 2, NULL, 'planned')")
    before.execute("INSERT INTO succession_step VALUES (1, 1, 'begin', 500, NULL)")
    schema_keepsakes.keepsakes(before)
    assert before.execute("SELECT made FROM paper_made").fetchall() == [(100,)]


def test_what_was_given_out_is_never_forgotten(before: sqlite3.Connection) -> None:
    """Broken if it fails: a stale stop set is forgotten while it lies in a drawer."""
    schema_keepsakes.keepsakes(before)
    for table in ("paper_made", "stop_set"):
        with pytest.raises(sqlite3.IntegrityError, match="is kept for ever"):
            before.execute(f"DELETE FROM {table}")  # noqa: S608 - names of our own
