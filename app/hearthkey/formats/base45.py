"""Bytes as text that QR codes store densely: base45 of RFC 9285."""

from __future__ import annotations

from hearthkey.core.errors import Refused

ALPHABET = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:"
"""RFC 9285 table 1, which is the alphanumeric set of ISO/IEC 18004. It contains a space, so never trim."""

_VALUE = {character: value for value, character in enumerate(ALPHABET)}


def encode(data: bytes) -> str:
    """Write two octets as three characters, a last single one as two (RFC 9285 section 4)."""
    written: list[str] = []
    for start in range(0, len(data) - 1, 2):
        high, low = divmod(data[start] * 256 + data[start + 1], 45 * 45)
        written += (ALPHABET[low % 45], ALPHABET[low // 45], ALPHABET[high])
    if len(data) % 2:
        written += (ALPHABET[data[-1] % 45], ALPHABET[data[-1] // 45])
    return "".join(written)


def decode(text: str) -> bytes:
    """Read base45 strictly: no other character, no left-over character, no value too large for its octets.

    Raises:
        Refused: codes-damaged, with empty `frames`, for nothing is known of frames here.
    """
    try:
        values = [_VALUE[character] for character in text]
    except KeyError:
        raise Refused("codes-damaged", frames=()) from None
    data = bytearray()
    for start in range(0, len(values), 3):
        group = values[start : start + 3]
        number = sum(value * 45**place for place, value in enumerate(group))
        octets = len(group) - 1
        if octets == 0 or number >= 256**octets:
            raise Refused("codes-damaged", frames=())
        data += number.to_bytes(octets, "big")
    return bytes(data)
