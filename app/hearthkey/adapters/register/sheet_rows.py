"""The part of the register that is about sheets: whom to call, and the language that somebody reads."""

from __future__ import annotations

import sqlite3
from typing import Protocol

_CALL = "call"


class Asks(Protocol):
    """What `SheetReads` stands on."""

    def _one(self, query: str, *values: object) -> tuple[object, ...] | None: ...
    def _all(self, query: str) -> list[tuple[object, ...]]: ...


class SheetReads:
    """The reading half of the port `services.sheet_ports.SheetRegister`."""

    def person_languages(self: Asks) -> dict[str, str]:
        """See the port."""
        found = self._all("SELECT folded, language FROM person_language JOIN person ON person.id = person")
        return {str(folded): str(language) for folded, language in found}

    def whom_to_call(self: Asks) -> str:
        """See the port."""
        row = self._one("SELECT value FROM setting WHERE name = ?", _CALL)
        return "" if row is None else str(row[0])


class Does(Protocol):
    """What `SheetWrites` stands on."""

    def _do(self, statement: str, *values: object) -> sqlite3.Cursor: ...


class SheetWrites:
    """The writing half of the port, as part of a transaction."""

    def keep_person_language(self: Does, person: str, language: str) -> None:
        """See the port."""
        self._do(
            "INSERT OR REPLACE INTO person_language SELECT id, ? FROM person WHERE folded = ?",
            language,
            person.casefold(),
        )

    def keep_whom_to_call(self: Does, text: str) -> None:
        """See the port."""
        if text:
            self._do("INSERT OR REPLACE INTO setting VALUES (?, ?)", _CALL, text)
        else:
            self._do("DELETE FROM setting WHERE name = ?", _CALL)
