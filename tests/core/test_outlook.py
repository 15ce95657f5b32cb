"""Until when all is well, decided once for both shells."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta

import pytest

from hearthkey.core.outlook import DUE, Ends, is_due, outlook
from hearthkey.core.passes import Pass
from hearthkey.core.revocation import Reason

NOW = datetime(2026, 5, 12, 9, 30, tzinfo=UTC)
DAY = timedelta(days=1)
LIST_END, GATEWAY_END = NOW + 700 * DAY, NOW + 720 * DAY


def made(days: int, *, guest: bool = False, reason: Reason | None = None) -> Pass:
    """A pass in use that ends in some days."""
    return Pass(
        person="Ines",
        device="phone",
        kind="linux",
        identity=f"qc7f{days}.quince.example",
        serial="0a",
        key_set="compact",
        container="strong",
        guest=guest,
        not_before=NOW - DAY,
        not_after=NOW + days * DAY,
        handed_over=NOW,
        reason=reason,
        since=None if reason is None else NOW,
    )


def test_the_first_pass_to_end_is_named() -> None:
    """Broken if it fails: the top line speaks of somebody else."""
    seen = outlook([made(400), made(21), made(90)], list_end=LIST_END, gateway_end=GATEWAY_END, now=NOW)
    assert (seen.ends, seen.until, seen.due) == (Ends.PASS, NOW + 21 * DAY, True)


@pytest.mark.parametrize("reason", [Reason.CERTIFICATE_HOLD, Reason.KEY_COMPROMISE])
def test_who_is_out_already_is_no_date(reason: Reason) -> None:
    """Broken if it fails: the top line waits for a device that lost access long ago."""
    seen = outlook([made(3, reason=reason)], list_end=LIST_END, gateway_end=GATEWAY_END, now=NOW)
    assert (seen.ends, seen.getting_in) == (Ends.LIST, 0)


def test_what_closes_the_house_comes_before_a_later_pass() -> None:
    """Broken if it fails: the list runs out unseen, because somebody's pass outlives it."""
    seen = outlook([made(900)], list_end=LIST_END, gateway_end=GATEWAY_END, now=NOW)
    assert (seen.ends, seen.until, seen.first) == (Ends.LIST, LIST_END, None)
    earlier = outlook([made(900)], list_end=LIST_END, gateway_end=LIST_END - DAY, now=NOW)
    assert (earlier.ends, earlier.until) == (Ends.GATEWAY, LIST_END - DAY)


def test_a_guest_s_end_is_a_date_but_wants_nobody() -> None:
    """Broken if it fails: the window turns red every time the boiler engineer comes."""
    guest = made(3, guest=True)
    seen = outlook([guest], list_end=LIST_END, gateway_end=GATEWAY_END, now=NOW)
    assert (seen.first, seen.due, is_due(guest, NOW)) == (guest, False, False)


def test_a_thing_is_due_from_thirty_days_before_its_end() -> None:
    """Broken if it fails: a warning comes a day late."""
    assert is_due(made(DUE.days), NOW)
    assert not is_due(made(DUE.days + 1), NOW)


def test_past_its_end_the_house_is_closed() -> None:
    """Broken if it fails: everybody is locked out and the top line says that all is well."""
    seen = outlook([made(900)], list_end=NOW - DAY, gateway_end=GATEWAY_END, now=NOW)
    assert (seen.over, seen.house_ends, seen.due) == (True, Ends.LIST, True)
