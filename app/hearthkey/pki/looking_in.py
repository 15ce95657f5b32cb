"""Looks into one file of a household that was made by hand: PEM of every label, DER, PKCS#12. Nothing is believed."""

from __future__ import annotations

import base64
import binascii
import re
import warnings
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field

from cryptography.exceptions import UnsupportedAlgorithm
from cryptography.hazmat.primitives.asymmetric import ec, rsa
from cryptography.hazmat.primitives.serialization import Encoding, load_pem_private_key
from cryptography.hazmat.primitives.serialization.pkcs12 import load_pkcs12

from hearthkey.core.errors import Refused
from hearthkey.core.found_household import Finding, FoundCertificate, FoundKey, FoundList, Grave, KeyLock
from hearthkey.core.secret import Secret
from hearthkey.pki import der, found_values, keys, pbes, pfx, pkcs8, pkcs12
from hearthkey.pki.foreign_keys import load_private
from hearthkey.pki.found_values import TROUBLE

MOST_BLOCKS = 2_000
"""PEM blocks in one file."""

_BLOCK = re.compile(r"-----BEGIN ([A-Z0-9][A-Z0-9 ]{0,60})-----[ \t]*\r?\n(.*?)-----END \1-----", re.DOTALL)
_CERTIFICATES = {"CERTIFICATE", "X509 CERTIFICATE"}
_LISTS = {"X509 CRL", "CRL"}
_OLD_KEYS = {"RSA PRIVATE KEY", "EC PRIVATE KEY", "DSA PRIVATE KEY", "RSA TESTING KEY", "EC TESTING KEY"}
"""The forms that are older than PKCS#8; RFC 9500 section 2 writes TESTING KEY, so that nobody takes them by mistake."""
_DEEP = 14


@dataclass
class Seen:
    """What one file holds.

    Args:
        opened: private keys, unencrypted PKCS#8 DER, by the print of their public half.
        related: whether anything in it was recognised.
    """

    certificates: list[FoundCertificate] = field(default_factory=list)
    keys: list[FoundKey] = field(default_factory=list)
    lists: list[FoundList] = field(default_factory=list)
    findings: list[Finding] = field(default_factory=list)
    opened: dict[str, Secret[bytes]] = field(default_factory=dict)
    related: bool = False

    def note(self, code: str, file: str, clause: str, **facts: object) -> None:
        """Keep something that could not be read; the rest of the file counts all the same."""
        self.related = True
        self.findings.append(Finding(code, file, Grave.NOTE, clause, facts))


def look_in(file: str, data: bytes, passphrases: Sequence[Secret[str]] = ()) -> Seen:
    """Find out what a file holds. Never raises for what stands in it.

    Args:
        file: how to call it.
        data: all of it.
        passphrases: to be tried on what is locked.
    """
    seen = Seen()
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")  # what is odd is told as a finding
        _look(seen, file, data, passphrases)
    return seen


def _look(seen: Seen, file: str, data: bytes, passphrases: Sequence[Secret[str]]) -> None:
    text = data.decode("latin-1")
    if "-----BEGIN " in text:
        for number, block in enumerate(_BLOCK.finditer(text)):
            if number == MOST_BLOCKS:
                seen.note("file-too-much", file, "RFC 7468 section 2", limit=MOST_BLOCKS)
                break
            _look_in_block(seen, file, block, passphrases)
    elif data[:1] == b"\x30":
        _look_in_der(seen, file, data, passphrases)


