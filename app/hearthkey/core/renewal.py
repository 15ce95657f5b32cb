"""Renewal: one pass follows another, both get in for a while, and no day is left without one that works."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from enum import StrEnum

from hearthkey.core.errors import Refused
from hearthkey.core.passes import LIVING, Pass, State
from hearthkey.core.proofs import Proof
from hearthkey.core.proofs import Way as ProofWay

OVERLAP_DAYS = 30
"""How long the old pass and the new one get in side by side where nobody says otherwise. Common practice, no source."""

LONGEST_OVERLAP = 3650
"""Days; the old pass ends long before."""

SLOWEST_VISIT = timedelta(days=183)
"""How long it may take until every device was in the householder's hands once: the summer and the Christmas visit.
Common practice, no source."""


class Way(StrEnum):
    """How one pass follows another.

    `RENEWED`: the same device under a new key. `REPLACED`: another device of the same person.
    """

    RENEWED = "renewed"
    REPLACED = "replaced"


@dataclass(frozen=True)
class Follow:
    """One pass made to take the place of another.

    Args:
        new, old: their serials.
        overlap_ends: until when both are meant to get in, UTC; never after the old one's own end.
        made: when the new one was made, UTC.
        way: the same device again, or another one.
    """

    new: str
    old: str
    overlap_ends: datetime
    made: datetime
    way: Way = Way.RENEWED


@dataclass(frozen=True)
class Visit:
    """A day on which the householder and a person meet.

    Args:
        person: whom.
        day: 00:00 UTC of that day.
    """

    person: str
    day: datetime


def overlap_end(old: Pass, days: int, now: datetime) -> datetime:
    """Until when an old pass gets in beside its new one; one whose key is lost never does.

    Raises:
        Refused: overlap-out-of-range.
    """
    if not 1 <= days <= LONGEST_OVERLAP:
        raise Refused("overlap-out-of-range", text=str(days), longest=LONGEST_OVERLAP)
    return now if old.key_lost else min(now + timedelta(days=days), old.not_after)


def works(one: Pass, now: datetime) -> bool:
    """Whether a device gets in with it: it was handed over, and nothing stands against it."""
    return one.state(now) is State.IN_USE


def held(passes: Iterable[Pass], now: datetime) -> list[Pass]:
    """Living passes. One whose key is lost counts only where its device has no other: nobody will ever get in by it."""
    living = [one for one in passes if one.state(now) in LIVING]
    there = {one.identity for one in living if not one.key_lost}
    return [one for one in living if not one.key_lost or one.identity not in there]


def bridged(one: Pass, passes: Iterable[Pass], now: datetime) -> bool:
    """Whether its device gets in with another pass, for at least as long as with this one."""
    return any(
        other.serial != one.serial
        and other.identity == one.identity
        and works(other, now)
        and other.not_after >= one.not_after
        for other in passes
    )


def without_bridged(passes: Sequence[Pass], now: datetime) -> list[Pass]:
    """Leave out every pass whose end nobody will notice; of two that end together, the newer one stays."""
    best: dict[str, Pass] = {}
    for one in passes:
        known = best.get(one.identity)
        if works(one, now) and (known is None or one.not_after >= known.not_after):
            best[one.identity] = one
    found = []
    for one in passes:
        bridge = best.get(one.identity)
        if bridge is None or one.serial == bridge.serial or one.not_after > bridge.not_after:
            found.append(one)
    return found


def waiting_of(identity: str, passes: Iterable[Pass], now: datetime) -> Pass | None:
    """The pass of a device that still has to be handed over, so that nothing can follow meanwhile; None without one."""
    found = [one for one in passes if one.identity == identity and one.state(now) in LIVING]
    return next((one for one in reversed(found) if one.handed_over is None), None)


class Lineage:
    """What follows what, looked up once for many questions.

    Args:
        follows: every row, in the order in which the new passes were made.
    """

    def __init__(self, follows: Iterable[Follow]) -> None:
        self._after: dict[str, list[str]] = {}
        self._overlap: dict[str, datetime] = {}
        for one in follows:
            old, ends = one.old, one.overlap_ends
            self._after.setdefault(old, []).append(one.new)
            self._overlap[old] = max(ends, self._overlap.get(old, ends))

    @property
    def followed(self) -> Iterable[str]:
        """Serials of the passes that another one was made to follow."""
        return self._after

    def successors(self, old: str) -> frozenset[str]:
        """Serials of everything that follows a pass, one after the other."""
        found: set[str] = set()
        ahead = [old]
        while ahead:
            for new in self._after.get(ahead.pop(), ()):
                if new not in found:
                    found.add(new)
                    ahead.append(new)
        return frozenset(found)

    def overlap_ends(self, old: str) -> datetime:
        """Until when a pass that is followed was meant to get in beside all that follow it."""
        return max(self._overlap[one] for one in {old, *self.successors(old)} if one in self._overlap)


def renewals(passes: Iterable[Pass], follows: Iterable[Follow], now: datetime) -> dict[str, Pass]:
    """By the serial of an old pass, the newest that was made to follow it and may still do so."""
    lineage = Lineage(follows)
    living = {
        one.serial: (place, one) for place, one in enumerate(passes) if one.state(now) in LIVING and not one.key_lost
    }
    found = {}
    for old in lineage.followed:
        after = [living[new] for new in lineage.successors(old) if new in living]
        if after:
            found[old] = max(after, key=lambda one: one[0])[1]
    return found


def over_once_proved(passes: Sequence[Pass], follows: Sequence[Follow], now: datetime) -> tuple[Pass, ...]:
    """Old passes that have done their time: what follows them works and was seen to get in.

    While both get in, a link that was opened through the tunnel cannot tell which of the two opened it. Such a proof
    counts once the overlap that was chosen is over.
    """
    lineage = Lineage(follows)
    known = {one.serial: one for one in passes} if follows else {}
    found = []
    for old in lineage.followed:
        if old in known and known[old].state(now) in LIVING:
            after = lineage.successors(old)
            over = over_at(known[old], [known[new] for new in after if new in known], lineage, now)
            if over is not None and over <= now:
                found.append(known[old])
    return tuple(found)


def over_at(old: Pass, after: Iterable[Pass], lineage: Lineage, now: datetime) -> datetime | None:
    """When an old pass has done its time; None where nothing that follows it was seen to get in.

    Args:
        after: all that follows it, one after the other.
    """
    seen = [one for one in after if works(one, now) and one.proofs]
    named = [proof.at for one in seen for proof in one.proofs if tells(proof, old)]
    ends = [lineage.overlap_ends(old.serial)] if seen else []
    return min([*named, *ends], default=None)


def named(chosen: Iterable[Pass], passes: Iterable[Pass], follows: Iterable[Follow], now: datetime) -> tuple[Pass, ...]:
    """Those old passes whose follower got in, and it was not the old one."""
    lineage, working = Lineage(follows), {one.serial: one for one in passes if works(one, now)}
    found = []
    for old in chosen:
        after = [working[new] for new in lineage.successors(old.serial) if new in working]
        if any(tells(proof, old) for one in after for proof in one.proofs):
            found.append(old)
    return tuple(found)


def tells(proof: Proof, old: Pass) -> bool:
    """Whether a proof of a new pass shows that it was not the old one which got in.

    A person says which one; an address in the tunnel belongs to either, unless the old one could not get in at that
    time.
    """
    shut = old.handed_over is None or old.key_lost or (old.since is not None and old.since <= proof.at)
    return shut or proof.way is ProofWay.TOLD


def _proved(one: Pass, now: datetime) -> bool:
    return works(one, now) and one.proved is not None


def may_supersede(old: Pass, passes: Sequence[Pass], follows: Sequence[Follow], now: datetime) -> bool:
    """Whether an old pass can go without leaving its device, or what replaced the device, a day without.

    One that is stopped lets nobody in as it is; one that gets in needs a pass beside it that works for as long.
    """
    after = Lineage(follows).successors(old.serial)
    if old.state(now) is State.STOPPED:
        return any(works(one, now) for one in passes if one.serial in after)
    if bridged(old, passes, now):
        return True
    replacing = {one.new for one in follows if one.way is Way.REPLACED} & after
    return any(_proved(one, now) for one in passes if one.serial in replacing)


def last_visit(person: str, before: datetime, visits: Iterable[Visit], now: datetime) -> datetime | None:
    """The last day on which a person is met and that is over before something ends; days that are over do not count.

    Nor does one so long before the end that everybody is met once more until then.
    """
    folded, day = person.casefold(), timedelta(days=1)
    days = [
        one.day
        for one in visits
        if one.person.casefold() == folded
        and before - SLOWEST_VISIT <= one.day
        and one.day + day - timedelta(seconds=1) <= before
        and one.day + day > now
    ]
    return max(days, default=None)


def due_by(passes: Sequence[Pass], follows: Sequence[Follow], until: datetime, now: datetime) -> list[Pass]:
    """Passes to be renewed in a round: their devices would lose access by then, and nothing new waits for them.

    A guest's pass is meant to end, so it is in no round.
    """
    found = []
    renewed = renewals(passes, follows, now)
    for one in without_bridged([one for one in passes if one.state(now) in LIVING], now):
        if one.guest or one.not_after > until or one.state(now) is State.STOPPED:
            continue
        after = renewed.get(one.serial)
        if one.handed_over is not None and (after is None or after.identity != one.identity):
            found.append(one)
    return found
