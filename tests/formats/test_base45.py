"""base45: the worked examples of RFC 9285 and its refusals."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from hearthkey.core.errors import Refused
from hearthkey.formats import base45


@pytest.mark.parametrize(
    ("plain", "text"), [(b"AB", "BB8"), (b"Hello!!", "%69 VD92EX0"), (b"base-45", "UJCLQE7W581"), (b"", "")]
)
def test_encoding_examples(plain: bytes, text: str) -> None:
    """Broken if it fails: nobody else's reader understands the codes (RFC 9285 section 4.3)."""
    assert base45.encode(plain) == text
    assert base45.decode(text) == plain


def test_decoding_example() -> None:
    """Broken if it fails: codes of other writers are misread (RFC 9285 section 4.4)."""
    assert base45.decode("QED8WEX0") == b"ietf!"


@given(st.binary(max_size=400))
def test_what_is_written_is_read_back(data: bytes) -> None:
    """Broken if it fails: a bundle changes on its way through a code."""
    text = base45.encode(data)
    assert set(text) <= set(base45.ALPHABET)
    assert base45.decode(text) == data


@pytest.mark.parametrize("text", ["A", "BB8A", ":::", "GGW", "::", "V5", "bb8", "BB8\n", "BB_", "Ü00"])
def test_what_no_encoder_writes_is_refused(text: str) -> None:
    """Broken if it fails: two texts mean the same bytes, so a check could be fooled (RFC 9285 section 6)."""
    with pytest.raises(Refused) as refused:
        base45.decode(text)
    assert refused.value.code == "codes-damaged"
