"""The register's fifth schema: one CA that follows another, and who signed which list."""

from __future__ import annotations

from sqlite3 import Connection

from hearthkey.adapters.register.schema import migration

_TABLES = """
CREATE TABLE succession (
    id INTEGER PRIMARY KEY,
    old INTEGER NOT NULL REFERENCES authority,
    new INTEGER NOT NULL UNIQUE REFERENCES authority,
    cross_certificate BLOB,
    cause TEXT NOT NULL CHECK (cause IN ('planned', 'stolen', 'lost'))
) STRICT;
CREATE TABLE succession_step (
    id INTEGER PRIMARY KEY,
    succession INTEGER NOT NULL REFERENCES succession,
    step TEXT NOT NULL CHECK (step IN ('begin', 'trust', 'gateway', 'finish')),
    taken INTEGER NOT NULL,
    taken_back INTEGER
) STRICT;
CREATE TABLE list_signer (
    number INTEGER PRIMARY KEY,
    authority INTEGER NOT NULL REFERENCES authority
) STRICT;
CREATE TABLE list_beside (
    number INTEGER NOT NULL,
    authority INTEGER NOT NULL REFERENCES authority,
    der BLOB NOT NULL,
    PRIMARY KEY (number, authority)
) STRICT, WITHOUT ROWID
"""

_KEPT = ("succession", "succession_step", "authority")
_KEPT_WITH_LIST = ("list_signer", "list_beside")


@migration(to=7)
def fifth(connection: Connection) -> None:
    """What happened is never deleted; signers of spare lists go with the spare lists that were never used.

    Lists of two CAs that say the same have one number: it rises for each issuer (RFC 5280 section 5.2.3).
    """
    for statement in _TABLES.split(";\n"):
        connection.execute(statement)
    for table in _KEPT:
        connection.execute(
            f"CREATE TRIGGER {table}_is_kept BEFORE DELETE ON {table} "
            f"BEGIN SELECT RAISE(ABORT, '{table} is kept for ever'); END"
        )
    for table in _KEPT_WITH_LIST:
        connection.execute(
            f"CREATE TRIGGER {table}_is_kept BEFORE DELETE ON {table} "  # noqa: S608 - names of our own
            "WHEN EXISTS (SELECT 1 FROM revocation_list WHERE number = OLD.number) "
            f"BEGIN SELECT RAISE(ABORT, '{table} is kept for ever'); END"
        )
    connection.execute(
        "CREATE TRIGGER finished_is_finished BEFORE UPDATE ON succession_step WHEN OLD.step = 'finish' "
        "BEGIN SELECT RAISE(ABORT, 'a CA that was put away never comes back'); END"
    )
    connection.execute(
        "INSERT INTO list_signer SELECT number, (SELECT min(id) FROM authority) FROM revocation_list "
        "WHERE EXISTS (SELECT 1 FROM authority)"
    )
