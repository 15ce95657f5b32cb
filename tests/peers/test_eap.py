"""hostapd's EAP server and eapol_test meet over EAP-TLS with what the app gave the gateway and the device."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

import pytest

from tests.judges import needs
from tests.peers.households import (
    DEVICES,
    FOUNDED,
    HOST,
    KEPT_OUT,
    LAPTOP,
    PHONE,
    STOPPED,
    Carried,
    GatewayFiles,
    Household,
)
from tests.peers.servers import LOOPBACK, Answer, Room, ask, running, says

PORT = 18120
"""Of RADIUS, in a network of its own."""
SHARED = "practice"
"""RADIUS secret between the two programs."""
REFUSED = 252
"""What eapol_test ends with when the authentication failed (seen with 2.10)."""

TLS12, TLS13 = "TLSv1.2", "TLSv1.3"
VERSIONS = (TLS12, TLS13)
"""RFC 5216 with RFC 5246, and RFC 9190 with RFC 8446; the names are those of the programs' logs."""

_SERVER = """\
driver=none
interface=lo
radius_server_clients={folder}/clients
radius_server_auth_port={port}
eap_server=1
eap_user_file={folder}/users
ca_cert={folder}/authority-and-list.pem
server_cert={certificate}
private_key={key}
check_crl=1
tls_flags=[ENABLE-TLSv1.3]
"""
_DEVICE = """\
network={{
key_mgmt=WPA-EAP
eap=TLS
identity="{identity}"
ca_cert="{authority}"
private_key="{container}"
private_key_passwd="{words}"
{name}
phase1="{versions}"
}}
"""
_ONLY = {
    TLS12: "tls_disable_tlsv1_0=1 tls_disable_tlsv1_1=1 tls_disable_tlsv1_2=0 tls_disable_tlsv1_3=1",
    TLS13: "tls_disable_tlsv1_0=1 tls_disable_tlsv1_1=1 tls_disable_tlsv1_2=1 tls_disable_tlsv1_3=0",
}
OUR_NAME = f'domain_match="{HOST}"'


@dataclass(frozen=True)
class Gateway:
    """A gateway that authenticates by EAP-TLS: its files, and where it runs."""

    files: GatewayFiles
    room: Room
    folder: Path

    def settings(self, *, with_list: bool = True) -> Path:
        """Write hostapd's settings; it reads CA and list from one file."""
        parts = (self.files.authority, *((self.files.revocation_list,) if with_list else ()))
        for name, text in (
            ("clients", f"{LOOPBACK} {SHARED}\n"),
            ("users", "* TLS\n"),
            ("authority-and-list.pem", "".join(part.read_text(encoding="ascii") for part in parts)),
        ):
            (self.folder / name).write_text(text, encoding="ascii")
        made = self.folder / "hostapd.conf"
        values = {"folder": self.folder, "port": PORT, "certificate": self.files.certificate, "key": self.files.key}
        made.write_text(_SERVER.format_map(values), encoding="ascii")
        return made

    def meets(
        self,
        carried: Carried,
        version: str,
        *,
        authority: Path | None = None,
        name: str = OUR_NAME,
        with_list: bool = True,
    ) -> tuple[Answer, str]:
        """Let one device in, or not; return how it fared, and what the server said.

        Args:
            version: the only version of TLS that the device speaks.
            authority: the CA certificate that the device trusts, if not the gateway's.
            name: whom the device wants to meet.
            with_list: whether the gateway has a revocation list at all.
        """
        device = self.folder / "device.conf"
        values = {"identity": carried.identity, "container": carried.container, "words": carried.words, "name": name}
        values |= {"authority": authority or self.files.authority, "versions": _ONLY[version]}
        device.write_text(_DEVICE.format_map(values), encoding="ascii")
        # -d: without it hostapd does not say why.
        command = (needs("hostapd"), "-d", self.settings(with_list=with_list))
        client = (needs("eapol_test"), "-c", device, "-a", LOOPBACK, "-p", str(PORT), "-s", SHARED, "-t", "15")
        log = self.folder / "hostapd.log"
        with running(command, log, says("AP-ENABLED"), within=self.room.within) as server:
            answer = ask(client, within=self.room.within)
            server.wait_for_words("CTRL-EVENT-EAP-SUCCESS" if answer.code == 0 else "CTRL-EVENT-EAP-FAILURE")
            return answer, server.said()


def refused(answer: Answer) -> bool:
    """Whether the device was told that it may not come in, and by nothing else than that."""
    return answer.code == REFUSED and "Received EAP-Failure" in answer.said


@pytest.fixture
def gateway(quince: Household, room: Room, tmp_path: Path) -> Gateway:
    """Our gateway, before anybody was stopped."""
    return Gateway(quince.gateway[FOUNDED], room, tmp_path)


