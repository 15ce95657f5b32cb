"""The part of a household that lets one CA follow another."""

from __future__ import annotations

from functools import cached_property
from typing import TYPE_CHECKING, Protocol

from hearthkey.bootstrap.rooms import Basics

if TYPE_CHECKING:
    from hearthkey.services.listing import Listing
    from hearthkey.services.ports import Workshop
    from hearthkey.services.succeeding import Succeeding
    from hearthkey.services.watching import Watching


class Rooms(Basics, Protocol):
    """The rooms that this one stands on."""

    @property
    def workshop(self) -> Workshop:
        """Makes and seals keys."""

    @property
    def listing(self) -> Listing:
        """The verb "lists"."""

    @property
    def watching(self) -> Watching:
        """How the gateway stands."""


class SuccessionRoom(Rooms):
    """The succession's part of a house."""

    @cached_property
    def succeeding(self) -> Succeeding:
        """The verb "succession"."""
        from hearthkey.services.succeeding import Succeeding

        return Succeeding(
            self.register,
            self.vault,
            self.keyholder,
            self.clock,
            self.dice,
            self.words,
            self.workshop,
            self.listing,
            self.watching,
            self.locksmith,
        )
