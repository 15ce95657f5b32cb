"""Opens a household: tells the states of its keyring apart, and keeps the CA key while unlocked."""

from __future__ import annotations

from datetime import timedelta
from enum import StrEnum

from hearthkey.core.errors import Refused, Unavailable
from hearthkey.core.household import Authority
from hearthkey.core.secret import Secret
from hearthkey.pki import guard, read
from hearthkey.pki.keys import AuthorityKey
from hearthkey.services import secret_names
from hearthkey.services.generations import signing_beside
from hearthkey.services.ports import Clock, Locksmith, Register, Vault

IDLE = timedelta(minutes=10)
"""How long an unlocked household stays so while nobody does anything."""


class Door(StrEnum):
    """What stands between the householder and the CA key.

    Only `NO_HOUSEHOLD` may offer to start anew: no answer is never "no household".
    """

    NO_HOUSEHOLD = "no-household"
    READY = "ready"
    KEYRING_EMPTY = "keyring-empty"
    KEYRING_LOCKED = "keyring-locked"
    KEYRING_SILENT = "keyring-silent"
    KEYRING_ABSENT = "keyring-absent"


_DOORS = {
    "keyring-locked": Door.KEYRING_LOCKED,
    "keyring-silent": Door.KEYRING_SILENT,
    "keyring-absent": Door.KEYRING_ABSENT,
    "keyring-unsafe": Door.KEYRING_ABSENT,
}


def knock(register: Register, vault: Vault) -> Door:
    """Find out which of the states a household is in, without a passphrase.

    Raises:
        Unavailable: keyring-failed, where the keyring answers with an error of its own.
    """
    authority = register.authority()
    if authority is None:
        return Door.NO_HOUSEHOLD
    try:
        kept = vault.get(secret_names.authority_key(authority))
    except Unavailable as error:
        if error.code not in _DOORS:
            raise
        return _DOORS[error.code]
    return Door.READY if kept is not None else Door.KEYRING_EMPTY


def the_authority(register: Register) -> Authority:
    """The CA in charge.

    Raises:
        Refused: no-household.
    """
    authority = register.authority()
    if authority is None:
        raise Refused("no-household")
    return authority


class Keyholder:
    """Has the CA key between unlock and lock, and forgets it after idle time.

    Locking drops every reference that this app has. Python gives no promise about the memory
    behind it; DEVELOPERS.md says so.
    """

    def __init__(self, clock: Clock, *, idle: timedelta = IDLE, locksmith: Locksmith = guard) -> None:
        self._clock = clock
        self._locksmith = locksmith
        self._idle = idle.total_seconds()
        self._key: AuthorityKey | None = None
        self._beside: dict[bytes, AuthorityKey] = {}
        self._until = 0.0

    def lock_after(self, idle: timedelta) -> None:
        """Take another idle time, from the next use on."""
        self._idle = idle.total_seconds()

    @property
    def locked(self) -> bool:
        """Whether the passphrase has to be asked for."""
        if self._key is not None and self._clock.monotonic() >= self._until:
            self.lock()
        return self._key is None

    def lock(self) -> None:
        """Let go of the key."""
        self._key = None
        self._beside.clear()

    def keep(self, key: AuthorityKey, *beside: AuthorityKey) -> None:
        """Hold a key that was just made or opened, and those of the household's other CA while there are two."""
        self._key = key
        self._beside = {one.public_der(): one for one in (key, *beside)} if beside else {}
        self._until = self._clock.monotonic() + self._idle

    def unlock(self, register: Register, vault: Vault, passphrase: Secret[str]) -> None:
        """Open the CA key, and the other CA's while one follows another.

        Raises:
            Refused: no-household, keyring-empty, wrong-passphrase, guard-unreadable, guard-of-another.
            Unavailable: as the vault.
        """
        authority = the_authority(register)
        key = self._open(vault, authority, passphrase)
        if key is None:
            raise Refused("keyring-empty")
        found = [self._open(vault, one, passphrase) for one in signing_beside(register, authority)]
        self.keep(key, *(one for one in found if one is not None))

    def _open(self, vault: Vault, authority: Authority, passphrase: Secret[str]) -> AuthorityKey | None:
        kept = vault.get(secret_names.authority_key(authority))
        if kept is None:
            return None
        key = self._locksmith.open_guard(kept.reveal(), passphrase)
        if key.public_der() != read.public_of(authority.certificate):
            raise Refused("guard-of-another")
        return key

    def key(self) -> AuthorityKey:
        """The CA key, for one signature; each use starts the idle time anew.

        Raises:
            Refused: household-locked.
        """
        if self.locked or self._key is None:
            raise Refused("household-locked")
        self._until = self._clock.monotonic() + self._idle
        return self._key

    def key_of(self, authority: Authority) -> AuthorityKey | None:
        """The key of one of the household's CAs, or None where it is not here.

        Raises:
            Refused: household-locked.
        """
        key, wanted = self.key(), read.public_of(authority.certificate)
        return self._beside.get(wanted, key if key.public_der() == wanted else None)
