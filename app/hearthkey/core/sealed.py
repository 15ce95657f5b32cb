"""A sealed copy: what it holds, which ones are kept, and when the last one is too old."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta

KEPT = 10
"""Copies that the app keeps of those that it makes by itself."""

AT_GATEWAY = "gateway:"
"""What the place of a copy at the gateway begins with; no absolute path does."""

TOO_OLD = timedelta(days=180)
"""After that long without a copy that was really opened, one is due. A choice of ours, not a standard."""


@dataclass(frozen=True)
class Contents:
    """What a copy says of itself; everything else in it is checked against this.

    Args:
        made: when, UTC.
        household: its certified name.
        authority: SHA-256 of the CA certificate, lower-case hex.
        passes: how many passes were ever made.
        withdrawn: serials on hold or revoked, lower-case hex, in order.
        list_mark: the highest list number ever given.
        diary_entries: how many.
        diary_link: the hash that the diary ends in, so that a tail cut off later is noticed.
        schema: version of the register's schema.
        files: SHA-256 (hex) by name of every other file in the copy.
    """

    made: datetime
    household: str
    authority: str
    passes: int
    withdrawn: tuple[str, ...]
    list_mark: int
    diary_entries: int
    diary_link: str
    schema: int
    files: tuple[tuple[str, str], ...]


@dataclass(frozen=True)
class CopyNote:
    """What the register remembers of a copy.

    Args:
        made: when, UTC.
        sha256: of the whole file, lower-case hex.
        place: the folder it was written to; behind `AT_GATEWAY`, which gateway.
        name: of the file.
        diary_entries, diary_link: where the diary stood.
        tried: when it was last opened and found whole, or None.
    """

    made: datetime
    sha256: str
    place: str
    name: str
    diary_entries: int
    diary_link: str
    tried: datetime | None

    @property
    def at_gateway(self) -> bool:
        """Whether it lies at the gateway, and not where this computer sees it."""
        return self.place.startswith(AT_GATEWAY)


def last_tried(notes: Sequence[CopyNote]) -> CopyNote | None:
    """The newest of the copies that were ever really opened."""
    return max((one for one in notes if one.tried is not None), key=lambda one: one.made, default=None)


def due(notes: Sequence[CopyNote], founded: datetime) -> datetime:
    """The day by which a copy has to be made and tried."""
    tried = last_tried(notes)
    return founded if tried is None or tried.tried is None else min(tried.made, tried.tried) + TOO_OLD


def superfluous(names: Sequence[str]) -> tuple[str, ...]:
    """Which of the copies in the app's own folder may go: all but the newest ten. Names sort by their time."""
    return tuple(sorted(names)[:-KEPT])
