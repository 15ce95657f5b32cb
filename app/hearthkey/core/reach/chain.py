"""The chain from a device outside to the gateway, link by link, in the order in which a packet meets them."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from datetime import datetime
from enum import StrEnum

from hearthkey.core.errors import Fact


class Place(StrEnum):
    """The links, in their order."""

    NAME = "name"
    ADDRESS = "address"
    PORT_500 = "port-500"
    PORT_4500 = "port-4500"
    GATEWAY = "gateway"
    PROPOSALS = "proposals"
    TRUST = "trust"
    REWRITTEN = "rewritten"
    FRONT = "front"
    FRONT_TLS = "front-tls"
    FRONT_CERTIFICATE = "front-certificate"
    FRONT_ASKS = "front-asks"
    FRONT_IN = "front-in"
    CLOCK = "clock"


class Verdict(StrEnum):
    """What can be said of a link. Unknown is said where nothing was seen, and never stands for ok."""

    OK = "ok"
    BROKEN = "broken"
    UNKNOWN = "unknown"


class Side(StrEnum):
    """Where this laptop stood, as its own address told.

    `NOWHERE`: it had no way to any address of the gateway, so that nothing was seen.
    """

    INSIDE = "inside"
    OUTSIDE = "outside"
    NOWHERE = "nowhere"


@dataclass(frozen=True)
class Link:
    """One link.

    Args:
        place: which one.
        verdict: what can be said of it.
        finding: names its sentences in `core.sentences.way_in`: what was seen, what it means, what to try next.
        facts: what these sentences need.
    """

    place: Place
    verdict: Verdict
    finding: str
    facts: Mapping[str, Fact] = field(default_factory=dict)


@dataclass(frozen=True)
class Chain:
    """All links of one check.

    Args:
        host: name or address that was checked.
        made: when, UTC.
        side: where this laptop stood.
        links: in the order of `Place`; those of the web front only where the household has one.
    """

    host: str
    made: datetime
    side: Side
    links: tuple[Link, ...]

    @property
    def broken(self) -> Link | None:
        """The first broken link, which is what to mend."""
        return next((one for one in self.links if one.verdict is Verdict.BROKEN), None)

    @property
    def unknown(self) -> Link | None:
        """The first link of which nothing can be said."""
        return next((one for one in self.links if one.verdict is Verdict.UNKNOWN), None)

    @property
    def answered(self) -> bool:
        """Whether the gateway itself was heard, so that there is a way to it from where the laptop stood."""
        return any(one.place is Place.GATEWAY and one.verdict is Verdict.OK for one in self.links)

    @property
    def proves_way_in(self) -> bool:
        """Whether devices outside get through to the gateway: nothing that was seen from inside ever says so."""
        return self.side is Side.OUTSIDE and self.answered and self.broken is None


@dataclass(frozen=True)
class LastChecks:
    """The newest check from either side; each None before the first.

    Args:
        inside, outside: never mixed.
    """

    inside: Chain | None = None
    outside: Chain | None = None


def in_order(links: Iterable[Link]) -> tuple[Link, ...]:
    """Links in the order in which a packet meets them."""
    rank = {place: number for number, place in enumerate(Place)}
    return tuple(sorted(links, key=lambda one: rank[one.place]))
