"""Lets one copy of the app write to a household at a time."""

from __future__ import annotations

from pathlib import Path

from filelock import FileLock, Timeout


class Presence:
    """A lock file beside the register; the system lets go of it when the process ends, however it ends."""

    def __init__(self, folder: Path) -> None:
        self._lock = FileLock(folder / "in-use.lock", mode=0o600)

    def take(self) -> bool:
        """Become the copy that writes; False where another one is."""
        try:
            self._lock.acquire(timeout=0)
        except Timeout:
            return False
        return True

    def leave(self) -> None:
        """Let the next copy write."""
        self._lock.release()
