"""Signs revocation lists after their plans, and reads them back (RFC 5280 section 5)."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import UTC, datetime

from cryptography import x509
from cryptography.hazmat.primitives import hashes
from cryptography.hazmat.primitives.serialization import Encoding
from cryptography.x509.oid import CRLEntryExtensionOID

from hearthkey.core.certificates import serial_hex
from hearthkey.core.errors import Bug, Refused
from hearthkey.core.revocation import UNSAID, ListPlan, Reason
from hearthkey.pki import mint, read
from hearthkey.pki.keys import AuthorityKey

LONGEST = 16 * 1024 * 1024
"""Bytes. Ten thousand entries take about half a megabyte."""

_REASONS = {reason.value: x509.CRLReason(x509.ReasonFlags(reason.rfc_name)) for reason in Reason} | {
    2: x509.CRLReason(x509.ReasonFlags.ca_compromise),
    9: x509.CRLReason(x509.ReasonFlags.privilege_withdrawn),
    10: x509.CRLReason(x509.ReasonFlags.aa_compromise),
}
"""By their numbers in RFC 5280 section 5.3.1; the last three stand only on lists that were taken over."""


@dataclass(frozen=True)
class ListedEntry:
    """One entry of a list as it was read.

    Args:
        serial: hex, lower case.
        since: revocationDate, UTC.
        reason: the RFC 5280 section 5.3.1 name ("keyCompromise"), None where none is given.
    """

    serial: str
    since: datetime
    reason: str | None


@dataclass(frozen=True)
class ListFacts:
    """What a revocation list says.

    Args:
        issuer: RFC 4514 text.
        number: CRLNumber, None where the list has none.
        this_update, next_update: UTC; the second None where the list names none.
        entries: in the order of the list.
        fingerprint: SHA-256 of the DER, hex.
    """

    issuer: str
    number: int | None
    this_update: datetime
    next_update: datetime | None
    entries: tuple[ListedEntry, ...]
    fingerprint: str


def sign_list(plan: ListPlan, authority_der: bytes, key: AuthorityKey) -> bytes:
    """Sign a revocation list, DER: version 2, AKI, CRLNumber, no empty list of entries.

    Raises:
        Bug: authority-mismatch, list-dates-crossed.
        Refused: certificate-unreadable.
    """
    authority = read.load(authority_der)
    mint.check_authority(authority, key)
    if plan.next_update <= plan.this_update:
        raise Bug("list-dates-crossed", this_update=f"{plan.this_update}", next_update=f"{plan.next_update}")
    reasons: dict[int, list[x509.Extension[x509.ExtensionType]]] = {
        reason: [x509.Extension(CRLEntryExtensionOID.CRL_REASON, critical=False, value=value)]
        for reason, value in _REASONS.items()
    }
    reasons[UNSAID] = []
    # All at once through the constructors: adding one by one copies the list each time, which makes
    # ten thousand entries a matter of seconds.
    entries = [
        x509.RevokedCertificateBuilder(int(entry.serial, 16), _naive(entry.since), reasons[entry.written]).build()
        for entry in plan.entries
    ]
    builder = (
        x509.CertificateRevocationListBuilder(revoked_certificates=entries)
        .issuer_name(authority.subject)
        .last_update(plan.this_update)
        .next_update(plan.next_update)
        .add_extension(mint.authority_identifier(authority), critical=False)
        .add_extension(x509.CRLNumber(plan.number), critical=False)
    )
    return builder.sign(key.signer(), key.hash()).public_bytes(Encoding.DER)


def load(revocation_list: bytes) -> x509.CertificateRevocationList:
    """Parse DER.

    Raises:
        Refused: list-unreadable.
    """
    if len(revocation_list) > LONGEST:
        raise Refused("list-unreadable", length=len(revocation_list))
    try:
        return x509.load_der_x509_crl(revocation_list)
    except (ValueError, x509.InvalidVersion):
        raise Refused("list-unreadable", length=len(revocation_list)) from None


def read_list(revocation_list: bytes) -> ListFacts:
    """Read a list back. Its signature is `judge.check_list`'s matter.

    Raises:
        Refused: list-unreadable.
    """
    found = load(revocation_list)
    try:
        return ListFacts(
            issuer=found.issuer.rfc4514_string(),
            number=_number(found),
            this_update=found.last_update_utc,
            next_update=found.next_update_utc,
            entries=tuple(_entry(one) for one in found),
            fingerprint=found.fingerprint(hashes.SHA256()).hex(),
        )
    except (ValueError, x509.DuplicateExtension):
        raise Refused("list-unreadable", length=len(revocation_list)) from None


def _number(found: x509.CertificateRevocationList) -> int | None:
    try:
        return found.extensions.get_extension_for_class(x509.CRLNumber).value.crl_number
    except x509.ExtensionNotFound:
        return None


def _entry(revoked: x509.RevokedCertificate) -> ListedEntry:
    try:
        reason = revoked.extensions.get_extension_for_class(x509.CRLReason).value.reason.value
    except x509.ExtensionNotFound:
        reason = None
    return ListedEntry(serial_hex(revoked.serial_number), revoked.revocation_date_utc, reason)


def _naive(moment: datetime) -> datetime:
    """What the entry builder stores: UTC without a zone."""
    return moment.astimezone(UTC).replace(tzinfo=None)
