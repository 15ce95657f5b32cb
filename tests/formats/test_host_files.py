"""The packet rules and kernel settings as text; what they do is tried in tests/interop/test_host_rules.py."""

from __future__ import annotations

from collections.abc import Callable
from ipaddress import ip_network

import pytest

from hearthkey.core.host import HostFacts, host_facts
from hearthkey.core.network import FULL, SPLIT
from hearthkey.formats.host_files import nftables, sysctl

HOME = ("198.51.100.0/24", "192.0.2.0/26", "2001:db8:51::/64")


def facts(
    *inner: str, tunnel: str = SPLIT, masquerade: bool = False, inside: str = "tun0", others: bool = False
) -> HostFacts:
    """Quince Cottage."""
    return host_facts(
        home_subnets=map(ip_network, HOME),
        tunnel_subnets=map(ip_network, inner or ("203.0.113.0/24",)),
        tunnel=tunnel,
        masquerade=masquerade,
        mss4=1398,
        mss6=1378,
        outer_interface="eth0.7",
        tunnel_interface=inside,
        forwards_for_others=others,
    )


VARIANTS = [
    facts(*inner, tunnel=tunnel, masquerade=masquerade, inside=inside, others=others)
    for inner in (("203.0.113.0/24",), ("203.0.113.0/24", "2001:db8:203::/64"))
    for tunnel in (SPLIT, FULL)
    for masquerade in (True, False)
    for inside in ("tun0", "")
    for others in (True, False)
]


def rules(text: str) -> list[str]:
    """The lines that are no comments."""
    return [line.strip() for line in text.split("\n") if line.strip() and not line.strip().startswith("#")]


@pytest.mark.parametrize("write", [nftables, sysctl])
@pytest.mark.parametrize("chosen", VARIANTS, ids=range(len(VARIANTS)))
def test_every_line_says_what_it_does(chosen: HostFacts, write: Callable[[HostFacts], str]) -> None:
    """If this fails, the householder loads a line that nobody explained; plain ASCII reads alike on every console."""
    text = write(chosen)
    lines = text.split("\n")
    assert text.isascii()
    assert text.endswith("\n")
    for number, line in enumerate(lines):
        if line.strip() and not line.lstrip().startswith("#"):
            assert lines[number - 1].lstrip().startswith("# ") or line.strip().startswith("}  # ")


def test_one_family_has_no_rules_of_the_other() -> None:
    """If this fails, nft is given a set of IPv6 addresses that nobody has."""
    assert not [rule for rule in rules(nftables(facts())) if "ip6" in rule or "6 {" in rule]
    assert [line.split(" =")[0] for line in rules(sysctl(facts("2001:db8:203::/64")))] == [
        "net.ipv6.conf.all.forwarding"
    ]


def test_all_home_subnets_are_named() -> None:
    """If this fails, half of the home cannot be reached."""
    assert "elements = { 198.51.100.0/24, 192.0.2.0/26 }" in rules(nftables(facts()))


def test_nobody_elses_rules_are_touched() -> None:
    """If this fails, loading the file empties rules of the gateway's own, and with them its firewall."""
    for chosen in VARIANTS:
        text = "\n".join(rules(nftables(chosen)))
        assert "flush" not in text
        assert [line for line in text.split("\n") if line.startswith(("table", "delete", "add"))] == [
            "table inet hearthkey_home",
            "delete table inet hearthkey_home",
            "table inet hearthkey_home {",
        ]


def test_a_way_back_is_asked_for_where_it_is_needed() -> None:
    """If this fails, a householder without masquerading is not told why nothing answers."""
    asked = "a route that leads 203.0.113.0/24 to this computer"
    plain, hidden = (" ".join(nftables(facts(masquerade=one)).replace("#", "").split()) for one in (False, True))
    assert (asked in plain, asked in hidden) == (True, False)
    masked = [
        [rule for rule in rules(nftables(facts(masquerade=one))) if "masquerade" in rule] for one in (False, True)
    ]
    assert (len(masked[0]), len(masked[1])) == (0, 1)


def test_nothing_here_sets_what_is_not_needed() -> None:
    """If this fails, the file changes how the gateway's kernel treats packets that are no business of the tunnel."""
    assert rules(sysctl(facts("203.0.113.0/24", "2001:db8:203::/64"))) == [
        "net.ipv4.ip_forward = 1",
        "net.ipv6.conf.all.forwarding = 1",
    ]
