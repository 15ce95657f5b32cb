"""A look at what calls itself a web front: whatever it sends, the look ends, and no error comes of it."""

from __future__ import annotations

from hypothesis import given, settings
from hypothesis import strategies as st

from hearthkey.pki.front_look import look

ALERT = bytes.fromhex("15030300020228")
"""A fatal alert, handshake_failure (RFC 8446 section 6)."""


class Talker:
    """Sends what it was given, bit by bit, and then the last of it for ever.

    Args:
        parts: what it sends.
    """

    def __init__(self, *parts: bytes) -> None:
        self._parts = list(parts)
        self.asked = 0

    def send(self, data: bytes) -> None:
        """Take what comes."""
        assert data

    def receive(self) -> bytes:
        """See the class."""
        self.asked += 1
        return self._parts.pop(0) if len(self._parts) > 1 else self._parts[0]


@settings(max_examples=60, deadline=None)
@given(st.lists(st.binary(max_size=60) | st.just(ALERT), min_size=1, max_size=5))
def test_noise_ends_in_a_plain_word(parts: list[bytes]) -> None:
    """Whoever listens on the port could end the check with an error that nobody expects."""
    seen = look(Talker(*parts), "home.quince.example")
    assert seen.failed
    assert (seen.chain, seen.asks, seen.date) == ((), False, None)


def test_who_drips_octets_is_left_soon() -> None:
    """A front that sends one octet of a long record at a time would be listened to for as long as it likes."""
    talker = Talker(bytes.fromhex("160303ffff"), b"\x00")
    assert look(talker, "home.quince.example").failed
    assert talker.asked < 100


def test_somebody_who_says_no_is_quoted() -> None:
    """The householder would not learn what was seen."""
    assert "handshake failure" in look(Talker(ALERT), "192.0.2.1").failed
