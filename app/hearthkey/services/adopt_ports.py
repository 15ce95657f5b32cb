"""What looking over and adopting a household need from outside."""

from __future__ import annotations

from collections.abc import Mapping
from contextlib import AbstractContextManager
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path
from typing import Protocol

from hearthkey.core.adopted import Adopted, ToBeNamed, Whose
from hearthkey.services.ports import NewPass
from hearthkey.services.sheet_ports import SheetChange, SheetRegister


@dataclass(frozen=True)
class FolderFile:
    """A file that was read.

    Args:
        name: within the folder, with / between its parts.
        data: all of it.
    """

    name: str
    data: bytes


@dataclass(frozen=True)
class Passed:
    """Something in a folder that was not read.

    Args:
        name: within the folder.
        why: "link", "special", "large", "closed", "deep" or "many".
    """

    name: str
    why: str


class FolderReading(Protocol):
    """Reads a folder that anybody may have filled, and never writes."""

    def read(self, folder: Path) -> tuple[list[FolderFile], list[Passed]]:
        """Read all plain files of a folder, or the one file, within limits and without following links out of it.

        Raises:
            Refused: folder-missing.
            Unavailable: folder-closed.
        """


class AdoptChange(SheetChange, Protocol):
    """A transaction that may take over what was made elsewhere as well."""

    def add_adopted(self, new: NewPass, adopted: Adopted, now: datetime) -> None:
        """Write a pass that was made elsewhere: handed over already, its key never here."""

    def note_listed(self, serial: str, listed: int) -> None:
        """Keep the reason that a list taken over gave, where it is none of `core.revocation.Reason`."""

    def name_device(self, serial: str, whose: Whose) -> None:
        """Say whose device a pass is, or that nobody has said it after all, with all passes of the same device."""


class AdoptRegister(SheetRegister, Protocol):
    """The household's file, with what was made elsewhere."""

    def to_be_named(self) -> list[ToBeNamed]:
        """Passes of which nobody has said yet whose they are."""

    def whose(self) -> Mapping[str, Whose]:
        """Whose every pass is that was made elsewhere, by serial."""

    def change(self) -> AbstractContextManager[AdoptChange]:
        """Begin a transaction."""
