"""Judging paths, lists, names and usages: NIST PKITS, RFC 4945's tables, and the household's own cases."""

from __future__ import annotations

from datetime import UTC, datetime

import pytest
from cryptography import x509
from cryptography.hazmat.primitives import hashes, serialization

from hearthkey.core.certificates import DevicePlan
from hearthkey.core.errors import Refused
from hearthkey.core.revocation import Reason
from hearthkey.pki import judge, keys, mint
from hearthkey.pki.judge import Purpose
from tests.pki import pkits, quince
from tests.pki.quince import DAY, IDENTITY, NOW, Quince

AT = datetime(2014, 5, 13, 16, 53, 20, tzinfo=UTC)
"""A moment at which the PKITS certificates hold (they end on 31 December 2030)."""

IKE, CLIENT, SERVER, ANY = "1.3.6.1.5.5.7.3.17", "1.3.6.1.5.5.7.3.2", "1.3.6.1.5.5.7.3.1", "2.5.29.37.0"


@pytest.mark.parametrize("path", pkits.PATHS, ids=lambda path: f"{path.number}-{path.end}")
def test_pkits(path: pkits.Path4) -> None:
    """If this fails, the judge lets in or turns away what NIST PKITS says it must not."""
    assert (path.code is None) == path.end.startswith("Valid")
    code = None
    try:
        judge.check_path(
            pkits.certificate(path.end + "EE"),
            [pkits.certificate("TrustAnchorRootCertificate")],
            pkits.revocation_list("TrustAnchorRootCRL"),
            AT,
            intermediates=[pkits.certificate(one) for one in path.authorities],
            further_lists=[pkits.revocation_list(one) for one in path.lists],
            whole_path=True,
        )
    except judge.NotTrusted as error:
        code = error.code
    assert code == path.code


def refusal(home: Quince, revocation_list: bytes | None, at: datetime, certificate: bytes | None = None) -> str:
    """The code that the device's path is refused with."""
    with pytest.raises(judge.NotTrusted) as caught:
        judge.check_path(certificate or home.device.certificate, [home.authority], revocation_list, at)
    assert caught.value.facts["seen"]
    return caught.value.code


def test_the_household_is_trusted(home: Quince) -> None:
    """If this fails, nobody gets in."""
    for credential in (home.device, home.gateway):
        judge.check_path(credential.certificate, [home.authority], home.list_of(), NOW)
        judge.check_path(credential.certificate, [home.authority], None, NOW)


def test_stopped_and_revoked_devices_are_turned_away(home: Quince) -> None:
    """If this fails, a stolen phone gets in. RFC 5280 section 5.3.1: on hold is revoked for the time being."""
    for reason in Reason:
        signed = home.list_of(home.device.certificate, reason=reason)
        assert refusal(home, signed, NOW) == "certificate-revoked"
        judge.check_path(home.gateway.certificate, [home.authority], signed, NOW)


def test_dates_are_inclusive(home: Quince) -> None:
    """If this fails, a pass ends a second early or late. RFC 5280 section 4.1.2.5."""
    begin, end = NOW - DAY, NOW + 700 * DAY
    second = DAY / 86_400
    for moment in (begin, end):
        judge.check_path(home.device.certificate, [home.authority], None, moment)
    assert refusal(home, None, begin - second) == "certificate-not-yet"
    assert refusal(home, None, end + second) == "certificate-ended"


def test_overdue_early_and_missing_lists_lock_out(home: Quince) -> None:
    """If this fails, the app calls a household open that a strict gateway keeps shut."""
    assert refusal(home, home.list_of(days=30), NOW + 31 * DAY) == "list-overdue"
    assert refusal(home, home.list_of(at=NOW + DAY), NOW) == "list-not-yet"
    assert refusal(home, quince.found().list_of(), NOW) in {"list-missing", "list-untrusted"}


def test_strangers_and_changed_certificates_are_turned_away(home: Quince) -> None:
    """If this fails, anybody gets in."""
    other = quince.found()
    assert refusal(home, None, NOW, other.device.certificate) == "path-untrusted"
    changed = home.device.certificate[:-1] + bytes([home.device.certificate[-1] ^ 1])
    assert refusal(home, None, NOW, changed) == "path-untrusted"


def test_garbage_is_refused(home: Quince) -> None:
    """If this fails, the library's error reaches the householder."""
    for certificate, authority, revocation_list, code in (
        (b"x", home.authority, None, "certificate-unreadable"),
        (home.device.certificate, b"x", None, "certificate-unreadable"),
        (home.device.certificate, home.authority, b"x", "list-unreadable"),
    ):
        with pytest.raises(Refused) as caught:
            judge.check_path(certificate, [authority], revocation_list, NOW)
        assert caught.value.code == code


