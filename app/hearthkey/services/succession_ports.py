"""What the succession of the CA needs from the register."""

from __future__ import annotations

from datetime import datetime
from typing import TYPE_CHECKING, Protocol

if TYPE_CHECKING:
    from hearthkey.core.household import Authority
    from hearthkey.core.succession import Cause, Step, Succession


class SuccessionChange(Protocol):
    """The part of a transaction that is about the succession."""

    def begin_succession(
        self, authority: Authority, subject: str, cross: bytes | None, cause: Cause, now: datetime
    ) -> None:
        """Write a second CA beside the one in charge."""

    def forget_copy_lock(self) -> None:
        """Forget what closes sealed copies where it lies under the household's words; one of their own stays."""

    def succession_stolen(self) -> None:
        """The newest succession was planned, and its old key may be in other hands now."""

    def take_step(self, step: Step, now: datetime) -> None:
        """Write down that a step was taken."""

    def take_back(self, step: Step, now: datetime) -> None:
        """Write down that a step was taken back."""


class SuccessionRegister(Protocol):
    """The reading half."""

    def succession(self) -> Succession | None:
        """The newest succession, finished or not; None where there was none or its beginning was taken back."""

    def authorities(self) -> list[Authority]:
        """Whom gateway and devices are to trust, oldest first."""

    def every_authority(self) -> list[Authority]:
        """Every CA that the household ever made, oldest first; those put away or taken back among them."""
