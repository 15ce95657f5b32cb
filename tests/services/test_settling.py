"""Changing the household's settings: what is checked, what is written, and what the gateway has afterwards."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from pathlib import Path

import pytest

from hearthkey.core.bundle import Form
from hearthkey.core.errors import Refused, Unavailable
from hearthkey.core.household import Authority, Gateway, Household
from hearthkey.core.plans import Changes
from hearthkey.core.settling import Setting
from hearthkey.formats import bundle_file
from hearthkey.pki import judge, keys, pkcs8, read
from hearthkey.services import secret_names
from hearthkey.services.enrolling import EnrolRequest
from hearthkey.services.opening import the_authority
from hearthkey.services.settling import SettleRequest, request_for
from tests.fakes.home import Home, PracticeHouse, World

DOOR = SettleRequest(gateway_host="door.quince.example")


def settle(home: Home, request: SettleRequest) -> Changes:
    """Change something."""
    return home.house.settling.apply(home.house.settling.preview(request))


def household(home: Home) -> Household:
    """The household as it stands."""
    found = home.house.register.household()
    assert found is not None
    return found


def gateway(home: Home) -> Gateway:
    """The gateway's newest credential."""
    found = home.house.register.gateway()
    assert found is not None
    return found


def authority(home: Home) -> Authority:
    """The CA."""
    return the_authority(home.house.register)


@pytest.mark.parametrize(
    ("request_", "code"),
    [
        (SettleRequest(name=" "), "name-empty"),
        (SettleRequest(name="q" * 60), "name-too-long"),
        (SettleRequest(gateway_host="*.quince.example"), "host-malformed"),
        (SettleRequest(gateway_host="0.0.0.0"), "gateway-unreachable"),  # noqa: S104 - nobody's address, not a bind
        (SettleRequest(home_subnets=()), "subnets-missing"),
        (SettleRequest(home_subnets=("203.0.113.0/25",)), "subnets-overlap"),
        (SettleRequest(tunnel_subnet="198.51.100.128/25"), "subnets-overlap"),
        (SettleRequest(dns_servers=("dns",)), "dns-malformed"),
        (SettleRequest(tunnel="half"), "tunnel-kind-unknown"),
        (SettleRequest(identity_suffix=""), "host-empty"),
        (SettleRequest(identity_suffix="q" * 54), "suffix-too-long"),
    ],
)
def test_what_does_not_fit_is_refused_as_at_founding(home: Home, request_: SettleRequest, code: str) -> None:
    """Broken if it fails: the first evening checks more than any later one."""
    before = home.house.register.diary_written()
    with pytest.raises(Refused) as refused:
        home.house.settling.preview(request_)
    assert refused.value.code == code
    assert home.house.register.diary_written() == before


def test_before_there_is_a_household_nothing_can_be_settled(tmp_path: Path) -> None:
    """Broken if it fails: an empty data folder ends in a trace."""
    house = PracticeHouse(tmp_path / "data", World())
    house.enter()
    with pytest.raises(Refused, match="no-household"):
        house.settling.preview(DOOR)
    house.leave()


def test_what_is_not_named_stays(home: Home) -> None:
    """Broken if it fails: a new DNS server moves the house."""
    before = household(home)
    settle(home, SettleRequest(dns_servers=("198.51.100.2",)))
    assert household(home) == replace(before, dns_servers=("198.51.100.2",))
    assert household(home).practice


def test_everything_can_be_changed_and_changed_back(home: Home) -> None:
    """Broken if it fails: a slip of the finger stays for years."""
    before = household(home)
    settle(
        home,
        SettleRequest(
            name="Quince House",
            gateway_host="DOOR.quince.example.",
            home_subnets=("192.0.2.0/25",),
            tunnel_subnet="192.0.2.128/25",
            identity_suffix="plum.example",
            dns_servers=(),
            tunnel="full",
        ),
    )
    after = household(home)
    assert (after.certified_name, after.gateway_host) == ("Quince House (practice)", "door.quince.example")
    assert (after.identity_suffix, after.dns_servers, after.tunnel) == ("plum.example", (), "full")
    settle(home, request_for(before))
    assert household(home) == before
    assert [one.verb for one in home.house.register.diary()][-2:] == ["settle", "settle"]


