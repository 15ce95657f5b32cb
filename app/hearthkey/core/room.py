"""How much room a packet has inside the tunnel: inner MTU and TCP MSS from an outer MTU."""

from __future__ import annotations

from hearthkey.core.errors import Refused

LOWEST_OUTER, HIGHEST_OUTER = 1280, 65535
"""Octets. Every link that carries IPv6 takes 1280 (RFC 8200 section 5); IP itself counts to 65,535."""

IPV6_LOWEST = 1280
"""Octets. With an inner MTU below it, IPv6 inside the tunnel needs packets that are cut up outside."""

_OUTER = {4: 20, 6: 40}
"""Octets of the outer IP header without options (RFC 791 section 3.1, RFC 8200 section 3)."""
_UDP = 8
"""RFC 3948 section 2.1."""
_SPI_AND_SEQUENCE = 8
"""RFC 4303 section 2."""
_TRAILER = 2
"""Pad Length and Next Header (RFC 4303 section 2)."""

_CIPHERS = {"ENCR_AES_GCM_16": (8, 4, 16), "ENCR_CHACHA20_POLY1305": (8, 4, 16), "ENCR_AES_CBC": (16, 16, 0)}
"""Octets of IV, block that payload and trailer fill, and own check value.

RFC 4106 sections 3 to 6, RFC 7634 section 2, RFC 3602 sections 2.4 and 3; RFC 4303 section 2.4 pads to 4 at least.
"""
_CHECK_VALUES = {"AUTH_HMAC_SHA2_256_128": 16, "AUTH_HMAC_SHA2_384_192": 24, "AUTH_HMAC_SHA2_512_256": 32}
"""RFC 4868 section 2.6."""

_TCP_AND_IP = {4: 40, 6: 60}
"""Fixed headers of TCP and IP, which an MSS leaves out (RFC 9293 section 3.7.1)."""


def inner_mtu(outer: int, *, family: int, nat: bool, encr: str, integ: str = "") -> int:
    """The longest packet that fits into one packet of ESP in tunnel mode, in octets.

    Args:
        outer: MTU of the way between device and gateway, octets.
        family: outer IP version, 4 or 6.
        nat: whether ESP travels in UDP (RFC 3948), as it does behind a NAT.
        encr: name of the encryption transform, without key length.
        integ: name of the integrity transform; empty where encryption does both.

    Raises:
        Refused: outer-mtu-odd, transform-unmeasured.
    """
    if not LOWEST_OUTER <= outer <= HIGHEST_OUTER:
        raise Refused("outer-mtu-odd", number=outer, lowest=LOWEST_OUTER, highest=HIGHEST_OUTER)
    if encr not in _CIPHERS or (integ and integ not in _CHECK_VALUES):
        raise Refused("transform-unmeasured", text=encr if encr not in _CIPHERS else integ)
    iv, block, own_check = _CIPHERS[encr]
    check = own_check + _CHECK_VALUES.get(integ, 0)
    left = outer - _OUTER[family] - _UDP * nat - _SPI_AND_SEQUENCE - iv - check
    return left // block * block - _TRAILER


def mss(inner: int, family: int) -> int:
    """The largest TCP segment for an inner MTU: without the fixed headers of TCP and IP (RFC 9293 section 3.7.1)."""
    return inner - _TCP_AND_IP[family]
