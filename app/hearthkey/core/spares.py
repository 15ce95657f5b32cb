"""Spare stop lists: revocation lists signed in advance, so that a lost device is stopped without a passphrase."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import datetime
from enum import StrEnum

from hearthkey.core.passes import Pass
from hearthkey.core.revocation import Entry, ListPlan, Reason, SignedList, plan_list

MOST = 500
"""With more devices than that there is no list for each device, with more people none for each person; there is
always one for everybody. Ten thousand signatures at every change would keep a laptop busy for a minute."""


class Scope(StrEnum):
    """Whom a spare list stops."""

    DEVICE = "device"
    PERSON = "person"
    EVERYBODY = "everybody"


@dataclass(frozen=True)
class SparePlan:
    """A spare list to be signed.

    Args:
        scope: whom it stops.
        subject: identity of the device or name of the person; empty for everybody.
        serials: what it adds to the list it is based on.
        to_sign: the whole list.
    """

    scope: Scope
    subject: str
    serials: frozenset[str]
    to_sign: ListPlan


@dataclass(frozen=True)
class SpareList:
    """A spare list as the register keeps it.

    Args:
        scope, subject, serials: as in `SparePlan`.
        base: number of the list whose entries it has besides.
        number: CRLNumber of its own.
    """

    scope: Scope
    subject: str
    serials: frozenset[str]
    base: int
    number: int


@dataclass(frozen=True)
class SignedSpare:
    """A spare list with its bytes."""

    about: SpareList
    signed: SignedList


def plan_spares(
    passes: Sequence[Pass],
    entries: Sequence[Entry],
    *,
    highest_number: int,
    previous_update: datetime | None,
    authority_end: datetime,
    now: datetime,
) -> list[SparePlan]:
    """Decide the spare lists for a household as it stands.

    Each has a number of its own, and the wider its scope the higher the number, so that a wider one
    can follow a narrower one (RFC 5280 section 5.2.3 wants rising numbers).
    """
    getting_in = [one for one in passes if one.gets_in(now)]
    groups: list[tuple[Scope, str, list[Pass]]] = []
    for scope, what in ((Scope.DEVICE, "identity"), (Scope.PERSON, "person")):
        found_here = _by(getting_in, what)
        groups += [(scope, subject, found) for subject, found in found_here if len(found_here) <= MOST]
    if getting_in:
        groups.append((Scope.EVERYBODY, "", getting_in))
    plans = []
    for number, (scope, subject, found) in enumerate(groups, highest_number):
        more = [Entry(one.serial, now, Reason.CERTIFICATE_HOLD, one.not_after) for one in found]
        to_sign = plan_list(
            [*entries, *more],
            highest_number=number,
            previous_update=previous_update,
            authority_end=authority_end,
            now=now,
        )
        plans.append(SparePlan(scope, subject, frozenset(one.serial for one in found), to_sign))
    return plans


def _by(passes: Iterable[Pass], what: str) -> list[tuple[str, list[Pass]]]:
    found: dict[str, list[Pass]] = {}
    for one in passes:
        found.setdefault(getattr(one, what), []).append(one)
    return list(found.items())


def choose(
    spares: Iterable[SpareList], wanted: frozenset[str], *, newest_number: int, used: Iterable[SpareList]
) -> SpareList | None:
    """Find the spare list that stops what is wanted, lets nobody back in, and touches the fewest others.

    Args:
        spares: all that are kept.
        wanted: serials to stop.
        newest_number: number of the newest list, signed in the ordinary way or a spare that was used.
        used: spare lists that were used since the last ordinary list, whose entries must stay.

    Returns:
        None where no signed list covers it; then the passphrase is needed, or more must be stopped.
    """
    taken = list(used)
    base = min((one.base for one in taken), default=newest_number)
    needed = wanted.union(*(one.serials for one in taken))
    fitting = [one for one in spares if one.base == base and one.number > newest_number and needed <= one.serials]
    return min(fitting, key=lambda one: (len(one.serials), one.number), default=None)


def wider(spares: Iterable[SpareList], *, newest_number: int, used: Iterable[SpareList]) -> SpareList | None:
    """The spare list that stops everybody, where it can still be used."""
    everyone = [one for one in spares if one.scope is Scope.EVERYBODY]
    return choose(everyone, frozenset(), newest_number=newest_number, used=used)
