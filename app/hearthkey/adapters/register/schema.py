"""Every version of the register's schema, as numbered migrations."""

from __future__ import annotations

from collections.abc import Callable
from sqlite3 import Connection

Migration = Callable[[Connection], None]

MIGRATIONS: dict[int, Migration] = {}


def migration(to: int) -> Callable[[Migration], Migration]:
    """Mark a function as the step to a schema version; steps are taken in order, one transaction each."""

    def keep(step: Migration) -> Migration:
        MIGRATIONS[to] = step
        return step

    return keep


_KEPT_FOR_EVER = ("serial", "person", "device", "pass", "revocation_list", "diary", "withdrawal")
_NEVER_ALTERED = ("revocation_list", "diary", "serial")


@migration(to=1)
def first(connection: Connection) -> None:
    """Times are whole seconds since 1970, UTC; serials are lower-case hex."""
    for statement in _FIRST.split(";\n"):
        if statement.strip():
            connection.execute(statement)
    for table in _KEPT_FOR_EVER:
        connection.execute(
            f"CREATE TRIGGER {table}_is_kept BEFORE DELETE ON {table} "
            f"BEGIN SELECT RAISE(ABORT, '{table} is kept for ever'); END"
        )
    for table in _NEVER_ALTERED:
        connection.execute(
            f"CREATE TRIGGER {table}_is_final BEFORE UPDATE ON {table} "
            f"BEGIN SELECT RAISE(ABORT, '{table} is never altered'); END"
        )
    connection.execute(
        "CREATE TRIGGER final_is_final BEFORE UPDATE OF lifted ON withdrawal WHEN OLD.reason <> 6 "
        "BEGIN SELECT RAISE(ABORT, 'a revoked pass never comes back'); END"
    )
    connection.execute(
        "CREATE TRIGGER mark_only_rises BEFORE UPDATE ON mark WHEN NEW.value < OLD.value "
        "BEGIN SELECT RAISE(ABORT, 'a mark only rises'); END"
    )


_FIRST = """
CREATE TABLE household (
    id INTEGER PRIMARY KEY CHECK (id = 1),
    name TEXT NOT NULL,
    gateway_host TEXT NOT NULL,
    identity_suffix TEXT NOT NULL,
    home_subnets TEXT NOT NULL,
    tunnel_subnet TEXT NOT NULL,
    dns_servers TEXT NOT NULL,
    tunnel TEXT NOT NULL CHECK (tunnel IN ('split', 'full')),
    practice INTEGER NOT NULL,
    founded INTEGER NOT NULL
) STRICT;
CREATE TABLE authority (
    id INTEGER PRIMARY KEY,
    subject TEXT NOT NULL UNIQUE,
    certificate BLOB NOT NULL,
    fingerprint TEXT NOT NULL UNIQUE,
    not_after INTEGER NOT NULL,
    key_place TEXT NOT NULL CHECK (key_place IN ('keyring', 'file'))
) STRICT;
CREATE TABLE serial (
    serial TEXT PRIMARY KEY,
    not_after INTEGER NOT NULL
) STRICT, WITHOUT ROWID;
CREATE TABLE gateway (
    id INTEGER PRIMARY KEY,
    host TEXT NOT NULL,
    serial TEXT NOT NULL UNIQUE REFERENCES serial,
    certificate BLOB NOT NULL,
    sealed_key BLOB NOT NULL,
    not_after INTEGER NOT NULL,
    made INTEGER NOT NULL
) STRICT;
CREATE TABLE person (
    id INTEGER PRIMARY KEY,
    name TEXT NOT NULL,
    folded TEXT NOT NULL UNIQUE
) STRICT;
CREATE TABLE device (
    id INTEGER PRIMARY KEY,
    person INTEGER NOT NULL REFERENCES person,
    label TEXT NOT NULL,
    folded TEXT NOT NULL,
    kind TEXT NOT NULL,
    identity TEXT NOT NULL UNIQUE,
    UNIQUE (person, folded)
) STRICT;
CREATE TABLE pass (
    id INTEGER PRIMARY KEY,
    device INTEGER NOT NULL REFERENCES device,
    serial TEXT NOT NULL UNIQUE REFERENCES serial,
    key_set TEXT NOT NULL,
    container TEXT NOT NULL,
    guest INTEGER NOT NULL,
    not_before INTEGER NOT NULL,
    not_after INTEGER NOT NULL,
    made INTEGER NOT NULL,
    handed_over INTEGER
) STRICT;
CREATE TABLE certificate (
    serial TEXT PRIMARY KEY REFERENCES serial,
    der BLOB NOT NULL,
    sealed BLOB
) STRICT;
CREATE TABLE withdrawal (
    id INTEGER PRIMARY KEY,
    serial TEXT NOT NULL REFERENCES serial,
    reason INTEGER NOT NULL CHECK (reason IN (1, 3, 4, 5, 6)),
    since INTEGER NOT NULL,
    lifted INTEGER
) STRICT;
CREATE UNIQUE INDEX withdrawal_in_force ON withdrawal (serial) WHERE lifted IS NULL;
CREATE TABLE revocation_list (
    number INTEGER PRIMARY KEY,
    der BLOB NOT NULL,
    this_update INTEGER NOT NULL,
    next_update INTEGER NOT NULL
) STRICT;
CREATE TABLE mark (
    name TEXT PRIMARY KEY,
    value INTEGER NOT NULL
) STRICT, WITHOUT ROWID;
CREATE TABLE loose_secret (
    name TEXT NOT NULL,
    place TEXT NOT NULL CHECK (place IN ('keyring', 'file')),
    PRIMARY KEY (name, place)
) STRICT, WITHOUT ROWID;
CREATE TABLE diary (
    number INTEGER PRIMARY KEY,
    at INTEGER NOT NULL,
    verb TEXT NOT NULL,
    sentence TEXT NOT NULL,
    link TEXT NOT NULL
) STRICT;
"""
