"""One CA follows another: every step, every way back, and what the gateway and the devices get of it."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import replace
from datetime import timedelta
from pathlib import Path

import pytest
from cryptography import x509

from hearthkey.core.bundle import Form
from hearthkey.core.errors import Refused
from hearthkey.core.kinds import OLD
from hearthkey.core.passes import State
from hearthkey.core.proofs import Proof, Way
from hearthkey.core.secret import Secret
from hearthkey.core.succession import Carries, Cause, Step
from hearthkey.core.target import By, Target
from hearthkey.pki import judge, lists, read
from hearthkey.services.enrolling import EnrolRequest
from hearthkey.services.turning_stolen import turn_stolen
from tests.fakes.gateway import HOST_KEY
from tests.fakes.home import PASSPHRASE, Home, PracticeHouse, World, at_home

RENEWED = EnrolRequest("Tomasz", "laptop", "linux", replace=True)


@pytest.fixture
def away(tmp_path: Path) -> Iterator[Home]:
    """Quince Cottage as it delivers to a gateway."""
    with at_home(tmp_path / "data", practice=False, quick=True) as opened:
        yield opened


@pytest.fixture
def home(tmp_path: Path) -> Iterator[Home]:
    """Quince Cottage with three waiting passes, open and unlocked."""
    with at_home(tmp_path / "data", quick=True) as opened:
        yield opened


def begin(home: Home, cause: Cause = Cause.PLANNED) -> None:
    """Make the next CA."""
    home.house.succeeding.begin(PASSPHRASE, cause)


def to_gateway(home: Home) -> None:
    """Begin, and go on until the gateway shows a certificate of the new CA."""
    begin(home)
    for _ in range(2):
        home.house.succeeding.go_on(told=True)


def prove(home: Home, text: str) -> None:
    """Hand a device's newest pass over, and see it get in."""
    serial = home.newest(text).serial
    with home.house.register.change() as change:
        change.hand_over(serial, home.world.clock.now())
        change.add_proof(serial, Proof(home.world.clock.now(), Way.TOLD, ""))


def test_the_two_have_distinct_names_and_the_cross_certificate_is_short(home: Home) -> None:
    """If this fails, gateways meet two CAs of one name, or a CA below the new one (RFC 5280 section 4.2.1.9)."""
    begin(home)
    found = home.house.register.succession()
    assert found is not None
    assert found.cross is not None
    ders = (found.old.certificate, found.new.certificate, found.cross)
    old, new, cross = (read.certificate_facts(der) for der in ders)
    assert old.subject != new.subject
    assert (cross.subject, cross.issuer, cross.is_authority) == (new.subject, old.subject, True)
    assert cross.not_after <= old.not_after
    constraints = read.extension(read.load(found.cross), x509.BasicConstraints)
    assert constraints is not None
    assert constraints.path_length == 0


def test_begin_changes_nothing_for_anybody(home: Home) -> None:
    """If this fails, somebody notices the first step, or the waiting bundles do not carry the next CA."""
    before = home.house.register.authority()
    number = home.house.register.list_high_water()
    begin(home)
    register = home.house.register
    assert before == register.authority()
    newest = register.newest_list()
    assert newest is not None
    assert newest.number == number + 1
    assert [lists.read_list(der).number for der in newest.ders] == [number + 1] * 2
    trusted = [one.certificate for one in register.authorities()]
    for der, authority in zip(newest.ders, trusted, strict=True):
        judge.check_list(der, authority)
    bundle = home.house.bundling.open(home.newest("Odile tablet"))
    assert list(bundle.authorities) == trusted
    for form in Form:
        files = home.house.bundling.write(bundle, form)
        home.house.rehearsing.rehearse(form, files, bundle.passphrase, identity=bundle.settings.identity)


