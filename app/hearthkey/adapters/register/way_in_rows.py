"""The part of the register that is about checks of the way in."""

from __future__ import annotations

import json
import sqlite3
from typing import TYPE_CHECKING, Protocol

from hearthkey.adapters.register import rows

if TYPE_CHECKING:  # a list of devices does without
    from hearthkey.core.reach.chain import Chain, LastChecks

_NEWEST = "SELECT host, made, links FROM way_in_check WHERE side = ? ORDER BY made DESC, id DESC LIMIT 1"


class Asks(Protocol):
    """What `WayInReads` stands on."""

    def _one(self, query: str, *values: object) -> tuple[object, ...] | None: ...


class WayInReads:
    """The reading half of the port `services.reach_ports.CheckRegister`."""

    def last_checks(self: Asks) -> LastChecks:
        """See the port."""
        from hearthkey.core.reach.chain import LastChecks, Side  # noqa: PLC0415 - a list of devices does without

        found = {side: self._one(_NEWEST, side.value) for side in (Side.INSIDE, Side.OUTSIDE)}
        chains = {side: None if row is None else _chain(row, side.value) for side, row in found.items()}
        return LastChecks(chains[Side.INSIDE], chains[Side.OUTSIDE])


class Does(Protocol):
    """What `WayInWrites` stands on."""

    def _do(self, statement: str, *values: object) -> sqlite3.Cursor: ...


class WayInWrites:
    """The writing half of the port, as part of a transaction."""

    def keep_check(self: Does, chain: Chain) -> None:
        """See the port."""
        links = [[one.place, one.verdict, one.finding, dict(one.facts)] for one in chain.links]
        self._do(
            "INSERT INTO way_in_check (made, side, host, links) VALUES (?, ?, ?, ?)",
            int(chain.made.timestamp()),
            chain.side.value,
            chain.host,
            json.dumps(links, ensure_ascii=False),
        )


def _chain(row: tuple[object, ...], side: str) -> Chain:
    from hearthkey.core.reach.chain import Chain, Link, Place, Side, Verdict  # noqa: PLC0415 - as in `last_checks`

    host, made, kept = row
    links = tuple(
        Link(
            Place(place),
            Verdict(verdict),
            finding,
            {name: tuple(value) if isinstance(value, list) else value for name, value in facts.items()},
        )
        for place, verdict, finding, facts in json.loads(str(kept))
    )
    return Chain(str(host), rows.moment(int(str(made))), Side(side), links)
