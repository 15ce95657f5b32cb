"""What a gateway is told: identities, selectors, addresses, lifetimes, and the room inside a packet."""

from __future__ import annotations

import ipaddress
from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from hearthkey.core.errors import Refused
from hearthkey.core.keysets import BROAD, COMPACT, SUITE_384
from hearthkey.core.room import inner_mtu, mss
from hearthkey.core.tunnel import LONGEST_CHILD, SIGNINGS, Selector, identity, selector, terms
from tests.core.quince_terms import BOTH, FULL, OLD_LINE, SIX

GCM, CBC = "ENCR_AES_GCM_16", "ENCR_AES_CBC"
SHA_256, SHA_512 = "AUTH_HMAC_SHA2_256_128", "AUTH_HMAC_SHA2_512_256"

# Worked out apart from this code, from RFC 4303 section 2, RFC 4106, RFC 3602, RFC 4868 and RFC 3948.
ROOM = [
    (1500, 4, True, GCM, "", 1438),
    (1500, 4, False, GCM, "", 1446),
    (1500, 6, True, GCM, "", 1418),
    (1500, 4, True, CBC, SHA_256, 1422),
    (1500, 4, True, CBC, SHA_512, 1406),
    (1500, 6, True, CBC, SHA_256, 1406),
    (1492, 4, True, GCM, "", 1430),
    (1492, 4, False, GCM, "", 1438),
    (1492, 6, True, GCM, "", 1410),
    (1492, 4, True, CBC, SHA_256, 1422),
    (1492, 4, True, CBC, SHA_512, 1406),
    (1492, 6, True, CBC, SHA_256, 1390),
    (1460, 4, True, GCM, "", 1398),
    (1400, 4, True, GCM, "", 1338),
    (1280, 4, True, GCM, "", 1218),
    (1460, 6, True, GCM, "", 1378),
    (1400, 6, True, GCM, "", 1318),
    (1280, 6, True, GCM, "", 1198),
]


@pytest.mark.parametrize(("outer", "family", "nat", "encr", "integ", "wanted"), ROOM)
def test_the_inner_mtu(outer: int, family: int, nat: bool, encr: str, integ: str, wanted: int) -> None:  # noqa: FBT001 - a row of the table
    """Broken if it fails: packets are cut up outside the tunnel, and many routers drop the pieces."""
    assert inner_mtu(outer, family=family, nat=nat, encr=encr, integ=integ) == wanted


