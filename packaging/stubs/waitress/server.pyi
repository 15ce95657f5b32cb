"""The listening socket."""

import socket
from typing import Any

from waitress.adjustments import Adjustments
from waitress.channel import HTTPChannel
from waitress.wasyncore import dispatcher

class BaseWSGIServer(dispatcher):
    adj: Adjustments
    active_channels: dict[int, HTTPChannel]
    effective_port: int
    def __init__(
        self,
        application: object,
        sockets: dict[int, Any] | None = None,
        /,
        _start: bool = True,
        _sock: socket.socket | None = None,
        dispatcher: object | None = None,
        adj: Adjustments | None = None,
        sockinfo: tuple[Any, ...] | None = None,
        bind_socket: bool = True,
    ) -> None: ...
    def pull_trigger(self) -> None: ...
    def handle_accept(self) -> None: ...
    def add_task(self, task: HTTPChannel) -> None: ...
    def close(self) -> None: ...

class TcpWSGIServer(BaseWSGIServer): ...
