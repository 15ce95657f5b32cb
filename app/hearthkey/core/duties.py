"""Days on which the householder should do something, so that no date runs over quietly."""

from __future__ import annotations

from collections.abc import Container, Iterable, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from enum import StrEnum

from hearthkey.core.outlook import DUE, HOUSE_DUE
from hearthkey.core.passes import Pass, State
from hearthkey.core.renewal import (
    SLOWEST_VISIT,
    Follow,
    Lineage,
    Visit,
    held,
    last_visit,
    over_at,
    renewals,
    without_bridged,
    works,
)

LAST_CALL = timedelta(days=30)
"""How long before everybody would be refused the same duty is said once more."""

PROVE_AFTER = timedelta(days=3)
"""How long after hand-over a device should have been seen to get in from outside."""

SUCCESSION_AHEAD = (timedelta(days=730), timedelta(days=365), timedelta(days=183), timedelta())
"""How long before the last safe day the succession of the CA is said: two years, one, half a year, and the day."""


class Act(StrEnum):
    """What there is to do."""

    SIGN_LIST = "sign-list"
    RENEW_GATEWAY = "renew-gateway"
    RENEW_PASS = "renew-pass"  # noqa: S105 - not a password
    HAND_OVER = "hand-over"
    SUPERSEDE = "supersede"
    GUEST_LEAVES = "guest-leaves"
    PROVE = "prove"
    TRY_COPY = "try-copy"
    TRY_PART = "try-part"
    BEGIN_SUCCESSION = "begin-succession"
    TRUST_BOTH = "trust-both"
    GATEWAY_FOLLOWS = "gateway-follows"
    DEVICES_FOLLOW = "devices-follow"
    FINISH_SUCCESSION = "finish-succession"
    PRINT_PAPER = "print-paper"
    PRINT_PAPER_ANEW = "print-paper-anew"
    MAKE_PARTS = "make-parts"
    MAKE_STOP_SET = "make-stop-set"
    ADD_TO_STOP_SET = "add-to-stop-set"


MINUTES = {
    Act.SIGN_LIST: 1,
    Act.RENEW_GATEWAY: 5,
    Act.RENEW_PASS: 5,
    Act.HAND_OVER: 5,
    Act.SUPERSEDE: 1,
    Act.GUEST_LEAVES: 1,
    Act.PROVE: 2,
    Act.TRY_COPY: 3,
    Act.TRY_PART: 5,
    Act.BEGIN_SUCCESSION: 60,
    Act.TRUST_BOTH: 5,
    Act.GATEWAY_FOLLOWS: 5,
    Act.DEVICES_FOLLOW: 30,
    Act.FINISH_SUCCESSION: 10,
    Act.PRINT_PAPER: 10,
    Act.PRINT_PAPER_ANEW: 10,
    Act.MAKE_PARTS: 20,
    Act.MAKE_STOP_SET: 5,
    Act.ADD_TO_STOP_SET: 5,
}
"""How long each takes, about. Estimates of ours."""


@dataclass(frozen=True)
class Duty:
    """One thing to do.

    Args:
        key: the same for the same duty in every export, so that a calendar replaces what it had.
        act_on: the day to do it on, UTC.
        act: what to do.
        until: when something ends otherwise, or since when it waits.
        chosen: the pass that it is about, or None.
        numbers: of the revocation lists that it is about, the older one first, or none.
        names: of the devices that it is about, where it is about several at once.
    """

    key: str
    act_on: datetime
    act: Act
    until: datetime
    chosen: Pass | None = None
    numbers: tuple[int, ...] = ()
    names: tuple[str, ...] = ()

    def overdue(self, now: datetime) -> bool:
        """Whether its day has come."""
        return self.act_on <= now


@dataclass(frozen=True)
class House:
    """The dates that touch everybody.

    Args:
        list_end: nextUpdate of the revocation list in force.
        gateway_end: notAfter of the certificate that the gateway shows.
        authority_end: notAfter of the CA certificate.
        copy_due: by when a sealed copy has to be made and tried.
        succession: what a succession that is underway asks for (`core.succession_days`); none where there is none.
        part_due: by when a deputy's part is to be tried; None where no parts were made.
        anew: what lies in drawers and has to be made anew (`core.keepsakes`).
    """

    list_end: datetime
    gateway_end: datetime
    authority_end: datetime
    copy_due: datetime
    succession: tuple[Duty, ...] = ()
    part_due: datetime | None = None
    anew: tuple[Duty, ...] = ()


