"""The plan of the succession: days in order, nothing after the old CA's end, and a way back until the last step."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from hearthkey.core.duties import Act, House, house_duties
from hearthkey.core.household import Authority
from hearthkey.core.succession import (
    ORDER,
    Carries,
    Cause,
    DeviceStep,
    Plan,
    Standing,
    Step,
    Succession,
    plan,
    succession_due,
)
from hearthkey.core.succession_days import succession_duties

NOW = datetime(2034, 3, 1, 9, 0, tzinfo=UTC)
OLD = Authority(b"old", "a" * 64, datetime(2036, 5, 8, tzinfo=UTC), "keyring")
NEW = Authority(b"new", "b" * 64, datetime(2044, 2, 27, tzinfo=UTC), "keyring", "a" * 64)


def come_to(count: int, cause: Cause = Cause.PLANNED) -> Succession:
    """A succession of which so many steps were taken."""
    order = [one for one in ORDER[cause] if one is not Step.DEVICES]
    return Succession(OLD, NEW, b"", cause, {step: NOW + timedelta(days=n) for n, step in enumerate(order[:count])})


def device(carries: Carries) -> DeviceStep:
    """Ines's phone."""
    return DeviceStep("Ines’s phone", "x.quince.example", carries, NOW, (), "0a")


def planned(found: Succession | None, *devices: DeviceStep, cause: Cause = Cause.PLANNED, days: int = 0) -> Plan:
    """The plan, some days later."""
    return plan(
        found,
        devices,
        cause=cause,
        old_end=OLD.not_after,
        last_safe_day=NOW,
        seen=True,
        now=NOW + timedelta(days=days),
    )


@given(st.sampled_from(Cause), st.integers(0, 4), st.sampled_from(Carries), st.integers(0, 4000))
def test_days_rise_and_end_with_the_old_ca(cause: Cause, count: int, carries: Carries, days: int) -> None:
    """If this fails, the plan says a day that cannot be kept, or two steps are to be taken at once."""
    found = come_to(count, cause) if count else None
    made = planned(found, device(carries), cause=cause, days=days)
    left = [one.day for one in made.steps if one.standing is not Standing.DONE]
    assert left == sorted(left)
    assert all(day <= OLD.not_after for day in left)
    assert sum(one.standing is Standing.NOW for one in made.steps) == (count < 4)
    assert {one.step for one in made.steps} == set(Step)


@pytest.mark.parametrize(
    ("count", "in_charge", "trusted", "last"),
    [
        (1, OLD, (OLD, NEW), Step.BEGIN),
        (2, OLD, (OLD, NEW), Step.TRUST),
        (3, NEW, (OLD, NEW), Step.GATEWAY),
        (4, NEW, (NEW,), None),
    ],
)
def test_who_is_trusted_and_in_charge(
    count: int, in_charge: Authority, trusted: tuple[Authority, ...], last: Step | None
) -> None:
    """If this fails, passes are made by a CA that the gateway does not know, or the last step has a way back."""
    found = come_to(count)
    assert (found.in_charge, found.trusted, found.last) == (in_charge, trusted, last)
    assert found.signing == trusted


def test_without_the_old_key_only_the_new_one_signs() -> None:
    """If this fails, a step is offered that needs a key which nobody has."""
    found = come_to(1, Cause.LOST)
    assert (found.in_charge, found.signing, found.last) == (NEW, (NEW,), None)
    assert come_to(2, Cause.LOST).last is Step.TRUST
    assert come_to(3, Cause.LOST).last is None
    assert planned(come_to(2, Cause.LOST), device(Carries.OLD)).next is Step.DEVICES


def test_the_devices_decide_when_the_old_one_goes() -> None:
    """If this fails, the old CA goes while somebody still needs it, or never."""
    assert planned(come_to(3), device(Carries.HANDED_OVER)).next is Step.DEVICES
    assert planned(come_to(3), device(Carries.DONE)).next is Step.FINISH
    assert planned(come_to(4), device(Carries.DONE)).next is None


def test_the_day_list_says_go_on_instead_of_begin() -> None:
    """If this fails, the householder is told to begin what has begun, or hears nothing until the old CA ends."""
    due = succession_due(come_to(2))
    waiting = succession_duties(come_to(2), (), NOW)
    assert due is not None
    assert NOW < due <= OLD.not_after
    house = House(OLD.not_after, OLD.not_after, OLD.not_after, NOW, waiting)
    acts = [one.act for one in house_duties(house, ())]
    assert acts.count(Act.FINISH_SUCCESSION) == acts.count(Act.GATEWAY_FOLLOWS) == 1
    assert max(one.act_on for one in waiting) == due
    assert Act.BEGIN_SUCCESSION not in acts
    assert succession_due(come_to(4)) is None
    assert succession_due(None) is None
