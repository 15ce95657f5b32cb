"""Four small networks that a test makes for itself: the road, the gateway, home, and somebody else's.

network_namespaces(7): each has its own addresses, packet rules and kernel settings, and none leads anywhere else.
They have no names, only open files, so the kernel removes them with the test, even where that is killed.
"""

from __future__ import annotations

import ctypes
import json
import os
import socket
import subprocess
from collections.abc import Iterator
from contextlib import ExitStack, contextmanager, suppress
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from tests.judges import needs, unable

_CLONE_NEWNET = 0x40000000
_HERE = Path("/proc/thread-self/ns/net")
_ETH_P_ALL = 0x0003
LIMIT_SECONDS = 20.0
"""How long a packet may take before a test is given up. No verdict hangs on it."""

TUNNEL, HOME, OUTER = "tunnel0", "home0", "outer.0"
"""What the gateway's interfaces are called; the last has a dot, as VLANs have."""

HOME_SUBNETS = {4: "198.51.100.0/24", 6: "2001:db8:51::/64"}
TUNNEL_SUBNETS = {4: "203.0.113.0/24", 6: "2001:db8:203::/64"}
GATE_AT_HOME = {4: "198.51.100.1", 6: "2001:db8:51::1"}
GATE_OUTSIDE = {4: "192.0.2.1", 6: "2001:db8:192::1"}
DEVICE = {4: "203.0.113.10", 6: "2001:db8:203::10"}
OTHER_DEVICE = {4: "203.0.113.77", 6: "2001:db8:203::77"}
SERVER = {4: "198.51.100.20", 6: "2001:db8:51::20"}
STRANGER = {4: "192.0.2.50", 6: "2001:db8:192::50"}
"""RFC 5737 and RFC 3849."""

SYN, SYN_ACK = 0x02, 0x12
"""TCP flags: how a connection is begun, and how the other side answers (RFC 9293 section 3.1)."""

FAMILY = {4: socket.AF_INET, 6: socket.AF_INET6}

_ADDRESSES = {
    "gate": f"""\
addr add 203.0.113.1/24 dev {TUNNEL}
addr add 2001:db8:203::1/64 dev {TUNNEL} nodad
addr add {GATE_AT_HOME[4]}/24 dev {HOME}
addr add {GATE_AT_HOME[6]}/64 dev {HOME} nodad
addr add {GATE_OUTSIDE[4]}/24 dev {OUTER}
addr add {GATE_OUTSIDE[6]}/64 dev {OUTER} nodad
link set lo up
link set {TUNNEL} up
link set {HOME} up
link set {OUTER} up
""",
    "road": f"""\
addr add {DEVICE[4]}/32 dev eth0
addr add {DEVICE[6]}/128 dev eth0 nodad
link set lo up
link set eth0 up
route add 203.0.113.1/32 dev eth0
route add 2001:db8:203::1/128 dev eth0
route add default via 203.0.113.1
route add default via 2001:db8:203::1
""",
    "home": f"""\
addr add {SERVER[4]}/24 dev eth0
addr add {SERVER[6]}/64 dev eth0 nodad
link set lo up
link set eth0 up
""",
    "away": f"""\
addr add {STRANGER[4]}/24 dev eth0
addr add {STRANGER[6]}/64 dev eth0 nodad
link set lo up
link set eth0 up
""",
}


def run(*command: str | Path, given: str = "") -> str:
    """Run a command that has to succeed; return what it prints."""
    done = subprocess.run(command, input=given, capture_output=True, text=True, timeout=60, check=False)
    assert done.returncode == 0, f"{command}: {done.stdout}{done.stderr}"
    return done.stdout


@dataclass(frozen=True)
class Place:
    """One network.

    Args:
        file: an open file that stands for its namespace.
    """

    file: int

    @property
    def path(self) -> str:
        """Where programs find it."""
        return f"/proc/{os.getpid()}/fd/{self.file}"

    def run(self, *command: str | Path, given: str = "") -> str:
        """Run a command there, which has to succeed."""
        return run(needs("nsenter"), f"--net={self.path}", *command, given=given)

    def ip(self, lines: str) -> None:
        """Change its addresses, links and ways, one command of the program ip to a line."""
        self.run(needs("ip"), "-batch", "-", given=lines)

    @contextmanager
    def inside(self) -> Iterator[None]:
        """Be there for the length of a `with` block; sockets made inside stay there for good."""
        with _HERE.open(encoding="ascii") as here:
            _called("setns", self.file, _CLONE_NEWNET)
            try:
                yield
            finally:
                _called("setns", here.fileno(), _CLONE_NEWNET)

    def sock(self, family: int, kind: int, bound: tuple[str, int] | None = None) -> socket.socket:
        """A socket of an IP version there."""
        with self.inside():
            made = socket.socket(FAMILY[family], kind)
        made.settimeout(LIMIT_SECONDS)
        if bound is not None:
            made.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
            made.bind(bound)
        return made

    def ear(self, interface: str) -> socket.socket:
        """A socket that hears every IP packet of an interface (packet(7))."""
        with self.inside():
            made = socket.socket(socket.AF_PACKET, socket.SOCK_DGRAM, socket.htons(_ETH_P_ALL))
        made.bind((interface, _ETH_P_ALL))
        made.settimeout(LIMIT_SECONDS)
        return made

    def settle(self) -> None:
        """Let it use IPv6 addresses at once, instead of asking for a second whether somebody else has them.

        And let it take no advice about shorter ways: the road is no real tunnel, where there is none.
        """
        with self.inside():
            for setting in (
                "ipv6/conf/default/accept_dad",
                *(f"ipv{one}/conf/default/accept_redirects" for one in FAMILY),
            ):
                Path("/proc/sys/net", setting).write_text("0", encoding="ascii")

    def routes(self, via: dict[int, str]) -> None:
        """Let everything unknown go through a neighbour."""
        self.ip("".join(f"route add default via {address}\n" for address in via.values()))

    def address(self, address: str) -> None:
        """Give it one more address, which belongs to nobody's network."""
        self.ip(f"addr add {address} dev eth0\n")


