"""Proofs: who was seen to get in, when, and what the address of a request says about that.

An address tells which way a request came, and no more. Within the tunnel subnet it came through the tunnel; whether
the device was out of the house, only whoever holds it can say, for a device at home may go through the tunnel too.
Where the gateway puts its own address in the place of the devices' (masquerading, RFC 3022 section 2.2 calls it NAPT),
a request through the tunnel looks as if the gateway's computer itself had asked.
"""

from __future__ import annotations

import ipaddress
from collections.abc import Collection
from dataclasses import dataclass
from datetime import datetime
from enum import StrEnum
from typing import NamedTuple

from hearthkey.core.errors import Refused
from hearthkey.core.household import Household
from hearthkey.core.names import as_address
from hearthkey.core.network import Subnet

Address = ipaddress.IPv4Address | ipaddress.IPv6Address


class Way(StrEnum):
    """How it was seen that a device gets in; the words are those of the register."""

    TUNNEL = "tunnel"
    TOLD = "told"
    OTHER = "other"
    """What a register may say that no app has written; never written."""

    @classmethod
    def _missing_(cls, _value: object) -> Way:
        """A way that is not known is no reason not to open a register."""
        return cls.OTHER


class Proof(NamedTuple):
    """That a device got in. A tuple, for ten thousand of them are made at every look.

    Args:
        at: when, UTC.
        way: how it was seen.
        address: that the request came from; empty where it was told.
    """

    at: datetime
    way: Way
    address: str = ""


class Seen(StrEnum):
    """What the address of a request says."""

    TUNNEL = "tunnel"
    GATEWAY = "gateway"
    HOME = "home"
    HIDDEN = "hidden"
    ELSEWHERE = "elsewhere"

    @property
    def proves(self) -> bool:
        """Whether it came through the tunnel."""
        return self in {Seen.TUNNEL, Seen.GATEWAY}


@dataclass(frozen=True)
class Ground:
    """What addresses are judged by.

    Args:
        tunnel: where devices have their inner addresses.
        home: what counts as at home.
        hides: whether the gateway puts its own address in the place of the devices'.
        inside: the gateway's own address at home, where somebody named it.
    """

    tunnel: Subnet
    home: tuple[Subnet, ...]
    hides: bool = False
    inside: Address | None = None


def ground(household: Household, own: Subnet, *, hides: bool = False, inside: Address | None = None) -> Ground:
    """What a household's addresses are judged by.

    Args:
        own: the subnet that this computer's address lies in.
    """
    return Ground(household.tunnel_subnet, tuple(dict.fromkeys((*household.home_subnets, own))), hides, inside)


def judged(peer: str, by: Ground) -> Seen:
    """Say what the address of a request shows.

    Args:
        peer: as the operating system told it, without a zone. What a request says about itself counts for nothing.
    """
    try:
        address = ipaddress.ip_address(peer)
    except ValueError:
        return Seen.ELSEWHERE
    if _within(address, by.tunnel):
        return Seen.TUNNEL
    if by.hides and by.inside is not None and address == by.inside:
        return Seen.GATEWAY
    if not any(_within(address, one) for one in by.home):
        return Seen.ELSEWHERE
    return Seen.HIDDEN if by.hides and by.inside is None else Seen.HOME


def gateway_inside(text: str, household: Household, own: Collection[Address], *, hides: bool) -> Address:
    """Read the gateway's own address at home.

    Args:
        text: as typed.
        own: addresses of this computer.
        hides: whether the gateway hides devices behind that address.

    Raises:
        Refused: proof-inside-odd, proof-inside-own, proof-inside-needless.
    """
    address = as_address(text.strip())
    if address is None or not any(_within(address, one) for one in household.home_subnets):
        raise Refused("proof-inside-odd", text=text[:80], home=tuple(map(str, household.home_subnets)))
    if address in own:
        raise Refused("proof-inside-own", address=str(address))
    if not hides:
        raise Refused("proof-inside-needless", address=str(address), tunnel=str(household.tunnel_subnet))
    return address


def _within(address: Address, network: Subnet) -> bool:
    return address.version == network.version and address in network