@pytest.mark.parametrize("version", VERSIONS)
@pytest.mark.parametrize("title", DEVICES)
def test_every_device_gets_in(quince: Household, gateway: Gateway, title: str, version: str) -> None:
    """If this fails, some kind of key or container does not authenticate over EAP-TLS: RFC 5216, RFC 9190.

    The keys of both sides have to agree: eapol_test compares what it derived (section 2.3 of both, from memory) with
    what the server sent to the access point.
    """
    answer, told = gateway.meets(quince.devices[title], version)
    assert answer.code == 0, answer.said
    assert answer.said.endswith("MPPE keys OK: 1  mismatch: 0\nSUCCESS\n")
    assert f"SSL: Using TLS version {version}" in answer.said
    assert "remote certificate verification success" in told


@pytest.mark.parametrize("version", VERSIONS)
@pytest.mark.parametrize("title", [PHONE, LAPTOP])
def test_a_stopped_device_is_refused_and_let_back_in(
    quince: Household, room: Room, tmp_path: Path, title: str, version: str
) -> None:
    """If this fails, stopping a phone does not stop it, or letting it back in does not.

    Only the revocation list differs from one stage to the next. X509_V_ERR_CERT_REVOKED is 23
    (openssl-verification-options(1)); the alert is certificate_revoked (RFC 8446 section 6.2, from memory).
    """
    for stage, stopped in KEPT_OUT.items():
        answer, told = Gateway(quince.gateway[stage], room, tmp_path).meets(quince.devices[title], version)
        if title in stopped:
            assert refused(answer), answer.said
            assert "error 23 (certificate revoked)" in told
            assert "local TLS alert: certificate revoked" in told
        else:
            assert answer.code == 0, (stage, answer.said)


def test_the_others_stay_in(quince: Household, room: Room, tmp_path: Path) -> None:
    """If this fails, stopping two devices stops the whole family."""
    (other,) = set(DEVICES) - set(KEPT_OUT[STOPPED])
    answer, _ = Gateway(quince.gateway[STOPPED], room, tmp_path).meets(quince.devices[other], TLS13)
    assert answer.code == 0, answer.said


def test_a_gateway_without_a_list_lets_nobody_in(quince: Household, gateway: Gateway) -> None:
    """If this fails, the tests before it prove nothing: the server never looked. X509_V_ERR_UNABLE_TO_GET_CRL is 3."""
    answer, told = gateway.meets(quince.devices[LAPTOP], TLS13, with_list=False)
    assert refused(answer), answer.said
    assert "error 3 (unable to get certificate CRL)" in told


@pytest.mark.parametrize("version", VERSIONS)
@pytest.mark.parametrize(
    ("name", "why"),
    [
        ('domain_match="away.quince.example"', "Domain mismatch"),
        ('altsubject_match="DNS:away.quince.example"', "AltSubject mismatch"),
    ],
)
def test_a_device_leaves_a_gateway_of_another_name(
    quince: Household, gateway: Gateway, version: str, name: str, why: str
) -> None:
    """If this fails, whoever has any server certificate of the CA can pose as the gateway: RFC 5216 section 5.2."""
    answer, _ = gateway.meets(quince.devices[LAPTOP], version, name=name)
    assert refused(answer), answer.said
    assert f"err='{why}'" in answer.said


def test_a_device_knows_the_gateway_by_its_alternative_name(quince: Household, gateway: Gateway) -> None:
    """If this fails, devices that compare the whole alternative name find no home: RFC 5280 section 4.2.1.6."""
    answer, _ = gateway.meets(quince.devices[LAPTOP], TLS13, name=f'altsubject_match="DNS:{HOST}"')
    assert answer.code == 0, answer.said


@pytest.mark.parametrize("version", VERSIONS)
def test_a_device_leaves_a_gateway_of_a_foreign_ca(
    quince: Household, stranger: Household, room: Room, tmp_path: Path, version: str
) -> None:
    """If this fails, a stranger's gateway of the same name is believed.

    The alert is unknown_ca (RFC 8446 section 6.2, from memory). X509_V_ERR_SELF_SIGNED_CERT_IN_CHAIN is 19 and
    X509_V_ERR_UNABLE_TO_GET_ISSUER_CERT_LOCALLY 20 (openssl-verification-options(1)): with the stranger's CA
    certificate sent along, and without it, the path leads to nobody known.
    """
    foreign = Gateway(stranger.gateway[FOUNDED], room, tmp_path)
    answer, _ = foreign.meets(quince.devices[LAPTOP], version, authority=quince.authority)
    assert refused(answer), answer.said
    assert "Certificate verification failed, error 19 " in answer.said or "failed, error 20 " in answer.said
    assert "local TLS alert (param=unknown CA)" in answer.said


@pytest.mark.parametrize("version", VERSIONS)
def test_the_gateway_refuses_a_device_of_a_foreign_ca(stranger: Household, gateway: Gateway, version: str) -> None:
    """If this fails, whoever makes a CA of their own walks into the house; the alert is unknown_ca."""
    answer, told = gateway.meets(stranger.devices[LAPTOP], version)
    assert refused(answer), answer.said
    assert "local TLS alert: unknown CA" in told
