"""A home whose router forwards in every way that it can go wrong, each under an address of its own.

The gateway is built with scapy, the name server with dnspython: neither comes from what is tried here.
"""

from __future__ import annotations

import os
import select
import socket
import struct
import threading
from collections.abc import Callable, Iterator
from contextlib import ExitStack, contextmanager, suppress
from dataclasses import dataclass

import dns.message
import dns.rdatatype
import dns.rrset

from tests.formats import ike_scapy as scapy
from tests.interop.networks import GATE_AT_HOME, OUTER, STRANGER, Networks, Place, counters, networks, new_namespace
from tests.judges import needs

GATEWAY, OTHER_DEVICE, INNER_SHUT, INNER_OPEN = "198.51.100.20", "198.51.100.30", "198.51.100.40", "198.51.100.41"
GATEWAY_6 = "2001:db8:51::20"
DEEP = "10.77.0.2"
GOOD, SHUT, HALF, WRONG, OTHER, DOUBLE, TWICE = (f"192.0.2.{number}" for number in (1, 2, 3, 4, 5, 6, 7))

_BOTH = "udp dport { 500, 4500 }"
_ROUTER = f"""
table ip way {{
    chain before {{
        type nat hook prerouting priority dstnat;
        ip daddr {GOOD} {_BOTH} dnat to {GATEWAY}
        ip daddr {HALF} udp dport 500 dnat to {GATEWAY}
        ip daddr {WRONG} {_BOTH} dnat to 198.51.100.99
        ip daddr {OTHER} {_BOTH} dnat to {OTHER_DEVICE}
        ip daddr {DOUBLE} {_BOTH} dnat to {INNER_SHUT}
        ip daddr {TWICE} {_BOTH} dnat to {INNER_OPEN}
    }}
    chain inside {{
        type filter hook input priority 0;
        iifname "outer.0" {_BOTH} drop
    }}
}}
"""
_INNER_ROUTER = f"""
table ip way {{
    chain before {{
        type nat hook prerouting priority dstnat;
        ip daddr {INNER_OPEN} {_BOTH} dnat to {DEEP}
    }}
    chain inside {{
        type filter hook input priority 0;
        ip daddr {INNER_SHUT} {_BOTH} drop
    }}
}}
"""
_FILTER = """
table inet quiet {
    counter swallowed {
    }
    chain before {
        type filter hook prerouting priority -300;
        meta l4proto icmp counter name swallowed drop
        meta l4proto ipv6-icmp icmpv6 type != { nd-neighbor-solicit, nd-neighbor-advert } counter name swallowed drop
    }
    chain behind {
        type filter hook postrouting priority 300;
        meta l4proto icmp counter name swallowed drop
        meta l4proto ipv6-icmp icmpv6 type != { nd-neighbor-solicit, nd-neighbor-advert } counter name swallowed drop
    }
}
"""
NARROW = 1400
"""Octets of the largest packet that the road between router and laptop takes."""
_IP_MTU_DISCOVER, _IP_PMTUDISC_DO, _IP_MTU = 10, 2, 14
"""Numbers of ip(7) that Python has no names for."""


@dataclass(frozen=True)
class Neighbourhood:
    """The laptop's network, and what its name servers know.

    Args:
        away: where the laptop is.
        gate: the router before the home.
        home: the network behind it.
        names: addresses by name.
    """

    away: Place
    gate: Place
    home: Place
    names: dict[str, list[str]]

    @contextmanager
    def quiet(self) -> Iterator[None]:
        """Let the router swallow all ICMP but what IPv6 finds its neighbours with (RFC 4861), and see that it does."""
        self.gate.run(needs("nft"), "-f", "-", given=_FILTER)
        with self.away.sock(4, socket.SOCK_DGRAM) as knocking:
            # Nobody listens there, so the router would say so (RFC 1122 section 3.2.2.1).
            _until(lambda: knocking.sendto(b".", (SHUT, 9)), lambda: counters(self.gate, "inet quiet")["swallowed"] > 0)
        yield
        self.gate.run(needs("nft"), "delete", "table", "inet", "quiet")

    @contextmanager
    def narrow(self) -> Iterator[None]:
        """Let the road between router and laptop take small packets only, and see that it does (RFC 1191)."""
        self.gate.ip(f"link set {OUTER} mtu {NARROW}\n")
        with self.home.sock(4, socket.SOCK_DGRAM) as large:
            large.setsockopt(socket.IPPROTO_IP, _IP_MTU_DISCOVER, _IP_PMTUDISC_DO)
            large.connect((STRANGER[4], 9))
            _until(lambda: _try(large, bytes(1440)), lambda: large.getsockopt(socket.IPPROTO_IP, _IP_MTU) == NARROW)
        yield
        self.gate.ip(f"link set {OUTER} mtu 1500\n")


def _until(act: Callable[[], object], true: Callable[[], bool]) -> None:
    """Do something again and again until something holds."""
    for _ in range(1000):
        act()
        if true():
            return
    raise AssertionError("it never came to be so")


def _try(sock: socket.socket, data: bytes) -> None:
    with suppress(OSError):  # what it is sent for
        sock.send(data)


Answer = Callable[[bytes, tuple[str, int], tuple[str, int]], bytes]
"""What comes back for a packet, from whom it came and to whom; nothing where empty."""


