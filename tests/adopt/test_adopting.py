"""A household that was made by hand goes on here: CA, serials, lists, withdrawals and passes, or nothing at all."""

from __future__ import annotations

import sqlite3
from collections.abc import Callable
from datetime import UTC, datetime
from pathlib import Path

import pytest
from cryptography import x509
from cryptography.hazmat.primitives.asymmetric import ec, rsa
from cryptography.hazmat.primitives.serialization import Encoding
from cryptography.x509.oid import ExtendedKeyUsageOID

from hearthkey.core.bundle import Form
from hearthkey.core.certificates import serial_hex
from hearthkey.core.errors import Refused
from hearthkey.core.passes import State
from hearthkey.core.revocation import Reason
from hearthkey.core.succession import Cause, Step
from hearthkey.pki import judge, lists, read
from hearthkey.services.looking import find
from tests.adopt.by_hand import CLIENT, DAY, HOST, ByHand, Shape, family
from tests.adopt.conftest import Taking
from tests.fakes.clock import NOW
from tests.fakes.home import DEVICES, PASSPHRASE

INES, TOMASZ, ODILE = "1001", "1002", "1003"


def test_everything_goes_on(taking: Taking, tmp_path: Path) -> None:
    """Broken if it fails: a family that had a CA has to visit every device again."""
    by_hand = family(tmp_path / "by-hand")
    taking.take(by_hand.folder)
    register = taking.house.register
    authority, gateway, newest = register.authority(), register.gateway(), register.newest_list()
    assert authority is not None
    assert gateway is not None
    assert newest is not None
    assert authority.certificate == by_hand.certificate.public_bytes(Encoding.DER)
    assert (gateway.serial, newest.number) == ("1000", 7)
    states = {one.serial: one.state(NOW) for one in register.passes()}
    assert states == {INES: State.IN_USE, TOMASZ: State.REVOKED, ODILE: State.IN_USE}
    assert {one.identity for one in register.passes()} == {
        "a7k2.quince.example",
        "b8m3.quince.example",
        "c9n4.quince.example",
    }
    assert all(register.sealed(one.serial) is None and one.handed_over == NOW for one in register.passes())
    for serial in (INES, ODILE):
        judge.check_path(register.certificate(serial), [authority.certificate], newest.der, NOW)
    with pytest.raises(judge.NotTrusted, match="certificate-revoked"):
        judge.check_path(register.certificate(TOMASZ), [authority.certificate], newest.der, NOW)


def test_what_is_made_afterwards_is_trusted_too(taking: Taking, tmp_path: Path) -> None:
    """Broken if it fails: nobody can be added or stopped under the CA that was taken over."""
    taking.take(family(tmp_path / "by-hand").folder)
    house = taking.house
    house.enrolling.apply(house.enrolling.preview(DEVICES[0]))
    house.stopping.stop(house.stopping.preview_stop(find(house.register.passes(), "ines-phone")))
    authority, newest = house.register.authority(), house.register.newest_list()
    assert authority is not None
    assert newest is not None
    assert newest.number == 8
    new = find(house.register.passes(), "Ines phone")[-1]
    judge.check_path(house.register.certificate(new.serial), [authority.certificate], newest.der, NOW)
    listed = {one.serial: one.reason for one in lists.read_list(newest.der).entries}
    assert listed == {TOMASZ: "keyCompromise", INES: "certificateHold"}


