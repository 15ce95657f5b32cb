"""The register's schema for what was made elsewhere: where passes came from, and reasons that we never write."""

from __future__ import annotations

from sqlite3 import Connection

from hearthkey.adapters.register.schema import migration

_TABLES = """
CREATE TABLE adopted (
    serial TEXT PRIMARY KEY REFERENCES pass (serial),
    subject TEXT NOT NULL,
    file TEXT NOT NULL,
    adopted INTEGER NOT NULL,
    named INTEGER
) STRICT, WITHOUT ROWID;
CREATE TABLE listed_reason (
    serial TEXT PRIMARY KEY REFERENCES serial,
    reason INTEGER NOT NULL CHECK (reason IN (0, 2, 9, 10))
) STRICT, WITHOUT ROWID
"""


@migration(to=5)
def adopted(connection: Connection) -> None:
    """Both tell what happened, so that their rows are never deleted; 0 stands for a reason that was not given."""
    for statement in _TABLES.split(";\n"):
        connection.execute(statement)
    for table in ("adopted", "listed_reason"):
        connection.execute(
            f"CREATE TRIGGER {table}_is_kept BEFORE DELETE ON {table} "
            f"BEGIN SELECT RAISE(ABORT, '{table} is kept for ever'); END"
        )
