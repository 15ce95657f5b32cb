"""Makes keys and seals them, on every processor where there are many."""

from __future__ import annotations

import os
from collections.abc import Iterator, Sequence
from concurrent.futures import ProcessPoolExecutor
from multiprocessing import get_context

from hearthkey.core.bundle import Credential
from hearthkey.core.keysets import RSA_3072
from hearthkey.core.kinds import STRONG
from hearthkey.core.secret import Secret
from hearthkey.pki import keys, pkcs12
from hearthkey.services.ports import SealJob

WORTH_A_PROCESS = 4
"""Starting a process takes as long as sealing one or two bundles."""

_Plain = tuple[bytes, bytes, tuple[bytes, ...], str, str]


class ProcessWorkshop:
    """The port `services.ports.Workshop`.

    A few are made here; from `WORTH_A_PROCESS` on, one process for each processor. Keys cross to
    them through pipes between processes of one user, never through a file.
    """

    def make_keys(self, key_types: Sequence[str]) -> Iterator[Secret[bytes]]:
        """See the port."""
        if key_types.count(RSA_3072) < WORTH_A_PROCESS:  # the others take less than a millisecond
            yield from (keys.make_key(one) for one in key_types)
            return
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
        if len(plain) < WORTH_A_PROCESS:
            yield from map(_seal, plain)
            return
        with _pool() as pool:
            yield from pool.map(_seal, plain)


def _pool() -> ProcessPoolExecutor:
    # Not forked: a fork would copy the CA key and the register's open file into every child.
    return ProcessPoolExecutor(max_workers=os.cpu_count() or 1, mp_context=get_context("spawn"))


def _make_key(key_type: str) -> bytes:
    return keys.make_key(key_type).reveal()


def _seal(plain: _Plain) -> bytes:
    key, certificate, authorities, passphrase, friendly_name = plain
    return pkcs12.write(
        Credential(Secret(key), certificate, authorities),
        Secret(passphrase),
        friendly_name=friendly_name,
        container=STRONG,
    )
