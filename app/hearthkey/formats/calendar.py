"""Duties as a calendar file (RFC 5545), for whatever calendar the family uses."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta

from icalendar import Alarm, Calendar, Event

_COUNTED_FROM = datetime(2024, 1, 1, tzinfo=UTC)
"""SEQUENCE is the seconds since then: it rises with every export, is larger than the minutes since 1970 that it was
before, and stays below the 2147483647 of RFC 5545 section 3.3.8 until 2092."""


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
        event.add("sequence", max(0, int((made - _COUNTED_FROM).total_seconds())))
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
