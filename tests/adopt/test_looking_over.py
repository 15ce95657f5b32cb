"""A look at a household that was made by hand: what is there, and what is weak or broken, with the clause."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from cryptography import x509
from cryptography.hazmat.primitives import hashes
from cryptography.hazmat.primitives.asymmetric import ec, ed25519
from cryptography.hazmat.primitives.serialization import Encoding, NoEncryption, PrivateFormat

from hearthkey.core.found_findings import gather
from hearthkey.core.found_household import Grave
from hearthkey.core.sentences import found as sentences
from tests.adopt.by_hand import DAY, HOST, SERVER, ByHand, Shape, family, key_text, named, quick_key
from tests.adopt.conftest import codes, look, the
from tests.fakes.clock import NOW
from tests.pki import rfc9500


def test_a_whole_household_is_found(tmp_path: Path) -> None:
    """Broken if it fails: devices, lists or numbers of a household made by hand are overlooked."""
    family(tmp_path)
    seen = look(tmp_path)
    home = seen.home
    assert home.authority is not None
    assert home.authority.subject == "CN=Quince CA"
    assert home.key is not None
    assert [one.common_name for one in home.gateways] == ["gateway"]
    assert [one.common_name for one in home.devices] == ["ines-phone", "tomasz-laptop", "odile-tablet"]
    assert [(one.serial, one.reason) for one in home.withdrawn] == [(0x1002, 1)]
    assert home.highest_list == 6
    assert seen.stops == ()
    assert codes(seen) == {"key-open"}
    assert [str(one) for one in sentences.summary(home)][1:] == [
        "3 certificates of devices were found.",
        "One certificate of a gateway was recognised.",
        "One is withdrawn; the highest list number is 6.",
    ]


def test_nothing_is_written(tmp_path: Path) -> None:
    """Broken if it fails: a look changes what somebody else still uses."""
    family(tmp_path)
    before = {one: (one.stat().st_mtime_ns, one.is_file() and one.read_bytes()) for one in tmp_path.rglob("*")}
    look(tmp_path)
    assert {one: (one.stat().st_mtime_ns, one.is_file() and one.read_bytes()) for one in tmp_path.rglob("*")} == before


def shaped(**shape: object) -> Callable[[Path], ByHand]:
    """A household whose CA certificate has a shape."""
    return lambda folder: family(folder, shape=Shape(**shape))  # type: ignore[arg-type]  # passed on as it is


def with_more(change: Callable[[ByHand], object]) -> Callable[[Path], ByHand]:
    """The usual household, changed."""

    def make(folder: Path) -> ByHand:
        home = family(folder)
        change(home)
        return home

    return make


def _replaced(name: str) -> Callable[[Path], ByHand]:
    def make(folder: Path) -> ByHand:
        home = family(folder)
        (folder / name).unlink()
        return home

    return make


def _beside(home: ByHand) -> None:
    home.put_certificate("second.crt", _stranger(home).certificate)


WEAKNESSES: dict[str, tuple[Callable[[Path], ByHand], Grave]] = {
    "authority-is-none": (shaped(constraints=None), Grave.STOPS),
    "authority-may-not-sign": (shaped(signs_certificates=False), Grave.STOPS),
    "authority-may-not-list": (shaped(signs_lists=False), Grave.STOPS),
    "authority-ended": (shaped(ends=-DAY), Grave.STOPS),
    "authority-not-yet": (shaped(begins=DAY), Grave.STOPS),
    "authority-ends-soon": (shaped(ends=200 * DAY), Grave.WEAK),
    "authority-path-length": (shaped(constraints=x509.BasicConstraints(ca=True, path_length=0)), Grave.WEAK),
    "authority-no-identifier": (shaped(identifier=False), Grave.WEAK),
    "authority-key-missing": (_replaced("ca.key"), Grave.STOPS),
    "authority-missing": (ByHand, Grave.STOPS),
    "authority-key-kind": (lambda folder: family(folder, key=ec.generate_private_key(ec.SECP256K1())), Grave.STOPS),
    "authority-key-open": (with_more(lambda home: home.put_authority(locked=False)), Grave.BREAKS),
    "authority-besides": (with_more(_beside), Grave.NOTE),
    "key-of-nothing": (with_more(lambda home: _put_key(home, "stray")), Grave.NOTE),
    "certificate-ended": (with_more(lambda home: _put(home, "old", 9, ends=-DAY)), Grave.NOTE),
    "certificate-not-yet": (with_more(lambda home: _put(home, "soon", 9, begins=DAY)), Grave.NOTE),
    "certificate-key-small": (
        with_more(lambda home: _put(home, "small", 9, key=rfc9500.key("testRSA1024"))),
        Grave.BREAKS,
    ),
    "gateway-without-name": (with_more(lambda home: _put(home, HOST, 9, uses=None)), Grave.BREAKS),
    "device-wrong-use": (with_more(lambda home: _put(home, "mail", 9, uses=SERVER)), Grave.BREAKS),
    "device-without-name": (with_more(lambda home: _put(home, "bare", 9)), Grave.WEAK),
    "name-in-clear": (with_more(lambda home: _put(home, "ines", 9, mail="ines@quince.example")), Grave.WEAK),
    "serial-shared": (with_more(lambda home: _put(home, "twin", 0x1001)), Grave.BREAKS),
    "certificate-not-here": (_replaced("newcerts/1003.pem"), Grave.WEAK),
    "list-missing": (_replaced("crl.pem"), Grave.WEAK),
    "list-overdue": (
        with_more(lambda home: home.put_list("crl.pem", home.revocation_list(6, at=NOW - 90 * DAY))),
        Grave.BREAKS,
    ),
    "list-without-number": (with_more(lambda home: home.put_list("crl.pem", home.revocation_list(None))), Grave.WEAK),
    "list-partial": (
        with_more(lambda home: home.put_list("delta.pem", home.revocation_list(7, partial=True))),
        Grave.NOTE,
    ),
    "list-of-another": (
        with_more(lambda home: home.put_list("other.pem", _stranger(home).revocation_list(9))),
        Grave.NOTE,
    ),
    "list-number-high": (
        with_more(lambda home: home.put_list("crl.pem", home.revocation_list(1 << 63))),
        Grave.STOPS,
    ),
    "certificate-of-another": (
        with_more(lambda home: home.put_certificate("other.crt", _stranger(home).issue("x", 1))),
        Grave.NOTE,
    ),
    "database-lines": (with_more(lambda home: home.put("index.txt", _index() + "V\t?\n")), Grave.NOTE),
}


def _put(home: ByHand, name: str, serial: int, **more: object) -> None:
    home.put_certificate(f"{name}.crt", home.issue(name, serial, **more))  # type: ignore[arg-type]  # passed on


def _put_key(home: ByHand, name: str) -> None:
    home.put(f"{name}.key", key_text(quick_key(name), locked=False))


def _stranger(home: ByHand) -> ByHand:
    return ByHand(home.folder / "elsewhere", quick_key("stranger"), name="Another CA")


def _index() -> str:
    return (
        "V\t280718120000Z\t\t1001\tunknown\t/CN=ines-phone\n"
        "R\t280718120000Z\t261120120000Z,keyCompromise\t1002\tunknown\t/CN=tomasz-laptop\n"
    )


@pytest.mark.parametrize("code", WEAKNESSES)
def test_what_is_weak_or_broken_is_told(code: str, tmp_path: Path) -> None:
    """Broken if it fails: somebody takes over a household without hearing what does not work in it."""
    make, grave = WEAKNESSES[code]
    make(tmp_path)
    seen = look(tmp_path, host=HOST)
    told = [one for one in seen.findings if one.code == code]
    assert told, codes(seen)
    assert {one.grave for one in told} == {grave}
    assert all(one.clause for one in told)
    assert bool(seen.stops) == any(one.grave is Grave.STOPS for one in seen.findings)
    for one in gather(seen.findings):
        for sentence in (sentences.what(one.first), sentences.effect(one.first), sentences.where(one)):
            assert "unknown" not in str(sentence)
            assert "{" not in str(sentence)


def test_the_gravest_is_told_first(tmp_path: Path) -> None:
    """Broken if it fails: what is in the way stands below what is only good to know."""
    family(tmp_path, shape=Shape(ends=-DAY, identifier=False))
    order = [one.first.grave for one in gather(look(tmp_path).findings)]
    assert order == sorted(order, key=list(Grave).index)
    assert order[0] is Grave.STOPS


@pytest.mark.parametrize("name", rfc9500.NAMES)
@pytest.mark.parametrize("kind", ["PRIVATE KEY", "TESTING KEY"])
def test_a_published_test_key_is_no_ca_key(name: str, kind: str, tmp_path: Path) -> None:
    """Broken if it fails: a household trusts a CA whose key anybody has. RFC 9500 sections 2.1 and 2.3."""
    home = ByHand(tmp_path, rfc9500.key(name))
    home.put_certificate("ca.crt", home.certificate)
    home.put("ca.key", rfc9500.text(name, kind))
    seen = look(tmp_path)
    assert seen.home.key is not None
    told = the(seen, "authority-test-key")
    assert (told.grave, told.clause) == (Grave.STOPS, "RFC 9500 sections 2.1 and 2.3")
    assert ("authority-key-small" in codes(seen)) == (name == "testRSA1024")


def test_an_edwards_key_is_named_and_not_used(tmp_path: Path) -> None:
    """Broken if it fails: a CA that this app cannot sign with is taken over, or ends the look."""
    key = ed25519.Ed25519PrivateKey.generate()
    whole = (
        x509.CertificateBuilder().subject_name(named("Quince CA")).issuer_name(named("Quince CA")).serial_number(1)
        .not_valid_before(NOW - DAY).not_valid_after(NOW + 900 * DAY).public_key(key.public_key())
        .add_extension(x509.BasicConstraints(ca=True, path_length=None), critical=True)
        .sign(key, None)
    )  # fmt: skip
    (tmp_path / "ca.der").write_bytes(whole.public_bytes(Encoding.DER))
    (tmp_path / "ca.key").write_bytes(key.private_bytes(Encoding.PEM, PrivateFormat.PKCS8, NoEncryption()))
    assert the(look(tmp_path), "authority-key-kind").facts == {"type": "Ed25519"}


def test_a_ca_below_another_is_no_top(tmp_path: Path) -> None:
    """Broken if it fails: devices that trust the CA above are left with nothing that they trust."""
    top = ByHand(tmp_path / "elsewhere", quick_key("top"), name="Top CA")
    below = (
        x509.CertificateBuilder().subject_name(named("Quince CA")).issuer_name(top.name).serial_number(2)
        .not_valid_before(NOW - DAY).not_valid_after(NOW + 900 * DAY).public_key(quick_key("ca").public_key())
        .add_extension(x509.BasicConstraints(ca=True, path_length=None), critical=True)
        .sign(top.key, hashes.SHA256())
    )  # fmt: skip
    (tmp_path / "ca.crt").write_bytes(below.public_bytes(Encoding.PEM))
    assert the(look(tmp_path), "authority-not-top").grave is Grave.STOPS


def test_a_copy_of_a_certificate_is_the_same_certificate(tmp_path: Path) -> None:
    """Broken if it fails: a CA that keeps every certificate twice looks as if serials were shared."""
    home = family(tmp_path)
    home.put_certificate("ines.crt", home.issue("ines-phone", 0x1001, names=("a7k2.quince.example",)))
    (tmp_path / "again.pem").write_bytes((tmp_path / "newcerts/1003.pem").read_bytes())
    seen = look(tmp_path)
    assert sum(one.common_name == "odile-tablet" for one in seen.home.devices) == 1


def test_a_newer_list_lets_back_in_whom_an_older_one_stopped(tmp_path: Path) -> None:
    """Broken if it fails: somebody who was let back in is stopped by the take-over."""
    home = family(tmp_path)
    (tmp_path / "index.txt").unlink()
    hold = x509.ReasonFlags.certificate_hold
    home.put_list("crl-5.pem", home.revocation_list(5, (0x1003, hold), at=NOW - 9 * DAY))
    home.put_list("crl.pem", home.revocation_list(6, (0x1002, None)))
    seen = look(tmp_path)
    assert [(one.serial, one.reason) for one in seen.home.withdrawn] == [(0x1002, None)]


def test_a_database_that_knows_more_than_the_list_counts(tmp_path: Path) -> None:
    """Broken if it fails: who was withdrawn after the last list gets back in by the take-over."""
    home = family(tmp_path)
    home.put_list("crl.pem", home.revocation_list(6))
    assert [(one.serial, one.reason) for one in look(tmp_path).home.withdrawn] == [(0x1002, 1)]
