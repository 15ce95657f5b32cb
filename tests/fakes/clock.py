"""A clock that stands still until a test moves it."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta

NOW = datetime(2026, 11, 25, 12, 0, tzinfo=UTC)
"""When Quince Cottage is founded in the tests."""


class FakeClock:
    """The port `services.ports.Clock`."""

    def __init__(self, at: datetime = NOW) -> None:
        self._at = at
        self._ticks = 1000.0

    def now(self) -> datetime:
        """See the port."""
        return self._at

    def monotonic(self) -> float:
        """See the port."""
        return self._ticks

    def forward(self, **how_long: float) -> None:
        """Let time pass, for instance ``days=3``."""
        passed = timedelta(**how_long)
        self._at += passed
        self._ticks += passed.total_seconds()

    def turn(self, **how_far: float) -> None:
        """Turn the hands only, as somebody does who sets a computer's clock."""
        self._at += timedelta(**how_far)
