"""The ticket's server as phones, neighbours and scanners meet it."""

from __future__ import annotations

import ipaddress
import socket
import threading
from contextlib import ExitStack, closing

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from hearthkey.adapters import ticket_server
from hearthkey.adapters.ticket_server import TicketServer
from hearthkey.core.ticket_events import Ending, Happened
from hearthkey.core.tickets import LIFE, LINGER, MOST_WRONG, WRONG_DELAY
from hearthkey.services.ticket_desk import Door
from tests.fakes.clock import FakeClock
from tests.judges import unable
from tests.tickets.doors import FILE, HOME, OFFER, Doorway, about, body_of, doorway, read_all, ticket, without_date


def wait_until_gone(way: Doorway) -> None:
    """Wait for the server's own end, however long that takes on this machine."""
    for thread in threading.enumerate():
        if thread.name == "ticket-server":
            thread.join(20)
            assert not thread.is_alive()
    assert way.say(b"GET / HTTP/1.1\r\n\r\n") == b""


def test_page_and_file_are_served_once() -> None:
    """Broken if it fails: a phone gets no bundle, or a second one gets it too."""
    with doorway() as way:
        page = way.get(way.path)
        assert page.startswith(b"HTTP/1.1 200 OK")
        assert way.file_path.encode() in page
        got = way.get(way.file_path)
        assert got.startswith(b"HTTP/1.1 200 OK")
        assert body_of(got) == FILE
        assert way.get(way.file_path).startswith(b"HTTP/1.1 410")
        assert way.get(way.path).startswith(b"HTTP/1.1 410")
        assert way.door.ticket.ending is Ending.PICKED_UP


def test_every_answer_forbids_keeping_framing_and_sniffing() -> None:
    """Broken if it fails: a bundle or its link stays in a browser's store, or another page shows it in a frame."""
    with doorway() as way:
        answers = [way.get(way.path), way.get("/"), way.say(b"nonsense\r\n\r\n"), way.get(way.file_path)]
        answers.append(way.get(way.path))
    for answer in answers:
        head = answer.split(b"\r\n\r\n", 1)[0]
        for field in (
            b"Cache-Control: no-store",
            b"X-Content-Type-Options: nosniff",
            b"X-Frame-Options: DENY",
            b"Referrer-Policy: no-referrer",
            b"default-src 'none'",
            b"frame-ancestors 'none'",
            b"Connection: close",
        ):
            assert field in head
        assert b"waitress" not in answer.lower()
        assert b"Server:" not in head


WRONG = [
    ("GET", "/"),
    ("GET", "/favicon.ico"),
    ("GET", "/..%2f..%2fetc/passwd"),
    ("GET", "/../../etc/passwd"),
    ("GET", "//{token}"),
    ("GET", "/{token}/"),
    ("GET", "/{token}?"),
    ("GET", "/{token}/../{token}"),
    ("GET", "/{token}/./odile-tablet.p12"),
    ("GET", "/{token}/%6fdile-tablet.p12"),
    ("GET", "/{token}/odile-tablet.p12/"),
    ("GET", "/{token}/odile-tablet.p12%00"),
    ("GET", "/{token}/..%5c..%5codile-tablet.p12"),
    ("GET", "/{TOKEN}"),
    ("GET", "http://127.0.0.1/{token}"),
    ("GET", "*"),
    ("POST", "/{token}"),
    ("PUT", "/{token}/odile-tablet.p12"),
    ("DELETE", "/{token}"),
    ("OPTIONS", "/{token}"),
    ("TRACE", "/{token}"),
    ("PROPFIND", "/{token}"),
    ("CONNECT", "127.0.0.1:22"),
    ("get", "/{token}"),
]


def test_everything_else_is_one_and_the_same_answer() -> None:
    """Broken if it fails: somebody learns from an answer how a guess was wrong, or reaches another path or method."""
    with doorway() as way:
        token = way.path[1:]
        answers = {without_date(way.get(path.format(token=token, TOKEN=token.upper()), verb)) for verb, path in WRONG}
        answers.add(without_date(way.get("/" + "a" * 26)))
        stranger = f"GET {way.path} HTTP/1.1\r\nHost: quince.example\r\n\r\n".encode()
        answers.add(without_date(way.say(stranger)))
        answers.add(without_date(way.say(f"GET {way.path} HTTP/1.1\r\n\r\n".encode())))
        answers.add(without_date(way.get(way.path, "GET", "Content-Length: 5")))
        answers.add(without_date(way.get(way.path, "GET", "Content-Length: -1")))
        answers.add(without_date(way.get("/", "GET", "X-Long: " + "a" * 9000)))
        head = way.get(way.path, "HEAD")
        assert way.door.ticket.ending is None
        assert way.door.ticket.wrong == 1
    bodies = {body_of(answer) for answer in answers}
    assert len(bodies) == 1
    # What is no HTTP/1.1 is answered as HTTP/1.0; the rest of the head is the same.
    assert len({answer.split(b"\r\n", 1)[1] for answer in answers}) == 1
    assert all(b" 404 Not Found\r\n" in answer for answer in answers)
    assert head.startswith(b"HTTP/1.1 404")
    assert body_of(head) == b""


