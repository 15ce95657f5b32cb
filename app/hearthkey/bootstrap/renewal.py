"""The room of a household where passes are renewed, devices replaced, and people met and seen off."""

from __future__ import annotations

from functools import cached_property
from typing import TYPE_CHECKING, Protocol

from hearthkey.bootstrap.rooms import Basics

if TYPE_CHECKING:
    from hearthkey.services.enrolling import Enrolling
    from hearthkey.services.goodbye import Goodbye
    from hearthkey.services.listing import Listing
    from hearthkey.services.renewing import Renewing
    from hearthkey.services.replacing import Replacing
    from hearthkey.services.stopping import Stopping
    from hearthkey.services.superseding import Superseding
    from hearthkey.services.visiting import Visiting


class Rooms(Basics, Protocol):
    """The rooms that this one stands on."""

    @property
    def enrolling(self) -> Enrolling:
        """The verb "add"."""

    @property
    def listing(self) -> Listing:
        """The verb "lists"."""

    @property
    def stopping(self) -> Stopping:
        """The verbs "stop", "let-in" and "revoke"."""


class RenewalRoom(Rooms):
    """The renewals' part of a house."""

    @cached_property
    def renewing(self) -> Renewing:
        """The verb "renew"."""
        from hearthkey.services.renewing import Renewing

        return Renewing(self.register, self.clock, self.enrolling)

    @cached_property
    def superseding(self) -> Superseding:
        """The verb "supersede"."""
        from hearthkey.services.superseding import Superseding

        return Superseding(self.register, self.vault, self.keyholder, self.clock, self.stopping)

    @cached_property
    def replacing(self) -> Replacing:
        """The verb "replace"."""
        from hearthkey.services.replacing import Replacing

        return Replacing(self.register, self.clock, self.enrolling, self.listing)

    @cached_property
    def goodbye(self) -> Goodbye:
        """The verb "leaves"."""
        from hearthkey.services.goodbye import Goodbye

        return Goodbye(self.register, self.clock, self.stopping)

    @cached_property
    def visiting(self) -> Visiting:
        """The verb "visit"."""
        from hearthkey.services.visiting import Visiting

        return Visiting(self.register, self.clock)
