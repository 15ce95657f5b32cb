"""Splitting a secret: the field by the published examples, the sharing by what its inventor promises."""

from __future__ import annotations

from itertools import combinations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from hearthkey.core import sharing
from hearthkey.core.errors import Bug
from tests.fakes.dice import SeededDice

OCTETS = st.integers(0, 255)


def test_the_field_is_that_of_the_published_examples() -> None:
    """Broken if it fails: parts that another program reads open nothing. FIPS 197 sections 4.2 and 4.2.1."""
    assert sharing.multiply(0x57, 0x83) == 0xC1
    assert sharing.multiply(0x57, 0x13) == 0xFE
    chain = [sharing.multiply(0x57, 1 << power) for power in range(5)]
    assert chain == [0x57, 0xAE, 0x47, 0x8E, 0x07]


def substituted(octet: int) -> int:
    """The published table of inverses behind an affine map; source: FIPS 197 section 5.1.1, equation (5.2), table 4."""
    kept = sharing.inverse(octet)
    turned = kept
    for by in range(1, 5):
        turned ^= (kept << by | kept >> (8 - by)) & 0xFF
    return turned ^ 0x63


def test_every_octet_but_zero_has_an_inverse() -> None:
    """Broken if it fails: some pairs of parts divide by zero."""
    assert all(sharing.multiply(one, sharing.inverse(one)) == 1 for one in range(1, 256))
    assert sharing.inverse(0) == 0
    assert [substituted(one) for one in (0x00, 0x53, 0xFF)] == [0x63, 0xED, 0x16]


@given(OCTETS, OCTETS, OCTETS)
def test_it_is_a_field(first: int, second: int, third: int) -> None:
    """Broken if it fails: interpolation is arithmetic of another kind."""
    assert sharing.multiply(first, second) == sharing.multiply(second, first)
    left = sharing.multiply(first, second ^ third)
    assert left == sharing.multiply(first, second) ^ sharing.multiply(first, third)
    assert sharing.multiply(sharing.multiply(first, second), third) == sharing.multiply(
        first, sharing.multiply(second, third)
    )


@given(st.binary(min_size=1, max_size=20), st.integers(2, 4), st.integers(0, 3), st.integers())
def test_any_few_bring_it_back(secret: bytes, threshold: int, more: int, seed: int) -> None:
    """Broken if it fails: a household is lost with the deputies at one table. Shamir 1979, property (1)."""
    shares = sharing.split(secret, threshold, threshold + more, SeededDice(str(seed)).below)
    by_place = dict(enumerate(shares, 1))
    for places in combinations(by_place, threshold):
        assert sharing.join({place: by_place[place] for place in places}) == secret
    assert sharing.join(by_place) == secret


def test_one_share_alone_says_nothing() -> None:
    """Broken if it fails: who holds one part learns something. Shamir 1979, property (2), by trying all of it.

    For every secret octet and every coefficient that could be drawn, each share takes each value exactly once.
    """
    for secret in range(256):
        seen: list[set[int]] = [set(), set(), set()]
        for drawn in range(256):
            for place, share in enumerate(sharing.split(bytes([secret]), 2, 3, {256: drawn}.__getitem__)):
                seen[place].add(share[0])
        assert all(len(values) == 256 for values in seen)


@pytest.mark.parametrize(("threshold", "count"), [(1, 3), (4, 3), (2, 16)])
def test_numbers_that_make_no_sense_are_a_fault(threshold: int, count: int) -> None:
    """Broken if it fails: a set of parts that opens with one, or with none."""
    with pytest.raises(Bug):
        sharing.split(b"secret", threshold, count, lambda _limit: 0)


def test_shares_of_different_lengths_are_a_fault() -> None:
    """Broken if it fails: half a share brings half a secret back and nobody notices."""
    with pytest.raises(Bug):
        sharing.join({1: b"ab", 2: b"a"})
    with pytest.raises(Bug):
        sharing.join({0: b"ab", 2: b"ab"})