def test_ten_thousand_wrong_tokens_find_nothing() -> None:
    """Broken if it fails: guessing goes on and on, and whoever guesses meets more than one answer."""
    with doorway() as way:
        seen = {without_date(way.get(f"/{'abcdefgh234567'[n % 14] * 26}")) for n in range(10_000)}
        assert way.door.ticket.ending is Ending.GUESSED
        assert way.door.ticket.wrong == MOST_WRONG
        told = [way.door.events.get_nowait().what for _ in range(way.door.events.qsize())]
        assert told.count(Happened.WRONG) == MOST_WRONG
        assert told.count(Happened.CLOSED) == 1
    assert len(seen - {b""}) == 1


def test_a_wrong_answer_is_held_back() -> None:
    """Broken if it fails: guesses are answered as fast as they come."""
    with doorway(hasty=False) as way, closing(way.connect()) as client:
        client.sendall(f"GET /{'a' * 26} HTTP/1.1\r\nHost: {way.door.ticket.origin}\r\n\r\n".encode())
        assert way.door.events.get(timeout=20).what is Happened.WRONG
        assert way.get(way.path).startswith(b"HTTP/1.1 200")
        client.settimeout(0.0)
        with pytest.raises(BlockingIOError):
            client.recv(1)
        client.settimeout(20)
        way.clock.forward(seconds=WRONG_DELAY)
        assert read_all(client).startswith(b"HTTP/1.1 404")


def test_closes_itself_when_its_time_is_over() -> None:
    """Broken if it fails: a forgotten ticket stays open, and its thread stays too."""
    with doorway() as way:
        way.clock.forward(seconds=LIFE.total_seconds())
        assert way.get(way.path).startswith(b"HTTP/1.1 410")
        assert way.door.ticket.ending is Ending.EXPIRED
        way.clock.forward(seconds=LINGER.total_seconds())
        wait_until_gone(way)