@pytest.mark.parametrize(
    ("family", "encr", "integ", "wanted"),
    [(4, GCM, "", 1344), (6, GCM, "", 1364), (4, CBC, SHA_256, 1364), (6, CBC, SHA_256, 1384)],
)
def test_the_outer_size_of_the_smallest_ipv6_packet(family: int, encr: str, integ: str, wanted: int) -> None:
    """Broken if it fails: 1280 octets (RFC 8200 section 5) are called too long where they fit, or the other way."""
    found = next(n for n in range(1280, 1600) if inner_mtu(n, family=family, nat=True, encr=encr, integ=integ) >= 1280)
    packet = 1280 + 2  # with trailer, before padding
    block = 4 if encr == GCM else 16
    padded = -(-packet // block) * block
    overhead = {4: 20, 6: 40}[family] + 8 + 8 + (8 if encr == GCM else 16) + 16
    assert found == padded + overhead == wanted


def size(inner: int, *, family: int, nat: bool, encr: str, integ: str) -> int:
    """How long a packet of ESP gets: written down field by field, the other way round than the code."""
    block = 16 if encr == CBC else 4
    padding = -(inner + 2) % block
    iv = 16 if encr == CBC else 8
    check = {"": 0, SHA_256: 16, SHA_512: 32}[integ] + (0 if encr == CBC else 16)
    return (40 if family == 6 else 20) + 8 * nat + 4 + 4 + iv + inner + padding + 1 + 1 + check


@given(
    outer=st.integers(1280, 9216),
    family=st.sampled_from((4, 6)),
    nat=st.booleans(),
    how=st.sampled_from(((GCM, ""), ("ENCR_CHACHA20_POLY1305", ""), (CBC, SHA_256), (CBC, SHA_512))),
)
def test_the_inner_mtu_fits_and_one_octet_more_does_not(
    outer: int,
    family: int,
    nat: bool,  # noqa: FBT001 - drawn by lot
    how: tuple[str, str],
) -> None:
    """Broken if it fails: the formula is off for some MTU that no table has (RFC 4303 section 2)."""
    encr, integ = how
    found = inner_mtu(outer, family=family, nat=nat, encr=encr, integ=integ)
    assert size(found, family=family, nat=nat, encr=encr, integ=integ) <= outer
    assert size(found + 1, family=family, nat=nat, encr=encr, integ=integ) > outer


def test_the_segment_size() -> None:
    """Broken if it fails: the packet rules clamp to the wrong size; source: RFC 9293 section 3.7.1."""
    assert (mss(1438, 4), mss(1438, 6)) == (1398, 1378)
    assert (mss(576, 4), mss(1280, 6)) == (536, 1220)  # its defaults for either family


@pytest.mark.parametrize("outer", [0, -1, 1279, 65536])
def test_an_outer_mtu_that_no_line_has_is_refused(outer: int) -> None:
    """Broken if it fails: a slip of the finger makes a tunnel without room."""
    with pytest.raises(Refused) as refused:
        inner_mtu(outer, family=4, nat=True, encr=GCM)
    assert refused.value.code == "outer-mtu-odd"


@pytest.mark.parametrize(("encr", "integ"), [("ENCR_3DES", ""), (CBC, "AUTH_HMAC_MD5_96")])
def test_no_size_is_guessed(encr: str, integ: str) -> None:
    """Broken if it fails: a transform of unknown size gets the size of another."""
    with pytest.raises(Refused) as refused:
        inner_mtu(1500, family=4, nat=True, encr=encr, integ=integ)
    assert refused.value.code == "transform-unmeasured"


@pytest.mark.parametrize(
    ("host", "kind", "number", "value"),
    [
        ("home.quince.example", "ID_FQDN", 2, "home.quince.example"),
        ("192.0.2.7", "ID_IPV4_ADDR", 1, "192.0.2.7"),
        ("2001:db8:51::7", "ID_IPV6_ADDR", 5, "2001:db8:51::7"),
    ],
)
def test_the_gateway_has_the_right_sort_of_identity(host: str, kind: str, number: int, value: str) -> None:
    """Broken if it fails: devices look for a name where an address is certified (RFC 7296 section 3.5)."""
    found = identity(host)
    assert (found.kind, found.number, found.value) == (kind, number, value)


@pytest.mark.parametrize(
    ("subnet", "kind", "number", "first", "last"),
    [
        # RFC 7296 sections 2.9 and 3.15.2: the worked example of a split tunnel and of all traffic
        ("198.51.100.0/26", "TS_IPV4_ADDR_RANGE", 7, "198.51.100.0", "198.51.100.63"),
        ("192.0.2.0/24", "TS_IPV4_ADDR_RANGE", 7, "192.0.2.0", "192.0.2.255"),
        ("0.0.0.0/0", "TS_IPV4_ADDR_RANGE", 7, "0.0.0.0", "255.255.255.255"),  # noqa: S104 - read, not bound
        ("::/0", "TS_IPV6_ADDR_RANGE", 8, "::", "ffff:ffff:ffff:ffff:ffff:ffff:ffff:ffff"),
    ],
)
def test_a_subnet_becomes_a_range(subnet: str, kind: str, number: int, first: str, last: str) -> None:
    """Broken if it fails: more or less than home goes through the tunnel (RFC 7296 section 3.13.1)."""
    network = ipaddress.ip_network(subnet)
    assert selector(network) == Selector(kind, number, first, last, network)


def test_split_and_full_in_both_families() -> None:
    """Broken if it fails: a full tunnel leaves IPv6 outside without a word, or a split one takes everything."""
    assert [str(one.subnet) for one in terms(BOTH, BROAD).home] == ["198.51.100.0/24", "2001:db8:51::/64"]
    assert [str(one.subnet) for one in terms(FULL, BROAD).home] == ["0.0.0.0/0", "::/0"]
    assert [str(one.subnet) for one in terms(OLD_LINE, BROAD).home] == ["0.0.0.0/0"]
    assert (terms(BOTH, BROAD).beside, terms(FULL, BROAD).beside, terms(OLD_LINE, BROAD).beside) == ((), (), (6,))
    assert terms(BOTH, BROAD).unreached == (SIX,)
    assert terms(OLD_LINE, BROAD).unreached == ()


@pytest.mark.parametrize(
    ("subnet", "first", "last", "attribute", "number"),
    [
        ("203.0.113.0/24", "203.0.113.1", "203.0.113.254", "INTERNAL_IP4_ADDRESS", 1),
        ("203.0.113.0/30", "203.0.113.1", "203.0.113.2", "INTERNAL_IP4_ADDRESS", 1),
        ("2001:db8:52::/64", "2001:db8:52::1", "2001:db8:52:0:ffff:ffff:ffff:ffff", "INTERNAL_IP6_ADDRESS", 8),
    ],
)
def test_inner_addresses(subnet: str, first: str, last: str, attribute: str, number: int) -> None:
    """Broken if it fails: a device gets the address of the whole subnet (RFC 7296 section 3.15.1 has the numbers)."""
    pool = terms(replace(BOTH, tunnel_subnet=ipaddress.ip_network(subnet)), COMPACT).pool
    assert (pool.first, pool.last, pool.attribute, pool.number) == (first, last, attribute, number)


def test_dns_servers_go_with_their_family() -> None:
    """Broken if it fails: an IPv6 server is handed over as an IPv4 one (RFC 7296 section 3.15.1)."""
    assert [(one.address, one.attribute, one.number) for one in terms(BOTH, BROAD).servers] == [
        ("198.51.100.1", "INTERNAL_IP4_DNS", 3),
        ("2001:db8:51::1", "INTERNAL_IP6_DNS", 10),
    ]


def test_sessions_are_proved_anew_within_a_day() -> None:
    """Broken if it fails: the open session of a stolen phone outlives its stop by more (RFC 7296 section 2.8.3)."""
    assert terms(BOTH, BROAD).reauthentication == 86400
    assert terms(BOTH, BROAD, reauthentication_hours=8).reauthentication == 8 * 3600
    assert LONGEST_CHILD <= 4 * 3600


@pytest.mark.parametrize("hours", [0, -1, 25])
def test_no_longer_than_a_day(hours: int) -> None:
    """Broken if it fails: somebody types a week and nobody minds."""
    with pytest.raises(Refused) as refused:
        terms(BOTH, BROAD, reauthentication_hours=hours)
    assert refused.value.code == "reauthentication-odd"


@pytest.mark.parametrize(
    ("host", "key_sets", "outer", "wanted"),
    [
        ("home.quince.example", (COMPACT,), 1500, 1418),
        ("home.quince.example", (BROAD,), 1500, 1406),
        ("192.0.2.7", (COMPACT,), 1500, 1438),
        ("192.0.2.7", (BROAD, COMPACT), 1500, 1422),
        ("192.0.2.7", (COMPACT,), 1492, 1430),
    ],
)
def test_the_room_is_that_of_the_worst_case(host: str, key_sets: tuple[object, ...], outer: int, wanted: int) -> None:
    """Broken if it fails: it fits for one phone and not for the next."""
    chosen = [one for one in (BROAD, COMPACT) if one in key_sets]
    found = terms(replace(BOTH, gateway_host=host), BROAD, device_key_sets=chosen, outer_mtu=outer)
    assert (found.inner_mtu, found.mss4, found.mss6) == (wanted, wanted - 40, wanted - 60)


def test_the_suite_keeps_its_name_for_its_own_values_alone() -> None:
    """Broken if it fails: a name that promises something stands over something else (RFC 9206 sections 5 and 11)."""
    assert "CNSA-GCM-256-ECDH-384" in terms(BOTH, SUITE_384).suite
    assert terms(BOTH, SUITE_384, device_key_sets=(SUITE_384, COMPACT)).suite == ""
    assert terms(BOTH, BROAD, device_key_sets=(SUITE_384,)).suite == ""


def test_each_key_proves_itself_its_own_way() -> None:
    """Broken if it fails: the gateway waits for RSA from a P-256 laptop.

    Sources: RFC 7427 section 7 (hashes 2 and 3), RFC 7296 section 3.8 (method 1), RFC 4754 (methods 9 and 10).
    """
    found = terms(BOTH, BROAD, device_key_sets=(COMPACT, BROAD, SUITE_384, COMPACT))
    assert found.gateway_signing.key_type == "RSA-3072"
    assert [one.key_type for one in found.device_signings] == ["P-256", "RSA-3072", "P-384"]
    assert {one.key_type: (one.hash_number, one.older_number) for one in SIGNINGS.values()} == {
        "RSA-3072": (2, 1),
        "P-256": (2, 9),
        "P-384": (3, 10),
    }
