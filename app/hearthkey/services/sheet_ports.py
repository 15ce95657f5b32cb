"""What sheets need of the register: whom to call, and the language that somebody reads."""

from __future__ import annotations

from collections.abc import Mapping
from contextlib import AbstractContextManager
from typing import Protocol

from hearthkey.services.sealed_ports import SealedChange, SealedRegister


class SheetChange(SealedChange, Protocol):
    """A transaction that may change those as well."""

    def keep_person_language(self, person: str, language: str) -> None:
        """Keep the language of somebody's sheets; a person whom the register does not know changes nothing."""

    def keep_whom_to_call(self, text: str) -> None:
        """Keep whom to call; empty forgets it."""


class SheetRegister(SealedRegister, Protocol):
    """The household's file, these with it."""

    def person_languages(self) -> Mapping[str, str]:
        """Languages by person, the name folded."""

    def whom_to_call(self) -> str:
        """Whom to call; empty where nobody was named."""

    def change(self) -> AbstractContextManager[SheetChange]:
        """Begin a transaction."""
