"""What of one bundle is on screen: its codes or file, or its passphrase, never both."""

from __future__ import annotations

from dataclasses import dataclass, replace
from enum import Enum


class Side(Enum):
    """What the right side of the hand-over page shows; it shows one thing at a time."""

    REST = "rest"
    WORKING = "working"
    STICKS = "sticks"
    CODES = "codes"
    SAVED = "saved"
    TICKET = "ticket"
    OVER = "over"
    TROUBLE = "trouble"
    PASSPHRASE = "passphrase"  # noqa: S105 - the name of a state, not a secret


CARRIERS = frozenset({Side.CODES, Side.SAVED, Side.TICKET})
"""What carries the bundle itself, or leads to it."""


@dataclass(frozen=True)
class Screen:
    """One moment of the page; every change makes another.

    Args:
        side: what is shown.
        under: the carrier that was covered for the passphrase, else REST.
        question: number of the newest question; an answer to an older one changes nothing.
        secret: whether that question asked for the passphrase.
    """

    side: Side = Side.REST
    under: Side = Side.REST
    question: int = 0
    secret: bool = False

    def ask(self) -> Screen:
        """Something other than the passphrase is wanted: first everything goes off the screen."""
        return Screen(Side.WORKING, Side.REST, self.question + 1, secret=False)

    def ask_passphrase(self) -> Screen:
        """The passphrase is wanted: first a carrier is covered."""
        under = self.side if self.side in CARRIERS else self.under
        return Screen(Side.WORKING, under, self.question + 1, secret=True)

    def answer(self, question: int, side: Side) -> Screen:
        """An answer has come; only the awaited one is shown, and a passphrase only where one was asked for."""
        awaited = question == self.question and self.side is Side.WORKING
        if not awaited or (side is not Side.TROUBLE and (side is Side.PASSPHRASE) is not self.secret):
            return self
        return replace(self, side=side)

    def back(self) -> Screen:
        """What is shown goes off the screen; what was covered comes back."""
        return Screen(self.under, Side.REST, self.question + 1, secret=False)

    def end(self) -> Screen:
        """The ticket has ended, so its code goes for good; a passphrase that covers it stays."""
        side = Side.OVER if self.side is Side.TICKET else self.side
        under = Side.OVER if self.under is Side.TICKET else self.under
        return replace(self, side=side, under=under)

    def leave(self) -> Screen:
        """The page closes: nothing stays on it."""
        return Screen(Side.REST, Side.REST, self.question + 1, secret=False)
