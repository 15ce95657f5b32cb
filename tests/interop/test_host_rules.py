"""Real packets meet the rules and settings for the gateway's computer, in networks made for the purpose."""

from __future__ import annotations

import errno
import itertools
import os
import socket
from collections.abc import Iterator
from ipaddress import ip_network
from pathlib import Path
from typing import Any

import pytest

from hearthkey.core.host import HostFacts, host_facts
from hearthkey.core.network import FULL, SPLIT
from hearthkey.formats.host_files import TABLE, nftables, sysctl
from tests.interop.networks import (
    DEVICE,
    FAMILY,
    GATE_AT_HOME,
    GATE_OUTSIDE,
    HOME_SUBNETS,
    OTHER_DEVICE,
    OUTER,
    SERVER,
    STRANGER,
    SYN_ACK,
    TUNNEL,
    TUNNEL_SUBNETS,
    Networks,
    Place,
    Watch,
    heard_segment,
    networks,
    rule_counts,
    run,
)
from tests.judges import needs

PORT = 4433
MSS = {4: 1398, 6: 1378}
"""Inner MTU 1438 (ESP with AES-GCM in UDP over IPv4, 1500 outside) less 40 and 60 (RFC 9293 section 3.7.1)."""
BOTH = pytest.mark.parametrize("family", [4, 6])
REFUSED = {errno.EHOSTUNREACH, errno.EACCES}
"""What "administratively prohibited" comes to: icmp(7), RFC 1812 section 5.2.7.1, RFC 4443 section 3.1."""


def facts(**changed: object) -> HostFacts:
    """Quince Cottage with both versions of IP, split tunnel, no masquerading."""
    chosen: dict[str, Any] = {
        "home_subnets": map(ip_network, HOME_SUBNETS.values()),
        "tunnel_subnets": map(ip_network, TUNNEL_SUBNETS.values()),
        "tunnel": SPLIT,
        "masquerade": False,
        "mss4": MSS[4],
        "mss6": MSS[6],
        "outer_interface": OUTER,
        "tunnel_interface": TUNNEL,
    }
    return host_facts(**(chosen | changed))


@pytest.fixture
def net() -> Iterator[Networks]:
    """Four networks; the gateway passes nothing on yet."""
    with networks() as made:
        yield made


def load(net: Networks, chosen: HostFacts) -> None:
    """Load both files as the householder does, and tell home the way back where it has to know one."""
    net.rules(nftables(chosen))
    net.settings(sysctl(chosen))
    if not chosen.masquerade:
        net.home.routes(GATE_AT_HOME)


def udp(sender: Place, receiver: Place, address: str, family: int, port: int = PORT, source: str = "") -> str:
    """Send a packet there and an answer back; return the address that the receiver saw."""
    with (
        receiver.sock(family, socket.SOCK_DGRAM, (address, port)) as ear,
        sender.sock(family, socket.SOCK_DGRAM, (source, 0) if source else None) as mouth,
    ):
        mouth.sendto(b"kettle", (address, port))
        heard, seen = ear.recvfrom(64)
        ear.sendto(heard[::-1], seen)
        assert mouth.recv(64) == b"elttek"
        return str(seen[0])


def tcp(client: Place, server: Place, address: str, family: int) -> str:
    """Talk over TCP, both ways; return the address that the server saw."""
    with server.sock(family, socket.SOCK_STREAM, (address, PORT)) as door:
        door.listen()
        with client.sock(family, socket.SOCK_STREAM) as visitor:
            visitor.connect((address, PORT))
            inside, seen = door.accept()
            with inside:
                visitor.sendall(b"kettle")
                assert inside.recv(64) == b"kettle"
                inside.sendall(b"elttek")
                assert visitor.recv(64) == b"elttek"
        return str(seen[0])


def lost(net: Networks, sender: Place, address: str, family: int, source: str = "") -> bool:
    """Send a packet; True if the gateway had it and let nothing of it go."""
    watch = Watch(net.gate, PORT)
    with sender.sock(family, socket.SOCK_DGRAM, (source, 0) if source else None) as mouth:
        mouth.sendto(b"kettle", (address, PORT))
        return watch.stopped()


