"""The part of the register that is about moving: former hosts of the gateway, and the list to tick."""

from __future__ import annotations

import json
import sqlite3
from collections.abc import Iterable
from typing import TYPE_CHECKING, Protocol

from hearthkey.adapters.register.rows import moment
from hearthkey.core.household import FormerHost
from hearthkey.core.network import subnet

if TYPE_CHECKING:  # a list of devices does without
    from hearthkey.core.moving import Move

_FORMER, _MOVE = "former-hosts", "move"


class Asks(Protocol):
    """What `MovingReads` stands on."""

    def _one(self, query: str, *values: object) -> tuple[object, ...] | None: ...


def _kept(row: tuple[object, ...] | None) -> object:
    return None if row is None else json.loads(str(row[0]))


class MovingReads:
    """The port `services.moving_ports.MovingRegister`."""

    def former_hosts(self: Asks) -> tuple[FormerHost, ...]:
        """See the port."""
        kept = _kept(self._one("SELECT value FROM setting WHERE name = ?", _FORMER))
        return tuple(FormerHost(host, moment(since)) for host, since in kept) if isinstance(kept, list) else ()

    def move(self: Asks) -> Move | None:
        """See the port."""
        from hearthkey.core.moving import Move  # noqa: PLC0415 - see above
        from hearthkey.core.moving_steps import Kind, Task  # noqa: PLC0415 - see above

        kept = _kept(self._one("SELECT value FROM setting WHERE name = ?", _MOVE))
        if not isinstance(kept, dict):
            return None
        return Move(
            kinds=frozenset(map(Kind, kept["kinds"])),
            begun=moment(kept["begun"]),
            old_host=kept["old_host"],
            new_host=kept["new_host"],
            old_home=tuple(subnet(one, "home subnet") for one in kept["old_home"]),
            new_home=tuple(subnet(one, "home subnet") for one in kept["new_home"]),
            ticked={Task(task): moment(at) for task, at in kept["ticked"].items()},
        )


class Does(Protocol):
    """What `MovingWrites` stands on."""

    def _do(self, statement: str, *values: object) -> sqlite3.Cursor: ...


class MovingWrites:
    """The port `services.moving_ports.MovingChange`."""

    def keep_former_hosts(self: Does, former: Iterable[FormerHost]) -> None:
        """See the port."""
        kept = [[one.host, int(one.since.timestamp())] for one in former]
        self._do("INSERT OR REPLACE INTO setting VALUES (?, ?)", _FORMER, json.dumps(kept))

    def keep_move(self: Does, move: Move | None) -> None:
        """See the port."""
        kept = (
            None
            if move is None
            else {
                "kinds": sorted(move.kinds),
                "begun": int(move.begun.timestamp()),
                "old_host": move.old_host,
                "new_host": move.new_host,
                "old_home": [str(one) for one in move.old_home],
                "new_home": [str(one) for one in move.new_home],
                "ticked": {task.value: int(at.timestamp()) for task, at in move.ticked.items()},
            }
        )
        self._do("INSERT OR REPLACE INTO setting VALUES (?, ?)", _MOVE, json.dumps(kept))