class Served:
    """Answers on UDP sockets from a thread of its own until it is closed."""

    def __init__(self, answer: Answer, *socks: socket.socket) -> None:
        self._answer = answer
        self._socks = socks
        self._ends = os.pipe()
        self._thread = threading.Thread(target=self._loop)
        self._thread.start()

    def _loop(self) -> None:
        open_ones = {one.fileno(): one for one in self._socks}
        while True:
            ready, _, _ = select.select([*open_ones, self._ends[0]], (), ())
            if self._ends[0] in ready:
                return
            for one in map(open_ones.__getitem__, ready):
                data, peer = one.recvfrom(4096)
                told = self._answer(data, peer[:2], one.getsockname()[:2])
                if told:
                    one.sendto(told, peer)

    def close(self) -> None:
        """End it."""
        os.write(self._ends[1], b".")
        self._thread.join()
        for one in self._socks:
            one.close()
        for end in self._ends:
            os.close(end)


def gateway(mark: bytes) -> Answer:
    """Takes what devices offer, and asks for certificates of one CA."""

    def answer(data: bytes, peer: tuple[str, int], here: tuple[str, int]) -> bytes:
        marker = bytes(4) if here[1] == 4500 else b""
        initiator = scapy.parsed(data[len(marker) :]).init_SPI
        return marker + scapy.accepting(
            initiator,
            source=scapy.where(initiator, scapy.RESPONDER, *here),
            destination=scapy.where(initiator, scapy.RESPONDER, *peer),
            authorities=[mark],
        )

    return answer


def camera(data: bytes, *_: object) -> bytes:
    """Some other device: it answers everything with something else."""
    return b"\x80\x00camera\x00" + data[:20]


def name_server(known: dict[str, list[str]]) -> Answer:
    """A small name server."""

    def answer(data: bytes, *_: object) -> bytes:
        asked = dns.message.from_wire(data)
        told = dns.message.make_response(asked, recursion_available=True)
        question = asked.question[0]
        addresses = known[question.name.to_text(omit_final_dot=True)]
        found = [one for one in addresses if (":" in one) == (question.rdtype == dns.rdatatype.AAAA)]
        if found:
            told.answer.append(dns.rrset.from_text(question.name, 60, "IN", question.rdtype, *found))
        return told.to_wire()

    return answer


@contextmanager
def neighbourhood(mark: bytes) -> Iterator[Neighbourhood]:
    """Build it for the length of a `with` block.

    Args:
        mark: of the CA that the gateway asks for.
    """
    with networks() as made, ExitStack() as undone:
        deep = Place(new_namespace())
        undone.callback(os.close, deep.file)
        _join(made, deep)
        known: dict[str, list[str]] = {}
        gate_ends = [*_ports(made.home, 4, GATEWAY), *_ports(made.home, 6, GATEWAY_6), *_ports(deep, 4, DEEP)]
        named = made.away.sock(4, socket.SOCK_DGRAM, ("127.0.0.1", 53))
        undone.callback(Served(gateway(mark), *gate_ends).close)
        undone.callback(Served(camera, *_ports(made.home, 4, OTHER_DEVICE)).close)
        undone.callback(Served(name_server(known), named).close)
        yield Neighbourhood(made.away, made.gate, made.home, known)


def _ports(place: Place, family: int, address: str) -> list[socket.socket]:
    return [place.sock(family, socket.SOCK_DGRAM, (address, port)) for port in (500, 4500)]


def _join(made: Networks, deep: Place) -> None:
    """Put the inner router and what is behind it into the home, and the rules into both routers."""
    for address in (SHUT, HALF, WRONG, OTHER, DOUBLE, TWICE):
        made.gate.ip(f"addr add {address}/24 dev outer.0\n")
    for address in (OTHER_DEVICE, INNER_SHUT, INNER_OPEN):
        made.home.ip(f"addr add {address}/24 dev eth0\n")
    made.home.routes(GATE_AT_HOME)
    made.home.ip(
        f"link add deep0 type veth peer name eth0 netns {deep.path}\n"
        "addr add 10.77.0.1/24 dev deep0\nlink set deep0 up\n"
    )
    deep.ip(f"addr add {DEEP}/24 dev eth0\nlink set lo up\nlink set eth0 up\nroute add default via 10.77.0.1\n")
    forwarding = "net.ipv4.ip_forward = 1\nnet.ipv6.conf.all.forwarding = 1\n"
    made.settings(forwarding)
    made.home.run(needs("sysctl"), "-q", "-p", "-", given="net.ipv4.ip_forward = 1\n")
    made.rules(_ROUTER)
    made.home.run(needs("nft"), "-f", "-", given=_INNER_ROUTER)


def udp_target(packet: bytes) -> int | None:
    """The UDP port that an IP packet goes to; None for anything else. Nothing here has IPv6 extension headers."""
    start, protocol = ((packet[0] & 0x0F) * 4, packet[9]) if packet[0] >> 4 == 4 else (40, packet[6])
    return int.from_bytes(packet[start + 2 : start + 4], "big") if protocol == socket.IPPROTO_UDP else None


def capture(packets: list[bytes]) -> bytes:
    """IP packets as a capture file (libpcap's format, link type 101: raw IP)."""
    head = struct.pack("<IHHiIII", 0xA1B2C3D4, 2, 4, 0, 0, 65535, 101)
    return head + b"".join(struct.pack("<IIII", 0, 0, len(one), len(one)) + one for one in packets)
