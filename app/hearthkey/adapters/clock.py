"""The computer's clock."""

from __future__ import annotations

import time
from datetime import UTC, datetime


class SystemClock:
    """The port `services.ports.Clock`."""

    def now(self) -> datetime:
        """UTC, whole seconds: certificates and lists know no fractions (RFC 5280 section 4.1.2.5)."""
        return datetime.now(UTC).replace(microsecond=0)

    def monotonic(self) -> float:
        """Seconds that never run backwards."""
        return time.monotonic()
