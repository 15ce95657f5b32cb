"""The register: the household in one SQLite file."""

from __future__ import annotations

import json
import os
import sqlite3
from collections.abc import Iterable, Iterator
from contextlib import contextmanager
from pathlib import Path

from hearthkey.adapters.register import rows
from hearthkey.adapters.register.adopted_rows import AdoptReads
from hearthkey.adapters.register.change import SqliteChange
from hearthkey.adapters.register.choice_rows import ChoiceReads
from hearthkey.adapters.register.copy_rows import CopyReads
from hearthkey.adapters.register.deputy_rows import DeputyReads
from hearthkey.adapters.register.gateway_rows import GatewayReads
from hearthkey.adapters.register.keepsake_rows import KeepsakeReads
from hearthkey.adapters.register.migrations import copies_of, migrate, newest, version_of
from hearthkey.adapters.register.moving_rows import MovingReads
from hearthkey.adapters.register.proof_rows import KnownProofs
from hearthkey.adapters.register.renewal_rows import RenewalReads
from hearthkey.adapters.register.sealed_rows import SealedReads
from hearthkey.adapters.register.sheet_rows import SheetReads
from hearthkey.adapters.register.succession_rows import SuccessionReads
from hearthkey.adapters.register.way_in_rows import WayInReads
from hearthkey.core.diary import DiaryEntry
from hearthkey.core.errors import Refused, Unavailable
from hearthkey.core.household import Gateway, Household
from hearthkey.core.network import subnet
from hearthkey.core.passes import Pass
from hearthkey.core.revocation import Entry, SignedList

FILE_NAME = "register.db"

_FULL, _READ_ONLY, _CANNOT_OPEN, _CORRUPT, _NOT_A_DATABASE, _BUSY, _IO = 13, 8, 14, 11, 26, 5, 10
_NO_ROOM_FOR_SHARED_MEMORY = 10 | 19 << 8
"""SQLITE_IOERR_SHMSIZE: the file beside the write-ahead log could not grow."""
_CODES = {
    _NO_ROOM_FOR_SHARED_MEMORY: "disk-full",
    _FULL: "disk-full",
    _READ_ONLY: "folder-read-only",
    _CANNOT_OPEN: "folder-read-only",
    _CORRUPT: "register-damaged",
    _NOT_A_DATABASE: "register-damaged",
    _BUSY: "register-busy",
    _IO: "register-unreadable",
}

_SINCE = "SELECT verb FROM diary WHERE number > ? ORDER BY number"


