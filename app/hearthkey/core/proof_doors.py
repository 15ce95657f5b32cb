"""A proof's door: one link that says "You are in" to whoever opens it from inside the tunnel, within minutes.

    open --(opened through the tunnel)--> proved      open --(until is past)----> expired
    open --(20 wrong tokens)-----------> guessed at   open --(closed here)-----> withdrawn

From home the right link gets a page that says why this proves nothing yet, and the door stays open. From anywhere else,
and for every other request, there is one and the same answer after one and the same delay, as at a ticket.
"""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from datetime import datetime
from enum import StrEnum

from hearthkey.core.errors import Refused
from hearthkey.core.proofs import Address, Ground, Seen, judged
from hearthkey.core.secret import Secret
from hearthkey.core.tickets import LIFE, LINGER, LONGEST_LIFE, MOST_WRONG, QUIET, WRONG_DELAY, Asked, origin, token_in

_MOST_KNOWN = 64
"""Addresses remembered for telling each of them once."""


class Ending(StrEnum):
    """Why a door is closed."""

    PROVED = "proved"
    EXPIRED = "expired"
    GUESSED = "guessed"
    WITHDRAWN = "withdrawn"


class Happened(StrEnum):
    """What whoever opened the door is told about."""

    AT_HOME = "at-home"
    HIDDEN = "hidden"
    WRONG = "wrong"
    ELSEWHERE = "elsewhere"
    QUIET = "quiet"
    CLOSED = "closed"


class Verdict(StrEnum):
    """What a request is answered with."""

    IN = "in"
    HOME = "home"
    HIDDEN = "hidden"
    CLOSED = "closed"
    WRONG = "wrong"


@dataclass(frozen=True)
class Event:
    """One thing that happened at a door.

    Args:
        what: what happened.
        at: when, UTC.
        address: of whoever asked, empty where nobody did.
        ending: why it closed, for `Happened.CLOSED`.
        seen: what the address showed, for `Ending.PROVED`.
    """

    what: Happened
    at: datetime
    address: str = ""
    ending: Ending | None = None
    seen: Seen | None = None


@dataclass(frozen=True)
class ProofDoor:
    """A door at one moment.

    Args:
        token: as a ticket's.
        address: the one that the server is bound to.
        port: TCP port.
        opened, until: UTC; it is open before `until`.
        by: what addresses are judged by.
        wrong: how many wrong tokens were tried.
        arrived: whether anything ever arrived.
        hushed: whether it was told that nothing does.
        known: addresses that were told about, each with what was told.
        ending, ended: why and when it closed.
    """

    token: Secret[str]
    address: Address
    port: int
    opened: datetime
    until: datetime
    by: Ground
    wrong: int = 0
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
        """The link to be opened on the device."""
        return Secret(f"http://{self.origin}/{self.token.reveal()}")

    def over(self, now: datetime) -> bool:
        """Whether nobody needs to be answered any more."""
        return self.ended is not None and now >= self.ended + LINGER


@dataclass(frozen=True)
class Outcome:
    """What comes of a request.

    Args:
        door: the door afterwards.
        verdict: what to answer with.
        delay: seconds to wait before answering.
        events: what is told.
    """

    door: ProofDoor
    verdict: Verdict
    delay: float = 0.0
    events: tuple[Event, ...] = ()


def tick(door: ProofDoor, now: datetime) -> tuple[ProofDoor, tuple[Event, ...]]:
    """Let time pass: a door closes at its end."""
    if door.ending is not None:
        return door, ()
    if now >= door.until:
        return close(door, Ending.EXPIRED, now)
    if not door.arrived and not door.hushed and now >= door.opened + QUIET:
        return replace(door, hushed=True), (Event(Happened.QUIET, now),)
    return door, ()


def close(
    door: ProofDoor, ending: Ending, now: datetime, address: str = "", seen: Seen | None = None
) -> tuple[ProofDoor, tuple[Event, ...]]:
    """Close a door; one that is closed stays closed for its first reason."""
    if door.ending is not None:
        return door, ()
    return replace(door, ending=ending, ended=now), (Event(Happened.CLOSED, now, address, ending, seen),)


def extend(door: ProofDoor, now: datetime) -> ProofDoor:
    """Give a door ten minutes more, up to an hour in all.

    Raises:
        Refused: proof-closed, proof-long-enough.
    """
    door, _ = tick(door, now)
    if door.ending is not None:
        raise Refused("proof-closed")
    latest = door.opened + LONGEST_LIFE
    if door.until >= latest:
        raise Refused("proof-long-enough", minutes=int(LONGEST_LIFE.total_seconds()) // 60)
    return replace(door, until=min(door.until + LIFE, latest))


def ask(door: ProofDoor, asked: Asked, now: datetime) -> Outcome:
    """Decide about a request, whatever it is."""
    door, events = tick(door, now)
    door = replace(door, arrived=True)
    seen = judged(asked.address, door.by)
    if seen is Seen.ELSEWHERE:
        door, told = _once(door, Happened.ELSEWHERE, asked.address, now)
        return Outcome(door, Verdict.WRONG, WRONG_DELAY, events + told)
    guess = token_in(asked, door.origin)
    if guess == door.token and asked.target == f"/{door.token.reveal()}":
        return _right(door, seen, asked.address, now, events)
    if guess is not None and guess != door.token:
        door, told = _wrong(door, asked.address, now)
        events += told
    return Outcome(door, Verdict.WRONG, WRONG_DELAY, events)


def _right(door: ProofDoor, seen: Seen, address: str, now: datetime, events: tuple[Event, ...]) -> Outcome:
    """Decide about a request that knows the link."""
    if seen.proves and door.ending in {None, Ending.PROVED}:
        # A page that is loaded once more says the same once more; only the first time is a proof.
        door, told = close(door, Ending.PROVED, now, address, seen)
        return Outcome(door, Verdict.IN, events=events + told)
    if door.ending is not None:
        return Outcome(door, Verdict.CLOSED, events=events)
    hidden = seen is Seen.HIDDEN
    door, told = _once(door, Happened.HIDDEN if hidden else Happened.AT_HOME, address, now)
    return Outcome(door, Verdict.HIDDEN if hidden else Verdict.HOME, events=events + told)


def _wrong(door: ProofDoor, address: str, now: datetime) -> tuple[ProofDoor, tuple[Event, ...]]:
    if door.ending is not None:
        return door, ()
    door = replace(door, wrong=door.wrong + 1)
    told = (Event(Happened.WRONG, now, address),)
    if door.wrong < MOST_WRONG:
        return door, told
    door, closing = close(door, Ending.GUESSED, now, address)
    return door, told + closing


def _once(door: ProofDoor, what: Happened, address: str, now: datetime) -> tuple[ProofDoor, tuple[Event, ...]]:
    """Tell about an address the first time; past a crowd of them, nothing new is told."""
    if (what, address) in door.known or len(door.known) >= _MOST_KNOWN:
        return door, ()
    return replace(door, known=door.known | {(what, address)}), (Event(what, now, address),)
