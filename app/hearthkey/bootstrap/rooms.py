"""What every part of a house may stand on; each part says beside it what else it needs."""

from __future__ import annotations

from typing import TYPE_CHECKING, Protocol

if TYPE_CHECKING:
    from pathlib import Path

    from hearthkey.adapters.register import SqliteRegister
    from hearthkey.services.opening import Keyholder
    from hearthkey.services.ports import Clock, Dice, Files, Locksmith, Vault


class Basics(Protocol):
    """The rooms that are there in any house, made by `bootstrap.house`."""

    @property
    def data(self) -> Path:
        """The data folder."""

    @property
    def clock(self) -> Clock:
        """The computer's clock."""

    @property
    def dice(self) -> Dice:
        """The random source."""

    @property
    def files(self) -> Files:
        """Writes and reads files."""

    @property
    def words(self) -> tuple[str, ...]:
        """The word list for passphrases and for a deputy's parts."""

    @property
    def keyholder(self) -> Keyholder:
        """Holds the CA key while unlocked."""

    @property
    def locksmith(self) -> Locksmith:
        """Guards the CA key with a passphrase."""

    @property
    def register(self) -> SqliteRegister:
        """The register."""

    @property
    def vault(self) -> Vault:
        """Where this household keeps its secrets."""
