"""What lies in a folder of a household that was made by hand, as values: certificates, keys, lists, counters."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import datetime
from enum import StrEnum

SERVER_USE, CLIENT_USE, IKE_USE = "1.3.6.1.5.5.7.3.1", "1.3.6.1.5.5.7.3.2", "1.3.6.1.5.5.7.3.17"
"""serverAuth and clientAuth (RFC 5280 section 4.2.1.12), id-kp-ipsecIKE (RFC 4945 section 5.1.3.12)."""
ANY_USE = "2.5.29.37.0"

HIGHEST_SERIAL = (1 << 159) - 1
"""RFC 5280 section 4.1.2.2: positive, and at most 20 octets."""


class Grave(StrEnum):
    """How grave a finding is, the gravest first."""

    STOPS = "stops"
    BREAKS = "breaks"
    WEAK = "weak"
    NOTE = "note"


@dataclass(frozen=True)
class Finding:
    """One thing that the householder should know.

    Args:
        code: names its sentences in `core.sentences.found`.
        file: where it was found, within the folder; empty where it is about all of it.
        grave: see `Grave`.
        clause: document and section.
        facts: for the sentences.
    """

    code: str
    file: str
    grave: Grave
    clause: str
    facts: Mapping[str, object] = field(default_factory=dict)


@dataclass(frozen=True)
class FoundCertificate:
    """A certificate as it lies there; nothing in it is believed yet.

    Args:
        file: within the folder.
        der: as it stands.
        fingerprint: SHA-256 of the DER, hex.
        public: SHA-256 of the SubjectPublicKeyInfo, hex; a key that belongs to it has the same.
        subject, issuer: RFC 4514 text.
        subject_der, issuer_der: as they stand, for comparing.
        common_name: of the subject, empty where there is none.
        serial: may be negative or zero.
        names: "dns:…", "ip:…", "email:…", "other:…".
        personal: whether an attribute or a name that is meant for a person stands in it.
        usages: extended key usages, dotted; None where the extension is absent.
        key_type: "P-384", "RSA-2048", or what else it is.
        bits: of an RSA key, else 0.
        hash_name: of its signature, lower case; empty where the signature has none.
        not_before, not_after: UTC.
        is_authority: basicConstraints cA.
        path_length: None where none is set.
        signs_certificates, signs_lists, signs: what keyUsage allows; all of it where the extension is absent.
        has_identifier, has_authority_identifier: subject and authority key identifier.
    """

    file: str
    der: bytes
    fingerprint: str
    public: str
    subject: str
    issuer: str
    subject_der: bytes
    issuer_der: bytes
    common_name: str
    serial: int
    names: tuple[str, ...]
    personal: bool
    usages: tuple[str, ...] | None
    key_type: str
    bits: int
    hash_name: str
    not_before: datetime
    not_after: datetime
    is_authority: bool
    path_length: int | None
    signs_certificates: bool
    signs_lists: bool
    signs: bool
    has_identifier: bool
    has_authority_identifier: bool

    @property
    def is_top(self) -> bool:
        """Whether it names itself as its issuer."""
        return self.subject_der == self.issuer_der

    @property
    def listable(self) -> bool:
        """Whether its serial can stand on a list (RFC 5280 section 4.1.2.2)."""
        return 0 < self.serial <= HIGHEST_SERIAL

    def meant_for(self, *uses: str) -> bool:
        """Whether it may be used for one of these; without the extension, for all."""
        return self.usages is None or ANY_USE in self.usages or any(use in self.usages for use in uses)


class KeyLock(StrEnum):
    """How a private key lies there."""

    OPEN = "open"
    PKCS8 = "pkcs8"
    TRADITIONAL = "traditional"
    CONTAINER = "container"


@dataclass(frozen=True)
class FoundKey:
    """A private key.

    Args:
        file: within the folder.
        lock: how it lies there.
        public: SHA-256 of its SubjectPublicKeyInfo, hex; None while it is locked.
        key_type: as of a certificate; empty while it is locked.
    """

    file: str
    lock: KeyLock
    public: str | None
    key_type: str = ""


@dataclass(frozen=True)
class FoundEntry:
    """A withdrawn serial, by a list or by the database.

    Args:
        serial: may be what no list of ours could say.
        since: UTC; None where nothing is said.
        reason: the number of RFC 5280 section 5.3.1; None where none is given.
        not_after: end of the certificate, where it is known.
    """

    serial: int
    since: datetime | None
    reason: int | None
    not_after: datetime | None = None


@dataclass(frozen=True)
class FoundList:
    """A revocation list.

    Args:
        file: within the folder.
        der: as it stands.
        issuer_der: as it stands.
        number: CRLNumber, None where it has none.
        this_update, next_update: UTC; the second None where none is named.
        entries: in its order.
        is_partial: whether it is about changes or a part only (delta, or a distribution point that narrows it).
        hash_name: of its signature.
    """

    file: str
    der: bytes
    issuer_der: bytes
    number: int | None
    this_update: datetime
    next_update: datetime | None
    entries: tuple[FoundEntry, ...]
    is_partial: bool
    hash_name: str


@dataclass(frozen=True)
class Row:
    """A row of the database of issued certificates.

    Args:
        serial: of the certificate.
        ends: UTC.
        withdrawn: where it says so, else None.
        subject: as it stands.
    """

    serial: int
    ends: datetime
    withdrawn: FoundEntry | None
    subject: str


@dataclass(frozen=True)
class FoundDatabase:
    """The database of issued certificates.

    Args:
        file: within the folder.
        rows: in its order.
        unread: numbers of lines that are not understood, from 1.
    """

    file: str
    rows: tuple[Row, ...]
    unread: tuple[int, ...]


@dataclass(frozen=True)
class FoundCounter:
    """The next number, as a counter file has it.

    Args:
        file: within the folder.
        of_lists: whether it counts lists, and not certificates.
        following: the number that comes next.
    """

    file: str
    of_lists: bool
    following: int


@dataclass(frozen=True)
class FoundFolder:
    """All that was found.

    Args:
        files: how many files were read.
        findings: what was noticed while reading.
        unrelated: names of files that are none of all this.
    """

    files: int = 0
    certificates: tuple[FoundCertificate, ...] = ()
    keys: tuple[FoundKey, ...] = ()
    lists: tuple[FoundList, ...] = ()
    databases: tuple[FoundDatabase, ...] = ()
    counters: tuple[FoundCounter, ...] = ()
    findings: tuple[Finding, ...] = ()
    unrelated: tuple[str, ...] = ()

    @property
    def locked(self) -> bool:
        """Whether a key was found that is still locked."""
        return any(one.public is None for one in self.keys)

    def keys_of(self, certificate: FoundCertificate) -> tuple[FoundKey, ...]:
        """The opened keys that belong to a certificate."""
        return tuple(one for one in self.keys if one.public == certificate.public)
