"""Opens what a device carries away for programs that take a credential as files."""

from __future__ import annotations

import plistlib
import tomllib
from dataclasses import dataclass
from pathlib import Path

from hearthkey.core.bundle import Form
from hearthkey.formats import codes
from tests.judges import needs
from tests.peers.households import Carried
from tests.peers.servers import ask


@dataclass(frozen=True)
class Credential:
    """A credential in files; its key is still under the bundle's passphrase.

    Args:
        certificate, key: the same file where it is a PKCS#12.
        words: the passphrase.
    """

    certificate: Path
    key: Path
    words: str


def credential(carried: Carried, form: Form, folder: Path) -> Credential:
    """Take one form apart with the programs of other hands that a relative has, into `folder`."""
    files = carried.files[form]
    if form in {Form.PKCS12, Form.SCRIPT}:  # the script has the container beside it
        (container,) = (path for path in files if path.suffix == ".p12")
        return Credential(container, container, carried.words)
    if form is Form.PEM:
        certificate, key = (
            next(path for path in files if path.name.endswith(end)) for end in (".cert.pem", ".key.pem")
        )
        return Credential(certificate, key, carried.words)
    if form is Form.PROFILE:
        container = folder / "device.p12"
        container.write_bytes(_in_profile(files[0], "com.apple.security.pkcs12"))
        return Credential(container, container, carried.words)
    if form is Form.ARCHIVE:
        opened = ask((needs("7z"), "x", f"-p{carried.words}", f"-o{folder}", files[0]))
        assert opened.code == 0, opened.said
        (container,) = folder.glob("*.p12")
        return Credential(container, container, carried.words)
    if form is Form.CODES:
        options = ("--quiet", "--raw", "-Sdisable", "-Sqrcode.enable", "--nodbus")
        seen = ask((needs("zbarimg"), *options, *files))
        assert seen.code == 0, seen.said
        return _inline(codes.join(seen.said.split("\n")[:-1]).decode(), carried, folder)
    return _inline(files[0].read_text(encoding="utf-8"), carried, folder)


def _in_profile(path: Path, kind: str) -> bytes:
    """The content of a profile's one payload of a type."""
    (found,) = (one for one in plistlib.loads(path.read_bytes())["PayloadContent"] if one["PayloadType"] == kind)
    content: bytes = found["PayloadContent"]
    return content


def _inline(text: str, carried: Carried, folder: Path) -> Credential:
    """Cut the PEM blocks out of a bundle file."""
    inside = tomllib.loads(text)["credentials"]
    certificate, key = folder / "device.pem", folder / "device-key.pem"
    certificate.write_text(inside["certificate"], encoding="ascii")
    key.write_text(inside["encrypted_key"], encoding="ascii")
    return Credential(certificate, key, carried.words)
