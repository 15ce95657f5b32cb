"""Changing settings: what each one reaches, and whose devices have to be told."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, timedelta
from ipaddress import ip_network

import pytest

from hearthkey.core.household import Household
from hearthkey.core.passes import Pass
from hearthkey.core.revocation import Reason
from hearthkey.core.sentences import settling as sentences
from hearthkey.core.settling import Reach, Setting, SettlePlan, Touch, plan_settling, touched

NOW = datetime(2026, 5, 12, 9, 30, tzinfo=UTC)
COTTAGE = Household(
    name="Quince Cottage",
    gateway_host="home.quince.example",
    identity_suffix="quince.example",
    home_subnets=(ip_network("198.51.100.0/24"),),
    tunnel_subnet=ip_network("203.0.113.0/24"),
    dns_servers=("198.51.100.1",),
    tunnel="split",
)
FULL = replace(COTTAGE, tunnel="full")
ELSEWHERE = replace(COTTAGE, gateway_host="door.quince.example")


def a_pass(person: str, device: str, **changes: object) -> Pass:
    """A pass in use, or with other values in places."""
    about = Pass(
        person=person,
        device=device,
        kind="android",
        identity=f"{person}{device}.quince.example".casefold(),
        serial=f"{person}{device}".encode().hex(),
        key_set="broad",
        container="strong",
        guest=False,
        not_before=NOW - timedelta(days=30),
        not_after=NOW + timedelta(days=700),
        handed_over=NOW - timedelta(days=20),
        reason=None,
        since=None,
    )
    return replace(about, **changes)  # type: ignore[arg-type]  # names of fields


FAMILY = (
    a_pass("Ines", "phone"),
    a_pass("Ines", "tablet", handed_over=None),
    a_pass("Tomasz", "laptop", reason=Reason.CERTIFICATE_HOLD, since=NOW),
    a_pass("Tomasz", "old phone", reason=Reason.KEY_COMPROMISE, since=NOW),
    a_pass("Odile", "reader", not_after=NOW - timedelta(days=1)),
    a_pass("Odile", "phone", handed_over=None, reason=Reason.CERTIFICATE_HOLD, since=NOW),
)


def planned(after: Household, *, before: Household = COTTAGE, family: tuple[Pass, ...] = FAMILY) -> SettlePlan:
    """The plan of a change."""
    return plan_settling(before, after, family, NOW)


def told(plan: SettlePlan) -> str:
    """All its sentences."""
    return " ".join(str(one) for one in sentences.plan(plan))


@pytest.mark.parametrize(
    ("before", "after", "setting", "reach"),
    [
        (COTTAGE, replace(COTTAGE, name="Quince House"), Setting.NAME, Reach.SHOWN),
        (COTTAGE, ELSEWHERE, Setting.HOST, Reach.BUNDLES),
        (COTTAGE, replace(COTTAGE, home_subnets=(ip_network("192.0.2.0/24"),)), Setting.HOME, Reach.BUNDLES),
        (FULL, replace(FULL, home_subnets=(ip_network("192.0.2.0/24"),)), Setting.HOME, Reach.GATEWAY),
        (
            replace(COTTAGE, home_subnets=(*COTTAGE.home_subnets, ip_network("192.0.2.0/24"))),
            COTTAGE,
            Setting.HOME,
            Reach.GATEWAY,
        ),
        (COTTAGE, replace(COTTAGE, dns_servers=()), Setting.DNS, Reach.GATEWAY),
        (COTTAGE, FULL, Setting.TUNNEL, Reach.BUNDLES),
        (FULL, COTTAGE, Setting.TUNNEL, Reach.BUNDLES),
        (COTTAGE, replace(COTTAGE, tunnel_subnet=ip_network("192.0.2.0/24")), Setting.INNER, Reach.GATEWAY),
        (COTTAGE, replace(COTTAGE, identity_suffix="plum.example"), Setting.SUFFIX, Reach.NEWCOMERS),
    ],
)
def test_each_setting_reaches_as_far_as_the_protocol_says(
    before: Household, after: Household, setting: Setting, reach: Reach
) -> None:
    """Broken if it fails: a family makes new bundles for nothing, or does not make those that it needs.

    RFC 7296 sections 2.9 (selectors are the device's own), 2.19 and 3.15.1 (addresses and DNS come from the gateway).
    """
    assert touched(before, after) == (Touch(setting, reach),)
    plan = planned(after, before=before)
    assert bool(plan.devices) == (reach is Reach.BUNDLES)
    assert plan.needs_key == plan.new_certificate == (setting is Setting.HOST)
    assert plan.reaches_gateway == (reach in {Reach.BUNDLES, Reach.GATEWAY})


def test_home_counts_where_the_tunnel_becomes_full_with_it() -> None:
    """Broken if it fails: a change of two things at once is told as one of them."""
    both = replace(FULL, home_subnets=(ip_network("192.0.2.0/24"),))
    assert {one.setting: one.reach for one in touched(COTTAGE, both)} == {
        Setting.HOME: Reach.BUNDLES,
        Setting.TUNNEL: Reach.BUNDLES,
    }


def test_those_who_have_their_bundle_ask_for_a_new_one() -> None:
    """Broken if it fails: somebody stands before the door because nobody said that the bundle is out of date."""
    plan = planned(ELSEWHERE)
    assert plan.devices == ("Ines’s phone", "Tomasz’s laptop")
    assert plan.rewritten == ("Ines’s tablet", "Odile’s phone")


def test_a_device_with_two_passes_is_named_once() -> None:
    """Broken if it fails: the family hands over two bundles where one is wanted."""
    again = a_pass("Ines", "phone", serial="0abc", not_before=NOW)
    assert planned(ELSEWHERE, family=(FAMILY[0], again)).devices == ("Ines’s phone",)


def test_the_same_settings_are_no_change() -> None:
    """Broken if it fails: looking at the page makes an entry in the diary."""
    plan = planned(COTTAGE)
    assert plan.changes_nothing
    assert told(plan) == "Everything would stay as it is."


def test_the_gateway_is_renewed_alone() -> None:
    """Broken if it fails: a certificate that ends costs every device a new bundle."""
    plan = plan_settling(COTTAGE, COTTAGE, FAMILY, NOW, renew=True)
    assert (plan.changes_nothing, plan.needs_key, plan.devices) == (False, True, ())
    assert told(plan) == (
        "No device has to be told. The gateway gets a new key and certificate with the next delivery."
    )


def test_a_new_host_is_told_with_what_follows_and_when() -> None:
    """Broken if it fails: somebody moves the house and learns from calls what that meant."""
    assert told(planned(ELSEWHERE)) == (
        "The house is reached at door.quince.example, and the gateway gets a new certificate for that name. "
        "Ines’s phone and Tomasz’s laptop ask for a new bundle. What waits in the tray takes it along when it leaves; "
        "a file that was saved of it before has to be saved again. The gateway answers to home.quince.example as well, "
        "so whoever has the old bundle still gets in, as long as that name leads home."
    )


def test_the_gateway_answers_to_a_name_for_as_long_as_a_bundle_carries_it() -> None:
    """Broken if it fails: with the next delivery the family is outside (RFC 4945 section 3.1)."""
    assert [one.host for one in planned(ELSEWHERE).former] == ["home.quince.example"]
    nobody = tuple(one for one in FAMILY if one.handed_over is None)
    assert planned(ELSEWHERE, family=nobody).former == ()
    back = plan_settling(ELSEWHERE, COTTAGE, FAMILY, NOW, former=planned(ELSEWHERE).former)
    assert [one.host for one in back.former] == ["door.quince.example"]
    let_go = plan_settling(
        ELSEWHERE, ELSEWHERE, FAMILY, NOW, former=planned(ELSEWHERE).former, let_go="home.quince.example"
    )
    assert (let_go.former, let_go.new_certificate, let_go.changes_nothing) == ((), True, False)
    assert "answers to home.quince.example no more" in told(let_go)


def test_nothing_is_promised_of_a_delivery_that_never_comes() -> None:
    """Broken if it fails: the practice household waits for a gateway that it never has."""
    practice, door = replace(COTTAGE, practice=True), replace(ELSEWHERE, practice=True)
    assert "delivery" not in told(planned(door, before=practice))


@pytest.mark.parametrize(
    ("count", "said"),
    [
        (0, "No device has to be told."),
        (1, "Ines’s device 0 asks for a new bundle."),
        (2, "Ines’s device 0 and Ines’s device 1 ask for a new bundle."),
        (3, "Ines’s device 0, Ines’s device 1 and Ines’s device 2 ask for a new bundle."),
        (5, "Ines’s device 0, Ines’s device 1 and 3 more ask for a new bundle."),
    ],
)
def test_many_devices_are_counted_few_are_named(count: int, said: str) -> None:
    """Broken if it fails: a sentence runs on for a page, or hides who is meant."""
    family = tuple(a_pass("Ines", f"device {number}") for number in range(count))
    assert str(sentences.devices(planned(ELSEWHERE, family=family))) == said


def test_the_diary_tells_what_was_before() -> None:
    """Broken if it fails: nobody can find the way back from the diary."""
    plan = planned(replace(COTTAGE, dns_servers=(), home_subnets=(*COTTAGE.home_subnets, ip_network("192.0.2.0/24"))))
    assert sentences.settled(plan, None) == (
        "The household’s settings were changed: home subnets 198.51.100.0/24, 192.0.2.0/24 (before: "
        "198.51.100.0/24); DNS servers none (before: 198.51.100.1). In need of a new bundle: Ines’s phone, Tomasz’s "
        "laptop."
    )
