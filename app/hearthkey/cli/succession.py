"""`hearthkey succession`."""

from __future__ import annotations

from argparse import Namespace

from hearthkey.cli import asking
from hearthkey.cli.teller import Teller
from hearthkey.core.in_force import house_ends
from hearthkey.core.plans import Changes
from hearthkey.core.sentences import succession as words
from hearthkey.core.succession import Cause, Plan, Standing
from hearthkey.services.house import House
from hearthkey.services.turning_stolen import turn_stolen

_MARKS = {"done": "[x]", "now": "[>]", "later": "[ ]"}


def succession_verb(house: House, arguments: Namespace, teller: Teller) -> None:
    """Show how one CA follows another, or take a step of it."""
    cause = Cause.STOLEN if arguments.stolen else Cause.LOST if arguments.lost else Cause.PLANNED
    if arguments.act in {None, "status"}:
        plan = house.succeeding.look(cause)
        teller.result([*_advice(house, plan, cause), *_lines(house, plan)], _data(plan, _advice(house, plan, cause)))
        return
    changes = _ACTS[arguments.act](house, arguments, teller, cause)
    teller.cautions(changes.cautions)
    if not house.keyholder.locked:
        house.sparing.renew()
    plan = house.succeeding.look()
    deliver = house.register.target() is not None and arguments.act not in {"stolen", "take-back"}
    after = ["Next: hearthkey deliver, then hearthkey succession"] if deliver else []
    teller.result([changes.sentence, *_lines(house, plan), *after], {"done": changes.sentence, **_data(plan, ())})


def _begin(house: House, arguments: Namespace, teller: Teller, cause: Cause) -> Changes:
    for line in _advice(house, house.succeeding.look(cause), cause):
        teller.aside(line)
    asking.agree(arguments, teller, "Make the next CA?")
    if cause is Cause.LOST:
        secret = asking.new_passphrase(house, arguments, teller)
    else:
        secret = asking.passphrase(arguments, "Household passphrase")
    changes = house.succeeding.begin(secret, cause, progress=teller.progress)
    house.sealing.make_ready(secret)
    return changes


def _go_on(house: House, arguments: Namespace, teller: Teller, _: Cause) -> Changes:
    asking.unlock(house, arguments, teller)
    return house.succeeding.go_on(told=arguments.told, anyway=arguments.anyway, progress=teller.progress)


def _take_back(house: House, arguments: Namespace, teller: Teller, _: Cause) -> Changes:
    asking.agree(arguments, teller, "Take the last step back?")
    asking.unlock(house, arguments, teller)
    return house.succeeding.take_back(progress=teller.progress)


def _finish(house: House, arguments: Namespace, teller: Teller, cause: Cause) -> Changes:
    for line in _lines(house, house.succeeding.look()):
        teller.aside(line)
    asking.agree(arguments, teller, "Put the old CA away for good?")
    asking.unlock(house, arguments, teller)
    return house.succeeding.finish(told=arguments.told, anyway=arguments.anyway, stolen=cause is Cause.STOLEN)


def _stolen(house: House, arguments: Namespace, teller: Teller, _: Cause) -> Changes:
    for line in words.stolen():
        teller.aside(str(line))
    asking.agree(arguments, teller, "Go on as after a theft?")
    return turn_stolen(house.register, house.clock)


_ACTS = {"stolen": _stolen, "begin": _begin, "go-on": _go_on, "take-back": _take_back, "finish": _finish}


def _advice(house: House, plan: Plan, cause: Cause) -> list[str]:
    """What to think of first, where something has happened."""
    if cause is Cause.STOLEN:
        return [str(one) for one in words.stolen()]
    newest, gateway = house.register.newest_list(), house.register.gateway()
    if cause is not Cause.LOST or newest is None or gateway is None:
        return []
    list_end, gateway_end = house_ends(house.register.gateway_note(), newest, gateway.not_after)
    spares = bool(house.register.spare_lists())
    told = words.lost(plan, list_end=list_end, gateway_end=gateway_end, spares=spares)
    return [*(str(one) for one in told), "To begin again: hearthkey succession begin --lost"]


def _lines(house: House, plan: Plan) -> list[str]:
    lines = [str(words.headline(plan, house.clock.now()))]
    for one in plan.steps:
        lines.append(f"{_MARKS[one.standing.value]} {words.step(one)}: {words.when(one)}")
        if one.standing is not Standing.DONE:
            lines.append(f"    {words.means(one, plan.cause)}")
    return lines + [f"  - {words.device(one)}" for one in plan.devices]


def _data(plan: Plan, advice: list[str] | tuple[str, ...]) -> dict[str, object]:
    return {
        "cause": plan.cause.value,
        "advice": list(advice),
        "old_end": plan.old_end,
        "last_safe_day": plan.last_safe_day,
        "next": None if plan.next is None else plan.next.value,
        "back": None if plan.back is None else plan.back.value,
        "seen": plan.seen,
        "steps": [{"step": one.step.value, "standing": one.standing.value, "day": one.day} for one in plan.steps],
        "devices": [
            {
                "device": one.title,
                "carries": one.carries.value,
                "until": one.until,
                "ends_by_itself": one.ends_by_itself,
            }
            for one in plan.devices
        ],
    }
