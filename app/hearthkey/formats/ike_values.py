"""What a message of IKE_SA_INIT says, as values (RFC 7296 sections 3.1 to 3.12)."""

from __future__ import annotations

from dataclasses import dataclass
from enum import IntEnum

from hearthkey.core.proposals import Proposal

SPI_LENGTH = 8
"""Octets of an IKE SPI (RFC 7296 section 3.1)."""
NO_SPI = bytes(SPI_LENGTH)
"""The responder's SPI before it has chosen one."""
MAJOR = 2
"""Version of the protocol."""
IKE_SA_INIT = 34
"""Exchange type (RFC 7296 section 3.1)."""


class PayloadKind(IntEnum):
    """Payload types that are read here (RFC 7296 section 3.2)."""

    END = 0
    SA = 33
    KE = 34
    CERTREQ = 38
    NONCE = 40
    NOTIFY = 41


class Said(IntEnum):
    """Notify message types (RFC 7296 section 3.10.1; RFC 7383 section 2.3; RFC 7427 section 4)."""

    UNSUPPORTED_CRITICAL_PAYLOAD = 1
    INVALID_MAJOR_VERSION = 5
    INVALID_SYNTAX = 7
    NO_PROPOSAL_CHOSEN = 14
    INVALID_KE_PAYLOAD = 17
    NAT_DETECTION_SOURCE_IP = 16388
    NAT_DETECTION_DESTINATION_IP = 16389
    COOKIE = 16390
    IKEV2_FRAGMENTATION_SUPPORTED = 16430
    SIGNATURE_HASH_ALGORITHMS = 16431


@dataclass(frozen=True)
class WireTransform:
    """One transform by its numbers.

    Args:
        kind: transform type.
        number: transform ID.
        bits: Key Length attribute, or 0 without one.
    """

    kind: int
    number: int
    bits: int = 0


@dataclass(frozen=True)
class WireProposal:
    """One proposal of an SA payload (RFC 7296 section 3.3.1).

    Args:
        number: counts from 1.
        protocol: 1 for IKE.
        spi: empty in the first exchange.
        transforms: in order.
    """

    number: int
    protocol: int
    spi: bytes
    transforms: tuple[WireTransform, ...]


@dataclass(frozen=True)
class SaPayload:
    """Security Association (section 3.3)."""

    proposals: tuple[WireProposal, ...]


@dataclass(frozen=True)
class KePayload:
    """Key Exchange (section 3.4): a public value, and the method that it is of."""

    group: int
    data: bytes


@dataclass(frozen=True)
class NoncePayload:
    """Nonce (section 3.9): 16 to 256 octets."""

    data: bytes


@dataclass(frozen=True)
class NotifyPayload:
    """Notify (section 3.10).

    Args:
        kind: see `Said`; other numbers are kept as they are.
        data: what goes with it.
        protocol, spi: of the SA it is about; 0 and empty in the first exchange.
    """

    kind: int
    data: bytes = b""
    protocol: int = 0
    spi: bytes = b""


@dataclass(frozen=True)
class CertRequestPayload:
    """Certificate Request (section 3.7).

    Args:
        encoding: 4 for X.509 signature certificates.
        authorities: of each CA that is trusted, SHA-1 of its SubjectPublicKeyInfo.
    """

    encoding: int
    authorities: tuple[bytes, ...]


@dataclass(frozen=True)
class OtherPayload:
    """A payload that nothing is read from: a vendor's mark, or one of a kind unknown here.

    Args:
        kind: payload type.
        critical: whether a message with it has to be refused by whoever does not know it (section 2.5).
    """

    kind: int
    critical: bool


Payload = SaPayload | KePayload | NoncePayload | NotifyPayload | CertRequestPayload | OtherPayload


@dataclass(frozen=True)
class Message:
    """One message.

    Args:
        initiator, responder: SPIs, 8 octets each.
        exchange: its type.
        response: whether it answers.
        from_initiator: whether whoever began the SA sent it.
        number: message ID.
        payloads: in order.
        major: version of the protocol.
    """

    initiator: bytes
    responder: bytes
    exchange: int
    response: bool
    from_initiator: bool
    number: int
    payloads: tuple[Payload, ...]
    major: int = MAJOR

    @property
    def notes(self) -> dict[int, bytes]:
        """What it notifies of: the data of each kind, the first of several."""
        found: dict[int, bytes] = {}
        for one in self.payloads:
            if isinstance(one, NotifyPayload):
                found.setdefault(one.kind, one.data)
        return found

    @property
    def chosen(self) -> WireProposal | None:
        """The proposal that its SA payload names first, or None without one."""
        return next((one.proposals[0] for one in self.payloads if isinstance(one, SaPayload) and one.proposals), None)

    @property
    def authorities(self) -> tuple[bytes, ...] | None:
        """The CAs that are asked for, or None where nothing was said of any."""
        found = [one for one in self.payloads if isinstance(one, CertRequestPayload)]
        return tuple(mark for one in found for mark in one.authorities) if found else None


def wired(number: int, proposal: Proposal) -> WireProposal:
    """A proposal of the household as it is sent."""
    transforms = tuple(WireTransform(one.kind, one.number, one.bits) for one in proposal.transforms)
    return WireProposal(number, proposal.protocol, b"", transforms)
