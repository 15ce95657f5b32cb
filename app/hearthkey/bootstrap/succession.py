"""The part of a household that lets one CA follow another."""

from __future__ import annotations

from functools import cached_property
from typing import TYPE_CHECKING, Protocol

if TYPE_CHECKING:
    from hearthkey.adapters.register import SqliteRegister
    from hearthkey.services.listing import Listing
    from hearthkey.services.opening import Keyholder
    from hearthkey.services.ports import Clock, Dice, Locksmith, Vault, Workshop
    from hearthkey.services.succeeding import Succeeding
    from hearthkey.services.watching import Watching


class Rooms(Protocol):
    """The rooms that this one stands on."""

    @property
    def register(self) -> SqliteRegister:
        """The register."""

    @property
    def vault(self) -> Vault:
        """Where this household keeps its secrets."""

    @property
    def keyholder(self) -> Keyholder:
        """Holds the CA key while unlocked."""

    @property
    def clock(self) -> Clock:
        """The computer's clock."""

    @property
    def dice(self) -> Dice:
        """The random source."""

    @property
    def words(self) -> tuple[str, ...]:
        """The word list for passphrases."""

    @property
    def workshop(self) -> Workshop:
        """Makes and seals keys."""

    @property
    def listing(self) -> Listing:
        """The verb "lists"."""

    @property
    def watching(self) -> Watching:
        """How the gateway stands."""

    @property
    def locksmith(self) -> Locksmith:
        """Guards the CA key with a passphrase."""


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
