"""A network of the test's own for the check of the way in: answers come at once, and waiting costs no time."""

from __future__ import annotations

import ipaddress
from collections.abc import Callable, Iterator, Mapping, Sequence
from contextlib import contextmanager

from hearthkey.core.reach.scopes import Address
from hearthkey.services.reach_ports import Answers, Failure, Known, Packets, Peer, Stream
from tests.fakes.clock import FakeClock

Answer = Callable[[bytes, Peer, tuple[str, int]], Sequence[bytes | Failure]]
"""What comes back for a packet: from its octets, where it went, and where it came from."""


def answers(*addresses: str, ttl: int = 60, count: int | None = None) -> Answers:
    """What name servers say where all is well."""
    found = tuple(map(ipaddress.ip_address, addresses))
    return Answers(Known.FOUND, found, len(found) if count is None else count, ttl)


class FakeWayOut:
    """The ports `NameServers`, `Datagrams` and `Dials` of `services.reach_ports`.

    Args:
        clock: goes on while something is waited for.
        names: what name servers say.
        here: this computer's address in each IP version; a version that is not in it has no way out.
    """

    def __init__(self, clock: FakeClock, names: Answers, here: Mapping[int, str] | None = None) -> None:
        self.clock = clock
        self.said = names
        self.here = {4: "192.0.2.50"} if here is None else dict(here)
        self.gates: dict[tuple[str, int], Answer] = {}
        self.sent: list[tuple[Peer, bytes, float]] = []
        self.front: Stream | Failure = Failure.SILENT

    def names(self, host: str, seconds: float) -> Answers:
        """See the port."""
        assert host
        if self.said.known is Known.SILENT:
            self.clock.forward(seconds=seconds)
        return self.said

    @contextmanager
    def datagrams(self, peers: Sequence[Peer]) -> Iterator[Packets]:
        """See the port."""
        yield _Lines(self, peers)

    @contextmanager
    def dials(self, address: Address, port: int, seconds: float) -> Iterator[Stream | Failure]:
        """See the port."""
        assert address.version in self.here
        assert (port, seconds) == (443, 3.0)
        yield self.front


class _Lines:
    def __init__(self, world: FakeWayOut, peers: Sequence[Peer]) -> None:
        self._world = world
        self._peers = peers
        self._coming: list[tuple[int, bytes | Failure]] = []

    def here(self, number: int) -> tuple[str, int] | None:
        address = self._world.here.get(self._peers[number].address.version)
        return None if address is None else (address, 40000 + number)

    def send(self, number: int, data: bytes) -> Failure | None:
        peer, here = self._peers[number], self.here(number)
        assert here is not None
        self._world.sent.append((peer, data, self._world.clock.monotonic()))
        gate = self._world.gates.get((str(peer.address), peer.port))
        if gate is not None:
            self._coming += [(number, one) for one in gate(data, peer, here)]
        return None

    def wait(self, seconds: float) -> list[tuple[int, bytes | Failure]]:
        found, self._coming = self._coming, []
        if not found:
            self._world.clock.forward(seconds=seconds)
        return found
