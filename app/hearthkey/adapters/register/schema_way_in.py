"""The register's next schema: what checks of the way in found."""

from __future__ import annotations

from sqlite3 import Connection

_TABLE = """
CREATE TABLE way_in_check (
    id INTEGER PRIMARY KEY,
    made INTEGER NOT NULL,
    side TEXT NOT NULL CHECK (side IN ('inside', 'outside')),
    host TEXT NOT NULL,
    links TEXT NOT NULL
) STRICT
"""


def checks(connection: Connection) -> None:
    """`links` is JSON: of each link its place, verdict, finding and facts, in the order of the packet."""
    connection.execute(_TABLE)
    connection.execute(
        "CREATE TRIGGER way_in_check_is_kept BEFORE DELETE ON way_in_check "
        "BEGIN SELECT RAISE(ABORT, 'way_in_check is kept for ever'); END"
    )
