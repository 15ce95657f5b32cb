"""Looks at a web front as somebody without a certificate, and comes to it as a device of the household."""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import dataclass
from datetime import UTC, datetime
from email.utils import parsedate_to_datetime
from typing import Protocol

from cryptography.hazmat.primitives.serialization import Encoding
from OpenSSL import SSL
from OpenSSL.crypto import X509

from hearthkey.core.bundle import Credential
from hearthkey.core.names import as_address
from hearthkey.pki import keys, read

_CHUNK = 1 << 14
_MOST_TURNS = 60
"""A full handshake and a short answer take ten; whoever drips octets gets no more."""
_LONGEST_HEAD = 1 << 14
_CERTIFICATE_REQUEST = b"certificate request"
"""How OpenSSL calls the state in which it has read one (SSL_state_string_long)."""
_ALERT = "alert"
"""In what OpenSSL says of an error that the other side told."""
_STATUS = re.compile(rb"HTTP/1\.[01] ([2-5][0-9]{2})\b")
"""RFC 9112 section 4; none of those that more follows on."""


class Stream(Protocol):
    """An open connection with a time limit of its own; both raise OSError."""

    def send(self, data: bytes) -> None:
        """Send all of it."""

    def receive(self) -> bytes:
        """Some octets; empty at the end."""


@dataclass(frozen=True)
class FrontSeen:
    """What a web front showed.

    Args:
        failed: why there was no handshake, in OpenSSL's words; empty where there was one.
        version: for instance "TLSv1.3".
        chain: its certificates, DER, its own first.
        asks: whether it asked for a certificate.
        names: subjects of the CAs whose certificates it takes, DER; may be empty.
        date: its clock, where it told (RFC 9110 section 6.6.1).
    """

    failed: str = ""
    version: str = ""
    chain: tuple[bytes, ...] = ()
    asks: bool = False
    names: tuple[bytes, ...] = ()
    date: datetime | None = None


@dataclass(frozen=True)
class Entered:
    """How a device fared.

    Args:
        status: of HTTP; None where no answer came.
        failed: what went wrong, in OpenSSL's words; empty where nothing did.
        turned_away: whether the front itself ended the handshake, or what followed, with an alert.
    """

    status: int | None = None
    failed: str = ""
    turned_away: bool = False


def subjects(certificates: Iterable[bytes]) -> tuple[bytes, ...]:
    """The subjects of certificates, DER, as a server names CAs (RFC 8446 section 4.2.4)."""
    return tuple(read.load(one).subject.public_bytes() for one in certificates)


def look(stream: Stream, host: str) -> FrontSeen:
    """Shake hands without a certificate, and ask for the head of the first page.

    Nothing is judged here. No key and no certificate leaves.

    Args:
        host: what the front is called, A-labels or an address.
    """
    context = _context()
    context.set_verify(SSL.VERIFY_NONE)
    asked: list[bool] = []

    def state(line: SSL.Connection, _where: int, _result: int) -> None:
        if _CERTIFICATE_REQUEST in line.get_state_string():
            asked.append(True)

    context.set_info_callback(state)
    line = _line(context, host)
    try:
        _shake(line, stream)
    except (OSError, SSL.Error) as error:
        return FrontSeen(failed=_words(error))
    chain = line.get_peer_cert_chain(as_cryptography=True) or []
    return FrontSeen(
        version=line.get_protocol_version_name(),
        chain=tuple(one.public_bytes(Encoding.DER) for one in chain),
        asks=bool(asked),
        names=tuple(one.der() for one in line.get_client_ca_list()),
        date=_date(_answer(line, stream, f"HEAD / {_head(host)}")[0]),
    )


