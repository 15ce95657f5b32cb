"""Brings a register file to the newest schema, with a copy taken first."""

from __future__ import annotations

import os
import sqlite3
from collections.abc import Mapping
from pathlib import Path

from hearthkey.adapters.register import (  # noqa: F401 - their steps are registered by being read
    schema_adopted,
    schema_deputy,
    schema_gateway,
    schema_hand_over,
    schema_renewal,
    schema_sealed,
    schema_succession,
    schema_years,
)
from hearthkey.adapters.register.schema import MIGRATIONS, Migration
from hearthkey.core.errors import Unavailable


def newest(migrations: Mapping[int, Migration] = MIGRATIONS) -> int:
    """The schema version that this app writes."""
    return max(migrations)


def version_of(connection: sqlite3.Connection) -> int:
    """The schema version of an open file; 0 for a new one."""
    return int(connection.execute("PRAGMA user_version").fetchone()[0])


def version_at(path: Path) -> int | None:
    """The schema version of a file, from its header alone; None where there is none.

    SQLite file format, section 1.3: the user version is a big-endian number at offset 60.
    """
    try:
        with path.open("rb") as file:
            header = file.read(100)
    except FileNotFoundError:
        return None
    except OSError as error:
        raise Unavailable("register-unreadable", path=str(path.parent), seen=error.strerror or "") from error
    return int.from_bytes(header[60:64], "big") if len(header) == 100 else 0


def migrate(connection: sqlite3.Connection, path: Path, migrations: Mapping[int, Migration] = MIGRATIONS) -> None:
    """Take every step that is missing, each in its own transaction.

    Before the first step on a file with content, a copy is put beside it (`copies_of`), and it
    stays until the next hand-over or migration.

    Raises:
        Unavailable: register-newer.
    """
    have = version_of(connection)
    if have > newest(migrations):
        raise Unavailable("register-newer", have=have, known=newest(migrations))
    if have == newest(migrations):
        return
    if have:
        _copy(connection, path.with_name(f"{path.stem}.before-{newest(migrations)}{path.suffix}"))
    for step in range(have + 1, newest(migrations) + 1):
        connection.execute("BEGIN IMMEDIATE")
        try:
            if version_of(connection) < step:
                migrations[step](connection)
                connection.execute(f"PRAGMA user_version = {step}")
            connection.execute("COMMIT")
        except BaseException:
            if connection.in_transaction:  # on a full disk SQLite has rolled back by itself
                connection.execute("ROLLBACK")
            raise


def copies_of(path: Path) -> list[Path]:
    """The safety copies that lie beside a register."""
    return sorted(path.parent.glob(f"{path.stem}.before-*{path.suffix}"))


def _copy(connection: sqlite3.Connection, to: Path) -> None:
    half = to.with_suffix(".half")
    half.unlink(missing_ok=True)
    os.close(os.open(half, os.O_CREAT | os.O_EXCL | os.O_WRONLY, 0o600))
    with sqlite3.connect(half) as copy:
        connection.backup(copy)
    copy.close()
    half.replace(to)
