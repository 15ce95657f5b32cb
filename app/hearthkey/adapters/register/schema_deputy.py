"""The register's next schema: the parts with which a deputy opens a sealed copy."""

from __future__ import annotations

from sqlite3 import Connection

from hearthkey.adapters.register.schema import migration

_TABLES = """
CREATE TABLE deputy_set (
    id INTEGER PRIMARY KEY,
    name TEXT NOT NULL UNIQUE,
    made INTEGER NOT NULL,
    threshold INTEGER NOT NULL,
    lock TEXT NOT NULL,
    locked TEXT NOT NULL
) STRICT;
CREATE TABLE deputy_part (
    of_set INTEGER NOT NULL REFERENCES deputy_set,
    number INTEGER NOT NULL,
    mark TEXT NOT NULL UNIQUE,
    tried INTEGER,
    PRIMARY KEY (of_set, number)
) STRICT
"""


@migration(to=8)
def parts(connection: Connection) -> None:
    """Parts themselves are nowhere in it: `mark` knows one again, and `locked` opens with what was split."""
    for statement in _TABLES.split(";\n"):
        connection.execute(statement)
    for table in ("deputy_set", "deputy_part"):
        connection.execute(
            f"CREATE TRIGGER {table}_is_kept BEFORE DELETE ON {table} "
            f"BEGIN SELECT RAISE(ABORT, '{table} is kept for ever'); END"
        )
