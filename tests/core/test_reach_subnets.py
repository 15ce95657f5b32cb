"""Subnets away from home: what clashes, what is proposed instead, and what kind of addresses they are."""

from __future__ import annotations

import ipaddress
from datetime import UTC, datetime, timedelta
from fractions import Fraction

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from hearthkey.bootstrap.reach import common_networks
from hearthkey.core.errors import Refused
from hearthkey.core.reach.clashes import CommonRange, Grade, Where, weigh
from hearthkey.core.reach.quiet import meeting_chance, quiet_subnet, unique_local
from hearthkey.core.reach.scopes import Scope, scope_of, subnet_scope
from tests.fakes.dice import SeededDice

COMMON = common_networks()
net = ipaddress.ip_network

SCOPES = [
    ("10.0.0.0", Scope.PRIVATE),  # RFC 1918 section 3: both ends of each block, and what lies beside them
    ("10.255.255.255", Scope.PRIVATE),
    ("9.255.255.255", Scope.GLOBAL),
    ("11.0.0.0", Scope.GLOBAL),
    ("172.15.255.255", Scope.GLOBAL),
    ("172.16.0.0", Scope.PRIVATE),
    ("172.31.255.255", Scope.PRIVATE),
    ("172.32.0.0", Scope.GLOBAL),
    ("192.168.255.255", Scope.PRIVATE),
    ("192.169.0.0", Scope.GLOBAL),
    ("100.63.255.255", Scope.GLOBAL),  # RFC 6598 section 7
    ("100.64.0.0", Scope.SHARED),
    ("100.127.255.255", Scope.SHARED),
    ("100.128.0.0", Scope.GLOBAL),
    ("169.254.1.1", Scope.LINK_LOCAL),  # RFC 3927 section 2.1
    ("127.0.0.1", Scope.LOOPBACK),
    ("198.51.100.7", Scope.DOCUMENTATION),  # RFC 5737 section 3
    ("224.0.0.1", Scope.MULTICAST),
    ("0.0.0.0", Scope.RESERVED),  # noqa: S104 - nobody listens on it here
    ("255.255.255.255", Scope.RESERVED),
    ("fbff:ffff::1", Scope.RESERVED),
    ("fc00::", Scope.UNIQUE_LOCAL),  # RFC 4193 section 3.1
    ("fdff:ffff::1", Scope.UNIQUE_LOCAL),
    ("fe80::1", Scope.LINK_LOCAL),  # RFC 4291 section 2.5.6
    ("febf::1", Scope.LINK_LOCAL),
    ("fec0::1", Scope.RESERVED),
    ("ff02::1", Scope.MULTICAST),
    ("::1", Scope.LOOPBACK),
    ("2001:db8::1", Scope.DOCUMENTATION),  # RFC 3849 section 2
    ("2001:db9::1", Scope.GLOBAL),
    ("2600::1", Scope.GLOBAL),
    ("::ffff:192.168.1.1", Scope.PRIVATE),  # RFC 4291 section 2.5.5.2
    ("::ffff:100.64.0.1", Scope.SHARED),
]


@pytest.mark.parametrize(("text", "wanted"), SCOPES)
def test_what_kind_of_address_it_is(text: str, wanted: Scope) -> None:
    """Broken if it fails: somebody forwards ports on a line where that cannot work, or is told that it cannot."""
    assert scope_of(ipaddress.ip_address(text)) is wanted


@pytest.mark.parametrize(
    ("text", "wanted"),
    [
        ("192.168.0.0/16", Scope.PRIVATE),
        ("192.168.0.0/15", Scope.MIXED),
        ("0.0.0.0/1", Scope.MIXED),
        ("172.0.0.0/8", Scope.MIXED),
        ("fd00::/8", Scope.UNIQUE_LOCAL),
        ("fc00::/6", Scope.MIXED),
        ("::/3", Scope.MIXED),
        ("::ffff:10.0.0.0/104", Scope.RESERVED),
        ("2600:db8:51::/48", Scope.GLOBAL),
    ],
)
def test_what_kind_of_subnet_it_is(text: str, wanted: Scope) -> None:
    """Broken if it fails: a subnet that takes in half the internet passes for a private one."""
    assert subnet_scope(net(text)) is wanted


@given(st.ip_addresses(), st.integers(0, 128))
def test_a_subnet_is_of_a_kind_where_both_its_ends_are(
    address: ipaddress.IPv4Address | ipaddress.IPv6Address, length: int
) -> None:
    """Broken if it fails: a subnet and its own addresses are called different things."""
    wider = ipaddress.ip_network(address).supernet(new_prefix=min(length, address.max_prefixlen))
    found = subnet_scope(wider)
    mapped = isinstance(address, ipaddress.IPv6Address) and address.ipv4_mapped is not None
    if found is not Scope.MIXED and not mapped:
        assert {scope_of(wider[0]), scope_of(wider[-1])} == {found}


