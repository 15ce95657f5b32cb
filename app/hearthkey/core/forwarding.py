"""What the router at home has to let through to the gateway, and nothing else."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from hearthkey.core.errors import Refused
from hearthkey.core.host import IKE_PORT, NAT_PORT
from hearthkey.core.household import Household
from hearthkey.core.names import as_address
from hearthkey.core.reach.scopes import Address, Scope, router_address, scope_of

WEB_PORT = 443
"""TCP: where the web front of the gateway pack listens (RFC 9110 section 4.2.2)."""
ESP_PROTOCOL = 50
"""Number of the protocol that a tunnel without NAT is made of (RFC 4303 section 2); over IPv6 there is no NAT."""
SHORTEST_TTL, LONGEST_TTL = 60, 300
"""Seconds that an answer about a changing address may be kept (RFC 1035 section 3.2.1); common practice, no source."""


class Purpose(StrEnum):
    """What an opening is for."""

    IKE = "ike"
    NAT = "nat"
    WEB = "web"


@dataclass(frozen=True)
class Opening:
    """One way through the router, the same port outside and inside.

    Args:
        purpose: what it is for.
        protocol: ``UDP`` or ``TCP``.
        port: outside and inside; devices know no other.
    """

    purpose: Purpose
    protocol: str
    port: int


@dataclass(frozen=True)
class ForwardingFacts:
    """What the sheet says; made by `forwarding`.

    Args:
        household: certified name.
        practice: whether it is not to be followed.
        host: the name or address that devices reach.
        bare: whether that is an address.
        families: IP versions that devices may come by; 4 needs forwarding, 6 a way through the firewall.
        inside: the gateway's address at home; empty where nobody said, to be written in by hand.
        router: the router's own address outside and its kind; None where nobody said.
        openings: UDP first.
    """

    household: str
    practice: bool
    host: str
    bare: bool
    families: tuple[int, ...]
    inside: str
    router: tuple[Address, Scope] | None
    openings: tuple[Opening, ...]


def openings(*, web_front: bool) -> tuple[Opening, ...]:
    """UDP 500 and 4500 (RFC 7296 sections 2 and 2.23), and TCP for the web front where there is one."""
    found = (Opening(Purpose.IKE, "UDP", IKE_PORT), Opening(Purpose.NAT, "UDP", NAT_PORT))
    return (*found, Opening(Purpose.WEB, "TCP", WEB_PORT)) if web_front else found


def forwarding(
    household: Household, *, web_front: bool, inside: str | None = None, router: str | None = None
) -> ForwardingFacts:
    """Check what the sheet is made from.

    Args:
        web_front: whether the gateway has one.
        inside: the gateway's address at home, as typed.
        router: what the router's pages say is its address outside, as typed.

    Raises:
        Refused: gateway-inside-odd, gateway-inside-elsewhere, router-address-odd.
    """
    address = as_address(household.gateway_host)
    return ForwardingFacts(
        household=household.certified_name,
        practice=household.practice,
        host=household.gateway_host,
        bare=address is not None,
        families=(4, 6) if address is None else (address.version,),
        inside="" if inside is None else _inside(household, inside),
        router=None if router is None else router_address(router),
        openings=openings(web_front=web_front),
    )


def _inside(household: Household, text: str) -> str:
    """An address that something at home can have: RFC 1122 section 3.2.1.3 keeps both ends of an IPv4 subnet."""
    address = as_address(text)
    unfit = {Scope.LOOPBACK, Scope.LINK_LOCAL, Scope.MULTICAST, Scope.RESERVED}
    if address is None or scope_of(address) in unfit:
        raise Refused("gateway-inside-odd", text=text[:80])
    mine = [one for one in household.home_subnets if one.version == address.version and address in one]
    if not mine:
        raise Refused("gateway-inside-elsewhere", text=str(address), home=tuple(map(str, household.home_subnets)))
    if any(one.version == 4 and one.prefixlen < 31 and address in {one[0], one[-1]} for one in mine):
        raise Refused("gateway-inside-odd", text=str(address))
    return str(address)
