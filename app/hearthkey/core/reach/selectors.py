"""Which traffic goes through the tunnel, and which passes it by."""

from __future__ import annotations

import ipaddress
from collections.abc import Iterable
from dataclasses import dataclass
from enum import StrEnum

from hearthkey.core.household import Household
from hearthkey.core.network import FULL, Subnet


class Gap(StrEnum):
    """Traffic that does not go where the householder thinks.

    `BESIDE`: an IP version that a full tunnel leaves out, and that goes its own way. `UNADDRESSED`: one that it
    takes, but that devices have no inner address of. `UNREACHED`: a home subnet of a version without inner addresses.
    `DNS_BESIDE`: a DNS server that is asked beside the tunnel. `NAMES_OUTSIDE`: no DNS server inside, so that the
    names that people look up are told to the network they sit in.
    """

    BESIDE = "beside"
    UNADDRESSED = "unaddressed"
    UNREACHED = "unreached"
    DNS_BESIDE = "dns-beside"
    NAMES_OUTSIDE = "names-outside"


@dataclass(frozen=True)
class Leak:
    """One gap.

    Args:
        gap: which kind.
        family: IP version it is about; 0 where it is about neither.
        subject: what it is about, as sentences show it; may be empty.
    """

    gap: Gap
    family: int = 0
    subject: str = ""


def everything(family: int) -> Subnet:
    """All addresses of an IP version."""
    return ipaddress.ip_network("0.0.0.0/0" if family == 4 else "::/0")


def through(household: Household) -> tuple[Subnet, ...]:
    """The destinations that devices send into the tunnel, as the gateway is told them."""
    if household.tunnel != FULL:
        return household.home_subnets
    families = {household.tunnel_subnet.version, *(one.version for one in household.home_subnets)}
    return tuple(map(everything, sorted(families)))


def leaks(household: Household) -> tuple[Leak, ...]:
    """What passes the tunnel by, the widest gap first."""
    inner, into = household.tunnel_subnet.version, through(household)
    taken = {one.version for one in into}
    found = []
    if household.tunnel == FULL:
        found += [Leak(Gap.BESIDE, family) for family in (4, 6) if family not in taken]
        found += [Leak(Gap.UNADDRESSED, family) for family in (4, 6) if family in taken and family != inner]
    found += [Leak(Gap.UNREACHED, one.version, str(one)) for one in household.home_subnets if one.version != inner]
    if not household.dns_servers:
        found.append(Leak(Gap.NAMES_OUTSIDE))
    inside = (*into, household.tunnel_subnet)
    for server in household.dns_servers:
        address = ipaddress.ip_address(server)
        if address.version != inner or not any(address.version == one.version and address in one for one in inside):
            found.append(Leak(Gap.DNS_BESIDE, address.version, server))
    return tuple(found)


def narrowed(asked: Iterable[Subnet], kept: Iterable[Subnet]) -> tuple[Subnet, ...]:
    """What is left of the selectors that a device asks for, where the gateway keeps to its own (RFC 7296 section 2.9).

    Two prefixes either lie apart or one within the other, so what they have in common is the narrower one.
    """
    mine = tuple(kept)
    found = [
        one if one.prefixlen >= other.prefixlen else other
        for one in asked
        for other in mine
        if one.version == other.version and one.overlaps(other)
    ]
    return tuple(dict.fromkeys(found))


@dataclass(frozen=True)
class SubnetAttribute:
    """A subnet as a gateway tells devices of it (RFC 7296 section 3.15.1).

    Args:
        name, number: the attribute type.
        value: address and mask, 8 octets; or address and prefix length, 17.
    """

    name: str
    number: int
    value: bytes


def attribute(subnet: Subnet) -> SubnetAttribute:
    """What a gateway tells of a subnet behind it."""
    if isinstance(subnet, ipaddress.IPv4Network):
        value = subnet.network_address.packed + subnet.netmask.packed
        return SubnetAttribute("INTERNAL_IP4_SUBNET", 13, value)
    value = subnet.network_address.packed + bytes([subnet.prefixlen])
    return SubnetAttribute("INTERNAL_IP6_SUBNET", 15, value)
