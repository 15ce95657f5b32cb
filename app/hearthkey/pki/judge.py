"""Judges certificates as a gateway would: path and list by OpenSSL, name and usage by the tables of RFC 4945."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import datetime
from enum import StrEnum

from cryptography import x509
from cryptography.hazmat.primitives.asymmetric import ec, rsa
from cryptography.x509.oid import ExtendedKeyUsageOID
from OpenSSL import SSL, crypto

from hearthkey.core.errors import Refused
from hearthkey.core.names import as_address
from hearthkey.pki import lists, read
from hearthkey.pki.mint import IKE_USAGE


class NotTrusted(Refused):
    """A certificate that a gateway would turn away, with OpenSSL's words in the facts."""


class Purpose(StrEnum):
    """What somebody presents a certificate for."""

    IKE = "ike"
    TLS_CLIENT = "tls-client"
    TLS_SERVER = "tls-server"


ANY_USAGE = "2.5.29.37.0"
_WANTED = {
    Purpose.IKE: IKE_USAGE.dotted_string,
    Purpose.TLS_CLIENT: ExtendedKeyUsageOID.CLIENT_AUTH.dotted_string,
    Purpose.TLS_SERVER: ExtendedKeyUsageOID.SERVER_AUTH.dotted_string,
}

_SEEN = SSL.X509VerificationCodes
_CODES = {
    _SEEN.ERR_UNABLE_TO_GET_ISSUER_CERT: "path-untrusted",
    _SEEN.ERR_UNABLE_TO_GET_ISSUER_CERT_LOCALLY: "path-untrusted",
    _SEEN.ERR_UNABLE_TO_VERIFY_LEAF_SIGNATURE: "path-untrusted",
    _SEEN.ERR_CERT_SIGNATURE_FAILURE: "path-untrusted",
    _SEEN.ERR_DEPTH_ZERO_SELF_SIGNED_CERT: "path-untrusted",
    _SEEN.ERR_SELF_SIGNED_CERT_IN_CHAIN: "path-untrusted",
    _SEEN.ERR_INVALID_CA: "path-untrusted",
    _SEEN.ERR_PATH_LENGTH_EXCEEDED: "path-untrusted",
    _SEEN.ERR_KEYUSAGE_NO_CERTSIGN: "path-untrusted",
    _SEEN.ERR_CERT_NOT_YET_VALID: "certificate-not-yet",
    _SEEN.ERR_CERT_HAS_EXPIRED: "certificate-ended",
    _SEEN.ERR_CERT_REVOKED: "certificate-revoked",
    _SEEN.ERR_UNABLE_TO_GET_CRL: "list-missing",
    _SEEN.ERR_CRL_HAS_EXPIRED: "list-overdue",
    _SEEN.ERR_CRL_NOT_YET_VALID: "list-not-yet",
    _SEEN.ERR_CRL_SIGNATURE_FAILURE: "list-untrusted",
    _SEEN.ERR_UNABLE_TO_GET_CRL_ISSUER: "list-untrusted",
    _SEEN.ERR_KEYUSAGE_NO_CRL_SIGN: "list-untrusted",
    _SEEN.ERR_UNHANDLED_CRITICAL_CRL_EXTENSION: "list-untrusted",
    _SEEN.ERR_DIFFERENT_CRL_SCOPE: "list-untrusted",
    _SEEN.ERR_CRL_PATH_VALIDATION_ERROR: "list-untrusted",
    _SEEN.ERR_INVALID_PURPOSE: "usage-wrong",
}
"""Every other verdict of OpenSSL is path-malformed."""


def check_path(
    certificate: bytes,
    authorities: Iterable[bytes],
    revocation_list: bytes | None,
    at: datetime,
    *,
    intermediates: Iterable[bytes] = (),
    further_lists: Iterable[bytes] = (),
    whole_path: bool = False,
) -> None:
    """Judge a path from a certificate to an authority at a moment, by OpenSSL with X509_STRICT.

    Args:
        certificate: DER.
        authorities: the trust anchors, DER.
        revocation_list: DER; None leaves revocation out of the question.
        at: UTC.
        intermediates: certificates of other CAs on the way, DER, not trusted by themselves.
        further_lists: lists of other CAs, or of the same one.
        whole_path: ask for the list of every CA on the way, not only of the last.

    Raises:
        NotTrusted: path-untrusted, path-malformed, certificate-ended, certificate-not-yet,
            certificate-revoked, list-missing, list-overdue, list-not-yet, list-untrusted.
        Refused: certificate-unreadable, list-unreadable.
    """
    given = () if revocation_list is None else (revocation_list, *further_lists)
    store = crypto.X509Store()
    equip(store, authorities, given, at, whole_path=whole_path)
    context = crypto.X509StoreContext(store, _openssl(certificate), [_openssl(one) for one in intermediates])
    try:
        context.verify_certificate()
    except crypto.X509StoreContextError as error:
        number, depth, seen = error.errors
        raise refusal(number, depth, seen) from None


