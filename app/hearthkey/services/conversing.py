"""One conversation with one port of a gateway: a handful of packets, and what can be said afterwards.

It never proves who it is. Packets are sent again after waits that double (RFC 7296 sections 2.1 and 2.4); a cookie is
given back once (section 2.6), and another key exchange is offered once (section 1.2).
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from enum import StrEnum

from hearthkey.core.errors import Refused
from hearthkey.formats.ike_first import LONGEST_COOKIE, Asked, first_message
from hearthkey.formats.ike_read import read
from hearthkey.formats.ike_values import IKE_SA_INIT, MAJOR, NO_SPI, Message, Said
from hearthkey.formats.ike_write import NON_ESP_MARKER, written
from hearthkey.services.reach_ports import Failure

WAITS = (0.5, 1.0, 2.0)
"""Seconds to wait after each packet. Over the whole conversation: a new question does not begin them anew."""
MOST_PACKETS = len(WAITS) + 2
"""Octets are few and packets too: three tries, a cookie given back, another key exchange."""
_MOST_HEARD = 64
"""Packets that are looked at; whoever floods gets no more of our time."""


class Outcome(StrEnum):
    """What a conversation came to."""

    ANSWERED = "answered"
    NO_PROPOSAL = "no-proposal"
    OTHER_GROUP = "other-group"
    UPSET = "upset"
    OLDER = "older"
    OTHER = "other"
    SILENT = "silent"
    REFUSED = "refused"
    UNROUTABLE = "unroutable"


@dataclass(frozen=True)
class Heard:
    """What came of it.

    Args:
        outcome: see there.
        message: what answered, where it could be read.
        packets: how many were sent.
        after: seconds from the last packet to its answer; 0 without one.
        number: the key exchange that was wanted, the note that was sent, or the version spoken, by the outcome.
    """

    outcome: Outcome
    message: Message | None = None
    packets: int = 0
    after: float = 0.0
    number: int = 0

    @property
    def spoke(self) -> bool:
        """Whether anything at all answered."""
        return self.outcome not in {Outcome.SILENT, Outcome.REFUSED, Outcome.UNROUTABLE}


class Conversation:
    """One port, from the first packet to the verdict; whoever leads it has the socket and the clock.

    Args:
        asked: what is asked.
        groups: key exchange methods on offer, the first one tried first.
        marked: whether IKE has the marker before it, as on port 4500 (RFC 3948 section 2.2).
        value: makes a public value of a method.
    """

    def __init__(self, asked: Asked, groups: tuple[int, ...], *, marked: bool, value: Callable[[int], bytes]) -> None:
        self.asked = asked
        self._groups = groups
        self._marker = NON_ESP_MARKER if marked else b""
        self._value = value
        self._group, self._public = groups[0], value(groups[0])
        self._cookie: bytes | None = None
        self._packets = self._waited = self._looked_at = 0
        self._sent, self.due = 0.0, 0.0
        self._odd: Heard | None = None
        self.heard: Heard | None = None

    def begin(self, now: float) -> bytes:
        """The first packet."""
        self.due = now + WAITS[0]
        return self._packet(now)

    def tick(self, now: float) -> bytes | None:
        """The packet that is due; when all waits are over, the verdict falls instead."""
        if self.heard is not None or now < self.due:
            return None
        self._waited += 1
        if self._waited == len(WAITS):
            self._end(self._odd or Heard(Outcome.SILENT))
            return None
        self.due = now + WAITS[self._waited]
        return self._packet(now)

    def fail(self, failure: Failure) -> None:
        """The system said that packets do not get there."""
        if self.heard is None:
            self._end(Heard({Failure.REFUSED: Outcome.REFUSED}.get(failure, Outcome.UNROUTABLE)))

    def hear(self, data: bytes, now: float) -> bytes | None:
        """Take in a packet; return what has to be sent now, if anything.

        What does not fit the question is left aside (RFC 7296 section 2.1), for anybody can send it: only when
        nothing better comes does it say that something else listens there.
        """
        self._looked_at += 1
        if self.heard is not None or self._looked_at > _MOST_HEARD:
            return None
        message = self._fitting(data)
        if message is None:
            return None
        notes = message.notes
        if Said.COOKIE in notes and message.responder == NO_SPI:
            return self._again_with(notes[Said.COOKIE], self._group, now)
        if Said.INVALID_KE_PAYLOAD in notes:
            wanted = int.from_bytes(notes[Said.INVALID_KE_PAYLOAD], "big")
            if wanted not in self._groups or wanted == self._group or self._group != self._groups[0]:
                self._end(Heard(Outcome.OTHER_GROUP, message, number=min(wanted, 0xFFFF)), now)
                return None
            return self._again_with(self._cookie, wanted, now)
        self._end(_verdict(message), now)
        return None

    def _fitting(self, data: bytes) -> Message | None:
        """The message, if it answers our question."""
        if not data.startswith(self._marker):
            self._odd = Heard(Outcome.OTHER)
            return None
        try:
            message = read(data[len(self._marker) :])
        except Refused:
            self._odd = Heard(Outcome.OTHER)
            return None
        if message.initiator != self.asked.initiator:
            self._odd = Heard(Outcome.OTHER)
            return None
        if message.major != MAJOR:
            self._odd = Heard(Outcome.OLDER, message, number=message.major)
            return None
        fits = message.response and not message.from_initiator and message.number == 0
        if not fits or message.exchange != IKE_SA_INIT:
            self._odd = Heard(Outcome.OTHER)
            return None
        return message

    def _again_with(self, cookie: bytes | None, group: int, now: float) -> bytes | None:
        odd = cookie is not None and not 1 <= len(cookie) <= LONGEST_COOKIE
        twice = cookie is not None and group == self._group and self._cookie is not None
        if odd or twice or self._packets >= MOST_PACKETS:
            self._odd = Heard(Outcome.UPSET, number=Said.COOKIE)
            return None
        if group != self._group:
            self._group, self._public = group, self._value(group)
        self._cookie = cookie
        return self._packet(now)

    def _packet(self, now: float) -> bytes:
        self._packets += 1
        self._sent = now
        return self._marker + written(first_message(self.asked, self._group, self._public, self._cookie))

    def _end(self, heard: Heard, now: float | None = None) -> None:
        after = 0.0 if now is None else max(0.0, now - self._sent)
        self.heard = Heard(heard.outcome, heard.message, self._packets, after, heard.number)


def _verdict(message: Message) -> Heard:
    """What an answer says that is neither a cookie nor about the key exchange."""
    notes = message.notes
    if Said.NO_PROPOSAL_CHOSEN in notes:
        return Heard(Outcome.NO_PROPOSAL, message)
    if Said.INVALID_MAJOR_VERSION in notes:
        return Heard(Outcome.OLDER, message, number=message.major)
    # RFC 7296 section 3.10.1: types below 16384 tell of errors.
    error = next((kind for kind in notes if kind < 16384), None)
    if error is not None:
        return Heard(Outcome.UPSET, message, number=error)
    if message.chosen is None:
        return Heard(Outcome.OTHER, message)
    return Heard(Outcome.ANSWERED, message)
