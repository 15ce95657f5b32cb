"""Founding a household: what is checked, what is filled in, and what is there afterwards."""

from __future__ import annotations

import unicodedata
from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import pytest
from cryptography.hazmat.primitives.asymmetric import ec

from hearthkey.core.errors import Refused, Unavailable
from hearthkey.pki import lists, pkcs8, read
from hearthkey.services import secret_names
from hearthkey.services.founding import FoundRequest
from tests.fakes.clock import NOW
from tests.fakes.home import PASSPHRASE, QUINCE, Home, PracticeHouse, World


@pytest.fixture
def house(tmp_path: Path) -> Iterator[PracticeHouse]:
    """A data folder in which nothing is founded yet."""
    made = PracticeHouse(tmp_path / "data", World())
    made.enter()
    yield made
    made.leave()


def test_what_is_left_out_is_filled_in(house: PracticeHouse) -> None:
    """Broken if it fails: the householder has to know what a tunnel subnet is."""
    plan = house.founding.preview(FoundRequest("Quince Cottage", "home.quince.example", ["198.51.100.0/24"]))
    assert plan.household.identity_suffix == "quince.example"
    assert plan.household.tunnel == "split"
    assert plan.household.tunnel_subnet.is_private
    assert (plan.gateway_key_set.name, plan.cautions) == ("broad", ())


@pytest.mark.parametrize(
    ("request_", "code"),
    [
        (replace(QUINCE, name=""), "name-empty"),
        (replace(QUINCE, name="q" * 65), "name-too-long"),
        (replace(QUINCE, name="Quince\u202eegattoC"), "name-unprintable"),
        (replace(QUINCE, gateway_host="*.quince.example"), "host-malformed"),
        (replace(QUINCE, gateway_host=""), "host-empty"),
        (replace(QUINCE, gateway_host="fe80::1%wlan0"), "host-malformed"),
        (replace(QUINCE, home_subnets=()), "subnets-missing"),
        (replace(QUINCE, home_subnets=("203.0.113.128/25",)), "subnets-overlap"),
        (replace(QUINCE, home_subnets=("10.0.0.0/8", "172.16.0.0/12"), tunnel_subnet=None), "no-quiet-subnet"),
        (replace(QUINCE, tunnel_subnet="203.0.113.1/24"), "subnet-has-host-bits"),
        (replace(QUINCE, dns_servers=("dns",)), "dns-malformed"),
        (replace(QUINCE, tunnel="half"), "tunnel-kind-unknown"),
        (replace(QUINCE, identity_suffix="q" * 40 + ".quince.example"), "suffix-too-long"),
        (replace(QUINCE, gateway_key_set="best"), "key-set-unknown"),
    ],
)
def test_what_does_not_fit_is_refused_before_anything_is_made(
    house: PracticeHouse, request_: FoundRequest, code: str
) -> None:
    """Broken if it fails: a household is founded on a slip of the finger."""
    with pytest.raises(Refused) as refused:
        house.founding.preview(request_)
    assert refused.value.code == code
    assert house.register.household() is None


def test_sixty_four_characters_are_counted_with_the_practice_mark(house: PracticeHouse) -> None:
    """Broken if it fails: a practice household's certificates break RFC 5280 appendix A.1."""
    longest = replace(QUINCE, name="q" * (64 - len(" (practice)")))
    assert len(house.founding.preview(longest).household.certified_name) == 64
    with pytest.raises(Refused) as refused:
        house.founding.preview(replace(QUINCE, name=longest.name + "q"))
    assert refused.value.code == "name-too-long"


@pytest.mark.parametrize("host", ["192.168.178.1", "gate.local", "localhost"])
def test_a_gateway_that_works_at_home_only_is_taken_with_a_caution(house: PracticeHouse, host: str) -> None:
    """Broken if it fails: somebody who wants just that is turned away, or not told."""
    plan = house.founding.preview(replace(QUINCE, gateway_host=host))
    assert [one.code for one in plan.cautions] == ["gateway-only-at-home"]


