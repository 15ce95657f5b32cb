"""The part of the register that is about the gateway: reading it, and changing it."""

from __future__ import annotations

import sqlite3
from collections.abc import Sequence
from datetime import datetime
from typing import TYPE_CHECKING, Any, Protocol

from hearthkey.adapters.register import rows

if TYPE_CHECKING:  # loaded by `_values` alone: a list of devices does without all of it
    from hearthkey.core.in_force import GatewayNote
    from hearthkey.core.pack_options import ExtraSecret, PackOptions
    from hearthkey.core.revocation import SignedList
    from hearthkey.core.spares import SignedSpare, SpareList
    from hearthkey.core.target import Target
    from hearthkey.core.templates import Template

_NOTE = (
    *("looked", "set_id", "list_number", "list_until", "gateway_serial", "gateway_until", "made_of", "clock_off"),
    *("delivered", "reload_said", "failed", "failure"),
)
_MOMENTS = frozenset({"looked", "list_until", "gateway_until", "delivered", "failed"})
_READ_NOTE = f"SELECT {', '.join(_NOTE)} FROM gateway_note"  # noqa: S608 - the names are those of our own fields
_WRITE_NOTE = f"INSERT INTO gateway_note (id, {', '.join(_NOTE)}) VALUES (1{', ?' * len(_NOTE)})"  # noqa: S608 - as above
_SPARES = "SELECT scope, subject, serials, base, number FROM spare_list"


def _seconds(moment: datetime | None) -> int | None:
    return None if moment is None else int(moment.timestamp())


class Asks(Protocol):
    """What `GatewayReads` stands on."""

    def _one(self, query: str, *values: object) -> tuple[object, ...] | None: ...
    def _all(self, query: str) -> list[tuple[object, ...]]: ...

    def with_signers(self, row: tuple[object, ...] | None) -> SignedList | None:
        """See `SuccessionReads`."""


class GatewayReads:
    """The reading half of the port `services.gateway_ports.GatewayRegister`."""

    def target(self: Asks) -> Target | None:
        """See the port."""
        row = self._one("SELECT way, folder, host, port, user, reload, host_key FROM target")
        if row is None:
            return None
        from hearthkey.adapters.register import gateway_values  # noqa: PLC0415 - see there

        return gateway_values.target(row)

    def gateway_note(self: Asks) -> GatewayNote:
        """See the port."""
        from hearthkey.adapters.register import gateway_values  # noqa: PLC0415 - see there

        row = self._one(_READ_NOTE)
        return gateway_values.note((), ()) if row is None else gateway_values.note(_NOTE, row)

    def seen_ends(self: Asks) -> tuple[datetime | None, datetime | None]:
        """See the port."""
        row = self._one("SELECT list_until, gateway_until FROM gateway_note")
        ends = (None, None) if row is None else row
        first, second = (None if one is None else rows.moment(int(str(one))) for one in ends)
        return first, second

    def spare_lists(self: Asks) -> list[SpareList]:
        """See the port."""
        from hearthkey.adapters.register import gateway_values  # noqa: PLC0415 - see there

        return [gateway_values.spare(row) for row in self._all(f"{_SPARES} ORDER BY number")]

    def used_spares(self: Asks) -> list[SpareList]:
        """See the port."""
        from hearthkey.adapters.register import gateway_values  # noqa: PLC0415 - see there

        return [gateway_values.spare(row) for row in self._all(f"{_SPARES} WHERE used IS NOT NULL ORDER BY number")]

    def list_numbered(self: Asks, number: int) -> SignedList | None:
        """See the port."""
        return self.with_signers(
            self._one("SELECT number, der, this_update, next_update FROM revocation_list WHERE number = ?", number)
        )

    def signed_spare(self: Asks, number: int) -> SignedList | None:
        """See the port."""
        return self.with_signers(
            self._one("SELECT number, der, this_update, next_update FROM spare_list WHERE number = ?", number)
        )

    def templates(self: Asks) -> list[Template]:
        """See the port."""
        from hearthkey.adapters.register import gateway_values  # noqa: PLC0415 - see there

        found = self._all("SELECT name, made_for, file_stem, ending, text FROM template ORDER BY name")
        return [gateway_values.template(row) for row in found]

    def pack_options(self: Asks) -> PackOptions:
        """See the port."""
        from hearthkey.adapters.register import gateway_values  # noqa: PLC0415 - see there

        row = self._one("SELECT value FROM setting WHERE name = 'pack'")
        return gateway_values.options(None if row is None else str(row[0]))

    def gateway_archive(self: Asks, serial: str) -> bytes | None:
        """See the port."""
        row = self._one("SELECT der FROM gateway_archive WHERE serial = ?", serial)
        return None if row is None or not isinstance(row[0], bytes) else row[0]

    def extra_secrets(self: Asks) -> dict[str, ExtraSecret]:
        """See the port."""
        from hearthkey.adapters.register import gateway_values  # noqa: PLC0415 - see there

        found: list[tuple[Any, ...]] = self._all("SELECT owner, made, known_outside FROM extra_secret ORDER BY owner")
        return {owner: gateway_values.extra_secret(made, known) for owner, made, known in found}

    def ticks(self: Asks, serial: str) -> frozenset[str]:
        """See the port."""
        rows = self._all("SELECT serial, step FROM tick")
        return frozenset(str(step) for of, step in rows if of == serial)


