"""What a ticket needs from outside, said as Protocols: this laptop's addresses and a small server."""

from __future__ import annotations

import ipaddress
from dataclasses import dataclass
from types import TracebackType
from typing import Protocol, Self

from hearthkey.core.home_addresses import Found
from hearthkey.core.tickets import Asked


@dataclass(frozen=True)
class Answer:
    """What the server sends.

    Args:
        status: code and reason.
        headers: fields by name.
        body: content.
        delay: seconds to wait before sending.
        download: whether the desk wants to hear how sending it ended.
    """

    status: str
    headers: tuple[tuple[str, str], ...]
    body: bytes
    delay: float = 0.0
    download: bool = False


class Desk(Protocol):
    """Decides about every request; called from the server's thread."""

    def answer(self, asked: Asked) -> Answer:
        """Decide about one request."""

    def sent(self, *, whole: bool) -> None:
        """The one download ended; `whole` where the phone took all of it and closed the connection."""

    def over(self) -> bool:
        """Whether the server is to end. Asked several times a second."""


class Server(Protocol):
    """A server bound to one address. Leaving its `with` block ends it and its thread."""

    @property
    def port(self) -> int:
        """TCP port that it is bound to."""

    def start(self, desk: Desk) -> None:
        """Begin to listen."""

    def close(self) -> None:
        """End, and wait until its thread has. Closing again is fine."""

    def __enter__(self) -> Self:
        """Itself."""

    def __exit__(
        self, family: type[BaseException] | None, error: BaseException | None, trace: TracebackType | None
    ) -> None:
        """Close."""


class Servers(Protocol):
    """Makes servers."""

    def __call__(self, address: ipaddress.IPv4Address | ipaddress.IPv6Address) -> Server:
        """Bind one to an address and a free port, not listening yet.

        Raises:
            Unavailable: ticket-address-gone.
        """


class Addresses(Protocol):
    """Knows this laptop's addresses."""

    def __call__(self) -> tuple[Found, ...]:
        """Every address of every interface that is up.

        Raises:
            Unavailable: addresses-unknown.
        """
