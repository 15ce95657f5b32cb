"""The register's fifth schema: which pass follows which, and on which days people are met."""

from __future__ import annotations

from sqlite3 import Connection

from hearthkey.adapters.register.schema import migration

_TABLES = """
CREATE TABLE follows (
    new TEXT NOT NULL REFERENCES serial,
    old TEXT NOT NULL REFERENCES serial,
    overlap_ends INTEGER NOT NULL,
    made INTEGER NOT NULL,
    way TEXT NOT NULL CHECK (way IN ('renewed', 'replaced')),
    PRIMARY KEY (new, old)
) STRICT, WITHOUT ROWID;
CREATE TABLE visit (
    person INTEGER NOT NULL REFERENCES person,
    day INTEGER NOT NULL,
    PRIMARY KEY (person, day)
) STRICT, WITHOUT ROWID
"""


@migration(to=6)
def fifth(connection: Connection) -> None:
    """What follows what has happened, so it stays as it is; a visit is only meant, and can be called off."""
    for statement in _TABLES.split(";\n"):
        connection.execute(statement)
    for what, told in (("DELETE", "kept for ever"), ("UPDATE", "never altered")):
        connection.execute(
            f"CREATE TRIGGER follows_before_{what.lower()} BEFORE {what} ON follows "
            f"BEGIN SELECT RAISE(ABORT, 'what follows what is {told}'); END"
        )
