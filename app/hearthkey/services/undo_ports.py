"""What taking changes back needs of the register: everything that can be changed, whose passes are with it."""

from __future__ import annotations

from contextlib import AbstractContextManager
from typing import Protocol

from hearthkey.services.adopt_ports import AdoptChange, AdoptRegister
from hearthkey.services.renewal_ports import RenewalChange, RenewalRegister


class UndoChange(RenewalChange, AdoptChange, Protocol):
    """A transaction that may change all of it."""


class UndoRegister(RenewalRegister, AdoptRegister, Protocol):
    """The household's file."""

    def change(self) -> AbstractContextManager[UndoChange]:
        """Begin a transaction."""
