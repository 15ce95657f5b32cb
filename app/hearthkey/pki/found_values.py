"""Certificates, lists and keys that somebody else made, turned into values; whatever is odd in them stays odd."""

from __future__ import annotations

import hashlib
from collections.abc import Callable
from dataclasses import replace

from cryptography import x509
from cryptography.exceptions import UnsupportedAlgorithm
from cryptography.hazmat.primitives.asymmetric import ec, rsa
from cryptography.hazmat.primitives.asymmetric.types import CertificatePublicKeyTypes
from cryptography.hazmat.primitives.serialization import Encoding, PublicFormat
from cryptography.x509.oid import NameOID

from hearthkey.core.found_household import FoundCertificate, FoundEntry, FoundList
from hearthkey.pki import der, lists, read

TROUBLE = (
    ValueError,
    TypeError,
    UnsupportedAlgorithm,
    x509.DuplicateExtension,
    x509.UnsupportedGeneralNameType,
    x509.InvalidVersion,
)
"""What the library raises for what it cannot read."""

PUBLISHED = {
    "9a9e5b0f404f4e2d4386e38b04ac91e535946dc2a7f8d84a31404b476e5c35e1": "testRSA1024",
    "8fb6bad671cfe698393c453357da61b56d757ab8c0f3fb9c87f2849e63131878": "testRSA2048",
    "96465ea5dc9bb2da7b351d808a7196e5761f2412a5040131c68d719aaba28fb9": "testRSA4096",
    "b2b04340cfaee616ec9c2c62d261b208e54bb197498df52e8cadede23ac0ba5e": "testECCP256",
    "c4c10105a0be0ed4dd3354428dc38a9bfee64da141ce16e75c94eda272f9dd3a": "testECCP384",
    "acb1b8327fef995e2458fdf5e3c33b2dc0749feabd6a894cb9bda9d70ac06c24": "testECCP521",
}
"""SHA-256 of the SubjectPublicKeyInfo of RFC 9500’s test keys (sections 2.1, 2.3): anybody has their other half."""

_PERSONAL = (NameOID.EMAIL_ADDRESS, NameOID.GIVEN_NAME, NameOID.SURNAME, NameOID.SERIAL_NUMBER)
_REASONS = {
    x509.ReasonFlags.unspecified: 0,
    x509.ReasonFlags.key_compromise: 1,
    x509.ReasonFlags.ca_compromise: 2,
    x509.ReasonFlags.affiliation_changed: 3,
    x509.ReasonFlags.superseded: 4,
    x509.ReasonFlags.cessation_of_operation: 5,
    x509.ReasonFlags.certificate_hold: 6,
    x509.ReasonFlags.remove_from_crl: 8,
    x509.ReasonFlags.privilege_withdrawn: 9,
    x509.ReasonFlags.aa_compromise: 10,
}


def print_of(key: CertificatePublicKeyTypes) -> str:
    """SHA-256 of a public key's SubjectPublicKeyInfo, hex."""
    return hashlib.sha256(key.public_bytes(Encoding.DER, PublicFormat.SubjectPublicKeyInfo)).hexdigest()


def certificate(file: str, data: bytes) -> FoundCertificate:
    """Read a certificate.

    Raises:
        ValueError and the rest of `TROUBLE`: it cannot be read.
    """
    serial = _serial(data)
    if serial is not None and serial <= 0:
        return _without_library(file, data, serial)
    found = x509.load_der_x509_certificate(data)
    constraints = read.extension(found, x509.BasicConstraints)
    usage = read.extension(found, x509.KeyUsage)
    key = found.public_key()
    names = _names(found)
    common = found.subject.get_attributes_for_oid(NameOID.COMMON_NAME)
    return FoundCertificate(
        file=file,
        der=data,
        fingerprint=hashlib.sha256(data).hexdigest(),
        public=print_of(key),
        subject=found.subject.rfc4514_string(),
        issuer=found.issuer.rfc4514_string(),
        subject_der=found.subject.public_bytes(),
        issuer_der=found.issuer.public_bytes(),
        common_name=str(common[0].value) if common else "",
        serial=found.serial_number,
        names=names,
        personal=_personal(found, names, str(common[0].value) if common else ""),
        usages=read.usages(found),
        key_type=key_type(key),
        bits=key.key_size if isinstance(key, rsa.RSAPublicKey) else 0,
        hash_name=_hash(found),
        not_before=found.not_valid_before_utc,
        not_after=found.not_valid_after_utc,
        is_authority=constraints is not None and constraints.ca,
        path_length=None if constraints is None else constraints.path_length,
        signs_certificates=usage is None or usage.key_cert_sign,
        signs_lists=usage is None or usage.crl_sign,
        signs=usage is None or usage.digital_signature or usage.content_commitment,
        has_identifier=read.extension(found, x509.SubjectKeyIdentifier) is not None,
        has_authority_identifier=read.extension(found, x509.AuthorityKeyIdentifier) is not None,
    )


