"""A ticket: one bundle to be picked up once, by one phone at home, within minutes.

    open --(whole download)--> picked up         open --(until is past)-------> expired
    open --(20 wrong tokens)--> guessed at        open --(3 downloads cut off)-> cut off
    open --(closed at the desk)--> withdrawn

A ticket is a frozen value. Whoever asks gets a new one, with what is to be answered and what the desk is told. Every
request that is not answered with the page or the file is answered by one and the same page after one and the same
delay, so that nothing can be learned from how a guess is wrong.
"""

from __future__ import annotations

import ipaddress
import re
from collections.abc import Callable, Sequence
from dataclasses import dataclass, field, replace
from datetime import datetime, timedelta
from enum import StrEnum

from hearthkey.core.errors import Refused
from hearthkey.core.network import Subnet
from hearthkey.core.secret import Secret
from hearthkey.core.ticket_events import Ending, Event, Happened

LIFE = timedelta(minutes=10)
"""How long a ticket lives, and by how much it is made longer."""
LONGEST_LIFE = timedelta(hours=1)
"""From when it was opened: a ticket that outlives the evening is a door left open."""
LINGER = timedelta(seconds=20)
"""How long the phone that holds the link is still told that the ticket is closed."""
QUIET = timedelta(minutes=1)
"""When nothing has arrived by then, something is probably in the way."""
MOST_WRONG = 20
MOST_CUT_OFF = 3
WRONG_DELAY = 1.0
"""Seconds before a wrong request is answered."""
TOKEN_BITS = 128

_TOKEN_LENGTH = 26
_LETTERS = "abcdefghijklmnopqrstuvwxyz234567"
_TOKEN_LIKE = re.compile(rf"/([a-z2-7]{{{_TOKEN_LENGTH}}})(?:/.*)?", re.DOTALL)
_MOST_KNOWN = 64
"""Addresses remembered for telling each of them once."""


class Verdict(StrEnum):
    """What a request is answered with."""

    PAGE = "page"
    FILE = "file"
    CLOSED = "closed"
    WRONG = "wrong"
    OUTSIDE = "outside"


@dataclass(frozen=True)
class Offer:
    """One file that can be picked up.

    Args:
        form: value of a `core.bundle.Form`.
        name: file name, ASCII without anything that a link would have to escape.
    """

    form: str
    name: str


@dataclass(frozen=True)
class Asked:
    """A request as the server read it.

    Args:
        method: as sent; empty for what is no HTTP.
        target: the request target as sent (RFC 9112 section 3.2), nothing decoded.
        host: the Host field as sent.
        address: of whoever asked, without a zone.
        agent: the User-Agent field.
        languages: the Accept-Language field.
    """

    method: str
    target: str
    host: str
    address: str
    agent: str = ""
    languages: str = ""


@dataclass(frozen=True)
class Ticket:
    """A ticket at one moment.

    Args:
        token: 128 random bits in the alphabet of RFC 4648 section 6, small letters.
        address: the one that the server is bound to.
        port: TCP port.
        opened, until: UTC; it is open before `until`.
        offers: what can be picked up, the recommended form first.
        serial: of the pass, hex.
        near: who may ask: the subnet of `address` and the home subnets.
        wrong: how many wrong tokens were tried.
        cut_off: how many downloads broke off.
        sending_to: address of the phone that is downloading, empty while none is.
        arrived: whether anything ever arrived.
        hushed: whether the desk was told that nothing does.
        known: addresses that the desk was told about, each with what it was told.
        ending, ended: why and when it closed.
    """

    token: Secret[str]
    address: ipaddress.IPv4Address | ipaddress.IPv6Address
    port: int
    opened: datetime
    until: datetime
    offers: tuple[Offer, ...]
    serial: str
    near: tuple[Subnet, ...]
    wrong: int = 0
    cut_off: int = 0
    sending_to: str = ""
    arrived: bool = False
    hushed: bool = False
    known: frozenset[tuple[Happened, str]] = field(default_factory=frozenset)
    ending: Ending | None = None
    ended: datetime | None = None

    @property
    def origin(self) -> str:
        """Address and port as a Host field has them."""
        return origin(self.address, self.port)

    @property
    def link(self) -> Secret[str]:
        """The pick-up link; whoever has it can pick the bundle up, so it is handled as a secret."""
        return Secret(f"http://{self.origin}/{self.token.reveal()}")

    def over(self, now: datetime) -> bool:
        """Whether nobody needs to be answered any more."""
        return self.ended is not None and now >= self.ended + LINGER and not self.sending_to


@dataclass(frozen=True)
class Outcome:
    """What comes of a request.

    Args:
        ticket: the ticket afterwards.
        verdict: what to answer with.
        offer: which file, for `Verdict.FILE`.
        delay: seconds to wait before answering.
        events: what the desk is told.
    """

    ticket: Ticket
    verdict: Verdict
    offer: Offer | None = None
    delay: float = 0.0
    events: tuple[Event, ...] = ()


def draw_token(bits: Callable[[int], int]) -> Secret[str]:
    """Draw the token of a ticket: 128 random bits as 26 characters that can be read aloud.

    Args:
        bits: draws a whole number of that many random bits.
    """
    number = bits(TOKEN_BITS) << 2  # 26 characters of 5 bits hold 130
    return Secret("".join(_LETTERS[number >> 5 * place & 31] for place in reversed(range(_TOKEN_LENGTH))))


