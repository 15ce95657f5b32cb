"""A household about to be taken over: what goes on as it is, and what is made anew."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import datetime

from hearthkey.core.adopted import Adopted, identity_of, labels, reason_of
from hearthkey.core.certificates import serial_hex
from hearthkey.core.found_home import FoundHome
from hearthkey.core.found_household import FoundCertificate, FoundEntry
from hearthkey.core.household import Household
from hearthkey.core.keysets import BROAD, COMPACT, P_256, P_384, SUITE_384, KeySet
from hearthkey.core.kinds import OTHER, STRONG
from hearthkey.core.network import Caution
from hearthkey.core.passes import Pass
from hearthkey.core.revocation import Entry

UNNAMED = "Somebody"
"""Whose passes are until somebody says it; a shell may put it in its own words."""

_KEY_SETS = {P_256: COMPACT, P_384: SUITE_384}


@dataclass(frozen=True)
class AdoptedPass:
    """A pass that goes on.

    Args:
        about: as the register will have it.
        adopted: where it came from.
        certificate: DER.
    """

    about: Pass
    adopted: Adopted
    certificate: bytes


@dataclass(frozen=True)
class AdoptPlan:
    """A household about to be taken over.

    Args:
        home: what was found.
        household: as it will stand in the register.
        gateway_key_set: what a new gateway certificate would sign with.
        kept_gateway: the gateway's certificate that goes on, or None.
        passes: those that go on.
        serials: other serials that were used, with their ends.
        entries: what the next list says.
        list_number: its number.
        cautions: what the householder should know first.
    """

    home: FoundHome
    household: Household
    gateway_key_set: KeySet
    kept_gateway: FoundCertificate | None
    passes: tuple[AdoptedPass, ...]
    serials: tuple[tuple[str, datetime], ...]
    entries: tuple[Entry, ...]
    list_number: int
    cautions: tuple[Caution, ...]


def plan_passes(home: FoundHome, *, unnamed: str, now: datetime) -> tuple[AdoptedPass, ...]:
    """Decide which certificates become passes: devices' that have not ended and that a list can name.

    Where several share a serial the youngest is taken, as one entry withdraws them all.
    """
    alive = [one for one in home.devices if one.listable and now <= one.not_after]
    youngest = {one.serial: one for one in sorted(alive, key=lambda one: one.not_before)}
    called = labels(youngest.values())
    return tuple(_pass(one, unnamed, called[identity_of(one)]) for one in youngest.values())


def _pass(one: FoundCertificate, person: str, label: str) -> AdoptedPass:
    serial = serial_hex(one.serial)
    about = Pass(
        person=person,
        device=label,
        kind=OTHER,
        identity=identity_of(one),
        serial=serial,
        key_set=_KEY_SETS.get(one.key_type, BROAD).name,
        container=STRONG,
        guest=False,
        not_before=one.not_before,
        not_after=one.not_after,
        handed_over=None,
        reason=None,
        since=None,
    )
    return AdoptedPass(about, Adopted(serial, one.subject, one.file), one.der)


def plan_entries(home: FoundHome, *, authority_end: datetime, now: datetime) -> tuple[Entry, ...]:
    """What stays withdrawn; whose end nobody knows stays on the list as long as there is a CA."""
    ends = {one.serial: one.not_after for one in home.issued}
    return tuple(
        _entry(one, ends.get(one.serial) or one.not_after or authority_end, now)
        for one in home.withdrawn
        if 0 < one.serial < 1 << 159
    )


def _entry(one: FoundEntry, ends: datetime, now: datetime) -> Entry:
    reason, listed = reason_of(one)
    return Entry(serial_hex(one.serial), one.since or now, reason, ends, listed)


def plan_serials(
    home: FoundHome, entries: Iterable[Entry], authority_end: datetime
) -> tuple[tuple[str, datetime], ...]:
    """Every serial that was ever used, so that none is used again (RFC 5280 section 4.1.2.2)."""
    used = {one.serial: one.not_after for one in home.issued} | dict(home.recorded)
    if home.authority is not None:
        used[home.authority.serial] = authority_end
    known = {serial_hex(serial): ends for serial, ends in used.items() if 0 < serial < 1 << 159}
    return tuple(({one.serial: one.not_after for one in entries} | known).items())
