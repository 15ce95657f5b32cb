"""The forecast: every date that ends has a duty before it, and duties come in time."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from hearthkey.core import duties, renewal
from hearthkey.core.duties import Act, House, forecast
from hearthkey.core.passes import Pass
from hearthkey.core.revocation import Reason
from hearthkey.core.sentences import duties as words

NOW = datetime(2026, 5, 12, 9, 30, tzinfo=UTC)
DAY = timedelta(days=1)
HOUSE = House(NOW + 700 * DAY, NOW + 720 * DAY, NOW + 9 * 365 * DAY, NOW + 100 * DAY)

DAYS = st.integers(min_value=1, max_value=4000)


def made(
    serial: str, since: int, days: int, *, guest: bool = False, handed_over: bool = True, reason: Reason | None = None
) -> Pass:
    """A pass of Ines, on a device of its own, that began some days ago and ends in some days."""
    return Pass(
        person="Ines",
        device="phone",
        kind="linux",
        identity=f"{serial[:8]}.quince.example",
        serial=serial,
        key_set="compact",
        container="strong",
        guest=guest,
        not_before=NOW - since * DAY,
        not_after=NOW + days * DAY,
        handed_over=NOW - DAY if handed_over else None,
        reason=reason,
        since=None if reason is None else NOW,
    )


PASSES = st.lists(
    st.builds(
        made,
        st.uuids().map(lambda one: one.hex),
        DAYS,
        DAYS,
        guest=st.booleans(),
        handed_over=st.booleans(),
        reason=st.sampled_from([None, Reason.CERTIFICATE_HOLD, Reason.KEY_COMPROMISE]),
    ),
    max_size=8,
)


@given(PASSES, DAYS, DAYS, DAYS, DAYS)
def test_no_date_ends_without_a_duty_before_it(
    passes: list[Pass], list_days: int, gateway_days: int, authority_days: int, copy_days: int
) -> None:
    """If this failed, somebody would be locked out on a day that nobody was told of."""
    house = House(NOW + list_days * DAY, NOW + gateway_days * DAY, NOW + authority_days * DAY, NOW + copy_days * DAY)
    found = forecast(house, passes, frozenset(), NOW)
    for act, end in (
        (Act.SIGN_LIST, house.list_end),
        (Act.RENEW_GATEWAY, house.gateway_end),
        (Act.BEGIN_SUCCESSION, house.authority_end),
    ):
        assert any(one.act is act and one.act_on < end for one in found)
    assert any(one.act is Act.TRY_COPY and one.act_on <= house.copy_due for one in found)
    for one in passes:
        if one.reason is not None:
            assert all(duty.chosen != one for duty in found)
            continue
        wanted = Act.GUEST_LEAVES if one.guest else Act.RENEW_PASS
        mine = [duty for duty in found if duty.chosen == one and duty.act is wanted]
        assert len(mine) == 1
        assert one.not_before < mine[0].act_on < one.not_after


@given(PASSES)
def test_keys_are_unique_and_stay(passes: list[Pass]) -> None:
    """If this failed, a calendar would keep duties that are gone, or lose one of two."""
    found = forecast(HOUSE, passes, frozenset(), NOW)
    keys = [one.key for one in found]
    assert len(set(keys)) == len(keys)
    later = forecast(HOUSE, passes, frozenset(), NOW + timedelta(hours=1))
    assert {one.key for one in later} <= set(keys)
    assert list(found) == sorted(found, key=lambda duty: (duty.act_on, duty.key))


@pytest.mark.parametrize("days", [3, 30, 400])
def test_the_succession_begins_before_the_longest_pass_would_outlive_the_ca(days: int) -> None:
    """If this failed, a pass made on the last safe day would end early with its CA."""
    longest = made("0a", days, days)
    by = duties.succession_by(HOUSE.authority_end, [longest, made("0b", 1, 1)])
    assert by + (longest.not_after - longest.not_before) + renewal.SLOWEST_VISIT == HOUSE.authority_end


def test_a_pass_that_was_proved_or_waits_or_is_stopped_need_not_be_proved() -> None:
    """If this failed, the list would ask for what is done, or for what cannot be done."""
    passes = [
        made("0a", 9, 90),
        made("0b", 9, 90),
        made("0c", 9, 90, handed_over=False),
        made("0d", 9, 90, reason=Reason.CERTIFICATE_HOLD),
    ]
    found = [one.chosen for one in forecast(HOUSE, passes, {"0b"}, NOW) if one.act is Act.PROVE]
    assert found == [passes[0]]


@pytest.mark.parametrize("act", list(Act))
def test_every_duty_has_words_and_minutes(act: Act) -> None:
    """If this failed, a line of the list would be empty."""
    duty = duties.Duty("key", NOW, act, NOW + DAY, made("0a", 1, 1))
    assert duties.MINUTES[act] > 0
    for sentence in (words.title(duty), words.reason(duty)):
        assert "{" not in str(sentence)
    assert "13 May 2026" in str(words.reason(duty))


def test_a_deputy_s_part_comes_due_only_where_there_are_parts() -> None:
    """If this failed, papers would fade for years, or a family without any would be nagged about them."""
    assert all(one.act is not Act.TRY_PART for one in forecast(HOUSE, [], frozenset(), NOW))
    house = replace(HOUSE, part_due=NOW + 40 * DAY)
    (duty,) = [one for one in forecast(house, [], frozenset(), NOW) if one.act is Act.TRY_PART]
    assert (duty.act_on, duty.key) == (NOW + 40 * DAY, "try-part")
    assert str(words.reason(duty)).startswith("One of the parts was not tried for a year on 21 June 2026.")


@given(PASSES, st.integers(-30, 4000))
def test_a_list_names_each_act_once_and_leaves_none_out(passes: list[Pass], days: int) -> None:
    """If this failed, the day list would count four times what is done once, or lose it."""
    now = NOW + days * DAY
    found = forecast(HOUSE, passes, frozenset(), now)
    listed = duties.agenda(found, now)
    acts = [(one.act, one.chosen) for one in listed]
    assert len(set(acts)) == len(acts)
    assert set(acts) == {(one.act, one.chosen) for one in found}
    assert {(one.act, one.chosen) for one in listed if one.overdue(now)} == {
        (one.act, one.chosen) for one in found if one.overdue(now)
    }
