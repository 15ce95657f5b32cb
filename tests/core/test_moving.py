"""Moving day: the order of its steps, whom they touch, and what may be ticked or taken back.

Sources: RFC 7296 sections 2.9 and 3.5, RFC 4945 section 3.1, RFC 1035 section 3.2.1; the order itself is common
practice with no source.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, timedelta
from ipaddress import ip_network
from itertools import combinations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from hearthkey.core import moving
from hearthkey.core.errors import Refused
from hearthkey.core.household import FormerHost
from hearthkey.core.moving import Move, MovingPlan
from hearthkey.core.moving_steps import Kind, Task
from hearthkey.core.network import FULL
from hearthkey.core.sentences import moving as words
from tests.core.test_settling import COTTAGE, FAMILY, NOW

OLD, NEW = COTTAGE.gateway_host, "door.quince.example"
ELSEWHERE = (ip_network("192.0.2.0/24"),)
EVERY_MOVE = [frozenset(some) for count in range(1, 6) for some in combinations(Kind, count)]
HAVE_ONE = ("Ines’s phone", "Tomasz’s laptop")
"""Who was handed a bundle, in the family of the tests of settings."""


def move(*kinds: Kind) -> Move:
    """A move of the cottage."""
    return Move(
        frozenset(kinds),
        NOW,
        OLD,
        NEW if Kind.HOST in kinds else OLD,
        COTTAGE.home_subnets,
        ELSEWHERE if Kind.SUBNET in kinds else COTTAGE.home_subnets,
    )


def planned(one: Move) -> MovingPlan:
    """Its plan, on the day on which it is planned."""
    return moving.plan(one, COTTAGE, (), FAMILY, NOW)


@pytest.mark.parametrize("kinds", EVERY_MOVE)
def test_no_step_stands_before_one_that_it_needs(kinds: frozenset[Kind]) -> None:
    """Broken if it fails: whoever goes down the list is refused, or cuts somebody off."""
    one = move(*kinds)
    done: list[Task] = []
    plan = planned(one)
    for step in plan.steps:
        assert set(planned(one).of(step.task).waits_for) <= set(done) | set(), step.task
        assert set(plan.of(step.task).waits_for) <= set(done)
        done.append(step.task)
        one = one.with_tick(step.task, NOW)
    assert planned(one).next is None


@pytest.mark.parametrize("kinds", EVERY_MOVE)
def test_the_old_goes_last_and_only_after_somebody_got_in(kinds: frozenset[Kind]) -> None:
    """Broken if it fails: the old line, name, subnet or box is gone before anybody knows that the new one works."""
    order = [one.task for one in planned(move(*kinds)).steps]
    proved = order.index(Task.PROVE)
    for last in (Task.NAME_GOES, Task.HOME_GOES, Task.WIPE_BOX, Task.END_LINE):
        assert last not in order or order.index(last) > proved
    if Task.NEW_BUNDLES in order:
        for first in (Task.RENUMBER, Task.POINT_NAME):
            assert first not in order or order.index(first) > order.index(Task.NEW_BUNDLES)


def test_each_change_touches_whom_the_protocol_says() -> None:
    """Broken if it fails: the family makes new bundles for nothing, or misses those that it needs."""
    for kind in (Kind.PROVIDER, Kind.ROUTER, Kind.BOX):
        assert planned(move(kind)).devices == ()
    assert planned(move(Kind.HOST)).devices == HAVE_ONE
    assert planned(move(Kind.SUBNET)).devices == HAVE_ONE
    full = replace(COTTAGE, tunnel=FULL)
    assert moving.plan(move(Kind.SUBNET), full, (), FAMILY, NOW).devices == ()
    assert Task.NEW_BUNDLES not in [one.task for one in moving.plan(move(Kind.SUBNET), full, (), FAMILY, NOW).steps]


def test_a_step_out_of_order_is_refused_with_the_one_before_it() -> None:
    """Broken if it fails: somebody ends the old line on the first day."""
    with pytest.raises(Refused) as refused:
        moving.check_tick(planned(move(Kind.PROVIDER)), Task.END_LINE)
    assert (refused.value.code, refused.value.facts["first"]) == ("move-step-early", "prove")


def test_what_the_register_can_see_is_not_ticked_on_trust() -> None:
    """Broken if it fails: a list full of ticks, and a gateway that knows one name."""
    one = move(Kind.HOST).with_tick(Task.TRY_COPY, NOW).with_tick(Task.NAME_LEADS, NOW)
    with pytest.raises(Refused, match="move-not-seen"):
        moving.check_tick(planned(one), Task.BOTH_NAMES)
    settled = replace(COTTAGE, gateway_host=NEW)
    former = (FormerHost(OLD, NOW),)
    moving.check_tick(moving.plan(one, settled, former, FAMILY, NOW), Task.BOTH_NAMES)
    one = one.with_tick(Task.BOTH_NAMES, NOW).with_tick(Task.DELIVER, NOW)
    with pytest.raises(Refused) as refused:
        moving.check_tick(moving.plan(one, settled, former, FAMILY, NOW), Task.NEW_BUNDLES)
    assert (refused.value.code, refused.value.facts["devices"]) == ("move-devices-left", HAVE_ONE)
    later = tuple(
        replace(each, handed_over=NOW + timedelta(hours=1)) if each.handed_over is not None else each for each in FAMILY
    )
    moving.check_tick(moving.plan(one, settled, former, later, NOW + timedelta(hours=2)), Task.NEW_BUNDLES)


def test_the_new_home_is_learnt_by_whoever_gets_a_bundle_after_it() -> None:
    """Broken if it fails: the house is renumbered while a phone knows only the old subnet."""
    one = move(Kind.SUBNET).with_tick(Task.TRY_COPY, NOW)
    both = replace(COTTAGE, home_subnets=(*COTTAGE.home_subnets, *ELSEWHERE))
    moving.check_tick(moving.plan(one, both, (), FAMILY, NOW), Task.BOTH_HOMES)
    one = one.with_tick(Task.BOTH_HOMES, NOW + timedelta(minutes=1))
    assert moving.plan(one, both, (), FAMILY, NOW).of(Task.NEW_BUNDLES).left == HAVE_ONE


@given(st.sampled_from(EVERY_MOVE), st.data())
@settings(max_examples=60, deadline=None)
def test_any_list_can_be_gone_back_through(kinds: frozenset[Kind], data: st.DataObject) -> None:
    """Broken if it fails: somebody who changes their mind half-way is stuck."""
    one = move(*kinds)
    for _ in range(data.draw(st.integers(0, 12))):
        ready = [step.task for step in planned(one).steps if step.ticked is None and not step.waits_for]
        if not ready:
            break
        one = one.with_tick(data.draw(st.sampled_from(ready)), NOW)
    while one.ticked:
        last = planned(one).back
        assert last is not None
        moving.check_back(planned(one), last.task)
        one = one.without_tick(last.task)


def test_what_a_later_step_needed_is_not_taken_back_before_it() -> None:
    """Broken if it fails: the short TTL is undone under a name that was just pointed elsewhere."""
    one = move(Kind.PROVIDER).with_tick(Task.SHORT_TTL, NOW).with_tick(Task.POINT_NAME, NOW)
    with pytest.raises(Refused) as refused:
        moving.check_back(planned(one), Task.SHORT_TTL)
    assert (refused.value.code, refused.value.facts["by"]) == ("move-step-needed", "point-name")


@pytest.mark.parametrize(
    ("one", "code"),
    [
        (replace(move(Kind.ROUTER), kinds=frozenset()), "move-empty"),
        (replace(move(Kind.HOST), new_host=OLD), "move-same-host"),
        (replace(move(Kind.SUBNET), new_home=COTTAGE.home_subnets), "move-same-home"),
        (replace(move(Kind.PROVIDER), old_host="203.0.113.9", new_host="203.0.113.9"), "move-wants-name"),
        (replace(move(Kind.PROVIDER, Kind.HOST), new_host="203.0.113.9"), "move-wants-name"),
    ],
)
def test_a_move_that_would_cut_everybody_off_is_not_planned(one: Move, code: str) -> None:
    """Broken if it fails: a family with a bare address in its bundles changes the provider, and is outside."""
    with pytest.raises(Refused, match=code):
        moving.check(one)


@pytest.mark.parametrize("task", list(Task))
def test_every_step_says_what_why_and_how_to_go_back(task: Task) -> None:
    """Broken if it fails: a step is a code."""
    one = move(*Kind)
    said = [str(sentence) for sentence in (words.step(one, task), words.why(one, task), words.back(one, task))]
    assert all(said)
    assert "{" not in "".join(said)
    assert str(words.touched(planned(one).of(task))).endswith(".")


def test_a_move_begun_at_night_keeps_its_moment() -> None:
    """Broken if it fails: the list is sorted by a day that never was."""
    night = datetime(2027, 3, 28, 0, 30, tzinfo=UTC)
    assert move(Kind.ROUTER).with_tick(Task.TRY_COPY, night).ticked == {Task.TRY_COPY: night}
