"""`hearthkey moving-day`."""

from __future__ import annotations

from argparse import Namespace

from hearthkey.cli.teller import Teller
from hearthkey.core.errors import Refused
from hearthkey.core.moving import MovingPlan, Step
from hearthkey.core.moving_steps import Kind, Task
from hearthkey.core.names import as_address
from hearthkey.core.plans import Changes
from hearthkey.core.sentences import moving as words
from hearthkey.services.house import House
from hearthkey.services.moving import MoveRequest


def moving_day_verb(house: House, arguments: Namespace, teller: Teller) -> None:
    """Show what a move asks for, keep it, or tick what is done."""
    acts = {"begin": _begin, "tick": _tick, "take-back": _take_back, "end": _end}
    act = acts.get(arguments.act)
    if act is None:
        _show(house, arguments, teller)
        return
    changes = act(house, arguments)
    planned = None if house.register.move() is None else house.moving.look()
    lines = [changes.sentence]
    if arguments.act == "take-back" and planned is not None:
        lines.append(str(words.back(planned.move, _task(arguments))))
    if planned is not None:
        lines += _lines(planned)
    teller.result(lines, {"done": changes.sentence, "move": None if planned is None else _data(planned)})


def _show(house: House, arguments: Namespace, teller: Teller) -> None:
    request = _request(arguments)
    asked = any((list(request.kinds), request.new_host, request.new_home))
    planned = house.moving.preview(request) if asked else house.moving.look()
    household = house.register.household()
    bare = household is not None and as_address(household.gateway_host) is not None
    lines = [*([str(words.BARE_ADDRESS)] if bare else []), *_lines(planned)]
    teller.result(lines, {**_data(planned), "bare_address": bare})


def _begin(house: House, arguments: Namespace) -> Changes:
    return house.moving.begin(_request(arguments))


def _tick(house: House, arguments: Namespace) -> Changes:
    return house.moving.tick(_task(arguments))


def _take_back(house: House, arguments: Namespace) -> Changes:
    return house.moving.take_back(_task(arguments))


def _end(house: House, arguments: Namespace) -> Changes:
    return house.moving.end(call_off=arguments.call_off)


def _task(arguments: Namespace) -> Task:
    if arguments.step not in set(Task):
        raise Refused("move-step-unknown", step=arguments.step or "")
    return Task(arguments.step)


def _request(arguments: Namespace) -> MoveRequest:
    said = {
        Kind.PROVIDER: arguments.new_provider,
        Kind.ROUTER: arguments.new_router,
        Kind.BOX: arguments.new_box,
    }
    return MoveRequest([kind for kind, new in said.items() if new], arguments.new_host, arguments.new_home_subnet)


def _lines(planned: MovingPlan) -> list[str]:
    found, side = [str(words.headline(planned))], None
    for one in planned.steps:
        if one.when is not side:
            side = one.when
            found += ["", words.WHENS[side]]
        found += _step(planned, one)
    return found


def _step(planned: MovingPlan, one: Step) -> list[str]:
    mark = "[x]" if one.ticked is not None else "[>]" if one is planned.next else "[ ]"
    lines = [f"{mark} {one.task.value}: {words.step(planned.move, one.task)} ({one.minutes} min)"]
    if one.ticked is None:
        lines += [f"    {words.why(planned.move, one.task)}", f"    {words.touched(one)}"]
        left = words.left(one)
        lines += [] if left is None else [f"    {left}"]
    return lines


def _data(planned: MovingPlan) -> dict[str, object]:
    return {
        "kinds": sorted(planned.move.kinds),
        "new_host": planned.move.new_host,
        "new_home": [str(one) for one in planned.move.new_home],
        "new_bundles": list(planned.devices),
        "next": None if planned.next is None else planned.next.task.value,
        "steps": [
            {
                "step": one.task.value,
                "when": one.when.value,
                "minutes": one.minutes,
                "says": str(words.step(planned.move, one.task)),
                "devices": list(one.devices),
                "gateway": one.gateway,
                "done": one.ticked,
                "waits_for": [task.value for task in one.waits_for],
                "left": list(one.left),
                "seen": one.seen,
            }
            for one in planned.steps
        ],
    }