def enter(stream: Stream, host: str, certificate: bytes, credential: Credential) -> Entered:
    """Shake hands as a device, and ask for the first page.

    Args:
        host: as in `look`.
        certificate: what the front has to show, DER: the device is shown to nobody else. In either version of TLS
            the front shows it, and proves its key, before the device is asked to (RFC 8446 section 2, RFC 5246
            section 7.3).
        credential: the device's.

    Raises:
        Refused: key-unreadable, key-type-unknown, certificate-unreadable; none for what this app made.
    """

    def known(_line: SSL.Connection, shown: X509, _error: int, depth: int, _fine: int) -> bool:
        return depth > 0 or shown.to_cryptography().public_bytes(Encoding.DER) == certificate

    context = _context()
    context.set_verify(SSL.VERIFY_PEER, known)
    context.use_certificate(read.load(credential.certificate))
    context.use_privatekey(keys.load(credential.key))
    line = _line(context, host)
    try:
        _shake(line, stream)
    except (OSError, SSL.Error) as error:
        return Entered(failed=_words(error), turned_away=_ALERT in _words(error))
    head, failed = _answer(line, stream, f"GET / {_head(host)}")
    status = _STATUS.match(head)
    if status is not None:
        return Entered(int(status[1]))
    return Entered(failed=failed, turned_away=_ALERT in failed)


def _context() -> SSL.Context:
    made = SSL.Context(SSL.TLS_METHOD)
    made.set_min_proto_version(SSL.TLS1_2_VERSION)
    return made


def _line(context: SSL.Context, host: str) -> SSL.Connection:
    line = SSL.Connection(context, None)
    if as_address(host) is None:
        line.set_tlsext_host_name(host.encode("ascii"))
    line.set_connect_state()
    return line


def _head(host: str) -> str:
    """What follows the method and the path of a request."""
    shown = f"[{host}]" if ":" in host else host
    return f"HTTP/1.1\r\nHost: {shown}\r\nConnection: close\r\n\r\n"


def _shake(line: SSL.Connection, stream: Stream) -> None:
    for _ in range(_MOST_TURNS):
        try:
            line.do_handshake()
        except SSL.WantReadError:
            _out(line, stream)
            _in(line, stream)
        else:
            _out(line, stream)
            return
    raise OSError("no end after many turns")


def _answer(line: SSL.Connection, stream: Stream, request: str) -> tuple[bytes, str]:
    """What came of a request, as far as its head, and why there was no more."""
    head = b""
    try:
        line.send(request.encode("ascii"))
        _out(line, stream)
        for _ in range(_MOST_TURNS):
            try:
                head += line.recv(_CHUNK)
            except SSL.WantReadError:
                _in(line, stream)
            if b"\r\n\r\n" in head or len(head) > _LONGEST_HEAD:
                break
    except (OSError, SSL.Error) as error:
        return head, _words(error)  # what came before it broke may be enough
    return head, ""


def _date(head: bytes) -> datetime | None:
    """The Date of an answer, whatever the answer is; None where there is none."""
    for field in head.partition(b"\r\n\r\n")[0].split(b"\r\n")[1:]:
        name, _, value = field.partition(b":")
        if name.strip().lower() == b"date":
            return _moment(value.decode("latin-1").strip())
    return None


def _moment(text: str) -> datetime | None:
    try:
        found = parsedate_to_datetime(text)
        return (found.replace(tzinfo=UTC) if found.tzinfo is None else found).astimezone(UTC)
    except (ValueError, TypeError, OverflowError, IndexError):
        return None


def _out(line: SSL.Connection, stream: Stream) -> None:
    while True:
        try:
            data = line.bio_read(_CHUNK)
        except SSL.WantReadError:
            return
        stream.send(data)


def _in(line: SSL.Connection, stream: Stream) -> None:
    data = stream.receive()
    if not data:
        raise OSError("the connection ended")
    line.bio_write(data)


def _words(error: Exception) -> str:
    """What went wrong, short enough for a sentence."""
    seen = error.args[0] if error.args else type(error).__name__
    if isinstance(seen, list) and seen:
        seen = seen[0][-1]
    return str(seen)[:80] or type(error).__name__
