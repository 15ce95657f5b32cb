"""The network plan of a household: everything that can be worked out about the way in, in one value."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass, replace
from datetime import datetime
from enum import StrEnum

from hearthkey.core.household import Household
from hearthkey.core.names import as_address
from hearthkey.core.network import Subnet
from hearthkey.core.passes import Pass
from hearthkey.core.reach.clashes import CommonRange, Grade, Weighed, weigh
from hearthkey.core.reach.packets import OUTER_MTUS, Packet, ciphers, packets
from hearthkey.core.reach.quiet import quiet_subnet, unique_local
from hearthkey.core.reach.scopes import Address, Scope, router_address, scope_of, subnet_scope
from hearthkey.core.reach.selectors import Leak, everything, leaks, narrowed, through
from hearthkey.core.reach.throughput import Expectation, expected
from hearthkey.core.settling import SettlePlan, plan_settling
from hearthkey.core.tunnel import Terms


class Side(StrEnum):
    """Where a subnet is."""

    HOME = "home"
    TUNNEL = "tunnel"
    HOME_IPV6 = "home-ipv6"


@dataclass(frozen=True)
class Placed:
    """A subnet of the household.

    Args:
        side: where it is.
        scope: what kind of addresses it holds.
        weighed: held against what is common elsewhere.
    """

    side: Side
    scope: Scope
    weighed: Weighed

    @property
    def rests(self) -> bool:
        """Whether it can stay for good: hardly met elsewhere, and of a kind that somebody may have at home."""
        fit = {Scope.PRIVATE, Scope.UNIQUE_LOCAL, Scope.DOCUMENTATION, Scope.GLOBAL}
        return self.weighed.grade is Grade.QUIET and self.scope in fit


@dataclass(frozen=True)
class Proposal:
    """A subnet drawn by lot, and what taking it would touch.

    Args:
        side: what it is for.
        subnet: the one proposed.
        instead: the one that it would follow; None where it would be added.
        needed: whether what is there now should not stay.
        change: what settling it would mean, and for whom.
    """

    side: Side
    subnet: Subnet
    instead: Subnet | None
    needed: bool
    change: SettlePlan


@dataclass(frozen=True)
class NetworkPlan:
    """What was worked out.

    Args:
        household: for which; its subnets may be those that somebody only asks about.
        gateway: what kind of address the gateway host is; None for a name.
        router: the address that the home's router says it has outside, and its kind; None where nobody said.
        placed: every subnet, home before tunnel.
        asked: what it would mean to settle those; None where they are the household's own.
        proposals: quiet ones.
        terms: what the gateway is told; its MTU and MSS stand in the gateway pack.
        packets: the room for every way in.
        worst: the packets that the gateway pack goes by.
        through: destinations that go into the tunnel, as a device that asks for everything is answered.
        leaks: what passes the tunnel by.
        expected: what goes through; None where no rate was said.
    """

    household: Household
    gateway: Scope | None
    router: tuple[Address, Scope] | None
    placed: tuple[Placed, ...]
    asked: SettlePlan | None
    proposals: tuple[Proposal, ...]
    terms: Terms
    packets: tuple[Packet, ...]
    worst: Packet
    through: tuple[Subnet, ...]
    leaks: tuple[Leak, ...]
    expected: Expectation | None


@dataclass(frozen=True)
class Known:
    """What a plan is made from, beside the household.

    Args:
        household: as it stands.
        common: what is met away from home.
        passes: every pass.
        now: UTC.
        terms: what the gateway is told.
        router: as the home's router says, text of any content; None where nobody said.
        upload, board: kbit/s; None where nobody said.
    """

    household: Household
    common: tuple[CommonRange, ...]
    passes: tuple[Pass, ...]
    now: datetime
    terms: Terms
    router: str | None = None
    upload: int | None = None
    board: int | None = None


def plan(household: Household, known: Known, *, below: Callable[[int], int], identifier: int) -> NetworkPlan:
    """Work everything out.

    Args:
        household: as it stands, or with the subnets that somebody asks about.
        known: what is known beside.
        below: draws a whole number from 0 to its argument, exclusive.
        identifier: 64 bits that nobody else has; see `quiet.unique_local`.

    Raises:
        Refused: router-address-odd, rate-odd, outer-mtu-odd, no-quiet-subnet.
    """
    placed = tuple(
        Placed(side, subnet_scope(subnet), weigh(subnet, known.common))
        for side, subnet in (
            *((Side.HOME, one) for one in household.home_subnets),
            (Side.TUNNEL, household.tunnel_subnet),
        )
    )
    ways = packets((known.terms.outer_mtu, *OUTER_MTUS), ciphers())
    worst = _worst(known.terms, ways)
    address = as_address(household.gateway_host)
    into = through(household)
    return NetworkPlan(
        household=household,
        gateway=None if address is None else scope_of(address),
        router=None if known.router is None else router_address(known.router),
        placed=placed,
        asked=_asked(household, known),
        proposals=_proposals(household, placed, known, below, identifier),
        terms=known.terms,
        packets=ways,
        worst=worst,
        through=narrowed((everything(4), everything(6)), into),
        leaks=leaks(household),
        expected=expected(known.upload, known.board, worst),
    )


def _asked(household: Household, known: Known) -> SettlePlan | None:
    if household == known.household:
        return None
    return plan_settling(known.household, household, known.passes, known.now)


def _worst(terms: Terms, ways: Iterable[Packet]) -> Packet:
    """The packets that the gateway is told of: behind a NAT, the longest head of all that it offers."""
    return next(one for one in ways if one.nat and one.outer == terms.outer_mtu and one.inner == terms.inner_mtu)


def _proposals(
    household: Household, placed: tuple[Placed, ...], known: Known, below: Callable[[int], int], identifier: int
) -> tuple[Proposal, ...]:
    """For the tunnel, for the home subnet of IPv4 that is met most, and a prefix of IPv6 where home has none."""

    def proposal(side: Side, new: Subnet, old: Placed | None, after: Household) -> Proposal:
        instead = None if old is None else old.weighed.subnet
        needed = old is not None and not old.rests
        return Proposal(side, new, instead, needed, plan_settling(household, after, known.passes, known.now))

    homes = household.home_subnets
    inner = quiet_subnet((*homes, household.tunnel_subnet), known.common, below)
    found = [proposal(Side.TUNNEL, inner, placed[-1], replace(household, tunnel_subnet=inner))]
    old_ones = [one for one in placed[:-1] if one.weighed.subnet.version == 4]
    if old_ones:
        worst = min(old_ones, key=lambda one: (one.rests, -one.weighed.score))
        new = quiet_subnet((*homes, household.tunnel_subnet, inner), known.common, below)
        changed = tuple(new if one == worst.weighed.subnet else one for one in homes)
        found.append(proposal(Side.HOME, new, worst, replace(household, home_subnets=changed)))
    if not any(one.version == 6 for one in homes):
        own = unique_local(known.now, identifier)
        first = next(own.subnets(new_prefix=64))
        found.append(proposal(Side.HOME_IPV6, first, None, replace(household, home_subnets=(*homes, first))))
    return tuple(found)
