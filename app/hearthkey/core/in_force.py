"""What the gateway is known to hold, and what may be said of it."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime, timedelta
from enum import StrEnum

from hearthkey.core.revocation import SignedList
from hearthkey.core.target import Target

CLOCK_TOLERATED = timedelta(minutes=2)
"""A gateway's clock further off than that is said: certificates begin and end by it. Common practice."""


@dataclass(frozen=True)
class GatewayNote:
    """What was seen at the gateway when it was last read.

    Args:
        looked: when that was, UTC.
        set_id: the set in force then, None where there was none.
        list_number, list_until: of the list in it; None where none could be read.
        gateway_serial, gateway_until: of the gateway's certificate in it; empty and None where none could be read.
        made_of: mark of the settings and templates that set was made from; empty where it was not ours.
        clock_off: seconds by which the gateway's clock is ahead of ours; None where it did not tell.
        delivered: when a delivery was last finished and read back, UTC.
        reload_said: what the command after a delivery said when it failed; None where it succeeded or there is none.
        failed, failure: since when tries to reach the gateway fail after `looked`, and the last code; None, empty.
    """

    looked: datetime | None = None
    set_id: str | None = None
    list_number: int | None = None
    list_until: datetime | None = None
    gateway_serial: str = ""
    gateway_until: datetime | None = None
    made_of: str = ""
    clock_off: int | None = None
    delivered: datetime | None = None
    reload_said: str | None = None
    failed: datetime | None = None
    failure: str = ""


class Standing(StrEnum):
    """What may be said of the gateway; never more than was seen."""

    NO_TARGET = "no-target"
    NEVER = "never"
    IN_FORCE = "in-force"
    WAITING = "waiting"
    NOT_LOADED = "not-loaded"
    UNKNOWN = "unknown"


KNOWN = frozenset({Standing.IN_FORCE, Standing.WAITING, Standing.NOT_LOADED})
"""The gateway was read at the last try, so that what was seen there may be said of it."""


@dataclass(frozen=True)
class GatewayState:
    """The gateway as the strip shows it.

    Args:
        standing: in one word.
        target: where it is, None before the householder said so.
        note: what was seen last.
        newest_number: number of the newest list here.
        waiting: what is decided here and not in force there, as titles of devices.
        other_changes: settings or the gateway's own certificate differ from what is there.
    """

    standing: Standing
    target: Target | None
    note: GatewayNote
    newest_number: int
    waiting: tuple[str, ...] = ()
    other_changes: bool = False

    @property
    def clock_wrong(self) -> bool:
        """Whether the two clocks are too far apart."""
        off = self.note.clock_off
        return off is not None and abs(off) > CLOCK_TOLERATED.total_seconds()

    @property
    def pending(self) -> bool:
        """Whether a delivery has something to do."""
        return self.standing in {Standing.NEVER, Standing.WAITING, Standing.NOT_LOADED, Standing.UNKNOWN}


def house_ends(note: GatewayNote, newest: SignedList, gateway_until: datetime) -> tuple[datetime, datetime]:
    """When the list and the gateway's certificate end: those that the gateway was seen to hold, where that is known.

    Args:
        newest: the newest list here.
        gateway_until: end of the gateway's newest certificate here.
    """
    return note.list_until or newest.next_update, note.gateway_until or gateway_until


def standing_of(
    target: Target | None, note: GatewayNote, *, newest_number: int, gateway_serial: str, made_of: str
) -> Standing:
    """Decide it from what was seen and what is wanted."""
    if target is None:
        return Standing.NO_TARGET
    if note.failed is not None:
        return Standing.UNKNOWN
    if note.looked is None or note.set_id is None:
        return Standing.NEVER
    same = (note.list_number, note.gateway_serial, note.made_of) == (newest_number, gateway_serial, made_of)
    if not same:
        return Standing.WAITING
    return Standing.IN_FORCE if note.reload_said is None else Standing.NOT_LOADED
