"""The content of the household's paper as DER, and its lines as codes."""

from __future__ import annotations

import hashlib
import ipaddress
from dataclasses import replace
from datetime import UTC, datetime

import pytest
from hypothesis import given
from hypothesis import strategies as st

from hearthkey.core.errors import Bug, Refused
from hearthkey.core.household import Household
from hearthkey.core.paper import MOST_LINES, lines_of
from hearthkey.core.paper_contents import PaperContents, Withdrawn
from hearthkey.core.revocation import Reason
from hearthkey.formats import paper_der, paper_frames, plain_der
from hearthkey.pki import der

DAY = datetime(2026, 5, 12, 8, 30, tzinfo=UTC)
COTTAGE = PaperContents(
    made=DAY,
    household=Household(
        name="Quince Cottage",
        gateway_host="home.quince.example",
        identity_suffix="quince.example",
        home_subnets=(ipaddress.ip_network("198.51.100.0/24"), ipaddress.ip_network("2001:db8:51::/64")),
        tunnel_subnet=ipaddress.ip_network("203.0.113.0/24"),
        dns_servers=("198.51.100.1",),
        tunnel="split",
        practice=True,
    ),
    key_set="compact",
    list_mark=1_048_583,
    certificate=bytes(range(200)) * 3,
    key=hashlib.shake_256(b"Odile").digest(356),
    withdrawn=(Withdrawn("0a" * 20, DAY, Reason.KEY_COMPROMISE), Withdrawn("7f01", DAY, Reason.CERTIFICATE_HOLD)),
    more_withdrawn=2,
    living=3,
)


def test_everything_comes_back() -> None:
    """Broken if it fails: something that is needed to go on is lost on the way."""
    assert paper_der.decode(paper_der.encode(COTTAGE)) == COTTAGE
    empty = replace(COTTAGE, withdrawn=(), household=replace(COTTAGE.household, dns_servers=(), practice=False))
    assert paper_der.decode(paper_der.encode(empty)) == empty


def test_another_reader_takes_it_apart() -> None:
    """Broken if it fails: what we call DER is ours alone. Source: the walk of X.690 in pki, written for PKCS#12."""
    outer = der.Reader(der.Reader(paper_der.encode(COTTAGE)).take(der.SEQUENCE))
    parts = []
    while outer.more():
        parts.append(outer.take(outer.peek()))
    assert len(parts) == 17
    assert parts[12:14] == [COTTAGE.certificate, COTTAGE.key]


def read_or_code(data: bytes) -> PaperContents | str:
    """What is read, or the code with which it is refused."""
    try:
        return paper_der.decode(data)
    except Refused as error:
        return error.code


def test_every_octet_is_refused_or_seen() -> None:
    """Broken if it fails: something edited is taken for what was written, or ends in a fault of the app."""
    data = paper_der.encode(COTTAGE)
    for place in range(0, len(data), 3):
        torn = data[:place] + bytes([data[place] ^ 0x21]) + data[place + 1 :]
        assert read_or_code(torn) != COTTAGE
    for cut in range(0, len(data), 7):
        with pytest.raises(Refused, match="paper-unreadable"):
            paper_der.decode(data[:cut])


def test_a_newer_paper_is_told_as_such() -> None:
    """Broken if it fails: it would be called damaged, and thrown away."""
    parts = plain_der.decode(paper_der.encode(COTTAGE))
    assert isinstance(parts, tuple)
    with pytest.raises(Refused, match="paper-newer"):
        paper_der.decode(plain_der.encode((2, *parts[1:])))
    for wrong in ((1,), (1, "x"), (*parts, 1), (1, *reversed(parts[1:])), 1, (1, *parts[1:14], ((1, 2),), 0, 0)):
        with pytest.raises(Refused, match="paper-unreadable"):
            paper_der.decode(plain_der.encode(wrong))


@given(st.binary(max_size=60))
def test_no_octets_break_the_reading(data: bytes) -> None:
    """Broken if it fails: a stranger's paper ends in a fault of the app. Source: one spelling (X.690 section 10)."""
    try:
        value = plain_der.decode(data)
    except ValueError:
        return
    assert plain_der.encode(value) == data


def test_numbers_are_as_short_as_der_wants_them() -> None:
    """Broken if it fails: other readers refuse the paper. Source: X.690 section 8.3.2."""
    for number, written in ((0, "020100"), (127, "02017f"), (128, "02020080"), (256, "02020100")):
        assert plain_der.encode(number).hex() == written
        assert plain_der.decode(bytes.fromhex(written)) == number


def test_frames_in_any_order_give_the_lines_and_damaged_ones_are_left_out() -> None:
    """Broken if it fails: a stain on one code spoils what the others say."""
    lines = lines_of(paper_der.encode(COTTAGE))
    frames = paper_frames.frames(lines)
    assert 1 < len(frames) <= 3
    shuffled = [*frames, "https://quince.example", *frames]
    assert paper_frames.lines_in(reversed(shuffled)) == lines
    for place in range(len(frames[0])):
        other = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:"[place * 7 % 45]
        stained = frames[0][:place] + other + frames[0][place + 1 :]
        if stained != frames[0] and place != 3:  # that one is the version
            assert paper_frames.lines_in([stained]) == ()
    with pytest.raises(Refused, match="paper-newer"):
        paper_frames.lines_in([frames[0].replace("HKP1", "HKP2")])


def test_codes_are_small_enough_for_paper_and_full_papers_have_three() -> None:
    """Broken if it fails: modules are too fine for a scanner of 150 dots to an inch."""
    full = lines_of(paper_der.encode(replace(COTTAGE, certificate=hashlib.shake_256(b"Quince").digest(665))))
    assert len(full) == MOST_LINES
    frames = paper_frames.frames(full)
    assert len(frames) == 3
    assert all(len(paper_frames.matrix(one)) <= 97 + 8 for one in frames)
    with pytest.raises(Bug, match="frame-unfit"):
        paper_frames.matrix("HKP1/01/lower")


def test_a_key_text_that_could_not_be_made_again_is_refused() -> None:
    """Broken if it fails: the paper carries another text than the keyring."""
    text = paper_der.key_text(b"quince" * 40)
    assert paper_der.key_octets(text) == b"quince" * 40
    for other in (text.replace("\n", "\r\n"), text + " ", text[:-20], "", "words"):
        with pytest.raises(Refused, match="paper-key-unfit"):
            paper_der.key_octets(other)
