"""The small web server of a ticket: waitress reads HTTP, one thread does everything, and it ends by itself.

waitress hands requests to a crew of threads. Here the loop's own thread asks the desk, holds an answer back for as long
as the desk says, and sends it: a slow answer costs no thread.
"""

from __future__ import annotations

import contextlib
import ipaddress
import logging
import socket
import threading
from types import TracebackType
from typing import Any, Self

from waitress import wasyncore
from waitress.adjustments import Adjustments
from waitress.channel import ClientDisconnected, HTTPChannel
from waitress.parser import HTTPRequestParser
from waitress.server import TcpWSGIServer
from waitress.task import Task

from hearthkey.core.errors import Unavailable
from hearthkey.core.tickets import Asked
from hearthkey.services.ports import Clock
from hearthkey.services.ticket_ports import Answer, Desk

LARGEST_HEAD = 8192
"""Octets of a request; what phones send stays below 2,000."""
MOST_TALKS = 32
MOST_TALKS_WITH_ONE = 8
"""Connections at a time; browsers open six to a host, so one neighbour cannot keep everybody else out."""
ASKING_TIME = 10.0
SENDING_TIME = 30.0
"""Seconds, counted from the first octet's connection and from the answer: dripping octets does not stretch them."""
_TICK = 0.1
_MOST_IGNORED = 1 << 16
_LOG = logging.getLogger(__name__)
_NOBODY = object()
"""Stands where waitress would put its crew of threads; `_Front.add_task` never calls it."""


class _Written(Task):
    """Writes the answer that the desk gave."""

    complete = True

    def execute(self) -> None:
        talk = self.channel
        answer = talk.answer if isinstance(talk, _Talk) else None
        if answer is None:
            return
        self.status = answer.status
        self.response_headers.extend(answer.headers)
        self.content_length = len(answer.body)
        self.set_close_on_finish()
        # RFC 9110 section 9.3.2: an answer to HEAD has no content.
        self.write(b"" if getattr(self.request, "command", "") == "HEAD" else answer.body)


class _Talk(HTTPChannel):
    """One connection: one request, one answer, one good-bye."""

    server: _Front

    def __init__(
        self, server: _Front, sock: socket.socket, addr: tuple[Any, ...], adj: Adjustments, sockets: dict[int, Any]
    ) -> None:
        self.answer: Answer | None = None
        self.due = 0.0
        self._born = server.clock.monotonic()
        self._spoken = self._parting = self._whole = self._ended = False
        self._ignored = 0
        self.peer = _without_zone(addr)
        super().__init__(server, sock, addr, adj, sockets)

    def readable(self) -> bool:
        return self._parting or (self.answer is None and super().readable())

    def writable(self) -> bool:
        return bool(self.total_outbufs_len) or (self._spoken and not self._parting)

    def handle_read(self) -> None:
        if self._parting:
            self._wait_for_end()
        else:
            super().handle_read()

    def handle_write(self) -> None:
        if self.total_outbufs_len:
            super().handle_write()
        if self.connected and self._spoken and not self._parting and not self.total_outbufs_len:
            self._part()

    def handle_expt(self) -> None:
        self.handle_close()

    def handle_error(self) -> None:
        # Only what went wrong: the request line may hold the token.
        _LOG.exception("a connection of a ticket was dropped")
        self.handle_close()

    def send_continue(self) -> None:
        """Nothing that has content is ever asked to go on."""
        if self.request is not None:
            self.request.expect_continue = False

    def take(self, request: HTTPRequestParser, now: float) -> None:
        """Have the desk decide about a request that was read."""
        self.answer = self.server.desk.answer(_asked(request, self.peer))
        self.due = now + self.answer.delay

    def sweep(self, now: float) -> None:
        """Do what is due: send an answer that was held back, or end what takes too long."""
        if self.answer is None:
            if now - self._born > ASKING_TIME:
                self.handle_close()
        elif not self._spoken:
            if now >= self.due:
                self._speak()
        elif now - self.due > SENDING_TIME:
            self.handle_close()

    def _speak(self) -> None:
        self._spoken = True
        with contextlib.suppress(ClientDisconnected, OSError):
            _Written(self, self.requests[0]).service()
        with self.requests_lock:
            for request in self.requests:
                request.close()
            self.requests = []

    def _part(self) -> None:
        """Let the other side close first, or what it has not read yet may be lost (RFC 9112 section 9.6)."""
        self._parting = True
        try:
            if self.socket is not None:
                self.socket.shutdown(socket.SHUT_WR)
        except OSError:
            self.handle_close()

    def _wait_for_end(self) -> None:
        try:
            more = self.socket.recv(4096) if self.socket is not None else b""
        except BlockingIOError:
            return
        except OSError:
            more = None
        self._ignored += len(more or b"")
        if not more or self._ignored >= _MOST_IGNORED:
            self._whole = more == b""
            self.handle_close()

    def handle_close(self) -> None:
        """Close, once, and tell the desk how a download ended."""
        if self._ended:
            return
        self._ended = True
        super().handle_close()
        if self.answer is not None and self.answer.download:
            self.server.desk.sent(whole=self._whole)


