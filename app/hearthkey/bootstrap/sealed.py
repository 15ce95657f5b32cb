"""The parts of a household that make sealed copies, open them and bring a household back."""

from __future__ import annotations

from functools import cached_property
from typing import TYPE_CHECKING, Protocol

from hearthkey.bootstrap.rooms import Basics

if TYPE_CHECKING:
    from hearthkey.services.carrying_copies import CarryingCopies
    from hearthkey.services.gateway_ports import GatewayDoor
    from hearthkey.services.opening_copy import CopyOpening
    from hearthkey.services.restoring import Restoring
    from hearthkey.services.sealed_ports import CopyLocks
    from hearthkey.services.sealing import Sealing

OWN_FOLDER = "sealed"


class Rooms(Basics, Protocol):
    """The rooms that this one stands on."""

    @property
    def copy_locks(self) -> CopyLocks:
        """Makes and opens what closes copies."""

    @property
    def gateway_door(self) -> GatewayDoor:
        """The ways to the gateway."""


class SealedRoom(Rooms):
    """The sealed copies' part of a house."""

    @cached_property
    def copy_opening(self) -> CopyOpening:
        """Opens copies in a scratch place."""
        from hearthkey.adapters.register import scratch_register
        from hearthkey.services.opening_copy import CopyOpening

        return CopyOpening(self.copy_locks, self.locksmith, scratch_register)

    @cached_property
    def sealing(self) -> Sealing:
        """The verbs "seal" and "try"."""
        from hearthkey.services.sealing import ENDING, Sealing

        folder = self.data / OWN_FOLDER
        return Sealing(
            self.register,
            self.vault,
            self.clock,
            self.dice,
            self.files,
            self.copy_locks,
            self.copy_opening,
            folder,
            lambda: sorted(one.name for one in folder.glob(f"*{ENDING}")),
            lambda name: (folder / name).unlink(missing_ok=True),
        )

    @cached_property
    def carrying_copies(self) -> CarryingCopies:
        """The verb "seal" with the gateway as the place."""
        from hearthkey.services.carrying_copies import CarryingCopies

        return CarryingCopies(self.register, self.sealing, self.gateway_door)

    @cached_property
    def restoring(self) -> Restoring:
        """The verb "restore"."""
        from hearthkey.services.restoring import Restoring

        return Restoring(self.register, self.vault, self.keyholder, self.clock, self.copy_opening)
