"""How many devices each change of the household touches, to be known before it is made."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import datetime
from enum import StrEnum

from hearthkey.core.household import Household
from hearthkey.core.network import FULL
from hearthkey.core.passes import LIVING, Pass


class Change(StrEnum):
    """A change that a household meets sooner or later."""

    GATEWAY_RENEWED = "gateway-renewed"
    HOST = "host"
    AUTHORITY = "authority"
    SUFFIX = "suffix"
    INNER = "inner"
    HOME = "home"
    TUNNEL = "tunnel"


@dataclass(frozen=True)
class Reached:
    """Whom a change touches.

    Args:
        change: which.
        devices: titles of those that need a new bundle before they get in, or reach everything, again.
    """

    change: Change
    devices: tuple[str, ...]


def touches(household: Household, passes: Iterable[Pass], now: datetime) -> tuple[Reached, ...]:
    """Count what each change would touch, without making any.

    A device trusts the CA and compares the gateway's name, never its certificate (RFC 4945 section 3.1, RFC 5280
    section 6): a new certificate under the same name touches nobody, another name or another CA everybody who has a
    bundle. Inner addresses are given out at each connection (RFC 7296 section 2.19). An identity is the device's own
    and stays. What is at home stands in a bundle only where the tunnel is split.

    Args:
        passes: every pass; those that are over, and bundles that have not left the tray, are left out.
        now: UTC.
    """
    handed = [one for one in passes if one.state(now) in LIVING and one.handed_over is not None]
    everybody = tuple(dict.fromkeys(one.title for one in handed))
    nobody: tuple[str, ...] = ()
    return (
        Reached(Change.GATEWAY_RENEWED, nobody),
        Reached(Change.INNER, nobody),
        Reached(Change.SUFFIX, nobody),
        Reached(Change.HOME, nobody if household.tunnel == FULL else everybody),
        Reached(Change.TUNNEL, everybody),
        Reached(Change.HOST, everybody),
        Reached(Change.AUTHORITY, everybody),
    )
