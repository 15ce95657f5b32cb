"""How long packets and TCP segments inside the tunnel may be, for every way that a device may come."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from hearthkey.core.keysets import KEY_SETS, KeySet
from hearthkey.core.proposals import offered
from hearthkey.core.room import IPV6_LOWEST, inner_mtu, mss
from hearthkey.core.transforms import Protocol

OUTER_MTUS = (1500, 1492, 1460, 1400, 1280)
"""Octets: Ethernet; PPPoE (RFC 2516 section 7); IPv4 carried in IPv6 (RFC 2473 section 7: 40 less); common practice on
mobile networks, no source; the least that IPv6 allows (RFC 8200 section 5)."""


@dataclass(frozen=True)
class Cipher:
    """How ESP protects a packet, by the names of its transforms at IANA.

    Args:
        encr: encryption.
        integ: integrity; empty where encryption does both.
    """

    encr: str
    integ: str = ""


@dataclass(frozen=True)
class Packet:
    """The room in one packet; all lengths in octets.

    Args:
        outer: MTU on the way.
        family: IP version outside.
        nat: whether ESP travels in UDP (RFC 3948).
        cipher: how it is protected.
        inner: the longest packet inside.
        mss4, mss6: the largest TCP segment over either IP version inside.
    """

    outer: int
    family: int
    nat: bool
    cipher: Cipher
    inner: int
    mss4: int
    mss6: int

    @property
    def carries_ipv6(self) -> bool:
        """Whether IPv6 inside gets the 1280 octets that it counts on (RFC 8200 section 5)."""
        return self.inner >= IPV6_LOWEST


def ciphers(key_sets: Iterable[KeySet] = tuple(KEY_SETS.values())) -> tuple[Cipher, ...]:
    """How ESP may be protected with these key sets, each way once."""
    found = (one for one in offered(key_sets) if one.protocol is Protocol.ESP)
    return tuple(
        dict.fromkeys(Cipher(one.encryption.name, "" if one.integrity is None else one.integrity.name) for one in found)
    )


def packet(outer: int, *, family: int, nat: bool, cipher: Cipher) -> Packet:
    """Work one way out.

    Raises:
        Refused: outer-mtu-odd, transform-unmeasured.
    """
    inner = inner_mtu(outer, family=family, nat=nat, encr=cipher.encr, integ=cipher.integ)
    return Packet(outer, family, nat, cipher, inner, mss(inner, 4), mss(inner, 6))


def packets(outers: Iterable[int], how: Iterable[Cipher]) -> tuple[Packet, ...]:
    """Every way: each outer MTU, both families, with and without NAT, each cipher.

    Raises:
        Refused: as `packet`.
    """
    chosen = tuple(how)
    return tuple(
        packet(outer, family=family, nat=nat, cipher=cipher)
        for outer in dict.fromkeys(outers)
        for cipher in chosen
        for family in (4, 6)
        for nat in (False, True)
    )