def test_a_quiet_subnet_is_drawn_away_from_home(home: Home) -> None:
    """Broken if it fails: a household whose router has moved into its tunnel has to think of a subnet."""
    plan = home.house.settling.preview(SettleRequest(home_subnets=("203.0.113.0/24",), tunnel_subnet="quiet"))
    assert str(plan.after.tunnel_subnet).startswith("10.")


def test_a_change_that_needs_no_key_is_made_while_locked(home: Home) -> None:
    """Broken if it fails: a passphrase is asked for to write a DNS server down."""
    home.house.keyholder.lock()
    before, secrets = gateway(home), dict(home.world.vault.secrets)
    settle(home, SettleRequest(name="Quince House", tunnel="full"))
    assert household(home).name == "Quince House"
    assert (gateway(home), home.world.vault.secrets) == (before, secrets)


def test_a_new_host_needs_the_key_and_a_locked_household_stays_as_it_is(home: Home) -> None:
    """Broken if it fails: the register names a host that the gateway has no certificate for."""
    before = household(home), gateway(home), dict(home.world.vault.secrets), home.house.register.diary_written()
    home.house.keyholder.lock()
    with pytest.raises(Refused, match="household-locked"):
        settle(home, DOOR)
    assert before == (
        household(home),
        gateway(home),
        home.world.vault.secrets,
        home.house.register.diary_written(),
    )
    assert home.house.register.loose_secrets() == []


def test_the_gateway_gets_a_certificate_for_its_new_host(home: Home) -> None:
    """Broken if it fails: devices with a new bundle turn away from the gateway."""
    before = gateway(home)
    changes = settle(home, DOOR)
    made = gateway(home)
    facts = read.certificate_facts(made.certificate)
    assert (made.host, facts.names) == ("door.quince.example", ("dns:door.quince.example",))
    assert facts.key_type == read.certificate_facts(before.certificate).key_type == "P-256"
    assert made.serial == facts.serial != before.serial
    judge.check_path(made.certificate, (authority(home).certificate,), None, home.world.clock.now())
    secret = home.world.vault.get(secret_names.gateway_key(authority(home), made.serial))
    assert secret is not None
    assert keys.public_der(pkcs8.open_key(made.sealed_key, secret)) == read.public_of(made.certificate)
    assert "The gateway got a new certificate for door.quince.example until" in changes.sentence


def test_of_the_old_credential_no_secret_is_left(home: Home) -> None:
    """Broken if it fails: the keyring fills with secrets of gateways that are no more."""
    old = secret_names.gateway_key(authority(home), gateway(home).serial)
    count = len(home.world.vault.secrets)
    settle(home, DOOR)
    assert old not in home.world.vault.secrets
    assert len(home.world.vault.secrets) == count
    assert home.house.register.loose_secrets() == []


def test_a_keyring_that_falls_silent_after_the_change_is_swept_at_the_next_start(home: Home) -> None:
    """Broken if it fails: a change that was made is told as one that failed, or leaves a secret for good."""
    old = secret_names.gateway_key(authority(home), gateway(home).serial)
    home.world.vault.trouble, home.world.vault.patience = "keyring-silent", 1
    settle(home, DOOR)
    assert gateway(home).host == "door.quince.example"
    assert old in home.world.vault.secrets
    home.world.vault.trouble = None
    home.reopen()
    assert old not in home.world.vault.secrets
    assert home.house.register.loose_secrets() == []


def test_a_keyring_that_is_silent_before_leaves_everything_as_it_was(home: Home) -> None:
    """Broken if it fails: the gateway's new key is sealed under a secret that nobody kept."""
    before = household(home), gateway(home), dict(home.world.vault.secrets)
    home.world.vault.trouble = "keyring-silent"
    with pytest.raises(Unavailable, match="keyring-silent"):
        settle(home, DOOR)
    home.world.vault.trouble = None
    home.reopen()
    assert before == (household(home), gateway(home), home.world.vault.secrets)
    assert home.house.register.loose_secrets() == []


