"""What goes through the tunnel, what passes it by, how long packets may be, and what to expect."""

from __future__ import annotations

import ipaddress
from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from hearthkey.core.errors import Refused
from hearthkey.core.household import Household
from hearthkey.core.keysets import BROAD, COMPACT, KEY_SETS, SUITE_384
from hearthkey.core.network import Subnet
from hearthkey.core.reach.packets import OUTER_MTUS, Cipher, ciphers, packet, packets
from hearthkey.core.reach.plan import Known, plan
from hearthkey.core.reach.selectors import Gap, Leak, attribute, everything, leaks, narrowed, through
from hearthkey.core.reach.throughput import HIGHEST, Use, expected
from hearthkey.core.tunnel import selector, terms
from tests.core.quince_terms import BOTH, FULL, INNER, OLD_LINE
from tests.fakes.clock import FakeClock
from tests.fakes.dice import SeededDice

net = ipaddress.ip_network
GCM, CBC = Cipher("ENCR_AES_GCM_16"), Cipher("ENCR_AES_CBC", "AUTH_HMAC_SHA2_256_128")

# For each outer MTU: IPv4, IPv4 behind NAT, IPv6, IPv6 behind NAT. Worked out apart from this code by hand:
# AES-GCM spends 8 (SPI, sequence) + 8 (IV) + 16 (check value) + 2 (trailer), padded to 4 (RFC 4303, RFC 4106);
# AES-CBC with HMAC-SHA-256-128 8 + 16 + 16 + 2, padded to 16 (RFC 3602, RFC 4868); UDP 8 (RFC 3948).
TABLE = {
    GCM: {
        1500: (1446, 1438, 1426, 1418),
        1492: (1438, 1430, 1418, 1410),
        1460: (1406, 1398, 1386, 1378),
        1400: (1346, 1338, 1326, 1318),
        1280: (1226, 1218, 1206, 1198),
    },
    CBC: {
        1500: (1438, 1422, 1406, 1406),
        1492: (1422, 1422, 1406, 1390),
        1460: (1390, 1390, 1374, 1358),
        1400: (1326, 1326, 1310, 1310),
        1280: (1214, 1198, 1198, 1182),
    },
}


def test_every_way_in_has_its_row() -> None:
    """Broken if it fails: the table on screen is not the one that RFC 4303 gives, or a way in is missing."""
    found = packets(OUTER_MTUS, ciphers())
    assert len(found) == len(OUTER_MTUS) * len(TABLE) * 4
    for how, rows in TABLE.items():
        for outer, wanted in rows.items():
            row = [one for one in found if (one.cipher, one.outer) == (how, outer)]
            assert [(one.family, one.nat) for one in row] == [(4, False), (4, True), (6, False), (6, True)]
            assert tuple(one.inner for one in row) == wanted
            assert all((one.mss4, one.mss6) == (one.inner - 40, one.inner - 60) for one in row)
            assert all(one.carries_ipv6 == (outer > 1280) for one in row)


def test_each_key_set_has_its_ciphers() -> None:
    """Broken if it fails: the room is worked out for ciphers that no device uses."""
    assert ciphers([COMPACT]) == ciphers([SUITE_384]) == (GCM,)
    assert set(ciphers([BROAD])) == {GCM, CBC}


@given(
    outer=st.integers(1280, 9000),
    sets=st.lists(st.sampled_from(tuple(KEY_SETS.values())), min_size=1),
    host=st.sampled_from(("home.quince.example", "192.0.2.7", "2001:db8:51::7")),
)
def test_the_gateway_pack_has_the_numbers_of_the_table(outer: int, sets: list[object], host: str) -> None:
    """Broken if it fails: the plan says one size, and the packet rules and the sheet of the pack another."""
    chosen = [one for one in KEY_SETS.values() if one in sets]
    house = replace(BOTH, gateway_host=host)
    told = terms(house, chosen[0], device_key_sets=chosen, outer_mtu=outer)
    made = plan(house, Known(house, (), (), FakeClock().now(), told), below=SeededDice("x").below, identifier=1)
    assert (made.worst.inner, made.worst.mss4, made.worst.mss6) == (told.inner_mtu, told.mss4, told.mss6)
    family = 4 if host == "192.0.2.7" else 6
    assert made.worst.inner == min(packet(outer, family=family, nat=True, cipher=one).inner for one in ciphers(chosen))


def test_the_worked_example_of_rfc_7296() -> None:
    """Broken if it fails: RFC 7296 section 3.15.2 comes out otherwise; a split tunnel there, and then a full one."""
    anything, home = (everything(4),), (net("198.51.100.0/26"), net("192.0.2.0/24"))
    split = narrowed(anything, home)
    assert [(one.first, one.last) for one in map(selector, split)] == [
        ("198.51.100.0", "198.51.100.63"),
        ("192.0.2.0", "192.0.2.255"),
    ]
    told = [attribute(one) for one in home]
    assert [(one.name, one.number, len(one.value)) for one in told] == [("INTERNAL_IP4_SUBNET", 13, 8)] * 2
    assert told[0].value == bytes([198, 51, 100, 0, 255, 255, 255, 192])
    assert told[1].value == bytes([192, 0, 2, 0, 255, 255, 255, 0])
    inner = net("198.51.100.234/32")
    assert narrowed(anything, (inner,)) == (inner,)
    full = narrowed(anything, anything)
    assert [(one.first, one.last) for one in map(selector, full)] == [(str(net("0.0.0.0/0")[0]), "255.255.255.255")]


