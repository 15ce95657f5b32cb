"""Moving day: what a move asks for and of whom, how far it is, and what may be ticked or taken back."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field, replace
from datetime import datetime

from hearthkey.core.errors import Refused
from hearthkey.core.former_hosts import still_use
from hearthkey.core.household import FormerHost, Household
from hearthkey.core.moving_steps import RULES, Kind, Task, When
from hearthkey.core.names import as_address
from hearthkey.core.network import FULL, Subnet
from hearthkey.core.passes import LIVING, Pass


@dataclass(frozen=True)
class Move:
    """A move as the householder planned it, and how far it is.

    Args:
        kinds: what is new.
        begun: UTC.
        old_host, new_host: the same where the name stays.
        old_home, new_home: the same where the subnets stay.
        ticked: when which task was done, UTC.
    """

    kinds: frozenset[Kind]
    begun: datetime
    old_host: str
    new_host: str
    old_home: tuple[Subnet, ...]
    new_home: tuple[Subnet, ...]
    ticked: Mapping[Task, datetime] = field(default_factory=dict)

    def with_tick(self, task: Task, at: datetime) -> Move:
        """The same, with one task done."""
        return replace(self, ticked={**self.ticked, task: at})

    def without_tick(self, task: Task) -> Move:
        """The same, with one task to be done again."""
        return replace(self, ticked={one: at for one, at in self.ticked.items() if one is not task})


@dataclass(frozen=True)
class Step:
    """A task of one move.

    Args:
        task: what.
        when: on which side of the day.
        minutes: about how long, for everybody together; common practice with no source.
        devices: titles of those that need a new bundle in it.
        gateway: whether the gateway is told something.
        ticked: when it was done, UTC.
        waits_for: what has to be done first, and is not yet.
        left: titles of those that still lack what the task is for, as far as the register can see.
        seen: whether the register shows that it was done; None where it cannot know.
    """

    task: Task
    when: When
    minutes: int
    devices: tuple[str, ...]
    gateway: bool
    ticked: datetime | None
    waits_for: tuple[Task, ...]
    left: tuple[str, ...]
    seen: bool | None


@dataclass(frozen=True)
class MovingPlan:
    """All of a move, in the order in which it is done."""

    move: Move
    steps: tuple[Step, ...]

    def of(self, task: Task) -> Step:
        """One step.

        Raises:
            Refused: move-step-unknown.
        """
        for one in self.steps:
            if one.task is task:
                return one
        raise Refused("move-step-unknown", step=task.value)

    @property
    def next(self) -> Step | None:
        """The first that is not done; None where all are."""
        return next((one for one in self.steps if one.ticked is None), None)

    @property
    def devices(self) -> tuple[str, ...]:
        """Titles of all that need a new bundle, whichever step it is for."""
        return tuple(dict.fromkeys(title for one in self.steps for title in one.devices))

    @property
    def back(self) -> Step | None:
        """The step that could be taken back now: the last one done."""
        done = [one for one in self.steps if one.ticked is not None]
        return done[-1] if done else None


def check(move: Move) -> None:
    """Refuse a move that is none, or that would cut everybody off.

    Raises:
        Refused: move-empty, move-same-host, move-same-home, move-wants-name.
    """
    if not move.kinds:
        raise Refused("move-empty")
    if Kind.HOST in move.kinds and move.new_host == move.old_host:
        raise Refused("move-same-host", host=move.old_host)
    if Kind.SUBNET in move.kinds and set(move.new_home) == set(move.old_home):
        raise Refused("move-same-home", subnets=tuple(str(one) for one in move.old_home))
    if Kind.PROVIDER in move.kinds and as_address(move.new_host) is not None:
        raise Refused("move-wants-name", host=move.new_host)


def plan(
    move: Move, household: Household, former: Iterable[FormerHost], passes: Iterable[Pass], now: datetime
) -> MovingPlan:
    """Work out what is to be done, for whom, and how far it is.

    Args:
        former: what the gateway still answers to beside its host.
        passes: every pass.
        now: UTC.
    """
    known = tuple(passes)
    there = [task for task in Task if RULES[task].kinds & move.kinds]
    touched, left = _touched(move, household, known, now), _left(move, household, tuple(former), known, now)
    if not touched:
        there = [task for task in there if task is not Task.NEW_BUNDLES]
    seen = _seen(move, household, tuple(former), left)
    steps = []
    for task in there:
        rule, whose = RULES[task], touched if task is Task.NEW_BUNDLES else ()
        steps.append(
            Step(
                task=task,
                when=rule.when,
                minutes=rule.minutes * max(1, len(whose)),
                devices=whose,
                gateway=rule.gateway,
                ticked=move.ticked.get(task),
                waits_for=tuple(one for one in rule.needs if one in there and one not in move.ticked),
                left=left if task in {Task.NEW_BUNDLES, Task.NAME_GOES} else (),
                seen=seen.get(task),
            )
        )
    return MovingPlan(move, tuple(steps))


def check_tick(planned: MovingPlan, task: Task) -> None:
    """Insist that a step may be called done.

    Raises:
        Refused: move-step-unknown, move-step-done, move-step-early, move-devices-left, move-not-seen.
    """
    step = planned.of(task)
    if step.ticked is not None:
        raise Refused("move-step-done", step=task.value)
    if step.waits_for:
        raise Refused("move-step-early", step=task.value, first=step.waits_for[0].value)
    if task is Task.NEW_BUNDLES and step.left:
        raise Refused("move-devices-left", devices=step.left)
    if step.seen is False:
        raise Refused("move-not-seen", step=task.value)


def check_back(planned: MovingPlan, task: Task) -> None:
    """Insist that a step may be taken back: nothing that needed it is done.

    Raises:
        Refused: move-step-unknown, move-step-open, move-step-needed.
    """
    if planned.of(task).ticked is None:
        raise Refused("move-step-open", step=task.value)
    for one in planned.steps:
        if one.ticked is not None and task in RULES[one.task].needs:
            raise Refused("move-step-needed", step=task.value, by=one.task.value)


def _handed(passes: Iterable[Pass], now: datetime) -> list[Pass]:
    return [one for one in passes if one.state(now) in LIVING and one.handed_over is not None]


def _titles(passes: Iterable[Pass]) -> tuple[str, ...]:
    return tuple(dict.fromkeys(one.title for one in passes))


def _by_split(move: Move, household: Household) -> bool:
    """Whether bundles say which subnets are at home, and these change."""
    return Kind.SUBNET in move.kinds and household.tunnel != FULL


def _touched(move: Move, household: Household, passes: tuple[Pass, ...], now: datetime) -> tuple[str, ...]:
    if Kind.HOST in move.kinds or _by_split(move, household):
        return _titles(_handed(passes, now))
    return ()


def _left(
    move: Move, household: Household, former: tuple[FormerHost, ...], passes: tuple[Pass, ...], now: datetime
) -> tuple[str, ...]:
    """Who has no bundle yet that says what is new."""
    found: tuple[str, ...] = ()
    if Kind.HOST in move.kinds:
        old = next((one for one in former if one.host == move.old_host), None)
        if old is not None:
            found += still_use(old, passes, now)
        elif household.gateway_host != move.new_host:
            found += _titles(_handed(passes, now))
    if _by_split(move, household):
        both = move.ticked.get(Task.BOTH_HOMES)
        found += _titles(
            one
            for one in _handed(passes, now)
            if both is None or (one.handed_over is not None and one.handed_over < both)
        )
    return tuple(dict.fromkeys(found))


def _seen(move: Move, household: Household, former: tuple[FormerHost, ...], left: tuple[str, ...]) -> dict[Task, bool]:
    home = set(household.home_subnets)
    return {
        Task.BOTH_NAMES: household.gateway_host == move.new_host,
        Task.BOTH_HOMES: home >= set(move.new_home),
        Task.NEW_BUNDLES: not left,
        Task.NAME_GOES: household.gateway_host == move.new_host and all(one.host != move.old_host for one in former),
        Task.HOME_GOES: home == set(move.new_home),
    }
