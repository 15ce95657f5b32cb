"""The register's next schema: which papers and stop sets were given out of the house."""

from __future__ import annotations

import re
from sqlite3 import Connection

_TABLES = """
CREATE TABLE paper_made (
    id INTEGER PRIMARY KEY,
    made INTEGER NOT NULL,
    authority TEXT NOT NULL
) STRICT;
CREATE TABLE stop_set (
    id INTEGER PRIMARY KEY,
    made INTEGER NOT NULL,
    base INTEGER NOT NULL,
    newest INTEGER NOT NULL
) STRICT
"""
_TOLD = re.compile(r"stop lists? beside revocation list (\d+)\b")


def keepsakes(connection: Connection) -> None:
    """What was given out before is taken from the diary; a paper of that time has the first CA's key.

    One that was made while a CA was followed by another is not counted: whose key it has, nobody wrote down.
    """
    for statement in _TABLES.split(";\n"):
        connection.execute(statement)
    connection.execute(
        "INSERT INTO paper_made (made, authority) SELECT at, (SELECT fingerprint FROM authority ORDER BY id LIMIT 1) "
        "FROM diary WHERE verb = 'paper' AND EXISTS (SELECT 1 FROM authority) "
        "AND at < coalesce((SELECT min(taken) FROM succession_step), at + 1)"
    )
    for made, sentence in connection.execute("SELECT at, sentence FROM diary WHERE verb = 'deputy'").fetchall():
        if found := _TOLD.search(sentence):
            base = int(found.group(1))
            connection.execute("INSERT INTO stop_set (made, base, newest) VALUES (?, ?, ?)", (made, base, base))
    for table in ("paper_made", "stop_set"):
        connection.execute(
            f"CREATE TRIGGER {table}_is_kept BEFORE DELETE ON {table} "
            f"BEGIN SELECT RAISE(ABORT, '{table} is kept for ever'); END"
        )
