"""What the network plan means, the people first: addresses, subnets, what passes the tunnel by, what to expect."""

from __future__ import annotations

from hearthkey.core.network import FULL
from hearthkey.core.reach.clashes import Grade, Weighed, Where
from hearthkey.core.reach.packets import Packet
from hearthkey.core.reach.plan import NetworkPlan, Placed, Proposal, Side
from hearthkey.core.reach.quiet import meeting_chance
from hearthkey.core.reach.scopes import Address, Scope
from hearthkey.core.reach.selectors import Leak
from hearthkey.core.reach.throughput import Expectation, Use
from hearthkey.core.sentences import reach_tables as tables
from hearthkey.core.sentences import settling
from hearthkey.core.sentences.sentence import Sentence

_ONCE = round(1 / meeting_chance(100) / 1_000_000)
"""In so many million times, two of a hundred prefixes drawn by lot are the same (RFC 4193 section 3.2.3)."""


def way_in(plan: NetworkPlan) -> tuple[Sentence, ...]:
    """What the gateway host and the router's own address mean."""
    host = {"subject": plan.household.gateway_host}
    if plan.gateway is None:
        found = [Sentence(tables.NAME, host)]
    else:
        found = [Sentence(tables.GATEWAY[_kind(plan.gateway, plan.household.gateway_host, tables.GATEWAY)], host)]
        if plan.gateway is Scope.GLOBAL:
            found.append(Sentence(tables.BARE, host))
    if plan.router is not None:
        found.append(router(*plan.router))
    return tuple(found)


def router(address: Address, scope: Scope) -> Sentence:
    """What the address means that the home's router says it has outside."""
    return Sentence(tables.ROUTER[_kind(scope, str(address), tables.ROUTER)], {"subject": str(address)})


def _kind(scope: Scope, address: str, table: dict[str, str]) -> str:
    """Which sentence of a table is about an address; what has none of its own is unfit."""
    wanted = "global-6" if scope is Scope.GLOBAL and ":" in address else scope.value
    return wanted if wanted in table else "unfit"


def subnet(placed: Placed) -> tuple[Sentence, ...]:
    """What a subnet of the household means for whoever is away, and what kind of addresses it has."""
    weighed = placed.weighed
    facts = {"subnet": str(weighed.subnet)}
    kind = "global-6" if placed.scope is Scope.GLOBAL and weighed.subnet.version == 6 else placed.scope.value
    found = [Sentence(tables.GRADES[placed.side.value, weighed.grade.value], facts)]
    found += [Sentence(tables.PLACES[one.value], facts) for one in _places(weighed)]
    if kind in tables.SUBNETS:
        found.append(Sentence(tables.SUBNETS[kind], facts))
    return tuple(found)


def _places(weighed: Weighed) -> tuple[Where, ...]:
    return () if weighed.grade is Grade.QUIET else weighed.places


def asked(plan: NetworkPlan) -> tuple[Sentence, ...]:
    """What it would mean to take the subnets that somebody only asks about."""
    return () if plan.asked is None else settling.plan(plan.asked)


def proposal(told: Proposal) -> tuple[Sentence, ...]:
    """What could stand instead, and whom that would touch."""
    key = told.side.value, "needed" if told.needed else "spare"
    facts = {"subnet": str(told.subnet), "instead": str(told.instead), "once": _ONCE}
    found = [Sentence(tables.PROPOSALS[key], facts)]
    if told.side is Side.TUNNEL or told.needed:
        found.append(settling.devices(told.change))
    return tuple(found)


def room(plan: NetworkPlan) -> tuple[Sentence, ...]:
    """What fits into a packet, as the gateway pack has it."""
    worst = plan.worst
    found = [
        Sentence(
            tables.ROOM,
            {"outer": worst.outer, "inner": worst.inner, "mss4": worst.mss4, "mss6": worst.mss6},
        )
    ]
    if not worst.carries_ipv6:
        found.append(Sentence(tables.TOO_NARROW, {"inner": worst.inner}))
    return tuple(found)


def cipher(packet: Packet) -> str:
    """How a packet is protected, by the names at IANA."""
    return " ".join(filter(None, (packet.cipher.encr, packet.cipher.integ)))


def traffic(plan: NetworkPlan) -> tuple[Sentence, ...]:
    """What goes through the tunnel, and what passes it by."""
    full = plan.household.tunnel == FULL
    facts = {"through": ", ".join(map(str, plan.through))}
    return (Sentence(tables.FULL if full else tables.SPLIT, facts), *map(leak, plan.leaks))


def leak(told: Leak) -> Sentence:
    """One gap."""
    family = told.family or 4
    facts = {"family": family, "other": 10 - family, "subject": told.subject}
    return Sentence(tables.GAPS[told.gap.value], facts)


def throughput(told: Expectation | None) -> tuple[Sentence, ...]:
    """What a relative can expect."""
    if told is None:
        return (Sentence(tables.NO_RATE, {}),)
    slower = tables.BOARD_SLOWER if told.board_is_slower else tables.LINE_SLOWER
    found = [Sentence(slower, {"rate": _megabits(told.payload)})]
    for use in Use:
        count = told.at_once[use]
        found.append(Sentence(tables.USES[use.value, min(count, 2)], {"count": min(count, tables.MANY)}))
    found.append(Sentence(tables.PHOTOS[min(told.photos, 2)], {"count": told.photos}))
    return tuple(found)


def _megabits(kilobits: int) -> str:
    return f"{kilobits / 1000:.1f}"
