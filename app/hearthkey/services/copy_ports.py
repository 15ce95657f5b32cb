"""What keeping track of copies needs from outside."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime
from pathlib import Path
from typing import Protocol

from hearthkey.core.copies import Copy


class CopyChange(Protocol):
    """The part of a transaction that is about copies."""

    def expect_copy(self, copy: Copy) -> int:
        """Write down that a copy is about to be made, and return its number."""

    def copy_made(self, number: int, copy: Copy) -> None:
        """It was made, as `copy` says; when it was begun stays."""

    def copy_never_made(self, number: int) -> None:
        """It was not made after all."""

    def tidy_copy(self, number: int, now: datetime | None) -> None:
        """It is gone since a moment; None: it is not gone after all."""


class CopyRegister(Protocol):
    """The part of the register that is about copies."""

    def copies(self, serials: Sequence[str] | None = None) -> list[Copy]:
        """Every copy, or those of some passes, in the order they were begun; those that never came to be too."""

    def copies_gone(self) -> dict[int, datetime]:
        """Since when copies are gone, UTC, by number."""


class CopyFiles(Protocol):
    """Looks at files that left, and takes them away."""

    def free(self, folder: Path) -> int | None:
        """Free octets where a folder is or would be made; None where nobody knows."""

    def mark(self, path: Path) -> str | None:
        """SHA-256 of a file, hex; empty for what is no plain file of a size that a bundle can have.

        Returns:
            None where nothing of that name is in the folder.

        Raises:
            Unavailable: folder-gone, where the folder itself is not there; or it cannot be read.
        """

    def remove(self, path: Path, mark: str) -> bool:
        """Take a file away if its SHA-256 begins with `mark`; whether it was.

        Raises:
            Unavailable: as `mark`, and folder-read-only.
        """
