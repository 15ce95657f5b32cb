"""What the succession of the CA asks for next, as dated duties."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime, timedelta

from hearthkey.core.duties import Act, Duty
from hearthkey.core.succession import DeviceStep, Standing, Step, Succession, due, plan

_ACT = {Step.TRUST: Act.TRUST_BOTH, Step.GATEWAY: Act.GATEWAY_FOLLOWS, Step.DEVICES: Act.DEVICES_FOLLOW}
_DAY = timedelta(days=1)


def succession_duties(found: Succession | None, devices: Sequence[DeviceStep], now: datetime) -> tuple[Duty, ...]:
    """The next step with its day, and the day by which the old CA is to be put away; none where nothing is underway.

    Args:
        found: as the register has it.
        devices: who is where; may be empty before the new CA issues what is made.
        now: UTC.

    Each comes a day before the old CA's end at the latest, for on that day itself it would be too late.
    """
    if found is None or not found.underway:
        return ()
    end = found.old.not_after
    steps = plan(found, devices, cause=found.cause, old_end=end, last_safe_day=end, seen=False, now=now).steps
    waiting = next(one for one in steps if one.standing is Standing.NOW)
    last = due(Step.FINISH, found.taken[Step.BEGIN], found.cause, end)
    finish = Duty(Act.FINISH_SUCCESSION.value, min(last, end - _DAY), Act.FINISH_SUCCESSION, end)
    if waiting.step not in _ACT:
        return (finish,)
    left = tuple(one.title for one in devices if one.waits)
    if waiting.step is Step.DEVICES and not left:  # the others end by themselves before the old CA goes
        return (finish,)
    act = _ACT[waiting.step]
    until, names = (last, left) if waiting.step is Step.DEVICES else (end, ())
    return Duty(act.value, min(waiting.day, end - _DAY), act, until, names=names), finish