def equip(
    store: crypto.X509Store,
    authorities: Iterable[bytes],
    revocation_lists: Iterable[bytes],
    at: datetime,
    *,
    whole_path: bool = False,
) -> None:
    """Put into a store what a verification needs; lists are demanded where any is given.

    A CA that was made elsewhere may lack extensions. Of a trust anchor only name and key count (RFC 5280 section
    6.1.1 d), but X509_STRICT would turn it away, so that it is judged without.

    Raises:
        Refused: certificate-unreadable, list-unreadable.
    """
    flags = crypto.X509StoreFlags.X509_STRICT
    for authority in authorities:
        store.add_cert(_openssl(authority))
        if not read.is_whole_anchor(authority):
            flags &= ~crypto.X509StoreFlags.X509_STRICT
    for one in revocation_lists:
        try:
            store.add_crl(lists.load(one))
        except crypto.Error:
            raise Refused("list-unreadable", length=len(one)) from None
        flags |= crypto.X509StoreFlags.CRL_CHECK
    if whole_path:
        flags |= crypto.X509StoreFlags.CRL_CHECK_ALL
    store.set_time(at)
    store.set_flags(flags)


def refusal(number: int, depth: int, seen: str, **facts: str) -> NotTrusted:
    """The error for one of OpenSSL's numbers.

    Args:
        number: X509_V_ERR_...
        depth: 0 for the certificate itself, above that its CAs.
        seen: OpenSSL's words.
    """
    return NotTrusted(_CODES.get(number, "path-malformed"), seen=seen, number=number, depth=depth, **facts)


def check_list(revocation_list: bytes, authority: bytes) -> None:
    """Insist that a list is signed by a CA.

    Raises:
        NotTrusted: list-untrusted.
        Refused: certificate-unreadable, list-unreadable.
    """
    found, ca = lists.load(revocation_list), read.load(authority)
    key = ca.public_key()
    genuine = (
        isinstance(key, ec.EllipticCurvePublicKey | rsa.RSAPublicKey)
        and found.issuer == ca.subject
        and found.is_signature_valid(key)
    )
    if not genuine:
        raise NotTrusted(
            "list-untrusted", seen=found.issuer.rfc4514_string(), number=_SEEN.ERR_CRL_SIGNATURE_FAILURE, depth=0
        )


def check_usage(certificate: bytes, purpose: Purpose) -> None:
    """Insist that a certificate may be presented for a purpose.

    RFC 4945 section 5.1.3.12 (IKE) and RFC 5216 section 5.3 (TLS): no extended key usage, anyExtendedKeyUsage,
    or the wanted one. RFC 4945 section 5.1.3.2: where there is a key usage, it has digitalSignature or
    nonRepudiation; RFC 8446 section 4.4.2.2: digitalSignature.

    Raises:
        Refused: usage-wrong, certificate-unreadable.
    """
    try:
        found = read.load(certificate)
        usages = read.usages(found)
        key_usage = read.extension(found, x509.KeyUsage)
    except (ValueError, x509.DuplicateExtension):
        raise Refused("certificate-unreadable", length=len(certificate)) from None
    signs = key_usage is None or key_usage.digital_signature
    if purpose is Purpose.IKE and key_usage is not None:
        signs = signs or key_usage.content_commitment
    meant = usages is None or ANY_USAGE in usages or _WANTED[purpose] in usages
    if not signs or not meant:
        raise Refused("usage-wrong", purpose=purpose.value, usages=usages or ())


def check_name(certificate: bytes, expected: str) -> None:
    """Insist that a certificate is about a host, an identity or an address.

    RFC 4945 section 3.1: the whole name, letter by letter but for case; no wildcard, no part of a name,
    and an address bit by bit. The CN never counts (RFC 9525 section 2).

    Args:
        expected: A-labels, or an address as text.

    Raises:
        Refused: name-differs, certificate-unreadable.
    """
    certified = read.certificate_facts(certificate).names
    address = as_address(expected)
    wanted = f"dns:{expected.lower()}" if address is None else f"ip:{address}"
    if "*" in expected or wanted not in {_lower(name) for name in certified}:
        raise Refused("name-differs", expected=expected, names=certified)


def _lower(name: str) -> str:
    """ASCII letters only: names are IA5String, and DNS knows no other case (RFC 4343)."""
    return name.lower() if name.isascii() else name


def _openssl(certificate: bytes) -> crypto.X509:
    try:
        return crypto.load_certificate(crypto.FILETYPE_ASN1, certificate)
    except crypto.Error:
        raise Refused("certificate-unreadable", length=len(certificate)) from None
