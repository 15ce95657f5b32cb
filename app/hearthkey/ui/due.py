"""What is to be done, worked out of a snapshot for whoever shows it: the day list, and the axis."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date, datetime

from hearthkey.core import duties, sealed
from hearthkey.core.duties import Duty, House
from hearthkey.core.in_force import house_ends
from hearthkey.core.keepsakes import keepsake_duties
from hearthkey.core.outgoing import until_it_goes
from hearthkey.core.succession_days import succession_duties
from hearthkey.services.snapshot import Snapshot


@dataclass(frozen=True)
class DueDay:
    """A day on which something is to be done.

    Args:
        at: the first moment on it, UTC.
        duties: soonest first.
    """

    at: datetime
    duties: tuple[Duty, ...]


def duties_of(snapshot: Snapshot) -> tuple[Duty, ...] | None:
    """Everything that is to be done, soonest first; None before there is a household."""
    authority, gateway, newest = snapshot.authority, snapshot.gateway, snapshot.newest_list
    if authority is None or gateway is None or newest is None or not snapshot.diary:
        return None
    list_end, gateway_end = house_ends(snapshot.gateway_state.note, newest, gateway.not_after)
    found = snapshot.succession
    authority_end = found.old.not_after if found is not None and found.underway else authority.not_after
    part_due = None if snapshot.deputy_set is None else snapshot.deputy_set.due
    copy_due = sealed.due(snapshot.sealed_copies, snapshot.diary[0].at)
    anew = () if snapshot.keepsakes is None else keepsake_duties(snapshot.keepsakes)
    waiting = succession_duties(found, snapshot.device_steps, snapshot.at)
    house = House(list_end, gateway_end, authority_end, copy_due, waiting, part_due, anew)
    proved = {one.serial for one in snapshot.passes if one.proved is not None}
    passes = until_it_goes(snapshot.passes, snapshot.outgoing, snapshot.at)
    return duties.forecast(house, passes, proved, snapshot.at, follows=snapshot.follows, visits=snapshot.visits)


def by_day(found: Iterable[Duty], now: datetime) -> tuple[DueDay, ...]:
    """What still lies ahead, by days: ten thousand devices have no more days than one."""
    days: dict[date, list[Duty]] = {}
    for one in found:
        if not one.overdue(now):
            days.setdefault(one.act_on.date(), []).append(one)
    return tuple(DueDay(those[0].act_on, tuple(those)) for those in days.values())
