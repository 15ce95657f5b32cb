"""Subnets that are met nowhere else: drawn by lot, away from what is common."""

from __future__ import annotations

import hashlib
import ipaddress
import math
from collections.abc import Callable, Iterable
from datetime import UTC, datetime

from hearthkey.core.errors import Refused
from hearthkey.core.network import Subnet
from hearthkey.core.reach.clashes import CommonRange, weigh

_TEN = ipaddress.IPv4Network("10.0.0.0/8")
_DRAWS = 32
_NTP_BEGINS = datetime(1900, 1, 1, tzinfo=UTC)
"""RFC 5905 section 6: timestamps count from here, modulo 2**32 seconds."""
_GLOBAL_ID_BITS = 40
"""RFC 4193 section 3.1."""


def quiet_subnet(taken: Iterable[Subnet], common: Iterable[CommonRange], below: Callable[[int], int]) -> Subnet:
    """Propose a /24 out of 10/8 (RFC 1918 section 3) by lot: of several draws that lie apart, the one least met.

    Args:
        taken: what it has to lie apart from.
        common: what is met away from home.
        below: draws a whole number from 0 to its argument, exclusive.

    Raises:
        Refused: no-quiet-subnet, where what is taken fills 10/8 or so much of it that every draw misses.
    """
    apart = [one for one in taken if isinstance(one, ipaddress.IPv4Network)]
    known = tuple(common)
    drawn = [ipaddress.IPv4Network((int(_TEN[0]) + below(2**16) * 256, 24)) for _ in range(_DRAWS)]
    free = [one for one in drawn if not any(one.overlaps(other) for other in apart)]
    if not free:
        raise Refused("no-quiet-subnet")
    return min(free, key=lambda one: weigh(one, known).score)  # the first of equals: still by lot


def unique_local(at: datetime, identifier: int) -> ipaddress.IPv6Network:
    """Propose a /48 as RFC 4193 section 3.2.2 has it: the low 40 bits of SHA-1 over time and an identifier, behind fd.

    Args:
        at: the time of day, UTC; it goes in as an NTP timestamp of 64 bits.
        identifier: 64 bits; the RFC takes an EUI-64, or whatever is unique to the place.
    """
    since = at.astimezone(UTC) - _NTP_BEGINS
    seconds = since.days * 86_400 + since.seconds
    fraction = (since.microseconds << 32) // 1_000_000
    stamp = (((seconds & 0xFFFFFFFF) << 32) | fraction).to_bytes(8, "big")
    digest = hashlib.sha1(stamp + (identifier & (2**64 - 1)).to_bytes(8, "big"), usedforsecurity=False).digest()
    return ipaddress.IPv6Network((b"\xfd" + digest[-5:] + bytes(10), 48))


def meeting_chance(prefixes: int) -> float:
    """How likely two of so many prefixes that are joined one day are the same (RFC 4193 section 3.2.3)."""
    return -math.expm1(-(prefixes**2) / 2 ** (_GLOBAL_ID_BITS + 1))
