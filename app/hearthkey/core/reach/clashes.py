"""Where a subnet of the household meets the same addresses elsewhere, and how often that is to be expected."""

from __future__ import annotations

import ipaddress
from collections.abc import Iterable
from dataclasses import dataclass
from enum import StrEnum
from fractions import Fraction

from hearthkey.core.network import Subnet


class Where(StrEnum):
    """Whose network it is that a device sits in."""

    HOME = "home"
    PHONE = "phone"
    COMPUTER = "computer"
    LODGING = "lodging"
    WORK = "work"
    PROVIDER = "provider"


class Grade(StrEnum):
    """How a subnet fares away from home."""

    QUIET = "quiet"
    SELDOM = "seldom"
    OFTEN = "often"


SELDOM_FROM, OFTEN_FROM = Fraction(1, 100), Fraction(1)
"""Scores from which a clash is to be reckoned with, and to be expected. Our own measure, without a source.

A phone that draws one of 256 networks each time it shares (score 3/256) is to be reckoned with in the course of years.
"""


@dataclass(frozen=True)
class CommonRange:
    """Addresses that devices meet away from home.

    Args:
        subnet: all of them.
        drawn: prefix length of one network, where each place takes one of many within the subnet; else the subnet's.
        where: whose network it is.
        often: 3 nearly everywhere, 2 often, 1 here and there; an estimate.
        source: a document, or that it is common practice.
    """

    subnet: ipaddress.IPv4Network
    drawn: int
    where: Where
    often: int
    source: str

    def chance(self, other: Subnet) -> Fraction:
        """How likely one network out of this range overlaps another: from 0 to 1."""
        if not isinstance(other, ipaddress.IPv4Network) or not self.subnet.overlaps(other):
            return Fraction(0)
        narrow = other if other.subnet_of(self.subnet) else self.subnet
        touched = 2 ** max(0, self.drawn - narrow.prefixlen)
        return Fraction(touched, 2 ** (self.drawn - self.subnet.prefixlen))


@dataclass(frozen=True)
class Clash:
    """A common range that a subnet may meet.

    Args:
        range: the common one.
        score: how often it is met, times the chance that it overlaps.
    """

    range: CommonRange
    score: Fraction


@dataclass(frozen=True)
class Weighed:
    """A subnet, held against all that is common.

    Args:
        subnet: of the household.
        clashes: what it overlaps, the worst first.
    """

    subnet: Subnet
    clashes: tuple[Clash, ...]

    @property
    def score(self) -> Fraction:
        """The sum over all clashes; 0 is met nowhere."""
        return sum((one.score for one in self.clashes), Fraction(0))

    @property
    def grade(self) -> Grade:
        """What the score comes to."""
        if self.score >= OFTEN_FROM:
            return Grade.OFTEN
        return Grade.SELDOM if self.score >= SELDOM_FROM else Grade.QUIET

    @property
    def places(self) -> tuple[Where, ...]:
        """Whose networks to reckon with, the worst first; what counts for too little on its own is left out."""
        totals: dict[Where, Fraction] = {}
        for one in self.clashes:
            totals[one.range.where] = totals.get(one.range.where, Fraction(0)) + one.score
        worst_first = sorted(totals, key=lambda where: -totals[where])
        return tuple(where for where in worst_first if totals[where] >= SELDOM_FROM)


def weigh(subnet: Subnet, common: Iterable[CommonRange]) -> Weighed:
    """Hold a subnet against the common ranges.

    A device that sits in a network with the same addresses takes them for its neighbours (the route to what is on its
    own link is the longest match), so what is at home behind them cannot be reached from there.
    """
    scored = (Clash(one, one.often * one.chance(subnet)) for one in common)
    found = sorted((one for one in scored if one.score), key=lambda one: (-one.score, str(one.range.subnet)))
    return Weighed(subnet, tuple(found))