def tick(ticket: Ticket, now: datetime) -> tuple[Ticket, tuple[Event, ...]]:
    """Let time pass: a ticket closes at its end, unless a phone is downloading at that moment."""
    if ticket.ending is not None:
        return ticket, ()
    if now >= ticket.until and not ticket.sending_to:
        return close(ticket, Ending.EXPIRED, now)
    if not ticket.arrived and not ticket.hushed and now >= ticket.opened + QUIET:
        return replace(ticket, hushed=True), (Event(Happened.QUIET, now),)
    return ticket, ()


def close(ticket: Ticket, ending: Ending, now: datetime, address: str = "") -> tuple[Ticket, tuple[Event, ...]]:
    """Close a ticket; one that is closed stays closed for its first reason."""
    if ticket.ending is not None:
        return ticket, ()
    closed = replace(ticket, ending=ending, ended=now)
    return closed, (Event(Happened.CLOSED, now, address, ending),)


def extend(ticket: Ticket, now: datetime) -> Ticket:
    """Give a ticket ten minutes more, up to an hour in all.

    Raises:
        Refused: ticket-closed, ticket-long-enough.
    """
    ticket, _ = tick(ticket, now)
    if ticket.ending is not None:
        raise Refused("ticket-closed")
    latest = ticket.opened + LONGEST_LIFE
    if ticket.until >= latest:
        raise Refused("ticket-long-enough", minutes=int(LONGEST_LIFE.total_seconds()) // 60)
    return replace(ticket, until=min(ticket.until + LIFE, latest))


def ask(ticket: Ticket, asked: Asked, now: datetime) -> Outcome:
    """Decide about a request, whatever it is."""
    ticket, events = tick(ticket, now)
    ticket = replace(ticket, arrived=True)
    if not _is_near(ticket, asked.address):
        ticket, told = _once(ticket, Happened.OUTSIDE, asked.address, now)
        return Outcome(ticket, Verdict.OUTSIDE, delay=WRONG_DELAY, events=events + told)
    guess = token_in(asked, ticket.origin)
    if guess == ticket.token:
        return _right(ticket, asked, now, events)
    if guess is not None:
        ticket, told = _wrong(ticket, asked.address, now)
        events += told
    return Outcome(ticket, Verdict.WRONG, delay=WRONG_DELAY, events=events)


def _right(ticket: Ticket, asked: Asked, now: datetime, events: tuple[Event, ...]) -> Outcome:
    """Decide about a request that knows the token."""
    path = asked.target[1 + _TOKEN_LENGTH :]
    offer = next((one for one in ticket.offers if path == f"/{one.name}"), None)
    if path and offer is None:
        return Outcome(ticket, Verdict.WRONG, delay=WRONG_DELAY, events=events)
    if ticket.ending is not None or (offer is not None and ticket.sending_to):
        return Outcome(ticket, Verdict.CLOSED, events=events)
    if offer is None:
        ticket, told = _once(ticket, Happened.OPENED, asked.address, now)
        return Outcome(ticket, Verdict.PAGE, events=events + told)
    ticket = replace(ticket, sending_to=asked.address)
    return Outcome(ticket, Verdict.FILE, offer, events=(*events, Event(Happened.SENDING, now, asked.address)))


def sent(ticket: Ticket, *, whole: bool, now: datetime) -> tuple[Ticket, tuple[Event, ...]]:
    """A download ended: a whole one closes the ticket, a broken one leaves it open for another try."""
    address = ticket.sending_to
    ticket = replace(ticket, sending_to="")
    if whole:
        return close(ticket, Ending.PICKED_UP, now, address)
    ticket = replace(ticket, cut_off=ticket.cut_off + 1)
    told = (Event(Happened.INTERRUPTED, now, address),)
    if ticket.cut_off < MOST_CUT_OFF:
        return ticket, told
    ticket, closing = close(ticket, Ending.CUT_OFF, now, address)
    return ticket, told + closing


def _is_near(ticket: Ticket, text: str) -> bool:
    try:
        address = ipaddress.ip_address(text)
    except ValueError:
        return False
    return any(address.version == one.version and address in one for one in ticket.near)


def origin(address: ipaddress.IPv4Address | ipaddress.IPv6Address, port: int) -> str:
    """Address and port as a Host field has them (RFC 3986 section 3.2.2)."""
    return f"[{address}]:{port}" if address.version == 6 else f"{address}:{port}"


def token_in(asked: Asked, origin: str) -> Secret[str] | None:
    """The token that a request tries, or None where it could never have been right.

    A Host field that is not our own origin is a page of somebody else's that lets the phone's browser ask here.
    """
    found = _TOKEN_LIKE.fullmatch(asked.target)
    if asked.method != "GET" or asked.host.lower() != origin or found is None:
        return None
    return Secret(found.group(1))


def _wrong(ticket: Ticket, address: str, now: datetime) -> tuple[Ticket, tuple[Event, ...]]:
    if ticket.ending is not None:
        return ticket, ()
    ticket = replace(ticket, wrong=ticket.wrong + 1)
    told = (Event(Happened.WRONG, now, address),)
    if ticket.wrong < MOST_WRONG:
        return ticket, told
    ticket, closing = close(ticket, Ending.GUESSED, now, address)
    return ticket, told + closing


def _once(ticket: Ticket, what: Happened, address: str, now: datetime) -> tuple[Ticket, tuple[Event, ...]]:
    """Tell the desk about an address the first time; past a crowd of them, nothing new is told."""
    if (what, address) in ticket.known or len(ticket.known) >= _MOST_KNOWN:
        return ticket, ()
    return replace(ticket, known=ticket.known | {(what, address)}), (Event(what, now, address),)


def near(own: Subnet, home: Sequence[Subnet]) -> tuple[Subnet, ...]:
    """Who may ask: the subnet that the chosen address lies in, and the home subnets."""
    return tuple(dict.fromkeys((own, *home)))
