"""What the router has to let through, and what is refused before it stands on a sheet."""

from __future__ import annotations

from dataclasses import replace

import pytest

from hearthkey.core.errors import Refused
from hearthkey.core.forwarding import forwarding
from hearthkey.core.reach.scopes import Scope
from hearthkey.formats.forwarding_sheet import blocks
from hearthkey.formats.sheet import text
from tests.core.quince_terms import BOTH


def test_two_ports_of_udp_and_one_of_tcp() -> None:
    """Broken if it fails: a tunnel finds no way in; RFC 7296 sections 2 and 2.23 name 500 and 4500."""
    found = forwarding(BOTH, web_front=True)
    assert [(one.protocol, one.port) for one in found.openings] == [("UDP", 500), ("UDP", 4500), ("TCP", 443)]
    assert len(forwarding(BOTH, web_front=False).openings) == 2


@pytest.mark.parametrize(
    ("host", "families", "seen", "unseen"),
    [
        ("home.quince.example", (4, 6), ("port forwarding", "IP protocol 50", "TTL 60"), ()),
        ("192.0.2.7", (4,), ("port forwarding", "stands in every bundle"), ("IPv6 firewall", "TTL 60")),
        ("2001:db8:51::7", (6,), ("IP protocol 50", "stands in every bundle"), ("port forwarding", "TTL 60")),
    ],
)
def test_the_sheet_speaks_of_the_ways_that_there_are(
    host: str, families: tuple[int, ...], seen: tuple[str, ...], unseen: tuple[str, ...]
) -> None:
    """Broken if it fails: somebody looks for a forwarding that IPv6 does not have, or misses ESP in the firewall."""
    facts = forwarding(replace(BOTH, gateway_host=host), web_front=False)
    page = " ".join(text(blocks(facts)).split())
    assert facts.families == families
    assert all(one in page for one in seen)
    assert not any(one in page for one in unseen)


def test_what_is_known_stands_there_and_the_rest_is_left_to_the_pen() -> None:
    """Broken if it fails: the address that was typed is not the one that is printed, or no room is left for it."""
    told = forwarding(BOTH, web_front=True, inside="198.51.100.2", router="100.64.0.9")
    assert told.router is not None
    assert told.router[1] is Scope.SHARED
    page = text(blocks(told))
    assert page.count("inside: 198.51.100.2, port ") == 3
    assert "Forwarding" in page
    assert "____" in text(blocks(forwarding(BOTH, web_front=True)))


@pytest.mark.parametrize(
    ("inside", "code"),
    [
        ("", "gateway-inside-odd"),
        ("gateway", "gateway-inside-odd"),
        ("198.51.100.256", "gateway-inside-odd"),
        ("198.51.100.2/24", "gateway-inside-odd"),
        ("fe80::1%eth0", "gateway-inside-odd"),
        ("127.0.0.1", "gateway-inside-odd"),
        ("169.254.1.1", "gateway-inside-odd"),
        ("198.51.100.0", "gateway-inside-odd"),
        ("198.51.100.255", "gateway-inside-odd"),
        ("203.0.113.1", "gateway-inside-elsewhere"),
        ("192.168.1.1", "gateway-inside-elsewhere"),
        ("2001:db8:52::1", "gateway-inside-elsewhere"),
    ],
)
def test_an_address_that_is_not_at_home_is_refused(inside: str, code: str) -> None:
    """Broken if it fails: the router is told to pass everything on to nobody, or to another house."""
    with pytest.raises(Refused) as refused:
        forwarding(BOTH, web_front=False, inside=inside)
    assert refused.value.code == code
