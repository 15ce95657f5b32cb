"""Signs the certificates of a household after their plans.

Profile: RFC 5280 section 4 and RFC 4945 section 5.1. A household of ours signs with ECDSA and SHA-384.
"""

from __future__ import annotations

from collections.abc import Iterable
from datetime import datetime

from cryptography import x509
from cryptography.exceptions import UnsupportedAlgorithm
from cryptography.hazmat.primitives import hashes
from cryptography.hazmat.primitives.asymmetric import ec, rsa
from cryptography.hazmat.primitives.serialization import Encoding, load_der_public_key
from cryptography.x509.oid import ExtendedKeyUsageOID, NameOID

from hearthkey.core.certificates import AuthorityPlan, CrossPlan, DevicePlan, GatewayPlan
from hearthkey.core.errors import Bug, Refused
from hearthkey.core.names import LONGEST_NAME, as_address
from hearthkey.pki import keys, read
from hearthkey.pki.keys import AuthorityKey

IKE_USAGE = x509.ObjectIdentifier("1.3.6.1.5.5.7.3.17")
"""id-kp-ipsecIKE: RFC 4945 section 5.1.3.12 wants it beside any other usage."""


def authority_certificate(plan: AuthorityPlan, key: AuthorityKey) -> bytes:
    """Sign the CA certificate with its own key, DER.

    Raises:
        Refused: name-too-long (RFC 5280 appendix A.1, 64 characters).
    """
    for what, text in (("household name", plan.organization), ("CA name", plan.common_name)):
        if len(text) > LONGEST_NAME:
            raise Refused("name-too-long", what=what, limit=LONGEST_NAME, length=len(text))
    subject = x509.Name(
        [
            x509.NameAttribute(NameOID.ORGANIZATION_NAME, plan.organization),
            x509.NameAttribute(NameOID.COMMON_NAME, plan.common_name),
        ]
    )
    public = key.signer().public_key()
    identifier = x509.SubjectKeyIdentifier.from_public_key(public)
    builder = (
        _begin(subject, plan.serial, plan.not_before, plan.not_after, public)
        .issuer_name(subject)
        .add_extension(x509.BasicConstraints(ca=True, path_length=plan.path_length), critical=True)
        .add_extension(_key_usage(authority=True), critical=True)
        .add_extension(x509.AuthorityKeyIdentifier.from_issuer_subject_key_identifier(identifier), critical=False)
    )
    return builder.sign(key.signer(), key.hash()).public_bytes(Encoding.DER)


def cross_certificate(plan: CrossPlan, new_der: bytes, old_der: bytes, key: AuthorityKey) -> bytes:
    """Sign another CA's key and name with the old CA's key, DER: whoever trusts the old one gets to the new one.

    RFC 5280 section 3.2 (cross-certificate). Its key identifier is the one in the new CA's own certificate, so that
    one path leads to either (section 4.2.1.2).

    Args:
        new_der, old_der: the two self-signed certificates.
        key: the old CA's.

    Raises:
        Bug: authority-mismatch.
        Refused: certificate-unreadable.
    """
    new, old = read.load(new_der), read.load(old_der)
    check_authority(old, key)
    public = new.public_key()
    if not isinstance(public, ec.EllipticCurvePublicKey):
        raise Bug("authority-mismatch", authority=new.fingerprint(hashes.SHA256()).hex())
    builder = (
        _begin(new.subject, plan.serial, plan.not_before, plan.not_after, public)
        .issuer_name(old.subject)
        .add_extension(x509.BasicConstraints(ca=True, path_length=0), critical=True)
        .add_extension(_key_usage(authority=True), critical=True)
        .add_extension(authority_identifier(old), critical=False)
    )
    return builder.sign(key.signer(), hashes.SHA384()).public_bytes(Encoding.DER)


def gateway_certificate(plan: GatewayPlan, public_der: bytes, authority_der: bytes, key: AuthorityKey) -> bytes:
    """Sign the gateway's certificate, DER.

    A host longer than a CN may be stands in the SAN only, which is the only place that counts
    (RFC 9525 section 2).

    Args:
        public_der: SubjectPublicKeyInfo.

    Raises:
        Bug: authority-mismatch.
        Refused: key-unreadable, certificate-unreadable.
    """
    names = tuple(map(_reached_at, (plan.host, *plan.former)))
    common_name = plan.host if len(plan.host) <= LONGEST_NAME else "gateway"
    return _end_entity(plan, common_name, names, ExtendedKeyUsageOID.SERVER_AUTH, public_der, authority_der, key)


