"""A ticket without a household, on loopback, and a client that says exactly what a test wants said."""

from __future__ import annotations

import ipaddress
import socket
from collections.abc import Iterator
from contextlib import closing, contextmanager
from dataclasses import dataclass, replace

from hearthkey.adapters.ticket_server import TicketServer
from hearthkey.core.tickets import LIFE, Asked, Offer, Ticket, draw_token
from hearthkey.formats.pickup_page import PickUp
from hearthkey.services.ticket_desk import Door
from hearthkey.services.ticket_ports import Answer
from tests.fakes.clock import NOW, FakeClock
from tests.fakes.dice import SeededDice
from tests.fakes.kinds import KINDS

HOME = ipaddress.ip_network("198.51.100.0/24")
LOOPBACK = ipaddress.ip_network("127.0.0.0/8")
HERE = ipaddress.ip_address("127.0.0.1")
FILE = b"an encrypted bundle, as far as this test can tell\x00\xff" * 40
OFFER = Offer("pkcs12", "odile-tablet.p12")
PATIENCE = 20
"""Seconds after which a client gives up; no verdict depends on it while all is well."""


class Hasty:
    """A desk whose answers are not held back, for tests that are about something else."""

    def __init__(self, door: Door) -> None:
        self._door = door
        self.sent = door.sent
        self.over = door.over

    def answer(self, asked: Asked) -> Answer:
        """See the port."""
        return replace(self._door.answer(asked), delay=0.0)


def ticket(**other: object) -> Ticket:
    """A ticket of the practice household at 198.51.100.23, opened at noon."""
    made = Ticket(
        token=draw_token(SeededDice("ticket").bits),
        address=ipaddress.ip_address("198.51.100.23"),
        port=49152,
        opened=NOW,
        until=NOW + LIFE,
        offers=(OFFER,),
        serial="5c",
        near=(HOME,),
    )
    return replace(made, **other)  # type: ignore[arg-type]  # each test names fields of the ticket


def asks(of: Ticket, path: str = "", *, address: str = "198.51.100.45", method: str = "GET") -> Asked:
    """A request with the right token."""
    return Asked(method, f"/{of.token.reveal()}{path}", of.origin, address)


@dataclass
class Doorway:
    """An open ticket on loopback."""

    door: Door
    server: TicketServer
    clock: FakeClock

    @property
    def path(self) -> str:
        """Of the page."""
        return f"/{self.door.ticket.token.reveal()}"

    @property
    def file_path(self) -> str:
        """Of the file."""
        return f"{self.path}/{OFFER.name}"

    def connect(self) -> socket.socket:
        """A connection of a client."""
        return socket.create_connection(("127.0.0.1", self.server.port), PATIENCE)

    def say(self, octets: bytes) -> bytes:
        """Send octets, and read to the end; empty where the server would not talk."""
        try:
            with closing(self.connect()) as client:
                client.sendall(octets)
                return read_all(client)
        except (ConnectionError, BrokenPipeError):
            return b""

    def get(self, path: str, method: str = "GET", *fields: str) -> bytes:
        """Ask politely."""
        lines = (f"{method} {path} HTTP/1.1", f"Host: {self.door.ticket.origin}", *fields, "", "")
        return self.say("\r\n".join(lines).encode("latin-1"))


def read_all(client: socket.socket) -> bytes:
    """Everything until the other side closes."""
    parts: list[bytes] = []
    try:
        while part := client.recv(65536):
            parts.append(part)
    except ConnectionError:
        pass
    return b"".join(parts)


def about(of: Ticket) -> PickUp:
    """What its page is about."""
    return PickUp(
        person="Odile",
        device="tablet",
        kind=KINDS.find("android"),
        kinds=KINDS,
        server="home.quince.example",
        identity="k7m2.quince.example",
        path=f"/{of.token.reveal()}",
        offers=of.offers,
    )


@contextmanager
def doorway(*, hasty: bool = True, **other: object) -> Iterator[Doorway]:
    """Open a ticket on loopback, under a clock that stands still until a test moves it."""
    clock = FakeClock()
    with TicketServer(HERE, clock) as server:
        opened = ticket(**{"address": HERE, "port": server.port, "near": (LOOPBACK,), **other})
        door = Door(opened, about(opened), {OFFER.form: FILE}, clock)
        server.start(Hasty(door) if hasty else door)
        yield Doorway(door, server, clock)


def body_of(answer: bytes) -> bytes:
    """What follows the head."""
    return answer.split(b"\r\n\r\n", 1)[1]


def without_date(answer: bytes) -> bytes:
    """An answer but for the second in which it was given."""
    return b"\r\n".join(line for line in answer.split(b"\r\n") if not line.startswith(b"Date:"))
