"""The certificates as they are signed, clause by clause of RFC 5280 and RFC 4945."""

from __future__ import annotations

import hashlib
from datetime import UTC, datetime, timedelta

import pytest
from cryptography import x509
from cryptography.hazmat.primitives import hashes

from hearthkey.core.certificates import DevicePlan
from hearthkey.core.errors import Bug, Refused
from hearthkey.core.revocation import ListPlan
from hearthkey.pki import keys, lists, mint, read
from hearthkey.pki.keys import AuthorityKey
from tests.pki import quince
from tests.pki.quince import DAY, IDENTITY, NOW, Quince

# RFC 5280 appendix C.1, the SubjectPublicKeyInfo of its example CA.
C_1 = bytes.fromhex(
    "30819f300d06092a864886f70d010101050003818d0030818902818100"
    "c2d7976d2870aa5bcf232e807039eedb6fd52dd56a4f7a342df9227247701d"
    "ef80e9ca308c00c49a6e5b45b46ea5e66c940dfa91e940fc259dc7b76819568f"
    "11706ad7f1c9114f3a7e3f998d6e76a5745f5ea45553e5c7683653c71d3b12a6"
    "85febd6ea1cadf3550ac08d7b9b47e5cfee2a32cd12384aa98c09b66189a6847e9"
    "0203010001"
)


def extension(certificate: bytes, kind: type[x509.ExtensionType]) -> tuple[x509.ExtensionType, bool]:
    """Value and criticality of an extension that has to be there."""
    found = x509.load_der_x509_certificate(certificate).extensions.get_extension_for_class(kind)
    return found.value, found.critical


def usage_bits(certificate: bytes) -> set[str]:
    """The key usages that are set, by their RFC 5280 section 4.2.1.3 names."""
    value, critical = extension(certificate, x509.KeyUsage)
    assert critical
    assert isinstance(value, x509.KeyUsage)
    names = ("digital_signature", "content_commitment", "key_encipherment", "data_encipherment", "key_agreement")
    return {name for name in (*names, "key_cert_sign", "crl_sign") if getattr(value, name)}


def test_authority_profile(home: Quince) -> None:
    """If this fails, the CA cannot be followed by another one, or gateways turn it away."""
    value, critical = extension(home.authority, x509.BasicConstraints)
    assert (value, critical) == (x509.BasicConstraints(ca=True, path_length=1), True)  # RFC 5280 4.2.1.9
    assert usage_bits(home.authority) == {"key_cert_sign", "crl_sign"}
    found = x509.load_der_x509_certificate(home.authority)
    assert found.subject.public_bytes() == found.issuer.public_bytes()
    assert isinstance(found.signature_hash_algorithm, hashes.SHA384)
    assert found.subject.rfc4514_string() == "CN=Household CA 2026-00000001,O=Quince Cottage (practice)"


@pytest.mark.parametrize("whose", ["gateway", "device"])
def test_end_entity_profile(home: Quince, whose: str) -> None:
    """If this fails, tunnel or web front turn the certificate away, or it could sign others."""
    certificate = (home.gateway if whose == "gateway" else home.device).certificate
    facts = read.certificate_facts(certificate)
    own = "1.3.6.1.5.5.7.3.1" if whose == "gateway" else "1.3.6.1.5.5.7.3.2"
    assert facts.usages == (own, "1.3.6.1.5.5.7.3.17")  # RFC 4945 5.1.3.12, RFC 5216 5.3
    assert extension(certificate, x509.ExtendedKeyUsage)[1] is False
    assert usage_bits(certificate) == {"digital_signature"}
    host = quince.HOST if whose == "gateway" else IDENTITY
    assert (facts.names, facts.subject) == ((f"dns:{host}",), f"CN={host}")
    assert extension(certificate, x509.SubjectAlternativeName)[1] is False  # RFC 5280 4.2.1.6
    assert not facts.is_authority


def test_issuer_and_key_identifiers_fit_byte_by_byte(home: Quince) -> None:
    """If this fails, paths cannot be built. RFC 5280 sections 4.1.2.4, 4.2.1.1, 4.2.1.2."""
    subject = x509.load_der_x509_certificate(home.authority).subject.public_bytes()
    own, critical = extension(home.authority, x509.SubjectKeyIdentifier)
    assert isinstance(own, x509.SubjectKeyIdentifier)
    assert not critical
    for certificate in (home.authority, home.gateway.certificate, home.device.certificate):
        found = x509.load_der_x509_certificate(certificate)
        assert found.issuer.public_bytes() == subject
        value, critical = extension(certificate, x509.AuthorityKeyIdentifier)
        assert value == x509.AuthorityKeyIdentifier(own.digest, None, None)
        assert not critical
    revocation_list = x509.load_der_x509_crl(home.list_of())
    assert revocation_list.issuer.public_bytes() == subject


