"""Builds everything once; the only ring that knows everyone."""

from __future__ import annotations

import os

from hearthkey.bootstrap.house import House, open_house
from hearthkey.bootstrap.window import Door

__all__ = ["Door", "House", "harden", "open_house"]


def harden() -> None:
    """Keep a crash from writing the process's memory, and with it keys, to disk."""
    if os.name == "posix":
        import resource

        resource.setrlimit(resource.RLIMIT_CORE, (0, 0))
