"""What kind of address something is, as the registries of special addresses tell them apart."""

from __future__ import annotations

import ipaddress
from enum import StrEnum

from hearthkey.core.errors import Refused
from hearthkey.core.names import as_address
from hearthkey.core.network import Subnet

Address = ipaddress.IPv4Address | ipaddress.IPv6Address


class Scope(StrEnum):
    """Where an address counts.

    `MIXED` is a subnet that lies in several of these, or reaches out of one.
    """

    PRIVATE = "private"
    SHARED = "shared"
    UNIQUE_LOCAL = "unique-local"
    LINK_LOCAL = "link-local"
    LOOPBACK = "loopback"
    DOCUMENTATION = "documentation"
    MULTICAST = "multicast"
    RESERVED = "reserved"
    GLOBAL = "global"
    MIXED = "mixed"


# RFC 1918 section 3; RFC 6598 section 7; RFC 4193 section 3.1; RFC 3927 section 2.1 and RFC 4291 section 2.5.6; RFC
# 1122 section 3.2.1.3 and RFC 4291 section 2.5.3; RFC 5737 section 3, RFC 3849 section 2, RFC 9637 (from memory);
# RFC 5771 section 3 and RFC 4291 section 2.7; RFC 6890 (from memory) for what is reserved. The first that holds an
# address says what it is, so narrower ones stand before wider ones.
_RANGES: dict[Scope, tuple[str, ...]] = {
    Scope.PRIVATE: ("10.0.0.0/8", "172.16.0.0/12", "192.168.0.0/16"),
    Scope.SHARED: ("100.64.0.0/10",),
    Scope.UNIQUE_LOCAL: ("fc00::/7",),
    Scope.LINK_LOCAL: ("169.254.0.0/16", "fe80::/10"),
    Scope.LOOPBACK: ("127.0.0.0/8", "::1/128"),
    Scope.DOCUMENTATION: ("192.0.2.0/24", "198.51.100.0/24", "203.0.113.0/24", "2001:db8::/32", "3fff::/20"),
    Scope.MULTICAST: ("224.0.0.0/4", "ff00::/8"),
    Scope.RESERVED: (
        *("0.0.0.0/8", "192.0.0.0/24", "192.88.99.0/24", "198.18.0.0/15", "240.0.0.0/4"),
        *("2001::/23", "2002::/16", "::/3", "4000::/2", "8000::/1"),
    ),
}
_NETWORKS = tuple((scope, ipaddress.ip_network(text)) for scope, texts in _RANGES.items() for text in texts)


def scope_of(address: Address) -> Scope:
    """What kind of address one is; an IPv4 address written as IPv6 (RFC 4291 section 2.5.5.2) is what it stands for."""
    inner = address.ipv4_mapped if isinstance(address, ipaddress.IPv6Address) else None
    if inner is not None:
        return scope_of(inner)
    found = (kind for kind, network in _NETWORKS if network.version == address.version and address in network)
    return next(found, Scope.GLOBAL)


def subnet_scope(subnet: Subnet) -> Scope:
    """What kind of addresses a subnet holds, all of them."""
    for kind, network in _NETWORKS:
        if network.version == subnet.version and network.overlaps(subnet):
            return kind if subnet[0] in network and subnet[-1] in network else Scope.MIXED
    return Scope.GLOBAL


def router_address(text: str) -> tuple[Address, Scope]:
    """The address that the home's router says it has outside, and what kind that is.

    Raises:
        Refused: router-address-odd.
    """
    address = as_address(text)
    if address is None:
        raise Refused("router-address-odd", text=text[:80])
    return address, scope_of(address)
