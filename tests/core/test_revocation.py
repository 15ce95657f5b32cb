"""The next revocation list: its number, its dates, and who stands on it for how long."""

from __future__ import annotations

from datetime import datetime, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from hearthkey.core.errors import Refused
from hearthkey.core.revocation import FINAL_REASONS, Entry, ListPlan, Reason, final_reason, plan_list
from tests.fakes.clock import NOW

DAY = timedelta(days=1)
SECOND = timedelta(seconds=1)
CA_END = NOW + 3650 * DAY
END = NOW + 10 * DAY
LOST = Entry("2a", NOW, Reason.KEY_COMPROMISE, END)


def planned(now: datetime, previous: datetime | None, *entries: Entry, highest: int = 6) -> ListPlan:
    """Plan the next list."""
    return plan_list(entries, highest_number=highest, previous_update=previous, authority_end=CA_END, now=now)


@given(st.integers(0, 1 << 150))
def test_the_number_rises_by_one_over_the_highest_ever_seen(highest: int) -> None:
    """Broken if it fails: two lists with one number (RFC 5280 section 5.2.3)."""
    assert planned(NOW, NOW - DAY, highest=highest).number == highest + 1


def test_a_list_is_good_for_eight_hundred_days() -> None:
    """Broken if it fails: an overdue list locks everybody out sooner than the screen says."""
    plan = planned(NOW, None)
    assert (plan.this_update, plan.next_update) == (NOW, NOW + 800 * DAY)


def test_no_list_outlives_the_authority() -> None:
    """Broken if it fails: a list promises more than its signer."""
    assert planned(CA_END - DAY, None).next_update == CA_END


def test_an_entry_stays_until_one_list_after_its_end() -> None:
    """Broken if it fails: a gateway never hears that it ended (RFC 5280 section 3.3: one list beyond the validity)."""
    before_end = planned(END, NOW, LOST)
    first_after = planned(END + DAY, before_end.this_update, LOST)
    second_after = planned(END + 2 * DAY, first_after.this_update, LOST)
    assert before_end.entries == (LOST,)
    assert first_after.entries == (LOST,)
    assert second_after.entries == ()


def test_the_last_second_of_a_pass_still_counts() -> None:
    """Broken if it fails: an entry leaves a second early (RFC 5280 section 4.1.2.5: both dates count)."""
    assert planned(END + DAY, END, LOST).entries == (LOST,)
    assert planned(END + DAY, END + SECOND, LOST).entries == ()


def test_entries_stand_in_the_order_of_their_serials() -> None:
    """Broken if it fails: two lists of the same people differ for no reason."""
    two, ten = Entry("02", NOW, Reason.SUPERSEDED, END), Entry("0a", NOW, Reason.SUPERSEDED, END)
    hundred = Entry("0100", NOW, Reason.SUPERSEDED, END)
    assert planned(NOW, NOW, hundred, ten, two).entries == (two, ten, hundred)


def test_reasons_are_those_a_full_list_may_carry() -> None:
    """Broken if it fails: a list says unspecified (0), unused (7) or removeFromCRL (8), RFC 5280 section 5.3.1."""
    assert {reason.rfc_name: reason.value for reason in Reason} == {
        "keyCompromise": 1,
        "affiliationChanged": 3,
        "superseded": 4,
        "cessationOfOperation": 5,
        "certificateHold": 6,
    }
    assert Reason.CERTIFICATE_HOLD not in FINAL_REASONS


@pytest.mark.parametrize("text", ["keyCompromise", "KEYCOMPROMISE", "1"])
def test_reasons_are_read_by_name_and_by_number(text: str) -> None:
    """Broken if it fails: a householder who knows the RFC is not understood."""
    assert final_reason(text) is Reason.KEY_COMPROMISE


@pytest.mark.parametrize("text", ["", "0", "2", "6", "7", "8", "certificateHold", "removeFromCRL", "lost"])
def test_other_reasons_are_refused(text: str) -> None:
    """Broken if it fails: a stop for now is signed as final, or the other way round."""
    with pytest.raises(Refused) as refused:
        final_reason(text)
    assert refused.value.code == "reason-unknown"
