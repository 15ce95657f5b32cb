"""What sealed copies need from outside: the register's part of them, a scratch place, and the lock."""

from __future__ import annotations

from contextlib import AbstractContextManager
from datetime import datetime
from pathlib import Path
from typing import Protocol

from hearthkey.core.deputy import SetNote
from hearthkey.core.sealed import CopyNote
from hearthkey.core.secret import Secret
from hearthkey.pki.copy_lock import Lock, Opened
from hearthkey.pki.deputy_lock import Passphrases
from hearthkey.services.gateway_ports import GatewayChange, GatewayRegister
from hearthkey.services.keepsake_ports import KeepsakeChange, KeepsakeRegister


class SealedChange(GatewayChange, KeepsakeChange, Protocol):
    """A transaction that may change what is known of sealed copies as well."""

    def keep_copy_lock(self, public: str, locked: str, *, own: bool) -> None:
        """Keep what closes copies from now on.

        Args:
            own: it lies under a passphrase of the copies' own, and not under the household's.
        """

    def place_secrets(self, place: str) -> None:
        """The household keeps its secrets in the vault of that place from now on."""

    def note_copy(self, note: CopyNote) -> None:
        """Note a copy that was made."""

    def copy_tried(self, sha256: str, now: datetime) -> None:
        """Note that a copy was opened and found whole; one that is not noted here changes nothing."""

    def keep_deputy_set(self, made: SetNote) -> None:
        """Keep a set of parts; from now on it is the newest."""

    def deputy_part_tried(self, mark: str, now: datetime) -> None:
        """Note that a part was seen to be right."""


class SealedRegister(GatewayRegister, KeepsakeRegister, Protocol):
    """The household's file, sealed copies with it."""

    def copy_lock(self) -> tuple[str, str] | None:
        """The public and the locked private half of what closes copies, or None before the first passphrase."""

    def sealed_copies(self) -> list[CopyNote]:
        """Every copy that was noted, oldest first."""

    def deputy_set(self) -> SetNote | None:
        """The newest set of parts for a deputy, or None."""

    def deputy_sets(self) -> list[str]:
        """The names of all sets that were ever made, oldest first."""

    def schema_version(self) -> int:
        """The version of the file's schema."""

    def snapshot(self) -> bytes:
        """The whole register as it is now, as an SQLite file, without the keys of waiting passes."""

    def become(self, source: Path, *, list_mark: int) -> None:
        """Take over another register whole: all of it or nothing, also when the machine stops.

        Args:
            source: an SQLite file of the newest schema.
            list_mark: the highest list number that counts as given.
        """

    def change(self) -> AbstractContextManager[SealedChange]:
        """Begin a transaction."""


class Scratch(Protocol):
    """Opens a register from its bytes in a place that is gone afterwards."""

    def __call__(self, data: bytes) -> AbstractContextManager[tuple[SealedRegister, Path]]:
        """Open it; an older schema is brought up to date first.

        Raises:
            Unavailable: register-newer, register-damaged, disk-full.
        """


class CopyLocks(Protocol):
    """Makes and opens what closes copies; slow on purpose. `pki.copy_lock` is one."""

    def make(self, passphrase: Secret[str], mark_key: Secret[str]) -> Lock:
        """Draw a key pair."""

    def unlock(self, locked: str, passphrase: Secret[str]) -> Opened:
        """Open the private half.

        Raises:
            Refused: wrong-passphrase, copy-damaged, guard-too-heavy.
        """


class DeputyLocks(Protocol):
    """Locks and opens what the deputy's parts stand for; slow on purpose. `pki.deputy_lock` is one."""

    def lock(self, opens: Passphrases, secret: Secret[bytes]) -> str:
        """Lock passphrases under what was split."""

    def unlock(self, text: str, secret: Secret[bytes]) -> Passphrases:
        """Open them.

        Raises:
            Refused: deputy-lock-damaged, guard-too-heavy.
        """
