"""The part of the register that is about sealed copies: making one, reading one, putting one back."""

from __future__ import annotations

import sqlite3
from contextlib import closing
from datetime import datetime
from pathlib import Path
from typing import TYPE_CHECKING, Protocol

from hearthkey.adapters.register import rows
from hearthkey.adapters.register.migrations import version_of
from hearthkey.adapters.register.succession_rows import DROP_UNUSED_BESIDE, DROP_UNUSED_SIGNERS

if TYPE_CHECKING:  # a list of devices does without
    from hearthkey.core.sealed import CopyNote

_OWN = "copies-own-lock"
"""The setting that names the lock, by its public half, which lies under a passphrase of the copies' own."""

_LEFT_OUT = (
    "UPDATE certificate SET sealed = NULL",
    "DELETE FROM loose_secret",
    "DELETE FROM gateway_note",
    "DELETE FROM spare_list",
    DROP_UNUSED_BESIDE,
    DROP_UNUSED_SIGNERS,
)
"""Keys of waiting passes stay at home: after hand-over they have to be on the device alone, and a copy is for years.
What was seen at the gateway is old news once a copy is opened, and spare lists are signed anew."""


class Opened(Protocol):
    """What `SealedReads` stands on."""

    _connection: sqlite3.Connection

    def _one(self, query: str, *values: object) -> tuple[object, ...] | None: ...
    def _all(self, query: str) -> list[tuple[object, ...]]: ...


class SealedReads:
    """The reading half of the port `services.sealed_ports.SealedRegister`."""

    def copy_lock(self: Opened) -> tuple[str, str] | None:
        """See the port."""
        row = self._one("SELECT public, locked FROM copy_lock")
        return None if row is None else (str(row[0]), str(row[1]))

    def sealed_copies(self: Opened) -> list[CopyNote]:
        """See the port."""
        from hearthkey.core.sealed import CopyNote  # noqa: PLC0415 - a list of devices does without

        found = self._all(
            "SELECT made, sha256, place, name, diary_entries, diary_link, tried FROM sealed_copy ORDER BY made, name"
        )
        return [
            CopyNote(
                rows.moment(int(str(made))),
                str(sha256),
                str(place),
                str(name),
                int(str(entries)),
                str(link),
                None if tried is None else rows.moment(int(str(tried))),
            )
            for made, sha256, place, name, entries, link, tried in found
        ]

    def schema_version(self: Opened) -> int:
        """See the port."""
        return version_of(self._connection)

    def snapshot(self: Opened) -> bytes:
        """See the port."""
        with closing(sqlite3.connect(":memory:", isolation_level=None)) as copy:
            self._connection.backup(copy)
            for statement in _LEFT_OUT:
                copy.execute(statement)
            copy.execute("VACUUM")  # what was left out is gone from the pages too
            return copy.serialize()

    def become(self: Opened, source: Path, *, list_mark: int) -> None:
        """See the port."""
        with closing(sqlite3.connect(source, isolation_level=None)) as copy:
            copy.execute(
                "INSERT INTO mark VALUES ('list', ?) ON CONFLICT (name) DO UPDATE SET value = ?", (list_mark,) * 2
            )
            copy.backup(self._connection)
        self._connection.execute("PRAGMA journal_mode = WAL")


class Does(Protocol):
    """What `SealedWrites` stands on."""

    def _do(self, statement: str, *values: object) -> sqlite3.Cursor: ...


class SealedWrites:
    """The writing half of the port, as part of a transaction."""

    def keep_copy_lock(self: Does, public: str, locked: str, *, own: bool) -> None:
        """See the port."""
        self._do("INSERT OR REPLACE INTO copy_lock VALUES (1, ?, ?)", public, locked)
        if own:
            self._do("INSERT OR REPLACE INTO setting VALUES (?, ?)", _OWN, public)

    def forget_copy_lock(self: Does) -> None:
        """See the port."""
        self._do("DELETE FROM copy_lock WHERE public NOT IN (SELECT value FROM setting WHERE name = ?)", _OWN)

    def place_secrets(self: Does, place: str) -> None:
        """See the port."""
        self._do("UPDATE authority SET key_place = ?", place)

    def note_copy(self: Does, note: CopyNote) -> None:
        """See the port."""
        self._do(
            "INSERT OR REPLACE INTO sealed_copy VALUES (?, ?, ?, ?, ?, ?, ?)",
            note.sha256,
            int(note.made.timestamp()),
            note.place,
            note.name,
            note.diary_entries,
            note.diary_link,
            None if note.tried is None else int(note.tried.timestamp()),
        )

    def copy_tried(self: Does, sha256: str, now: datetime) -> None:
        """See the port."""
        self._do("UPDATE sealed_copy SET tried = ? WHERE sha256 = ?", int(now.timestamp()), sha256)
