"""One conversation with one port, with whatever anybody sends into it."""

from __future__ import annotations

from hypothesis import given, settings
from hypothesis import strategies as st

from hearthkey.core.keysets import COMPACT
from hearthkey.core.proposals import proposals
from hearthkey.core.transforms import Protocol
from hearthkey.formats.ike_first import Asked
from hearthkey.services.conversing import MOST_PACKETS, WAITS, Conversation, Outcome
from hearthkey.services.reach_ports import Failure
from tests.formats import ike_scapy as scapy

SPI = bytes.fromhex("0102030405060708")
GOOD = scapy.accepting(SPI, authorities=[bytes(20)])
COOKIE = scapy.answer(SPI, bytes(8), scapy.note(16390, b"crumb"), 41)
EMPTY_COOKIE = scapy.answer(SPI, bytes(8), scapy.note(16390), 41)
LONG_COOKIE = scapy.answer(SPI, bytes(8), scapy.note(16390, bytes(65)), 41)
OTHER_GROUP = scapy.answer(SPI, bytes(8), scapy.note(17, b"\x00\x0e"), 41)
ODD_GROUP = scapy.answer(SPI, bytes(8), scapy.note(17, b"\xff" * 300), 41)
NOT_OURS = scapy.accepting(bytes(8))
REQUEST = GOOD[:19] + b"\x08" + GOOD[20:]


def conversation() -> Conversation:
    """One that has not begun, with a group beside the first."""
    offered = [one for one in proposals(COMPACT) if one.protocol is Protocol.IKE]
    asked = Asked(SPI, bytes(32), offered, (2,), ("192.0.2.50", 40000), ("203.0.113.7", 500))
    return Conversation(asked, (19, 14), marked=False, value=bytes)


def spoilt(place: int, value: int) -> bytes:
    """A good answer with one wrong octet."""
    return GOOD[:place] + bytes([value]) + GOOD[place + 1 :]


EVENTS = st.one_of(
    st.sampled_from([GOOD, COOKIE, EMPTY_COOKIE, LONG_COOKIE, OTHER_GROUP, ODD_GROUP, NOT_OURS, REQUEST, b""]),
    st.binary(max_size=80),
    st.builds(spoilt, st.integers(0, len(GOOD) - 1), st.integers(0, 255)),
    st.sampled_from(list(Failure)),
    st.floats(0, 5),
)


@settings(max_examples=300, deadline=None)
@given(st.lists(EVENTS, max_size=90))
def test_it_ends_after_a_handful_of_packets_whatever_comes(events: list[bytes | Failure | float]) -> None:
    """Whoever answers could make us send for ever, or end the check with an error that nobody expects."""
    talk, now = conversation(), 100.0
    sent = [talk.begin(now)]
    for event in [*events, *[max(WAITS)] * (len(WAITS) + 1)]:
        answer = None
        if isinstance(event, float):
            now += event
            answer = talk.tick(now)
        elif isinstance(event, Failure):
            talk.fail(event)
        else:
            answer = talk.hear(event, now)
        if answer is not None:
            sent.append(answer)
    assert talk.heard is not None
    assert len(sent) == talk.heard.packets <= MOST_PACKETS
    assert all(scapy.parsed(one).init_SPI == SPI for one in sent)


def test_what_does_not_fit_is_left_aside_while_the_gateway_may_still_answer() -> None:
    """Anybody on the way could answer first and have the gateway called something else (RFC 7296 section 2.1)."""
    talk = conversation()
    talk.begin(0)
    for noise in (b"", b"noise" * 9, NOT_OURS, REQUEST, LONG_COOKIE):
        assert talk.hear(noise, 0.1) is None
        assert talk.heard is None
    assert talk.hear(GOOD, 0.2) is None
    assert talk.heard is not None
    assert (talk.heard.outcome, talk.heard.after) == (Outcome.ANSWERED, 0.2)


def test_a_cookie_stays_when_the_group_changes() -> None:
    """The gateway would ask for it once more, and the check would call that a fault (RFC 7296 section 2.6.1)."""
    talk = conversation()
    talk.begin(0)
    with_cookie = talk.hear(COOKIE, 0.1)
    with_group = talk.hear(OTHER_GROUP, 0.2)
    assert with_cookie is not None
    assert with_group is not None
    first, _, exchange, nonce, *_ = scapy.payloads(scapy.parsed(with_group))
    assert (first.notify, exchange.group, exchange.ke, nonce.nonce) == (b"crumb", 14, bytes(14), bytes(32))
