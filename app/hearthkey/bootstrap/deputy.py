"""The room of a household where it is got ready for somebody to take over."""

from __future__ import annotations

from functools import cached_property
from typing import TYPE_CHECKING, Protocol

from hearthkey.bootstrap.rooms import Basics

if TYPE_CHECKING:
    from hearthkey.services.deputies import Deputies
    from hearthkey.services.deputy_papers import DeputyPapers
    from hearthkey.services.sealed_ports import CopyLocks, DeputyLocks
    from hearthkey.services.sparing import Sparing


class Rooms(Basics, Protocol):
    """The rooms that this one stands on."""

    @property
    def sparing(self) -> Sparing:
        """Spare stop lists."""

    @property
    def copy_locks(self) -> CopyLocks:
        """Makes and opens what closes copies."""

    @property
    def deputy_locks(self) -> DeputyLocks:
        """Locks and opens what parts stand for."""


class DeputyRoom(Rooms):
    """The deputy's part of a house."""

    @cached_property
    def deputies(self) -> Deputies:
        """The verbs "deputy make", "deputy try" and "deputy restore"."""
        from hearthkey.services.deputies import Deputies

        return Deputies(self.register, self.clock, self.dice, self.words, self.copy_locks, self.deputy_locks)

    @cached_property
    def deputy_papers(self) -> DeputyPapers:
        """The papers of "deputy make", and the verb "deputy stop-set"."""
        from hearthkey.services.deputy_papers import DeputyPapers

        return DeputyPapers(self.register, self.clock, self.files, self.sparing)
