"""What may be said about the gateway's own computer, and what is refused before it stands in a file."""

from __future__ import annotations

from ipaddress import ip_network

import pytest

from hearthkey.core.errors import Refused
from hearthkey.core.host import HostFacts, WebFacts, host_facts, interface_name, web_facts
from hearthkey.core.network import FULL, SPLIT

HOME = (ip_network("198.51.100.0/24"), ip_network("2001:db8:51::/64"))
INNER = (ip_network("203.0.113.0/24"),)


def host(**changed: object) -> HostFacts:
    """Quince Cottage."""
    chosen: dict[str, object] = {
        "home_subnets": HOME,
        "tunnel_subnets": INNER,
        "tunnel": SPLIT,
        "masquerade": True,
        "mss4": 1398,
        "mss6": 1378,
    }
    return host_facts(**(chosen | changed))  # type: ignore[arg-type] # what is handed on is what is tried


def web(**changed: object) -> WebFacts:
    """The web front of Quince Cottage."""
    chosen: dict[str, object] = {
        "host": "home.quince.example",
        "folder": "/etc/quince/in-force",
        "page": "http://127.0.0.1:8080",
    }
    return web_facts(**(chosen | changed))  # type: ignore[arg-type] # as above


@pytest.mark.parametrize("name", ["eth0", "enp3s0f1", "eth0.100", "br-lan", "wlan0_5", "v6@home", "a" * 15, "7"])
def test_names_that_linux_gives(name: str) -> None:
    """If this fails, a householder cannot name the interface that is there."""
    assert interface_name(f" {name} ", "outer interface") == name


@pytest.mark.parametrize(
    "name",
    ["a" * 16, "eth0 up", "eth/0", "eth:0", "eth*", 'eth"', "eth\\", "..", ".", "-a", "é0", "eth0\n}", "lo", "$x"],
)
def test_names_that_mean_something_else(name: str) -> None:
    """If this fails, a name breaks out of its quotes, or stands for all interfaces that begin like it (nft(8))."""
    with pytest.raises(Refused) as error:
        interface_name(name, "outer interface")
    assert error.value.code == "interface-odd"


def test_no_interface_is_no_name() -> None:
    """If this fails, a householder who named none is refused."""
    assert interface_name("  ", "outer interface") == ""


def test_facts_by_family() -> None:
    """If this fails, rules of one version of IP are made from the subnets of the other."""
    both = host(tunnel_subnets=(ip_network("2001:db8:203::/64"), *INNER))
    assert both.families == (4, 6)
    assert (both.home(4), both.home(6)) == ((HOME[0],), (HOME[1],))
    assert (both.tunnel(4), both.mss(4), both.mss(6)) == (INNER, 1398, 1378)
    assert host().families == (4,)


@pytest.mark.parametrize(
    ("changed", "code"),
    [
        ({"outer_interface": "eth 0"}, "interface-odd"),
        ({"tunnel_interface": "*"}, "interface-odd"),
        ({"outer_interface": "eth0", "tunnel_interface": "eth0"}, "interfaces-same"),
        ({"mss4": 535}, "mss-out-of-range"),
        ({"mss4": 65496}, "mss-out-of-range"),
        ({"mss6": 65476}, "mss-out-of-range"),
        ({"home_subnets": HOME[1:]}, "host-families-apart"),
        ({"tunnel_subnets": ()}, "host-families-apart"),
        ({"tunnel_subnets": (), "tunnel": FULL}, "host-families-apart"),
        ({"home_subnets": ()}, "subnets-missing"),
        ({"tunnel_subnets": (ip_network("198.51.100.128/25"),)}, "subnets-overlap"),
        ({"tunnel_subnets": (*INNER, ip_network("203.0.113.0/26"))}, "subnets-overlap"),
        ({"tunnel": "half"}, "tunnel-kind-unknown"),
    ],
)
def test_what_cannot_be_a_gateway(changed: dict[str, object], code: str) -> None:
    """If this fails, a file is written that nft refuses, or that lets nothing through."""
    with pytest.raises(Refused) as error:
        host(**changed)
    assert error.value.code == code


