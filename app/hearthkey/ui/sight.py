"""A snapshot as the window sees it: what its panels would work out of ten thousand passes is worked out beside them."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass, field, fields
from datetime import datetime
from functools import cached_property
from typing import Any, TypeVar

from hearthkey.core.duties import Duty
from hearthkey.core.in_force import house_ends
from hearthkey.core.outgoing import until_it_goes
from hearthkey.core.outlook import Outlook, is_due, outlook
from hearthkey.core.passes import Pass, State
from hearthkey.core.renewal import without_bridged
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.due import DueDay, by_day, duties_of
from hearthkey.ui.entries import Entry, people

T = TypeVar("T")

LONGEST = 24
"""Among so many names, the longest by letters, is the widest by pixels, or near enough for its line to break."""


@dataclass(frozen=True)
class Sight(Snapshot):
    """A snapshot that can be asked for more, and answers each question from what it worked out at the first.

    Args:
        rows_before: rows of the people at the look before, by key; those that are the same are taken over.
    """

    rows_before: Mapping[str, Entry] = field(default_factory=dict, repr=False, compare=False)

    @cached_property
    def rows(self) -> tuple[Entry, ...]:
        """The rows of the people."""
        return tuple(
            _kept(
                self.rows_before,
                people(until_it_goes(self.passes, self.outgoing, self.at), self.at),
                lambda entry: entry.key,
            )
        )

    @cached_property
    def names(self) -> tuple[list[str], list[str]]:
        """The longest names of people, and of devices."""
        return longest(one.person for one in self.passes), longest(one.device for one in self.passes)

    @cached_property
    def family(self) -> list[str]:
        """The people who have passes, guests left out, in the order of the sheet."""
        return list(dict.fromkeys(one.person for one in self.passes if not one.guest))

    @cached_property
    def waiting(self) -> dict[str, Pass]:
        """The passes that wait in the tray, by serial."""
        return {one.serial: one for one in self.passes if one.state(self.at) is State.WAITING}

    @cached_property
    def followed(self) -> frozenset[str]:
        """Serials of the passes that end soon, and for whose device the next one was made already."""
        waiting = {one.identity for one in self.waiting.values()}
        unbridged = {one.serial for one in without_bridged(self.passes, self.at)}
        due = [one for one in self.passes if is_due(one, self.at)]
        return frozenset(one.serial for one in due if one.identity in waiting or one.serial not in unbridged)

    @cached_property
    def outlook(self) -> Outlook | None:
        """Until when all is well; None before there is a list or a gateway."""
        if self.newest_list is None or self.gateway is None:
            return None
        list_end, gateway_end = house_ends(self.gateway_state.note, self.newest_list, self.gateway.not_after)
        return outlook(self.passes, list_end=list_end, gateway_end=gateway_end, now=self.at, outgoing=self.outgoing)

    @cached_property
    def duties(self) -> tuple[Duty, ...] | None:
        """Everything that is to be done, soonest first; None before there is a household."""
        return duties_of(self)

    @cached_property
    def due_days(self) -> tuple[DueDay, ...]:
        """The days ahead on which something is to be done."""
        return by_day(self.duties or (), self.at)

    @cached_property
    def first_proof(self) -> datetime | None:
        """When anybody was first seen to get in, UTC; None where nobody was."""
        return min((one.proofs[0].at for one in self.passes if one.proofs), default=None)

    def work_out(self) -> None:
        """Answer every question now, so that nobody waits for an answer later."""
        _ = self.rows, self.names, self.family, self.waiting, self.followed
        _ = self.outlook, self.due_days, self.first_proof


def sight(snapshot: Snapshot) -> Sight:
    """A snapshot as a sight; nothing is worked out yet."""
    return snapshot if isinstance(snapshot, Sight) else Sight(**_values(snapshot))


def sight_after(before: Sight | None, snapshot: Snapshot) -> Sight:
    """A snapshot as a sight, with everything worked out.

    Passes, diary entries and rows that have not changed are the very objects of the sight before, so
    that whoever compares two sights sees at once what is new, and two of them take little more room
    than one.
    """
    if before is None:
        seen = sight(snapshot)
    else:
        known = {one.serial: one for one in before.passes}
        written = {one.link: one for one in before.diary}
        values = _values(snapshot) | {
            "passes": tuple(_kept(known, snapshot.passes, lambda one: one.serial)),
            "diary": tuple(_kept(written, snapshot.diary, lambda one: one.link)),
            "rows_before": {entry.key: entry for entry in before.rows},
        }
        seen = Sight(**values)
    seen.work_out()
    return seen


def longest(names: Iterable[str]) -> list[str]:
    """The longest names by letters, the longest first."""
    return sorted(set(names), key=len, reverse=True)[:LONGEST]


def _kept(known: Mapping[str, T], found: Sequence[T], key: Callable[[T], str]) -> Iterable[T]:
    for one in found:
        before = known.get(key(one))
        yield before if before is not None and before == one else one


def _values(snapshot: Snapshot) -> dict[str, Any]:
    return {one.name: getattr(snapshot, one.name) for one in fields(Snapshot)}
