"""Named Diffie-Hellman groups as files, worked out from the formulas of RFC 7919 and RFC 3526.

So nobody waits while a small board looks for a prime of its own, and nobody has to trust one that came from elsewhere.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from hearthkey.core.errors import Refused
from hearthkey.formats import pem

LABEL = "DH PARAMETERS"
"""PEM label of a DHParameter of PKCS #3; no RFC registers it, OpenSSL's dhparam(1) writes and reads it."""

GENERATOR = 2
"""RFC 7919 appendix A; RFC 3526 sections 3 to 7."""

_GUARD_BITS = 64
"""More than the logarithm of the number of terms, each of which is rounded down by less than one."""


@dataclass(frozen=True)
class Group:
    """One group: its prime is 2^bits - 2^(bits-64) + (floor(2^(bits-130) * c) + offset) * 2^64 - 1.

    Args:
        name: as its RFC calls it, in lower case.
        bits: length of the prime.
        constant: ``e`` (RFC 7919) or ``pi`` (RFC 3526).
        offset: the least that makes p and (p-1)/2 prime.
        source: document and clause.
    """

    name: str
    bits: int
    constant: str
    offset: int
    source: str


_ALL = (
    Group("ffdhe2048", 2048, "e", 560316, "RFC 7919 appendix A.1"),
    Group("ffdhe3072", 3072, "e", 2625351, "RFC 7919 appendix A.2"),
    Group("ffdhe4096", 4096, "e", 5736041, "RFC 7919 appendix A.3"),
    Group("ffdhe6144", 6144, "e", 15705020, "RFC 7919 appendix A.4"),
    Group("ffdhe8192", 8192, "e", 10965728, "RFC 7919 appendix A.5"),
    Group("modp2048", 2048, "pi", 124476, "RFC 3526 section 3, group 14"),
    Group("modp3072", 3072, "pi", 1690314, "RFC 3526 section 4, group 15"),
    Group("modp4096", 4096, "pi", 240904, "RFC 3526 section 5, group 16"),
    Group("modp6144", 6144, "pi", 929484, "RFC 3526 section 6, group 17"),
    Group("modp8192", 8192, "pi", 4743158, "RFC 3526 section 7, group 18"),
)
GROUPS = {one.name: one for one in _ALL}


def named(name: str) -> Group:
    """Look a group up.

    Raises:
        Refused: dh-group-unknown.
    """
    try:
        return GROUPS[name]
    except KeyError:
        raise Refused("dh-group-unknown", text=name[:40], known=tuple(GROUPS)) from None


def prime(group: Group) -> int:
    """The group's prime, by whole numbers alone."""
    power = group.bits - 130
    constant = _CONSTANTS[group.constant](power + _GUARD_BITS) >> _GUARD_BITS
    return (1 << group.bits) - (1 << (group.bits - 64)) + ((constant + group.offset) << 64) - 1


def parameters(group: Group) -> str:
    """The group as PEM: DHParameter ::= SEQUENCE { prime INTEGER, base INTEGER } (PKCS #3 section 9)."""
    body = _integer(prime(group)) + _integer(GENERATOR)
    return pem.encode(LABEL, b"\x30" + _length(len(body)) + body)


def _e(bits: int) -> int:
    """Euler's number times 2^bits, less than 2^16 too small: the sum of 1/n!, each term rounded down."""
    term, total, n = 1 << bits, 0, 0
    while term:
        total += term
        n += 1
        term //= n
    return total


def _pi(bits: int) -> int:
    """The number pi times 2^bits, off by less than 2^16: Machin's formula, pi/4 = 4 arctan(1/5) - arctan(1/239)."""
    return 4 * (4 * _arctan_of_inverse(5, bits) - _arctan_of_inverse(239, bits))


def _arctan_of_inverse(x: int, bits: int) -> int:
    """arctan(1/x) * 2^bits by its power series, each term rounded down."""
    power, total, n, sign = (1 << bits) // x, 0, 1, 1
    while power:
        total += sign * (power // n)
        power //= x * x
        n += 2
        sign = -sign
    return total


_CONSTANTS: dict[str, Callable[[int], int]] = {"e": _e, "pi": _pi}


def _integer(number: int) -> bytes:
    """A positive INTEGER in DER (X.690 section 8.3): a leading zero octet where the first bit is set."""
    content = number.to_bytes(number.bit_length() // 8 + 1, "big")
    return b"\x02" + _length(len(content)) + content


def _length(count: int) -> bytes:
    """A length in DER (X.690 section 10.1)."""
    if count < 128:
        return bytes([count])
    octets = count.to_bytes((count.bit_length() + 7) // 8, "big")
    return bytes([0x80 | len(octets)]) + octets