class SqliteRegister(
    AdoptReads,
    GatewayReads,
    MovingReads,
    ChoiceReads,
    CopyReads,
    SealedReads,
    SheetReads,
    RenewalReads,
    SuccessionReads,
    DeputyReads,
    KeepsakeReads,
    WayInReads,
):
    """The port `services.renewal_ports.RenewalRegister` over SQLite.

    Write-ahead log, synchronous=FULL, foreign keys, secure_delete: what is committed survives a
    crash of the machine, and what is erased is overwritten in the file.
    """

    def __init__(self, path: Path, *, read_only: bool = False) -> None:
        """Open the file; a missing one is made unless `read_only`.

        Raises:
            Unavailable: see `services.ports.Register`, and register-newer.
        """
        self.path = path
        self.read_only = read_only
        self._proofs = KnownProofs()
        with _told(path):
            self._connection = self._open()

    def _open(self) -> sqlite3.Connection:
        if self.read_only and not self.path.exists():
            connection = sqlite3.connect(":memory:", isolation_level=None)
            migrate(connection, self.path)
            return connection
        if not self.read_only and not self.path.exists():
            os.close(os.open(self.path, os.O_CREAT | os.O_WRONLY, 0o600))
        address = f"{self.path.absolute().as_uri()}?mode={'ro' if self.read_only else 'rw'}"
        connection = sqlite3.connect(address, uri=True, isolation_level=None, timeout=5)
        try:
            connection.execute("PRAGMA foreign_keys = ON")
            if self.read_only:
                if version_of(connection) != newest():
                    raise Unavailable("register-newer", have=version_of(connection), known=newest())
                return connection
            connection.execute("PRAGMA secure_delete = ON")
            connection.execute("PRAGMA synchronous = FULL")
            connection.execute("PRAGMA journal_mode = WAL")
            migrate(connection, self.path)
        except BaseException:
            connection.close()
            raise
        return connection

    def close(self) -> None:
        """Close the file."""
        self._connection.close()

    def _one(self, query: str, *values: object) -> tuple[object, ...] | None:
        with _told(self.path):
            row: tuple[object, ...] | None = self._connection.execute(query, values).fetchone()
            return row

    def _all(self, query: str) -> list[tuple[object, ...]]:
        with _told(self.path):
            return self._connection.execute(query).fetchall()

    def household(self) -> Household | None:
        """See the port."""
        row = self._one(rows.HOUSEHOLD)
        if row is None:
            return None
        name, host, suffix, home, tunnel_subnet, dns, tunnel, practice = row
        return Household(
            name=str(name),
            gateway_host=str(host),
            identity_suffix=str(suffix),
            home_subnets=tuple(subnet(one, "home subnet") for one in json.loads(str(home))),
            tunnel_subnet=subnet(str(tunnel_subnet), "tunnel subnet"),
            dns_servers=tuple(json.loads(str(dns))),
            tunnel=str(tunnel),
            practice=bool(practice),
        )

    def gateway(self) -> Gateway | None:
        """See the port."""
        row = self._one("SELECT host, serial, certificate, sealed_key, not_after FROM gateway ORDER BY id DESC LIMIT 1")
        return None if row is None else rows.gateway(row)

    def passes(self) -> list[Pass]:
        """See the port."""
        with _told(self.path):
            return rows.passes(self._connection.execute(rows.PASSES), self._proofs.read(self._connection))

    def certificate(self, serial: str) -> bytes:
        """See the port."""
        row = self._one("SELECT der FROM certificate WHERE serial = ?", serial)
        if row is None:
            raise Refused("pass-unknown", text=serial)
        return rows.blob(row[0])

    def sealed(self, serial: str) -> bytes | None:
        """See the port."""
        row = self._one("SELECT sealed FROM certificate WHERE serial = ?", serial)
        return None if row is None or row[0] is None else rows.blob(row[0])

    def identities(self) -> frozenset[str]:
        """See the port."""
        return frozenset(str(row[0]) for row in self._all("SELECT identity FROM device"))

    def entries(self) -> list[Entry]:
        """See the port."""
        return rows.entries(self._all(rows.ENTRIES))

    def newest_list(self) -> SignedList | None:
        """See the port."""
        row = self._one(f"{rows.LISTS} ORDER BY number DESC LIMIT 1")
        return self.with_signers(row)

    def lists(self) -> list[SignedList]:
        """See the port."""
        found = [self.with_signers(row) for row in self._all(f"{rows.LISTS} ORDER BY number")]
        return [one for one in found if one is not None]

    def list_high_water(self) -> int:
        """See the port."""
        return self._mark("list")

    def diary(self) -> list[DiaryEntry]:
        """See the port."""
        return [rows.diary_entry(row) for row in self._all(f"{rows.DIARY} ORDER BY number")]

    def last_entry(self) -> DiaryEntry | None:
        """See the port."""
        row = self._one(f"{rows.DIARY} ORDER BY number DESC LIMIT 1")
        return None if row is None else rows.diary_entry(row)

    def verbs_since(self, number: int) -> list[str]:
        """See the port."""
        return [str(row[0]) for row in self._all(_SINCE.replace("?", str(int(number))))]

    def diary_written(self) -> int:
        """See the port."""
        return self._mark("diary")

    def _mark(self, name: str) -> int:
        row = self._one("SELECT value FROM mark WHERE name = ?", name)
        return 0 if row is None else int(str(row[0]))

    def loose_secrets(self) -> list[tuple[str, str]]:
        """See the port."""
        return [(str(name), str(place)) for name, place in self._all("SELECT name, place FROM loose_secret")]

    def expect_secrets(self, names: Iterable[str], place: str) -> None:
        """See the port."""
        with self.change() as change:
            for name in names:
                change.loosen_secret(name, place)

    def forget_loose(self, name: str) -> None:
        """See the port."""
        with self.change() as change:
            change.settle_secret(name)

    @contextmanager
    def change(self) -> Iterator[SqliteChange]:
        """See the port."""
        if self.read_only:
            raise Unavailable("second-copy")
        with _told(self.path):
            self._connection.execute("BEGIN IMMEDIATE")
            try:
                yield SqliteChange(self._connection)
                self._connection.execute("COMMIT")
            except BaseException:
                if self._connection.in_transaction:
                    self._connection.execute("ROLLBACK")
                raise

    def scrub(self) -> bool:
        """See the port."""
        with _told(self.path):
            busy, _in_log, _moved = self._connection.execute("PRAGMA wal_checkpoint(TRUNCATE)").fetchone()
            for copy in copies_of(self.path):
                copy.unlink(missing_ok=True)
        return not busy


@contextmanager
def _told(path: Path) -> Iterator[None]:
    """Turn what SQLite and the disk say into an error with a sentence."""
    try:
        yield
    except sqlite3.IntegrityError as error:
        raise Refused("already-used", seen=str(error)) from error
    except sqlite3.Error as error:
        code = getattr(error, "sqlite_errorcode", None)
        kind = _CODES.get(code, _CODES.get(code & 0xFF)) if isinstance(code, int) else None
        raise Unavailable(kind or "register-unreadable", path=str(path.parent), seen=str(error)) from error
    except OSError as error:
        raise Unavailable("folder-read-only", path=str(path.parent), seen=str(error)) from error