def test_the_gateway_is_renewed_alone_before_its_certificate_ends(home: Home) -> None:
    """Broken if it fails: every 825 days the house closes for everybody."""
    home.world.clock.forward(days=800)
    home.unlock()
    before, until = household(home), gateway(home).not_after
    plan = home.house.settling.preview(SettleRequest(renew_gateway=True))
    assert (plan.touches, plan.devices, plan.needs_key) == ((), (), True)
    home.house.settling.apply(plan)
    assert household(home) == before
    assert gateway(home).not_after - until > timedelta(days=790)
    assert gateway(home).not_after <= authority(home).not_after


def test_nothing_is_certified_under_a_clock_set_back_or_after_the_authority(home: Home) -> None:
    """Broken if it fails: the gateway gets a certificate that nobody takes."""
    home.world.clock.turn(days=-2)
    with pytest.raises(Refused, match="clock-behind"):
        settle(home, DOOR)
    home.world.clock.turn(days=4000)
    home.unlock()
    with pytest.raises(Refused, match="authority-ended"):
        settle(home, DOOR)
    assert gateway(home).host == "home.quince.example"


def test_a_bundle_from_the_tray_has_the_settings_of_the_day_it_leaves(home: Home, tmp_path: Path) -> None:
    """Broken if it fails: a bundle is out of date when it is handed over."""
    chosen = home.newest("Ines phone")
    plan = home.house.settling.preview(replace(DOOR, dns_servers=(), tunnel="full"))
    assert plan.devices == ()
    assert "Ines’s phone" in plan.rewritten
    home.house.settling.apply(plan)
    home.house.exporting.export(chosen, Form.BUNDLE, tmp_path / "stick")
    (path,) = (tmp_path / "stick").iterdir()
    said = bundle_file.read(path.read_bytes()).settings
    assert (said.gateway_host, said.dns_servers, said.tunnel) == ("door.quince.example", (), "full")


def test_a_bundle_is_rehearsed_against_the_new_certificate_after_a_new_name(home: Home, tmp_path: Path) -> None:
    """Broken if it fails: a household that calls itself otherwise lets nobody out any more."""
    settle(home, SettleRequest(name="Plum House", identity_suffix="plum.example", renew_gateway=True))
    home.add(EnrolRequest("Odile", "phone", "linux"))
    made = home.newest("Odile phone")
    assert made.identity.endswith(".plum.example")
    for form in (Form.BUNDLE, Form.ARCHIVE):
        assert home.house.exporting.export(made, form, tmp_path / form.value).rehearsal.passed


def test_who_has_a_bundle_is_named_in_plan_and_diary(home: Home) -> None:
    """Broken if it fails: the family learns at the airport that the house has moved."""
    home.hand_over("Tomasz laptop")
    plan = home.house.settling.preview(DOOR)
    assert plan.devices == ("Tomasz’s laptop",)
    assert home.house.settling.apply(plan).sentence.endswith("In need of a new bundle: Tomasz’s laptop.")


def test_a_plan_that_was_overtaken_is_not_carried_out(home: Home) -> None:
    """Broken if it fails: an old page undoes what somebody changed since."""
    plan = home.house.settling.preview(SettleRequest(name="Plum House"))
    settle(home, SettleRequest(tunnel="full"))
    with pytest.raises(Refused, match="settled-meanwhile"):
        home.house.settling.apply(plan)
    assert household(home).name == "Quince Cottage"


def test_a_change_that_is_none_writes_nothing(home: Home) -> None:
    """Broken if it fails: the diary fills with changes that were none."""
    before = home.house.register.diary_written()
    plan = home.house.settling.preview(SettleRequest(gateway_host="HOME.quince.example", name=" Quince  Cottage "))
    with pytest.raises(Refused, match="nothing-changes"):
        home.house.settling.apply(plan)
    assert home.house.register.diary_written() == before


def test_cautions_are_about_what_is_new(home: Home) -> None:
    """Broken if it fails: an old caution hides the new one, or the new one is not told."""
    warned = home.house.settling.preview(SettleRequest(gateway_host="gate.local", dns_servers=("192.0.2.1",)))
    assert [one.code for one in warned.cautions] == ["gateway-only-at-home", "dns-outside"]
    assert {one.setting for one in warned.touches} == {Setting.HOST, Setting.DNS}
    home.house.settling.apply(warned)
    assert home.house.settling.preview(SettleRequest(name="Plum House")).cautions == ()
