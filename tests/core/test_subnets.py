"""Subnets at home and in the tunnel, and where a gateway will not be reached."""

from __future__ import annotations

import ipaddress

import pytest
from hypothesis import given
from hypothesis import strategies as st

from hearthkey.core import network
from hearthkey.core.errors import Refused
from tests.fakes.dice import SeededDice


def refusal(text: str) -> Refused:
    """Return what a subnet is refused with."""
    with pytest.raises(Refused) as refused:
        network.subnet(text, "home subnet")
    return refused.value


@pytest.mark.parametrize("text", ["198.51.100.0/24", " 10.0.0.0/8 ", "2001:db8:51::/64", "192.0.2.4/32"])
def test_subnets_of_both_families_are_read(text: str) -> None:
    """Broken if it fails: a home has no way to say where it is."""
    assert str(network.subnet(text, "home subnet")) == text.strip()


@pytest.mark.parametrize(
    "text",
    [
        "",
        "home",
        "198.51.100.0",
        "198.51.100.0/33",
        "198.51.100/24",
        "2001:db8::/129",
        "198.51.100.0/-1",
        "fe80::%a/64",
    ],
)
def test_what_is_no_subnet_is_refused(text: str) -> None:
    """Broken if it fails: a device routes what it should not, or nothing at all."""
    assert refusal(text).code == "subnet-malformed"


def test_host_bits_are_refused_with_what_was_meant() -> None:
    """Broken if it fails: a router's own address is taken for the subnet without a word."""
    refused = refusal("198.51.100.1/24")
    assert (refused.code, refused.facts["meant"]) == ("subnet-has-host-bits", "198.51.100.0/24")


@pytest.mark.parametrize("text", ["0.0.0.0/0", "::/0"])
def test_the_whole_internet_is_no_home(text: str) -> None:
    """Broken if it fails: a split tunnel takes all traffic in secret."""
    assert refusal(text).code == "subnet-too-wide"


def of(*texts: str) -> list[network.Subnet]:
    """Subnets from texts."""
    return [network.subnet(text, "subnet") for text in texts]


@pytest.mark.parametrize(
    ("home", "tunnel"),
    [
        (["198.51.100.0/24"], "198.51.100.0/24"),
        (["198.51.0.0/16"], "198.51.100.0/24"),
        (["198.51.100.128/25"], "198.51.100.0/24"),
        (["2001:db8::/32"], "2001:db8:51::/64"),
        (["198.51.100.0/24", "198.51.100.0/25"], "203.0.113.0/24"),
    ],
)
def test_overlapping_subnets_are_refused(home: list[str], tunnel: str) -> None:
    """Broken if it fails: one address lies at home and in the tunnel, and neither is reached."""
    with pytest.raises(Refused) as refused:
        network.check_apart(of(*home), of(tunnel)[0])
    assert refused.value.code == "subnets-overlap"


def test_subnets_of_two_families_never_overlap() -> None:
    """Broken if it fails: a home with both families cannot be founded."""
    network.check_apart(of("198.51.100.0/24", "2001:db8:51::/64"), of("203.0.113.0/24")[0])
    assert not of("198.51.100.0/24")[0].overlaps(of("203.0.113.0/24")[0])


def test_a_home_without_subnets_is_refused() -> None:
    """Broken if it fails: bundles lead into nothing."""
    with pytest.raises(Refused) as refused:
        network.check_apart([], of("203.0.113.0/24")[0])
    assert refused.value.code == "subnets-missing"


def test_a_tunnel_of_one_address_is_refused() -> None:
    """Broken if it fails: the second device gets no inner address."""
    with pytest.raises(Refused) as refused:
        network.check_apart(of("198.51.100.0/24"), of("203.0.113.0/31")[0])
    assert refused.value.code == "subnet-too-small"


@given(st.text(max_size=8), st.lists(st.ip_addresses(v=4, network="10.0.0.0/8"), max_size=5))
def test_the_proposed_tunnel_keeps_away_from_home(seed: str, addresses: list[ipaddress.IPv4Address]) -> None:
    """Broken if it fails: the app proposes a tunnel that it would refuse."""
    home = [ipaddress.ip_network(f"{address}/16", strict=False) for address in addresses] or of("198.51.100.0/24")
    proposed = network.quiet_tunnel_subnet(home, SeededDice(seed).below)
    assert proposed.prefixlen == 24
    assert proposed.is_private
    assert not any(proposed.overlaps(one) for one in home if isinstance(one, ipaddress.IPv4Network))


