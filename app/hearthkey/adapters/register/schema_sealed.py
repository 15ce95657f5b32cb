"""The register's fourth schema: what closes sealed copies, and which were made."""

from __future__ import annotations

from sqlite3 import Connection

from hearthkey.adapters.register.schema import migration

_TABLES = """
CREATE TABLE copy_lock (
    id INTEGER PRIMARY KEY CHECK (id = 1),
    public TEXT NOT NULL,
    locked TEXT NOT NULL
) STRICT;
CREATE TABLE sealed_copy (
    sha256 TEXT PRIMARY KEY,
    made INTEGER NOT NULL,
    place TEXT NOT NULL,
    name TEXT NOT NULL,
    diary_entries INTEGER NOT NULL,
    diary_link TEXT NOT NULL,
    tried INTEGER
) STRICT
"""


@migration(to=4)
def fourth(connection: Connection) -> None:
    """The private half in `copy_lock` lies under a passphrase; a copy carries the very same text."""
    for statement in _TABLES.split(";\n"):
        connection.execute(statement)
