"""The part of the register that is about papers and stop sets."""

from __future__ import annotations

import sqlite3
from typing import TYPE_CHECKING, Protocol

from hearthkey.adapters.register import rows

if TYPE_CHECKING:  # a list of devices does without
    from hearthkey.core.keepsakes import PaperNote, StopSetNote


class Opened(Protocol):
    """What `KeepsakeReads` stands on."""

    def _one(self, query: str, *values: object) -> tuple[object, ...] | None: ...
    def _all(self, query: str) -> list[tuple[object, ...]]: ...


class KeepsakeReads:
    """The reading half of the port `services.keepsake_ports.KeepsakeRegister`."""

    def papers_made(self: Opened) -> list[PaperNote]:
        """See the port."""
        from hearthkey.core.keepsakes import PaperNote  # noqa: PLC0415 - a list of devices does without

        found = self._all("SELECT made, authority FROM paper_made ORDER BY id")
        return [PaperNote(rows.moment(int(str(made))), str(authority)) for made, authority in found]

    def stop_set(self: Opened) -> StopSetNote | None:
        """See the port."""
        from hearthkey.core.keepsakes import StopSetNote  # noqa: PLC0415 - a list of devices does without

        row = self._one("SELECT made, base, newest FROM stop_set ORDER BY id DESC LIMIT 1")
        if row is None:
            return None
        made, base, newest = (int(str(one)) for one in row)
        return StopSetNote(rows.moment(made), base, newest)


class Does(Protocol):
    """What `KeepsakeWrites` stands on."""

    def _do(self, statement: str, *values: object) -> sqlite3.Cursor: ...


class KeepsakeWrites:
    """The writing half of the port, as part of a transaction."""

    def note_paper(self: Does, note: PaperNote) -> None:
        """See the port."""
        self._do("INSERT INTO paper_made (made, authority) VALUES (?, ?)", int(note.made.timestamp()), note.authority)

    def note_stop_set(self: Does, note: StopSetNote) -> None:
        """See the port."""
        values = (int(note.made.timestamp()), note.base, note.newest)
        self._do("INSERT INTO stop_set (made, base, newest) VALUES (?, ?, ?)", *values)
