"""What the verbs need to know of device kinds from outside, said as a Protocol."""

from __future__ import annotations

from pathlib import Path
from typing import Protocol

from hearthkey.core.kinds import Kinds


class KindShelf(Protocol):
    """The files of device kinds: those that came with the app, and the householder's own."""

    def load(self) -> Kinds:
        """All kinds; an own one of the same name stands for ours, and one that cannot be read is left out.

        Raises:
            Unavailable: as `ports.Files.read`.
        """

    def text_of(self, name: str) -> bytes | None:
        """The file of a kind, the householder's own before ours; None where there is none of that name."""

    def keep(self, name: str, data: bytes) -> Path:
        """Write an own kind, all at once or not at all.

        Raises:
            Unavailable: disk-full, folder-read-only, folder-gone, write-failed.
        """

    def forget(self, name: str) -> bool:
        """Delete an own kind.

        Returns:
            Whether there was one.

        Raises:
            Unavailable: folder-read-only.
        """
