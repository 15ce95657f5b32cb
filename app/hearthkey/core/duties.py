"""Days on which the householder should do something, so that no date runs over quietly."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime, timedelta

from hearthkey.core.outlook import HOUSE_DUE, Ends

LAST_CALL = timedelta(days=30)
"""How long before the end the same duty is said once more."""


@dataclass(frozen=True)
class Duty:
    """One thing to do.

    Args:
        key: the same for the same duty in every export, so that a calendar replaces what it had.
        act_on: the day to do it on, UTC.
        ends: what ends otherwise.
        until: when, UTC.
    """

    key: str
    act_on: datetime
    ends: Ends
    until: datetime


def house_duties(*, list_end: datetime, gateway_end: datetime) -> tuple[Duty, ...]:
    """What keeps the house open: the list in force and the gateway's certificate, 60 and 30 days before each ends."""
    found = [
        Duty(f"{ends.value}-{name}", until - before, ends, until)
        for ends, until in ((Ends.LIST, list_end), (Ends.GATEWAY, gateway_end))
        for name, before in (("due", HOUSE_DUE), ("last-call", LAST_CALL))
    ]
    return tuple(sorted(found, key=lambda duty: duty.act_on))
