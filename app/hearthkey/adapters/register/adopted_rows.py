"""The part of the register that is about passes made elsewhere."""

from __future__ import annotations

import sqlite3
from collections.abc import Mapping
from datetime import datetime
from typing import TYPE_CHECKING, Protocol

from hearthkey.adapters.register import rows
from hearthkey.core.errors import Bug

if TYPE_CHECKING:  # a list of devices does without
    from hearthkey.core.adopted import Adopted, ToBeNamed, Whose
    from hearthkey.services.ports import NewPass


KNOW_PERSON = (
    "INSERT INTO person (name, folded) VALUES (?, ?) ON CONFLICT (folded) DO UPDATE SET name = excluded.name "
    "WHERE id NOT IN (SELECT person FROM device)"
)
"""A name that nobody has, because it was given by a slip and taken back, may be spelled otherwise."""


class Opened(Protocol):
    """What `AdoptReads` stands on."""

    def _all(self, query: str) -> list[tuple[object, ...]]: ...


class AdoptReads:
    """The reading half of the port `services.adopt_ports.AdoptRegister`."""

    def to_be_named(self: Opened) -> list[ToBeNamed]:
        """See the port."""
        from hearthkey.core.adopted import Adopted, ToBeNamed  # noqa: PLC0415 - a list of devices does without

        found = self._all(
            "SELECT adopted.serial, adopted.subject, adopted.file, device.label, pass.not_after FROM adopted "
            "JOIN pass ON pass.serial = adopted.serial JOIN device ON device.id = pass.device "
            "WHERE adopted.named IS NULL ORDER BY device.label, adopted.serial"
        )
        return [
            ToBeNamed(Adopted(str(serial), str(subject), str(file)), str(label), rows.moment(int(str(ends))))
            for serial, subject, file, label, ends in found
        ]

    def whose(self: Opened) -> Mapping[str, Whose]:
        """See the port."""
        from hearthkey.core.adopted import Whose  # noqa: PLC0415 - a list of devices does without

        found = self._all(
            "SELECT adopted.serial, person.name, device.label, adopted.named FROM adopted "
            "JOIN pass ON pass.serial = adopted.serial JOIN device ON device.id = pass.device "
            "JOIN person ON person.id = device.person"
        )
        return {
            str(serial): Whose(str(person), str(label), None if named is None else rows.moment(int(str(named))))
            for serial, person, label, named in found
        }


class Does(Protocol):
    """What `AdoptWrites` stands on."""

    def _do(self, statement: str, *values: object) -> sqlite3.Cursor: ...
    def add_pass(self, new: NewPass, now: datetime) -> None:
        """Write a pass."""

    def hand_over(self, serial: str, now: datetime) -> None:
        """Erase the key of a pass and note when it left."""


class AdoptWrites:
    """The writing half of the port, as part of a transaction."""

    def add_adopted(self: Does, new: NewPass, adopted: Adopted, now: datetime) -> None:
        """See the port."""
        self.add_pass(new, now)
        self.hand_over(adopted.serial, now)
        self._do(
            "INSERT INTO adopted (serial, subject, file, adopted) VALUES (?, ?, ?, ?)",
            adopted.serial,
            adopted.subject,
            adopted.file,
            int(now.timestamp()),
        )

    def note_listed(self: Does, serial: str, listed: int) -> None:
        """See the port."""
        self._do("INSERT INTO listed_reason VALUES (?, ?)", serial, listed)

    def name_device(self: Does, serial: str, whose: Whose) -> None:
        """See the port."""
        folded = whose.person.casefold()
        self._do(KNOW_PERSON, whose.person, folded)
        changed = self._do(
            "UPDATE device SET person = (SELECT id FROM person WHERE folded = ?), label = ?, folded = ? "
            "WHERE id = (SELECT device FROM pass WHERE serial = ?)",
            folded,
            whose.device,
            whose.device.casefold(),
            serial,
        )
        named = self._do(
            "UPDATE adopted SET named = ? WHERE serial IN (SELECT other.serial FROM pass AS other "
            "JOIN pass AS one ON one.device = other.device WHERE one.serial = ?)",
            None if whose.named is None else int(whose.named.timestamp()),
            serial,
        )
        if changed.rowcount != 1 or named.rowcount < 1:
            raise Bug("pass-not-waiting", serial=serial)
