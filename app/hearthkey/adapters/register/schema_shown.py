"""The register's ninth schema: codes on a screen are copies too."""

from __future__ import annotations

from sqlite3 import Connection

_TABLE = """
CREATE TABLE copy_anew (
    id INTEGER PRIMARY KEY,
    serial TEXT NOT NULL REFERENCES serial,
    form TEXT NOT NULL,
    way TEXT NOT NULL CHECK (way IN ('folder', 'stick', 'ticket', 'drag', 'clipboard', 'paper', 'screen')),
    place TEXT NOT NULL,
    names TEXT NOT NULL,
    made INTEGER NOT NULL,
    tidied INTEGER
) STRICT
"""
_MOVE = """
INSERT INTO copy_anew (id, serial, form, way, place, names, made, tidied)
SELECT id, serial, form, way, place, names, made, tidied FROM copy ORDER BY id
"""


def shown(connection: Connection) -> None:
    """SQLite alters no CHECK, so the table is made anew, with every row, index and trigger of the old one.

    Dropping a table fires no trigger, and nothing refers to this one (SQLite, "ALTER TABLE", section 7, and "DROP
    TABLE", from memory).
    """
    kept = connection.execute(
        "SELECT sql FROM sqlite_master WHERE tbl_name = 'copy' AND type IN ('index', 'trigger') AND sql IS NOT NULL"
    ).fetchall()
    connection.execute(_TABLE)
    connection.execute(_MOVE)
    connection.execute("DROP TABLE copy")
    connection.execute("ALTER TABLE copy_anew RENAME TO copy")
    for (statement,) in kept:
        connection.execute(statement)
