"""Dice that fall the same way in every run."""

from __future__ import annotations

import hashlib


class SeededDice:
    """The port `services.ports.Dice`, drawn from SHAKE-256 over a seed and a counter.

    Args:
        seed: another one gives other draws.
    """

    def __init__(self, seed: str = "quince") -> None:
        self._seed = seed
        self.drawn = 0

    def bits(self, count: int) -> int:
        """See the port."""
        self.drawn += 1
        octets = hashlib.shake_256(f"{self._seed}/{self.drawn}".encode()).digest((count + 7) // 8)
        return int.from_bytes(octets, "big") >> (-count % 8)

    def below(self, limit: int) -> int:
        """See the port."""
        while (drawn := self.bits((limit - 1).bit_length())) >= limit:
            pass
        return drawn
