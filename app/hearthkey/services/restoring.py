"""Brings a household back from a sealed copy, on a computer that has none."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass

from hearthkey.core.errors import Refused
from hearthkey.core.passes import LIVING
from hearthkey.core.plans import Changes
from hearthkey.core.secret import Secret
from hearthkey.core.sentences import sealed as sentences
from hearthkey.services import secret_names
from hearthkey.services.opening import Keyholder, the_authority
from hearthkey.services.opening_copy import CopyOpening, OpenCopy
from hearthkey.services.ports import Clock, Progress, Vault, silent
from hearthkey.services.sealed_ports import SealedRegister
from hearthkey.services.writing_diary import note

GAP = 2**20
"""How far list numbers jump ahead of the copy's. Lists and spare lists that were signed after the copy was made have
numbers that nobody here knows; a number once used must never be used again (RFC 5280 section 5.2.3)."""


@dataclass(frozen=True)
class RestorePlan:
    """A household about to be brought back.

    Args:
        copy: open.
        waiting: how many bundles have to be made anew.
        sentence: what will happen.
    """

    copy: OpenCopy
    waiting: int
    sentence: str


class Restoring:
    """The verb "restore"."""

    def __init__(
        self, register: SealedRegister, vault: Vault, keyholder: Keyholder, clock: Clock, opening: CopyOpening
    ) -> None:
        self._register = register
        self._vault = vault
        self._keyholder = keyholder
        self._clock = clock
        self._opening = opening

    @contextmanager
    def preview(
        self, data: bytes, passphrase: Secret[str], own: Secret[str] | None = None, *, progress: Progress = silent
    ) -> Iterator[RestorePlan]:
        """Open the copy, and say what would come back; it is open until the block ends.

        Raises:
            Refused: household-exists, and as `CopyOpening.opened`.
        """
        if self._register.household() is not None:
            raise Refused("household-exists")
        with self._opening.opened(data, passphrase, own, progress=progress) as copy:
            now = self._clock.now()
            alive = [one for one in copy.register.passes() if one.state(now) in LIVING]
            waiting = sum(one.handed_over is None for one in alive)
            yield RestorePlan(copy, waiting, sentences.restoring(copy.contents, waiting))

    def apply(self, plan: RestorePlan) -> Changes:
        """Bring it back: first the secrets, then, in one step, the register.

        A crash before that step leaves a computer without a household, and names of secrets that the next start
        takes out of the vault again; after it, everything is there.

        Raises:
            Refused: household-exists.
            Unavailable: as vault and register.
        """
        if self._register.household() is not None:
            raise Refused("household-exists")
        copy = plan.copy
        authority = the_authority(copy.register)
        kept = {
            secret_names.authority_key(authority): copy.ca_key,
            secret_names.copy_mark(authority): copy.mark_key,
            **copy.secrets,
        }
        sentence = sentences.restored(copy.contents)
        with copy.register.change() as change:
            change.place_secrets(self._vault.place)
            note(copy.register, change, verb="restore", sentence=sentence, now=self._clock.now())
        self._register.expect_secrets(kept, self._vault.place)
        for name, value in kept.items():
            self._vault.put(name, value)
        self._register.become(plan.copy.path, list_mark=copy.contents.list_mark + GAP)
        self._keyholder.keep(copy.key, *copy.beside)
        return Changes(sentence)
