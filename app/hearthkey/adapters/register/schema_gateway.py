"""The register's second schema: where the gateway is, what was seen there, spare lists, templates, secrets."""

from __future__ import annotations

from sqlite3 import Connection

from hearthkey.adapters.register.schema import migration

_TABLES = """
CREATE TABLE target (
    id INTEGER PRIMARY KEY CHECK (id = 1),
    way TEXT NOT NULL CHECK (way IN ('ssh', 'folder')),
    folder TEXT NOT NULL,
    host TEXT NOT NULL,
    port INTEGER NOT NULL,
    user TEXT NOT NULL,
    reload TEXT NOT NULL,
    host_key TEXT NOT NULL
) STRICT;
CREATE TABLE gateway_note (
    id INTEGER PRIMARY KEY CHECK (id = 1),
    looked INTEGER,
    set_id TEXT,
    list_number INTEGER,
    list_until INTEGER,
    gateway_serial TEXT NOT NULL,
    gateway_until INTEGER,
    made_of TEXT NOT NULL,
    clock_off INTEGER,
    delivered INTEGER,
    reload_said TEXT,
    failed INTEGER,
    failure TEXT NOT NULL
) STRICT;
CREATE TABLE spare_list (
    number INTEGER PRIMARY KEY,
    base INTEGER NOT NULL,
    scope TEXT NOT NULL CHECK (scope IN ('device', 'person', 'everybody')),
    subject TEXT NOT NULL,
    serials TEXT NOT NULL,
    der BLOB NOT NULL,
    this_update INTEGER NOT NULL,
    next_update INTEGER NOT NULL,
    used INTEGER
) STRICT;
CREATE TABLE template (
    name TEXT PRIMARY KEY,
    made_for TEXT NOT NULL CHECK (made_for IN ('gateway', 'device')),
    file_stem TEXT NOT NULL,
    ending TEXT NOT NULL,
    text TEXT NOT NULL
) STRICT, WITHOUT ROWID;
CREATE TABLE extra_secret (
    owner TEXT PRIMARY KEY,
    made INTEGER NOT NULL,
    known_outside INTEGER
) STRICT, WITHOUT ROWID;
CREATE TABLE setting (
    name TEXT PRIMARY KEY,
    value TEXT NOT NULL
) STRICT, WITHOUT ROWID;
CREATE TABLE gateway_archive (
    serial TEXT PRIMARY KEY REFERENCES serial,
    der BLOB NOT NULL
) STRICT, WITHOUT ROWID;
CREATE TABLE tick (
    serial TEXT NOT NULL REFERENCES serial,
    step TEXT NOT NULL,
    at INTEGER NOT NULL,
    PRIMARY KEY (serial, step)
) STRICT, WITHOUT ROWID
"""


@migration(to=2)
def second(connection: Connection) -> None:
    """A note, a target and options are rows that are replaced; spare lists are replaced as a whole."""
    for statement in _TABLES.split(";\n"):
        connection.execute(statement)
