"""One transaction on the register, seen from inside."""

from __future__ import annotations

import json
import sqlite3
from datetime import datetime
from typing import TYPE_CHECKING

from hearthkey.adapters.register.adopted_rows import KNOW_PERSON, AdoptWrites
from hearthkey.adapters.register.choice_rows import ChoiceWrites
from hearthkey.adapters.register.copy_rows import CopyWrites
from hearthkey.adapters.register.deputy_rows import DeputyWrites
from hearthkey.adapters.register.gateway_rows import GatewayWrites
from hearthkey.adapters.register.keepsake_rows import KeepsakeWrites
from hearthkey.adapters.register.moving_rows import MovingWrites
from hearthkey.adapters.register.renewal_rows import RenewalWrites
from hearthkey.adapters.register.sealed_rows import SealedWrites
from hearthkey.adapters.register.sheet_rows import SheetWrites
from hearthkey.adapters.register.succession_rows import SuccessionWrites
from hearthkey.adapters.register.way_in_rows import WayInWrites
from hearthkey.core.diary import DiaryEntry
from hearthkey.core.errors import Bug
from hearthkey.core.household import Authority, Gateway, Household
from hearthkey.core.passes import Pass
from hearthkey.core.proofs import Proof
from hearthkey.core.revocation import Reason, SignedList

if TYPE_CHECKING:  # who only reads the register needs no ports, and making them takes 1 ms of a start
    from hearthkey.services.ports import NewPass


def _seconds(moment: datetime) -> int:
    return int(moment.timestamp())


def _folded(name: str) -> str:
    """Names that look alike but for case are one name."""
    return name.casefold()


def _settings(household: Household) -> tuple[str, ...]:
    """The columns of a household that can change, in the order of its table."""
    return (
        household.name,
        household.gateway_host,
        household.identity_suffix,
        json.dumps([str(one) for one in household.home_subnets]),
        str(household.tunnel_subnet),
        json.dumps(household.dns_servers),
        household.tunnel,
    )


