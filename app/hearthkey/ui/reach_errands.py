"""What the window asks about the way in, and about a move."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QObject

from hearthkey.core.forwarding import ForwardingFacts
from hearthkey.core.moving import MovingPlan, Task
from hearthkey.core.plans import Changes
from hearthkey.core.reach.plan import NetworkPlan
from hearthkey.formats.sheet import Block
from hearthkey.services.moving import MoveRequest
from hearthkey.services.network_planning import PlanRequest
from hearthkey.ui.diary_errands import DiaryErrands
from hearthkey.ui.tasks import Failed, Then


class ReachErrands(DiaryErrands):
    """This part of the errands; see `Lane` for the shape of each."""

    def plan_network(self, request: PlanRequest, context: QObject, then: Then[NetworkPlan], failed: Failed) -> None:
        """What can be worked out about the way in."""
        self._ask(lambda: self._here().network_planning.plan(request), context, then, failed)

    def forwarding(
        self, inside: str | None, router: str | None, context: QObject, then: Then[ForwardingFacts], failed: Failed
    ) -> None:
        """What the router has to let through."""
        self._ask(lambda: self._here().forwarding.facts(inside=inside, router=router), context, then, failed)

    def print_sheet(
        self, sheet: tuple[Block, ...], folder: Path, name: str, context: QObject, then: Then[Path], failed: Failed
    ) -> None:
        """Write a sheet as PDF."""

        def work() -> Path:
            house = self._here()
            return house.files.write(folder, name, house.print_blocks(sheet))

        self._ask(work, context, then, failed)

    def preview_move(self, request: MoveRequest, context: QObject, then: Then[MovingPlan], failed: Failed) -> None:
        """What a move would ask for."""
        self._ask(lambda: self._here().moving.preview(request), context, then, failed)

    def look_move(self, context: QObject, then: Then[MovingPlan | None], failed: Failed) -> None:
        """The move that is under way, or None."""

        def work() -> MovingPlan | None:
            house = self._here()
            return None if house.register.move() is None else house.moving.look()

        self._ask(work, context, then, failed)

    def begin_move(self, request: MoveRequest, context: QObject, then: Then[Changes], failed: Failed) -> None:
        """Keep a move's list."""
        self._change(lambda: self._here().moving.begin(request), context, then, failed)

    def tick_move(self, task: Task, context: QObject, then: Then[Changes], failed: Failed) -> None:
        """Call a step done."""
        self._change(lambda: self._here().moving.tick(task), context, then, failed)

    def take_move_back(self, task: Task, context: QObject, then: Then[Changes], failed: Failed) -> None:
        """Call a step open again."""
        self._change(lambda: self._here().moving.take_back(task), context, then, failed)

    def end_move(self, context: QObject, then: Then[Changes], failed: Failed, *, call_off: bool) -> None:
        """Put the list away."""
        self._change(lambda: self._here().moving.end(call_off=call_off), context, then, failed)
