"""What the desk is told about a ticket."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from enum import StrEnum


class Ending(StrEnum):
    """Why a ticket is closed."""

    PICKED_UP = "picked-up"
    EXPIRED = "expired"
    GUESSED = "guessed"
    CUT_OFF = "cut-off"
    WITHDRAWN = "withdrawn"


class Happened(StrEnum):
    """What the desk is told about."""

    OPENED = "opened"
    SENDING = "sending"
    INTERRUPTED = "interrupted"
    WRONG = "wrong"
    OUTSIDE = "outside"
    QUIET = "quiet"
    CLOSED = "closed"


@dataclass(frozen=True)
class Event:
    """One thing that happened to a ticket.

    Args:
        what: what happened.
        at: when, UTC.
        address: of whoever asked, empty where nobody did.
        ending: why it closed, for `Happened.CLOSED`.
    """

    what: Happened
    at: datetime
    address: str = ""
    ending: Ending | None = None
