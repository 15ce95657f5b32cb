"""Makes CAs as people do it by hand: with OpenSSL and with GnuTLS, each in shapes that are met in the wild."""

from __future__ import annotations

import subprocess
from dataclasses import dataclass
from pathlib import Path

from tests.adopt.by_hand import HOST
from tests.judges import needs

WORD = "plum-kettle-ivory"

_CONFIG = f"""\
[ca]
default_ca = d
[d]
dir = .
database = index.txt
serial = serial
crlnumber = crlnumber
new_certs_dir = newcerts
certificate = ca.crt
private_key = made.key
default_md = sha256
default_days = 700
default_crl_days = 60
policy = p
unique_subject = no
[p]
commonName = supplied
[gateway]
basicConstraints = CA:FALSE
keyUsage = digitalSignature
extendedKeyUsage = serverAuth
subjectAltName = DNS:{HOST}
[device]
basicConstraints = CA:FALSE
extendedKeyUsage = clientAuth
subjectAltName = DNS:device.quince.example
[whole]
basicConstraints = critical, CA:TRUE
keyUsage = critical, keyCertSign, cRLSign
subjectKeyIdentifier = hash
[bare]
basicConstraints = CA:TRUE
subjectKeyIdentifier = none
"""


@dataclass
class Bench:
    """A folder, and the programs that work in it."""

    folder: Path

    def openssl(self, *words: str) -> None:
        """Run OpenSSL."""
        self.run(needs("openssl"), *words)

    def certtool(self, *words: str) -> None:
        """Run GnuTLS."""
        self.run(needs("certtool"), *words)

    def run(self, *words: str) -> None:
        """Run a program there, and insist that it goes well."""
        ran = subprocess.run(words, cwd=self.folder, capture_output=True, text=True, check=False)
        assert ran.returncode == 0, ran.stderr

    def put(self, name: str, text: str) -> None:
        """Lay a file there."""
        (self.folder / name).parent.mkdir(parents=True, exist_ok=True)
        (self.folder / name).write_text(text, encoding="utf-8")

    def drop(self, *names: str) -> None:
        """Take files away."""
        for name in names:
            (self.folder / name).unlink()


def by_openssl(folder: Path, *, key: tuple[str, ...], extensions: str, database: bool = True) -> Bench:
    """A CA with a gateway and two devices, one of them withdrawn; its key lies open in made.key until it is locked.

    Args:
        key: words for `openssl genpkey`.
        extensions: of the CA certificate, "whole" or "bare".
        database: whether what openssl-ca(1) keeps stays in the folder.
    """
    bench = Bench(folder)
    bench.put("ca.cnf", _CONFIG)
    bench.put("index.txt", "")
    bench.put("serial", "1000\n")
    bench.put("crlnumber", "29\n")
    (folder / "newcerts").mkdir()
    bench.openssl("genpkey", *key, "-out", "made.key")
    named = ("-subj", "/O=Quince Cottage/CN=Made by hand", "-days", "3000", "-out", "ca.crt")
    bench.openssl("req", "-x509", "-new", "-config", "ca.cnf", "-extensions", extensions, "-key", "made.key", *named)
    for name in ("gateway", "ines", "tomasz"):
        kind = "gateway" if name == "gateway" else "device"
        curve = ("-newkey", "ec", "-pkeyopt", "ec_paramgen_curve:P-256", "-noenc")
        bench.openssl("req", *curve, "-keyout", f"{name}.key", "-out", f"{name}.csr", "-subj", f"/CN={name}")
        bench.openssl("ca", "-batch", "-config", "ca.cnf", "-extensions", kind, "-in", f"{name}.csr", "-notext")
    bench.openssl("ca", "-config", "ca.cnf", "-revoke", "newcerts/1002.pem", "-crl_reason", "superseded")
    bench.openssl("ca", "-config", "ca.cnf", "-gencrl", "-out", "list.pem")
    if not database:
        bench.drop("index.txt", "index.txt.old", "serial", "serial.old", "crlnumber", "crlnumber.old")
    return bench


def by_gnutls(folder: Path, *, key: tuple[str, ...]) -> Bench:
    """The same, made by GnuTLS; its key lies open in made.key."""
    bench = Bench(folder)
    bench.put(
        "ca.tmpl", 'cn = "Made by hand"\nserial = 1\nca\ncert_signing_key\ncrl_signing_key\nexpiration_days = 3000\n'
    )
    bench.put(
        "gateway.tmpl",
        f'cn = "gateway"\nserial = 4096\ntls_www_server\ndns_name = "{HOST}"\nsigning_key\nexpiration_days = 700\n',
    )
    for name, serial in (("ines", 4097), ("tomasz", 4098)):
        text = f'cn = "{name}"\nserial = {serial}\ntls_www_client\nsigning_key\ndns_name = "device.quince.example"\n'
        bench.put(f"{name}.tmpl", f"{text}expiration_days = 700\n")
    bench.certtool("--generate-privkey", *key, "--outfile", "made.key")
    bench.certtool(
        "--generate-self-signed", "--load-privkey", "made.key", "--template", "ca.tmpl", "--outfile", "ca.crt"
    )
    signer = ("--load-ca-certificate", "ca.crt", "--load-ca-privkey", "made.key")
    (folder / "newcerts").mkdir()
    for name, file in (("gateway", "1000"), ("ines", "1001"), ("tomasz", "1002")):
        bench.certtool("--generate-privkey", "--key-type=ecdsa", "--curve=secp256r1", "--outfile", f"{name}.key")
        what = ("--load-privkey", f"{name}.key", "--template", f"{name}.tmpl", "--outfile", f"newcerts/{file}.pem")
        bench.certtool("--generate-certificate", *signer, *what)
    bench.put("list.tmpl", "crl_next_update = 60\ncrl_number = 41\n")
    gone = ("--load-certificate", "newcerts/1002.pem", "--template", "list.tmpl", "--outfile", "list.pem")
    bench.certtool("--generate-crl", *signer, *gone)
    return bench
