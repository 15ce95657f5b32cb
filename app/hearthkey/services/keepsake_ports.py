"""What papers and stop sets need of the register: which were given out, and of what they were."""

from __future__ import annotations

from typing import Protocol

from hearthkey.core.keepsakes import PaperNote, StopSetNote


class KeepsakeChange(Protocol):
    """A transaction that may note them."""

    def note_paper(self, note: PaperNote) -> None:
        """Note a paper that was made."""

    def note_stop_set(self, note: StopSetNote) -> None:
        """Note a stop set that was given away; from now on it is the newest."""


class KeepsakeRegister(Protocol):
    """The household's file, these with it."""

    def papers_made(self) -> list[PaperNote]:
        """Every paper that was noted, oldest first."""

    def stop_set(self) -> StopSetNote | None:
        """The newest stop set, or None."""
