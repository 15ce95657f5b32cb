"""One connection."""

import socket
import threading
from typing import Any

from waitress.adjustments import Adjustments
from waitress.parser import HTTPRequestParser
from waitress.server import BaseWSGIServer
from waitress.wasyncore import dispatcher

class ClientDisconnected(Exception): ...

class HTTPChannel(dispatcher):
    server: BaseWSGIServer
    addr: tuple[Any, ...]
    request: HTTPRequestParser | None
    requests: list[HTTPRequestParser]
    requests_lock: threading.Lock
    will_close: bool
    close_when_flushed: bool
    total_outbufs_len: int
    def __init__(
        self,
        server: BaseWSGIServer,
        sock: socket.socket,
        addr: tuple[Any, ...],
        adj: Adjustments,
        sockets: dict[int, Any] | None = None,
        /,
    ) -> None: ...
    def readable(self) -> bool: ...
    def writable(self) -> bool: ...
    def handle_read(self) -> None: ...
    def handle_write(self) -> None: ...
    def handle_close(self) -> None: ...
    def send_continue(self) -> None: ...
    def service(self) -> None: ...
    def write_soon(self, data: bytes) -> int: ...