def refused(client: Place, address: str, family: int, port: int = PORT) -> bool:
    """Knock; True if somebody on the way said that it is not allowed.

    By UDP, for TCP may be busy with knocking when it is told so, and then asks once more a second later.
    """
    with client.sock(family, socket.SOCK_DGRAM) as visitor:
        visitor.connect((address, port))
        visitor.send(b"kettle")
        try:
            visitor.recv(64)
        except TimeoutError:
            return False
        except OSError as error:
            return error.errno in REFUSED
    return False


def variants() -> Iterator[HostFacts]:
    """Every kind of file that there is."""
    families: tuple[tuple[int, ...], ...] = ((4,), (6,), (4, 6))
    choices = (families, (SPLIT, FULL), (True, False), (OUTER, ""), (TUNNEL, ""), (True, False))
    for inner, tunnel, masquerade, outer, inside, others in itertools.product(*choices):
        yield facts(
            tunnel_subnets=[ip_network(TUNNEL_SUBNETS[one]) for one in inner],
            tunnel=tunnel,
            masquerade=masquerade,
            outer_interface=outer,
            tunnel_interface=inside,
            forwards_for_others=others,
        )


def test_nft_takes_every_variant(tmp_path: Path) -> None:
    """If this fails, the householder's nft refuses a file that the app wrote."""
    files = []
    for number, one in enumerate(variants()):
        files.append(tmp_path / f"{number}.nft")
        files[-1].write_text(nftables(one), encoding="ascii")
    script = 'nft=$1; shift; for one; do "$nft" -c -f "$one" || exit 1; done'
    own = [] if os.geteuid() == 0 else ["-r"]
    run(needs("unshare"), *own, "-n", "sh", "-c", script, "sh", needs("nft"), *files)
    assert len(files) == 96


def test_loading_twice_is_loading_once(net: Networks) -> None:
    """If this fails, every start of the gateway adds the rules once more, or somebody else's rules are gone."""
    net.rules("table inet others {\n    chain theirs {\n        tcp dport 22 accept\n    }\n}\n")
    net.rules(nftables(facts()))
    once = net.gate.run(needs("nft"), "--stateless", "list", "ruleset")
    net.rules(nftables(facts()))
    assert net.gate.run(needs("nft"), "--stateless", "list", "ruleset") == once
    assert once.count("table inet others") == once.count(f"table {TABLE}") == once.count("tcp dport 22 accept") == 1


def test_a_refused_file_leaves_the_old_rules(net: Networks) -> None:
    """If this fails, a slip while editing leaves the gateway without rules for a while."""
    net.rules(nftables(facts()))
    before = net.gate.run(needs("nft"), "--stateless", "list", "ruleset")
    with pytest.raises(AssertionError, match="nowhere"):
        net.rules(nftables(facts()).replace("jump from_tunnel", "jump nowhere"))
    assert net.gate.run(needs("nft"), "--stateless", "list", "ruleset") == before


@BOTH
def test_devices_reach_home(net: Networks, family: int) -> None:
    """If this fails, the gateway lets devices in and they find nothing; rp_filter is strict, RFC 3704 section 2.2."""
    load(net, facts())
    net.settings(f"net.ipv4.conf.all.rp_filter = 1\nnet/ipv4/conf/{TUNNEL}/rp_filter = 1\n")
    assert udp(net.road, net.home, SERVER[family], family) == DEVICE[family]
    assert tcp(net.road, net.home, SERVER[family], family) == DEVICE[family]


@BOTH
def test_nobody_at_home_begins(net: Networks, family: int) -> None:
    """If this fails, a fridge that was broken into can knock at the family's phones."""
    load(net, facts())
    assert refused(net.home, DEVICE[family], family)
    assert lost(net, net.home, DEVICE[family], family)


@BOTH
def test_split_devices_reach_home_only(net: Networks, family: int) -> None:
    """If this fails, a device gets to networks behind the gateway that are not home."""
    load(net, facts())
    assert refused(net.road, STRANGER[family], family)
    assert lost(net, net.road, STRANGER[family], family)


@BOTH
@pytest.mark.parametrize("outer", [OUTER, ""])
def test_devices_do_not_reach_each_other(net: Networks, family: int, outer: str) -> None:
    """If this fails, one stolen phone is a way to all others."""
    load(net, facts(tunnel=FULL, outer_interface=outer))
    assert refused(net.road, OTHER_DEVICE[family], family)
    assert lost(net, net.road, OTHER_DEVICE[family], family)


