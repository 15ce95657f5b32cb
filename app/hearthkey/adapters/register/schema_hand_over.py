"""The register's third schema: proofs, copies that were made, and the language that a person reads."""

from __future__ import annotations

from sqlite3 import Connection

from hearthkey.adapters.register.schema import migration

_TABLES = """
CREATE TABLE proof (
    id INTEGER PRIMARY KEY,
    serial TEXT NOT NULL REFERENCES serial,
    at INTEGER NOT NULL,
    way TEXT NOT NULL CHECK (way IN ('tunnel', 'web', 'told')),
    address TEXT NOT NULL
) STRICT;
CREATE INDEX proof_by_serial ON proof (serial, at);
CREATE TABLE copy (
    id INTEGER PRIMARY KEY,
    serial TEXT NOT NULL REFERENCES serial,
    form TEXT NOT NULL,
    way TEXT NOT NULL CHECK (way IN ('folder', 'stick', 'ticket', 'drag', 'clipboard', 'paper')),
    place TEXT NOT NULL,
    names TEXT NOT NULL,
    made INTEGER NOT NULL,
    tidied INTEGER
) STRICT;
CREATE INDEX copy_by_serial ON copy (serial, made);
CREATE TABLE person_language (
    person INTEGER PRIMARY KEY REFERENCES person,
    language TEXT NOT NULL
) STRICT
"""

_KEPT = ("proof", "copy")


@migration(to=3)
def third(connection: Connection) -> None:
    """Proofs and copies are what happened, so they are never deleted; a proof is never altered either."""
    for statement in _TABLES.split(";\n"):
        connection.execute(statement)
    for table in _KEPT:
        connection.execute(
            f"CREATE TRIGGER {table}_is_kept BEFORE DELETE ON {table} "
            f"BEGIN SELECT RAISE(ABORT, '{table} is kept for ever'); END"
        )
    connection.execute(
        "CREATE TRIGGER proof_is_final BEFORE UPDATE ON proof BEGIN SELECT RAISE(ABORT, 'proof is never altered'); END"
    )
