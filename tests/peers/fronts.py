"""Servers and clients of two TLS libraries, told the same things in the words of each."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from enum import Enum
from pathlib import Path

from tests.judges import needs
from tests.peers.households import HOST, GatewayFiles
from tests.peers.opening import Credential
from tests.peers.servers import LOOPBACK, Command, Room, ask, running, says

PORT = 5556
"""In a network of its own, where every port is free: gnutls-serv cannot be told to listen at one address only."""


class Why(Enum):
    """How a visit ends, and for which reason."""

    IN = "in"
    STOPPED = "its certificate is on the list"
    NO_CERTIFICATE = "it shows none"
    FOREIGN_DEVICE = "the server does not know its CA"
    FOREIGN_GATEWAY = "the client does not know the server's CA"
    OTHER_NAME = "the client wanted somebody else"


@dataclass(frozen=True)
class Words:
    """How a library puts an end.

    Args:
        until: what the server says last, in one way or another; a TLS 1.3 client is done before it is judged.
        server, client: what they name as the reason, or the visitor (``{identity}``); empty where they name none.
    """

    until: tuple[str, ...]
    server: str = ""
    client: str = ""


@dataclass(frozen=True)
class Visit:
    """What a client is told.

    Args:
        version: the only version of TLS, ``1.2`` or ``1.3``.
        shown: the device's credential, if it has one.
        authority: the CA certificate that it trusts.
        name: whom it wants to meet.
    """

    version: str
    shown: Credential | None
    authority: Path
    name: str


@dataclass(frozen=True)
class Library:
    """A library's two programs.

    Args:
        serve: the server's command for a gateway's files, a version of TLS and a port.
        visit: the client's command.
        secret: the variable that the client reads the passphrase from.
        ready: what the server says when it listens.
        sent, back: what goes through the tunnel, and what comes back of it.
        words: how it puts each end.
    """

    name: str
    serve: Callable[[GatewayFiles, str], Command]
    visit: Callable[[Visit], Command]
    secret: str
    ready: str
    sent: bytes
    back: str
    words: Mapping[Why, Words]


@dataclass(frozen=True)
class Met:
    """How a meeting went.

    Args:
        got_in: whether something came back through the tunnel: more than a handshake that the client calls done.
        client, server: all that they said.
    """

    got_in: bool
    client: str
    server: str


@dataclass(frozen=True)
class Peer:
    """A library in one version of TLS, in a room."""

    library: Library
    version: str
    room: Room
    folder: Path

    def meet(
        self,
        files: GatewayFiles,
        shown: Credential | None,
        why: Why,
        *,
        authority: Path | None = None,
        name: str = HOST,
    ) -> Met:
        """Let one client meet one server, until the server has said how it must end.

        Args:
            files: the gateway's.
            authority: the CA certificate that the client trusts, if not the gateway's.
            name: whom the client wants to meet.

        Raises:
            AssertionError: the server never said so.
        """
        library, within = self.library, self.room.within
        visit = Visit(self.version, shown, authority or files.authority, name)
        secret = {} if shown is None else {library.secret: shown.words}
        command = library.serve(files, self.version)
        with running(command, self.folder / f"{library.name}.log", says(library.ready), within=within) as server:
            answer = ask(library.visit(visit), within=within, given=library.sent, environment=secret)
            ends = library.words[why].until
            server.wait_until(lambda it: any(end in it.said() for end in ends), f"having said one of {ends!r}")
            return Met(answer.code == 0 and library.back in answer.said, answer.said, server.said())

    def words(self, why: Why) -> Words:
        """How the library puts an end."""
        return self.library.words[why]


def _openssl_serves(files: GatewayFiles, version: str) -> Command:
    return (
        *(needs("openssl"), "s_server", "-accept", f"{LOOPBACK}:{PORT}", f"-tls{version.replace('.', '_')}", "-rev"),
        *("-cert", files.certificate, "-key", files.key, "-CAfile", files.authority),
        *("-CRL", files.revocation_list, "-crl_check", "-x509_strict"),
        *("-Verify", "1", "-verify_return_error"),
    )


def _openssl_visits(visit: Visit) -> Command:
    shown: Command = ()
    if visit.shown is not None:
        shown = ("-cert", visit.shown.certificate, "-key", visit.shown.key, "-pass", "env:PRACTICE_WORDS")
    return (
        *(needs("openssl"), "s_client", "-connect", f"{LOOPBACK}:{PORT}", "-ign_eof", *shown),
        *("-CAfile", visit.authority, "-x509_strict", "-verify_return_error"),
        *("-servername", visit.name, "-verify_hostname", visit.name),
    )


OPENSSL = Library(
    "openssl",
    _openssl_serves,
    _openssl_visits,
    secret="PRACTICE_WORDS",
    ready="ACCEPT\n",
    # `s_server -rev` sends every line back reversed, and hangs up at CLOSE.
    sent=b"kettle\nCLOSE\n",
    back="elttek",
    # The numbers are in openssl-verification-options(1).
    words={
        Why.IN: Words(("CONNECTION CLOSED",), server="Peer certificate: CN = {identity}\n"),
        Why.STOPPED: Words(("CONNECTION FAILURE",), server="verify error:num=23:certificate revoked"),
        Why.NO_CERTIFICATE: Words(("peer did not return a certificate",)),
        Why.FOREIGN_DEVICE: Words(("CONNECTION FAILURE",), server="verify error:num=20:"),
        Why.FOREIGN_GATEWAY: Words(("CONNECTION FAILURE",), client="certificate verify failed"),
        Why.OTHER_NAME: Words(("CONNECTION FAILURE",), client="verify error:num=62:hostname mismatch"),
    },
)


def _gnutls_serves(files: GatewayFiles, version: str) -> Command:
    return (
        *(needs("gnutls-serv"), "--echo", "--port", str(PORT)),
        *("--priority", f"NORMAL:-VERS-ALL:+VERS-TLS{version}"),
        *("--x509certfile", files.certificate, "--x509keyfile", files.key),
        *("--x509cafile", files.authority, "--x509crlfile", files.revocation_list),
        # To require a certificate is not yet to judge it: without the second word any will do (seen, 3.7.9).
        *("--require-client-cert", "--verify-client-cert"),
    )


def _gnutls_visits(visit: Visit) -> Command:
    shown: Command = ()
    if visit.shown is not None:
        shown = ("--x509certfile", visit.shown.certificate, "--x509keyfile", visit.shown.key)
    return (
        *(needs("gnutls-cli"), "--port", str(PORT), *shown, "--x509cafile", visit.authority),
        *("--sni-hostname", visit.name, "--verify-hostname", visit.name, LOOPBACK),
    )


_BAD_CERTIFICATE = "Error in handshake: Error in the certificate."
"""All that this server says of a certificate that it turns away."""

GNUTLS = Library(
    "gnutls",
    _gnutls_serves,
    _gnutls_visits,
    secret="GNUTLS_PIN",
    ready="IPv6 :: port",
    sent=b"kettle\n",
    back="\nkettle\n",
    words={
        Why.IN: Words(("received cmd: kettle",)),
        Why.STOPPED: Words((_BAD_CERTIFICATE,)),
        Why.NO_CERTIFICATE: Words(("No certificate was found.", "Certificate is required.")),  # TLS 1.2 and 1.3
        Why.FOREIGN_DEVICE: Words((_BAD_CERTIFICATE,)),
        Why.FOREIGN_GATEWAY: Words(
            ("Error in handshake",), client="The certificate is NOT trusted. The certificate issuer is unknown."
        ),
        Why.OTHER_NAME: Words(("Error in handshake",), client="does not match"),
    },
)
