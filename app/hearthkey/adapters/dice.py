"""The operating system's random source."""

from __future__ import annotations

import secrets


class SystemDice:
    """The port `services.ports.Dice`."""

    def bits(self, count: int) -> int:
        """A whole number of at most `count` random bits."""
        return secrets.randbits(count)

    def below(self, limit: int) -> int:
        """A whole number from 0 to `limit`, exclusive."""
        return secrets.randbelow(limit)