def test_names_in_other_letters_become_a_labels(house: PracticeHouse) -> None:
    """Broken if it fails: a household with an accent in its name has no gateway."""
    request = replace(QUINCE, name=unicodedata.normalize("NFD", "Café"), gateway_host="tämäonesimerkki.example.net")
    household = house.founding.preview(request).household
    assert (household.name, household.gateway_host) == ("Café", "xn--tmonesimerkki-bfbb.example.net")
    assert household.identity_suffix == "example.net"


def test_a_second_household_is_refused(home: Home) -> None:
    """Broken if it fails: founding anew costs every device its pass."""
    with pytest.raises(Refused) as refused:
        home.house.founding.preview(QUINCE)
    assert refused.value.code == "household-exists"


def test_the_founded_household_is_whole(home: Home) -> None:
    """Broken if it fails: something is missing on the first evening that is needed for ten years."""
    register = home.house.register
    household, authority, gateway = register.household(), register.authority(), register.gateway()
    assert household is not None
    assert authority is not None
    assert gateway is not None
    assert household.certified_name == "Quince Cottage (practice)"
    assert read.certificate_facts(authority.certificate).fingerprint == authority.fingerprint
    assert read.certificate_facts(gateway.certificate).names == ("dns:home.quince.example",)
    first = register.lists()[0]
    assert (first.number, first.this_update, lists.read_list(first.der).entries) == (1, NOW, ())
    assert register.diary()[0].sentence.startswith("Quince Cottage (practice) was founded.")


def test_the_vault_holds_what_it_should_and_no_more(home: Home) -> None:
    """Broken if it fails: an orphan secret lies in the keyring, or the CA key is nowhere."""
    authority, gateway = home.house.register.authority(), home.house.register.gateway()
    assert authority is not None
    assert gateway is not None
    ca, gate = secret_names.authority_key(authority), secret_names.gateway_key(authority, gateway.serial)
    passes = {secret_names.bundle_passphrase(authority, one.serial) for one in home.house.register.passes()}
    assert set(home.world.vault.secrets) == {ca, gate} | passes
    # 1,280 characters are what the smallest keyring holds.
    assert len(home.world.vault.secrets[ca]) < 700
    assert home.world.vault.secrets[ca].startswith("-----BEGIN AGE ENCRYPTED FILE-----")
    secret = home.world.vault.get(gate)
    assert secret is not None
    assert pkcs8.open_key(gateway.sealed_key, secret).reveal()


def test_the_register_holds_no_key_of_the_authority(home: Home) -> None:
    """Broken if it fails: whoever copies the data folder has the CA."""
    key = home.house.keyholder.key().signer()
    assert isinstance(key, ec.EllipticCurvePrivateKey)
    number = key.private_numbers().private_value.to_bytes(48, "big")
    assert all(number not in path.read_bytes() for path in home.house.data.glob("register.db*"))


def test_a_founding_that_the_keyring_cuts_short_leaves_nothing(tmp_path: Path) -> None:
    """Broken if it fails: an orphan CA key stays in the keyring, or half a household in the register."""
    world = World()
    world.vault.trouble, world.vault.patience = "keyring-silent", 1
    cut = PracticeHouse(tmp_path / "data", world)
    cut.enter()
    plan = cut.founding.preview(QUINCE)
    with pytest.raises(Unavailable) as unavailable:
        cut.founding.apply(plan, PASSPHRASE)
    assert unavailable.value.code == "keyring-silent"
    assert len(world.vault.secrets) == 1
    assert cut.register.household() is None
    assert cut.keyholder.locked
    cut.leave()
    world.vault.trouble = None
    again = PracticeHouse(tmp_path / "data", world)
    again.enter()
    assert (world.vault.secrets, again.register.loose_secrets()) == ({}, [])
    again.leave()
