"""Which rows stand on the sheet, and in which order."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import datetime

from hearthkey.core.passes import Pass, State
from hearthkey.services.snapshot import Snapshot

DRAFT_KEY = "draft"
"""The key of the row that is being typed in; a serial is hex and never reads like this."""

_PAST = frozenset({State.REVOKED, State.ENDED})


@dataclass(frozen=True, slots=True)
class Draft:
    """A device while it is typed in.

    Args:
        end: UTC, None while nobody has said.
    """

    person: str
    device: str
    end: datetime | None


@dataclass(frozen=True, slots=True)
class Fixture:
    """A thing of the house that has an end as passes have.

    Args:
        key: gateway, list or ca.
    """

    key: str


@dataclass(frozen=True, slots=True)
class Entry:
    """A row before it is worked out.

    Args:
        key: tells it from all others, and stays the same when its contents change.
        who: the person's name as it stands at the left.
        place, count: its number among the rows of this person, from 0, and how many there are.
        devices: how many devices those rows are of; a renewed one has two rows.
    """

    key: str
    who: str
    source: Pass | Draft | Fixture
    place: int
    count: int
    devices: int = 1

    @property
    def first(self) -> bool:
        """Whether it begins a person."""
        return self.place == 0

    @property
    def last(self) -> bool:
        """Whether it ends a person."""
        return self.place == self.count - 1


def people(passes: Iterable[Pass], now: datetime, draft: Draft | None = None) -> list[Entry]:
    """Rows of the people: in the order the register tells them, what has ended below what has not."""
    living: dict[str, list[Pass]] = {}
    past: dict[str, list[Pass]] = {}
    for one in passes:
        living.setdefault(one.person, [])
        where = past if one.state(now) in _PAST else living
        where.setdefault(one.person, []).append(one)
    found = []
    for who, rows in living.items():
        found += _rows_of(who, [(one.serial, one) for one in (*rows, *past.get(who, ()))])
    return found if draft is None else with_draft(found, draft, now)


def with_draft(entries: Sequence[Entry], draft: Draft, now: datetime) -> list[Entry]:
    """The same rows with one that is being typed in, behind what has not ended of its person."""
    begin = next((number for number, entry in enumerate(entries) if entry.who == draft.person), len(entries))
    end = begin + entries[begin].count if begin < len(entries) else begin
    kin = [(entry.key, entry.source) for entry in entries[begin:end]]
    place = sum(1 for _, source in kin if not (isinstance(source, Pass) and source.state(now) in _PAST))
    kin.insert(place, (DRAFT_KEY, draft))
    return [*entries[:begin], *_rows_of(draft.person, kin), *entries[end:]]


def _rows_of(who: str, sources: Sequence[tuple[str, Pass | Draft | Fixture]]) -> list[Entry]:
    count = len(sources)
    devices = len({source.identity if isinstance(source, Pass) else key for key, source in sources})
    return [Entry(key, who, source, place, count, devices) for place, (key, source) in enumerate(sources)]


def house(snapshot: Snapshot, who: str) -> list[Entry]:
    """Rows of what lets everybody in: gateway, revocation list, CA."""
    there = [
        key
        for key, thing in (
            ("gateway", snapshot.gateway),
            ("list", snapshot.newest_list),
            ("ca", snapshot.authority),
        )
        if thing is not None
    ]
    return _rows_of(who, [(key, Fixture(key)) for key in there])
