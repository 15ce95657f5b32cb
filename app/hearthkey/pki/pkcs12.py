"""PKCS#12 containers: a device's key, its certificate and what it trusts, in one file (RFC 7292).

They are written by the library, with the MAC made anew, and read by our own walk over the DER, so
that a rehearsal reads with other eyes than wrote.
"""

from __future__ import annotations

import hashlib
import hmac
from dataclasses import dataclass

from cryptography.hazmat.primitives import hashes
from cryptography.hazmat.primitives.serialization import KeySerializationEncryption, PrivateFormat
from cryptography.hazmat.primitives.serialization.pkcs12 import PBES, serialize_key_and_certificates

from hearthkey.core import kinds
from hearthkey.core.bundle import Credential
from hearthkey.core.errors import Refused
from hearthkey.core.secret import Secret
from hearthkey.pki import der, keys, pbes, pfx, pkcs8, read

OLD_ROUNDS = 2_048
"""Rounds of the old container: more would be no help where a SHA-1 MAC is guessed at."""

MOST_ROUNDS_TOGETHER = 3 * pbes.MOST_ROUNDS
"""All derivations of one container: MAC, certificates and key."""


@dataclass(frozen=True)
class ContainerFacts:
    """How a container is protected, without opening it.

    Args:
        mac_hash, mac_rounds: for instance "sha256", 600000.
        key_encryption: "AES-256-CBC, PBKDF2-HMAC-SHA256"; empty where the key lies in a sealed part.
        key_rounds: 0 where `key_encryption` is empty.
        certificate_encryption: as `key_encryption`; empty where the certificates lie open.
        certificate_rounds: 0 where `certificate_encryption` is empty.
    """

    mac_hash: str
    mac_rounds: int
    key_encryption: str
    key_rounds: int
    certificate_encryption: str
    certificate_rounds: int


def write(credential: Credential, passphrase: Secret[str], *, friendly_name: str, container: str) -> bytes:
    """Write a container, DER.

    Strong: PBES2 with AES-256 and PBKDF2-HMAC-SHA256, and a SHA-256 MAC, all at 600,000 rounds.
    Old: 3DES for key and certificates and a SHA-1 MAC, so that only the passphrase protects it.

    Args:
        friendly_name: what importers show for the device certificate.
        container: `kinds.STRONG` or `kinds.OLD`.

    Raises:
        Refused: container-unknown, key-unreadable, certificate-unreadable.
    """
    strong = kinds.container(container) == kinds.STRONG
    data = serialize_key_and_certificates(
        _bmp_only(friendly_name).encode(),
        keys.load(credential.key),
        read.load(credential.certificate),
        [read.load(authority) for authority in credential.authorities],
        _encryption(pbes.passphrase_bytes(passphrase), strong=strong),
    )
    return _with_new_mac(data, passphrase) if strong else data


def open_container(data: bytes, passphrase: Secret[str], *, foreign: bool = True) -> Credential:
    """Open a container from anywhere: every cost is judged before anything is derived.

    Args:
        data: PFX, DER.
        passphrase: what it is under.
        foreign: as in `keys.load`; no only for what this app sealed itself.

    The certificate that belongs to the key is told by its public key; all others are authorities.

    Raises:
        Refused: container-unreadable, key-rounds-absurd, encryption-unknown, wrong-passphrase,
            container-incomplete, key-unreadable, key-type-unknown, certificate-unreadable.
    """
    outline = pfx.read_outline(data)
    _check_together(outline)
    _check_mac(outline, passphrase)
    bags = _open_parts(outline, passphrase)
    if len(bags.keys) != 1:
        raise Refused("container-incomplete", keys=len(bags.keys), certificates=len(bags.certificates))
    key = pkcs8.unseal(bags.keys[0].scheme, bags.keys[0].data, passphrase, foreign=foreign)
    public = keys.public_der(key)
    certificates = [certificate for certificate, _ in bags.certificates]
    own = [certificate for certificate in certificates if read.public_of(certificate) == public]
    if len(own) != 1:
        raise Refused("container-incomplete", keys=1, certificates=len(own))
    return Credential(key, own[0], tuple(one for one in certificates if one != own[0]))


def friendly_names(data: bytes, passphrase: Secret[str]) -> tuple[str, ...]:
    """The friendly names of the certificates, in order, empty where one has none.

    Raises:
        Refused: as `open_container`, as far as the certificates.
    """
    outline = pfx.read_outline(data)
    _check_together(outline)
    _check_mac(outline, passphrase)
    return tuple(name for _, name in _open_parts(outline, passphrase).certificates)


def describe(data: bytes) -> ContainerFacts:
    """Tell how a container is protected; needs no passphrase and derives nothing.

    Raises:
        Refused: container-unreadable, key-rounds-absurd, encryption-unknown.
    """
    outline = pfx.read_outline(data)
    bags = pfx.Bags()
    _read_clear_parts(outline, bags)
    sealed = [part for part in outline.parts if isinstance(part, pfx.Sealed)]
    key = bags.keys[0].scheme if bags.keys else None
    certificates = sealed[0].scheme if sealed else None
    return ContainerFacts(
        mac_hash=outline.mac.hash_name,
        mac_rounds=outline.mac.rounds,
        key_encryption=key.title if key else "",
        key_rounds=key.rounds if key else 0,
        certificate_encryption=certificates.title if certificates else "",
        certificate_rounds=certificates.rounds if certificates else 0,
    )


