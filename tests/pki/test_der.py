"""The strict DER walk, against ITU-T X.690 and against hostile bytes."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from hearthkey.pki import der


@pytest.mark.parametrize(
    ("dotted", "octets"),
    [
        ("2.999.3", "0603883703"),  # ITU-T X.690 section 8.19.5, the example (from memory)
        ("1.2.840.113549.1.5.13", "06092a864886f70d01050d"),  # RFC 8018 appendix C, id-PBES2
        ("2.5.29.37.0", "0604551d2500"),
    ],
)
def test_object_ids(dotted: str, octets: str) -> None:
    """If this fails, algorithms are read or written under a wrong name."""
    assert der.object_id(dotted).hex() == octets
    assert der.Reader(bytes.fromhex(octets)).object_id() == dotted


@given(st.integers(0, 1 << 80))
def test_integers_come_back(value: int) -> None:
    """If this fails, round counts are written wrongly."""
    assert der.Reader(der.integer(value)).integer() == value


@given(st.integers(0, 70_000))
def test_lengths_come_back(length: int) -> None:
    """If this fails, containers of some sizes are written or read wrongly (X.690 section 8.1.3)."""
    body = bytes(length)
    assert der.Reader(der.element(der.OCTET_STRING, body)).take(der.OCTET_STRING) == body


@pytest.mark.parametrize(
    "octets",
    [
        "",
        "04",
        "0402aa",  # cut off
        "0480aa0000",  # indefinite, X.690 section 10.1 forbids it
        "048101aa",  # long form where the short one does
        "04820001aa",  # padded
        "0485000000000101",  # five octets of length
        "0484ffffffff00",  # beyond the end
        "1f0401aa",  # high tag number
        "3001aa",  # another tag
    ],
)
def test_what_is_not_der_is_refused(octets: str) -> None:
    """If this fails, two readers could see two things in one file (X.690 section 10.1)."""
    with pytest.raises(der.Malformed):
        der.Reader(bytes.fromhex(octets)).take(der.OCTET_STRING)


@pytest.mark.parametrize("octets", ["0200", "02020001", "0201ff", "0401aa"])
def test_numbers_not_in_shortest_form_or_negative_are_refused(octets: str) -> None:
    """If this fails, a negative round count gets through (X.690 section 8.3.2)."""
    with pytest.raises(der.Malformed):
        der.Reader(bytes.fromhex(octets)).integer()


@pytest.mark.parametrize("octets", ["0600", "060180", "060281ff", "06038001aa", "060380012a"])
def test_object_ids_not_in_shortest_form_are_refused(octets: str) -> None:
    """If this fails, one algorithm has several spellings (X.690 section 8.19.2)."""
    with pytest.raises(der.Malformed):
        der.Reader(bytes.fromhex(octets)).object_id()


def test_nesting_is_bounded() -> None:
    """If this fails, a small file can exhaust the stack."""
    data = b""
    for _ in range(1000):
        data = der.element(der.SEQUENCE, data)
    reader = der.Reader(data)
    for _ in range(der.DEEPEST):
        reader = reader.inside(der.SEQUENCE)
    with pytest.raises(der.Malformed):
        reader.inside(der.SEQUENCE)


def test_leftovers_are_refused() -> None:
    """If this fails, something can be hidden behind a key."""
    reader = der.Reader(der.NULL_ELEMENT * 2)
    reader.take(der.NULL)
    with pytest.raises(der.Malformed):
        reader.end()
    assert reader.take_whole() == der.NULL_ELEMENT
    reader.end()


@given(st.binary(max_size=64))
def test_any_bytes_end_in_malformed_or_an_answer(data: bytes) -> None:
    """If this fails, hostile bytes reach the householder as a crash."""
    for read in (der.Reader.integer, der.Reader.object_id, der.Reader.take_whole):
        try:
            answer = read(der.Reader(data))
        except der.Malformed:
            continue
        assert answer is not None
