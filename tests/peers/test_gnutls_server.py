"""GnuTLS's server and client meet with what the app gave the gateway and the device."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

import pytest

from hearthkey.core.bundle import Form
from tests.judges import needs
from tests.peers.households import (
    DEVICES,
    FOUNDED,
    HOST,
    KEPT_OUT,
    LAPTOP,
    GatewayFiles,
    Household,
)
from tests.peers.opening import Credential, credential
from tests.peers.servers import LOOPBACK, Answer, Room, ask, running, says

PORT = 5556
"""In a network of its own: gnutls-serv cannot be told to listen at one address only."""
VERSIONS = ("1.2", "1.3")
SENT = b"kettle\n"
ECHOED = "\nkettle\n"
HEARD = "received cmd: kettle"
BAD_CERTIFICATE = "Error in handshake: Error in the certificate."
NO_CERTIFICATE = {"1.2": "No certificate was found.", "1.3": "Certificate is required."}
"""How the server words it in each version."""


@dataclass(frozen=True)
class Front:
    """A server that asks for device certificates and reads the list.

    Args:
        files: the gateway's.
        room: where it runs.
        version: the only version of TLS that it speaks.
        folder: for its log.
    """

    files: GatewayFiles
    room: Room
    version: str
    folder: Path

    @property
    def _command(self) -> tuple[str | Path, ...]:
        return (
            *(needs("gnutls-serv"), "--echo", "--port", str(PORT)),
            *("--priority", f"NORMAL:-VERS-ALL:+VERS-TLS{self.version}"),
            *("--x509certfile", self.files.certificate, "--x509keyfile", self.files.key),
            *("--x509cafile", self.files.authority, "--x509crlfile", self.files.revocation_list),
            # To require a certificate is not yet to judge it: without the second word any will do (seen, 3.7.9).
            *("--require-client-cert", "--verify-client-cert"),
        )

    def meets(
        self, shown: Credential | None, until: str, *, authority: Path | None = None, name: str = HOST
    ) -> tuple[Answer, str]:
        """Let one client in, or not; return how it fared, and what the server said.

        Args:
            shown: the device's credential, if it has one.
            until: what the server says at the end of it.
            authority: the CA certificate that the client trusts, if not the gateway's.
            name: whom the client wants to meet.
        """
        device: tuple[str | Path, ...] = ()
        if shown is not None:
            device = ("--x509certfile", shown.certificate, "--x509keyfile", shown.key)
        client = (
            *(needs("gnutls-cli"), "--port", str(PORT), *device, "--x509cafile", authority or self.files.authority),
            *("--sni-hostname", name, "--verify-hostname", name, LOOPBACK),
        )
        environment = {"GNUTLS_PIN": shown.words} if shown is not None else {}
        ready = says("IPv6 :: port")
        with running(self._command, self.folder / "serv.log", ready, within=self.room.within) as server:
            answer = ask(client, within=self.room.within, given=SENT, environment=environment)
            server.wait_for_words(until)
            return answer, server.said()


def got_in(answer: Answer) -> bool:
    """Whether something came back: more than a handshake that only the client calls done."""
    return answer.code == 0 and ECHOED in answer.said


@pytest.mark.parametrize("version", VERSIONS)
@pytest.mark.parametrize("title", DEVICES)
def test_every_device_gets_in_unless_it_is_stopped(
    quince: Household, room: Room, tmp_path: Path, title: str, version: str
) -> None:
    """If this fails, a device does not get in, is not stopped by the list, or stays out after it was let back in.

    Nothing but the list differs between the stages, so it is the list that keeps a device out: the server names no
    reason.
    """
    shown = credential(quince.devices[title], Form.BUNDLE, tmp_path)
    for stage, stopped in KEPT_OUT.items():
        kept_out = title in stopped
        front = Front(quince.gateway[stage], room, version, tmp_path)
        answer, told = front.meets(shown, BAD_CERTIFICATE if kept_out else HEARD)
        assert got_in(answer) != kept_out, (stage, answer.said, told)
        if kept_out:
            assert HEARD not in told


@pytest.mark.parametrize("version", VERSIONS)
def test_nobody_gets_in_without_a_certificate(quince: Household, room: Room, tmp_path: Path, version: str) -> None:
    """If this fails, the gateway's files let anybody in."""
    front = Front(quince.gateway[FOUNDED], room, version, tmp_path)
    answer, told = front.meets(None, NO_CERTIFICATE[version])
    assert not got_in(answer), answer.said
    assert HEARD not in told


@pytest.mark.parametrize("version", VERSIONS)
def test_a_device_of_a_foreign_ca_is_refused(
    quince: Household, stranger: Household, room: Room, tmp_path: Path, version: str
) -> None:
    """If this fails, whoever makes a CA of their own walks in."""
    shown = credential(stranger.devices[LAPTOP], Form.BUNDLE, tmp_path)
    answer, told = Front(quince.gateway[FOUNDED], room, version, tmp_path).meets(shown, BAD_CERTIFICATE)
    assert not got_in(answer), answer.said
    assert HEARD not in told


def test_a_gateway_of_a_foreign_ca_is_left(quince: Household, stranger: Household, room: Room, tmp_path: Path) -> None:
    """If this fails, a device shows itself to a stranger's gateway of the same name."""
    shown = credential(quince.devices[LAPTOP], Form.BUNDLE, tmp_path)
    front = Front(stranger.gateway[FOUNDED], room, "1.3", tmp_path)
    answer, told = front.meets(shown, "Error in handshake", authority=quince.authority)
    assert not got_in(answer), answer.said
    assert "The certificate is NOT trusted. The certificate issuer is unknown." in answer.said
    assert quince.devices[LAPTOP].identity not in told


def test_a_gateway_of_another_name_is_left(quince: Household, room: Room, tmp_path: Path) -> None:
    """If this fails, a device enters whatever has a server certificate of the CA."""
    shown = credential(quince.devices[LAPTOP], Form.BUNDLE, tmp_path)
    front = Front(quince.gateway[FOUNDED], room, "1.3", tmp_path)
    answer, _ = front.meets(shown, "Error in handshake", name="away.quince.example")
    assert not got_in(answer), answer.said
    assert "does not match" in answer.said
