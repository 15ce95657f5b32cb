"""The part of a house where keys are made, sealed and guarded, in processes of their own where a window is open."""

from __future__ import annotations

from functools import cached_property
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from hearthkey.adapters.workshop import Crew
    from hearthkey.services.ports import Locksmith, Workshop
    from hearthkey.services.sealed_ports import CopyLocks, DeputyLocks


class MakersRoom:
    """The makers' part of a house; `_apart` says whether they work in processes of their own."""

    _apart: bool

    @cached_property
    def _crew(self) -> Crew | None:
        from hearthkey.adapters.workshop import Crew

        return Crew() if self._apart else None

    @cached_property
    def locksmith(self) -> Locksmith:
        """Guards the CA key with a passphrase."""
        if self._crew is None:
            from hearthkey.pki import guard

            return guard
        from hearthkey.adapters.workshop import CrewLocksmith

        return CrewLocksmith(self._crew)

    @cached_property
    def workshop(self) -> Workshop:
        """Makes and seals keys."""
        from hearthkey.adapters.workshop import ProcessWorkshop

        return ProcessWorkshop(self._crew)

    @cached_property
    def copy_locks(self) -> CopyLocks:
        """Makes and opens what closes copies."""
        if self._crew is None:
            from hearthkey.pki import copy_lock

            return copy_lock
        from hearthkey.adapters.workshop import CrewCopyLocks

        return CrewCopyLocks(self._crew)

    @cached_property
    def deputy_locks(self) -> DeputyLocks:
        """Locks and opens what a deputy's parts stand for."""
        if self._crew is None:
            from hearthkey.pki import deputy_lock

            return deputy_lock
        from hearthkey.adapters.workshop import CrewDeputyLocks

        return CrewDeputyLocks(self._crew)
