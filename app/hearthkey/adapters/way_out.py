"""Ways out for the check of the way in: UDP sockets that answer or fail, and TCP with a time limit."""

from __future__ import annotations

import errno
import select
import socket
import time
from collections.abc import Iterator, Sequence
from contextlib import ExitStack, contextmanager

from hearthkey.core.reach.scopes import Address
from hearthkey.services.reach_ports import Failure, Peer

_LONGEST = 4096
"""Octets of a packet that are read; an honest first answer has a few hundred."""
_AT_ONCE = 32
_NO_ROAD = {errno.ENETUNREACH, errno.EHOSTUNREACH, errno.EADDRNOTAVAIL, errno.ENETDOWN, errno.EACCES, errno.EPERM}


class _Sockets:
    """The port `services.reach_ports.Packets`."""

    def __init__(self, peers: Sequence[Peer], stack: ExitStack) -> None:
        self._sockets: dict[int, socket.socket] = {}
        for number, peer in enumerate(peers):
            family = socket.AF_INET if peer.address.version == 4 else socket.AF_INET6
            try:
                one = stack.enter_context(socket.socket(family, socket.SOCK_DGRAM))
                one.settimeout(0)  # whoever waits has asked `select` first
                one.connect((str(peer.address), peer.port))
            except OSError:
                continue
            self._sockets[number] = one

    def here(self, number: int) -> tuple[str, int] | None:
        """See the port."""
        one = self._sockets.get(number)
        if one is None:
            return None
        address, port = one.getsockname()[:2]
        return str(address).partition("%")[0], int(port)

    def send(self, number: int, data: bytes) -> Failure | None:
        """See the port."""
        try:
            self._sockets[number].send(data)
        except OSError as error:
            return _failure(error)
        return None

    def wait(self, seconds: float) -> list[tuple[int, bytes | Failure]]:
        """See the port."""
        numbers = {one.fileno(): number for number, one in self._sockets.items()}
        found: list[tuple[int, bytes | Failure]] = []
        ready, _, _ = select.select(list(numbers), (), (), seconds)
        for file in ready[:_AT_ONCE]:
            number = numbers[file]
            try:
                found.append((number, self._sockets[number].recv(_LONGEST)))
            except BlockingIOError:
                continue  # a packet with a wrong checksum woke us up
            except OSError as error:
                if (failure := _failure(error)) is not None:
                    found.append((number, failure))
        return found


def _failure(error: OSError) -> Failure | None:
    """What the system said of packets sent; anything else is not about the way."""
    if error.errno == errno.ECONNREFUSED:
        return Failure.REFUSED
    return Failure.UNROUTABLE if error.errno in _NO_ROAD else None


@contextmanager
def open_datagrams(peers: Sequence[Peer]) -> Iterator[_Sockets]:
    """Open a UDP socket for each peer. See `services.reach_ports.Datagrams`."""
    with ExitStack() as stack:
        yield _Sockets(peers, stack)


class _Line:
    """The port `services.reach_ports.Stream`."""

    def __init__(self, line: socket.socket, until: float) -> None:
        self._line = line
        self._until = until

    def _limit(self) -> None:
        left = self._until - time.monotonic()
        if left <= 0:
            raise TimeoutError("the time is over")
        self._line.settimeout(left)

    def send(self, data: bytes) -> None:
        """See the port."""
        self._limit()
        self._line.sendall(data)

    def receive(self) -> bytes:
        """See the port."""
        self._limit()
        return self._line.recv(1 << 14)


@contextmanager
def dial(address: Address, port: int, seconds: float) -> Iterator[_Line | Failure]:
    """Open a TCP connection. See `services.reach_ports.Dials`."""
    until = time.monotonic() + seconds
    with ExitStack() as stack:
        try:
            line = stack.enter_context(socket.create_connection((str(address), port), timeout=seconds))
        except OSError as error:
            yield _failure(error) or Failure.SILENT
            return
        yield _Line(line, until)
