"""Other hands open our containers and keys, and we open theirs: OpenSSL, GnuTLS, NSS."""

from __future__ import annotations

import subprocess
from pathlib import Path

import pytest

from hearthkey.core.bundle import Credential
from hearthkey.core.errors import Refused
from hearthkey.pki import keys, pkcs8, pkcs12
from tests.judges import needs
from tests.pki import quince
from tests.pki.quince import PASSPHRASE

PASSWORD = PASSPHRASE.reveal()
FORMS = ("strong", "old")


@pytest.fixture(scope="module")
def home() -> quince.Quince:
    """Quince Cottage."""
    return quince.found()


@pytest.fixture(scope="module")
def device(home: quince.Quince) -> Credential:
    """A device with RSA, which is what old importers meet, under two authorities."""
    own = home.device_with("RSA-3072")
    return Credential(own.key, own.certificate, (home.authority, quince.found().authority))


@pytest.fixture(scope="module")
def folder(device: Credential, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A folder with both containers of the device."""
    place = tmp_path_factory.mktemp("containers")
    for form in FORMS:
        data = pkcs12.write(device, PASSPHRASE, friendly_name="Ines’s phone", container=form)
        (place / f"{form}.p12").write_bytes(data)
    return place


def ask(*command: str | Path) -> str:
    """Run a judge and return all that it says; it has to agree."""
    done = subprocess.run(command, capture_output=True, text=True, timeout=60, check=False)
    assert done.returncode == 0, done.stdout + done.stderr
    return done.stdout + done.stderr


@pytest.mark.parametrize("form", FORMS)
def test_openssl_opens_containers(folder: Path, form: str) -> None:
    """If this fails, most desktops cannot read the file; source: openssl-pkcs12(1)."""
    said = ask(
        needs("openssl"), "pkcs12", "-in", folder / f"{form}.p12", "-info", "-nodes", "-passin", f"pass:{PASSWORD}"
    )
    rounds, mac = ("600000", "sha256") if form == "strong" else ("2048", "sha1")
    assert f"MAC: {mac}, Iteration {rounds}" in said
    assert said.count(f"Iteration {rounds}") == 3
    assert said.count("BEGIN CERTIFICATE") == 3
    assert "friendlyName: Ines's phone" in said
    assert "RC2" not in said


@pytest.mark.parametrize("form", FORMS)
def test_gnutls_opens_containers(folder: Path, form: str) -> None:
    """If this fails, GNOME's network settings cannot read the file; source: certtool(1)."""
    said = ask(needs("certtool"), "--p12-info", "--inder", "--infile", folder / f"{form}.p12", "--password", PASSWORD)
    assert said.count(f"Iteration count: {600_000 if form == 'strong' else 2_048}") == 3
    assert said.count("BEGIN CERTIFICATE") == 3
    assert "Friendly name: Ines's phone" in said


@pytest.mark.parametrize("form", FORMS)
def test_nss_opens_containers(folder: Path, form: str, tmp_path: Path) -> None:
    """If this fails, browsers cannot read the file; source: pk12util(1)."""
    pk12util, certutil = needs("pk12util"), needs("certutil")
    ask(certutil, "-N", "-d", f"sql:{tmp_path}", "--empty-password")
    ask(pk12util, "-i", folder / f"{form}.p12", "-W", PASSWORD, "-d", f"sql:{tmp_path}")
    assert "Ines's phone" in ask(certutil, "-L", "-d", f"sql:{tmp_path}")
    assert "rsa" in ask(certutil, "-K", "-d", f"sql:{tmp_path}")


@pytest.mark.parametrize("form", FORMS)
def test_a_wrong_passphrase_opens_nothing(folder: Path, form: str) -> None:
    """If this fails, the MAC is not under the passphrase."""
    command = (needs("openssl"), "pkcs12", "-in", folder / f"{form}.p12", "-noout", "-passin", "pass:plum")
    done = subprocess.run(command, capture_output=True, text=True, timeout=60, check=False)
    assert done.returncode != 0
    assert "invalid password" in done.stderr


def pem_files(place: Path, device: Credential) -> tuple[Path, Path]:
    """The device's key and certificate as PEM files for OpenSSL."""
    openssl, made = needs("openssl"), []
    for name, command, data in (("key", "pkey", device.key.reveal()), ("certificate", "x509", device.certificate)):
        der, pem = place / f"{name}.der", place / f"{name}.pem"
        der.write_bytes(data)
        ask(openssl, command, "-inform", "DER", "-in", der, "-out", pem)
        made.append(pem)
    return made[0], made[1]


@pytest.mark.parametrize(
    "options",
    [
        (),
        ("-certpbe", "PBE-SHA1-3DES", "-keypbe", "PBE-SHA1-3DES", "-macalg", "sha1"),
        ("-certpbe", "AES-128-CBC", "-keypbe", "AES-192-CBC", "-macalg", "sha512"),
        ("-certpbe", "NONE", "-macalg", "sha384"),
    ],
)
def test_we_open_what_openssl_writes(home: quince.Quince, tmp_path: Path, options: tuple[str, ...]) -> None:
    """If this fails, our reader only understands our writer."""
    key, certificate = pem_files(tmp_path, home.device)
    made = tmp_path / "made.p12"
    openssl = needs("openssl")
    export = ("-export", "-inkey", key, "-in", certificate, "-out", made, "-passout", f"pass:{PASSWORD}")
    ask(openssl, "pkcs12", *export, *options)
    found = pkcs12.open_container(made.read_bytes(), PASSPHRASE)
    assert (found.certificate, found.authorities) == (home.device.certificate, ())
    assert keys.public_der(found.key) == keys.public_der(home.device.key)


def test_openssl_opens_our_key(home: quince.Quince, tmp_path: Path) -> None:
    """If this fails, the key in a bundle file opens nowhere; source: openssl-pkcs8(1)."""
    path = tmp_path / "key.der"
    path.write_bytes(pkcs8.seal_key(home.device.key, PASSPHRASE))
    said = ask(
        needs("openssl"), "pkey", "-inform", "DER", "-in", path, "-passin", f"pass:{PASSWORD}", "-check", "-noout"
    )
    assert "Key is valid" in said


@pytest.mark.parametrize(
    "options",
    [
        (),
        ("-v2", "aes-256-cbc", "-v2prf", "hmacWithSHA512"),
        ("-v2", "des3", "-v2prf", "hmacWithSHA1"),
        ("-scrypt", "-scrypt_N", "1024", "-scrypt_r", "8", "-scrypt_p", "2"),
        ("-v1", "PBE-SHA1-3DES"),
    ],
)
def test_we_open_keys_that_openssl_writes(home: quince.Quince, tmp_path: Path, options: tuple[str, ...]) -> None:
    """If this fails, our reader only understands our writer (PBKDF2, scrypt and the 3DES scheme)."""
    key, _ = pem_files(tmp_path, home.device)
    made = tmp_path / "made.der"
    openssl = needs("openssl")
    where = ("-in", key, "-outform", "DER", "-out", made, "-passout", f"pass:{PASSWORD}")
    ask(openssl, "pkcs8", "-topk8", *where, *options)
    opened = pkcs8.open_key(made.read_bytes(), PASSPHRASE)
    assert keys.public_der(opened) == keys.public_der(home.device.key)


def test_weak_schemes_are_named_and_not_called_a_wrong_passphrase(home: quince.Quince, tmp_path: Path) -> None:
    """If this fails, somebody with an RC2 file retypes the right passphrase for ever."""
    key, certificate = pem_files(tmp_path, home.device)
    made = tmp_path / "made.p12"
    openssl = needs("openssl")
    export = ("-export", "-legacy", "-inkey", key, "-in", certificate, "-out", made, "-passout", f"pass:{PASSWORD}")
    ask(openssl, "pkcs12", *export)
    with pytest.raises(Refused) as caught:
        pkcs12.open_container(made.read_bytes(), PASSPHRASE)
    assert (caught.value.code, caught.value.facts["algorithm"]) == ("encryption-unknown", "1.2.840.113549.1.12.1.6")