def _look_in_block(seen: Seen, file: str, block: re.Match[str], passphrases: Sequence[Secret[str]]) -> None:
    label, body = block[1], block[2]
    if label in _OLD_KEYS and "DEK-Info:" in body:
        _old_locked(seen, file, label, body, passphrases)
        return
    if label not in _CERTIFICATES | _LISTS | _OLD_KEYS | {"PRIVATE KEY", "ENCRYPTED PRIVATE KEY"}:
        seen.related = True
        return
    try:
        data = base64.b64decode("".join(body.split()), validate=True)
    except (binascii.Error, ValueError):
        seen.note("block-unreadable", file, "RFC 7468 section 3", label=label.lower())
        return
    if label in _CERTIFICATES:
        _certificate(seen, file, data)
    elif label in _LISTS:
        _list(seen, file, data)
    elif label == "ENCRYPTED PRIVATE KEY":
        _locked(seen, file, data, passphrases)
    elif not _open_key(seen, file, data):
        seen.note("key-unreadable", file, "RFC 5958 section 2")


def _look_in_der(seen: Seen, file: str, data: bytes, passphrases: Sequence[Secret[str]]) -> None:
    """A file without PEM lines says nowhere what it is, so the outline decides."""
    shape = _shape(data)
    if shape == "container":
        _container(seen, file, data, passphrases)
    elif shape == "locked":
        _locked(seen, file, data, passphrases)
    elif shape == "key":
        if not _open_key(seen, file, data):
            seen.note("key-unreadable", file, "RFC 5958 section 2")
    elif shape == "signed":
        trial = Seen()
        _list(trial, file, data)
        if trial.lists:
            seen.lists, seen.related = trial.lists, True
        else:
            _certificate(seen, file, data)


def _shape(data: bytes) -> str:
    """Tell a container, a key, a locked key and what is signed apart by their first elements."""
    try:
        whole = der.Reader(data)
        body = whole.inside(der.SEQUENCE)
        whole.end()
        first = body.peek()
        if first == der.INTEGER:
            version = body.integer()
            return "container" if version == 3 else "key"
        inner = body.inside(der.SEQUENCE)
        if inner.more() and inner.peek() == der.OBJECT_ID and body.more() and body.peek() == der.OCTET_STRING:
            return "locked"
    except der.Malformed:
        return "signed" if len(data) > _DEEP else ""
    return "signed"


def _certificate(seen: Seen, file: str, data: bytes) -> None:
    try:
        seen.certificates.append(found_values.certificate(file, data))
        seen.related = True
    except TROUBLE:
        seen.note("certificate-unreadable", file, "RFC 5280 section 4.1")


def _list(seen: Seen, file: str, data: bytes) -> None:
    try:
        seen.lists.append(found_values.revocation_list(file, data))
        seen.related = True
    except TROUBLE:
        seen.note("list-unreadable", file, "RFC 5280 section 5.1")


def _open_key(seen: Seen, file: str, data: bytes, lock: KeyLock = KeyLock.OPEN) -> bool:
    found = load_private(data)
    if found is None:
        return False
    _keep(seen, file, lock, found)
    return True


def _keep(seen: Seen, file: str, lock: KeyLock, found: object) -> None:
    public = found.public_key()  # type: ignore[attr-defined]  # every private key of the library has one
    name = found_values.print_of(public)
    seen.keys.append(FoundKey(file, lock, name, found_values.key_type(public)))
    seen.related = True
    if isinstance(found, ec.EllipticCurvePrivateKey | rsa.RSAPrivateKey):
        seen.opened[name] = keys.to_pkcs8(found)


def _locked(seen: Seen, file: str, data: bytes, passphrases: Iterable[Secret[str]]) -> None:
    """EncryptedPrivateKeyInfo: its cost is judged before anything is derived."""
    try:
        scheme, sealed = pkcs8.read_sealed(data)
    except Refused as error:
        _keep_shut(seen, file, KeyLock.PKCS8, error)
        return
    for passphrase in passphrases:
        try:
            plain = pbes.decrypt(scheme, sealed, passphrase)
        except (der.Malformed, pbes.BadPadding):
            continue
        if _open_key(seen, file, plain, KeyLock.PKCS8):
            return
    _keep_shut(seen, file, KeyLock.PKCS8)