def test_the_pack_has_both_and_what_was_there_keeps_its_name(home: Home) -> None:
    """If this fails, a gateway that was told file names once finds another CA under them."""
    before = {file.name: file.data for file in home.house.packing.pack().files}
    begin(home)
    with_two = {file.name: file.data for file in home.house.packing.pack().files}
    assert with_two["ca-certificate.der"] == before["ca-certificate.der"]
    assert with_two["ca-certificate.pem"].count(b"BEGIN CERTIFICATE") == 2
    assert with_two["list.pem"].count(b"BEGIN X509 CRL") == 2
    assert with_two.keys() - before.keys() == {
        *("ca-certificate-2.pem", "ca-certificate-2.der", "list-2.pem", "list-2.crl", "two-cas.txt"),
    }
    assert with_two["gateway-certificate.pem"] == before["gateway-certificate.pem"]
    for _ in range(2):
        home.house.succeeding.go_on(told=True)
    turned = {file.name: file.data for file in home.house.packing.pack().files}
    assert turned.keys() - with_two.keys() == {"cross-certificate.pem", "cross-certificate.der"}
    assert turned["gateway-certificate.pem"].count(b"BEGIN CERTIFICATE") == 2
    assert turned["ca-certificate.pem"] == with_two["ca-certificate.pem"]


def profile_names(home: Home, text: str) -> set[bytes]:
    """By what a system knows the profile of a device again."""
    bundle = replace(home.house.bundling.open(home.newest(text)), container=OLD)
    (written,) = home.house.bundling.write(bundle, Form.PROFILE)
    found = set(re.findall(rb"invalid\.hearthkey\.[0-9a-z.-]+identity", written.data))
    assert found
    return found


def test_to_the_end(home: Home) -> None:
    """If this fails, a household does not get from one CA to the next, or keeps what should be gone."""
    old = home.house.register.authority()
    assert old is not None
    to_gateway(home)
    steps = {one.title: one.carries for one in home.house.succeeding.look().devices}
    assert set(steps.values()) == {Carries.OLD}
    with pytest.raises(Refused, match="succession-devices-left"):
        home.house.succeeding.finish(told=True)
    before = profile_names(home, "Tomasz laptop")
    home.add(RENEWED)
    assert profile_names(home, "Tomasz laptop") == before
    assert home.house.succeeding.look().devices[1].carries is Carries.MADE
    prove(home, "Tomasz laptop")
    assert home.house.succeeding.look().devices[1].carries is Carries.DONE
    for text in ("Ines phone", "Odile tablet"):
        home.revoke(text)
    assert home.house.succeeding.look().next is Step.FINISH
    home.house.succeeding.finish(told=True)
    now = home.house.register.authority()
    assert now is not None
    assert now.fingerprint != old.fingerprint
    assert home.house.register.authorities() == [now]
    assert [one.state(home.world.clock.now()) for one in home.passes("Tomasz laptop")] == [State.REVOKED, State.IN_USE]
    assert f"{old.short}/ca" not in home.world.vault.secrets
    names = {file.name for file in home.house.packing.pack().files}
    assert not {"ca-certificate-2.pem", "list-2.pem", "cross-certificate.pem"} & names
    home.add(EnrolRequest("Ines", "laptop", "linux"))
    home.house.sparing.renew()
    begin(home)
    assert home.house.register.authorities()[0] == now
    home.house.succeeding.take_back()
    home.reopen(writing=False)
    assert home.house.register.authority() == now


def test_stops_stand_on_both_lists(home: Home) -> None:
    """If this fails, a device that was stopped gets in by the list of the other CA; so with spare lists."""
    to_gateway(home)
    home.add(RENEWED)
    home.stop("Ines phone")
    home.house.sparing.renew()
    home.house.keyholder.lock()
    plan = home.house.sparing.preview_stop(home.passes("Tomasz laptop"))
    home.house.sparing.stop(plan)
    newest = home.house.register.newest_list()
    assert newest is not None
    assert len(newest.ders) == 2
    stopped = {one.serial for text in ("Ines phone", "Tomasz laptop") for one in home.passes(text)}
    for der in newest.ders:
        assert {one.serial for one in lists.read_list(der).entries} == stopped
        assert lists.read_list(der).number == newest.number


