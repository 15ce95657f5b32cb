"""Plans of certificates: their dates and their serials."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta

import pytest

from hearthkey.core import certificates, keysets
from hearthkey.core.certificates import plan_authority, plan_device, plan_gateway, serial_hex, serial_number
from hearthkey.core.errors import Refused
from hearthkey.core.household import Household
from hearthkey.core.network import subnet
from tests.fakes.clock import NOW
from tests.fakes.dice import SeededDice

DAY = timedelta(days=1)
SECOND = timedelta(seconds=1)
QUINCE = Household(
    name="Quince Cottage",
    gateway_host="home.quince.example",
    identity_suffix="quince.example",
    home_subnets=(subnet("198.51.100.0/24", "home subnet"),),
    tunnel_subnet=subnet("203.0.113.0/24", "tunnel subnet"),
    dns_servers=(),
    tunnel="split",
    practice=True,
)
CA_END = NOW + 3650 * DAY - SECOND


def device(
    ends: datetime | None = None, *, guest: bool = False, authority_end: datetime = CA_END
) -> certificates.DevicePlan:
    """Plan the certificate of a device."""
    return plan_device(
        "k7m2p9xw.quince.example",
        keysets.COMPACT,
        now=NOW,
        ends=ends,
        guest=guest,
        authority_begin=NOW - DAY,
        authority_end=authority_end,
        bits=SeededDice().bits,
    )


def test_serials_are_positive_and_fit_twenty_octets() -> None:
    """Broken if it fails: strict readers turn every certificate away (RFC 5280 section 4.1.2.2)."""
    dice = SeededDice()
    drawn = [serial_number(dice.bits) for _ in range(1000)]
    assert len(set(drawn)) == 1000
    # In DER a set topmost bit costs one octet more, so 159 bits are what twenty octets hold.
    assert all(0 < one < 1 << 159 for one in drawn)
    assert {len(serial_hex(one)) for one in drawn} == {40}


@pytest.mark.parametrize("draw", [0, (1 << 158) - 1])
def test_the_most_unlikely_draws_are_good_serials(draw: int) -> None:
    """Broken if it fails: once in a very long time a serial is zero or too long."""
    assert 0 < serial_number(lambda _: draw) < 1 << 159


def test_at_least_sixty_four_bits_are_drawn() -> None:
    """Broken if it fails: serials can be foreseen (CA/Browser Forum baseline requirements 7.1)."""
    asked: list[int] = []
    serial_number(lambda count: asked.append(count) or 0)  # type: ignore[func-returns-value]  # append returns None
    assert asked == [158]


@pytest.mark.parametrize(("serial", "text"), [(1, "01"), (0x7F, "7f"), (0x100, "0100"), (0xABC, "0abc")])
def test_serials_are_written_with_whole_octets(serial: int, text: str) -> None:
    """Broken if it fails: one certificate is looked for under two spellings."""
    assert serial_hex(serial) == text


def test_the_authority_lasts_ten_years_and_can_be_followed() -> None:
    """Broken if it fails: no later CA can be cross-certified, so every device needs a new bundle in ten years."""
    plan = plan_authority(QUINCE, now=NOW, bits=SeededDice().bits)
    assert (plan.path_length, plan.key_type) == (1, "P-384")
    assert (plan.not_before, plan.not_after) == (NOW - DAY, CA_END)
    assert plan.organization == "Quince Cottage (practice)"


def test_no_two_authorities_share_a_name() -> None:
    """Broken if it fails: a reader with two lists under one issuer name takes the wrong one."""
    dice = SeededDice()
    assert len({plan_authority(QUINCE, now=NOW, bits=dice.bits).common_name for _ in range(100)}) == 100


def test_a_gateway_lasts_eight_hundred_and_twenty_five_days_in_all() -> None:
    """Broken if it fails: phones that allow 825 days turn the gateway away for one second too many."""
    plan = plan_gateway("home.quince.example", keysets.BROAD, now=NOW, authority_end=CA_END, bits=SeededDice().bits)
    # Both ends count: RFC 5280 section 4.1.2.5.
    assert plan.not_after - plan.not_before + SECOND == 825 * DAY
    assert plan.not_before == NOW - DAY


def test_a_gateway_never_outlives_the_authority() -> None:
    """Broken if it fails: a certificate that nothing vouches for."""
    soon = NOW + 100 * DAY
    plan = plan_gateway("home.quince.example", keysets.BROAD, now=NOW, authority_end=soon, bits=SeededDice().bits)
    assert plan.not_after == soon


def test_a_pass_lasts_as_its_key_set_says() -> None:
    """Broken if it fails: nobody who gives no end knows when it is."""
    assert device().not_after == NOW + 730 * DAY - SECOND
    assert device().not_before == NOW - DAY


def test_a_guest_s_pass_ends_in_days() -> None:
    """Broken if it fails: the boiler engineer gets in for two years."""
    assert device(guest=True).not_after == NOW + 7 * DAY - SECOND


def test_a_default_end_is_cut_at_the_authority_s() -> None:
    """Broken if it fails: in the CA's last two years no pass can be made without saying an end."""
    soon = NOW + 100 * DAY
    assert device(authority_end=soon).not_after == soon


def test_a_chosen_end_may_be_the_authority_s_and_no_later() -> None:
    """Broken if it fails: a pass outlives what vouches for it."""
    assert device(CA_END).not_after == CA_END
    with pytest.raises(Refused) as refused:
        device(CA_END + SECOND)
    assert refused.value.code == "end-after-authority"


@pytest.mark.parametrize("ends", [NOW, NOW - SECOND, NOW - 400 * DAY])
def test_an_end_in_the_past_is_refused(ends: datetime) -> None:
    """Broken if it fails: somebody is handed a pass that is over."""
    with pytest.raises(Refused) as refused:
        device(ends)
    assert refused.value.code == "end-in-the-past"


def test_a_pass_begins_no_earlier_than_the_authority() -> None:
    """Broken if it fails: on the first day a strict reader finds a pass older than its CA."""
    plan = plan_device(
        "k7m2p9xw.quince.example",
        keysets.COMPACT,
        now=NOW,
        ends=None,
        guest=False,
        authority_begin=NOW - timedelta(hours=1),
        authority_end=CA_END,
        bits=SeededDice().bits,
    )
    assert plan.not_before == NOW - timedelta(hours=1)


def test_until_friday_includes_friday() -> None:
    """Broken if it fails: a guest stands before the door on the last day."""
    assert certificates.end_of_day(2026, 11, 27) == datetime(2026, 11, 27, 23, 59, 59, tzinfo=UTC)


def test_identity_codes_name_nobody_and_have_no_look_alikes() -> None:
    """Broken if it fails: a code that travels in clear cannot be read out over the telephone."""
    dice = SeededDice()
    codes = {certificates.identity_code(dice.below) for _ in range(500)}
    assert len(codes) == 500
    assert not set("".join(codes)) & set("ilo01")
