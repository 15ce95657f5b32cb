"""Duties as a calendar file (RFC 5545), for whatever calendar the family uses."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import datetime, timedelta

from icalendar import Alarm, Calendar, Event


@dataclass(frozen=True)
class Day:
    """An all-day event.

    Args:
        key: stays the same for the same duty.
        on: the day, by its date in UTC.
        title: one line.
        reason: the text under it.
    """

    key: str
    on: datetime
    title: str
    reason: str


def write(days: Iterable[Day], *, household: str, owner: str, made: datetime) -> bytes:
    """Write a calendar of all-day events with an alarm on the morning of each.

    Args:
        household: what the calendar is called.
        owner: makes the UIDs of this household its own (RFC 5545 section 3.8.4.7); no person's name.
        made: DTSTAMP and SEQUENCE, so that a later export replaces an earlier one.
    """
    calendar = Calendar()
    calendar.add("prodid", "-//Hearthkey//Dates//EN")
    calendar.add("version", "2.0")
    calendar.add("x-wr-calname", household)
    for day in days:
        event = Event()
        event.add("uid", f"{day.key}.{owner}@hearthkey.invalid")
        event.add("dtstamp", made)
        event.add("sequence", int(made.timestamp()) // 60)
        event.add("dtstart", day.on.date())
        event.add("dtend", day.on.date() + timedelta(days=1))
        event.add("transp", "TRANSPARENT")
        event.add("summary", day.title)
        event.add("description", day.reason)
        alarm = Alarm()
        alarm.add("action", "DISPLAY")
        alarm.add("description", day.title)
        alarm.add("trigger", timedelta(hours=9))
        event.add_component(alarm)
        calendar.add_component(event)
    return bytes(calendar.to_ical())