def test_key_identifier_method_1(home: Quince) -> None:
    """If this fails, identifiers are not SHA-1 of the key's bits. RFC 5280 section 4.2.1.2 and appendix C.1."""
    plan = DevicePlan(IDENTITY, quince.serial(), NOW, NOW + DAY, "RSA-3072")
    value, _ = extension(mint.device_certificate(plan, C_1, home.authority, home.key), x509.SubjectKeyIdentifier)
    assert isinstance(value, x509.SubjectKeyIdentifier)
    assert value.digest.hex() == "0868af8533c8394a7af882938e706a4a20842c32"
    assert hashlib.sha1(C_1[22:]).digest() == value.digest  # noqa: S324  # the standard's choice; no secret hangs on it


def test_names_are_utf8_strings(home: Quince) -> None:
    """If this fails, names with accents are mangled. RFC 5280 section 4.1.2.4 (UTF8String or PrintableString)."""
    key = AuthorityKey.make()
    plan = quince.authority_plan("Household CA, Chaumière aux coings")
    found = x509.load_der_x509_certificate(mint.authority_certificate(plan, key)).subject.public_bytes()
    assert b"\x0c" + bytes([len("Quince Cottage (practice)")]) + b"Quince Cottage (practice)" in found
    assert "Chaumière".encode() in found
    assert home.authority != found


def test_serials(home: Quince) -> None:
    """If this fails, serials are too long for others. RFC 5280 section 4.1.2.2: at most 20 octets, positive."""
    for certificate in (home.authority, home.gateway.certificate, home.device.certificate):
        number = x509.load_der_x509_certificate(certificate).serial_number
        assert 0 < number < 1 << 159


@pytest.mark.parametrize(
    ("end", "octets"),
    [
        (datetime(2049, 12, 31, 23, 59, 59, tzinfo=UTC), b"\x17\x0d491231235959Z"),
        (datetime(2050, 1, 1, tzinfo=UTC), b"\x18\x0f20500101000000Z"),
    ],
)
def test_dates_change_their_form_in_2050(end: datetime, octets: bytes) -> None:
    """If this fails, long-lived CAs are unreadable. RFC 5280 sections 4.1.2.5 and 5.1.2.5."""
    key = AuthorityKey.make()
    certificate = mint.authority_certificate(quince.authority_plan(not_after=end), key)
    assert octets in certificate
    assert read.certificate_facts(certificate).not_after == end
    assert octets in lists.sign_list(ListPlan(1, NOW, end, ()), certificate, key)


@pytest.mark.parametrize(
    ("host", "name"),
    [
        ("203.0.113.5", "ip:203.0.113.5"),
        ("2001:db8::5", "ip:2001:db8::5"),
        ("q.quince.example", "dns:q.quince.example"),
    ],
)
def test_gateway_san_follows_the_host(home: Quince, host: str, name: str) -> None:
    """If this fails, a gateway reached by address is turned away. RFC 4945 section 3.1.1, RFC 5280 4.2.1.6."""
    assert read.certificate_facts(home.gateway_with(host).certificate).names == (name,)


def test_long_hosts_stand_in_the_san_only(home: Quince) -> None:
    """If this fails, hosts over 64 characters cannot have a certificate. RFC 5280 appendix A.1."""
    host = ".".join(["quince" * 8] * 2) + ".quince.example"
    facts = read.certificate_facts(home.gateway_with(host).certificate)
    assert (facts.subject, facts.names) == ("CN=gateway", (f"dns:{host}",))


def test_too_long_names_are_refused() -> None:
    """If this fails, strict readers turn the CA away. RFC 5280 appendix A.1, ub-common-name."""
    with pytest.raises(Refused) as caught:
        mint.authority_certificate(quince.authority_plan("x" * 65), AuthorityKey.make())
    assert (caught.value.code, caught.value.facts["length"]) == ("name-too-long", 65)


def test_another_ca_key_signs_nothing(home: Quince) -> None:
    """If this fails, certificates are made that nobody trusts, and nobody notices until they are used."""
    stranger, public = AuthorityKey.make(), keys.public_der(home.device.key)
    plan = DevicePlan(IDENTITY, quince.serial(), NOW, NOW + timedelta(days=1), "P-256")
    with pytest.raises(Bug, match="authority-mismatch"):
        mint.device_certificate(plan, public, home.authority, stranger)
    with pytest.raises(Bug, match="authority-mismatch"):
        lists.sign_list(ListPlan(1, NOW, NOW + DAY, ()), home.authority, stranger)


def test_what_is_no_public_key_is_refused(home: Quince) -> None:
    """If this fails, garbage is certified or the library's error reaches the householder."""
    plan = DevicePlan(IDENTITY, quince.serial(), NOW, NOW + DAY, "P-256")
    with pytest.raises(Refused) as caught:
        mint.device_certificate(plan, b"0", home.authority, home.key)
    assert caught.value.code == "key-unreadable"