@pytest.mark.parametrize(
    ("text", "grade", "first"),
    [
        ("192.168.1.0/24", Grade.OFTEN, Where.HOME),
        ("192.168.0.0/16", Grade.OFTEN, Where.HOME),
        ("172.20.10.0/28", Grade.OFTEN, Where.PHONE),
        ("10.0.0.0/24", Grade.OFTEN, Where.HOME),
        ("10.0.0.0/8", Grade.OFTEN, Where.HOME),
        ("192.168.77.0/24", Grade.SELDOM, Where.PHONE),
        ("100.64.5.0/24", Grade.OFTEN, Where.PROVIDER),
        ("10.87.4.0/24", Grade.QUIET, None),
        ("198.51.100.0/24", Grade.QUIET, None),
        ("fd00::/8", Grade.QUIET, None),
    ],
)
def test_how_a_subnet_fares_away_from_home(text: str, grade: Grade, first: Where | None) -> None:
    """Broken if it fails: somebody sits on the train and does not get home, and was never told why."""
    found = weigh(net(text), COMMON)
    assert (found.grade, next(iter(found.places), None)) == (grade, first)


def test_one_network_of_many_counts_for_its_share() -> None:
    """Broken if it fails: a range that is drawn from by lot counts as if all of it were met at once."""
    drawn = CommonRange(ipaddress.IPv4Network("192.168.0.0/16"), 24, Where.PHONE, 3, "a test")
    assert drawn.chance(net("192.168.7.0/24")) == Fraction(1, 256)
    assert drawn.chance(net("192.168.7.128/25")) == Fraction(1, 256)
    assert drawn.chance(net("192.168.0.0/22")) == Fraction(4, 256)
    assert drawn.chance(net("192.0.0.0/8")) == 1
    assert drawn.chance(net("10.0.0.0/8")) == 0
    assert drawn.chance(net("fd00::/8")) == 0


@given(st.ip_addresses(v=4), st.integers(1, 32), st.sampled_from(COMMON))
def test_the_chance_is_what_counting_gives(address: ipaddress.IPv4Address, length: int, common: CommonRange) -> None:
    """Broken if it fails: the score of some subnet that no table has is off."""
    subnet = ipaddress.ip_network(address).supernet(new_prefix=length)
    assert isinstance(subnet, ipaddress.IPv4Network)
    first, size = int(common.subnet[0]), 2 ** (32 - common.drawn)
    count = common.subnet.num_addresses // size
    low = max(0, (int(subnet[0]) - first) // size)
    high = min(count - 1, (int(subnet[-1]) - first) // size)
    assert common.chance(subnet) == Fraction(max(0, high - low + 1), count)
    assert 0 <= common.chance(subnet) <= 1


@settings(max_examples=40)
@given(st.text(max_size=8), st.lists(st.sampled_from(("10.0.0.0/9", "10.87.0.0/16", "fd00::/8", "192.168.1.0/24"))))
def test_what_is_proposed_is_quiet_and_lies_apart(seed: str, taken: list[str]) -> None:
    """Broken if it fails: the cure is as bad as what it cures."""
    apart = [net(one) for one in taken]
    found = quiet_subnet(apart, COMMON, SeededDice(seed).below)
    assert found.prefixlen == 24
    assert found.version == 4
    assert subnet_scope(found) is Scope.PRIVATE
    assert weigh(found, COMMON).grade is Grade.QUIET
    assert not any(found.overlaps(one) for one in apart if one.version == 4)


def test_where_nothing_is_left_that_is_said() -> None:
    """Broken if it fails: the search for a subnet never ends."""
    with pytest.raises(Refused) as refused:
        quiet_subnet([net("10.0.0.0/8")], COMMON, SeededDice("full").below)
    assert refused.value.code == "no-quiet-subnet"


def test_the_prefix_of_rfc_4193() -> None:
    """Broken if it fails: the prefix is not made as RFC 4193 section 3.2.2 has it.

    Worked out apart from this code: sha1 of 83aa7e8000000000 (1970-01-01 as NTP) and 02005efffe005301.
    """
    made = unique_local(datetime(1970, 1, 1, tzinfo=UTC), 0x02005EFFFE005301)
    assert str(made) == "fd10:1bdb:aafe::/48"


@given(
    st.datetimes(datetime(1950, 1, 1), datetime(2150, 1, 1), timezones=st.just(UTC)),  # noqa: DTZ001 - made aware
    st.integers(0, 2**64 - 1),
)
def test_every_prefix_is_local_and_of_its_own(at: datetime, identifier: int) -> None:
    """Broken if it fails: after 2036, when NTP begins anew, or before 1970 there is no prefix, or a wrong one."""
    made = unique_local(at, identifier)
    assert (made.prefixlen, subnet_scope(made), str(made)[:2]) == (48, Scope.UNIQUE_LOCAL, "fd")
    assert made != unique_local(at + timedelta(seconds=1), identifier)


@pytest.mark.parametrize(
    ("prefixes", "wanted"), [(2, 1.81e-12), (10, 4.54e-11), (100, 4.54e-9), (1000, 4.54e-7), (10000, 4.54e-5)]
)
def test_how_likely_two_prefixes_are_the_same(prefixes: int, wanted: float) -> None:
    """Broken if it fails: what is said of it is not what RFC 4193 section 3.2.3 has in its table."""
    assert meeting_chance(prefixes) == pytest.approx(wanted, rel=0.005)