def device_certificate(plan: DevicePlan, public_der: bytes, authority_der: bytes, key: AuthorityKey) -> bytes:
    """Sign a device's certificate, DER.

    Args:
        public_der: SubjectPublicKeyInfo.

    Raises:
        Bug: authority-mismatch.
        Refused: key-unreadable, certificate-unreadable.
    """
    names = (x509.DNSName(plan.identity),)
    return _end_entity(plan, plan.identity, names, ExtendedKeyUsageOID.CLIENT_AUTH, public_der, authority_der, key)


def _reached_at(host: str) -> x509.GeneralName:
    address = as_address(host)
    return x509.DNSName(host) if address is None else x509.IPAddress(address)


def check_authority(authority: x509.Certificate, key: AuthorityKey) -> None:
    """Insist that a CA certificate is about this CA key.

    Raises:
        Bug: authority-mismatch.
    """
    public = authority.public_key()
    if not isinstance(public, ec.EllipticCurvePublicKey | rsa.RSAPublicKey) or keys.spki(public) != key.public_der():
        raise Bug("authority-mismatch", authority=authority.fingerprint(hashes.SHA256()).hex())


def authority_identifier(authority: x509.Certificate) -> x509.AuthorityKeyIdentifier:
    """The AKI of whatever a CA signs: its own SKI and nothing else (RFC 5280 section 4.2.1.1).

    A CA certificate of ours has one. For one that was made elsewhere without, the identifier is derived from its
    key (section 4.2.1.2, method 1), as the first of these clauses wants one in whatever is signed.
    """
    identifier = read.extension(authority, x509.SubjectKeyIdentifier)
    if identifier is None:
        identifier = x509.SubjectKeyIdentifier.from_public_key(authority.public_key())
    return x509.AuthorityKeyIdentifier.from_issuer_subject_key_identifier(identifier)


def _end_entity(
    plan: GatewayPlan | DevicePlan,
    common_name: str,
    names: Iterable[x509.GeneralName],
    usage: x509.ObjectIdentifier,
    public_der: bytes,
    authority_der: bytes,
    key: AuthorityKey,
) -> bytes:
    authority = read.load(authority_der)
    check_authority(authority, key)
    subject = x509.Name([x509.NameAttribute(NameOID.COMMON_NAME, common_name)])
    builder = (
        _begin(subject, plan.serial, plan.not_before, plan.not_after, _public_key(public_der))
        .issuer_name(authority.subject)
        .add_extension(authority_identifier(authority), critical=False)
        .add_extension(_key_usage(authority=False), critical=True)
        .add_extension(x509.ExtendedKeyUsage([usage, IKE_USAGE]), critical=False)
        .add_extension(x509.SubjectAlternativeName(names), critical=False)
    )
    return builder.sign(key.signer(), key.hash()).public_bytes(Encoding.DER)


def _begin(
    subject: x509.Name, serial: int, not_before: datetime, not_after: datetime, public: keys.PublicKey
) -> x509.CertificateBuilder:
    return (
        x509.CertificateBuilder()
        .subject_name(subject)
        .serial_number(serial)
        .not_valid_before(not_before)
        .not_valid_after(not_after)
        .public_key(public)
        .add_extension(x509.SubjectKeyIdentifier.from_public_key(public), critical=False)
    )


def _key_usage(*, authority: bool) -> x509.KeyUsage:
    """RFC 5280 section 4.2.1.3: a CA signs certificates and lists, everybody else only for themselves."""
    return x509.KeyUsage(
        digital_signature=not authority,
        content_commitment=False,
        key_encipherment=False,
        data_encipherment=False,
        key_agreement=False,
        key_cert_sign=authority,
        crl_sign=authority,
        encipher_only=False,
        decipher_only=False,
    )


def _public_key(public_der: bytes) -> keys.PublicKey:
    try:
        found = load_der_public_key(public_der)
    except (ValueError, UnsupportedAlgorithm):
        raise Refused("key-unreadable") from None
    if not isinstance(found, ec.EllipticCurvePublicKey | rsa.RSAPublicKey):
        raise Refused("key-unreadable")
    return found