def test_a_slow_talker_is_cut_off_and_keeps_nobody_out() -> None:
    """Broken if it fails: somebody who drips octets holds the door shut (slow-loris)."""
    with doorway() as way, ExitStack() as open_ones:
        clients = [
            open_ones.enter_context(closing(way.connect())) for _ in range(ticket_server.MOST_TALKS_WITH_ONE // 2)
        ]
        for client in clients:
            client.sendall(b"GET / HTTP/1.1\r\nX-Slow: ")
        assert way.get(way.path).startswith(b"HTTP/1.1 200")
        way.clock.forward(seconds=ticket_server.ASKING_TIME - 1)
        for client in clients:
            client.sendall(b"a")
        assert way.get(way.path).startswith(b"HTTP/1.1 200")
        way.clock.forward(seconds=2)
        assert [read_all(client) for client in clients] == [b""] * len(clients)


def test_who_does_not_take_the_file_is_cut_off() -> None:
    """Broken if it fails: a phone that went out of reach keeps the ticket from the next try."""
    with doorway() as way, closing(way.connect()) as client:
        client.sendall(f"GET {way.file_path} HTTP/1.1\r\nHost: {way.door.ticket.origin}\r\n\r\n".encode())
        assert client.recv(10)
        way.clock.forward(seconds=ticket_server.SENDING_TIME + 1)
        assert [way.door.events.get(timeout=20).what for _ in range(2)] == [Happened.SENDING, Happened.INTERRUPTED]
        assert way.get(way.path).startswith(b"HTTP/1.1 200")


def test_one_neighbour_gets_a_few_connections_only() -> None:
    """Broken if it fails: threads, memory or descriptors grow with whoever connects."""
    with doorway() as way, ExitStack() as open_ones:
        before = threading.active_count()
        clients = [open_ones.enter_context(closing(way.connect())) for _ in range(40)]
        turned_away = 0
        for client in clients[ticket_server.MOST_TALKS_WITH_ONE :]:
            turned_away += read_all(client) == b""
        assert turned_away == 40 - ticket_server.MOST_TALKS_WITH_ONE
        assert threading.active_count() == before


def test_an_urgent_octet_ends_the_talk() -> None:
    """Broken if it fails: out-of-band data (RFC 9293 section 3.8.5) keeps the server turning in circles."""
    with doorway() as way, closing(way.connect()) as client:
        client.send(b"!", socket.MSG_OOB)
        assert read_all(client) == b""


def test_a_download_that_breaks_off_can_be_tried_again() -> None:
    """Broken if it fails: a phone that lost the Wi-Fi for a moment needs a new code, and the desk is told it has it."""
    with doorway() as way:
        with closing(way.connect()) as client:
            client.setsockopt(socket.SOL_SOCKET, socket.SO_LINGER, b"\x01\x00\x00\x00\x00\x00\x00\x00")
            client.sendall(f"GET {way.file_path} HTTP/1.1\r\nHost: {way.door.ticket.origin}\r\n\r\n".encode())
            assert client.recv(10)
        heard = [way.door.events.get(timeout=20).what for _ in range(2)]
        assert heard == [Happened.SENDING, Happened.INTERRUPTED]
        assert body_of(way.get(way.file_path)) == FILE


def test_while_one_downloads_the_other_finds_it_closed() -> None:
    """Broken if it fails: two phones leave with the same key."""
    with doorway() as way:
        with closing(way.connect()) as client:
            client.sendall(f"GET {way.file_path} HTTP/1.1\r\nHost: {way.door.ticket.origin}\r\n\r\n".encode())
            assert client.recv(10)
            assert way.get(way.file_path).startswith(b"HTTP/1.1 410")
            assert way.door.ticket.ending is None
        assert way.door.events.get(timeout=20).what is Happened.SENDING
        way.door.events.get(timeout=20)


def test_from_outside_nothing_is_given() -> None:
    """Broken if it fails: the link works for whoever is not at home."""
    with doorway(near=(HOME,)) as way:
        right, wrong = way.get(way.path), way.get("/")
        assert right.startswith(b"HTTP/1.1 403")
        assert without_date(right) == without_date(wrong)


def test_closing_leaves_no_thread_and_no_port() -> None:
    """Broken if it fails: the window is shut and the door is still open."""
    with doorway() as way:
        held = way.connect()
        assert way.get(way.path)
    with closing(held):
        assert read_all(held) == b""
    assert [one.name for one in threading.enumerate() if one.name == "ticket-server"] == []
    with pytest.raises(ConnectionRefusedError):
        socket.create_connection(("127.0.0.1", way.server.port), 5)


TOKENS = st.sampled_from(["{path}", "{file}", "/", "/aaaaaaaaaaaaaaaaaaaaaaaaaa", "*", "/%2e%2e/", "\x00"])
LINES = st.one_of(
    st.binary(max_size=200),
    st.builds(
        lambda verb, path, version, rest: verb + b" " + path.encode() + b" " + version + b"\r\n" + rest,
        st.sampled_from([b"GET", b"POST", b"HEAD", b"\xff", b""]),
        TOKENS,
        st.sampled_from([b"HTTP/1.1", b"HTTP/1.0", b"HTTP/0.9", b"HTTP/9.9", b"", b"HTTP/1.1 "]),
        st.lists(
            st.one_of(
                st.binary(max_size=60),
                st.sampled_from(
                    [
                        b"Transfer-Encoding: chunked\r\n",
                        b"Transfer-Encoding: gzip\r\n",
                        b"Expect: 100-continue\r\n",
                        b"Content-Length: 99999999999999999999\r\n",
                        b"Connection: keep-alive\r\n",
                        b"Accept-Language: \xff;q=9\r\n",
                        b"Host: 127.0.0.1\r\n",
                        b"\r\n",
                        b"0\r\n\r\n",
                        b"zz\r\n",
                    ]
                ),
            ),
            max_size=8,
        ).map(b"".join),
    ),
)


def test_a_fuzzer_finds_nothing() -> None:
    """Broken if it fails: some octets make the server talk of other things, stop, or give the file away."""
    with doorway() as way:

        @settings(max_examples=400)
        @given(octets=LINES)
        def storm(octets: bytes) -> None:
            # Path and token are right, the Host field never is.
            said = octets.replace(b"{path}", way.path.encode()).replace(b"{file}", way.file_path.encode())
            with closing(way.connect()) as client:
                client.sendall(said + b"\r\n\r\n")
                client.shutdown(socket.SHUT_WR)
                answer = read_all(client)
            assert answer == b"" or b" 404 Not Found\r\n" in answer.split(b"\r\n\r\n")[0] + b"\r\n"
            assert FILE not in answer

        storm()
        assert way.door.ticket.ending is None
        assert body_of(way.get(way.file_path)) == FILE


def test_an_ipv6_address_serves_too() -> None:
    """Broken if it fails: a home that speaks IPv6 only has no tickets."""
    if not socket.has_ipv6:
        unable("this machine has no IPv6")
    here = ipaddress.ip_address("::1")
    clock = FakeClock()
    with TicketServer(here, clock) as server:
        opened = ticket(address=here, port=server.port, near=(ipaddress.ip_network("::1/128"),))
        server.start(Door(opened, about(opened), {OFFER.form: FILE}, clock))
        with closing(socket.create_connection(("::1", server.port), 20)) as client:
            client.sendall(f"GET {about(opened).path} HTTP/1.1\r\nHost: {opened.origin}\r\n\r\n".encode())
            assert read_all(client).startswith(b"HTTP/1.1 200 OK")
