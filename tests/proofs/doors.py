"""A proof's door without a household, and requests that a test judges it by."""

from __future__ import annotations

import ipaddress
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass, replace
from urllib.error import HTTPError
from urllib.request import ProxyHandler, Request, build_opener

from hearthkey.adapters.ticket_server import TicketServer
from hearthkey.core.proof_doors import Event, ProofDoor
from hearthkey.core.proofs import Ground
from hearthkey.core.tickets import LIFE, Asked, draw_token
from hearthkey.services.proof_desk import Door
from hearthkey.services.ticket_ports import Answer
from tests.fakes.clock import NOW, FakeClock
from tests.fakes.dice import SeededDice

TUNNEL = ipaddress.ip_network("203.0.113.0/24")
HOME = ipaddress.ip_network("198.51.100.0/24")
LOOPBACK = ipaddress.ip_network("127.0.0.0/8")
NOWHERE = ipaddress.ip_network("192.0.2.0/24")
GATE = ipaddress.ip_address("198.51.100.1")
DEVICE, AT_HOME, STRANGER = "203.0.113.10", "198.51.100.45", "192.0.2.50"
GROUND = Ground(TUNNEL, (HOME,))
HERE = ipaddress.ip_address("127.0.0.1")


def door(**other: object) -> ProofDoor:
    """A door of the practice household at 198.51.100.23, opened at noon."""
    made = ProofDoor(
        token=draw_token(SeededDice("proof").bits),
        address=ipaddress.ip_address("198.51.100.23"),
        port=49152,
        opened=NOW,
        until=NOW + LIFE,
        by=GROUND,
    )
    return replace(made, **other)  # type: ignore[arg-type]  # each test names fields of the door


def asks(of: ProofDoor, address: str, path: str = "", *, method: str = "GET") -> Asked:
    """A request with the right link."""
    return Asked(method, f"/{of.token.reveal()}{path}", of.origin, address)


class Hasty:
    """A desk whose answers are not held back, for tests that are about something else."""

    def __init__(self, behind: Door) -> None:
        self._behind = behind
        self.sent = behind.sent
        self.over = behind.over

    def answer(self, asked: Asked) -> Answer:
        """See the port."""
        return replace(self._behind.answer(asked), delay=0.0)


@dataclass
class Doorway:
    """An open door on loopback."""

    door: Door
    server: TicketServer
    clock: FakeClock

    @property
    def link(self) -> str:
        """The right one."""
        return self.door.door.link.reveal()

    def heard(self, count: int) -> list[Event]:
        """So many things that are told, and whatever else was told by then."""
        first = [self.door.events.get(timeout=20) for _ in range(count)]
        return first + [self.door.events.get_nowait() for _ in range(self.door.events.qsize())]


@contextmanager
def doorway(by: Ground) -> Iterator[Doorway]:
    """Open a door on loopback, under a clock that stands still until a test moves it."""
    clock = FakeClock()
    with TicketServer(HERE, clock) as server:
        behind = Door(door(address=HERE, port=server.port, by=by), clock)
        server.start(Hasty(behind))
        yield Doorway(behind, server, clock)


def fetch(link: str, **fields: str) -> tuple[int, str]:
    """Fetch as a phone would, past any proxy; return the status and the page."""
    asked = Request(link, headers={name.replace("_", "-"): value for name, value in fields.items()})  # noqa: S310 - http
    try:
        with build_opener(ProxyHandler({})).open(asked, timeout=20) as answer:
            return answer.status, answer.read().decode()
    except HTTPError as error:
        with error:
            return error.code, error.read().decode()
