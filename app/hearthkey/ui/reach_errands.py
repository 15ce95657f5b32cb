"""What the window asks about the way in, and about a move."""

from __future__ import annotations

import threading
from pathlib import Path

import shiboken6
from PySide6.QtCore import QObject, Signal

from hearthkey.core.errors import HearthkeyError
from hearthkey.core.forwarding import ForwardingFacts
from hearthkey.core.moving import MovingPlan
from hearthkey.core.moving_steps import Task
from hearthkey.core.plans import Changes
from hearthkey.core.reach.chain import Chain
from hearthkey.core.reach.plan import NetworkPlan
from hearthkey.formats.sheet import Block
from hearthkey.services.moving import MoveRequest
from hearthkey.services.network_planning import PlanRequest
from hearthkey.services.reach_plan import CheckPlan
from hearthkey.services.reaching import CheckRequest, Reaching
from hearthkey.ui.kind_errands import KindErrands
from hearthkey.ui.tasks import Failed, Then


class ReachErrands(KindErrands):
    """This part of the errands; see `Lane` for the shape of each.

    A check of the way in may wait for the network, so it never stands in the lane's way; one is made at a time.

    Signals:
        check_planned: a check begins: every link that there will be, in the order of the packet.
        link_known: one of them is known: `Link`.
    """

    check_planned = Signal(object)
    link_known = Signal(object)

    _stop: threading.Event | None = None

    def check_way_in(self, request: CheckRequest, context: QObject, then: Then[Chain], failed: Failed) -> None:
        """Walk the chain; what came of it is kept where this copy of the app may write."""
        if self._stop is not None:
            return
        stop = self._stop = threading.Event()

        def prepare() -> tuple[Reaching, CheckPlan]:
            reaching = self._here().reaching
            return reaching, reaching.prepare(request)

        def walk(prepared: tuple[Reaching, CheckPlan]) -> None:
            reaching, plan = prepared
            self.check_planned.emit(plan.places)
            self._tasks.pool(lambda: reaching.walk(plan, self.link_known.emit, stop.is_set), self, keep, over)

        def keep(chain: Chain) -> None:
            def work() -> Chain:
                house = self._here()
                if not house.register.read_only:
                    house.reaching.keep(chain)
                return chain

            self._ask(work, self, kept, over)

        def kept(chain: Chain) -> None:
            self._stop = None
            self.refresh_then(lambda: then(chain) if shiboken6.isValid(context) else None)

        def over(error: HearthkeyError) -> None:
            self._stop = None
            if shiboken6.isValid(context):
                failed(error)

        self._ask(prepare, self, walk, over)

    def cancel_check(self) -> None:
        """End the check that is under way."""
        if self._stop is not None:
            self._stop.set()

    def close(self) -> None:
        """See `Lane`; a check is cut short."""
        self.cancel_check()
        super().close()

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
