"""`hearthkey reach`."""

from __future__ import annotations

from argparse import Namespace
from collections.abc import Iterable
from itertools import groupby

from hearthkey.cli.teller import Teller
from hearthkey.core.reach.packets import Packet
from hearthkey.core.reach.plan import NetworkPlan, Placed, Proposal, Side
from hearthkey.core.reach.selectors import attribute
from hearthkey.core.sentences import reach as words
from hearthkey.core.sentences import settling
from hearthkey.core.sentences.sentence import Sentence
from hearthkey.core.tunnel import selector
from hearthkey.services.house import House
from hearthkey.services.network_planning import PlanRequest


def reach_verb(house: House, arguments: Namespace, teller: Teller) -> None:
    """Say what can be worked out about the way in; nothing is changed, and nothing leaves this computer."""
    plan = house.network_planning.plan(
        PlanRequest(
            home_subnets=arguments.home_subnet,
            tunnel_subnet=arguments.tunnel_subnet,
            outer_mtu=arguments.outer_mtu,
            router=arguments.router,
            upload=arguments.upload,
            board=arguments.board,
        )
    )
    teller.result(_lines(plan), _data(plan))


def _lines(plan: NetworkPlan) -> list[str]:
    return [
        *_part("The way in", words.way_in(plan)),
        *_part("Away from home", (one for placed in plan.placed for one in words.subnet(placed))),
        *(_part("What you ask about", words.asked(plan)) if plan.asked is not None else ()),
        *_part("Quiet subnets", (one for told in plan.proposals for one in _proposed(told))),
        *_part("Through the tunnel", words.traffic(plan)),
        *_part("Room in a packet", words.room(plan)),
        *_table(plan.packets),
        *_part("What to expect", words.throughput(plan.expected)),
    ]


def _proposed(told: Proposal) -> list[str]:
    return [*map(str, words.proposal(told)), *_command(told)]


def _command(told: Proposal) -> list[str]:
    """How to take a subnet that something stands in need of."""
    if not told.needed:
        return []
    if told.side is Side.TUNNEL:
        return [f"hearthkey settle --tunnel-subnet {told.subnet}"]
    return ["hearthkey settle " + " ".join(f"--home-subnet {one}" for one in told.change.after.home_subnets)]


def _part(title: str, sentences: Iterable[Sentence | str]) -> list[str]:
    return [title, *(f"  {one}" for one in sentences), ""]


def _table(packets: tuple[Packet, ...]) -> list[str]:
    """Octets for a packet inside, for each outer MTU a line of four ways in."""
    found = [f"  {'octets inside, of':42}{'IPv4':>8}{'and NAT':>9}{'IPv6':>8}{'and NAT':>9}"]
    for (outer, _), ways in groupby(packets, key=lambda one: (one.outer, one.cipher)):
        row = tuple(ways)
        found.append(f"  {outer:5} {words.cipher(row[0]):36}" + "".join(f"{one.inner:>{8 + one.nat}}" for one in row))
    return [*found, ""]


def _data(plan: NetworkPlan) -> dict[str, object]:
    expected = plan.expected
    return {
        "gateway": {"host": plan.household.gateway_host, "kind": plan.gateway or "name"},
        "router": None if plan.router is None else {"address": str(plan.router[0]), "kind": plan.router[1]},
        "way_in": [str(one) for one in words.way_in(plan)],
        "subnets": [_subnet(one) for one in plan.placed],
        "asked": None if plan.asked is None else [str(one) for one in words.asked(plan)],
        "proposals": [_proposal(one) for one in plan.proposals],
        "through": [_through(plan, place) for place in range(len(plan.through))],
        "gaps": [
            {"kind": one.gap, "family": one.family or None, "subject": one.subject, "means": str(words.leak(one))}
            for one in plan.leaks
        ],
        "pack": {
            "outer_mtu": plan.terms.outer_mtu,
            "inner_mtu": plan.terms.inner_mtu,
            "mss4": plan.terms.mss4,
            "mss6": plan.terms.mss6,
        },
        "packets": [_packet(one) for one in plan.packets],
        "expected": None
        if expected is None
        else {
            "payload": expected.payload,
            "board_is_slower": expected.board_is_slower,
            "at_once": {use.value: count for use, count in expected.at_once.items()},
            "photos_a_minute": expected.photos,
            "source": "common practice, no source",
        },
    }


def _subnet(placed: Placed) -> dict[str, object]:
    weighed = placed.weighed
    return {
        "side": placed.side,
        "subnet": str(weighed.subnet),
        "kind": placed.scope,
        "score": round(float(weighed.score), 4),
        "grade": weighed.grade,
        "means": [str(one) for one in words.subnet(placed)],
        "clashes": [
            {
                "subnet": str(one.range.subnet),
                "drawn": one.range.drawn,
                "where": one.range.where,
                "score": round(float(one.score), 4),
                "source": one.range.source,
            }
            for one in weighed.clashes
        ],
    }


def _proposal(told: Proposal) -> dict[str, object]:
    return {
        "side": told.side,
        "subnet": str(told.subnet),
        "instead": None if told.instead is None else str(told.instead),
        "needed": told.needed,
        "new_bundles": list(told.change.devices),
        "in_tray": list(told.change.rewritten),
        "means": [str(one) for one in settling.plan(told.change)],
    }


def _through(plan: NetworkPlan, place: int) -> dict[str, object]:
    subnet = plan.through[place]
    said, told = selector(subnet), attribute(subnet)
    return {
        "subnet": str(subnet),
        "selector": said.kind,
        "first": said.first,
        "last": said.last,
        "attribute": told.name,
        "value": told.value.hex(),
    }


def _packet(one: Packet) -> dict[str, object]:
    return {
        "outer": one.outer,
        "family": one.family,
        "nat": one.nat,
        "cipher": words.cipher(one),
        "inner": one.inner,
        "mss4": one.mss4,
        "mss6": one.mss6,
        "carries_ipv6": one.carries_ipv6,
    }