def forecast(
    house: House,
    passes: Iterable[Pass],
    proved: Container[str],
    now: datetime,
    *,
    follows: Sequence[Follow] = (),
    visits: Sequence[Visit] = (),
) -> tuple[Duty, ...]:
    """Everything that is to be done, soonest first; no date on which a device loses access comes without one before it.

    Args:
        house: what touches everybody.
        passes: every pass; those that will never get in again, and those that another one of the same device outlasts,
            are left out.
        proved: serials of the passes that were seen to get in from outside.
        now: UTC.
        follows: which pass was made to follow which.
        visits: days on which people are met; the last one before an end is the day to act.
    """
    living = held(passes, now)
    found = [*house_duties(house, living)]
    renewed = renewals(living, follows, now)
    for one in without_bridged(living, now):
        if one.state(now) is not State.STOPPED:  # it loses nothing by its end
            found += _of_pass(one, renewed.get(one.serial), visits, now)
    found += [duty for one in living for duty in _of_proof(one, proved)]
    found += _of_old(living, follows, now)
    return tuple(sorted(found, key=lambda duty: (duty.act_on, duty.key)))


def agenda(found: Iterable[Duty], now: datetime) -> tuple[Duty, ...]:
    """One entry for each act and pass, for a list: a calendar reminds several times, but it is done once.

    Args:
        found: soonest first.

    Of those whose day has come the last one stays, else the first ahead.
    """
    kept: dict[tuple[Act, str], Duty] = {}
    for one in found:
        what = one.act, "" if one.chosen is None else one.chosen.serial
        if what not in kept or one.overdue(now):
            kept[what] = one
    return tuple(sorted(kept.values(), key=lambda duty: (duty.act_on, duty.key)))


def house_duties(house: House, living: Iterable[Pass]) -> tuple[Duty, ...]:
    """What keeps the house open, and the household alive."""
    found = [
        Duty(f"{act.value}-{name}", until - before, act, until)
        for act, until in ((Act.SIGN_LIST, house.list_end), (Act.RENEW_GATEWAY, house.gateway_end))
        for name, before in (("due", HOUSE_DUE), ("last-call", LAST_CALL))
    ]
    last_day = succession_by(house.authority_end, living)
    found += house.succession or [
        Duty(f"{Act.BEGIN_SUCCESSION.value}-{number}", last_day - ahead, Act.BEGIN_SUCCESSION, house.authority_end)
        for number, ahead in enumerate(SUCCESSION_AHEAD)
    ]
    found.append(Duty(Act.TRY_COPY.value, house.copy_due, Act.TRY_COPY, house.copy_due))
    if house.part_due is not None:
        found.append(Duty(Act.TRY_PART.value, house.part_due, Act.TRY_PART, house.part_due))
    found += house.anew
    return tuple(sorted(found, key=lambda duty: duty.act_on))


def succession_by(authority_end: datetime, living: Iterable[Pass]) -> datetime:
    """The last safe day to begin the succession of the CA.

    After it, somebody's pass would either end early with the CA or be made twice before everybody was visited once.
    """
    longest = max((one.not_after - one.not_before for one in living), default=timedelta())
    return authority_end - longest - SLOWEST_VISIT


def _of_pass(one: Pass, after: Pass | None, visits: Sequence[Visit], now: datetime) -> list[Duty]:
    life = one.not_after - one.not_before
    if one.guest:
        # On the morning of the last day, or sooner for a visit of hours.
        by = one.not_after - min(timedelta(days=1), life / 2)
        return [Duty(f"guest-{one.serial}", by, Act.GUEST_LEAVES, one.not_after, one)]
    if one.key_lost:  # nobody can get in by it, so there is nothing to wait for
        return [Duty(f"renew-{one.serial}", one.not_before, Act.RENEW_PASS, one.not_after, one)]
    by = one.not_after - min(DUE, life / 2)
    by = last_visit(one.person, one.not_after, visits, now) or by
    if after is not None and after.identity == one.identity and after.handed_over is None:
        return [Duty(f"hand-over-{after.serial}", by, Act.HAND_OVER, one.not_after, after)]
    return [Duty(f"renew-{one.serial}", by, Act.RENEW_PASS, one.not_after, one)]


def _of_proof(one: Pass, proved: Container[str]) -> list[Duty]:
    if one.handed_over is None or one.serial in proved or one.reason is not None:
        return []
    return [Duty(f"prove-{one.serial}", one.handed_over + PROVE_AFTER, Act.PROVE, one.handed_over, one)]


def _of_old(living: Sequence[Pass], follows: Sequence[Follow], now: datetime) -> list[Duty]:
    """Old passes beside which a new one works: to be let go once that was proved, or once the overlap is over."""
    known = {one.serial: one for one in living} if follows else {}
    lineage, found = Lineage(follows), []
    for serial in lineage.followed:
        old = known.get(serial)
        after = [known[new] for new in lineage.successors(serial) if new in known] if old is not None else []
        if old is None:
            continue
        by = over_at(old, after, lineage, now)
        if by is None and any(works(one, now) and one.identity == old.identity for one in after):
            by = lineage.overlap_ends(serial)
        if by is not None:
            by = min(by, old.not_after)  # which the old CA's going may have brought forward
            found.append(Duty(f"supersede-{serial}", by, Act.SUPERSEDE, old.not_after, old))
    return found
