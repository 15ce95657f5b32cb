"""A bundle: a pass with the connection settings, everything inline."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from enum import StrEnum

from hearthkey.core.secret import Secret


class Form(StrEnum):
    """The ways a bundle can be written down."""

    BUNDLE = "bundle"
    PKCS12 = "pkcs12"
    ARCHIVE = "archive"
    CODES = "codes"
    PROFILE = "profile"
    SCRIPT = "script"
    PEM = "pem"


@dataclass(frozen=True)
class Settings:
    """Everything about the connection that is not a secret and not a certificate.

    Args:
        household: its certified name.
        authority_fingerprint: SHA-256 of the CA certificate, hex.
        device: as people read it, "Ines's phone".
        kind: name of the device kind.
        identity: the device's IKE ID (ID_FQDN, RFC 7296 section 3.5).
        serial: hex.
        not_before, ends: UTC.
        key_set: name of the key set.
        gateway_host: where to connect to; also the gateway's IKE ID.
        home_subnets, tunnel_subnet: in prefix notation.
        dns_servers: addresses.
        tunnel: ``split`` or ``full``.
        ike, esp: transforms by IANA name.
        key_exchange: IKEv2 key exchange method number.
    """

    household: str
    authority_fingerprint: str
    device: str
    kind: str
    identity: str
    serial: str
    not_before: datetime
    ends: datetime
    key_set: str
    gateway_host: str
    home_subnets: tuple[str, ...]
    tunnel_subnet: str
    dns_servers: tuple[str, ...]
    tunnel: str
    ike: tuple[str, ...]
    esp: tuple[str, ...]
    key_exchange: int


@dataclass(frozen=True)
class Bundle:
    """The one value that every form is written from.

    Args:
        settings: the connection.
        key: the device's private key, unencrypted PKCS#8 DER; only ever in memory.
        certificate: DER.
        authorities: CA certificates to trust, DER; more than one only while one CA follows another.
        passphrase: what every form is under.
        container: PKCS#12 container that the device's importer reads.
    """

    settings: Settings
    key: Secret[bytes]
    certificate: bytes
    authorities: tuple[bytes, ...]
    passphrase: Secret[str]
    container: str


@dataclass(frozen=True)
class InlineBundle:
    """What a bundle file says, read back: the key is still encrypted.

    Args:
        settings: the connection.
        encrypted_key: PKCS#8 EncryptedPrivateKeyInfo, DER.
        certificate: DER.
        authorities: DER.
    """

    settings: Settings
    encrypted_key: bytes
    certificate: bytes
    authorities: tuple[bytes, ...]


@dataclass(frozen=True)
class Credential:
    """A key with its certificate and what it trusts, opened from any form.

    Args:
        key: unencrypted PKCS#8 DER.
        certificate: DER.
        authorities: DER.
    """

    key: Secret[bytes]
    certificate: bytes
    authorities: tuple[bytes, ...]
