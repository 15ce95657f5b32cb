"""Which rows stand on the sheet, and in which order."""

from __future__ import annotations

from collections.abc import Iterable
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
    """

    key: str
    who: str
    source: Pass | Draft | Fixture
    place: int
    count: int

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
    grouped: dict[str, list[tuple[str, Pass | Draft]]] = {}
    past: dict[str, list[tuple[str, Pass | Draft]]] = {}
    for one in passes:
        where = past if one.state(now) in _PAST else grouped
        grouped.setdefault(one.person, [])
        where.setdefault(one.person, []).append((one.serial, one))
    if draft is not None:
        grouped.setdefault(draft.person, []).append((DRAFT_KEY, draft))
    found = []
    for who, living in grouped.items():
        rows = [*living, *past.get(who, [])]
        found += [Entry(key, who, source, place, len(rows)) for place, (key, source) in enumerate(rows)]
    return found


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
    return [Entry(key, who, Fixture(key), place, len(there)) for place, key in enumerate(there)]