@pytest.mark.parametrize(
    ("flag", "listed", "state"),
    [
        (None, None, State.REVOKED),
        (x509.ReasonFlags.unspecified, None, State.REVOKED),
        (x509.ReasonFlags.remove_from_crl, None, State.REVOKED),
        (x509.ReasonFlags.privilege_withdrawn, "privilegeWithdrawn", State.REVOKED),
        (x509.ReasonFlags.aa_compromise, "aACompromise", State.REVOKED),
        (x509.ReasonFlags.ca_compromise, "cACompromise", State.REVOKED),
        (x509.ReasonFlags.superseded, "superseded", State.REVOKED),
        (x509.ReasonFlags.certificate_hold, "certificateHold", State.STOPPED),
    ],
    ids=lambda value: value.name if isinstance(value, x509.ReasonFlags) else "",
)
def test_reasons_go_on_as_the_clause_has_them(
    taking: Taking, tmp_path: Path, flag: x509.ReasonFlags | None, listed: str | None, state: State
) -> None:
    """Broken if it fails: a reason is invented, or one that no whole list may carry stays. RFC 5280 section 5.3.1."""
    by_hand = family(tmp_path / "by-hand")
    (by_hand.folder / "index.txt").unlink()
    by_hand.put_list("crl.pem", by_hand.revocation_list(6, (0x1002, flag)))
    taking.take(by_hand.folder)
    newest = taking.house.register.newest_list()
    assert newest is not None
    (entry,) = lists.read_list(newest.der).entries
    assert (entry.serial, entry.reason, entry.since) == (TOMASZ, listed, NOW - 5 * DAY)
    chosen = next(one for one in taking.house.register.passes() if one.serial == TOMASZ)
    assert chosen.state(NOW) is state
    taking.house.listing.sign_anew()
    again = taking.house.register.newest_list()
    assert again is not None
    assert [one.reason for one in lists.read_list(again.der).entries] == [listed]


def test_a_stopped_device_can_be_let_back_in(taking: Taking, tmp_path: Path) -> None:
    """Broken if it fails: a hold from before the take-over holds for ever."""
    by_hand = family(tmp_path / "by-hand")
    (by_hand.folder / "index.txt").unlink()
    by_hand.put_list("crl.pem", by_hand.revocation_list(6, (0x1003, x509.ReasonFlags.certificate_hold)))
    taking.take(by_hand.folder)
    house = taking.house
    house.stopping.let_in(house.stopping.preview_let_in(find(house.register.passes(), "odile-tablet")))
    assert house.register.entries() == []


def test_withdrawn_serials_without_a_certificate_stay_withdrawn(taking: Taking, tmp_path: Path) -> None:
    """Broken if it fails: a phone that was lost before the take-over gets in again after it."""
    by_hand = family(tmp_path / "by-hand")
    (by_hand.folder / "index.txt").unlink()
    by_hand.put_list("crl.pem", by_hand.revocation_list(6, (0xABC, x509.ReasonFlags.key_compromise)))
    taking.take(by_hand.folder)
    (entry,) = taking.house.register.entries()
    assert (entry.serial, entry.reason) == ("0abc", Reason.KEY_COMPROMISE)
    assert entry.not_after == by_hand.certificate.not_valid_after_utc


def test_used_serials_are_never_used_again(taking: Taking, tmp_path: Path) -> None:
    """Broken if it fails: two certificates have one serial, and stopping one stops the other."""
    by_hand = family(tmp_path / "by-hand")
    by_hand.put_certificate("old.crt", by_hand.issue("old", 0x77, ends=-DAY))
    by_hand.put("index.txt", "V\t300101120000Z\t\tBEEF\tunknown\t/CN=gone\n")
    prepared = taking.take(by_hand.folder)
    known = {serial for serial, _ in prepared.plan.serials}
    assert {"1000", INES, TOMASZ, ODILE, "77", "beef", serial_hex(0x51)} <= known
    with taking.house.register.change() as change, pytest.raises(sqlite3.IntegrityError):
        change._use_serial("beef", datetime(2030, 1, 1, tzinfo=UTC))  # noqa: SLF001  # what every new certificate goes through


@pytest.mark.parametrize(
    ("uses", "names", "kept"),
    [
        ((ExtendedKeyUsageOID.SERVER_AUTH,), (HOST,), True),
        (None, (HOST,), True),
        (None, (), False),
        (CLIENT, (HOST,), False),
        ((ExtendedKeyUsageOID.SERVER_AUTH,), ("other.quince.example",), False),
    ],
)
def test_the_gateway_keeps_a_certificate_that_devices_accept(
    taking: Taking,
    tmp_path: Path,
    uses: tuple[x509.ObjectIdentifier, ...] | None,
    names: tuple[str, ...],
    *,
    kept: bool,
) -> None:
    """Broken if it fails: the gateway goes on with what devices turn away, or is changed for nothing."""
    by_hand = family(tmp_path / "by-hand")
    by_hand.put_certificate("gateway.crt", by_hand.issue("gateway", 0x1000, uses=uses, names=names))
    taking.take(by_hand.folder)
    authority, gateway = taking.house.register.authority(), taking.house.register.gateway()
    assert authority is not None
    assert gateway is not None
    assert (gateway.serial == "1000") is kept
    assert gateway.not_after <= authority.not_after
    judge.check_name(gateway.certificate, HOST)


