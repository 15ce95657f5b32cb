"""What renewals and visits need of the register."""

from __future__ import annotations

from contextlib import AbstractContextManager
from datetime import datetime
from typing import Protocol

from hearthkey.core.renewal import Follow, Visit
from hearthkey.services.reach_ports import CheckChange, CheckRegister


class RenewalChange(CheckChange, Protocol):
    """A transaction that may change those as well."""

    def add_follow(self, follow: Follow) -> None:
        """Write down, for good, that one pass was made to follow another."""

    def plan_visit(self, person: str, day: datetime) -> None:
        """Keep a visit; one that is kept already, or a person whom the register does not know, changes nothing."""

    def drop_visit(self, person: str, day: datetime) -> None:
        """Forget a visit; one that is not there is fine."""


class RenewalRegister(CheckRegister, Protocol):
    """The household's file, renewals and visits with it."""

    def follows(self) -> list[Follow]:
        """What follows what, in the order in which the new passes were made."""

    def visits(self) -> list[Visit]:
        """Every visit that was planned, the first day first; days that are over with them."""

    def change(self) -> AbstractContextManager[RenewalChange]:
        """Begin a transaction."""
