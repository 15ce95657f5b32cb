"""The part of the register that is about the choices for configuration profiles."""

from __future__ import annotations

import json
import sqlite3
from typing import TYPE_CHECKING, Protocol

if TYPE_CHECKING:  # a list of devices does without
    from hearthkey.core.connect_choices import ConnectChoices

_NAME = "connect"


class Asks(Protocol):
    """What `ChoiceReads` stands on."""

    def _one(self, query: str, *values: object) -> tuple[object, ...] | None: ...


class ChoiceReads:
    """The port `services.choice_ports.ChoiceRegister`."""

    def connect_choices(self: Asks) -> ConnectChoices:
        """See the port."""
        from hearthkey.core.connect_choices import ConnectChoices  # noqa: PLC0415 - see above

        row = self._one("SELECT value FROM setting WHERE name = ?", _NAME)
        if row is None:
            return ConnectChoices()
        kept = json.loads(str(row[0]))
        return ConnectChoices(bool(kept["by_itself"]), tuple(kept["own_wifi"]), str(kept["signer"]))


class Does(Protocol):
    """What `ChoiceWrites` stands on."""

    def _do(self, statement: str, *values: object) -> sqlite3.Cursor: ...


class ChoiceWrites:
    """The port `services.choice_ports.ChoiceChange`."""

    def keep_connect_choices(self: Does, chosen: ConnectChoices) -> None:
        """See the port."""
        kept = {"by_itself": chosen.by_itself, "own_wifi": list(chosen.own_wifi), "signer": chosen.signer}
        self._do("INSERT OR REPLACE INTO setting VALUES (?, ?)", _NAME, json.dumps(kept, ensure_ascii=False))