def test_without_its_key_the_gateway_gets_a_new_certificate(taking: Taking, tmp_path: Path) -> None:
    """Broken if it fails: a household has a gateway that it can never deliver anything for."""
    by_hand = family(tmp_path / "by-hand")
    (by_hand.folder / "gateway.key").unlink()
    taking.take(by_hand.folder)
    gateway = taking.house.register.gateway()
    assert gateway is not None
    assert gateway.serial != "1000"
    assert "1000" not in {one.serial for one in taking.house.register.passes()}


def _rsa() -> rsa.RSAPrivateKey:
    return rsa.generate_private_key(public_exponent=65537, key_size=2048)


SHAPES: dict[str, Callable[[Path], ByHand]] = {
    "RSA-2048": lambda folder: family(folder, key=_rsa()),
    "P-521": lambda folder: family(folder, key=ec.generate_private_key(ec.SECP521R1())),
    "no identifier": lambda folder: family(folder, shape=Shape(identifier=False)),
    "no key usage": lambda folder: family(folder, shape=Shape(key_usage=False)),
}


@pytest.mark.parametrize("shape", SHAPES)
def test_cas_of_many_shapes_serve(taking: Taking, tmp_path: Path, shape: str) -> None:
    """Broken if it fails: a CA that devices trust is turned away here, or signs what they do not trust."""
    by_hand = SHAPES[shape](tmp_path / "by-hand")
    taking.take(by_hand.folder)
    house = taking.house
    house.enrolling.apply(house.enrolling.preview(DEVICES[1]))
    authority, newest = house.register.authority(), house.register.newest_list()
    assert authority is not None
    assert newest is not None
    certificate = house.register.certificate(find(house.register.passes(), "Tomasz laptop")[-1].serial)
    judge.check_path(certificate, [authority.certificate], newest.der, NOW)
    assert read.certificate_facts(certificate).issuer == "CN=Quince CA"
    written = house.exporting.export(
        find(house.register.passes(), "Tomasz laptop")[-1], Form.BUNDLE, tmp_path / "stick"
    )
    assert written.changes.files


VOUCHING = {
    "no limit": Shape(),
    "bare": Shape(identifier=False, key_usage=False),
    "one below": Shape(constraints=x509.BasicConstraints(ca=True, path_length=1)),
}


@pytest.mark.parametrize("shape", VOUCHING)
def test_a_ca_that_may_have_one_below_vouches_for_the_next(taking: Taking, tmp_path: Path, shape: str) -> None:
    """Broken if it fails: a household is told to visit everybody first, though nobody would have noticed."""
    taking.take(family(tmp_path / "by-hand", shape=VOUCHING[shape]).folder)
    taking.house.succeeding.begin(PASSPHRASE)
    assert taking.house.succeeding.look().next is Step.TRUST


@pytest.mark.parametrize("cause", [Cause.PLANNED, Cause.STOLEN])
def test_a_ca_that_may_have_none_below_lets_the_devices_go_first(taking: Taking, tmp_path: Path, cause: Cause) -> None:
    """Broken if it fails: the gateway follows a new CA, and every device that knows the old one turns away from it."""
    none_below = Shape(constraints=x509.BasicConstraints(ca=True, path_length=0))
    taking.take(family(tmp_path / "by-hand", shape=none_below).folder)
    succeeding, secrets = taking.house.succeeding, dict(taking.world.vault.secrets)
    with pytest.raises(Refused, match="succession-cannot-vouch"):
        succeeding.begin(PASSPHRASE, cause)
    assert (taking.house.register.succession(), taking.world.vault.secrets) == (None, secrets)
    succeeding.begin(PASSPHRASE, Cause.LOST)
    assert [one.step for one in succeeding.look().steps][2] is Step.DEVICES
