"""The pages of the years with thirty and with three hundred devices: the day list, a round, the next CA."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from datetime import timedelta

from hearthkey.core import succession
from hearthkey.core.outgoing import Outgoing
from hearthkey.core.passes import Pass
from hearthkey.core.proofs import Proof, Way
from hearthkey.core.succession import Carries, Cause, DeviceStep, Step, Succession
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.drawer.renew_page import RenewPage
from hearthkey.ui.drawer.succession_page import SuccessionPage
from hearthkey.ui.gallery.looks import PLAIN
from hearthkey.ui.window import Window

_FAMILY = (
    "Ines",
    "Tomasz",
    "Odile",
    "Aunt Pia",
    "Cousin Marek",
    "Uncle Jon",
    "Great-aunt Lucie",
    "Wren",
    "Ada",
    "Kofi",
)
_DEVICES = ("phone", "tablet", "laptop", "work laptop", "reader", "watch", "old phone", "kitchen tablet", "camera")

HALF_WAY = 12
"""Devices of a household in the middle of a succession: a large family’s."""


def household(seen: Snapshot, count: int) -> Snapshot:
    """The household with so many devices, whose passes end one after the other over two years."""
    pattern = next(one for one in seen.passes if one.handed_over is not None and one.gets_in(seen.at))
    passes = tuple(_pass(pattern, seen, number, count) for number in range(count))
    return replace(seen, passes=passes, read_only=False)


def _pass(pattern: Pass, seen: Snapshot, number: int, count: int) -> Pass:
    person = _FAMILY[number % len(_FAMILY)]
    turn, device = divmod(number // len(_FAMILY), len(_DEVICES))
    ends = seen.at + timedelta(days=3 + number * 727 / count)
    return replace(
        pattern,
        person=person,
        device=_DEVICES[device] if not turn else f"{_DEVICES[device]} {turn + 1}",
        identity=f"many{number:04}.quince.example",
        serial=f"71{number:022x}",
        not_before=ends - timedelta(days=730),
        not_after=ends,
        handed_over=ends - timedelta(days=729),
    )


def _many(window: Window, count: int) -> Snapshot | None:
    seen = window.outside.errands.last
    return None if seen is None else household(seen, count)


def board(count: int) -> Callable[[Window], None]:
    """The sheet itself."""

    def begin(window: Window) -> None:
        window.ways.back.emit()
        window.ways.back.emit()
        if (many := _many(window, count)) is not None:
            window.outside.errands.seen.emit(many)

    return begin


def days(count: int) -> Callable[[Window], None]:
    """What is to be done."""

    def begin(window: Window) -> None:
        window.ways.days.emit()
        if (many := _many(window, count)) is not None:
            window.outside.errands.seen.emit(many)

    return begin


def round_of(count: int) -> Callable[[Window], None]:
    """A round of all that are due in the next months."""

    def begin(window: Window) -> None:
        window.ways.renew.emit("")
        page, many = window.drawer.page(), _many(window, count)
        if isinstance(page, RenewPage) and many is not None:
            page.show_snapshot(many)

    return begin


def next_authority(count: int) -> Callable[[Window], None]:
    """The next CA, while devices change over."""

    def begin(window: Window) -> None:
        window.ways.succession.emit()
        page, many = window.drawer.page(), _many(window, count)
        if not isinstance(page, SuccessionPage) or many is None:
            return

        def show(_plan_of_three: succession.Plan) -> None:
            page.see(many)
            page.show_plan(_plan(many))

        # The page has asked for the plan of the real household, which is answered before this is.
        window.outside.errands.look_succession(Cause.PLANNED, page, show, lambda _error: None)

    return begin


def half_way(window: Window) -> None:
    """What is to be done while devices change over, and where it stands on the axis."""
    window.ways.days.emit()
    many = _many(window, HALF_WAY)
    if many is None or many.authority is None:
        return
    begun = many.at - timedelta(days=40)
    taken = dict.fromkeys((Step.BEGIN, Step.TRUST, Step.GATEWAY), begun)
    found = Succession(many.authority, many.authority, b"", Cause.PLANNED, taken)
    steps = _plan(many).devices
    goes = succession.due(Step.FINISH, begun, Cause.PLANNED, many.authority.not_after)
    old = frozenset(serial for one in steps if one.carries is not Carries.DONE for serial in one.old)
    seen_in = (Proof(many.at - timedelta(days=50), Way.TUNNEL, "192.0.2.7"),)
    far = tuple(replace(one, not_after=one.not_after + timedelta(days=500), proofs=seen_in) for one in many.passes)
    seen = replace(many, passes=far, succession=found, device_steps=steps, outgoing=Outgoing(old, goes))
    window.outside.errands.seen.emit(seen)


def _plan(seen: Snapshot) -> succession.Plan:
    stages = (Carries.DONE, Carries.HANDED_OVER, Carries.OLD, Carries.MADE, Carries.OLD)
    steps = tuple(
        DeviceStep(one.title, one.identity, stages[number % len(stages)], one.not_after, (one.serial,), one.serial)
        for number, one in enumerate(seen.passes)
    )
    authority = seen.authority
    taken = dict.fromkeys((Step.BEGIN, Step.TRUST, Step.GATEWAY), seen.at)
    found = None if authority is None else Succession(authority, authority, b"", Cause.PLANNED, taken)
    end = seen.at + timedelta(days=1200)
    return succession.plan(
        found, steps, cause=Cause.PLANNED, old_end=end, last_safe_day=end - timedelta(days=900), seen=True, now=seen.at
    )


STATES = {
    f"{name}-{count}": (begin(count), (look,))
    for count, look in ((30, PLAIN[1]), (300, PLAIN[0]))
    for name, begin in (("board", board), ("days", days), ("renew", round_of), ("succession", next_authority))
} | {"days-half-way": (half_way, PLAIN[:2])}
"""What each state is called, and in which look it is drawn: the few by lamplight, the many on paper."""