def check_mac(data: bytes, passphrase: Secret[str]) -> None:
    """Check the MAC with nothing but hashlib.

    Raises:
        Refused: wrong-passphrase (or any octet changed: a MAC cannot tell which), and as `describe`.
    """
    _check_mac(pfx.read_outline(data), passphrase)


def _check_mac(outline: pfx.Outline, passphrase: Secret[str]) -> None:
    mac = outline.mac
    digest = _mac(mac.hash_name, outline.safe, passphrase, mac.salt, mac.rounds)
    if not hmac.compare_digest(digest, mac.digest):
        raise Refused("wrong-passphrase")


def _mac(hash_name: str, safe: bytes, passphrase: Secret[str], salt: bytes, rounds: int) -> bytes:
    length = hashlib.new(hash_name).digest_size
    password = pbes.bmp_password(passphrase)
    key = pbes.pkcs12_kdf(hash_name, password, salt, purpose=3, rounds=rounds, length=length)
    return hmac.digest(key, safe, hash_name)


def _read_clear_parts(outline: pfx.Outline, bags: pfx.Bags) -> None:
    try:
        for part in outline.parts:
            if isinstance(part, bytes):
                pfx.read_bags(part, bags)
    except der.Malformed:
        raise Refused("container-unreadable", length=len(outline.safe)) from None


def _check_together(outline: pfx.Outline) -> None:
    """Refuse derivations that are affordable one by one, but not all of them."""
    bags = pfx.Bags()
    _read_clear_parts(outline, bags)
    schemes = [part.scheme for part in outline.parts if isinstance(part, pfx.Sealed)]
    schemes += [key.scheme for key in bags.keys]
    rounds = outline.mac.rounds + sum(_cost(scheme) for scheme in schemes)
    if rounds > MOST_ROUNDS_TOGETHER:
        raise Refused("key-rounds-absurd", rounds=rounds, limit=MOST_ROUNDS_TOGETHER)


def _cost(scheme: pbes.Scheme) -> int:
    return scheme.rounds * scheme.blocks * scheme.lanes


def _open_parts(outline: pfx.Outline, passphrase: Secret[str]) -> pfx.Bags:
    bags = pfx.Bags()
    try:
        for part in outline.parts:
            content = part if isinstance(part, bytes) else pbes.decrypt(part.scheme, part.data, passphrase)
            pfx.read_bags(content, bags)
    except der.Malformed:
        raise Refused("container-unreadable", length=len(outline.safe)) from None
    except pbes.BadPadding:
        # The MAC was right, so the passphrase is; a part is under another one or is damaged.
        raise Refused("container-unreadable", length=len(outline.safe)) from None
    return bags


def _encryption(password: bytes, *, strong: bool) -> KeySerializationEncryption:
    builder = PrivateFormat.PKCS12.encryption_builder()
    if strong:
        builder = builder.kdf_rounds(pbes.ROUNDS).key_cert_algorithm(PBES.PBESv2SHA256AndAES256CBC)
        return builder.hmac_hash(hashes.SHA256()).build(password)
    builder = builder.kdf_rounds(OLD_ROUNDS).key_cert_algorithm(PBES.PBESv1SHA1And3KeyTripleDESCBC)
    return builder.hmac_hash(hashes.SHA1()).build(password)  # noqa: S303  # what old importers read; see `write`


def _with_new_mac(data: bytes, passphrase: Secret[str]) -> bytes:
    """Replace the MAC by one at 600,000 rounds.

    The library leaves it at 2,048 whatever is asked, and a guesser would guess there.
    """
    outer = der.Reader(data).inside(der.SEQUENCE)
    version, content = outer.take_whole(), outer.take_whole()
    safe, salt = pfx.read_outline(data).safe, pbes.salt()
    digest = _mac("sha256", safe, passphrase, salt, pbes.ROUNDS)
    sha256 = next(dotted for dotted, name in pfx.MAC_HASHES.items() if name == "sha256")
    algorithm = der.element(der.SEQUENCE, der.object_id(sha256), der.NULL_ELEMENT)
    info = der.element(der.SEQUENCE, algorithm, der.element(der.OCTET_STRING, digest))
    mac = der.element(der.SEQUENCE, info, der.element(der.OCTET_STRING, salt), der.integer(pbes.ROUNDS))
    return der.element(der.SEQUENCE, version, content, mac)


def _bmp_only(text: str) -> str:
    """A friendly name is a BMPString (RFC 2985 section 5.5.1), which holds no character above U+FFFF.

    The curly apostrophe becomes the straight one: what reads names through OpenSSL 3.0 sees only the
    low octet of each character, and that of the curly one is a control character.
    """
    plain = text.replace("’", "'")
    return "".join(character if ord(character) <= 0xFFFF else "\N{REPLACEMENT CHARACTER}" for character in plain)
