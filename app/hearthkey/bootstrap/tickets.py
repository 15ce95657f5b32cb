"""The room of a household where tickets and proofs are opened."""

from __future__ import annotations

from functools import cached_property
from typing import TYPE_CHECKING, Protocol

from hearthkey.bootstrap.rooms import Basics

if TYPE_CHECKING:
    import ipaddress

    from hearthkey.adapters.ticket_server import TicketServer
    from hearthkey.core.kinds import Kinds
    from hearthkey.services.bundling import Bundling
    from hearthkey.services.picking_up import PickingUp
    from hearthkey.services.proving import Proving
    from hearthkey.services.rehearsing import Rehearsing


class Rooms(Basics, Protocol):
    """The rooms that this one stands on."""

    @property
    def bundling(self) -> Bundling:
        """Opens and writes bundles."""

    @property
    def kinds(self) -> Kinds:
        """All device kinds."""

    @property
    def rehearsing(self) -> Rehearsing:
        """The verb "rehearse"."""


class TicketRoom(Rooms):
    """The tickets' part of a house."""

    @cached_property
    def picking_up(self) -> PickingUp:
        """The verb "ticket"."""
        from hearthkey.adapters.firewall import firewall
        from hearthkey.adapters.home_addresses import home_addresses
        from hearthkey.services.picking_up import PickingUp

        return PickingUp(
            self.register,
            self.bundling,
            self.rehearsing,
            self.clock,
            self.dice,
            home_addresses,
            self._bind,
            firewall,
            self.kinds,
        )

    @cached_property
    def proving(self) -> Proving:
        """The verb "prove"."""
        from hearthkey.adapters.home_addresses import home_addresses
        from hearthkey.services.proving import Proving

        return Proving(self.register, self.clock, self.dice, home_addresses, self._bind)

    def _bind(self, address: ipaddress.IPv4Address | ipaddress.IPv6Address) -> TicketServer:
        from hearthkey.adapters.ticket_server import TicketServer

        return TicketServer(address, self.clock)