@dataclass(frozen=True)
class Networks:
    """The road with a device, the gateway in the middle, home with a server, and a stranger's network."""

    road: Place
    gate: Place
    home: Place
    away: Place

    def rules(self, text: str) -> None:
        """Load packet rules at the gateway."""
        self.gate.run(needs("nft"), "-f", "-", given=text)

    def settings(self, text: str) -> None:
        """Load kernel settings at the gateway."""
        self.gate.run(needs("sysctl"), "-q", "-p", "-", given=text)


@contextmanager
def networks() -> Iterator[Networks]:
    """Make them for the length of a `with` block."""
    if os.geteuid() != 0:
        unable("only root may make networks and join them (network_namespaces(7))")
    with ExitStack() as undone:
        places = {}
        for name in _ADDRESSES:
            places[name] = Place(new_namespace())
            undone.callback(os.close, places[name].file)
            places[name].settle()
        for interface, name in ((TUNNEL, "road"), (HOME, "home"), (OUTER, "away")):
            places["gate"].ip(f"link add {interface} type veth peer name eth0 netns {places[name].path}\n")
        for name, lines in _ADDRESSES.items():
            places[name].ip(lines)
        made = Networks(**places)
        made.away.routes(GATE_OUTSIDE)
        # A new network has some settings of the computer it is made on, and that may be a router.
        made.settings(
            "net.ipv4.ip_forward = 0\nnet.ipv6.conf.all.forwarding = 0\nnet.ipv4.conf.all.rp_filter = 0\n"
            "net.ipv4.icmp_ratelimit = 0\nnet.ipv6.icmp.ratelimit = 0\n"
        )
        yield made


def new_namespace() -> int:
    """Make a network with nothing in it; return the open file that keeps it."""
    with _HERE.open(encoding="ascii") as here:
        try:
            _called("unshare", _CLONE_NEWNET)
        except OSError as error:
            unable(f"no network of its own can be made here: {error}")
        try:
            return os.open(_HERE, os.O_RDONLY | os.O_CLOEXEC)
        finally:
            _called("setns", here.fileno(), _CLONE_NEWNET)


def _called(name: str, *arguments: int) -> None:
    """Call a function of the C library that Python 3.11 has no name for."""
    libc = ctypes.CDLL(None, use_errno=True)
    if getattr(libc, name)(*arguments) != 0:
        raise OSError(ctypes.get_errno(), name)


class Watch:
    """Counts the packets to one port that come to the gateway and that leave it again.

    It stands before and behind all rules that are tried here, and decides nothing.
    """

    def __init__(self, gate: Place, port: int) -> None:
        self._gate = gate
        gate.run(
            needs("nft"),
            "-f",
            "-",
            given=f"""
table inet watching {{
    counter arrived {{
    }}
    counter left {{
    }}
    chain before {{
        type filter hook prerouting priority -450; policy accept;
        meta l4proto {{ tcp, udp }} th dport {port} counter name arrived
    }}
    chain behind {{
        type filter hook postrouting priority 450; policy accept;
        meta l4proto {{ tcp, udp }} th dport {port} counter name left
    }}
}}
""",
        )

    def count(self) -> tuple[int, int]:
        """How many came, and how many of them left."""
        found = counters(self._gate, "inet watching")
        return found["arrived"], found["left"]

    def stopped(self) -> bool:
        """Wait until something came; True if nothing of it left.

        A packet is through all rules before the next program can look, so the second count is the whole truth
        about what the first one saw.
        """
        for _ in range(1000):
            if self.count()[0]:
                return self.count()[1] == 0
        raise AssertionError("the packet never came to the gateway")


def counters(place: Place, table: str) -> dict[str, int]:
    """Packets by the name of the counter."""
    told: dict[str, Any] = json.loads(place.run(needs("nft"), "-j", "list", "counters", "table", *table.split()))
    return {one["counter"]["name"]: one["counter"]["packets"] for one in told["nftables"] if "counter" in one}


def rule_counts(place: Place, table: str, chain: str) -> list[int]:
    """Packets that each counting rule of a chain has met, in order."""
    told: dict[str, Any] = json.loads(place.run(needs("nft"), "-j", "list", "chain", *table.split(), chain))
    rules = [one["rule"]["expr"] for one in told["nftables"] if "rule" in one]
    return [part["counter"]["packets"] for parts in rules for part in parts if "counter" in part]


def largest_segment(packet: bytes, wanted: int) -> int | None:
    """The MSS that a packet of TCP flags `wanted` names (RFC 9293 section 3.2, option kind 2); else None."""
    version = packet[0] >> 4
    start = (packet[0] & 0x0F) * 4 if version == 4 else 40
    protocol = packet[9] if version == 4 else packet[6]
    if version not in FAMILY or protocol != socket.IPPROTO_TCP or packet[start + 13] & 0x12 != wanted:
        return None
    options = packet[start + 20 : start + (packet[start + 12] >> 4) * 4]
    while options and options[0] != 0:
        if options[0] == 1:
            options = options[1:]
        elif options[0] == 2:
            return int.from_bytes(options[2:4], "big")
        else:
            options = options[options[1] :]
    return None


def heard_segment(ear: socket.socket, wanted: int = SYN) -> int:
    """Listen until such a packet goes by, and return the MSS that it names."""
    while True:
        with suppress(IndexError):
            found = largest_segment(ear.recv(2048), wanted)
            if found is not None:
                return found
