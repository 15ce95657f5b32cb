"""Programs of other hands open everything that leaves a household, as it leaves."""

from __future__ import annotations

import base64
import subprocess
import tomllib
from pathlib import Path

import pyrage
import pytest

from hearthkey.core.bundle import Form
from hearthkey.formats import codes
from tests.interop.cottage import DEVICES, LAPTOP, OLD_RSA, WORDS, Cottage
from tests.judges import needs


def ask(*command: str | Path, given: bytes = b"") -> str:
    """Run a judge, which has to agree, and return all that it says."""
    done = subprocess.run(command, capture_output=True, input=given, timeout=60, check=False)
    said = (done.stdout + done.stderr).decode()
    assert done.returncode == 0, said
    return said


def container(quince: Cottage, device: str) -> Path:
    """The exported PKCS#12 of a device."""
    return quince.written[device, Form.PKCS12][0]


@pytest.mark.parametrize("device", DEVICES)
def test_openssl_opens_every_container(quince: Cottage, device: str) -> None:
    """If this fails, a device cannot import its bundle; the key has to be that of the certificate."""
    openssl, word = needs("openssl"), f"pass:{quince.words[device]}"
    said = ask(openssl, "pkcs12", "-in", container(quince, device), "-info", "-nodes", "-passin", word)
    assert said.count("BEGIN CERTIFICATE") == 2
    rounds, mac = ("2048", "sha1") if device == OLD_RSA else ("600000", "sha256")
    assert f"MAC: {mac}, Iteration {rounds}" in said
    key = ask(openssl, "pkcs12", "-in", container(quince, device), "-nocerts", "-nodes", "-passin", word)
    public = ask(openssl, "pkey", "-pubout", given=key.encode())
    assert public == ask(openssl, "x509", "-in", quince.certificates[device], "-noout", "-pubkey")


@pytest.mark.parametrize("device", DEVICES)
def test_gnutls_opens_every_container(quince: Cottage, device: str) -> None:
    """If this fails, desktops whose settings are built on GnuTLS cannot import a bundle; source: certtool(1)."""
    said = ask(
        *(needs("certtool"), "--p12-info", "--inder", "--infile", container(quince, device)),
        *("--password", quince.words[device]),
    )
    assert said.count("BEGIN CERTIFICATE") == 2


@pytest.mark.parametrize("device", DEVICES)
def test_nss_opens_every_container(quince: Cottage, tmp_path: Path, device: str) -> None:
    """If this fails, browsers cannot import a bundle; source: pk12util(1)."""
    store = f"sql:{tmp_path}"
    ask(needs("certutil"), "-N", "-d", store, "--empty-password")
    ask(needs("pk12util"), "-i", container(quince, device), "-W", quince.words[device], "-d", store)
    person, label = device.rsplit(" ", 1)
    assert f"{person}'s {label}" in ask(needs("certutil"), "-L", "-d", store)
    assert "< 0>" in ask(needs("certutil"), "-K", "-d", store)


def test_openssl_opens_the_key_in_a_bundle_file(quince: Cottage, tmp_path: Path) -> None:
    """If this fails, a bundle file is of use to nobody but us: its key is PEM under the passphrase, RFC 7468."""
    written = tomllib.loads(quince.written[LAPTOP, Form.BUNDLE][0].read_text(encoding="utf-8"))
    key = tmp_path / "key.pem"
    key.write_text(written["credentials"]["encrypted_key"], encoding="ascii")
    word = f"pass:{quince.words[LAPTOP]}"
    public = ask(needs("openssl"), "pkey", "-in", key, "-passin", word, "-pubout")
    assert public == ask(needs("openssl"), "x509", "-in", quince.certificates[LAPTOP], "-noout", "-pubkey")
    assert written["credentials"]["certificate"] == quince.certificates[LAPTOP].read_text(encoding="ascii")
    assert written["credentials"]["authorities"] == quince.authority.read_text(encoding="ascii")


def test_7zip_opens_the_archive(quince: Cottage, tmp_path: Path) -> None:
    """If this fails, the relative's unpacker cannot open what was sent; inside are the files that open elsewhere."""
    word = quince.words[LAPTOP]
    ask(needs("7z"), "x", f"-p{word}", f"-o{tmp_path}", quince.written[LAPTOP, Form.ARCHIVE][0])
    (inner,) = tmp_path.glob("*.p12")
    (bundle,) = tmp_path.glob("*.bundle.toml")
    (authority,) = tmp_path.glob("*.crt")
    assert ask(needs("openssl"), "pkcs12", "-in", inner, "-nokeys", "-passin", f"pass:{word}").count("BEGIN CERT") == 2
    assert tomllib.loads(bundle.read_text(encoding="utf-8"))["device"]["serial"] == quince.serials[LAPTOP]
    assert authority.read_text(encoding="ascii") == quince.authority.read_text(encoding="ascii")


def test_zbar_reads_the_codes(quince: Cottage) -> None:
    """If this fails, a phone's reader gets something else than we drew, or too little to put together."""
    pictures = quince.written[LAPTOP, Form.CODES]
    said = subprocess.run(
        (needs("zbarimg"), "--quiet", "--raw", "-Sdisable", "-Sqrcode.enable", "--nodbus", *reversed(pictures)),
        capture_output=True,
        text=True,
        timeout=60,
        check=True,
    ).stdout
    written = tomllib.loads(codes.join(said.split("\n")[:-1]).decode())
    assert written["device"]["serial"] == quince.serials[LAPTOP]


def test_the_authoritys_key_opens_without_us(quince: Cottage, tmp_path: Path) -> None:
    """If this fails, a family whose app is gone has lost its household: the text opens with age and OpenSSL alone."""
    key = tmp_path / "key.der"
    key.write_bytes(pyrage.passphrase.decrypt(quince.guard.encode("ascii"), WORDS))
    public = ask(needs("openssl"), "pkey", "-inform", "DER", "-in", key, "-pubout")
    assert public == ask(needs("openssl"), "x509", "-in", quince.authority, "-noout", "-pubkey")
    assert "ASN1 OID: secp384r1" in ask(needs("openssl"), "pkey", "-inform", "DER", "-in", key, "-noout", "-text_pub")


def test_the_authoritys_key_is_an_age_file_under_scrypt(quince: Cottage) -> None:
    """If this fails, the key text fits no keyring or is under something else than a passphrase.

    age-encryption.org/v1, "The scrypt recipient type": one stanza of salt and log2(N) alone (from memory).
    """
    lines = quince.guard.strip().splitlines()
    assert (lines[0], lines[-1]) == ("-----BEGIN AGE ENCRYPTED FILE-----", "-----END AGE ENCRYPTED FILE-----")
    header = base64.b64decode("".join(lines[1:-1])).split(b"\n--- ")[0].decode("ascii").split("\n")
    _, name, salt, factor = header[1].split()
    assert header[0] == "age-encryption.org/v1"
    assert (name, len(base64.b64decode(salt + "=="))) == ("scrypt", 16)
    assert int(factor) > 0
    assert [line for line in header if line.startswith("-> ")] == [header[1]]
    assert len(quince.guard) <= 1280
