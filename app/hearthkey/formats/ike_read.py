"""Reads what answers on the gateway's ports; whatever anybody sends, it ends in a message or in one refusal."""

from __future__ import annotations

from collections.abc import Iterator

from hearthkey.core.errors import Refused
from hearthkey.formats.ike_values import (
    CertRequestPayload,
    KePayload,
    Message,
    NoncePayload,
    NotifyPayload,
    OtherPayload,
    Payload,
    PayloadKind,
    SaPayload,
    WireProposal,
    WireTransform,
)

_HEADER = 28
"""Octets (RFC 7296 section 3.1)."""
_MOST_PAYLOADS = 64
"""No honest first answer has a quarter of it."""
_RESPONSE, _INITIATOR = 0x20, 0x08
_MARK = 20
"""Octets of SHA-1, which stands for each CA (RFC 7296 section 3.7)."""
_KEY_LENGTH = 0x800E


def read(data: bytes) -> Message:
    """Read one message, without the marker of port 4500.

    Raises:
        Refused: ike-malformed, with `what` saying where it stopped making sense.
    """
    if len(data) < _HEADER:
        raise _odd("the header")
    length = int.from_bytes(data[24:28], "big")
    if length != len(data):
        raise _odd("the length")
    major = data[17] >> 4
    if not major or data[18] == 0:
        raise _odd("the version")
    return Message(
        initiator=data[:8],
        responder=data[8:16],
        exchange=data[18],
        response=bool(data[19] & _RESPONSE),
        from_initiator=bool(data[19] & _INITIATOR),
        number=int.from_bytes(data[20:24], "big"),
        payloads=tuple(_payloads(data[16], data[_HEADER:])),
        major=major,
    )


def _payloads(kind: int, rest: bytes) -> Iterator[Payload]:
    """The chain: each payload names the kind of the next (RFC 7296 section 3.2)."""
    for _ in range(_MOST_PAYLOADS):
        if kind == PayloadKind.END:
            if rest:
                raise _odd("what follows the last payload")
            return
        length = int.from_bytes(rest[2:4], "big")
        if len(rest) < 4 or not 4 <= length <= len(rest):
            raise _odd("a payload’s length")
        yield _payload(kind, rest[4:length], critical=bool(rest[1] & 0x80))
        kind, rest = rest[0], rest[length:]
    raise _odd("the number of payloads")


def _payload(kind: int, body: bytes, *, critical: bool) -> Payload:
    if kind == PayloadKind.SA:
        return SaPayload(tuple(_proposals(body)))
    if kind == PayloadKind.KE:
        if len(body) < 5:
            raise _odd("the key exchange")
        return KePayload(int.from_bytes(body[:2], "big"), body[4:])
    if kind == PayloadKind.NONCE:
        if not 16 <= len(body) <= 256:
            raise _odd("the nonce")
        return NoncePayload(body)
    if kind == PayloadKind.NOTIFY:
        return _notify(body)
    if kind == PayloadKind.CERTREQ:
        return _cert_request(body)
    return OtherPayload(kind, critical)


def _notify(body: bytes) -> NotifyPayload:
    """RFC 7296 section 3.10."""
    if len(body) < 4 or len(body) < 4 + body[1]:
        raise _odd("a notification")
    end = 4 + body[1]
    return NotifyPayload(int.from_bytes(body[2:4], "big"), body[end:], body[0], body[4:end])


def _cert_request(body: bytes) -> CertRequestPayload:
    """RFC 7296 section 3.7; other encodings than 4 (X.509) have other contents, so nothing is read from them."""
    if not body:
        raise _odd("the certificate request")
    if body[0] != 4:
        return CertRequestPayload(body[0], ())
    marks = body[1:]
    if len(marks) % _MARK:
        raise _odd("the certificate request")
    return CertRequestPayload(4, tuple(marks[at : at + _MARK] for at in range(0, len(marks), _MARK)))


def _proposals(body: bytes) -> Iterator[WireProposal]:
    """RFC 7296 section 3.3.1; which is the last is told by a length that is used up, and by an octet that agrees."""
    while body:
        length = int.from_bytes(body[2:4], "big")
        if len(body) < 8 or not 8 <= length <= len(body) or body[0] != (2 if length < len(body) else 0):
            raise _odd("a proposal")
        number, protocol, spi_length, count = body[4:8]
        if 8 + spi_length > length:
            raise _odd("a proposal’s SPI")
        transforms = tuple(_transforms(body[8 + spi_length : length]))
        if len(transforms) != count:
            raise _odd("the number of transforms")
        yield WireProposal(number, protocol, body[8 : 8 + spi_length], transforms)
        body = body[length:]


def _transforms(body: bytes) -> Iterator[WireTransform]:
    """RFC 7296 section 3.3.2."""
    while body:
        length = int.from_bytes(body[2:4], "big")
        if len(body) < 8 or not 8 <= length <= len(body) or body[0] != (3 if length < len(body) else 0):
            raise _odd("a transform")
        yield WireTransform(body[4], int.from_bytes(body[6:8], "big"), _bits(body[8:length]))
        body = body[length:]


def _bits(attributes: bytes) -> int:
    """The Key Length among the attributes, which are short or long ones (RFC 7296 section 3.3.5)."""
    found = 0
    while attributes:
        if len(attributes) < 4:
            raise _odd("an attribute")
        kind, value = int.from_bytes(attributes[:2], "big"), int.from_bytes(attributes[2:4], "big")
        length = 4 if kind & 0x8000 else 4 + value
        if length > len(attributes):
            raise _odd("an attribute")
        if kind == _KEY_LENGTH:
            found = value
        attributes = attributes[length:]
    return found


def _odd(what: str) -> Refused:
    return Refused("ike-malformed", what=what)
