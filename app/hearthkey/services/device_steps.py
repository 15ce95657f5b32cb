"""How far each device is on the way from one CA to the next."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import datetime

from hearthkey.core.errors import Refused
from hearthkey.core.passes import LIVING, Pass
from hearthkey.core.succession import Carries, Cause, DeviceStep, Step, Succession, due
from hearthkey.services.generations import issued_by
from hearthkey.services.ports import Register


def device_steps(
    register: Register, found: Succession, passes: Iterable[Pass], now: datetime
) -> tuple[DeviceStep, ...]:
    """One for each device that gets in; one that is stopped does not wait for anything.

    A device is through when its newest pass is the new CA's and was seen to get in, or when none of its passes under
    the old CA gets in any more.
    """
    living = [one for one in passes if one.state(now) in LIVING]
    new = issued_by(register, found.new, living)
    by_device: dict[str, list[Pass]] = {}
    for one in living:
        by_device.setdefault(one.identity, []).append(one)
    begun = found.taken[Step.BEGIN]
    old_goes = due(Step.FINISH, begun, found.cause, found.old.not_after)
    return tuple(
        _of_device(group, new, found, now, old_goes)
        for group in by_device.values()
        if any(one.gets_in(now) for one in group)
    )


def _of_device(
    group: list[Pass], new: frozenset[str], found: Succession, now: datetime, old_goes: datetime
) -> DeviceStep:
    newest = group[-1]
    old = tuple(one for one in group if one.serial not in new and one.gets_in(now))
    mine = [one for one in group if one.serial in new and one.gets_in(now)]
    last = max((one.not_after for one in old), default=newest.not_after)
    return DeviceStep(
        title=newest.title,
        identity=newest.identity,
        carries=_carries(old, mine),
        until=newest.not_after,
        old=tuple(one.serial for one in old),
        serial=newest.serial,
        ends_by_itself=bool(old) and not mine and found.cause is Cause.PLANNED and last < old_goes,
    )


def _carries(old: tuple[Pass, ...], mine: list[Pass]) -> Carries:
    if not old:
        return Carries.DONE
    if not mine:
        return Carries.OLD
    if mine[-1].proved is not None:
        return Carries.DONE
    return Carries.MADE if mine[-1].handed_over is None else Carries.HANDED_OVER


def check_gateway_may_follow(register: Register) -> None:
    """Refuse a new gateway certificate while devices would turn away from it: the old CA's key is lost.

    Raises:
        Refused: succession-gateway-waits.
    """
    found = register.succession()
    waits = found is not None and found.underway and found.cause is Cause.LOST and Step.GATEWAY not in found.taken
    if waits:
        raise Refused("succession-gateway-waits")
