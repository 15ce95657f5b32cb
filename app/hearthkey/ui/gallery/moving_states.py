"""Moving day in its states: nothing said yet, a plan, a list half-way."""

from __future__ import annotations

from datetime import timedelta

from hearthkey.core import moving
from hearthkey.core.household import FormerHost, Household
from hearthkey.core.moving import Move
from hearthkey.core.moving_steps import Kind, Task
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.drawer.moving_page import MovingPage
from hearthkey.ui.gallery.looks import PLAIN, SPECIAL
from hearthkey.ui.window import Window


def _page(window: Window) -> tuple[MovingPage, Snapshot, Household] | None:
    if not isinstance(window.drawer.page(), MovingPage):
        window.ways.moving.emit()
    page, seen = window.drawer.page(), window.outside.errands.last
    if not isinstance(page, MovingPage) or seen is None or seen.household is None:
        return None
    return page, seen, seen.household


def _move(seen: Snapshot, household: Household, done: int) -> moving.MovingPlan:
    move = Move(
        frozenset({Kind.PROVIDER, Kind.HOST}),
        seen.at,
        household.gateway_host,
        "door.quince.example",
        household.home_subnets,
        household.home_subnets,
    )
    former = (FormerHost(household.gateway_host, seen.at + timedelta(days=1)),)
    for _ in range(done):
        following = moving.plan(move, household, former, seen.passes, seen.at).next
        if following is not None:
            move = move.with_tick(following.task, seen.at)
    return moving.plan(move, household, former, seen.passes, seen.at)


def begin(window: Window) -> None:
    """Nothing is said yet."""
    _page(window)


def planned(window: Window) -> None:
    """A plan that nobody has kept."""
    found = _page(window)
    if found is not None:
        page, seen, household = found
        for new in (Kind.PROVIDER, Kind.HOST):
            page.ticks[new].setChecked(True)
        page.host.setText("door.quince.example")
        page.show_plan(_move(seen, household, 0))


def half_way(window: Window) -> None:
    """Devices are learning the new name."""
    found = _page(window)
    if found is None:
        return
    page, seen, household = found

    def show(_none: moving.MovingPlan | None) -> None:
        page.kept = True
        page.show_plan(_move(seen, household, list(Task).index(Task.DELIVER) - 2))

    # The page has asked whether a move is under way, which is answered before this is.
    window.outside.errands.look_move(page, show, lambda _error: None)


STATES = {
    "moving": (begin, PLAIN[:2]),
    "moving-plan": (planned, PLAIN + SPECIAL),
    "moving-half": (half_way, PLAIN + SPECIAL[:1]),
}
"""What each state is called, and in which looks it is drawn."""