def test_every_step_has_a_way_back(home: Home) -> None:
    """If this fails, somebody who hesitates is caught between two CAs."""
    old = home.house.register.authority()
    to_gateway(home)
    for expected in (Step.TRUST, Step.BEGIN, None):
        home.house.succeeding.take_back()
        assert home.house.succeeding.look().back is expected
        assert home.house.register.authority() == old
    assert home.house.register.succession() is None
    assert len([name for name in home.world.vault.secrets if name.endswith("/ca")]) == 1
    home.stop("Ines phone")
    assert home.house.packing.pack()["ca-certificate.pem"].data.count(b"BEGIN") == 1
    begin(home)
    assert home.house.succeeding.look().next is Step.TRUST


def test_back_is_refused_while_somebody_gets_in_by_the_new_one(home: Home) -> None:
    """If this fails, taking the first step back locks somebody out."""
    to_gateway(home)
    home.add(RENEWED)
    home.house.succeeding.take_back()
    home.house.succeeding.take_back()
    with pytest.raises(Refused, match="succession-new-passes"):
        home.house.succeeding.take_back()


def test_a_gateway_that_is_reached_has_to_be_seen(away: Home) -> None:
    """If this fails, the app goes on though the gateway never got what the step before made."""
    away.world.gate.clock = away.world.clock.now()
    away.house.targeting.choose(Target(By.SSH, "hearthkey", host="gateway.quince.example"), HOST_KEY)
    begin(away)
    for told in (False, True):
        with pytest.raises(Refused, match="succession-not-seen"):
            away.house.succeeding.go_on(told=told)
    away.house.delivering.deliver()
    away.house.succeeding.go_on()
    away.house.succeeding.go_on()
    assert not away.house.succeeding.look().seen
    away.stop("Ines phone")
    away.house.delivering.deliver()
    assert away.house.succeeding.look().seen
    gate = away.world.gate
    assert gate.current is not None
    there = gate.sets[gate.current]
    newest = away.house.register.newest_list()
    assert newest is not None
    assert (there["list.crl"], there["list-2.crl"]) == newest.ders
    assert away.house.delivering.look().unchanged


def test_stolen_does_not_wait_for_anybody(home: Home) -> None:
    """If this fails, whoever has the old key makes passes until the last device is through."""
    begin(home, Cause.STOLEN)
    for _ in range(2):
        home.house.succeeding.go_on(told=True)
    home.house.succeeding.finish(told=True, anyway=True)
    now = home.world.clock.now()
    assert {one.state(now) for one in home.house.register.passes()} == {State.REVOKED}
    assert not any(home.house.register.sealed(one.serial) for one in home.house.register.passes())


def test_what_was_planned_becomes_a_theft(home: Home) -> None:
    """If this fails, a laptop stolen half-way leaves the thief all the time that the visits take."""
    house = home.house
    with pytest.raises(Refused, match="succession-none"):
        turn_stolen(house.register, house.clock)
    begin(home)
    house.succeeding.go_on(told=True)
    house.succeeding.go_on(told=True)
    before = house.succeeding.look()
    said = turn_stolen(house.register, house.clock).sentence
    after = house.succeeding.look()
    assert (house.register.diary()[-1].sentence, after.cause) == (said, Cause.STOLEN)
    assert after.steps[-1].day < before.steps[-1].day
    with pytest.raises(Refused, match="succession-not-planned"):
        turn_stolen(house.register, house.clock)
    house.succeeding.finish(told=True, anyway=True)
    assert {one.state(home.world.clock.now()) for one in house.register.passes()} == {State.REVOKED}


