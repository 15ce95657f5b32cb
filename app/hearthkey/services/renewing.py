"""Renews passes under new keys, one or a whole round; the old ones stay as they are."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from datetime import datetime

from hearthkey.core import renewal
from hearthkey.core.errors import HearthkeyError, Refused
from hearthkey.core.outgoing import until_it_goes
from hearthkey.core.passes import Pass, State
from hearthkey.core.plans import Changes, FollowPlan, RenewPlan
from hearthkey.core.renewal import Way
from hearthkey.core.sentences.diary import day
from hearthkey.services import looking
from hearthkey.services.enrolling import Enrolling, EnrolRequest
from hearthkey.services.outgoing import outgoing
from hearthkey.services.ports import Clock, Progress, silent
from hearthkey.services.renewal_ports import RenewalRegister


@dataclass(frozen=True)
class Left:
    """A device that is not renewed, and why.

    Args:
        chosen: its newest pass.
        why: a key of `core.sentences.renewal.WHY_LEFT`.
    """

    chosen: Pass
    why: str


@dataclass(frozen=True)
class Round:
    """Renewals about to be made, one after the other.

    Args:
        plans: in the order of the register.
        left: whom it leaves as they are.
    """

    plans: tuple[RenewPlan, ...]
    left: tuple[Left, ...] = ()


@dataclass(frozen=True)
class RoundDone:
    """What became of a round.

    Args:
        done: what was made, one for each device.
        ahead: what was not begun, because it was stopped or something failed.
        failed: what failed, None where nothing did.
    """

    done: tuple[Changes, ...]
    ahead: tuple[RenewPlan, ...] = ()
    failed: HearthkeyError | None = None


def never() -> bool:
    """Nobody wants the round to stop."""
    return False


class Renewing:
    """The verb "renew"."""

    def __init__(self, register: RenewalRegister, clock: Clock, enrolling: Enrolling) -> None:
        self._register = register
        self._clock = clock
        self._enrolling = enrolling

    def preview(
        self,
        passes: Sequence[Pass],
        *,
        overlap_days: int = renewal.OVERLAP_DAYS,
        ends: datetime | None = None,
    ) -> RenewPlan:
        """Decide how a device's pass is renewed: a new key, the same identity.

        Args:
            passes: of one device.
            overlap_days: how long both are meant to get in; never beyond the old one's end.
            ends: the last moment of the new one, UTC, or None for the default.

        Raises:
            Refused: renewal-waits, device-revoked, overlap-out-of-range, renewal-ends-sooner, and as
                `Enrolling.preview_all`.
        """
        now = self._clock.now()
        old = self._followed(passes, now)
        overlap_ends = renewal.overlap_end(old, overlap_days, now)
        wanted = EnrolRequest(
            person=old.person,
            device=old.device,
            kind=old.kind,
            ends=ends,
            guest=old.guest,
            key_set=old.key_set,
            container=old.container,
            replace=True,
        )
        planned = self._enrolling.preview(wanted)
        lost = [one for one in looking.living(passes, now) if one.key_lost and one != old]
        follows = [FollowPlan(one, renewal.overlap_end(one, overlap_days, now), Way.RENEWED) for one in (old, *lost)]
        enrol = replace(planned, follows=tuple(follows))
        new_end = self._enrolling.ends(enrol)
        if new_end < old.not_after:
            raise Refused("renewal-ends-sooner", title=old.title, new=day(new_end), old=day(old.not_after))
        return RenewPlan(old, enrol, new_end, overlap_ends, renewal.works(old, now))

    def _followed(self, passes: Sequence[Pass], now: datetime) -> Pass:
        living = renewal.held(passes, now)
        if not living:
            last = looking.newest(passes)
            if last.state(now) is State.REVOKED:
                raise Refused("device-revoked", title=last.title)
            return last
        if living[-1].key_is_here:
            raise Refused("renewal-waits", title=living[-1].title)
        return max(living, key=lambda one: (renewal.works(one, now), one.not_after))

    def renew(self, plan: RenewPlan, *, progress: Progress = silent) -> Changes:
        """Make the new pass and put it into the tray; the old one stays as it is.

        Raises:
            Refused: renewal-waits, and as `Enrolling.apply`.
            Unavailable: as vault and register.
        """
        self._followed(self._of(plan.old.identity), self._clock.now())
        return self._enrolling.apply(plan.enrol, progress=progress)

    def _of(self, identity: str) -> list[Pass]:
        return [one for one in self._register.passes() if one.identity == identity]

    def plan_named(self, devices: Sequence[Sequence[Pass]], *, overlap_days: int = renewal.OVERLAP_DAYS) -> Round:
        """A round of devices that somebody named; those that were renewed already are left as they are.

        Args:
            devices: for each, all its passes.
            overlap_days: as in `preview`.

        Raises:
            Refused: as `preview`, but for renewal-waits.
        """
        plans: list[RenewPlan] = []
        left: list[Left] = []
        for passes in {one[0].identity: one for one in devices}.values():
            living = renewal.held(passes, self._clock.now())
            if living and living[-1].key_is_here:
                left.append(Left(living[-1], "waits"))
            else:
                plans.append(self.preview(passes, overlap_days=overlap_days))
        return Round(tuple(plans), tuple(left))

    def plan_due(
        self, until: datetime, *, person: str | None = None, overlap_days: int = renewal.OVERLAP_DAYS
    ) -> Round:
        """A round of all devices that would lose access by a day, everybody's or one person's.

        Args:
            until: the last moment of that day, UTC.
            person: whose; None for everybody's.
            overlap_days: as in `preview`.

        Raises:
            Refused: as `preview`.
        """
        due = self.due(until, person=person)
        planned = self.plan_named([self._of(one.identity) for one in due], overlap_days=overlap_days)
        left = self._left_out(self._register.passes(), until, person, self._clock.now())
        return replace(planned, left=(*planned.left, *left))

    def due(self, until: datetime, *, person: str | None = None) -> list[Pass]:
        """The passes that such a round would renew.

        Raises:
            Unavailable: as the register.
        """
        now, passes = self._clock.now(), self._register.passes()
        capped = until_it_goes(passes, outgoing(self._register, passes, now), now)
        found = {one.serial for one in renewal.due_by(capped, self._register.follows(), until, now)}
        return [one for one in passes if one.serial in found and _is_of(one, person)]

    def _left_out(self, passes: Sequence[Pass], until: datetime, person: str | None, now: datetime) -> list[Left]:
        """Devices that lose access by then all the same, and that no round takes along; the newest pass tells why."""
        newest = {one.identity: one for one in renewal.held(passes, now) if _is_of(one, person)}
        found = []
        for one in newest.values():
            before = [other for other in passes if other.identity == one.identity and renewal.works(other, now)]
            if one.key_is_here and any(other.not_after <= until for other in before):
                found.append(Left(one, "waits"))
            elif one.not_after <= until and one.guest:
                found.append(Left(one, "guest"))
            elif one.not_after <= until and one.state(now) is State.STOPPED:
                found.append(Left(one, "stopped"))
        return found

    def go_round(
        self, planned: Round, *, progress: Progress = silent, stopped: Callable[[], bool] = never
    ) -> RoundDone:
        """Make the renewals one after the other, each whole or not at all; what is done stays done.

        Args:
            stopped: asked before each device whether somebody wants to stop here.
        """
        done: list[Changes] = []
        for number, plan in enumerate(planned.plans):
            if stopped():
                return RoundDone(tuple(done), planned.plans[number:])
            progress("renewing", title=plan.old.title, done=number + 1, count=len(planned.plans))
            try:
                done.append(self.renew(plan))
            except HearthkeyError as error:
                return RoundDone(tuple(done), planned.plans[number:], error)
        return RoundDone(tuple(done))


def _is_of(one: Pass, person: str | None) -> bool:
    return person is None or one.person.casefold() == person.casefold()
