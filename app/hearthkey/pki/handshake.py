"""A mutual TLS handshake in memory between a device's credential and a gateway's, as a dress rehearsal."""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import datetime

from cryptography.hazmat.primitives.serialization import Encoding
from OpenSSL import SSL, crypto

from hearthkey.core.bundle import Credential
from hearthkey.core.errors import Bug, Refused
from hearthkey.pki import judge, keys, read

TLS_1_2, TLS_1_3 = "1.2", "1.3"
_VERSIONS = {TLS_1_2: SSL.TLS1_2_VERSION, TLS_1_3: SSL.TLS1_3_VERSION}

MOST_TURNS = 20
"""A full handshake with one octet each way takes five."""

_CHUNK = 1 << 16


def rehearse(
    device: Credential,
    gateway: Credential,
    revocation_list: bytes,
    *,
    host: str,
    at: datetime,
    version: str = TLS_1_3,
    chain: tuple[bytes, ...] = (),
    further_lists: tuple[bytes, ...] = (),
) -> str:
    """Let a device in, or not, exactly as a gateway would; no key touches a disk, no packet leaves.

    The gateway demands the device's certificate and judges it under the list. The device judges the
    gateway's certificate and its name. Then each sends the other an octet, for in TLS 1.3 a device
    believes that it is in before the gateway has read its certificate (RFC 8446 section 2).

    Args:
        device, gateway: each trusts the authorities of its own credential.
        revocation_list: DER, what the gateway knows.
        host: the name that the device calls.
        at: UTC, the clock of both.
        version: `TLS_1_2` or `TLS_1_3`.
        chain: certificates that the gateway sends behind its own, DER.
        further_lists: lists of the household's other CA.

    Returns:
        What was agreed, for instance "TLSv1.3, TLS_AES_256_GCM_SHA384".

    Raises:
        judge.NotTrusted: as `judge.check_path`, with `whose` "device" or "gateway" in the facts.
        Refused: handshake-failed, name-differs, and whatever makes a credential unreadable.
    """
    server = _Side("device", _connect(gateway, (revocation_list, *further_lists), at, version, chain))
    client = _Side("gateway", _connect(device, (), at, version))
    server.connection.set_accept_state()
    client.connection.set_connect_state()
    for _ in range(MOST_TURNS):
        client.turn()
        _carry(client.connection, server.connection)
        server.turn()
        _carry(server.connection, client.connection)
        if client.heard and server.heard:
            _check_host(client.connection, host)
            connection = client.connection
            return f"{connection.get_protocol_version_name()}, {connection.get_cipher_name()}"
    raise Refused("handshake-failed", seen="no end after many turns", whose="device")


@dataclass
class _Verdict:
    """The first thing that OpenSSL found wrong with the other side's certificate."""

    number: int = 0
    depth: int = 0

    def __call__(self, _line: SSL.Connection, _theirs: crypto.X509, number: int, depth: int, ok: int) -> bool:
        if not ok and not self.number:
            self.number, self.depth = number, depth
        return bool(ok)


@dataclass
class _Side:
    """One end of the line.

    Args:
        judges: whose certificate this side looks at.
    """

    judges: str
    line: tuple[SSL.Connection, _Verdict]
    sent: bool = False
    heard: bool = False
    connection: SSL.Connection = field(init=False)

    def __post_init__(self) -> None:
        self.connection = self.line[0]

    def turn(self) -> None:
        """Go on as far as possible: handshake, then say one octet, then hear one.

        Raises:
            judge.NotTrusted, Refused: see `rehearse`.
        """
        try:
            self.connection.do_handshake()
            if not self.sent:
                self.connection.send(b"k")
                self.sent = True
            if not self.heard:
                self.heard = self.connection.recv(1) == b"k"
        except SSL.WantReadError:
            return
        except SSL.Error as error:
            verdict = self.line[1]
            if verdict.number:
                raise judge.refusal(verdict.number, verdict.depth, _words(verdict.number), whose=self.judges) from None
            raise Refused("handshake-failed", seen=_reason(error), whose=self.judges) from None


def _connect(
    credential: Credential,
    revocation_lists: tuple[bytes, ...],
    at: datetime,
    version: str,
    chain: tuple[bytes, ...] = (),
) -> tuple[SSL.Connection, _Verdict]:
    """One end: its own credential, whom it trusts, and what it finds wrong."""
    context = SSL.Context(SSL.TLS_METHOD)
    context.set_min_proto_version(_VERSIONS[version])
    context.set_max_proto_version(_VERSIONS[version])
    context.set_session_cache_mode(SSL.SESS_CACHE_OFF)
    store = context.get_cert_store()
    if store is None:
        raise Bug("handshake-without-store")
    judge.equip(store, credential.authorities, revocation_lists, at)
    verdict = _Verdict()
    context.set_verify(SSL.VERIFY_PEER | SSL.VERIFY_FAIL_IF_NO_PEER_CERT, verdict)
    try:
        context.use_certificate(read.load(credential.certificate))
        context.use_privatekey(keys.load(credential.key))
        context.check_privatekey()
        for one in chain:
            context.add_extra_chain_cert(read.load(one))
    except (SSL.Error, crypto.Error):
        raise Refused("key-not-of-certificate") from None
    return SSL.Connection(context, None), verdict


def _carry(source: SSL.Connection, target: SSL.Connection) -> None:
    """Move what one side has written over to the other."""
    while True:
        try:
            target.bio_write(source.bio_read(_CHUNK))
        except SSL.WantReadError:
            return


def _check_host(client: SSL.Connection, host: str) -> None:
    """The gateway's name, as the device sees it.

    Raises:
        Refused: name-differs, handshake-failed.
    """
    peer = client.get_peer_certificate(as_cryptography=True)
    if peer is None:
        raise Refused("handshake-failed", seen="no certificate", whose="gateway")
    judge.check_name(peer.public_bytes(Encoding.DER), host)


def _words(number: int) -> str:
    """OpenSSL's name for one of its verification errors."""
    return next((name for name, value in vars(SSL.X509VerificationCodes).items() if value == number), str(number))


def _reason(error: SSL.Error) -> str:
    """OpenSSL's words for a failure that is no verification error."""
    entries = error.args[0] if error.args and isinstance(error.args[0], list) else []
    return "; ".join(str(entry[-1]) for entry in entries) or type(error).__name__