class SqliteChange(
    AdoptWrites,
    GatewayWrites,
    MovingWrites,
    ChoiceWrites,
    CopyWrites,
    SealedWrites,
    SheetWrites,
    RenewalWrites,
    SuccessionWrites,
    KeepsakeWrites,
    DeputyWrites,
    WayInWrites,
):
    """The port `services.renewal_ports.RenewalChange`; begun and ended by the register."""

    def __init__(self, connection: sqlite3.Connection) -> None:
        self._connection = connection

    def _do(self, statement: str, *values: object) -> sqlite3.Cursor:
        return self._connection.execute(statement, values)

    def found(self, household: Household, authority: Authority, subject: str, now: datetime) -> None:
        """See the port."""
        self._do(
            "INSERT INTO household VALUES (1, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
            *_settings(household),
            int(household.practice),
            _seconds(now),
        )
        self.add_authority(authority, subject)

    def settle(self, household: Household) -> None:
        """See the port."""
        changed = self._do(
            "UPDATE household SET name = ?, gateway_host = ?, identity_suffix = ?, home_subnets = ?, "
            "tunnel_subnet = ?, dns_servers = ?, tunnel = ? WHERE practice = ?",
            *_settings(household),
            int(household.practice),
        )
        if changed.rowcount != 1:
            raise Bug("practice-changed")

    def _use_serial(self, serial: str, not_after: datetime) -> None:
        self._do("INSERT INTO serial VALUES (?, ?)", serial, _seconds(not_after))

    def add_gateway(self, gateway: Gateway, now: datetime) -> None:
        """See the port."""
        self._use_serial(gateway.serial, gateway.not_after)
        self._do(
            "INSERT INTO gateway (host, serial, certificate, sealed_key, not_after, made) VALUES (?, ?, ?, ?, ?, ?)",
            gateway.host,
            gateway.serial,
            gateway.certificate,
            gateway.sealed_key,
            _seconds(gateway.not_after),
            _seconds(now),
        )

    def add_pass(self, new: NewPass, now: datetime) -> None:
        """See the port."""
        about = new.about
        self._use_serial(about.serial, about.not_after)
        self._do(
            "INSERT INTO pass (device, serial, key_set, container, guest, not_before, not_after, made) "
            "VALUES (?, ?, ?, ?, ?, ?, ?, ?)",
            self._device(about),
            about.serial,
            about.key_set,
            about.container,
            int(about.guest),
            _seconds(about.not_before),
            _seconds(about.not_after),
            _seconds(now),
        )
        self._do("INSERT INTO certificate VALUES (?, ?, ?)", about.serial, new.certificate, new.sealed)

    def _device(self, about: Pass) -> int:
        self._do(KNOW_PERSON, about.person, _folded(about.person))
        person = self._do("SELECT id FROM person WHERE folded = ?", _folded(about.person)).fetchone()[0]
        known = self._do(
            "SELECT id FROM device WHERE person = ? AND folded = ? AND identity = ?",
            person,
            _folded(about.device),
            about.identity,
        ).fetchone()
        if known is not None:
            return int(known[0])
        made = self._do(
            "INSERT INTO device (person, label, folded, kind, identity) VALUES (?, ?, ?, ?, ?)",
            person,
            about.device,
            _folded(about.device),
            about.kind,
            about.identity,
        )
        return int(made.lastrowid or 0)

    def hand_over(self, serial: str, now: datetime) -> None:
        """See the port."""
        changed = self._do(
            "UPDATE pass SET handed_over = ? WHERE serial = ? AND handed_over IS NULL", _seconds(now), serial
        )
        if changed.rowcount != 1:
            raise Bug("pass-not-waiting", serial=serial)
        self.erase_key(serial)

    def erase_key(self, serial: str) -> None:
        """See the port."""
        self._do("UPDATE certificate SET sealed = NULL WHERE serial = ?", serial)

    def add_proof(self, serial: str, proof: Proof) -> None:
        """See the port."""
        self._do(
            "INSERT INTO proof (serial, at, way, address) VALUES (?, ?, ?, ?)",
            serial,
            _seconds(proof.at),
            proof.way.value,
            proof.address,
        )

    def withdraw(self, serial: str, reason: Reason, since: datetime) -> None:
        """See the port."""
        changed = self._do(
            "UPDATE withdrawal SET reason = ? WHERE serial = ? AND lifted IS NULL AND reason = ?",
            int(reason),
            serial,
            int(Reason.CERTIFICATE_HOLD),
        )
        if changed.rowcount == 0:
            self._do(
                "INSERT INTO withdrawal (serial, reason, since) VALUES (?, ?, ?)", serial, int(reason), _seconds(since)
            )

    def lift(self, serial: str, now: datetime) -> None:
        """See the port."""
        changed = self._do(
            "UPDATE withdrawal SET lifted = ? WHERE serial = ? AND lifted IS NULL AND reason = ?",
            _seconds(now),
            serial,
            int(Reason.CERTIFICATE_HOLD),
        )
        if changed.rowcount != 1:
            raise Bug("pass-not-stopped", serial=serial)

    def add_list(self, signed: SignedList) -> None:
        """See the port."""
        self._do(
            "INSERT INTO revocation_list VALUES (?, ?, ?, ?)",
            signed.number,
            signed.der,
            _seconds(signed.this_update),
            _seconds(signed.next_update),
        )
        self.keep_signers(signed)
        self.raise_mark("list", signed.number)

    def add_diary(self, entry: DiaryEntry) -> None:
        """See the port."""
        self._do(
            "INSERT INTO diary VALUES (?, ?, ?, ?, ?)",
            entry.number,
            _seconds(entry.at),
            entry.verb,
            entry.sentence,
            entry.link,
        )
        if entry.words:
            self._do("INSERT INTO diary_words VALUES (?, ?)", entry.number, entry.words)
        self.raise_mark("diary", entry.number)

    def raise_mark(self, name: str, value: int) -> None:
        """See the port."""
        self._do(
            "INSERT INTO mark VALUES (?, ?) ON CONFLICT (name) DO UPDATE SET value = max(value, excluded.value)",
            name,
            value,
        )

    def settle_secret(self, name: str) -> None:
        """See the port."""
        self._do("DELETE FROM loose_secret WHERE name = ?", name)

    def loosen_secret(self, name: str, place: str) -> None:
        """See the port."""
        self._do("INSERT INTO loose_secret VALUES (?, ?) ON CONFLICT DO NOTHING", name, place)
