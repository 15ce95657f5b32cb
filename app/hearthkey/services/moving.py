"""Plans a move, keeps its list, and says whom each step touches."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace

from hearthkey.core import moving, network
from hearthkey.core.errors import Refused
from hearthkey.core.moving import Move, MovingPlan
from hearthkey.core.moving_steps import Kind, Task
from hearthkey.core.plans import Changes
from hearthkey.core.sentences import moving as sentences
from hearthkey.services import hostnames
from hearthkey.services.ports import Clock, Register
from hearthkey.services.writing_diary import note


@dataclass(frozen=True)
class MoveRequest:
    """What will be new.

    Args:
        kinds: what changes; a new host or new subnets say so by themselves.
        new_host: as typed, or None where it stays.
        new_home: in prefix notation, or None where they stay.
    """

    kinds: Iterable[Kind] = ()
    new_host: str | None = None
    new_home: Sequence[str] | None = None


class Moving:
    """The verb "moving-day". Nothing here changes a setting: each step says which verb does."""

    def __init__(self, register: Register, clock: Clock) -> None:
        self._register = register
        self._clock = clock

    def preview(self, request: MoveRequest) -> MovingPlan:
        """Work a move out without keeping it.

        Raises:
            Refused: no-household; move-empty, move-same-host, move-same-home, move-wants-name; host-empty,
                host-too-long, host-malformed; subnet-malformed, subnet-has-host-bits, subnet-too-wide,
                subnet-too-small, subnets-missing, subnets-overlap.
        """
        household = self._register.household()
        if household is None:
            raise Refused("no-household")
        kinds, host, home = set(request.kinds), household.gateway_host, household.home_subnets
        if request.new_host is not None:
            kinds.add(Kind.HOST)
            host = hostnames.gateway_host(request.new_host)
        if request.new_home is not None:
            kinds.add(Kind.SUBNET)
            home = tuple(network.subnet(one, "home subnet") for one in request.new_home)
            network.check_apart(home, household.tunnel_subnet)
        move = Move(frozenset(kinds), self._clock.now(), household.gateway_host, host, household.home_subnets, home)
        moving.check(move)
        return self._plan(move)

    def begin(self, request: MoveRequest) -> Changes:
        """Keep a move, so that its list can be ticked.

        Raises:
            Refused: move-there; as `preview`.
            Unavailable: as the register.
        """
        if self._register.move() is not None:
            raise Refused("move-there")
        planned = self.preview(request)
        return self._keep(planned.move, sentences.begun(planned))

    def look(self) -> MovingPlan:
        """The move that is under way, with what the register shows of it.

        Raises:
            Refused: no-household, move-none.
            Unavailable: as the register.
        """
        move = self._register.move()
        if move is None:
            raise Refused("move-none")
        return self._plan(move)

    def tick(self, task: Task) -> Changes:
        """Call a step done.

        Raises:
            Refused: move-none; as `core.moving.check_tick`.
            Unavailable: as the register.
        """
        planned = self.look()
        moving.check_tick(planned, task)
        return self._keep(planned.move.with_tick(task, self._clock.now()), sentences.ticked(planned.move, task))

    def take_back(self, task: Task) -> Changes:
        """Call a step open again; what to undo in the world is said by `core.sentences.moving.back`.

        Raises:
            Refused: move-none; as `core.moving.check_back`.
            Unavailable: as the register.
        """
        planned = self.look()
        moving.check_back(planned, task)
        return self._keep(planned.move.without_tick(task), sentences.taken_back(planned.move, task))

    def end(self, *, call_off: bool = False) -> Changes:
        """Put the list away.

        Args:
            call_off: also where steps are open.

        Raises:
            Refused: move-none, move-not-over.
            Unavailable: as the register.
        """
        whole = self.look().next is None
        if not whole and not call_off:
            raise Refused("move-not-over")
        return self._keep(None, sentences.ended(whole=whole))

    def _plan(self, move: Move) -> MovingPlan:
        household = self._register.household()
        if household is None:
            raise Refused("no-household")
        register = self._register
        return moving.plan(move, household, register.former_hosts(), register.passes(), self._clock.now())

    def _keep(self, move: Move | None, sentence: str) -> Changes:
        kept = None if move is None else replace(move, ticked=dict(move.ticked))
        with self._register.change() as change:
            change.keep_move(kept)
            note(self._register, change, verb="moving-day", sentence=sentence, now=self._clock.now())
        return Changes(sentence)
