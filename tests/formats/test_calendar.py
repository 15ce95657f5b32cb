"""The calendar file: read back by the library, folded as the standard wants, and replacing what it was before."""

from __future__ import annotations

from datetime import UTC, date, datetime, timedelta
from typing import Any

from hypothesis import given
from hypothesis import strategies as st
from icalendar import Calendar

from hearthkey.formats import calendar
from hearthkey.formats.calendar import Day

MADE = datetime(2026, 5, 12, 9, 30, 17, tzinfo=UTC)
LONG = "Gib Großmutter Odiles Küchen-Täblet den Paß, dañ „Quitte“ – 東の家の小さな鍵を渡す 🗝🗝🗝 €€€ naïveté Ωmega"


def written(*days: Day, made: datetime = MADE) -> bytes:
    """A calendar of the practice household."""
    return calendar.write(days, household="Quince Cottage", owner="a7f3", made=made)


def events(data: bytes) -> list[Any]:
    """What the library reads back."""
    return list(Calendar.from_ical(data).walk("VEVENT"))


def unfolded(data: bytes) -> bytes:
    """As RFC 5545 section 3.1 undoes folding: CRLF and one white space are taken out, octet by octet."""
    return data.replace(b"\r\n ", b"").replace(b"\r\n\t", b"")


def test_a_long_summary_in_other_scripts_is_folded_at_75_octets_and_comes_back() -> None:
    """Broken if it fails: a calendar drops the line, or shows half a letter. RFC 5545 section 3.1."""
    data = written(Day("renew-0a", MADE, LONG, f"{LONG}; {LONG}, \\ and\nanother line"))
    lines = data.split(b"\r\n")
    assert lines[-1] == b""
    assert b"\n" not in b"".join(lines)
    assert max(len(one) for one in lines) <= 75
    assert any(one.startswith(b" ") for one in lines)
    for one in lines:
        one.decode("utf-8")  # no letter is cut in two, though the standard only asks readers to bear it
    (event,) = events(data)
    assert str(event["SUMMARY"]) == LONG
    assert str(event["DESCRIPTION"]) == f"{LONG}; {LONG}, \\ and\nanother line"
    assert f"SUMMARY:{LONG.replace(',', chr(92) + ',')}".encode() in unfolded(data).split(b"\r\n")


@given(st.text(st.characters(exclude_categories=["Cc", "Cs"]), min_size=1, max_size=120))
def test_any_words_come_back_and_no_line_is_longer(words: str) -> None:
    """Broken if it fails: the name of a device breaks the whole file."""
    data = written(Day("renew-0a", MADE, words, words))
    assert max(len(one) for one in data.split(b"\r\n")) <= 75
    (event,) = events(data)
    assert str(event["SUMMARY"]) == words
    assert str(event["DESCRIPTION"]) == words


def test_a_date_that_moved_replaces_the_one_before() -> None:
    """Broken if it fails: the family sees the old day and the new one, or only the old. RFC 5545 section 3.8.7.4."""
    day = Day("renew-0a", MADE + timedelta(days=30), "Renew it", "Because")
    later = Day("renew-0a", MADE + timedelta(days=90), "Renew it", "Because")
    (first,) = events(written(day))
    (again,) = events(written(later, made=MADE + timedelta(minutes=1)))
    assert again["UID"] == first["UID"]
    assert int(again["SEQUENCE"]) > int(first["SEQUENCE"])
    assert again["DTSTAMP"].dt > first["DTSTAMP"].dt
    assert [one["DTSTART"].dt for one in (first, again)] == [date(2026, 6, 11), date(2026, 8, 10)]


def test_two_exports_in_one_minute_differ_as_well() -> None:
    """Broken if it fails: a slip mended at once stays in the calendar for good, for the number is not larger."""
    day = Day("renew-0a", MADE, "Renew it", "Because")
    (first,) = events(written(day))
    (again,) = events(written(day, made=MADE + timedelta(seconds=1)))
    assert int(again["SEQUENCE"]) > int(first["SEQUENCE"])


def test_the_number_stays_within_what_calendars_read() -> None:
    """Broken if it fails: RFC 5545 section 3.3.8 ends whole numbers at 2147483647, and a calendar refuses the file."""
    (event,) = events(written(Day("a", MADE, "b", "c"), made=datetime(2090, 1, 1, tzinfo=UTC)))
    assert 0 < int(event["SEQUENCE"]) <= 2147483647


def test_every_day_is_all_day_with_an_alarm_on_its_morning() -> None:
    """Broken if it fails: a duty of one day blocks an hour at midnight. RFC 5545 sections 3.6.1 and 3.6.6."""
    (event,) = events(written(Day("a", MADE, "Renew it", "Because")))
    assert (event["DTSTART"].dt, event["DTEND"].dt) == (date(2026, 5, 12), date(2026, 5, 13))
    assert event["DTSTART"].params["VALUE"] == "DATE"
    (alarm,) = event.walk("VALARM")
    assert alarm["TRIGGER"].dt == timedelta(hours=9)