def test_lost_words_do_not_keep_the_new_ones_from_opening(home: Home, tmp_path: Path) -> None:
    """If this fails, the old key's text, which nobody can open, shuts the household, or its sealed copies."""
    words = Secret("visor ladle oaken tidy plum mosaic harbor")
    home.house.sealing.make_ready(PASSPHRASE)
    home.house.succeeding.begin(words, Cause.LOST)
    assert not home.house.sealing.ready
    home.house.keyholder.lock()
    home.house.keyholder.unlock(home.house.register, home.house.vault, words)
    home.house.listing.sign_anew()
    home.house.sealing.make_ready(words)
    _, changes = home.house.sealing.seal(tmp_path / "copies")
    tried = home.house.sealing.try_copy(Path(changes.files[0]).read_bytes(), words)
    assert "whole and fits" in tried.sentence
    assert not home.house.deputies.fresh()


def test_lost_words_leave_copies_their_own_passphrase(home: Home, tmp_path: Path) -> None:
    """If this fails, whoever keeps the copies holds a passphrase that opens none of the later ones."""
    words, own = Secret("visor ladle oaken tidy plum mosaic harbor"), Secret("a passphrase for the copies alone")
    home.house.sealing.make_ready(own, own=True)
    home.house.succeeding.begin(words, Cause.LOST)
    home.house.sealing.make_ready(words)
    _, changes = home.house.sealing.seal(tmp_path / "copies")
    home.house.sealing.try_copy(Path(changes.files[0]).read_bytes(), words, own)


def test_lost_goes_by_the_devices_first(home: Home) -> None:
    """If this fails, without the old key the gateway turns before the devices can follow."""
    first = home.house.register.newest_list()
    assert first is not None
    home.house.keyholder.lock()
    begin(home, Cause.LOST)
    newest = home.house.register.newest_list()
    assert newest is not None
    assert newest.ders[0] == first.der
    home.house.succeeding.go_on(told=True)
    with pytest.raises(Refused, match="succession-devices-left"):
        home.house.succeeding.go_on(told=True)
    home.house.succeeding.take_back()
    with pytest.raises(Refused, match="succession-no-way-back"):
        home.house.succeeding.take_back()
    home.hand_over("Ines phone")
    with pytest.raises(Refused, match="succession-cannot-stop"):
        home.stop("Ines phone")
    assert home.newest("Ines phone").state(home.world.clock.now()) is State.IN_USE
    home.add(RENEWED)
    bundle = home.house.bundling.open(home.newest("Tomasz laptop"))
    files = home.house.bundling.write(bundle, Form.BUNDLE)
    home.house.rehearsing.rehearse(Form.BUNDLE, files, bundle.passphrase, identity=None)


def test_a_copy_brings_both_keys_back(home: Home, tmp_path: Path) -> None:
    """If this fails, a household whose laptop dies between the two CAs can sign half of its lists."""
    begin(home)
    home.house.sealing.make_ready(PASSPHRASE)
    _, changes = home.house.sealing.seal(tmp_path / "copies")
    data = Path(changes.files[0]).read_bytes()
    house = PracticeHouse(tmp_path / "blank", World(clock=home.world.clock, locksmith=home.world.locksmith))
    house.enter()
    with house.restoring.preview(data, PASSPHRASE) as plan:
        house.restoring.apply(plan)
    house.listing.sign_anew()
    newest = house.register.newest_list()
    house.leave()
    assert newest is not None
    assert len(newest.ders) == 2


def test_the_plan_has_days(home: Home) -> None:
    """If this fails, the householder does not hear by when to begin, or who is still to be visited."""
    before = home.house.succeeding.look()
    assert before.next is Step.BEGIN
    longest = max(one.not_after - one.not_before for one in home.house.register.passes())
    assert before.last_safe_day == before.old_end - longest - timedelta(days=183)
    to_gateway(home)
    days = [one.day for one in home.house.succeeding.look().steps]
    assert days == sorted(days)
    assert days[-1] <= before.old_end