class Does(Protocol):
    """What `GatewayWrites` stands on."""

    def _do(self, statement: str, *values: object) -> sqlite3.Cursor: ...

    def raise_mark(self, name: str, value: int) -> None:
        """See the port."""

    def keep_signers(self, signed: SignedList) -> None:
        """See `SuccessionWrites`."""

    def drop_unused_signers(self) -> None:
        """See `SuccessionWrites`."""


class GatewayWrites:
    """The writing half of the port, as part of a transaction."""

    def set_target(self: Does, target: Target | None) -> None:
        """See the port."""
        self._do("DELETE FROM target")
        self._do("DELETE FROM gateway_note")
        if target is not None:
            self._do(
                "INSERT INTO target VALUES (1, ?, ?, ?, ?, ?, ?, ?)",
                target.by.value,
                target.folder,
                target.host,
                target.port,
                target.user,
                target.reload,
                target.host_key,
            )

    def note_gateway(self: Does, note: GatewayNote) -> None:
        """See the port."""
        values = [
            _seconds(getattr(note, name)) if name in _MOMENTS else getattr(note, name)
            for name in _NOTE
        ]  # fmt: skip
        self._do("DELETE FROM gateway_note")
        self._do(_WRITE_NOTE, *values)

    def replace_spares(self: Does, spares: Sequence[SignedSpare]) -> None:
        """See the port."""
        self._do("DELETE FROM spare_list")
        self.drop_unused_signers()
        for one in spares:
            about, signed = one.about, one.signed
            self._do(
                "INSERT INTO spare_list VALUES (?, ?, ?, ?, ?, ?, ?, ?, NULL)",
                about.number,
                about.base,
                about.scope.value,
                about.subject,
                " ".join(sorted(about.serials)),
                signed.der,
                _seconds(signed.this_update),
                _seconds(signed.next_update),
            )
            self.keep_signers(signed)
        self.raise_mark("list", max((one.about.number for one in spares), default=0))

    def use_spare(self: Does, number: int, now: datetime) -> None:
        """See the port."""
        self._do("UPDATE spare_list SET used = ? WHERE number = ?", _seconds(now), number)

    def keep_template(self: Does, template: Template) -> None:
        """See the port."""
        self._do(
            "INSERT OR REPLACE INTO template VALUES (?, ?, ?, ?, ?)",
            template.name,
            template.of,
            template.file_stem,
            template.ending,
            template.text,
        )

    def drop_template(self: Does, name: str) -> None:
        """See the port."""
        self._do("DELETE FROM template WHERE name = ?", name)

    def set_pack_options(self: Does, options: PackOptions) -> None:
        """See the port."""
        from hearthkey.adapters.register import gateway_values  # noqa: PLC0415 - see there

        self._do("INSERT OR REPLACE INTO setting VALUES ('pack', ?)", gateway_values.options_text(options))

    def keep_gateway_archive(self: Does, serial: str, der: bytes) -> None:
        """See the port."""
        self._do("INSERT OR REPLACE INTO gateway_archive VALUES (?, ?)", serial, der)

    def keep_extra_secret(self: Does, owner: str, now: datetime) -> None:
        """See the port."""
        self._do("INSERT OR REPLACE INTO extra_secret VALUES (?, ?, NULL)", owner, _seconds(now))

    def extra_secret_known(self: Does, owner: str, now: datetime) -> None:
        """See the port."""
        self._do("UPDATE extra_secret SET known_outside = ? WHERE owner = ?", _seconds(now), owner)

    def adopt(self: Does, serial: str, not_after: datetime) -> None:
        """See the port."""
        self._do("INSERT INTO serial VALUES (?, ?) ON CONFLICT DO NOTHING", serial, _seconds(not_after))

    def tick(self: Does, serial: str, step: str, now: datetime | None) -> None:
        """See the port."""
        if now is None:
            self._do("DELETE FROM tick WHERE serial = ? AND step = ?", serial, step)
        else:
            self._do("INSERT OR REPLACE INTO tick VALUES (?, ?, ?)", serial, step, _seconds(now))
