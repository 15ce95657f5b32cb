"""Reads the text database of issued certificates, and counter files, that a CA made by hand keeps.

The database is described in openssl-ca(1): a line for each certificate, six fields between tabs. Status (V, R or
E), end, when it was withdrawn with the reason behind a comma, serial in hex, file name, subject.
"""

from __future__ import annotations

import re
from datetime import UTC, datetime

from hearthkey.core.found_household import FoundCounter, FoundDatabase, FoundEntry, Row

MOST_ROWS = 20_000
_LONGEST_NUMBER = 64
"""Hex digits; three times what RFC 5280 section 4.1.2.2 allows, so that too long ones are seen as such."""

_MOMENT = re.compile(r"(\d{2}|\d{4})(\d{2})(\d{2})(\d{2})(\d{2})(\d{2})Z")
_HEX = re.compile(rf"-?[0-9A-Fa-f]{{1,{_LONGEST_NUMBER}}}")
_REASONS = {
    "unspecified": 0,
    "keycompromise": 1,
    "cacompromise": 2,
    "affiliationchanged": 3,
    "superseded": 4,
    "cessationofoperation": 5,
    "certificatehold": 6,
    "holdinstruction": 6,
    "removefromcrl": 8,
    "privilegewithdrawn": 9,
    "aacompromise": 10,
    "keytime": 1,
    "cakeytime": 2,
}
"""RFC 5280 section 5.3.1; those with an argument behind them as openssl-ca(1) names them."""


def read_index(file: str, text: str) -> FoundDatabase | None:
    """Read a database, or return None for a text that is none."""
    rows: list[Row] = []
    unread: list[int] = []
    for number, line in enumerate(text.splitlines()[:MOST_ROWS], 1):
        if not line.strip():
            continue
        row = _row(line)
        if row is None:
            unread.append(number)
        else:
            rows.append(row)
    return FoundDatabase(file, tuple(rows), tuple(unread)) if rows and len(unread) <= len(rows) else None


def read_counter(file: str, text: str) -> FoundCounter | None:
    """Read a counter file, or return None for a text that is none; its name says what it counts."""
    name, body = file.rpartition("/")[2].lower(), text.strip()
    of_lists = "crl" in name
    if not (of_lists or "serial" in name) or not _HEX.fullmatch(body) or body.startswith("-"):
        return None
    return FoundCounter(file, of_lists, int(body, 16))


def _row(line: str) -> Row | None:
    fields = line.split("\t")
    if len(fields) != 6 or fields[0] not in {"V", "R", "E"} or not _HEX.fullmatch(fields[3]):
        return None
    ends, serial = _moment(fields[1]), int(fields[3], 16)
    if ends is None:
        return None
    withdrawn = None
    if fields[0] == "R":
        since, _, reason = fields[2].partition(",")
        number = _REASONS.get(reason.partition(",")[0].strip().lower())
        withdrawn = FoundEntry(serial, _moment(since), number, ends)
    return Row(serial, ends, withdrawn, fields[5][:400])


def _moment(text: str) -> datetime | None:
    """UTCTime or GeneralizedTime (RFC 5280 section 4.1.2.5.1: two digits from 50 on are of the last century)."""
    found = _MOMENT.fullmatch(text.strip())
    if found is None:
        return None
    year, *others = (int(one) for one in found.groups())
    if len(found[1]) == 2:
        year += 1900 if year >= 50 else 2000
    try:
        return datetime(year, *others, tzinfo=UTC)  # type: ignore[arg-type,misc]  # five numbers, as the pattern has it
    except ValueError:
        return None
