"""Other hands judge our certificates and lists: OpenSSL's and GnuTLS's command lines."""

from __future__ import annotations

import subprocess
from datetime import UTC, datetime
from pathlib import Path

import pytest
from cryptography import x509
from cryptography.hazmat.primitives.serialization import Encoding

from hearthkey.core.certificates import AuthorityPlan, DevicePlan
from hearthkey.core.revocation import Entry, ListPlan, Reason
from hearthkey.pki import keys, lists, mint, read
from hearthkey.pki.keys import AuthorityKey
from tests.judges import needs
from tests.pki import quince
from tests.pki.quince import DAY, NOW, Quince


@pytest.fixture(scope="module")
def home() -> Quince:
    """Quince Cottage."""
    return quince.found()


def pem(place: Path, name: str, data: bytes) -> Path:
    """Write a certificate or a list as PEM."""
    path = place / f"{name}.pem"
    load = x509.load_der_x509_crl if name == "list" else x509.load_der_x509_certificate
    path.write_bytes(load(data).public_bytes(Encoding.PEM))
    return path


def openssl_says(
    place: Path, home: Quince, certificate: bytes, revocation_list: bytes, at: datetime, purpose: str
) -> str:
    """What ``openssl verify -x509_strict -crl_check`` says about a certificate."""
    command: tuple[str | Path, ...] = (
        needs("openssl"),
        "verify",
        "-x509_strict",
        "-crl_check",
        "-purpose",
        purpose,
        "-attime",
        str(int(at.timestamp())),
        "-CRLfile",
        pem(place, "list", revocation_list),
        "-CAfile",
        pem(place, "authority", home.authority),
        pem(place, "certificate", certificate),
    )
    done = subprocess.run(command, capture_output=True, text=True, timeout=60, check=False)
    return done.stdout + done.stderr


@pytest.mark.parametrize("key_type", ["P-256", "P-384", "RSA-3072"])
def test_good_certificates_pass(home: Quince, tmp_path: Path, key_type: str) -> None:
    """If this fails, a strict gateway turns good devices away; source: openssl-verification-options(1)."""
    device = home.device_with(key_type)
    signed = home.list_of(home.gateway.certificate)
    assert openssl_says(tmp_path, home, device.certificate, signed, NOW, "sslclient").endswith(": OK\n")


@pytest.mark.parametrize("host", ["home.quince.example", "203.0.113.5", "2001:db8::5"])
def test_good_gateways_pass(home: Quince, tmp_path: Path, host: str) -> None:
    """If this fails, a strict client turns the gateway away."""
    gateway = home.gateway_with(host)
    assert openssl_says(tmp_path, home, gateway.certificate, home.list_of(), NOW, "sslserver").endswith(": OK\n")


def test_device_and_gateway_cannot_swap(home: Quince, tmp_path: Path) -> None:
    """If this fails, a stolen phone could pose as the gateway."""
    said = openssl_says(tmp_path, home, home.device.certificate, home.list_of(), NOW, "sslserver")
    assert "error 26" in said


@pytest.mark.parametrize("reason", list(Reason))
def test_listed_devices_fail(home: Quince, tmp_path: Path, reason: Reason) -> None:
    """If this fails, a stopped or revoked phone gets in: X509_V_ERR_CERT_REVOKED is 23."""
    signed = home.list_of(home.device.certificate, reason=reason)
    assert "error 23" in openssl_says(tmp_path, home, home.device.certificate, signed, NOW, "sslclient")


def test_let_back_in(home: Quince, tmp_path: Path) -> None:
    """If this fails, a device that left the list stays out."""
    signed = home.list_of(at=NOW + DAY)
    said = openssl_says(tmp_path, home, home.device.certificate, signed, NOW + DAY, "sslclient")
    assert said.endswith(": OK\n")


def test_an_overdue_list_locks_out(home: Quince, tmp_path: Path) -> None:
    """If this fails, the date on top of the sheet means something else: X509_V_ERR_CRL_HAS_EXPIRED is 12."""
    signed = home.list_of(days=30)
    said = openssl_says(tmp_path, home, home.device.certificate, signed, NOW + 31 * DAY, "sslclient")
    assert "error 12" in said


def test_openssl_reads_the_list(home: Quince, tmp_path: Path) -> None:
    """If this fails, number, reason or signature of the list are not what we meant; source: openssl-crl(1)."""
    path = pem(tmp_path, "list", home.list_of(home.device.certificate, reason=Reason.KEY_COMPROMISE))
    authority = pem(tmp_path, "authority", home.authority)
    done = subprocess.run(
        (needs("openssl"), "crl", "-in", path, "-noout", "-text", "-CAfile", authority),
        capture_output=True,
        text=True,
        timeout=60,
        check=True,
    )
    assert "verify OK" in done.stderr
    for words in ("Version 2", "ecdsa-with-SHA384", "Key Compromise", "X509v3 CRL Number: \n                7"):
        assert words in done.stdout


@pytest.mark.parametrize("listed", [False, True])
def test_gnutls_agrees(tmp_path: Path, *, listed: bool) -> None:
    """If this fails, two libraries read the list differently; source: certtool(1), --verify.

    GnuTLS judges at the present moment, so this household lasts from 2000 to 2099.
    """
    begin, end = datetime(2000, 1, 1, tzinfo=UTC), datetime(2099, 1, 1, tzinfo=UTC)
    key, device = AuthorityKey.make(), keys.make_key("P-256")
    plan = AuthorityPlan("Quince Cottage (practice)", "Household CA 2000-1", quince.serial(), begin, end)
    authority = mint.authority_certificate(plan, key)
    device_plan = DevicePlan(quince.IDENTITY, quince.serial(), begin, end, "P-256")
    certificate = mint.device_certificate(device_plan, keys.public_der(device), authority, key)
    entry = Entry(read.certificate_facts(certificate).serial, begin, Reason.CERTIFICATE_HOLD, end)
    signed = lists.sign_list(ListPlan(1, begin, end, (entry,) if listed else ()), authority, key)
    command = (
        needs("certtool"),
        "--verify",
        "--load-ca-certificate",
        pem(tmp_path, "authority", authority),
        "--load-crl",
        pem(tmp_path, "list", signed),
        "--infile",
        pem(tmp_path, "certificate", certificate),
    )
    done = subprocess.run(command, capture_output=True, text=True, timeout=60, check=False)
    assert (done.returncode != 0) == listed, done.stdout + done.stderr
    assert ("revoked" in done.stdout) == listed
