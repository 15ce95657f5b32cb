"""What a certificate says, read back from its DER."""

from __future__ import annotations

from typing import TypeVar

from cryptography import x509
from cryptography.exceptions import UnsupportedAlgorithm
from cryptography.hazmat.primitives import hashes
from cryptography.hazmat.primitives.asymmetric import ec, rsa
from cryptography.hazmat.primitives.serialization import Encoding, PublicFormat

from hearthkey.core.certificates import CertificateFacts, serial_hex
from hearthkey.core.errors import Refused

LONGEST = 64 * 1024
"""Bytes. A certificate of ours has about 700, one with 50 names a few thousand."""

E = TypeVar("E", bound=x509.ExtensionType)

_CURVES = {"secp256r1": "P-256", "secp384r1": "P-384", "secp521r1": "P-521"}


def load(certificate: bytes) -> x509.Certificate:
    """Parse DER.

    Raises:
        Refused: certificate-unreadable.
    """
    if len(certificate) > LONGEST:
        raise Refused("certificate-unreadable", length=len(certificate))
    try:
        return x509.load_der_x509_certificate(certificate)
    except (ValueError, x509.InvalidVersion):
        raise Refused("certificate-unreadable", length=len(certificate)) from None


def public_of(certificate: bytes) -> bytes:
    """The certified public key, SubjectPublicKeyInfo DER.

    Raises:
        Refused: certificate-unreadable.
    """
    try:
        key = load(certificate).public_key()
    except (ValueError, UnsupportedAlgorithm):
        raise Refused("certificate-unreadable", length=len(certificate)) from None
    return key.public_bytes(Encoding.DER, PublicFormat.SubjectPublicKeyInfo)


def common_name(certificate: bytes) -> str:
    """The common name of the subject (RFC 5280 section 4.1.2.6); empty where it has none.

    Raises:
        Refused: certificate-unreadable.
    """
    found = load(certificate).subject.get_attributes_for_oid(x509.NameOID.COMMON_NAME)
    return str(found[0].value) if found else ""


def short_print(certificate: bytes) -> str:
    """SHA-1 of the certificate, upper-case hex: a name by which some systems find it again, and no protection.

    Raises:
        Refused: certificate-unreadable.
    """
    return load(certificate).fingerprint(hashes.SHA1()).hex().upper()  # noqa: S303 - a name, see above


def certificate_facts(certificate: bytes) -> CertificateFacts:
    """Read what the app shows and checks.

    Raises:
        Refused: certificate-unreadable.
    """
    found = load(certificate)
    try:
        constraints = extension(found, x509.BasicConstraints)
        return CertificateFacts(
            subject=found.subject.rfc4514_string(),
            issuer=found.issuer.rfc4514_string(),
            serial=serial_hex(found.serial_number),
            names=names(found),
            usages=usages(found) or (),
            key_type=_key_type(found),
            not_before=found.not_valid_before_utc,
            not_after=found.not_valid_after_utc,
            fingerprint=found.fingerprint(hashes.SHA256()).hex(),
            is_authority=constraints is not None and constraints.ca,
        )
    except (ValueError, UnsupportedAlgorithm, x509.DuplicateExtension):
        raise Refused("certificate-unreadable", length=len(certificate)) from None


def extension(found: x509.Certificate, kind: type[E]) -> E | None:
    """The value of an extension, or None where it is absent."""
    try:
        return found.extensions.get_extension_for_class(kind).value
    except x509.ExtensionNotFound:
        return None


def is_whole_anchor(certificate: bytes) -> bool:
    """Whether a CA certificate has what RFC 5280 wants in one: critical basic constraints, key usage, an identifier.

    Sections 4.2.1.9, 4.2.1.3 and 4.2.1.2. One that was made by hand often lacks something.

    Raises:
        Refused: certificate-unreadable.
    """
    try:
        kinds = {type(one.value): one.critical for one in load(certificate).extensions}
    except (ValueError, x509.DuplicateExtension):
        raise Refused("certificate-unreadable", length=len(certificate)) from None
    wanted = {x509.KeyUsage, x509.SubjectKeyIdentifier}
    return kinds.get(x509.BasicConstraints, False) and wanted <= kinds.keys()


def names(found: x509.Certificate) -> tuple[str, ...]:
    """SAN entries as "dns:…" and "ip:…"; kinds that the household never issues as "other:…"."""
    alternative = extension(found, x509.SubjectAlternativeName)
    return tuple(_name(one) for one in alternative) if alternative is not None else ()


def usages(found: x509.Certificate) -> tuple[str, ...] | None:
    """Extended key usages, dotted, or None where the extension is absent."""
    value = extension(found, x509.ExtendedKeyUsage)
    return tuple(usage.dotted_string for usage in value) if value is not None else None


def _name(name: x509.GeneralName) -> str:
    if isinstance(name, x509.DNSName):
        return f"dns:{name.value}"
    if isinstance(name, x509.IPAddress):
        return f"ip:{name.value}"
    return f"other:{type(name).__name__}"


def _key_type(found: x509.Certificate) -> str:
    key = found.public_key()
    if isinstance(key, rsa.RSAPublicKey):
        return f"RSA-{key.key_size}"
    if isinstance(key, ec.EllipticCurvePublicKey):
        return _CURVES.get(key.curve.name, key.curve.name)
    return type(key).__name__
