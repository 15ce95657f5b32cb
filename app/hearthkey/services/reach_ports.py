"""What the check of the way in needs from outside: name servers, UDP, TCP, and a place for what came of it."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from contextlib import AbstractContextManager
from dataclasses import dataclass
from enum import StrEnum
from typing import Protocol

from hearthkey.core.reach.chain import Chain, LastChecks
from hearthkey.core.reach.scopes import Address
from hearthkey.services.sheet_ports import SheetChange, SheetRegister

Stop = Callable[[], bool]
"""Whether the householder changed their mind; asked between packets."""


class Known(StrEnum):
    """How a look-up ended."""

    FOUND = "found"
    MISSING = "missing"
    EMPTY = "empty"
    SILENT = "silent"


@dataclass(frozen=True)
class Answers:
    """What name servers said.

    Args:
        known: how it ended.
        addresses: the first few of each IP version, IPv4 first.
        count: how many there were in all.
        ttl: seconds that the shortest-lived answer may be kept.
    """

    known: Known
    addresses: tuple[Address, ...] = ()
    count: int = 0
    ttl: int = 0


class NameServers(Protocol):
    """Asks the name servers that this laptop uses."""

    def __call__(self, host: str, seconds: float) -> Answers:
        """Look up both IP versions; ends after so many seconds whatever happens, and never raises."""


class Failure(StrEnum):
    """Why a peer cannot be heard."""

    REFUSED = "refused"
    UNROUTABLE = "unroutable"
    SILENT = "silent"


@dataclass(frozen=True)
class Peer:
    """Where packets go.

    Args:
        address, port: UDP.
    """

    address: Address
    port: int


class Packets(Protocol):
    """Open UDP sockets, one for each peer, by the numbers that the peers were given in."""

    def here(self, number: int) -> tuple[str, int] | None:
        """Our own address and port towards a peer; None where there is no way there."""

    def send(self, number: int, data: bytes) -> Failure | None:
        """Send one packet."""

    def wait(self, seconds: float) -> list[tuple[int, bytes | Failure]]:
        """What arrives first, or nothing after so many seconds; at most 32 packets."""


class Datagrams(Protocol):
    """Opens UDP sockets."""

    def __call__(self, peers: Sequence[Peer]) -> AbstractContextManager[Packets]:
        """Open one for each peer; those without a way there have no `here`."""


class Stream(Protocol):
    """An open TCP connection; no call takes longer than what is left of the time that it was opened for."""

    def send(self, data: bytes) -> None:
        """Send all of it.

        Raises:
            OSError: it broke, or the time is over.
        """

    def receive(self) -> bytes:
        """At most 16,384 octets; empty at the end.

        Raises:
            OSError: as `send`.
        """


class Dials(Protocol):
    """Opens TCP connections."""

    def __call__(self, address: Address, port: int, seconds: float) -> AbstractContextManager[Stream | Failure]:
        """Connect, or say why not; `seconds` are for connecting and for all that follows."""


class CheckChange(SheetChange, Protocol):
    """A transaction that may keep a check as well."""

    def keep_check(self, chain: Chain) -> None:
        """Keep what came of a check, for good."""


class CheckRegister(SheetRegister, Protocol):
    """The household's file, checks of the way in with it."""

    def last_checks(self) -> LastChecks:
        """The newest check from inside and from outside."""

    def change(self) -> AbstractContextManager[CheckChange]:
        """Begin a transaction."""