def revocation_list(file: str, data: bytes) -> FoundList:
    """Read a list.

    Raises:
        ValueError and the rest of `TROUBLE`: it cannot be read.
    """
    if len(data) > lists.LONGEST:
        raise ValueError(file)
    found = x509.load_der_x509_crl(data)
    kinds = {type(one.value): one.value for one in found.extensions}
    number, point = kinds.get(x509.CRLNumber), kinds.get(x509.IssuingDistributionPoint)
    narrowed = isinstance(point, x509.IssuingDistributionPoint) and (
        point.only_contains_user_certs
        or point.only_contains_ca_certs
        or point.only_contains_attribute_certs
        or point.indirect_crl
        or point.only_some_reasons is not None
    )
    return FoundList(
        file=file,
        der=data,
        issuer_der=found.issuer.public_bytes(),
        number=number.crl_number if isinstance(number, x509.CRLNumber) else None,
        this_update=found.last_update_utc,
        next_update=found.next_update_utc,
        entries=tuple(_entry(one) for one in found),
        is_partial=narrowed or x509.DeltaCRLIndicator in kinds,
        hash_name=_hash(found),
    )


def key_type(key: object) -> str:
    """What a public key is, in the words of `core.keysets`."""
    if isinstance(key, rsa.RSAPublicKey):
        return f"RSA-{key.key_size}"
    if isinstance(key, ec.EllipticCurvePublicKey):
        return {"secp256r1": "P-256", "secp384r1": "P-384", "secp521r1": "P-521"}.get(key.curve.name, key.curve.name)
    return type(key).__name__.removesuffix("PublicKey").lstrip("_")


def is_signed_by(one: FoundCertificate, authority: FoundCertificate) -> bool:
    """Whether a CA really issued a certificate: names that fit, and a signature that verifies.

    One whose serial is not positive is taken by its names alone, as the library is going to refuse to load it.
    """
    if one.issuer_der != authority.subject_der:
        return False
    if one.serial <= 0:
        return True
    return _verifies(
        lambda: x509.load_der_x509_certificate(one.der).verify_directly_issued_by(
            x509.load_der_x509_certificate(authority.der)
        )
    )


def is_list_of(one: FoundList, authority: FoundCertificate) -> bool:
    """Whether a CA really signed a list."""
    if one.issuer_der != authority.subject_der:
        return False
    key = x509.load_der_x509_certificate(authority.der).public_key()
    if not isinstance(key, ec.EllipticCurvePublicKey | rsa.RSAPublicKey):
        return False
    found = x509.load_der_x509_crl(one.der)
    return _verifies(lambda: None if found.is_signature_valid(key) else _not_valid())


def _not_valid() -> None:
    raise ValueError("signature")


def _verifies(check: Callable[[], None]) -> bool:
    try:
        check()
    except Exception:  # noqa: BLE001  # an algorithm that is not known, a signature that is none: not signed by it
        return False
    return True


def _entry(revoked: x509.RevokedCertificate) -> FoundEntry:
    """One entry; a reason that cannot be read is one that is not given, and the serial stays withdrawn."""
    try:
        flag = revoked.extensions.get_extension_for_class(x509.CRLReason).value.reason
        reason = _REASONS.get(flag)
    except (x509.ExtensionNotFound, *TROUBLE):
        reason = None
    return FoundEntry(revoked.serial_number, revoked.revocation_date_utc, reason)


def _names(found: x509.Certificate) -> tuple[str, ...]:
    alternative = read.extension(found, x509.SubjectAlternativeName)
    emails = [] if alternative is None else alternative.get_values_for_type(x509.RFC822Name)
    return tuple(one for one in read.names(found) if one != "other:RFC822Name") + tuple(
        f"email:{one}" for one in emails
    )


def _personal(found: x509.Certificate, names: tuple[str, ...], common: str) -> bool:
    given = any(found.subject.get_attributes_for_oid(kind) for kind in _PERSONAL)
    return given or "@" in common or " " in common.strip() or any(one.startswith("email:") for one in names)


def _hash(found: x509.Certificate | x509.CertificateRevocationList) -> str:
    """The hash under a signature; where the library does not know it, the name of the whole algorithm."""
    try:
        used = found.signature_hash_algorithm
    except UnsupportedAlgorithm:
        return found.signature_algorithm_oid._name.lower()  # noqa: SLF001  # the library has no other door to it
    return "" if used is None else used.name


def _serial(data: bytes) -> int | None:
    """The serial by a walk of our own, for the library is going to refuse what is not positive; None for no DER."""
    try:
        return int.from_bytes(der.Reader(_serial_element(data)).take(der.INTEGER), "big", signed=True)
    except der.Malformed:
        return None


def _without_library(file: str, data: bytes, serial: int) -> FoundCertificate:
    """A certificate whose serial no list can name: read under a serial that one can, and told with its own.

    Only the serial's octets are replaced, by as many others, so that everything else is read as it stands.
    """
    element = _serial_element(data)
    start = data.index(element)
    placed = data[:start] + element[:2] + b"\x01" * (len(element) - 2) + data[start + len(element) :]
    found = certificate(file, placed)
    return replace(found, der=data, serial=serial, fingerprint=hashlib.sha256(data).hexdigest())


def _serial_element(data: bytes) -> bytes:
    whole = der.Reader(data).inside(der.SEQUENCE).inside(der.SEQUENCE)
    if whole.peek() == der.explicit(0):
        whole.take(der.explicit(0))
    return whole.take_whole()
