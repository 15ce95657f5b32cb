"""OpenSSL's server and client meet with what the app gave the gateway and the device."""

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
from tests.peers.servers import LOOPBACK, Answer, ask, free_port, running, says

VERSIONS = ("-tls1_2", "-tls1_3")
SENT, BACK = b"kettle\nCLOSE\n", "elttek"
"""`s_server -rev` sends every line back reversed, and hangs up at CLOSE."""
IN, OUT = "CONNECTION CLOSED", "CONNECTION FAILURE"
"""What the server says at the end of a visit, and of a handshake that failed."""
NO_CERTIFICATE = "peer did not return a certificate"


@dataclass(frozen=True)
class Front:
    """A server that asks for device certificates and reads the list.

    Args:
        files: the gateway's.
        version: the only version of TLS that it speaks.
        folder: for its log.
    """

    files: GatewayFiles
    version: str
    folder: Path

    def _command(self, port: int) -> tuple[str | Path, ...]:
        return (
            *(needs("openssl"), "s_server", "-accept", f"{LOOPBACK}:{port}", self.version, "-rev"),
            *("-cert", self.files.certificate, "-key", self.files.key, "-CAfile", self.files.authority),
            *("-CRL", self.files.revocation_list, "-crl_check", "-x509_strict"),
            *("-Verify", "1", "-verify_return_error"),
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
        port = free_port()
        device: tuple[str | Path, ...] = ()
        if shown is not None:
            device = ("-cert", shown.certificate, "-key", shown.key, "-pass", "env:PRACTICE_WORDS")
        client = (
            *(needs("openssl"), "s_client", "-connect", f"{LOOPBACK}:{port}", "-ign_eof", *device),
            *("-CAfile", authority or self.files.authority, "-x509_strict", "-verify_return_error"),
            *("-servername", name, "-verify_hostname", name),
        )
        environment = {"PRACTICE_WORDS": shown.words} if shown is not None else {}
        with running(self._command(port), self.folder / "s_server.log", says("ACCEPT\n")) as server:
            answer = ask(client, given=SENT, environment=environment)
            # A TLS 1.3 client is done before the server has judged it: the server's word counts (seen, OpenSSL 3.0).
            server.wait_for_words(until)
            return answer, server.said()


def got_in(answer: Answer) -> bool:
    """Whether something came back through the tunnel: more than a handshake that only the client calls done."""
    return answer.code == 0 and BACK in answer.said


@pytest.mark.parametrize("version", VERSIONS)
@pytest.mark.parametrize("title", DEVICES)
def test_every_device_gets_in_unless_it_is_stopped(quince: Household, tmp_path: Path, title: str, version: str) -> None:
    """If this fails, a device does not get in, is not stopped by the list, or stays out after it was let back in.

    Nothing but the list differs between the stages. X509_V_ERR_CERT_REVOKED is 23 (openssl-verification-options(1)).
    """
    shown = credential(quince.devices[title], Form.BUNDLE, tmp_path)
    for stage, stopped in KEPT_OUT.items():
        kept_out = title in stopped
        front = Front(quince.gateway[stage], version, tmp_path)
        answer, told = front.meets(shown, OUT if kept_out else IN)
        assert got_in(answer) != kept_out, (stage, answer.said, told)
        if kept_out:
            assert "verify error:num=23:certificate revoked" in told
        else:
            assert f"Peer certificate: CN = {quince.devices[title].identity}\n" in told


@pytest.mark.parametrize("form", list(Form))
def test_every_form_gets_in(quince: Household, tmp_path: Path, form: Form) -> None:
    """If this fails, a form of the bundle opens and yet does not get its device in."""
    shown = credential(quince.devices[LAPTOP], form, tmp_path)
    answer, told = Front(quince.gateway[FOUNDED], "-tls1_3", tmp_path).meets(shown, IN)
    assert got_in(answer), (answer.said, told)


@pytest.mark.parametrize("version", VERSIONS)
def test_nobody_gets_in_without_a_certificate(quince: Household, tmp_path: Path, version: str) -> None:
    """If this fails, the gateway's files let anybody in."""
    answer, told = Front(quince.gateway[FOUNDED], version, tmp_path).meets(None, NO_CERTIFICATE)
    assert not got_in(answer), answer.said
    assert IN not in told


@pytest.mark.parametrize("version", VERSIONS)
def test_a_device_of_a_foreign_ca_is_refused(
    quince: Household, stranger: Household, tmp_path: Path, version: str
) -> None:
    """If this fails, whoever makes a CA of their own walks in: the path leads to nobody known.

    X509_V_ERR_UNABLE_TO_GET_ISSUER_CERT_LOCALLY is 20 (openssl-verification-options(1)).
    """
    shown = credential(stranger.devices[LAPTOP], Form.BUNDLE, tmp_path)
    answer, told = Front(quince.gateway[FOUNDED], version, tmp_path).meets(shown, OUT)
    assert not got_in(answer), answer.said
    assert "verify error:num=20:" in told


def test_a_gateway_of_a_foreign_ca_is_left(quince: Household, stranger: Household, tmp_path: Path) -> None:
    """If this fails, a device shows itself to a stranger's gateway of the same name."""
    shown = credential(quince.devices[LAPTOP], Form.BUNDLE, tmp_path)
    front = Front(stranger.gateway[FOUNDED], "-tls1_3", tmp_path)
    answer, told = front.meets(shown, OUT, authority=quince.authority)
    assert not got_in(answer), answer.said
    assert "certificate verify failed" in answer.said
    assert quince.devices[LAPTOP].identity not in told


def test_a_gateway_of_another_name_is_left(quince: Household, tmp_path: Path) -> None:
    """If this fails, a device enters whatever has a server certificate: X509_V_ERR_HOSTNAME_MISMATCH is 62."""
    shown = credential(quince.devices[LAPTOP], Form.BUNDLE, tmp_path)
    front = Front(quince.gateway[FOUNDED], "-tls1_3", tmp_path)
    answer, _ = front.meets(shown, OUT, name="away.quince.example")
    assert not got_in(answer), answer.said
    assert "verify error:num=62:hostname mismatch" in answer.said
