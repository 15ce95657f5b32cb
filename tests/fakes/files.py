"""Files that lie in memory, on a disk that can be full or gone."""

from __future__ import annotations

import hashlib
from pathlib import Path

from hearthkey.core.errors import Refused, Unavailable


class RecordingFiles:
    """The port `services.ports.Files`.

    Args:
        written: content by path, as it was put there.
        trouble: code of the Unavailable that writing raises, or None while all is well.
        room: how many more files fit before `trouble` begins.
    """

    def __init__(self) -> None:
        self.written: dict[Path, bytes] = {}
        self.trouble: str | None = None
        self.room = 0

    def write(self, folder: Path, name: str, data: bytes) -> Path:
        """See the port."""
        if self.trouble is not None:
            if self.room <= 0:
                raise Unavailable(self.trouble, path=str(folder), seen="as the test wished")
            self.room -= 1
        self.written[folder / name] = data
        return folder / name

    def read(self, path: Path, limit: int) -> bytes:
        """See the port."""
        if path not in self.written:
            raise Refused("file-missing", path=str(path))
        if len(self.written[path]) > limit:
            raise Refused("file-too-large", path=str(path), limit=limit)
        return self.written[path]

    def free(self, folder: Path) -> int | None:
        """See the port; nobody knows."""
        del folder
        return None

    def mark(self, path: Path) -> str | None:
        """See the port."""
        return hashlib.sha256(self.written[path]).hexdigest() if path in self.written else None

    def remove(self, path: Path, mark: str) -> bool:
        """See the port."""
        if path not in self.written or not mark or not (self.mark(path) or "").startswith(mark):
            return False
        del self.written[path]
        return True
