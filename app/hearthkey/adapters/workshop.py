"""Makes keys, seals them and guards the CA key, in other processes where that is worth it."""

from __future__ import annotations

import os
import signal
from collections.abc import Callable, Iterator, Sequence
from concurrent.futures import ProcessPoolExecutor
from concurrent.futures.process import BrokenProcessPool
from multiprocessing import get_context
from typing import TypeVar

from hearthkey.core.bundle import Credential
from hearthkey.core.errors import Unavailable
from hearthkey.core.keysets import RSA_3072
from hearthkey.core.kinds import STRONG
from hearthkey.core.secret import Secret
from hearthkey.pki import copy_lock, deputy_lock, guard, keys, pkcs12
from hearthkey.pki.copy_lock import Lock, Opened
from hearthkey.pki.deputy_lock import Passphrases
from hearthkey.pki.keys import AuthorityKey
from hearthkey.services.ports import SealJob

WORTH_A_PROCESS = 4
"""Starting a process takes as long as sealing one or two bundles."""

A = TypeVar("A")
B = TypeVar("B")
_Plain = tuple[bytes, bytes, tuple[bytes, ...], str, str]


class Crew:
    """Processes that are kept while a window is open.

    scrypt, RSA keys and PKCS#12 are made by libraries that hold Python's lock, so a thread cannot
    keep the window alive meanwhile. Keys cross to a process through pipes between processes of one
    user, never through a file. None is started before there is work for it.
    """

    def __init__(self) -> None:
        self._pool: ProcessPoolExecutor | None = None

    def each(self, work: Callable[[A], B], about: Sequence[A]) -> Iterator[B]:
        """Do work for each of many, in their order.

        Raises:
            Unavailable: crew-gone, where a process was ended from outside; the next call starts others.
        """
        if self._pool is None:
            self._pool = _pool()
        try:
            yield from self._pool.map(work, about)
        except BrokenProcessPool as error:
            self._pool = None
            raise Unavailable("crew-gone") from error

    def close(self) -> None:
        """End the processes."""
        if self._pool is not None:
            self._pool.shutdown(wait=True, cancel_futures=True)
            self._pool = None


class ProcessWorkshop:
    """The port `services.ports.Workshop`.

    Args:
        crew: processes that do everything, or None: then a few are made here, and from
            `WORTH_A_PROCESS` on by one process for each processor.
    """

    def __init__(self, crew: Crew | None = None) -> None:
        self._crew = crew

    def make_keys(self, key_types: Sequence[str]) -> Iterator[Secret[bytes]]:
        """See the port."""
        if self._crew is not None:
            yield from map(Secret, self._crew.each(_make_key, key_types))
        elif key_types.count(RSA_3072) < WORTH_A_PROCESS:  # the others take less than a millisecond
            yield from (keys.make_key(one) for one in key_types)
        else:
            with _pool() as pool:
                yield from map(Secret, pool.map(_make_key, key_types))

    def seal(self, jobs: Sequence[SealJob]) -> Iterator[bytes]:
        """See the port."""
        plain: list[_Plain] = [
            (
                job.credential.key.reveal(),
                job.credential.certificate,
                job.credential.authorities,
                job.passphrase.reveal(),
                job.friendly_name,
            )
            for job in jobs
        ]
        if self._crew is not None:
            yield from self._crew.each(_seal, plain)
        elif len(plain) < WORTH_A_PROCESS:
            yield from map(_seal, plain)
        else:
            with _pool() as pool:
                yield from pool.map(_seal, plain)


class CrewLocksmith:
    """The port `services.ports.Locksmith`, by a crew."""

    def __init__(self, crew: Crew) -> None:
        self._crew = crew

    def seal(self, key: AuthorityKey, passphrase: Secret[str]) -> str:
        """See the port."""
        return next(self._crew.each(_guard, [(key.to_pkcs8().reveal(), passphrase.reveal())]))

    def open_guard(self, text: str, passphrase: Secret[str]) -> AuthorityKey:
        """See the port."""
        return AuthorityKey.from_pkcs8(Secret(next(self._crew.each(_open, [(text, passphrase.reveal())]))))


class CrewCopyLocks:
    """The port `services.sealed_ports.CopyLocks`, by a crew."""

    def __init__(self, crew: Crew) -> None:
        self._crew = crew

    def make(self, passphrase: Secret[str], mark_key: Secret[str]) -> Lock:
        """See the port."""
        return Lock(*next(self._crew.each(_make_lock, [(passphrase.reveal(), mark_key.reveal())])))

    def unlock(self, locked: str, passphrase: Secret[str]) -> Opened:
        """See the port."""
        private, mark_key = next(self._crew.each(_unlock, [(locked, passphrase.reveal())]))
        return Opened(Secret(private), Secret(mark_key))


class CrewDeputyLocks:
    """The port `services.sealed_ports.DeputyLocks`, by a crew."""

    def __init__(self, crew: Crew) -> None:
        self._crew = crew

    def lock(self, opens: Passphrases, secret: Secret[bytes]) -> str:
        """See the port."""
        own = None if opens.own is None else opens.own.reveal()
        return next(self._crew.each(_lock_passphrases, [(opens.household.reveal(), own, secret.reveal())]))

    def unlock(self, text: str, secret: Secret[bytes]) -> Passphrases:
        """See the port."""
        household, own = next(self._crew.each(_unlock_passphrases, [(text, secret.reveal())]))
        return Passphrases(Secret(household), None if own is None else Secret(own))


def _pool() -> ProcessPoolExecutor:
    # Not forked: a fork would copy the CA key and the register's open file into every child.
    return ProcessPoolExecutor(
        max_workers=os.cpu_count() or 1, mp_context=get_context("spawn"), initializer=_leave_interrupts
    )


def _leave_interrupts() -> None:
    """Ctrl+C in a terminal reaches every process of the app; ending is for the one that has the household open."""
    signal.signal(signal.SIGINT, signal.SIG_IGN)


def _make_key(key_type: str) -> bytes:
    return keys.make_key(key_type).reveal()


def _guard(plain: tuple[bytes, str]) -> str:
    key, passphrase = plain
    return guard.seal(AuthorityKey.from_pkcs8(Secret(key)), Secret(passphrase))


def _open(plain: tuple[str, str]) -> bytes:
    text, passphrase = plain
    return guard.open_guard(text, Secret(passphrase)).to_pkcs8().reveal()


def _seal(plain: _Plain) -> bytes:
    key, certificate, authorities, passphrase, friendly_name = plain
    return pkcs12.write(
        Credential(Secret(key), certificate, authorities),
        Secret(passphrase),
        friendly_name=friendly_name,
        container=STRONG,
    )


def _make_lock(plain: tuple[str, str]) -> tuple[str, str]:
    passphrase, mark_key = plain
    made = copy_lock.make(Secret(passphrase), Secret(mark_key))
    return made.public, made.locked


def _unlock(plain: tuple[str, str]) -> tuple[str, str]:
    locked, passphrase = plain
    opened = copy_lock.unlock(locked, Secret(passphrase))
    return opened.private.reveal(), opened.mark_key.reveal()


def _lock_passphrases(plain: tuple[str, str | None, bytes]) -> str:
    household, own, secret = plain
    return deputy_lock.lock(Passphrases(Secret(household), None if own is None else Secret(own)), Secret(secret))


def _unlock_passphrases(plain: tuple[str, bytes]) -> tuple[str, str | None]:
    text, secret = plain
    opened = deputy_lock.unlock(text, Secret(secret))
    return opened.household.reveal(), None if opened.own is None else opened.own.reveal()
