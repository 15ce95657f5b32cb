"""Enrolling devices: what is checked, what is made, and that one identity is one device."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

import pytest

from hearthkey.core.errors import Refused, Unavailable
from hearthkey.core.passes import State
from hearthkey.pki import judge, read
from hearthkey.pki.judge import Purpose
from hearthkey.services.enrolling import EnrolRequest
from hearthkey.services.opening import the_authority
from tests.fakes.clock import NOW
from tests.fakes.home import Home

WATCH = EnrolRequest("Ines", "watch", "linux")
DAY = timedelta(days=1)


@pytest.mark.parametrize(
    ("request_", "code"),
    [
        (replace(WATCH, person=""), "name-empty"),
        (replace(WATCH, person="\u202eseni"), "name-unprintable"),
        (replace(WATCH, device="q" * 65), "name-too-long"),
        (replace(WATCH, device="phone\x00"), "name-unprintable"),
        (replace(WATCH, kind="toaster"), "kind-unknown"),
        (replace(WATCH, key_set="best"), "key-set-unknown"),
        (replace(WATCH, container="wicker"), "container-unknown"),
        (replace(WATCH, ends=NOW), "end-in-the-past"),
        (replace(WATCH, ends=NOW + 4000 * DAY), "end-after-authority"),
        (replace(WATCH, device="phone"), "device-exists"),
        (replace(WATCH, person="INES", device="  PHONE "), "device-exists"),
        (replace(WATCH, replace=True), "device-unknown"),
    ],
)
def test_what_does_not_fit_is_refused_before_anything_is_made(home: Home, request_: EnrolRequest, code: str) -> None:
    """Broken if it fails: a pass is made that nobody asked for."""
    with pytest.raises(Refused) as refused:
        home.house.enrolling.preview(request_)
    assert refused.value.code == code
    assert len(home.house.register.passes()) == 3


def test_all_of_many_hold_or_nothing_is_begun(home: Home) -> None:
    """Broken if it fails: half of a table is enrolled, and nobody knows which half."""
    with pytest.raises(Refused) as refused:
        home.house.enrolling.preview_all([WATCH, replace(WATCH, person="ines", device="Watch")])
    assert refused.value.code == "enrolled-twice"
    assert len(home.house.register.passes()) == 3


def test_a_new_pass_waits_in_the_tray(home: Home) -> None:
    """Broken if it fails: a device is enrolled and cannot be handed over."""
    changes = home.add(WATCH)
    made = home.newest("Ines watch")
    assert changes.serials == (made.serial,)
    assert made.state(home.world.clock.now()) is State.WAITING
    assert made.identity.endswith(".quince.example")
    assert "ines" not in made.identity
    assert home.house.register.sealed(made.serial) is not None
    assert home.house.bundling.passphrase(made).reveal().count(" ") == 6
    assert home.house.register.diary()[-1].sentence.startswith("Ines’s watch got a pass until ")


def test_the_certificate_is_good_for_the_gateway(home: Home) -> None:
    """Broken if it fails: a pass does not get in."""
    home.add(WATCH)
    made = home.newest("Ines watch")
    der, authority = home.house.register.certificate(made.serial), the_authority(home.house.register)
    newest = home.house.register.newest_list()
    assert newest is not None
    judge.check_path(der, (authority.certificate,), newest.der, home.world.clock.now())
    judge.check_usage(der, Purpose.IKE)
    judge.check_usage(der, Purpose.TLS_CLIENT)
    facts = read.certificate_facts(der)
    assert (facts.serial, facts.not_after, facts.names) == (made.serial, made.not_after, (f"dns:{made.identity}",))


def test_the_kind_picks_and_the_householder_overrules(home: Home) -> None:
    """Broken if it fails: somebody is asked about algorithms, or cannot choose them."""
    picked = home.house.enrolling.preview(EnrolRequest("Ines", "old phone", "android-older"))
    assert (picked.key_set.name, picked.container, picked.cautions) == ("broad", "old", ())
    overruled = home.house.enrolling.preview(
        EnrolRequest("Ines", "old phone", "android-older", key_set="compact", container="strong")
    )
    assert (overruled.key_set.name, overruled.container) == ("compact", "strong")
    assert [one.code for one in overruled.cautions] == ["key-set-unlikely", "container-unlikely"]


def test_a_guest_s_pass_ends_in_days(home: Home) -> None:
    """Broken if it fails: the boiler engineer gets in for years."""
    home.add(EnrolRequest("Boiler engineer", "phone", "linux", guest=True))
    made = home.newest("Boiler engineer")
    assert made.guest
    assert timedelta(0) < made.not_after - home.world.clock.now() < 8 * DAY


def test_a_replacement_keeps_the_identity_and_the_spelling(home: Home) -> None:
    """Broken if it fails: the gateway takes the same phone for a new one, or the family sees two."""
    old = home.newest("Ines phone")
    changes = home.add(EnrolRequest("INES", "Phone", "windows", replace=True))
    both = home.passes("Ines phone")
    assert [one.serial for one in both] == [old.serial, *changes.serials]
    assert {one.identity for one in both} == {old.identity}
    assert {one.title for one in both} == {"Ines’s phone"}


@pytest.mark.parametrize("over", ["revoked", "ended"])
def test_a_device_whose_pass_is_over_is_replaced_not_added(home: Home, over: str) -> None:
    """Broken if it fails: a stolen phone's name is taken by another phone without a word."""
    if over == "revoked":
        home.revoke("Ines phone")
    else:
        home.world.clock.forward(days=731)
    with pytest.raises(Refused) as refused:
        home.house.enrolling.preview(EnrolRequest("Ines", "phone", "linux"))
    assert refused.value.code == "device-revoked"


def test_a_keyring_that_fails_in_between_leaves_nothing(home: Home) -> None:
    """Broken if it fails: a pass whose passphrase nobody has, or a passphrase that belongs to nothing."""
    before = set(home.world.vault.secrets)
    plans = home.house.enrolling.preview_all([WATCH, replace(WATCH, device="ring")])
    home.world.vault.trouble, home.world.vault.patience = "keyring-locked", 1
    with pytest.raises(Unavailable) as unavailable:
        home.house.enrolling.apply(*plans)
    home.world.vault.trouble = None
    assert unavailable.value.code == "keyring-locked"
    assert len(home.house.register.passes()) == 3
    assert len(home.house.register.loose_secrets()) == 2
    home.reopen()
    assert (set(home.world.vault.secrets), home.house.register.loose_secrets()) == (before, [])


def test_an_identity_that_is_taken_is_drawn_again(home: Home, monkeypatch: pytest.MonkeyPatch) -> None:
    """Broken if it fails: once in a long while two devices share an identity, or a verb ends in a trace."""
    taken = home.newest("Ines phone").identity.split(".")[0]
    draws = iter([taken, taken, "22222222"])
    monkeypatch.setattr("hearthkey.core.certificates.identity_code", lambda _: next(draws))
    home.add(WATCH)
    assert home.newest("Ines watch").identity == "22222222.quince.example"
