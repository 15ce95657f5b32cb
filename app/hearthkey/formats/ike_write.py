"""Writes the messages that ask a gateway whether it is there: IKE_SA_INIT (RFC 7296 section 3)."""

from __future__ import annotations

import hashlib
import ipaddress
from collections.abc import Iterable

from hearthkey.formats.ike_values import (
    KePayload,
    Message,
    NoncePayload,
    NotifyPayload,
    PayloadKind,
    SaPayload,
    WireProposal,
    WireTransform,
)

NON_ESP_MARKER = bytes(4)
"""What stands before IKE on port 4500, where ESP has its SPI (RFC 3948 section 2.2)."""
_KEY_LENGTH = 14
"""Attribute type; its format bit says that the value is two octets long (RFC 7296 section 3.3.5)."""
_SHORT = 0x8000
_INITIATOR, _RESPONSE = 0x08, 0x20
"""Flags (RFC 7296 section 3.1)."""

Written = SaPayload | KePayload | NoncePayload | NotifyPayload
"""The payloads that a message of ours may have."""


def written(message: Message) -> bytes:
    """A message as octets.

    Its payloads have to be of the kinds in `Written`: nothing else is ever sent from here.
    """
    bodies = [(_kind(one), _body(one)) for one in message.payloads if isinstance(one, Written)]
    kinds = [kind for kind, _ in bodies]
    chain = b"".join(
        bytes((following, 0)) + (len(body) + 4).to_bytes(2, "big") + body
        for (_, body), following in zip(bodies, [*kinds[1:], PayloadKind.END], strict=True)
    )
    flags = (_INITIATOR if message.from_initiator else 0) | (_RESPONSE if message.response else 0)
    return b"".join(
        (
            message.initiator,
            message.responder,
            bytes((kinds[0] if kinds else PayloadKind.END, message.major << 4, message.exchange, flags)),
            message.number.to_bytes(4, "big"),
            (28 + len(chain)).to_bytes(4, "big"),
            chain,
        )
    )


def _kind(payload: Written) -> int:
    if isinstance(payload, SaPayload):
        return PayloadKind.SA
    if isinstance(payload, KePayload):
        return PayloadKind.KE
    return PayloadKind.NONCE if isinstance(payload, NoncePayload) else PayloadKind.NOTIFY


def _body(payload: Written) -> bytes:
    if isinstance(payload, SaPayload):
        last = len(payload.proposals) - 1
        return b"".join(_proposal(one, more=place < last) for place, one in enumerate(payload.proposals))
    if isinstance(payload, KePayload):
        return payload.group.to_bytes(2, "big") + bytes(2) + payload.data
    if isinstance(payload, NoncePayload):
        return payload.data
    return bytes((payload.protocol, len(payload.spi))) + payload.kind.to_bytes(2, "big") + payload.spi + payload.data


def _proposal(one: WireProposal, *, more: bool) -> bytes:
    """RFC 7296 section 3.3.1: 2 where another proposal follows, 0 on the last."""
    last = len(one.transforms) - 1
    inner = one.spi + b"".join(_transform(each, more=place < last) for place, each in enumerate(one.transforms))
    head = bytes((2 if more else 0, 0)) + (8 + len(inner)).to_bytes(2, "big")
    return head + bytes((one.number, one.protocol, len(one.spi), len(one.transforms))) + inner


def _transform(one: WireTransform, *, more: bool) -> bytes:
    """RFC 7296 section 3.3.2: 3 where another transform follows, 0 on the last."""
    attribute = (_SHORT | _KEY_LENGTH).to_bytes(2, "big") + one.bits.to_bytes(2, "big") if one.bits else b""
    head = bytes((3 if more else 0, 0)) + (8 + len(attribute)).to_bytes(2, "big")
    return head + bytes((one.kind, 0)) + one.number.to_bytes(2, "big") + attribute


def address_mark(initiator: bytes, responder: bytes, address: str, port: int) -> bytes:
    """What NAT_DETECTION says of an address and port: SHA-1 over the SPIs and both (RFC 7296 section 2.23)."""
    where = ipaddress.ip_address(address).packed + port.to_bytes(2, "big")
    return hashlib.sha1(initiator + responder + where, usedforsecurity=False).digest()


def hashes_mark(numbers: Iterable[int]) -> bytes:
    """What SIGNATURE_HASH_ALGORITHMS says: two octets for each hash (RFC 7427 section 4)."""
    return b"".join(one.to_bytes(2, "big") for one in numbers)
