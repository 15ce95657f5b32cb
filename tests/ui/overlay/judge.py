"""The real judge of what is typed about a household, over a register with nothing in it."""

from __future__ import annotations

from typing import cast

from hearthkey.services.founding import Founding
from hearthkey.services.opening import Keyholder
from hearthkey.services.ports import Register, Vault
from tests.fakes.clock import FakeClock
from tests.fakes.dice import SeededDice
from tests.ui.overlay.household import WORDS
from tests.ui.practice import NOW


class NobodyYet:
    """A register before the first evening; nothing else of it is asked for."""

    def household(self) -> None:
        """See the port."""


def judge() -> Founding:
    """A founding that can only preview."""
    clock = FakeClock(NOW)
    register = cast("Register", NobodyYet())
    return Founding(register, cast("Vault", None), Keyholder(clock), clock, SeededDice(), WORDS)