def test_a_home_that_takes_up_ten_gets_its_tunnel_elsewhere() -> None:
    """Broken if it fails: the app looks for a free subnet for ever."""
    proposed = network.quiet_tunnel_subnet(of("10.0.0.0/8"), SeededDice().below)
    assert proposed.subnet_of(ipaddress.ip_network("172.16.0.0/12"))  # type: ignore[arg-type]  # version 4, seen below
    assert proposed.version == 4


def test_a_home_that_takes_up_everything_is_told() -> None:
    """Broken if it fails: the app looks for a free subnet for ever."""
    with pytest.raises(Refused) as refused:
        network.quiet_tunnel_subnet(of("10.0.0.0/8", "172.16.0.0/12"), SeededDice().below)
    assert refused.value.code == "no-quiet-subnet"


@pytest.mark.parametrize(
    ("host", "code"),
    [
        ("10.1.2.3", "gateway-only-at-home"),  # RFC 1918
        ("172.31.255.255", "gateway-only-at-home"),
        ("192.168.178.1", "gateway-only-at-home"),
        ("100.64.0.1", "gateway-shared-address"),  # RFC 6598
        ("100.127.255.255", "gateway-shared-address"),
        ("169.254.1.1", "gateway-only-at-home"),  # RFC 3927
        ("127.0.0.1", "gateway-only-at-home"),
        ("::1", "gateway-only-at-home"),
        ("fd00::1", "gateway-only-at-home"),  # RFC 4193
        ("fe80::1", "gateway-only-at-home"),  # RFC 4291 section 2.5.6
        ("quince.local", "gateway-only-at-home"),  # RFC 6762
        ("localhost", "gateway-only-at-home"),  # RFC 6761
        ("gate.localhost", "gateway-only-at-home"),
        ("gate.home.arpa", "gateway-only-at-home"),  # RFC 8375
        ("gate", "gateway-only-at-home"),
        ("192.0.2.1", "gateway-bare-address"),  # RFC 5737
        ("198.51.100.1", "gateway-bare-address"),
        ("203.0.113.1", "gateway-bare-address"),
        ("2001:db8::1", "gateway-bare-address"),  # RFC 3849
        ("100.128.0.1", "gateway-bare-address"),
        ("172.32.0.1", "gateway-bare-address"),
    ],
)
def test_gateways_that_work_at_home_only_get_a_caution(host: str, code: str) -> None:
    """Broken if it fails: a relative is far away when they learn that nothing gets in."""
    assert network.gateway_cautions(host) == (network.Caution(code, host),)


@pytest.mark.parametrize("host", ["home.quince.example", "locals.example", "mylocal.example"])
def test_a_public_name_needs_no_caution(host: str) -> None:
    """Broken if it fails: cautions about nothing, which nobody reads twice."""
    assert network.gateway_cautions(host) == ()


def test_dns_servers_outside_get_a_caution() -> None:
    """Broken if it fails: names of the home leave it unnoticed."""
    home, tunnel = of("198.51.100.0/24", "2001:db8:51::/64"), of("203.0.113.0/24")[0]
    servers = ("198.51.100.1", "203.0.113.1", "192.0.2.53", "2001:db8:51::1", "2001:db8:52::1")
    told = network.dns_cautions(servers, home, tunnel)
    assert [one.subject for one in told] == ["192.0.2.53", "2001:db8:52::1"]


@pytest.mark.parametrize("text", ["dns.quince.example", "0.0.0.0", "::", "224.0.0.1", "ff02::fb", ""])  # noqa: S104 - read, not bound
def test_what_is_no_dns_server_is_refused(text: str) -> None:
    """Broken if it fails: a device asks nobody for names."""
    with pytest.raises(Refused) as refused:
        network.dns_server(text)
    assert refused.value.code == "dns-malformed"
