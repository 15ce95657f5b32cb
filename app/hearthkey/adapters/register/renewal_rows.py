"""The part of the register that is about renewals and visits."""

from __future__ import annotations

import sqlite3
from typing import TYPE_CHECKING, Any, Protocol

from hearthkey.adapters.register.rows import moment

if TYPE_CHECKING:  # a list of devices does without renewals
    from datetime import datetime

    from hearthkey.core.renewal import Follow, Visit


class Asks(Protocol):
    """What `RenewalReads` stands on."""

    def _all(self, query: str) -> list[tuple[object, ...]]: ...


class RenewalReads:
    """The reading half of the port `services.renewal_ports.RenewalRegister`."""

    def follows(self: Asks) -> list[Follow]:
        """See the port."""
        from hearthkey.core.renewal import Follow, Way  # noqa: PLC0415 - see above

        found: list[tuple[Any, ...]] = self._all(
            "SELECT new, old, overlap_ends, follows.made, way "
            "FROM follows JOIN pass ON pass.serial = new ORDER BY pass.id, old"
        )
        return [Follow(new, old, moment(ends), moment(made), Way(way)) for new, old, ends, made, way in found]

    def visits(self: Asks) -> list[Visit]:
        """See the port."""
        from hearthkey.core.renewal import Visit  # noqa: PLC0415 - see above

        found: list[tuple[Any, ...]] = self._all(
            "SELECT person.name, day FROM visit JOIN person ON person.id = visit.person ORDER BY day, person.id"
        )
        return [Visit(person, moment(day)) for person, day in found]


class Does(Protocol):
    """What `RenewalWrites` stands on."""

    def _do(self, statement: str, *values: object) -> sqlite3.Cursor: ...


class RenewalWrites:
    """The writing half of the port, as part of a transaction."""

    def add_follow(self: Does, follow: Follow) -> None:
        """See the port."""
        self._do(
            "INSERT INTO follows VALUES (?, ?, ?, ?, ?)",
            follow.new,
            follow.old,
            int(follow.overlap_ends.timestamp()),
            int(follow.made.timestamp()),
            follow.way.value,
        )

    def plan_visit(self: Does, person: str, day: datetime) -> None:
        """See the port."""
        self._do(
            "INSERT INTO visit SELECT id, ? FROM person WHERE folded = ? ON CONFLICT DO NOTHING",
            int(day.timestamp()),
            person.casefold(),
        )

    def drop_visit(self: Does, person: str, day: datetime) -> None:
        """See the port."""
        self._do(
            "DELETE FROM visit WHERE day = ? AND person = (SELECT id FROM person WHERE folded = ?)",
            int(day.timestamp()),
            person.casefold(),
        )