def _keep_shut(seen: Seen, file: str, lock: KeyLock, error: Refused | None = None) -> None:
    seen.related = True
    if error is None:
        seen.keys.append(FoundKey(file, lock, None))
    else:
        code = error.code if error.code in {"encryption-unknown", "key-rounds-absurd"} else "key-unreadable"
        seen.note(f"locked-{code}" if code != "key-unreadable" else code, file, "RFC 8018 section 6", **error.facts)


def _old_locked(seen: Seen, file: str, label: str, body: str, passphrases: Iterable[Secret[str]]) -> None:
    """The traditional encrypted form: Proc-Type and DEK-Info (RFC 1421 sections 4.6.1.1 and 4.6.1.3).

    Its key comes out of one round of MD5, so there is no cost to be judged, and no protection beyond the passphrase.
    """
    name = label.replace("TESTING", "PRIVATE")
    block = f"-----BEGIN {name}-----\n{body}-----END {name}-----\n".encode("latin-1")
    for passphrase in passphrases:
        try:
            found = load_pem_private_key(block, pbes.passphrase_bytes(passphrase))
        except UnsupportedAlgorithm:
            break
        except TROUBLE:
            continue
        _keep(seen, file, KeyLock.TRADITIONAL, found)
        return
    _keep_shut(seen, file, KeyLock.TRADITIONAL)


def _container(seen: Seen, file: str, data: bytes, passphrases: Sequence[Secret[str]]) -> None:
    try:
        _check_costs(der.Reader(data), 0)
        if len(data) > pfx.LONGEST:
            raise der.Malformed("too long")
    except (der.Malformed, Refused) as error:
        shown = error if isinstance(error, Refused) else Refused("key-unreadable")
        _keep_shut(seen, file, KeyLock.CONTAINER, shown)
        return
    for passphrase in passphrases or [Secret("")]:
        if _opened_container(seen, file, data, passphrase):
            return
    _keep_shut(seen, file, KeyLock.CONTAINER)


def _opened_container(seen: Seen, file: str, data: bytes, passphrase: Secret[str]) -> bool:
    """Open a container by our own walk; what that does not know (RC2, several certificates) by the library."""
    try:
        found = pkcs12.open_container(data, passphrase)
    except Refused as error:
        if error.code == "wrong-passphrase":
            return False
    else:
        for one in (found.certificate, *found.authorities):
            _certificate(seen, file, one)
        return _open_key(seen, file, found.key.reveal(), KeyLock.CONTAINER)
    try:
        other = load_pkcs12(data, pbes.passphrase_bytes(passphrase) or None)
    except TROUBLE:
        return False
    held = [*([other.cert] if other.cert is not None else []), *other.additional_certs]
    for certificate in held:
        _certificate(seen, file, certificate.certificate.public_bytes(Encoding.DER))
    if other.key is not None:
        _keep(seen, file, KeyLock.CONTAINER, other.key)
    return True


def _check_costs(reader: der.Reader, depth: int) -> None:
    """Refuse rounds that nobody can afford, wherever a salt and a number stand side by side.

    Raises:
        der.Malformed: it is no DER.
        Refused: key-rounds-absurd.
    """
    salted = False
    while reader.more():
        tag = reader.peek()
        if tag == der.INTEGER and salted:
            pbes.check_rounds(reader.integer())
            continue
        whole = reader.take_whole()
        salted = tag == der.OCTET_STRING
        if depth < _DEEP and tag & 0x20:
            _check_costs(der.Reader(_content(whole)), depth + 1)
        elif depth < _DEEP and salted and _content(whole)[:1] == b"\x30":
            _check_nested(_content(whole), depth + 1)


def _check_nested(content: bytes, depth: int) -> None:
    """An octet string may hold more DER, or only begin like it."""
    try:
        _check_costs(der.Reader(content), depth)
    except der.Malformed:
        return


def _content(element: bytes) -> bytes:
    reader = der.Reader(element)
    return reader.take(reader.peek())
