"""The room of a household where copies that left are kept track of."""

from __future__ import annotations

from functools import cached_property
from typing import TYPE_CHECKING, Protocol

if TYPE_CHECKING:
    from hearthkey.adapters.register import SqliteRegister
    from hearthkey.services.ports import Clock, Files
    from hearthkey.services.tidying import Tidying


class Rooms(Protocol):
    """The rooms that this one stands on."""

    @property
    def clock(self) -> Clock:
        """The computer's clock."""

    @property
    def files(self) -> Files:
        """Writes and reads files."""

    @property
    def register(self) -> SqliteRegister:
        """The register."""


class CopyRoom(Rooms):
    """The copies' part of a house."""

    @cached_property
    def tidying(self) -> Tidying:
        """The verb "copies"."""
        from hearthkey.services.tidying import Tidying

        return Tidying(self.register, self.files, self.clock)