def _without_zone(addr: tuple[Any, ...]) -> str:
    return str(addr[0]).split("%", 1)[0]


def _asked(request: HTTPRequestParser, peer: str) -> Asked:
    """What waitress could not read is a request for nothing."""
    if request.error is not None:
        return Asked("", "", "", peer)
    fields = request.headers
    return Asked(
        request.command,
        request.request_uri,
        fields.get("HOST", ""),
        peer,
        agent=fields.get("USER_AGENT", ""),
        languages=fields.get("ACCEPT_LANGUAGE", ""),
    )


class _Front(TcpWSGIServer):
    """The listening socket."""

    def __init__(self, sock: socket.socket, desk: Desk, clock: Clock, sockets: dict[int, Any]) -> None:
        self.desk = desk
        self.clock = clock
        self._sockets = sockets
        adjustments = Adjustments(
            backlog=MOST_TALKS,
            channel_timeout=int(SENDING_TIME),
            clear_untrusted_proxy_headers=False,
            ident="",
            log_socket_errors=False,
            max_request_body_size=1,
            max_request_header_size=LARGEST_HEAD,
            recv_bytes=4096,
        )
        about = (sock.family, sock.type, sock.proto, sock.getsockname())
        super().__init__(
            None,
            sockets,
            _start=True,
            _sock=sock,
            dispatcher=_NOBODY,
            adj=adjustments,
            sockinfo=about,
            bind_socket=False,
        )

    def readable(self) -> bool:
        return True

    def handle_accept(self) -> None:
        with contextlib.suppress(OSError):
            got = self.accept()
            if got is None:
                return
            sock, addr = got
            peer = _without_zone(addr)
            talks = [one for one in self.active_channels.values() if isinstance(one, _Talk)]
            if len(talks) >= MOST_TALKS or sum(one.peer == peer for one in talks) >= MOST_TALKS_WITH_ONE:
                sock.close()
                return
            _Talk(self, sock, addr, self.adj, self._sockets)

    def add_task(self, task: HTTPChannel) -> None:
        """Called by waitress once a request was read."""
        if isinstance(task, _Talk):
            task.take(task.requests[0], self.clock.monotonic())

    def sweep(self) -> None:
        """Do what is due on every connection."""
        now = self.clock.monotonic()
        for one in list(self.active_channels.values()):
            if isinstance(one, _Talk):
                one.sweep(now)

    def end(self) -> None:
        """Close everything."""
        for one in list(self.active_channels.values()):
            one.handle_close()
        self.close()


class TicketServer:
    """The port `services.ticket_ports.Server`."""

    def __init__(self, address: ipaddress.IPv4Address | ipaddress.IPv6Address, clock: Clock) -> None:
        self._clock = clock
        self._stop = threading.Event()
        self._thread: threading.Thread | None = None
        family = socket.AF_INET6 if address.version == 6 else socket.AF_INET
        self._socket = socket.socket(family, socket.SOCK_STREAM)
        try:
            if address.version == 6:
                self._socket.setsockopt(socket.IPPROTO_IPV6, socket.IPV6_V6ONLY, 1)
            self._socket.bind((str(address), 0))
            self._port: int = self._socket.getsockname()[1]
        except OSError as error:
            self._socket.close()
            raise Unavailable("ticket-address-gone", address=str(address), seen=error.strerror or "") from error

    @property
    def port(self) -> int:
        """See the port."""
        return self._port

    def start(self, desk: Desk) -> None:
        """See the port."""
        sockets: dict[int, Any] = {}
        front = _Front(self._socket, desk, self._clock, sockets)
        given = (front, desk, sockets)
        self._thread = threading.Thread(target=self._serve, args=given, name="ticket-server", daemon=True)
        self._thread.start()

    def _serve(self, front: _Front, desk: Desk, sockets: dict[int, Any]) -> None:
        try:
            while not self._stop.is_set() and not desk.over():
                wasyncore.loop(_TICK, True, sockets, 1)  # noqa: FBT003 - poll, which knows no highest descriptor
                front.sweep()
        finally:
            front.end()

    def close(self) -> None:
        """See the port."""
        self._stop.set()
        if self._thread is not None:
            self._thread.join()
        self._socket.close()

    def __enter__(self) -> Self:
        return self

    def __exit__(
        self, family: type[BaseException] | None, error: BaseException | None, trace: TracebackType | None
    ) -> None:
        self.close()