def with_usages(home: Quince, usages: list[str] | None, bits: set[str] | None) -> bytes:
    """A certificate with these extended key usages and key usage bits, or without the extension."""
    names = ("digital_signature", "content_commitment", "key_encipherment", "data_encipherment", "key_agreement")
    public = serialization.load_der_public_key(keys.public_der(home.device.key))
    assert isinstance(public, keys.PublicKey)
    builder = (
        x509.CertificateBuilder()
        .subject_name(x509.Name([]))
        .issuer_name(x509.Name([]))
        .serial_number(1)
        .not_valid_before(NOW)
        .not_valid_after(NOW + DAY)
        .public_key(public)
    )
    if usages is not None:
        wanted = [x509.ObjectIdentifier(one) for one in usages]
        builder = builder.add_extension(x509.ExtendedKeyUsage(wanted), critical=False)
    if bits is not None:
        flags = {name: name in bits for name in (*names, "key_cert_sign", "crl_sign", "encipher_only", "decipher_only")}
        builder = builder.add_extension(x509.KeyUsage(**flags), critical=True)
    return builder.sign(home.key.signer(), hashes.SHA384()).public_bytes(serialization.Encoding.DER)


@pytest.mark.parametrize(
    ("usages", "ike", "client", "server"),
    [
        (None, True, True, True),
        ([ANY], True, True, True),
        ([IKE], True, False, False),
        ([CLIENT], False, True, False),
        ([SERVER], False, False, True),
        ([CLIENT, IKE], True, True, False),
        ([SERVER, IKE], True, False, True),
        (["1.3.6.1.5.5.7.3.5"], False, False, False),  # ipsecEndSystem, obsolete: RFC 4945 section 5.1.3.12
    ],
)
def test_extended_key_usages(home: Quince, usages: list[str] | None, *, ike: bool, client: bool, server: bool) -> None:
    """If this fails, tunnel or web front turn away what we call good. RFC 4945 5.1.3.12, RFC 5216 5.3."""
    certificate = with_usages(home, usages, None)
    for purpose, good in ((Purpose.IKE, ike), (Purpose.TLS_CLIENT, client), (Purpose.TLS_SERVER, server)):
        assert allowed(certificate, purpose) == good


@pytest.mark.parametrize(
    ("bits", "ike", "tls"),
    [
        (None, True, True),
        ({"digital_signature"}, True, True),
        ({"content_commitment"}, True, False),
        ({"digital_signature", "content_commitment"}, True, True),
        ({"key_encipherment"}, False, False),
    ],
)
def test_key_usages(home: Quince, bits: set[str] | None, *, ike: bool, tls: bool) -> None:
    """If this fails, a key that may not sign passes. RFC 4945 section 5.1.3.2, RFC 8446 section 4.4.2.2."""
    certificate = with_usages(home, None, bits)
    assert allowed(certificate, Purpose.IKE) == ike
    assert allowed(certificate, Purpose.TLS_CLIENT) == tls


def allowed(certificate: bytes, purpose: Purpose) -> bool:
    """Whether a certificate may be presented for a purpose."""
    try:
        judge.check_usage(certificate, purpose)
    except Refused as error:
        assert error.code == "usage-wrong"  # noqa: PT017  # both outcomes are asked for
        return False
    return True


@pytest.mark.parametrize(
    ("certified", "expected", "same"),
    [
        ("phone1.home.arpa", "phone1.home.arpa", True),
        ("phone1.home.arpa", "PHONE1.home.arpa", True),
        ("PHONE1.home.arpa", "phone1.HOME.arpa", True),
        ("a.home.arpa", "home.arpa", False),
        ("home.arpa", "a.home.arpa", False),
        ("*.home.arpa", "a.home.arpa", False),
        ("*.home.arpa", "*.home.arpa", False),
        ("phone1.home.arpa", "phone1.home.arpa.", False),
        ("203.0.113.5", "203.0.113.5", False),  # an address in a dNSName is no iPAddress
    ],
)
def test_names(home: Quince, certified: str, expected: str, *, same: bool) -> None:
    """If this fails, a device takes a stranger for its gateway. RFC 4945 section 3.1."""
    plan = DevicePlan(certified, quince.serial(), NOW, NOW + DAY, "P-256")
    certificate = mint.device_certificate(plan, keys.public_der(home.device.key), home.authority, home.key)
    assert named(certificate, expected) == same


@pytest.mark.parametrize(
    ("host", "expected", "same"),
    [
        ("2001:db8::5", "2001:0db8:0:0:0:0:0:5", True),
        ("203.0.113.5", "203.0.113.5", True),
        ("203.0.113.5", "203.0.113.6", False),
    ],
)
def test_addresses_are_compared_bit_by_bit(home: Quince, host: str, expected: str, *, same: bool) -> None:
    """If this fails, the spelling of an address decides. RFC 4945 section 3.1.1."""
    assert named(home.gateway_with(host).certificate, expected) == same


def named(certificate: bytes, expected: str) -> bool:
    """Whether a certificate is about a name."""
    try:
        judge.check_name(certificate, expected)
    except Refused as error:
        assert error.code == "name-differs"  # noqa: PT017  # both outcomes are asked for
        return False
    return True


def test_the_common_name_never_counts(home: Quince) -> None:
    """If this fails, a name that nobody checked is believed. RFC 9525 section 2."""
    with pytest.raises(Refused) as caught:
        judge.check_name(home.authority, "Household CA 2026-00000001")
    assert caught.value.facts["names"] == ()
    judge.check_name(home.device.certificate, IDENTITY)
