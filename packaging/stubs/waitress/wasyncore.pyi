"""The loop over sockets."""

from socket import socket as _socket
from typing import Any

class dispatcher:
    socket: _socket | None
    connected: bool
    def accept(self) -> tuple[_socket, tuple[Any, ...]] | None: ...
    def close(self) -> None: ...
    def handle_error(self) -> None: ...

def loop(
    timeout: float = 30.0, use_poll: bool = False, sockets: dict[int, Any] | None = None, count: int | None = None, /
) -> None: ...
