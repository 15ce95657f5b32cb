"""Requests that are right but for a little: every way around a path that we know, under the right Host field."""

from __future__ import annotations

import socket
from contextlib import closing
from urllib.parse import quote

from hypothesis import Phase, example, given, settings
from hypothesis import strategies as st

from hearthkey.core.tickets import MOST_WRONG
from tests.tickets.doors import FILE, OFFER, Doorway, body_of, doorway, read_all

WAYS_UP = (
    "..",
    ".",
    "%2e%2e",
    "%2E.",
    "..;",
    "..%00",
    "..%c0%af",
    "%252e%252e",
    "..\\\\..",
    "%5c..",
    "\uff0e\uff0e",
    "",
)
"""As paths are climbed: plain, escaped once and twice (RFC 3986 section 6.2.2), in overlong UTF-8 (RFC 3629)."""
STEPS = st.lists(st.sampled_from((*WAYS_UP, "{token}", "{name}", "etc", "passwd", "proc", "self")), max_size=6)
METHODS = st.sampled_from(("GET", "GET", "GET", "HEAD", "POST", "get", "GET ", "\tGET"))
TAILS = st.sampled_from(("", "?", "?a=b", "#", ";x", "%20", "%00", "/", "//", "\t", ".bak", "~", "%0d%0aX: y"))
FIELDS = st.lists(
    st.sampled_from(
        (
            "Range: bytes=0-9",
            "X-Forwarded-For: 198.51.100.45",
            "X-Original-URL: /{token}/{name}",
            "X-HTTP-Method-Override: GET",
            "Host: 127.0.0.1",
            "Transfer-Encoding: chunked",
            "Content-Length: 0",
            "Upgrade: h2c",
        )
    ),
    max_size=3,
)


def filled(text: str, way: Doorway) -> str:
    """With the right token and the right name."""
    return text.replace("{token}", way.path[1:]).replace("{name}", OFFER.name)


def test_what_is_almost_right_gets_nothing() -> None:
    """Broken if it fails: some spelling of a path, a method or a field leads round the one door."""
    with doorway() as way:
        right = {way.path, way.file_path}

        @settings(max_examples=300, deadline=None, phases=(Phase.explicit, Phase.generate))
        @example(steps=["{token}", "..", "{token}", "{name}"], tail="", method="GET", fields=[])
        @example(steps=["{token}", "{name}"], tail="%00", method="GET", fields=["Range: bytes=0-9"])
        @given(steps=STEPS, tail=TAILS, method=METHODS, fields=FIELDS)
        def storm(steps: list[str], tail: str, method: str, fields: list[str]) -> None:
            target = filled("/" + "/".join(steps) + tail, way)
            if method == "GET" and not target.startswith(way.path):
                # A guess of the token is counted, and twenty close the ticket: that has a test of its own.
                target = way.path + target
            if target in right:
                target += "x"
            lines = [f"{method} {target} HTTP/1.1", f"Host: {way.door.ticket.origin}"]
            lines += [filled(one, way) for one in fields]
            with closing(way.connect()) as client:
                client.sendall("\r\n".join([*lines, "", ""]).encode("utf-8"))
                client.shutdown(socket.SHUT_WR)  # who promises a body and sends none is cut off by the clock
                answer = read_all(client)
            assert answer == b"" or answer.split(b"\r\n", 1)[0].endswith(b" 404 Not Found")
            assert FILE[:40] not in answer
            assert quote(OFFER.name).encode() not in answer

        storm()
        assert way.door.ticket.wrong < MOST_WRONG
        assert way.door.ticket.ending is None
        assert body_of(way.get(way.file_path)) == FILE
