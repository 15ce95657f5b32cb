"""Changing the household's settings: what becomes different, and which devices have to be told."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import datetime
from enum import StrEnum

from hearthkey.core.former_hosts import moved
from hearthkey.core.household import FormerHost, Household
from hearthkey.core.network import FULL, Caution
from hearthkey.core.passes import LIVING, Pass


class Setting(StrEnum):
    """What can be changed after founding; whether it is a practice household cannot."""

    NAME = "name"
    HOST = "gateway host"
    HOME = "home subnets"
    DNS = "DNS servers"
    TUNNEL = "tunnel"
    INNER = "tunnel subnet"
    SUFFIX = "identity suffix"


class Reach(StrEnum):
    """How far the change of a setting goes.

    `SHOWN`: it stands on screens and in what is written from now on; no certificate is checked against it.
    `BUNDLES`: bundles that were handed over say something else now, and their devices go by it.
    `GATEWAY`: the gateway alone decides, and tells devices at each connection.
    `NEWCOMERS`: only devices that are enrolled from now on have it.
    """

    SHOWN = "shown"
    BUNDLES = "bundles"
    GATEWAY = "gateway"
    NEWCOMERS = "newcomers"


@dataclass(frozen=True)
class Touch:
    """A setting that becomes different, and how far that goes."""

    setting: Setting
    reach: Reach


@dataclass(frozen=True)
class SettlePlan:
    """Settings about to be changed.

    Args:
        before, after: the household as it stands and as it will.
        touches: what becomes different; empty where nothing does.
        devices: titles of the devices that ask for a new bundle.
        rewritten: titles of the devices whose bundle is in the tray and takes the change along when it leaves.
        new_certificate: the gateway needs a new key and certificate, which the CA key signs.
        former: hosts that the gateway answers to as well once this is so, for devices that know no other.
        let_go: a former host that it answers to no more; empty where there is none.
        cautions: what the householder should know first.
    """

    before: Household
    after: Household
    touches: tuple[Touch, ...]
    devices: tuple[str, ...]
    rewritten: tuple[str, ...]
    new_certificate: bool
    cautions: tuple[Caution, ...]
    former: tuple[FormerHost, ...] = ()
    let_go: str = ""

    @property
    def changes_nothing(self) -> bool:
        """Whether everything stays as it is."""
        return not self.touches and not self.new_certificate

    @property
    def needs_key(self) -> bool:
        """Whether the household has to be unlocked for it; such a change has no way back without the key either."""
        return self.new_certificate

    @property
    def reaches_gateway(self) -> bool:
        """Whether the gateway does something else once it knows."""
        return self.new_certificate or any(one.reach in {Reach.BUNDLES, Reach.GATEWAY} for one in self.touches)


def plan_settling(
    before: Household,
    after: Household,
    passes: Iterable[Pass],
    now: datetime,
    *,
    renew: bool = False,
    cautions: tuple[Caution, ...] = (),
    former: tuple[FormerHost, ...] = (),
    let_go: str = "",
) -> SettlePlan:
    """Decide whom a change touches.

    A bundle in the tray is no file yet: it is written from the register when it leaves, so it never goes out of date.
    One that was handed over cannot be written again, for its key is on its device alone.

    Args:
        passes: every pass; those that are over are left out.
        now: UTC.
        renew: make the gateway a new certificate in any case.
        former: what the gateway answers to today beside its host.
        let_go: one of those, which it is to answer to no more.
    """
    touches = touched(before, after)
    living = [one for one in passes if one.state(now) in LIVING]
    stale = any(one.reach is Reach.BUNDLES for one in touches)
    return SettlePlan(
        before=before,
        after=after,
        touches=touches,
        devices=_titles(one for one in living if stale and one.handed_over is not None),
        rewritten=_titles(one for one in living if stale and one.handed_over is None),
        new_certificate=renew or bool(let_go) or after.gateway_host != before.gateway_host,
        cautions=cautions,
        former=_answered(former, let_go, before, after, living, now),
        let_go=let_go,
    )


def _answered(
    former: tuple[FormerHost, ...], let_go: str, before: Household, after: Household, living: list[Pass], now: datetime
) -> tuple[FormerHost, ...]:
    """What the gateway answers to beside its new host: not what nobody ever had in a bundle."""
    found = moved(former, before.gateway_host, after.gateway_host, now)
    left = {let_go}
    if all(one.handed_over is None for one in living):
        left.add(before.gateway_host)
    return tuple(one for one in found if one.host not in left)


def touched(before: Household, after: Household) -> tuple[Touch, ...]:
    """What differs between two settings of a household, and how far each difference goes.

    A device looks the gateway up by its host and compares that with the certificate (RFC 7296 section 3.5, RFC 4945
    section 3.1). What it sends into the tunnel are its own selectors, which the gateway can only narrow (RFC 7296
    section 2.9), so that less at home touches no device; in a full tunnel they are everything, whatever is at home.
    Inner addresses and DNS servers are given to it at each connection (RFC 7296 sections 2.19 and 3.15.1).
    """
    gateway_decides = before.tunnel == after.tunnel == FULL or set(after.home_subnets) < set(before.home_subnets)
    reaches = {
        Setting.NAME: (before.name != after.name, Reach.SHOWN),
        Setting.HOST: (before.gateway_host != after.gateway_host, Reach.BUNDLES),
        Setting.HOME: (
            before.home_subnets != after.home_subnets,
            Reach.GATEWAY if gateway_decides else Reach.BUNDLES,
        ),
        Setting.DNS: (before.dns_servers != after.dns_servers, Reach.GATEWAY),
        Setting.TUNNEL: (before.tunnel != after.tunnel, Reach.BUNDLES),
        Setting.INNER: (before.tunnel_subnet != after.tunnel_subnet, Reach.GATEWAY),
        Setting.SUFFIX: (before.identity_suffix != after.identity_suffix, Reach.NEWCOMERS),
    }
    return tuple(Touch(setting, reach) for setting, (differs, reach) in reaches.items() if differs)


def _titles(passes: Iterable[Pass]) -> tuple[str, ...]:
    return tuple(dict.fromkeys(one.title for one in passes))