@BOTH
def test_strangers_do_not_reach_home(net: Networks, family: int) -> None:
    """If this fails, switching forwarding on has opened home to whoever is outside."""
    load(net, facts())
    assert lost(net, net.away, SERVER[family], family)


@BOTH
def test_without_the_rules_strangers_reach_home(net: Networks, family: int) -> None:
    """If this fails, the test above proves nothing: it is the rules that keep strangers out, not the networks."""
    net.settings(sysctl(facts()))
    net.home.routes(GATE_AT_HOME)
    assert udp(net.away, net.home, SERVER[family], family) == STRANGER[family]


@BOTH
@pytest.mark.parametrize("inside", [TUNNEL, ""])
def test_an_address_of_the_tunnel_cannot_be_forged(net: Networks, family: int, inside: str) -> None:
    """If this fails, whoever is outside takes a device's address and is at home."""
    load(net, facts(tunnel_interface=inside, forwards_for_others=True))
    net.away.address(OTHER_DEVICE[family])
    assert lost(net, net.away, SERVER[family], family, OTHER_DEVICE[family])


@BOTH
def test_nothing_for_a_device_goes_out_in_clear(net: Networks, family: int) -> None:
    """If this fails, answers to a device travel unencrypted as soon as the kernel's IPsec has forgotten it."""
    load(net, facts(tunnel_interface="", forwards_for_others=True))
    assert refused(net.home, DEVICE[family], family)
    assert lost(net, net.home, DEVICE[family], family)


@BOTH
def test_an_answer_does_not_go_out_in_clear_either(net: Networks, family: int) -> None:
    """If this fails, a conversation goes on unencrypted over the internet once the way into the tunnel is gone."""
    load(net, facts(forwards_for_others=True))
    with (
        net.home.sock(family, socket.SOCK_DGRAM, (SERVER[family], PORT)) as ear,
        net.road.sock(family, socket.SOCK_DGRAM) as mouth,
    ):
        mouth.sendto(b"kettle", (SERVER[family], PORT))
        _, seen = ear.recvfrom(64)
        net.gate.ip(f"route add {DEVICE[family]} via {STRANGER[family]} dev {OUTER}\n")
        watch = Watch(net.gate, seen[1])
        ear.sendto(b"elttek", seen)
        assert watch.stopped()


@BOTH
def test_nothing_passes_without_the_settings(net: Networks, family: int) -> None:
    """If this fails, the settings file is not what makes the gateway pass packets on."""
    net.rules(nftables(facts()))
    net.home.routes(GATE_AT_HOME)
    assert lost(net, net.road, SERVER[family], family)


def test_settings_are_only_for_the_families_of_the_tunnel(net: Networks) -> None:
    """If this fails, a household without IPv6 in its tunnel becomes a router for it nevertheless."""
    net.settings(sysctl(facts(tunnel_subnets=[ip_network(TUNNEL_SUBNETS[4])])))
    told = net.gate.run(needs("sysctl"), "-n", "net.ipv4.ip_forward", "net.ipv6.conf.all.forwarding")
    assert told.split() == ["1", "0"]


def test_the_line_for_router_advertisements_is_one_that_sysctl_takes(net: Networks) -> None:
    """If this fails, a householder who takes the # away gets a file that sysctl refuses; the name has a dot."""
    text = sysctl(facts())
    assert f"\n# net/ipv6/conf/{OUTER}/accept_ra = 2\n" in text
    net.settings(text.replace("# net/ipv6", "net/ipv6"))
    assert net.gate.run("cat", f"/proc/sys/net/ipv6/conf/{OUTER}/accept_ra").strip() == "2"


@BOTH
def test_masquerading_changes_the_source(net: Networks, family: int) -> None:
    """If this fails, home has to know the way to the tunnel although it was chosen that it need not."""
    load(net, facts(masquerade=True))
    assert udp(net.road, net.home, SERVER[family], family) == GATE_AT_HOME[family]
    assert tcp(net.road, net.home, SERVER[family], family) == GATE_AT_HOME[family]


@BOTH
def test_masquerading_is_for_devices_only(net: Networks, family: int) -> None:
    """If this fails, what others send through a router of the house loses its address too."""
    load(net, facts(masquerade=True, forwards_for_others=True))
    net.home.routes(GATE_AT_HOME)
    assert udp(net.away, net.home, SERVER[family], family) == STRANGER[family]


