"""Moving day's part of the errands' stand-in: a list of values, kept in memory, with the real rules."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QObject

from hearthkey.core import moving
from hearthkey.core.errors import Refused
from hearthkey.core.household import FormerHost
from hearthkey.core.moving import Move, MovingPlan
from hearthkey.core.moving_steps import Kind, Task
from hearthkey.core.network import subnet
from hearthkey.core.plans import Changes
from hearthkey.core.sentences import moving as words
from hearthkey.services.moving import MoveRequest
from hearthkey.ui.errands import Errands
from hearthkey.ui.tasks import Failed, Then


class MovingFake(Errands):
    """Quince Cottage before or in a move.

    Attributes:
        move: the move that is under way.
        former: what the gateway still answers to.
    """

    move: Move | None = None
    former: tuple[FormerHost, ...] = ()

    def _planned_move(self, move: Move) -> MovingPlan:
        seen = self.last
        assert seen is not None
        assert seen.household is not None
        return moving.plan(move, seen.household, self.former, seen.passes, seen.at)

    def _asked_for(self, request: MoveRequest) -> Move:
        seen = self.last
        assert seen is not None
        assert seen.household is not None
        kinds, host, home = set(request.kinds), seen.household.gateway_host, seen.household.home_subnets
        if request.new_host is not None:
            kinds.add(Kind.HOST)
        if request.new_home is not None:
            kinds.add(Kind.SUBNET)
        new = home if request.new_home is None else tuple(subnet(one, "home subnet") for one in request.new_home)
        move = Move(frozenset(kinds), seen.at, host, request.new_host or host, home, new)
        moving.check(move)
        return move

    def preview_move(self, request: MoveRequest, context: QObject, then: Then[MovingPlan], failed: Failed) -> None:
        """See the real one."""
        del context
        try:
            then(self._planned_move(self._asked_for(request)))
        except Refused as error:
            failed(error)

    def look_move(self, context: QObject, then: Then[MovingPlan | None], failed: Failed) -> None:
        """See the real one."""
        del context, failed
        then(None if self.move is None else self._planned_move(self.move))

    def _keep_move(self, make: Callable[[], tuple[Move | None, str]], then: Then[Changes], failed: Failed) -> None:
        try:
            self.move, sentence = make()
        except Refused as error:
            failed(error)
            return
        self.seen.emit(self.last)
        then(Changes(sentence))

    def _under_way(self) -> Move:
        assert self.move is not None
        return self.move

    def begin_move(self, request: MoveRequest, context: QObject, then: Then[Changes], failed: Failed) -> None:
        """See the real one."""
        del context
        move = self._asked_for(request)
        self._keep_move(lambda: (move, words.begun(self._planned_move(move))), then, failed)

    def tick_move(self, task: Task, context: QObject, then: Then[Changes], failed: Failed) -> None:
        """See the real one."""
        del context
        seen, move = self.last, self._under_way()
        assert seen is not None

        def make() -> tuple[Move, str]:
            moving.check_tick(self._planned_move(move), task)
            return move.with_tick(task, seen.at), words.ticked(move, task)

        self._keep_move(make, then, failed)

    def take_move_back(self, task: Task, context: QObject, then: Then[Changes], failed: Failed) -> None:
        """See the real one."""
        del context
        move = self._under_way()
        self._keep_move(lambda: (move.without_tick(task), words.taken_back(move, task)), then, failed)

    def end_move(self, context: QObject, then: Then[Changes], failed: Failed, *, call_off: bool) -> None:
        """See the real one."""
        del context
        self._keep_move(lambda: (None, words.ended(whole=not call_off)), then, failed)
