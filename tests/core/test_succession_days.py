"""The day list during a succession: always the next step, and the devices that are not through."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from hearthkey.core.duties import Act
from hearthkey.core.sentences import duties as words
from hearthkey.core.succession import Carries, Cause
from hearthkey.core.succession_days import succession_duties
from tests.core.test_succession import NOW, OLD, come_to, device


@pytest.mark.parametrize(
    ("cause", "count", "act"),
    [
        (Cause.PLANNED, 1, Act.TRUST_BOTH),
        (Cause.PLANNED, 2, Act.GATEWAY_FOLLOWS),
        (Cause.PLANNED, 3, Act.DEVICES_FOLLOW),
        (Cause.STOLEN, 3, Act.DEVICES_FOLLOW),
        (Cause.LOST, 2, Act.DEVICES_FOLLOW),
    ],
)
def test_the_next_step_is_the_first_duty(cause: Cause, count: int, act: Act) -> None:
    """If this fails, a householder half-way through hears nothing until the old CA is to go."""
    first, last = succession_duties(come_to(count, cause), [device(Carries.OLD)], NOW)
    assert (first.act, last.act) == (act, Act.FINISH_SUCCESSION)
    assert NOW < first.act_on <= last.act_on < OLD.not_after
    assert "{" not in f"{words.title(first)}{words.reason(first)}"


def test_once_all_are_through_only_the_last_step_is_left() -> None:
    """If this fails, the list asks for devices that are through, or that end by themselves."""
    alone = replace(device(Carries.OLD), ends_by_itself=True)
    for one in (device(Carries.DONE), alone):
        assert [duty.act for duty in succession_duties(come_to(3), [one], NOW)] == [Act.FINISH_SUCCESSION]
    assert succession_duties(come_to(4), [], NOW) == succession_duties(None, [], NOW) == ()


def test_the_first_two_devices_are_named() -> None:
    """If this fails, nobody knows whom to begin with, or one device is spoken of as several."""
    steps = [replace(device(Carries.OLD), title=title) for title in ("Ines’s phone", "Odile’s tablet", "Wren’s watch")]
    told = [str(words.title(succession_duties(come_to(3), steps[:count], NOW)[0])) for count in (1, 2, 3)]
    assert told == [
        "Ines’s phone is not through yet",
        "Ines’s phone and Odile’s tablet are not through yet",
        "3 devices are not through yet, among them Ines’s phone and Odile’s tablet",
    ]


@given(st.sampled_from(Cause), st.integers(1, 3), st.sampled_from(Carries), st.integers(-30, 4000), st.integers(1, 400))
def test_the_old_ca_never_ends_without_a_duty_before(
    cause: Cause, count: int, carries: Carries, days: int, left: int
) -> None:
    """If this fails, a succession that began late is said on the very day on which it is too late."""
    found = come_to(count, cause)
    found = replace(found, old=replace(OLD, not_after=NOW + timedelta(days=left)))
    for duty in succession_duties(found, [device(carries)], NOW + timedelta(days=days)):
        assert duty.act_on < found.old.not_after
        assert duty.act_on < duty.until
