"""The part of the register that is about the deputy's parts."""

from __future__ import annotations

import sqlite3
from datetime import datetime
from typing import TYPE_CHECKING, Protocol

from hearthkey.adapters.register import rows

if TYPE_CHECKING:  # a list of devices does without
    from hearthkey.core.deputy import SetNote


class Opened(Protocol):
    """What `DeputyReads` stands on."""

    def _one(self, query: str, *values: object) -> tuple[object, ...] | None: ...
    def _all(self, query: str) -> list[tuple[object, ...]]: ...


class DeputyReads:
    """The reading half of the port `services.sealed_ports.SealedRegister` about parts."""

    def deputy_set(self: Opened) -> SetNote | None:
        """See the port."""
        from hearthkey.core.deputy import PartNote, SetNote  # noqa: PLC0415 - a list of devices does without

        row = self._one("SELECT name, made, threshold, lock, locked FROM deputy_set ORDER BY id DESC LIMIT 1")
        if row is None:
            return None
        name, made, threshold, lock, locked = row
        parts = self._all(
            "SELECT number, mark, tried FROM deputy_part "
            "WHERE of_set = (SELECT max(id) FROM deputy_set) ORDER BY number"
        )
        return SetNote(
            str(name),
            rows.moment(int(str(made))),
            int(str(threshold)),
            str(lock),
            str(locked),
            tuple(
                PartNote(int(str(number)), str(mark), None if tried is None else rows.moment(int(str(tried))))
                for number, mark, tried in parts
            ),
        )

    def deputy_sets(self: Opened) -> list[str]:
        """See the port."""
        return [str(row[0]) for row in self._all("SELECT name FROM deputy_set ORDER BY id")]


class Does(Protocol):
    """What `DeputyWrites` stands on."""

    def _do(self, statement: str, *values: object) -> sqlite3.Cursor: ...


class DeputyWrites:
    """The writing half of the port, as part of a transaction."""

    def keep_deputy_set(self: Does, made: SetNote) -> None:
        """See the port."""
        inserted = self._do(
            "INSERT INTO deputy_set (name, made, threshold, lock, locked) VALUES (?, ?, ?, ?, ?)",
            made.name,
            int(made.made.timestamp()),
            made.threshold,
            made.lock,
            made.locked,
        )
        for one in made.parts:
            self._do(
                "INSERT INTO deputy_part VALUES (?, ?, ?, ?)",
                inserted.lastrowid,
                one.number,
                one.mark,
                None if one.tried is None else int(one.tried.timestamp()),
            )

    def deputy_part_tried(self: Does, mark: str, now: datetime) -> None:
        """See the port."""
        self._do("UPDATE deputy_part SET tried = ? WHERE mark = ?", int(now.timestamp()), mark)
