"""CAs that OpenSSL and GnuTLS made in many shapes are taken over, and OpenSSL judges what comes of it."""

from __future__ import annotations

import subprocess
from collections.abc import Callable
from pathlib import Path

import pytest

from hearthkey.adapters.clock import SystemClock
from hearthkey.core.secret import Secret
from hearthkey.formats import pem
from hearthkey.pki import lists
from hearthkey.services.enrolling import EnrolRequest
from hearthkey.services.looking import find
from tests.adopt.conftest import Taking
from tests.adopt.workbench import WORD, Bench, by_gnutls, by_openssl
from tests.fakes.clock import FakeClock
from tests.fakes.home import World
from tests.fakes.workshop import QuickWorkshop
from tests.judges import needs

P256 = ("-algorithm", "EC", "-pkeyopt", "ec_paramgen_curve:P-256")
P384 = ("-algorithm", "EC", "-pkeyopt", "ec_paramgen_curve:P-384")
RSA = ("-algorithm", "RSA", "-pkeyopt", "rsa_keygen_bits:2048")
PASS = ("-passout", f"pass:{WORD}")


def _traditional(folder: Path) -> Bench:
    bench = by_openssl(folder, key=RSA, extensions="whole")
    bench.openssl("rsa", "-in", "made.key", "-aes128", "-traditional", *PASS, "-out", "ca.key")
    return bench


def _traditional_3des(folder: Path) -> Bench:
    bench = by_openssl(folder, key=P256, extensions="whole", database=False)
    bench.openssl("ec", "-in", "made.key", "-des3", *PASS, "-out", "ca.key")
    return bench


def _pkcs8_der(folder: Path) -> Bench:
    bench = by_openssl(folder, key=P384, extensions="whole")
    bench.openssl(
        "pkcs8", "-topk8", "-in", "made.key", "-v2", "aes-256-cbc", *PASS, "-outform", "DER", "-out", "ca.der"
    )
    bench.openssl("x509", "-in", "ca.crt", "-outform", "DER", "-out", "ca.cer")
    bench.openssl("crl", "-in", "list.pem", "-outform", "DER", "-out", "list.crl")
    bench.drop("ca.crt", "list.pem")
    return bench


def _pkcs8_scrypt(folder: Path) -> Bench:
    bench = by_openssl(folder, key=P256, extensions="bare", database=False)
    bench.openssl("pkcs8", "-topk8", "-in", "made.key", "-scrypt", *PASS, "-out", "ca.key")
    return bench


def _container(*more: str) -> Callable[[Path], Bench]:
    def make(folder: Path) -> Bench:
        bench = by_openssl(folder, key=P256, extensions="whole")
        whole = ("-export", "-in", "ca.crt", "-inkey", "made.key", *PASS, "-out", "ca.p12")
        bench.openssl("pkcs12", *whole, *more)
        bench.drop("ca.crt")
        return bench

    return make


def _open_with_text(folder: Path) -> Bench:
    bench = by_openssl(folder, key=P256, extensions="bare")
    bench.openssl("x509", "-in", "ca.crt", "-text", "-out", "text.pem")
    bench.drop("ca.crt")
    bench.put("ca.key", (folder / "made.key").read_text())
    return bench


def _gnutls(*key: str, container: bool = False) -> Callable[[Path], Bench]:
    def make(folder: Path) -> Bench:
        bench = by_gnutls(folder, key=key)
        if container:
            whole = ("--load-certificate", "ca.crt", "--load-privkey", "made.key", "--p12-name", "ca")
            bench.certtool("--to-p12", *whole, "--password", WORD, "--outder", "--outfile", "ca.p12")
        else:
            bench.put("ca.key", (folder / "made.key").read_text())
        return bench

    return make


SHAPES: dict[str, tuple[Callable[[Path], Bench], int]] = {
    "OpenSSL, RSA, traditional with AES": (_traditional, 0x2A),
    "OpenSSL, P-256, traditional with 3DES": (_traditional_3des, 0x2A),
    "OpenSSL, P-384, all of it DER": (_pkcs8_der, 0x2A),
    "OpenSSL, no key usage and no identifier, scrypt": (_pkcs8_scrypt, 0x2A),
    "OpenSSL, PKCS#12": (_container(), 0x2A),
    "OpenSSL, PKCS#12 of the old kind": (_container("-legacy"), 0x2A),
    "OpenSSL, text around the certificate, key open": (_open_with_text, 0x2A),
    "GnuTLS, RSA, key open": (_gnutls("--key-type=rsa", "--bits=2048"), 42),
    "GnuTLS, P-384, PKCS#12": (_gnutls("--key-type=ecdsa", "--curve=secp384r1", container=True), 42),
}


@pytest.mark.parametrize("shape", SHAPES)
def test_old_and_new_passes_are_trusted_and_the_withdrawn_stay_so(shape: str, tmp_path: Path) -> None:
    """Broken if it fails: a take-over locks out a family, lets somebody in, or cannot read what their program wrote."""
    make, number = SHAPES[shape]
    bench = make(_folder(tmp_path))
    bench.drop("made.key")
    clock = FakeClock(SystemClock().now())
    clock.forward(minutes=2)
    taking = Taking(tmp_path / "data", World(clock=clock, workshop=QuickWorkshop()))
    try:
        prepared = taking.take(bench.folder, passphrases=(Secret(WORD),))
        assert prepared.plan.kept_gateway is not None
        house = taking.house
        house.enrolling.apply(house.enrolling.preview(EnrolRequest("Odile", "tablet", "linux")))
        house.listing.sign_anew()
        register = house.register
        authority, newest = register.authority(), register.newest_list()
        assert authority is not None
        assert newest is not None
        assert [one.number for one in register.lists()] == [number, number + 1]
        (entry,) = lists.read_list(newest.der).entries
        assert entry.serial == "1002"
        new = find(register.passes(), "Odile tablet")[-1].serial
        told = {one: register.certificate(one) for one in ("1001", "1002", new)} | {
            "gateway": prepared.plan.kept_gateway.der
        }
        verdicts = {one: _judged(tmp_path, der, authority.certificate, newest.der, clock) for one, der in told.items()}
        assert verdicts == {"1001": "OK", "1002": "certificate revoked", new: "OK", "gateway": "OK"}
    finally:
        taking.house.leave()


def _folder(tmp_path: Path) -> Path:
    folder = tmp_path / "by hand"
    folder.mkdir()
    return folder


def _judged(tmp_path: Path, certificate: bytes, authority: bytes, signed: bytes, clock: FakeClock) -> str:
    """What OpenSSL says of a certificate under the old CA and the new list."""
    for name, label, der in (
        ("leaf.pem", "CERTIFICATE", certificate),
        ("top.pem", "CERTIFICATE", authority),
        ("list.pem", "X509 CRL", signed),
    ):
        (tmp_path / name).write_text(pem.encode(label, der))
    at = str(int(clock.now().timestamp()))
    words = ("verify", "-crl_check", "-attime", at, "-CAfile", "top.pem", "-CRLfile", "list.pem", "leaf.pem")
    ran = subprocess.run([needs("openssl"), *words], cwd=tmp_path, capture_output=True, text=True, check=False)
    if ran.returncode == 0:
        return "OK"
    return ran.stderr.split("lookup: ")[-1].splitlines()[0]
