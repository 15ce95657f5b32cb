"""The proofs of a register, each read once: they are never altered or deleted, so only new ones are asked for."""

from __future__ import annotations

import sqlite3
from collections.abc import Mapping
from datetime import UTC, datetime
from itertools import groupby
from operator import itemgetter

from hearthkey.core.proofs import Proof, Way

_PROOFS = "SELECT serial, at, way, address, id FROM proof WHERE id > ? ORDER BY serial, at, id"
_WAYS = {way.value: way for way in Way}


class KnownProofs:
    """Every proof that was read so far, by the serial that it is about."""

    def __init__(self) -> None:
        self._known: dict[str, tuple[Proof, ...]] = {}
        self._last = 0

    def read(self, connection: sqlite3.Connection) -> Mapping[str, tuple[Proof, ...]]:
        """All proofs there are, for each pass the first of them first."""
        rows = connection.execute(_PROOFS, (self._last,)).fetchall()
        if not rows:
            return self._known
        known = dict(self._known) if connection.in_transaction else self._known
        for serial, new in groupby(rows, itemgetter(0)):
            found = tuple(
                [
                    Proof(datetime.fromtimestamp(at, UTC), _WAYS.get(way, Way.OTHER), where)
                    for _, at, way, where, _ in new
                ]
            )
            before = known.get(serial)
            known[serial] = found if before is None else tuple(sorted((*before, *found), key=itemgetter(0)))
        if not connection.in_transaction:  # what is not committed may never have happened
            self._last = max(row[4] for row in rows)
        return known
