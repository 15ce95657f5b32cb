"""The check of the way in over real routers, each of which is wrong in its own way."""

from __future__ import annotations

import socket
import subprocess
from collections.abc import Iterator
from concurrent.futures import ThreadPoolExecutor
from contextlib import suppress
from pathlib import Path

import pytest

from hearthkey.adapters.clock import SystemClock
from hearthkey.adapters.name_servers import NameServers
from hearthkey.adapters.way_out import dial, open_datagrams
from hearthkey.core.reach.chain import Chain, Place, Side
from hearthkey.services.reach_plan import CheckPlan
from hearthkey.services.reaching import CheckRequest, Reaching
from tests.fakes.home import at_home
from tests.interop import way_in_net as net
from tests.judges import needs
from tests.services.gates import ca_mark

SCENES: dict[str, tuple[list[str], str | None, str | None]] = {
    "good.example": ([net.GOOD], None, None),
    "six.example": ([net.GATEWAY_6], None, None),
    "twice.example": ([net.TWICE], None, None),
    "shut.example": ([net.SHUT], None, "port-silent"),
    "half.example": ([net.HALF], None, "port-silent"),
    "wrong.example": ([net.WRONG], None, "port-silent or port-unroutable"),
    "camera.example": ([net.OTHER], None, "gateway-other"),
    "double.example": ([net.DOUBLE], "192.168.0.2", "address-behind"),
    "carrier.example": ([net.SHUT], "100.64.3.4", "address-shared"),
    "elsewhere.example": (["192.0.2.88"], net.GOOD, "name-differs"),
    "mixed.example": ([net.GOOD, "2001:db8:192::1"], None, "port-partly"),
    "quiet.example": ([net.GOOD, net.GATEWAY_6], None, None),
    "narrow.example": ([net.GOOD, net.GATEWAY_6], None, None),
}
"""Where a name leads, what the router says of itself, and what is broken first.

The last two are good names at bad times: a router that swallows all ICMP, and a road for small packets only.
"""
LARGEST = 1280
"""Octets of a packet that every road of IPv6 takes whole (RFC 8200 section 5)."""

Seen = tuple[dict[str, Chain], list[bytes]]
"""What was found of each name, and every packet."""


@pytest.fixture(scope="module")
def chains(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Seen]:
    """All of them, asked from one laptop outside, most at the same time; and every packet that came and went there."""
    with at_home(tmp_path_factory.mktemp("way-in") / "data") as home, net.neighbourhood(ca_mark(home)) as made:
        made.names.update({name: addresses for name, (addresses, _, _) in SCENES.items()})
        servers = tmp_path_factory.mktemp("names") / "resolv.conf"
        servers.write_text("nameserver 127.0.0.1\n", encoding="ascii")
        house = home.house
        outside = (NameServers(servers), open_datagrams, dial)
        verb = Reaching(house.register, SystemClock(), house.dice, *outside, house.bundling.open)
        plans = [verb.prepare(CheckRequest(host=name, router=router)) for name, (_, router, _) in SCENES.items()]

        def walk(plan: CheckPlan) -> Chain:
            with made.away.inside():
                return verb.walk(plan, lambda _: None)

        *at_once, quiet, narrow = plans
        with made.away.ear("eth0") as ear, ThreadPoolExecutor(len(plans)) as crew:
            asked = [*crew.map(walk, at_once)]
            for plan, time in ((quiet, made.quiet), (narrow, made.narrow)):
                with time():
                    asked.append(walk(plan))
            found = dict(zip(SCENES, asked, strict=True))
            ear.settimeout(0)
            yield found, _waiting(ear)


def _waiting(ear: socket.socket) -> list[bytes]:
    """What has arrived by now."""
    found: list[bytes] = []
    with suppress(BlockingIOError):
        while True:
            found.append(ear.recv(4096))
    return found


@pytest.mark.parametrize("name", SCENES)
def test_what_is_really_broken_is_named(chains: Seen, name: str) -> None:
    """The householder would be sent to the wrong box."""
    chain, expected = chains[0][name], SCENES[name][2]
    assert chain.side is Side.OUTSIDE
    if expected is None:
        assert (chain.broken, chain.proves_way_in) == (None, True)
        assert {one.place: one.finding for one in chain.links}[Place.TRUST] == "trust-ours"
        return
    assert chain.broken is not None
    assert chain.broken.finding in expected.split(" or ")
    assert not chain.proves_way_in


def test_the_half_that_works_is_told_apart(chains: Seen) -> None:
    """One forwarded port would hide the other, and the change of addresses would not be seen."""
    half, good, six = (chains[0][name] for name in ("half.example", "good.example", "six.example"))
    assert half.broken is not None
    assert half.broken.place is Place.PORT_4500
    assert {one.place: one.finding for one in half.links}[Place.PORT_500] == "port-answers"
    assert {one.place: one.finding for one in good.links}[Place.REWRITTEN] == "rewritten-there"
    assert {one.place: one.finding for one in six.links}[Place.REWRITTEN] == "rewritten-none"


def test_no_packet_of_the_check_is_too_large(chains: Seen) -> None:
    """Over a narrow road the check would call a way in broken that is none, for nobody says that a packet was cut."""
    sent = [one for one in chains[1] if net.udp_target(one) in {500, 4500}]
    assert len(sent) > 40
    assert max(map(len, sent)) <= LARGEST


def test_every_packet_on_the_wire_is_what_it_says(chains: Seen, tmp_path: Path) -> None:
    """What really went over the wire would differ from what was tried on paper."""
    path = tmp_path / "wire.pcap"
    path.write_bytes(net.capture(chains[1]))
    seen = [needs("tshark"), "-r", str(path), "-Y"]
    names = ("isakmp.version", "isakmp.exchangetype", "isakmp.notify.msgtype")
    shown = ["isakmp", "-T", "fields", *(word for name in names for word in ("-e", name))]
    told = subprocess.run([*seen, *shown], check=True, capture_output=True, text=True).stdout.splitlines()
    whole = [line.split("\t")[:2] for line in told if line.endswith("16388,16389,16430,16431")]
    assert len(whole) > 40
    assert all(one == ["0x20", "34"] for one in whole)
    odd = [*seen, "_ws.malformed && udp.dstport in {500, 4500}"]
    assert subprocess.run(odd, check=True, capture_output=True, text=True).stdout == ""
