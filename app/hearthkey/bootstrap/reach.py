"""The room of a household where the way in is worked out."""

from __future__ import annotations

from functools import cached_property
from typing import TYPE_CHECKING, Protocol

from hearthkey.bootstrap.rooms import Basics

if TYPE_CHECKING:
    from collections.abc import Callable, Iterable

    from hearthkey.core.bundle import Bundle
    from hearthkey.core.passes import Pass
    from hearthkey.core.reach.clashes import CommonRange
    from hearthkey.formats.sheet import Block
    from hearthkey.services.bundling import Bundling
    from hearthkey.services.forwarding import Forwarding
    from hearthkey.services.moving import Moving
    from hearthkey.services.network_planning import NetworkPlanning
    from hearthkey.services.reaching import Reaching


def common_networks() -> tuple[CommonRange, ...]:
    """The subnets that devices meet away from home, from the file that came with the app."""
    from hearthkey.adapters.places import resources
    from hearthkey.formats import common_networks

    return common_networks.read((resources() / "networks" / "common.toml").read_bytes())


class Rooms(Basics, Protocol):
    """The rooms that this one stands on."""

    @property
    def bundling(self) -> Bundling:
        """Opens and writes bundles."""


class ReachRoom(Rooms):
    """The network plan's part of a house."""

    @cached_property
    def network_planning(self) -> NetworkPlanning:
        """The verb "reach" where it only works things out."""
        from hearthkey.services.network_planning import NetworkPlanning

        return NetworkPlanning(self.register, self.clock, self.dice, common_networks)

    @cached_property
    def forwarding(self) -> Forwarding:
        """The verb "forwarding-sheet"."""
        from hearthkey.services.forwarding import Forwarding

        return Forwarding(self.register)

    @cached_property
    def moving(self) -> Moving:
        """The verb "moving-day"."""
        from hearthkey.services.moving import Moving

        return Moving(self.register, self.clock)

    @cached_property
    def reaching(self) -> Reaching:
        """The verb "check-way-in"."""
        from hearthkey.adapters.name_servers import NameServers
        from hearthkey.adapters.way_out import dial, open_datagrams
        from hearthkey.services.reaching import Reaching

        def opens(chosen: Pass) -> Bundle:
            return self.bundling.open(chosen)  # what that takes is loaded only where there is a web front

        return Reaching(self.register, self.clock, self.dice, NameServers(), open_datagrams, dial, opens)

    @cached_property
    def print_blocks(self) -> Callable[[Iterable[Block]], bytes]:
        """Sets a sheet of blocks as PDF; what that takes is loaded for it alone."""
        from hearthkey.adapters.places import faces
        from hearthkey.formats.sheet_pdf import Fonts, pages

        fonts = Fonts(*faces())
        return lambda blocks: pages(blocks, fonts)
