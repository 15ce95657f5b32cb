"""The succession of the CA: a second one beside the first, step by step, with a way back until the last."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from enum import StrEnum

from hearthkey.core.household import Authority
from hearthkey.core.renewal import SLOWEST_VISIT

FIRST_DAYS = timedelta(days=7)
"""How long the steps that need nobody but the householder may take. An estimate of ours."""

AT_ONCE = timedelta(days=14)
"""How long the visits may take where the CA key may be in other hands. An estimate of ours."""


class Cause(StrEnum):
    """Why one CA follows another."""

    PLANNED = "planned"
    STOLEN = "stolen"
    LOST = "lost"


class Step(StrEnum):
    """What is done, in words of the register; the devices need no word, for each of them speaks for itself."""

    BEGIN = "begin"
    TRUST = "trust"
    GATEWAY = "gateway"
    DEVICES = "devices"
    FINISH = "finish"


ORDER: Mapping[Cause, tuple[Step, ...]] = {
    Cause.PLANNED: (Step.BEGIN, Step.TRUST, Step.GATEWAY, Step.DEVICES, Step.FINISH),
    Cause.STOLEN: (Step.BEGIN, Step.TRUST, Step.GATEWAY, Step.DEVICES, Step.FINISH),
    Cause.LOST: (Step.BEGIN, Step.TRUST, Step.DEVICES, Step.GATEWAY, Step.FINISH),
}
"""Without its key the old CA cannot vouch for the new one, so that there no device would accept a gateway under the
new CA before it has the new CA itself."""


@dataclass(frozen=True)
class Succession:
    """One CA that follows another, as the register keeps it.

    Args:
        old, new: the two.
        cross: the old CA's certificate for the new CA's key, DER; None where the old key is lost.
        cause: why.
        taken: when each step was taken that was not taken back, UTC.
    """

    old: Authority
    new: Authority
    cross: bytes | None
    cause: Cause
    taken: Mapping[Step, datetime]

    @property
    def underway(self) -> bool:
        """Whether both are trusted."""
        return Step.BEGIN in self.taken and not self.finished

    @property
    def finished(self) -> bool:
        """Whether the old one was put away."""
        return Step.FINISH in self.taken

    @property
    def new_issues(self) -> bool:
        """Whether the new CA signs what is made from now on; where the old key is lost, nobody else can."""
        return self.finished or Step.GATEWAY in self.taken or (self.cause is Cause.LOST and self.underway)

    @property
    def moving(self) -> bool:
        """Whether devices are on their way from one to the other."""
        return self.underway and self.new_issues

    @property
    def in_charge(self) -> Authority:
        """Who signs what is made from now on."""
        return self.new if self.new_issues else self.old

    @property
    def trusted(self) -> tuple[Authority, ...]:
        """Whom gateway and devices are to trust, oldest first."""
        if self.finished:
            return (self.new,)
        return (self.old, self.new) if self.underway else (self.old,)

    @property
    def signing(self) -> tuple[Authority, ...]:
        """Whose keys are here: all that are trusted, but for one that is lost."""
        return (self.new,) if self.underway and self.cause is Cause.LOST else self.trusted

    @property
    def next(self) -> Step | None:
        """The next step that somebody takes; None where all are taken."""
        order = [one for one in ORDER[self.cause] if one is not Step.DEVICES]
        return next((one for one in order if one not in self.taken), None)

    @property
    def last(self) -> Step | None:
        """The step that can be taken back: none once the old CA was put away, and none that would need a lost key."""
        if self.finished:
            return None
        taken = [one for one in ORDER[self.cause] if one in self.taken]
        last = taken[-1] if taken else None
        return None if self.cause is Cause.LOST and last in {Step.BEGIN, Step.GATEWAY} else last


class Carries(StrEnum):
    """How far a device is."""

    OLD = "old"
    MADE = "made"
    HANDED_OVER = "handed-over"
    DONE = "done"


@dataclass(frozen=True)
class DeviceStep:
    """One device on the way from the old CA to the new one.

    Args:
        title: whose, and which.
        identity: as the register has it.
        carries: how far it is.
        until: when its newest pass that gets in ends, UTC.
        old: serials of its passes under the old CA that still get in, or would if not stopped.
        serial: its newest living pass.
        ends_by_itself: nobody has to do anything, for its last pass ends before the old CA has to go.
    """

    title: str
    identity: str
    carries: Carries
    until: datetime
    old: tuple[str, ...]
    serial: str
    ends_by_itself: bool = False

    @property
    def waits(self) -> bool:
        """Whether somebody has to do something for it before the old CA can go."""
        return self.carries is not Carries.DONE and not self.ends_by_itself


class Standing(StrEnum):
    """Where a step stands."""

    DONE = "done"
    NOW = "now"
    LATER = "later"


@dataclass(frozen=True)
class PlannedStep:
    """One line of the plan.

    Args:
        step: what.
        standing: done, to be done now, or later.
        day: when it was done, or by when it should be, UTC.
    """

    step: Step
    standing: Standing
    day: datetime


@dataclass(frozen=True)
class Plan:
    """The whole succession with its days, to be shown.

    Args:
        cause: why.
        steps: in order.
        last_safe_day: the last day to begin on which nobody's pass would have to end early.
        old_end: the old CA's end.
        devices: who is where; empty before the beginning.
        seen: the gateway was seen to hold what the last step gave it.
        next: what is to be done now; None before the beginning and after the end.
        back: the step that can be taken back.
    """

    cause: Cause
    steps: tuple[PlannedStep, ...]
    last_safe_day: datetime
    old_end: datetime
    devices: tuple[DeviceStep, ...] = ()
    seen: bool = False
    next: Step | None = None
    back: Step | None = None

    @property
    def left(self) -> tuple[DeviceStep, ...]:
        """Those for whom something is still to be done before the old CA can go."""
        return tuple(one for one in self.devices if one.carries is not Carries.DONE)


def plan(
    found: Succession | None,
    devices: Sequence[DeviceStep],
    *,
    cause: Cause,
    old_end: datetime,
    last_safe_day: datetime,
    seen: bool,
    now: datetime,
) -> Plan:
    """Lay the steps out in time.

    Args:
        found: as far as it has come; None before the beginning.
        cause: why, where nothing has begun.
        seen: as in `Plan`.

    Before the beginning the days count from the last safe day, or from today where something has happened.
    """
    reason = cause if found is None else found.cause
    taken: dict[Step, datetime] = {} if found is None else dict(found.taken)
    begun = taken.get(Step.BEGIN, max(now, last_safe_day) if reason is Cause.PLANNED else now)
    done = _all_done(found, devices)
    steps: list[PlannedStep] = []
    for step in ORDER[reason]:
        if step in taken or (step is Step.DEVICES and done):
            day = taken.get(step, max([*taken.values(), begun]))
            steps.append(PlannedStep(step, Standing.DONE, day))
            continue
        first = not any(one.standing is Standing.NOW for one in steps)
        day = due(step, begun, reason, old_end)
        steps.append(PlannedStep(step, Standing.NOW if first else Standing.LATER, day))
    waiting = next((one.step for one in steps if one.standing is Standing.NOW), None)
    return Plan(
        cause=reason,
        steps=tuple(steps),
        last_safe_day=last_safe_day,
        old_end=old_end,
        devices=tuple(devices),
        seen=seen,
        next=waiting,
        back=None if found is None else found.last,
    )


def _all_done(found: Succession | None, devices: Sequence[DeviceStep]) -> bool:
    if found is not None and found.finished:
        return True
    return found is not None and found.new_issues and all(one.carries is Carries.DONE for one in devices)


def due(step: Step, begun: datetime, cause: Cause, old_end: datetime) -> datetime:
    """By when a step should be taken, never after the old CA's end.

    The householder's own steps within days; the devices by the slowest visit, or at once where the key may be in
    other hands; the old CA goes a week after the last device.
    """
    visits = AT_ONCE if cause is Cause.STOLEN else SLOWEST_VISIT
    after = {
        Step.BEGIN: timedelta(),
        Step.TRUST: FIRST_DAYS,
        Step.GATEWAY: visits + FIRST_DAYS if cause is Cause.LOST else 2 * FIRST_DAYS,
        Step.DEVICES: visits,
        Step.FINISH: visits + 2 * FIRST_DAYS,
    }
    return min(begun + after[step], old_end)


def succession_due(found: Succession | None) -> datetime | None:
    """By when a succession that is underway should be through; None where there is none."""
    if found is None or not found.underway:
        return None
    return due(Step.FINISH, found.taken[Step.BEGIN], found.cause, found.old.not_after)
