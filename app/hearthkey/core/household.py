"""The household, its people, their devices and its gateway, as values."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime

from hearthkey.core.network import Subnet
from hearthkey.core.phrases import Phrase

KEYRING, FILE = "keyring", "file"
"""Where a household keeps its secrets."""

PRACTICE_MARK = " (practice)"
"""Stands behind the household name in every certificate of a practice household."""


@dataclass(frozen=True)
class Household:
    """What the householder decided on the first evening.

    Args:
        name: what the family calls the place.
        gateway_host: the name (A-labels) or address that devices reach from outside.
        identity_suffix: what every device identity ends in.
        home_subnets: what devices reach through the tunnel.
        tunnel_subnet: where devices get their inner addresses from.
        dns_servers: asked inside the tunnel; may be empty.
        tunnel: ``split`` or ``full``.
        practice: watermarked, and never delivered to a gateway.
    """

    name: str
    gateway_host: str
    identity_suffix: str
    home_subnets: tuple[Subnet, ...]
    tunnel_subnet: Subnet
    dns_servers: tuple[str, ...]
    tunnel: str
    practice: bool = False

    @property
    def certified_name(self) -> str:
        """The name as it stands in certificates."""
        return self.name + PRACTICE_MARK if self.practice else self.name


@dataclass(frozen=True)
class Authority:
    """The household's CA, as the register knows it: the certificate, never the key.

    Args:
        certificate: DER.
        fingerprint: SHA-256 of the certificate's DER, lower-case hex.
        not_after: end of the CA, UTC.
        key_place: ``keyring`` or ``file``, where the encrypted key text lies.
        first: fingerprint of the household's first CA, where this is a later one; else empty.
    """

    certificate: bytes
    fingerprint: str
    not_after: datetime
    key_place: str
    first: str = ""

    @property
    def short(self) -> str:
        """16 hex digits that name this household's secrets in the keyring, whichever CA is in charge."""
        return (self.first or self.fingerprint)[:16]


@dataclass(frozen=True)
class Gateway:
    """The gateway's credential as the register keeps it.

    Args:
        host: as certified.
        serial: hex, lower case.
        certificate: DER.
        sealed_key: PKCS#8 encrypted under a 256-bit random secret that the keyring holds; DER.
        not_after: UTC.
    """

    host: str
    serial: str
    certificate: bytes
    sealed_key: bytes
    not_after: datetime


@dataclass(frozen=True)
class FormerHost:
    """A name or address that the gateway was reached under, and still answers to for devices that know no other.

    Args:
        host: A-labels or an address.
        since: when another one took its place, UTC; who got a bundle after that knows the new one.
    """

    host: str
    since: datetime


def possessive(person: str, device: str) -> Phrase:
    """Say whose device it is, as every sentence and friendly name does: "Ines’s phone"."""
    return Phrase("{person}’s {device}", {"person": person, "device": device})
