"""This laptop's addresses: which of them a phone at home can reach, and what is wrong with the others."""

from __future__ import annotations

import ipaddress
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from enum import StrEnum

from hearthkey.core.errors import Refused
from hearthkey.core.names import as_address
from hearthkey.core.network import Subnet

Address = ipaddress.IPv4Address | ipaddress.IPv6Address

_OUTSIDE_USE = tuple(
    ipaddress.ip_network(text)
    for text in ("10.0.0.0/8", "172.16.0.0/12", "192.168.0.0/16", "fc00::/7", "100.64.0.0/10")
)
"""RFC 1918 section 3, RFC 4193 section 3.1, RFC 6598 section 7: none of them is routed on the internet."""
_DOCUMENTATION = tuple(
    ipaddress.ip_network(text) for text in ("192.0.2.0/24", "198.51.100.0/24", "203.0.113.0/24", "2001:db8::/32")
)
"""RFC 5737 section 3 and RFC 3849 section 2: they stand for private ones in the practice household."""
_TUNNEL_NAMES = ("tun", "tap", "ipsec", "ppp", "vti", "xfrm")
_BRIDGE_NAMES = ("br-", "bridge", "veth", "virbr")


class Medium(StrEnum):
    """What an interface is, as far as the operating system tells."""

    WIFI = "wifi"
    CABLE = "cable"
    TUNNEL = "tunnel"
    BRIDGE = "bridge"
    LOOPBACK = "loopback"
    OTHER = "other"


class Standing(StrEnum):
    """How an address stands to a phone at home."""

    HOME = "home"
    NEAR = "near"
    TUNNEL = "tunnel"
    BRIDGE = "bridge"
    LINK_LOCAL = "link-local"
    PUBLIC = "public"
    LOOPBACK = "loopback"


_ORDER = tuple(Standing)
_SHOWN = {
    Medium.WIFI: "Wi-Fi",
    Medium.CABLE: "Cable",
    Medium.TUNNEL: "Tunnel",
    Medium.BRIDGE: "Bridge",
    Medium.LOOPBACK: "This computer",
}


@dataclass(frozen=True)
class Found:
    """One address as the operating system tells it.

    Args:
        interface: its name there.
        medium: what the interface is.
        address: without a zone.
        prefix: length of the network's prefix, in bits.
    """

    interface: str
    medium: Medium
    address: Address
    prefix: int


@dataclass(frozen=True)
class HomeAddress:
    """One address of this laptop, judged.

    Args:
        interface: name of its interface.
        medium: what the interface is.
        address: without a zone.
        network: the subnet that it lies in, as the interface is set up.
        standing: how it stands to a phone at home.
    """

    interface: str
    medium: Medium
    address: Address
    network: Subnet
    standing: Standing

    @property
    def fit(self) -> bool:
        """Whether a phone at home can be expected to reach it."""
        return self.standing in {Standing.HOME, Standing.NEAR}

    @property
    def shown(self) -> str:
        """As people read it: "Wi-Fi 192.0.2.23"."""
        return f"{_SHOWN.get(self.medium, self.interface)} {self.address}"


def medium_of(interface: str, *, wireless: bool, bridge: bool, tunnel: bool, loopback: bool, real: bool) -> Medium:
    """Tell what an interface is, by what the operating system says and, where it is silent, by its name.

    Args:
        real: whether there is hardware behind it.
    """
    if loopback:
        return Medium.LOOPBACK
    if tunnel or interface.startswith(_TUNNEL_NAMES):
        return Medium.TUNNEL
    if wireless:
        return Medium.WIFI
    if bridge or interface.startswith(_BRIDGE_NAMES):
        return Medium.BRIDGE
    return Medium.CABLE if real else Medium.OTHER


def judged(found: Iterable[Found], home: Sequence[Subnet], tunnel: Subnet | None) -> tuple[HomeAddress, ...]:
    """Judge addresses, those that a phone can reach first; Wi-Fi and IPv4 before the rest of a standing.

    Args:
        home: the household's home subnets.
        tunnel: where devices get their inner addresses from.
    """
    rows = [
        HomeAddress(
            one.interface,
            one.medium,
            one.address,
            ipaddress.ip_network((one.address, one.prefix), strict=False),
            _standing(one, home, tunnel),
        )
        for one in found
    ]
    return tuple(
        sorted(
            rows,
            key=lambda one: (
                _ORDER.index(one.standing),
                one.medium is not Medium.WIFI,
                one.address.version,
                int(one.address),
            ),
        )
    )


def _within(address: Address, networks: Iterable[Subnet]) -> bool:
    return any(address.version == one.version and address in one for one in networks)


def _standing(one: Found, home: Sequence[Subnet], tunnel: Subnet | None) -> Standing:
    address = one.address
    if address.is_loopback or one.medium is Medium.LOOPBACK:
        return Standing.LOOPBACK
    if address.is_link_local:
        return Standing.LINK_LOCAL
    if one.medium is Medium.TUNNEL or (tunnel is not None and _within(address, [tunnel])):
        return Standing.TUNNEL
    # A bridge of this laptop's own may well carry the home network, so the subnet outranks the kind.
    if _within(address, home):
        return Standing.HOME
    if one.medium is Medium.BRIDGE:
        return Standing.BRIDGE
    return Standing.NEAR if _within(address, (*_OUTSIDE_USE, *_DOCUMENTATION)) else Standing.PUBLIC


def chosen(addresses: Sequence[HomeAddress], text: str | None) -> HomeAddress:
    """The address that is meant: by itself, by interface, or the first that fits where nothing is said.

    Raises:
        Refused: ticket-address-none, ticket-address-unknown, ticket-address-unfit.
    """
    known = tuple(one.shown for one in addresses if one.standing is not Standing.LOOPBACK)
    if text is None:
        fitting = [one for one in addresses if one.fit]
        if not fitting:
            raise Refused("ticket-address-none", known=known)
        return fitting[0]
    wanted = as_address(text)
    for one in addresses:
        if (one.address == wanted) if wanted is not None else (one.interface == text.strip()):
            if one.standing in {Standing.LINK_LOCAL, Standing.PUBLIC}:
                raise Refused("ticket-address-unfit", address=one.shown, standing=one.standing.value)
            return one
    raise Refused("ticket-address-unknown", text=text[:80], known=known)
