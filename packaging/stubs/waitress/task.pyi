"""One answer."""

from waitress.channel import HTTPChannel
from waitress.parser import HTTPRequestParser

class Task:
    channel: HTTPChannel
    request: HTTPRequestParser
    status: str
    content_length: int | None
    response_headers: list[tuple[str, str]]
    complete: bool
    def __init__(self, channel: HTTPChannel, request: HTTPRequestParser) -> None: ...
    def service(self) -> None: ...
    def set_close_on_finish(self) -> None: ...
    def write(self, data: bytes) -> None: ...
