"""Real packets ask for a proof: through the tunnel's end, from home, from somebody else's network, and masqueraded."""

from __future__ import annotations

import ipaddress
import socket
from collections.abc import Iterator
from contextlib import closing, contextmanager
from ipaddress import ip_network

import pytest

from hearthkey.adapters.ticket_server import TicketServer
from hearthkey.core.host import HostFacts, host_facts
from hearthkey.core.network import SPLIT
from hearthkey.core.proof_doors import Ending, Happened
from hearthkey.core.proofs import Ground
from hearthkey.formats.host_files import nftables, sysctl
from hearthkey.services.proof_desk import Door
from tests.fakes.clock import FakeClock
from tests.interop.networks import (
    DEVICE,
    GATE_AT_HOME,
    HOME_SUBNETS,
    OUTER,
    SERVER,
    STRANGER,
    TUNNEL,
    TUNNEL_SUBNETS,
    Networks,
    Place,
    networks,
)
from tests.proofs.doors import Doorway, Hasty, door

PHONE_AT_HOME = {4: "198.51.100.45", 6: "2001:db8:51::45"}
BOTH = pytest.mark.parametrize("family", [4, 6])


def facts(*, masquerade: bool) -> HostFacts:
    """Quince Cottage, split tunnel."""
    return host_facts(
        home_subnets=map(ip_network, HOME_SUBNETS.values()),
        tunnel_subnets=map(ip_network, TUNNEL_SUBNETS.values()),
        tunnel=SPLIT,
        masquerade=masquerade,
        mss4=1398,
        mss6=1378,
        outer_interface=OUTER,
        tunnel_interface=TUNNEL,
    )


@pytest.fixture
def net() -> Iterator[Networks]:
    """Four networks; a second computer at home has an address there, and home knows the way back."""
    with networks() as made:
        made.home.address(f"{PHONE_AT_HOME[4]}/24")
        made.home.address(f"{PHONE_AT_HOME[6]}/64 nodad")
        made.home.routes(GATE_AT_HOME)
        yield made


def load(net: Networks, *, masquerade: bool) -> None:
    """Load the gateway's files as the householder does."""
    net.rules(nftables(facts(masquerade=masquerade)))
    net.settings(sysctl(facts(masquerade=masquerade)))


def ground(family: int, *, hides: bool = False, named: bool = False) -> Ground:
    """What the household would judge by."""
    inside = ipaddress.ip_address(GATE_AT_HOME[family]) if named else None
    return Ground(ip_network(TUNNEL_SUBNETS[family]), (ip_network(HOME_SUBNETS[family]),), hides, inside)


@contextmanager
def doorway(net: Networks, family: int, by: Ground) -> Iterator[Doorway]:
    """An open door on a computer at home."""
    address, clock = ipaddress.ip_address(SERVER[family]), FakeClock()
    with net.home.inside():
        server = TicketServer(address, clock)
    with server:
        behind = Door(door(address=address, port=server.port, by=by), clock)
        server.start(Hasty(behind))
        yield Doorway(behind, server, clock)


def get(way: Doorway, place: Place, family: int, *fields: str, source: str = "") -> str:
    """Open the link from a network; return the page."""
    at = way.door.door
    with closing(place.sock(family, socket.SOCK_STREAM, (source, 0) if source else None)) as client:
        client.connect((str(at.address), at.port))
        lines = (f"GET /{at.token.reveal()} HTTP/1.1", f"Host: {at.origin}", *fields, "", "")
        client.sendall("\r\n".join(lines).encode())
        return b"".join(iter(lambda: client.recv(65536), b"")).decode()


@BOTH
def test_only_the_tunnel_proves(net: Networks, family: int) -> None:
    """Broken if it fails: a phone in the Wi-Fi at home counts as seen from outside, or one that is outside does not."""
    load(net, masquerade=False)
    with doorway(net, family, ground(family)) as way:
        claims = (f"X-Forwarded-For: {DEVICE[family]}", f"Forwarded: for={DEVICE[family]}")
        assert "You are at home" in get(way, net.home, family, *claims, source=PHONE_AT_HOME[family])
        assert "You are in" in get(way, net.road, family, f"X-Forwarded-For: {STRANGER[family]}")
        told = way.heard(2)
    assert [(one.what, one.address, one.ending) for one in told] == [
        (Happened.AT_HOME, PHONE_AT_HOME[family], None),
        (Happened.CLOSED, DEVICE[family], Ending.PROVED),
    ]


@BOTH
def test_a_strangers_network_gets_what_a_wrong_link_gets(net: Networks, family: int) -> None:
    """Broken if it fails: a gateway without rules lets strangers in this far, and the page tells them what it is."""
    net.settings("net.ipv4.ip_forward = 1\nnet.ipv6.conf.all.forwarding = 1\n")
    with doorway(net, family, ground(family)) as way:
        answer = get(way, net.away, family, f"X-Forwarded-For: {DEVICE[family]}")
        assert answer.startswith("HTTP/1.1 404")
        assert "Nothing is here" in answer
        assert [(one.what, one.address) for one in way.heard(1)] == [(Happened.ELSEWHERE, STRANGER[family])]


@pytest.mark.parametrize("named", [False, True])
def test_behind_a_gateway_that_hides_devices(net: Networks, *, named: bool) -> None:
    """Broken if it fails: a masqueraded request proves without the gateway being named, or never proves at all."""
    load(net, masquerade=True)
    with doorway(net, 4, ground(4, hides=True, named=named)) as way:
        at_home = get(way, net.home, 4, source=PHONE_AT_HOME[4])
        through = get(way, net.road, 4)
        told = [(one.what, one.address) for one in way.heard(2)]
    assert ("You are at home" in at_home) is named
    assert ("You are in" in through) is named
    assert ("Nothing is proved yet" in through) is not named
    expected = (Happened.AT_HOME, Happened.CLOSED) if named else (Happened.HIDDEN, Happened.HIDDEN)
    assert told == list(zip(expected, (PHONE_AT_HOME[4], GATE_AT_HOME[4]), strict=True))