def test_a_full_tunnel_needs_no_home_of_its_family() -> None:
    """If this fails, a home with IPv6 alone cannot give its devices the IPv4 internet."""
    assert host(home_subnets=HOME[1:], tunnel=FULL).full


@pytest.mark.parametrize("size", [536, 1158, 65475])
def test_segment_sizes_that_can_be_had(size: int) -> None:
    """If this fails, narrow lines are refused: 1158 is what IPv6 has inside a way of 1280 octets."""
    assert host(mss6=size).mss(6) == size


@pytest.mark.parametrize(
    ("page", "meant"),
    [
        ("http://127.0.0.1:8080", "http://127.0.0.1:8080"),
        (" HTTP://Kitchen.quince.example/ ", "http://kitchen.quince.example"),
        ("https://[2001:DB8:0::5]:8443/house", "https://[2001:db8::5]:8443/house/"),
        ("http://198.51.100.5/a/b.c/", "http://198.51.100.5/a/b.c/"),
        ("https://home.quince.example:8443", "https://home.quince.example:8443"),
    ],
)
def test_pages(page: str, meant: str) -> None:
    """If this fails, nginx asks for another page: behind a path without a slash it writes the next name at once."""
    assert web(page=page).page == meant


@pytest.mark.parametrize(
    "page",
    [
        "127.0.0.1:8080",
        "ftp://127.0.0.1",
        "http://odile@127.0.0.1",
        "http://127.0.0.1/?a",
        "http://127.0.0.1/#a",
        "http://127.0.0.1/$host",
        "http://127.0.0.1/;",
        "http://127.0.0.1/}",
        "http://127.0.0.1/ a",
        "http://127.0.0.1/\na",
        "http://127.0.0.1:0",
        "http://127.0.0.1:65536",
        "http://",
        "unix:/run/page",
    ],
)
def test_what_is_no_page(page: str) -> None:
    """If this fails, a page's address writes settings of its own into nginx's file."""
    with pytest.raises(Refused) as error:
        web(page=page)
    assert error.value.code == "web-page-odd"


@pytest.mark.parametrize("page", ["https://home.quince.example", "https://HOME.quince.example:443/a"])
def test_the_front_does_not_show_itself(page: str) -> None:
    """If this fails, one visit asks the gateway for itself until it gives up."""
    with pytest.raises(Refused) as error:
        web(page=page)
    assert error.value.code == "web-page-is-front"


@pytest.mark.parametrize("folder", ["etc/quince", "", '/etc/"', "/etc/\\", "/etc/$x", "/etc/\n", "/" + "a" * 500])
def test_folders_that_nginx_would_misread(folder: str) -> None:
    """If this fails, a folder's name breaks out of its quotes, or is read as a variable."""
    with pytest.raises(Refused) as error:
        web(folder=folder)
    assert error.value.code == "web-folder-odd"


def test_where_to_listen() -> None:
    """If this fails, an IPv6 address is written without the brackets of RFC 3986 section 3.2.2."""
    facts = web(addresses=("192.0.2.1", "2001:DB8::1"), host="2001:db8:0::9", port=8443)
    assert (facts.addresses, facts.host) == (("192.0.2.1", "[2001:db8::1]"), "[2001:db8::9]")


@pytest.mark.parametrize(
    ("changed", "code"),
    [
        ({"port": 0}, "web-port-odd"),
        ({"port": 65536}, "web-port-odd"),
        ({"addresses": ("kitchen",)}, "web-listen-odd"),
        ({"addresses": ("fe80::1%eth0",)}, "web-listen-odd"),
        ({"host": "home_quince"}, "host-malformed"),
        ({"page": "http://kitchen_/"}, "web-page-odd"),
    ],
)
def test_what_cannot_be_a_front(changed: dict[str, object], code: str) -> None:
    """If this fails, a file is written that nginx refuses."""
    with pytest.raises(Refused) as error:
        web(**changed)
    assert error.value.code == code