def test_a_subnet_of_ipv6_is_told_in_17_octets() -> None:
    """Broken if it fails: a gateway tells devices something that RFC 7296 section 3.15.1 does not know."""
    told = attribute(net("2001:db8:51::/64"))
    assert (told.name, told.number) == ("INTERNAL_IP6_SUBNET", 15)
    assert told.value == bytes.fromhex("20010db8005100000000000000000000" + "40")


def _within(one: Subnet, other: Subnet) -> bool:
    return one.version == other.version and one.overlaps(other) and one.prefixlen >= other.prefixlen


@given(st.lists(st.ip_addresses(), min_size=1, max_size=4), st.lists(st.ip_addresses(), max_size=4), st.data())
def test_what_is_granted_was_asked_for_and_is_kept(
    asked: list[ipaddress.IPv4Address], kept: list[ipaddress.IPv4Address], data: st.DataObject
) -> None:
    """Broken if it fails: a device gets into a subnet that the gateway does not open (RFC 7296 section 2.9)."""

    def drawn(found: list[ipaddress.IPv4Address]) -> list[Subnet]:
        return [net(one).supernet(new_prefix=data.draw(st.integers(0, one.max_prefixlen))) for one in found]

    wanted, mine = drawn(asked), drawn(kept)
    granted = narrowed(wanted, mine)
    for one in granted:
        assert any(_within(one, other) for other in wanted)
        assert any(_within(one, other) for other in mine)
    for one in wanted:
        for other in mine:
            if one.version == other.version and one.overlaps(other):
                assert any(one.version == part.version and one.overlaps(part) for part in granted)


SIX_INSIDE = replace(BOTH, tunnel_subnet=net("2001:db8:99::/64"), dns_servers=("2001:db8:51::1",))


@pytest.mark.parametrize(
    ("household", "wanted"),
    [
        (replace(OLD_LINE, dns_servers=("198.51.100.1",)), [Leak(Gap.BESIDE, 6)]),
        (OLD_LINE, [Leak(Gap.BESIDE, 6), Leak(Gap.NAMES_OUTSIDE)]),
        (
            FULL,
            [
                Leak(Gap.UNADDRESSED, 6),
                Leak(Gap.UNREACHED, 6, "2001:db8:51::/64"),
                Leak(Gap.DNS_BESIDE, 6, "2001:db8:51::1"),
            ],
        ),
        (BOTH, [Leak(Gap.UNREACHED, 6, "2001:db8:51::/64"), Leak(Gap.DNS_BESIDE, 6, "2001:db8:51::1")]),
        (SIX_INSIDE, [Leak(Gap.UNREACHED, 4, "198.51.100.0/24")]),
        (
            replace(BOTH, home_subnets=BOTH.home_subnets[:1], dns_servers=("192.0.2.53",)),
            [Leak(Gap.DNS_BESIDE, 4, "192.0.2.53")],
        ),
        (replace(BOTH, home_subnets=BOTH.home_subnets[:1], dns_servers=("203.0.113.1",)), []),
        (replace(OLD_LINE, dns_servers=("192.0.2.53",)), [Leak(Gap.BESIDE, 6)]),
    ],
)
def test_what_passes_the_tunnel_by(household: Household, wanted: list[Leak]) -> None:
    """Broken if it fails: somebody believes that all traffic goes through home, and IPv6 does not."""
    assert list(leaks(household)) == wanted


def test_a_full_tunnel_takes_what_the_gateway_is_told() -> None:
    """Broken if it fails: the plan and the settings sheet name different selectors."""
    for house in (BOTH, FULL, OLD_LINE, SIX_INSIDE):
        assert through(house) == tuple(one.subnet for one in terms(house, COMPACT).home)
    assert through(replace(OLD_LINE, tunnel_subnet=INNER)) == (everything(4),)


def test_what_to_expect() -> None:
    """Broken if it fails: a relative is promised a film that stops to wait."""
    through_gcm = packet(1500, family=4, nat=True, cipher=GCM)
    assert expected(None, None, through_gcm) is None
    told = expected(12_000, 40_000, through_gcm)
    assert told is not None
    assert told.payload == 12_000 * 1398 // 1500
    assert (told.at_once[Use.FILM], told.at_once[Use.LARGE_FILM], told.board_is_slower) == (2, 0, False)
    slow = expected(100_000, 4_000, through_gcm)
    assert slow is not None
    assert slow.board_is_slower
    assert slow.payload < 4_000


@pytest.mark.parametrize("rate", [0, -1, HIGHEST + 1, 10**30])
def test_a_rate_that_no_line_has_is_refused(rate: int) -> None:
    """Broken if it fails: a slip of the finger promises everything, or divides by nothing."""
    for upload, board in ((rate, None), (None, rate), (1, rate)):
        with pytest.raises(Refused) as refused:
            expected(upload, board, packet(1500, family=4, nat=True, cipher=GCM))
        assert refused.value.code == "rate-odd"


@given(st.integers(1, HIGHEST), st.integers(1, HIGHEST), st.integers(1280, 9000))
def test_more_never_means_less(upload: int, more: int, outer: int) -> None:
    """Broken if it fails: a faster line is said to carry fewer films."""
    way = packet(outer, family=6, nat=True, cipher=CBC)
    low, high = expected(min(upload, more), None, way), expected(max(upload, more), None, way)
    assert low is not None
    assert high is not None
    assert low.payload <= high.payload < max(upload, more) + 1
    assert all(low.at_once[use] <= high.at_once[use] for use in Use)