@BOTH
@pytest.mark.parametrize("outer", [OUTER, ""])
def test_a_full_tunnel_reaches_the_internet(net: Networks, family: int, outer: str) -> None:
    """If this fails, a phone with a full tunnel has no internet."""
    load(net, facts(tunnel=FULL, masquerade=True, outer_interface=outer))
    assert udp(net.road, net.away, STRANGER[family], family) == GATE_OUTSIDE[family]
    assert tcp(net.road, net.home, SERVER[family], family) == GATE_AT_HOME[family]


@BOTH
def test_a_router_of_the_house_goes_on_passing(net: Networks, family: int) -> None:
    """If this fails, loading the file takes the internet from the whole house."""
    load(net, facts(forwards_for_others=True))
    assert tcp(net.home, net.away, STRANGER[family], family) == SERVER[family]
    assert udp(net.road, net.home, SERVER[family], family) == DEVICE[family]
    assert refused(net.home, DEVICE[family], family)


@BOTH
@pytest.mark.parametrize("wish", [None, 900])
def test_segments_are_made_to_fit(net: Networks, family: int, wish: int | None) -> None:
    """If this fails, pages load half, and nobody knows why: segments do not fit, or small ones were made larger."""
    load(net, facts())
    with (
        net.home.sock(family, socket.SOCK_STREAM, (SERVER[family], PORT)) as door,
        net.road.sock(family, socket.SOCK_STREAM) as visitor,
        net.home.ear("eth0") as at_home,
        net.road.ear("eth0") as on_the_road,
    ):
        for one in (door, visitor):
            if wish is not None:
                one.setsockopt(socket.IPPROTO_TCP, socket.TCP_MAXSEG, wish)
        door.listen()
        visitor.connect((SERVER[family], PORT))
        door.accept()[0].close()
        begun = heard_segment(on_the_road)
        answered = heard_segment(on_the_road, SYN_ACK)
        assert heard_segment(at_home) == (MSS[family] if wish is None else wish)
    assert begun == (1500 - {4: 40, 6: 60}[family] if wish is None else wish)
    assert answered == (MSS[family] if wish is None else wish)


@BOTH
def test_ssh_is_where_it_was(net: Networks, family: int) -> None:
    """If this fails, loading the file locks the householder out of the gateway, or opens what others had shut."""
    shut = 4434
    net.rules(
        "table inet others {\n    chain input {\n        type filter hook input priority filter; policy accept;\n"
        f"        udp dport {shut} reject with icmpx admin-prohibited\n    }}\n}}\n"
    )
    load(net, facts())
    assert tcp(net.away, net.gate, GATE_OUTSIDE[family], family) == STRANGER[family]
    assert tcp(net.road, net.gate, GATE_AT_HOME[family], family) == DEVICE[family]
    assert refused(net.away, GATE_OUTSIDE[family], family, shut)


@BOTH
def test_what_the_tunnel_needs_is_seen_to_arrive(net: Networks, family: int) -> None:
    """If this fails, the counters do not tell the householder whether the home router forwards the three."""
    load(net, facts())
    for port in (500, 4500):
        assert udp(net.away, net.gate, GATE_OUTSIDE[family], family, port) == STRANGER[family]
    assert rule_counts(net.gate, TABLE, "arriving") == [2, 0]
    with net.away.inside():
        esp = socket.socket(FAMILY[family], socket.SOCK_RAW, socket.IPPROTO_ESP)
    with esp:
        esp.sendto(bytes(64), (GATE_OUTSIDE[family], 0))
        # An answered packet behind it on the same wire: what was sent first has arrived by then.
        udp(net.away, net.gate, GATE_OUTSIDE[family], family, PORT)
    assert rule_counts(net.gate, TABLE, "arriving") == [2, 1]


def test_a_gateway_beside_the_router_gives_no_short_cuts(net: Networks) -> None:
    """If this fails, home learns a way to the device that leads past the tunnel (RFC 1812 section 5.2.7.2).

    The kernel sends its advice before the packet meets the rules, so it can be provoked without IPsec.
    """
    load(net, facts(tunnel_interface=""))
    neighbour = "198.51.100.77"
    net.home.ip(f"route add {neighbour}/32 via {GATE_AT_HOME[4]}\n")
    assert lost(net, net.home, neighbour, 4)
    assert rule_counts(net.gate, TABLE, "leaving")[0] >= 1
