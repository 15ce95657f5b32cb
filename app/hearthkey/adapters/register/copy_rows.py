"""The part of the register that is about copies of bundles."""

from __future__ import annotations

import json
import sqlite3
from collections.abc import Sequence
from datetime import datetime
from typing import TYPE_CHECKING, Any, Protocol

from hearthkey.adapters.register.rows import moment

if TYPE_CHECKING:  # a list of devices does without copies
    from hearthkey.core.copies import Copy

_ALL = "SELECT id, serial, form, way, place, names, made, tidied FROM copy"


class Asks(Protocol):
    """What `CopyReads` stands on."""

    def _all(self, query: str) -> list[tuple[object, ...]]: ...


class CopyReads:
    """The port `services.copy_ports.CopyRegister`."""

    def copies(self: Asks, serials: Sequence[str] | None = None) -> list[Copy]:
        """See the port."""
        wanted = None if serials is None else set(serials)
        found: list[tuple[Any, ...]] = self._all(f"{_ALL} ORDER BY id")
        return [_copy(row) for row in found if wanted is None or row[1] in wanted]

    def copies_gone(self: Asks) -> dict[int, datetime]:
        """See the port."""
        found: list[tuple[Any, ...]] = self._all("SELECT id, tidied FROM copy WHERE tidied IS NOT NULL")
        return {number: moment(tidied) for number, tidied in found}


class Does(Protocol):
    """What `CopyWrites` stands on."""

    def _do(self, statement: str, *values: object) -> sqlite3.Cursor: ...


class CopyWrites:
    """The port `services.copy_ports.CopyChange`, as part of a transaction."""

    def expect_copy(self: Does, copy: Copy) -> int:
        """See the port."""
        made = self._do(
            "INSERT INTO copy (serial, form, way, place, names, made) VALUES (?, ?, ?, ?, ?, ?)",
            copy.serial,
            copy.form,
            copy.way.value,
            copy.place,
            _names(copy, "expected"),
            int(copy.made.timestamp()),
        )
        return int(made.lastrowid or 0)

    def copy_made(self: Does, number: int, copy: Copy) -> None:
        """See the port."""
        self._do(
            "UPDATE copy SET form = ?, place = ?, names = ? WHERE id = ?",
            copy.form,
            copy.place,
            _names(copy, "made"),
            number,
        )

    def copy_never_made(self: Does, number: int) -> None:
        """See the port."""
        self._do("UPDATE copy SET names = json_set(names, '$.came', 'never') WHERE id = ?", number)

    def tidy_copy(self: Does, number: int, now: datetime | None) -> None:
        """See the port."""
        self._do("UPDATE copy SET tidied = ? WHERE id = ?", None if now is None else int(now.timestamp()), number)


def _names(copy: Copy, came: str) -> str:
    files = [f"{one.name}:{one.mark}" for one in copy.files]
    return json.dumps({"came": came, "folder": copy.folder, "files": files}, ensure_ascii=False)


def _copy(row: tuple[Any, ...]) -> Copy:
    from hearthkey.core.copies import Came, Copy, CopyFile, CopyWay  # noqa: PLC0415 - see above

    number, serial, form, way, place, names, made, tidied = row
    told = json.loads(names)
    parts = [one.rpartition(":") for one in told["files"]]
    return Copy(
        serial=serial,
        form=form,
        way=CopyWay(way),
        place=place,
        folder=told["folder"],
        files=tuple(CopyFile(name, mark) for name, _, mark in parts),
        made=moment(made),
        came=Came(told["came"]),
        tidied=None if tidied is None else moment(tidied),
        number=number,
    )
