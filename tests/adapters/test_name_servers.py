"""Name servers that answer, say no, hang, flood and lie: the check goes on in time with one plain word."""

from __future__ import annotations

import ipaddress
import socket
import threading
import time
from collections.abc import Callable, Iterator
from contextlib import ExitStack, contextmanager
from pathlib import Path

import dns.flags
import dns.message
import dns.rcode
import dns.rdatatype
import dns.rrset
import pytest

from hearthkey.adapters.name_servers import NameServers
from hearthkey.services.reach_ports import Answers, Known

Answer = Callable[[dns.message.Message], bytes]
MANY = 3900
"""A records that fit one answer over TCP, which has at most 65,535 octets (RFC 1035 section 4.2.2)."""


@contextmanager
def serving(answer: Answer, large: Answer | None, folder: Path) -> Iterator[NameServers]:
    """A name server on 127.0.0.1 for the length of a `with` block.

    Args:
        answer: over UDP; nothing is sent where it is empty.
        large: over TCP, for one connection to each question.
    """
    with ExitStack() as undone:
        small = undone.enter_context(socket.socket(socket.AF_INET, socket.SOCK_DGRAM))
        small.bind(("127.0.0.1", 0))
        port = small.getsockname()[1]
        wide = undone.enter_context(socket.socket(socket.AF_INET, socket.SOCK_STREAM))
        wide.bind(("127.0.0.1", port))
        wide.listen()
        for one in (small, wide):
            one.settimeout(0.05)
        ended = threading.Event()
        crew = [threading.Thread(target=_small, args=(small, answer, ended))]
        crew += [threading.Thread(target=_large, args=(wide, large, ended))] if large else []
        for each in crew:
            each.start()
            undone.callback(each.join)
        undone.callback(ended.set)
        settings = folder / "resolv.conf"
        settings.write_text("nameserver 127.0.0.1\n", encoding="ascii")
        yield NameServers(settings, port)


def _small(sock: socket.socket, answer: Answer, ended: threading.Event) -> None:
    while not ended.is_set():
        try:
            data, peer = sock.recvfrom(4096)
        except TimeoutError:
            continue
        told = answer(dns.message.from_wire(data))
        if told:
            sock.sendto(told, peer)


def _large(sock: socket.socket, answer: Answer, ended: threading.Event) -> None:
    while not ended.is_set():
        try:
            line, _ = sock.accept()
        except TimeoutError:
            continue
        with line:
            length = int.from_bytes(line.recv(2), "big")
            told = answer(dns.message.from_wire(line.recv(length)))
            line.sendall(len(told).to_bytes(2, "big") + told)


def with_records(asked: dns.message.Message, *addresses: str, ttl: int = 60) -> bytes:
    """An answer with those of the addresses that are of the kind asked for."""
    told = dns.message.make_response(asked, recursion_available=True)
    question = asked.question[0]
    found = [one for one in addresses if (":" in one) == (question.rdtype == dns.rdatatype.AAAA)]
    if found:
        told.answer.append(dns.rrset.from_text(question.name, ttl, "IN", question.rdtype, *found))
    return told.to_wire(max_size=65535)


def with_code(asked: dns.message.Message, code: dns.rcode.Rcode) -> bytes:
    """An answer that says no."""
    told = dns.message.make_response(asked)
    told.set_rcode(code)
    return told.to_wire()


def test_both_versions_with_the_shorter_life(tmp_path: Path) -> None:
    """Half of the devices would be checked and the other half not."""
    with serving(lambda asked: with_records(asked, "203.0.113.7", "2001:db8::7", ttl=77), None, tmp_path) as names:
        found = names("home.quince.example", 5)
    both = (ipaddress.ip_address("203.0.113.7"), ipaddress.ip_address("2001:db8::7"))
    assert found == Answers(Known.FOUND, both, 2, 77)


@pytest.mark.parametrize(
    ("answer", "known"),
    [
        (lambda asked: with_code(asked, dns.rcode.NXDOMAIN), Known.MISSING),
        (with_records, Known.EMPTY),
        (lambda asked: with_code(asked, dns.rcode.SERVFAIL), Known.SILENT),
        (lambda asked: with_code(asked, dns.rcode.REFUSED), Known.SILENT),
        (lambda _: b"\xff" * 40, Known.SILENT),
        (lambda _: b"", Known.SILENT),
    ],
    ids=["no-such-name", "no-address", "failing", "refusing", "noise", "hanging"],
)
def test_every_other_answer_is_one_of_three_words(answer: Answer, known: Known, tmp_path: Path) -> None:
    """A name that does not exist and a server that is down would be told alike, or raise."""
    with serving(answer, None, tmp_path) as names:
        began = time.monotonic()
        assert names("home.quince.example", 0.4) == Answers(known)
    assert time.monotonic() - began < 60, "it hung: nothing else takes so long"


def test_thousands_of_records_are_counted_and_few_are_kept(tmp_path: Path) -> None:
    """Somebody could keep the check busy with addresses for ever."""
    many = [str(ipaddress.ip_address("198.51.100.0") + number) for number in range(MANY)]

    def cut(asked: dns.message.Message) -> bytes:
        told = dns.message.make_response(asked)
        told.flags |= dns.flags.TC
        return told.to_wire()

    with serving(cut, lambda asked: with_records(asked, *many), tmp_path) as names:
        found = names("home.quince.example", 20)
    assert (found.known, found.count, len(found.addresses)) == (Known.FOUND, MANY, 4)


def test_settings_that_are_missing_are_no_error(tmp_path: Path) -> None:
    """A laptop without network settings would end the check with an error that nobody expects."""
    assert NameServers(tmp_path / "nowhere")("home.quince.example", 0.2) == Answers(Known.SILENT)
