"""What the householder chose for the gateway pack, beside the household's settings."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime


@dataclass(frozen=True)
class ExtraSecret:
    """What the register knows of a secret in the vault.

    Args:
        made: when, UTC.
        known_outside: whether it lies on a device that was stopped.
    """

    made: datetime
    known_outside: bool


@dataclass(frozen=True)
class PackOptions:
    """Choices for the files that the gateway's computer reads.

    Args:
        masquerade: hide devices behind the gateway's address at home, for routers that cannot be told a way back.
        outer_mtu: octets of the way out of the house (1500 Ethernet, 1492 behind PPPoE; RFC 2516).
        tunnel_interface: Linux name of the interface that packets come out of the tunnel on; empty where the kernel's
            own IPsec unpacks them.
        forwards_for_others: whether that computer is the router of the house too, so that traffic which is not the
            tunnel's is left to its other rules instead of being refused.
        web_upstream: address of the home's pages behind the web front, empty for none.
        extra_secret: whether devices get an extra secret beside the certificate (RFC 8784).
        household_secret: whether there is one random secret that all devices share.
    """

    masquerade: bool = False
    outer_mtu: int = 1500
    tunnel_interface: str = ""
    web_upstream: str = ""
    forwards_for_others: bool = False
    extra_secret: bool = False
    household_secret: bool = False
