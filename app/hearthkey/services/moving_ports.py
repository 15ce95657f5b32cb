"""What moving day needs of the register: former hosts, and the list to tick."""

from __future__ import annotations

from collections.abc import Iterable
from typing import TYPE_CHECKING, Protocol

from hearthkey.core.household import FormerHost

if TYPE_CHECKING:
    from hearthkey.core.moving import Move


class MovingChange(Protocol):
    """The part of a transaction that is about it."""

    def keep_former_hosts(self, former: Iterable[FormerHost]) -> None:
        """Keep these, and no others."""

    def keep_move(self, move: Move | None) -> None:
        """Keep the move that is under way, or that there is none."""


class MovingRegister(Protocol):
    """The reading half."""

    def former_hosts(self) -> tuple[FormerHost, ...]:
        """What the gateway still answers to beside its host, the oldest first."""

    def move(self) -> Move | None:
        """The move that is under way."""
