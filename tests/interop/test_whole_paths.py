"""Three libraries of other hands judge every certificate of a household against every list of it."""

from __future__ import annotations

import subprocess
from datetime import datetime, timedelta
from pathlib import Path

import pytest

from tests.interop.cottage import DEVICES, HOST, LAPTOP, PHONE, STAGES, TABLET, Cottage
from tests.judges import needs

LISTED = {
    "founded": (),
    "laptop-stopped": (LAPTOP,),
    "laptop-back": (),
    "phone-revoked": (PHONE,),
    "tablet-stopped": (PHONE, TABLET),
}
"""Who is kept out at each stage."""
CASES = [(stage, device, device in LISTED[stage]) for stage in STAGES for device in DEVICES]


def asked(*command: str | Path) -> tuple[int, str]:
    """Ask a judge; return its exit code and all that it says."""
    done = subprocess.run(command, capture_output=True, text=True, timeout=60, check=False)
    return done.returncode, done.stdout + done.stderr


def openssl_says(
    quince: Cottage, stage: str, certificate: Path, *more: str, at: datetime | None = None
) -> tuple[int, str]:
    """What ``openssl verify`` says, strictly and with the list of a stage."""
    when = () if at is None else ("-attime", str(int(at.timestamp())))
    lists = ("-crl_check", "-CRLfile", quince.lists[stage], "-CAfile", quince.authority)
    return asked(needs("openssl"), "verify", "-x509_strict", *lists, *more, *when, certificate)


@pytest.mark.parametrize(("stage", "device", "listed"), CASES)
def test_openssl(quince: Cottage, stage: str, device: str, *, listed: bool) -> None:
    """If this fails, a gateway with OpenSSL lets a stopped device in or a good one stand outside.

    X509_V_ERR_CERT_REVOKED is 23; openssl-verification-options(1).
    """
    code, said = openssl_says(quince, stage, quince.certificates[device], "-purpose", "sslclient")
    assert (code != 0) == listed, said
    assert ("error 23 " in said) == listed


def gnutls_says(quince: Cottage, stage: str, certificate: Path, purpose: str, *more: str) -> tuple[int, str]:
    """What ``certtool --verify`` says, with the list of a stage."""
    return asked(
        *(needs("certtool"), "--verify", "--verify-profile", "medium", "--verify-purpose", purpose, *more),
        *("--load-ca-certificate", quince.authority, "--load-crl", quince.lists[stage], "--infile", certificate),
    )


@pytest.mark.parametrize(("stage", "device", "listed"), CASES)
def test_gnutls(quince: Cottage, stage: str, device: str, *, listed: bool) -> None:
    """If this fails, a gateway with GnuTLS judges otherwise than one with OpenSSL; source: certtool(1), --verify."""
    code, said = gnutls_says(quince, stage, quince.certificates[device], "1.3.6.1.5.5.7.3.2")
    assert (code != 0) == listed, said
    assert ("revoked" in said) == listed


def nss_says(quince: Cottage, stage: str, certificate: Path, store: Path) -> tuple[int, str]:
    """What NSS says with nothing but this CA and this list in its store."""
    where = ("-d", f"sql:{store}")
    certutil = needs("certutil")
    for command in (
        (certutil, "-N", *where, "--empty-password"),
        (certutil, "-A", *where, "-n", "authority", "-t", "CT,,", "-i", quince.authority),
        (certutil, "-A", *where, "-n", "asked", "-t", ",,", "-i", certificate),
        (needs("crlutil"), "-I", *where, "-t", "1", "-i", quince.lists[stage].with_suffix(".crl")),
    ):
        code, said = asked(*command)
        assert code == 0, said
    return asked(certutil, "-V", *where, "-n", "asked", "-u", "C")


@pytest.mark.parametrize(("stage", "device", "listed"), CASES)
def test_nss(quince: Cottage, tmp_path: Path, stage: str, device: str, *, listed: bool) -> None:
    """If this fails, NSS judges otherwise than the others; source: certutil(1), -V."""
    code, said = nss_says(quince, stage, quince.certificates[device], tmp_path)
    assert (code != 0) == listed, said
    assert ("revoked" in said.lower()) == listed, said


@pytest.mark.parametrize("stage", STAGES)
def test_the_gateway_stays_good(quince: Cottage, stage: str) -> None:
    """If this fails, stopping a phone makes every device turn away from home.

    NSS is not asked: its certutil wants keyEncipherment of every RSA server, a bit for the RSA key exchange that
    TLS 1.3 has left behind (RFC 8446 section 1.2) and IKEv2 never had.
    """
    code, said = openssl_says(quince, stage, quince.gateway, "-purpose", "sslserver", "-verify_hostname", HOST)
    assert code == 0, said
    code, said = gnutls_says(quince, stage, quince.gateway, "1.3.6.1.5.5.7.3.1", "--verify-hostname", HOST)
    assert code == 0, said


def test_nobody_poses_as_the_gateway(quince: Cottage) -> None:
    """If this fails, a device can pose as the gateway: X509_V_ERR_INVALID_PURPOSE is 26, a wrong host name 62."""
    for device in DEVICES:
        _, said = openssl_says(quince, "founded", quince.certificates[device], "-purpose", "sslserver")
        assert "error 26 " in said
    _, said = openssl_says(quince, "founded", quince.gateway, "-verify_hostname", "away.quince.example")
    assert "error 62 " in said


def test_an_overdue_list_locks_everybody_out(quince: Cottage) -> None:
    """If this fails, the date on top of the sheet means something else: X509_V_ERR_CRL_HAS_EXPIRED is 12."""
    end = quince.good_until["tablet-stopped"]
    laptop = quince.certificates[LAPTOP]
    before = openssl_says(quince, "tablet-stopped", laptop, at=end - timedelta(seconds=1))[1]
    after = openssl_says(quince, "tablet-stopped", laptop, at=end + timedelta(seconds=1))[1]
    assert "error 12 " not in before
    assert "error 12 " in after


def test_the_list_says_why(quince: Cottage) -> None:
    """If this fails, a hold and a theft look alike to whoever reads the list; source: openssl-crl(1)."""
    code, said = asked(
        *(needs("openssl"), "crl", "-in", quince.lists["tablet-stopped"], "-noout", "-text"),
        *("-CAfile", quince.authority),
    )
    assert (code, "verify OK" in said) == (0, True), said
    assert (said.count("Key Compromise"), said.count("Certificate Hold")) == (1, 1)
    for device in (PHONE, TABLET):
        assert f"Serial Number: {quince.serials[device].upper()}" in said
