"""A request as it is read."""

class HTTPRequestParser:
    error: object | None
    command: str
    request_uri: str
    version: str
    headers: dict[str, str]
    expect_continue: bool
    def close(self) -> None: ...
