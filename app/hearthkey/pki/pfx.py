"""The outline of a PKCS#12 container (RFC 7292 section 4), read without trusting or deriving anything."""

from __future__ import annotations

from dataclasses import dataclass, field

from hearthkey.core.errors import Refused
from hearthkey.pki import der, pbes

LONGEST = 1 << 20
"""Bytes. One of ours takes about 5,000."""

MOST_PARTS = 16
"""Parts, and bags in a part. One of ours has two parts and at most three bags."""

DATA, ENCRYPTED_DATA = "1.2.840.113549.1.7.1", "1.2.840.113549.1.7.6"
SHROUDED_KEY_BAG, CERTIFICATE_BAG = "1.2.840.113549.1.12.10.1.2", "1.2.840.113549.1.12.10.1.3"
X509_CERTIFICATE, FRIENDLY_NAME = "1.2.840.113549.1.9.22.1", "1.2.840.113549.1.9.20"

MAC_HASHES = {
    "1.3.14.3.2.26": "sha1",
    "2.16.840.1.101.3.4.2.1": "sha256",
    "2.16.840.1.101.3.4.2.2": "sha384",
    "2.16.840.1.101.3.4.2.3": "sha512",
}
_MAC_LENGTHS = {"sha1": 20, "sha256": 32, "sha384": 48, "sha512": 64}


@dataclass(frozen=True)
class Mac:
    """MacData: what proves that passphrase and container belong together.

    Args:
        hash_name: for hashlib.
        digest, salt: as they stand.
        rounds: iterations, affordable.
    """

    hash_name: str
    digest: bytes
    salt: bytes
    rounds: int


@dataclass(frozen=True)
class Sealed:
    """Something encrypted, and how."""

    scheme: pbes.Scheme
    data: bytes


@dataclass(frozen=True)
class Outline:
    """A container as it lies there.

    Args:
        safe: the octets that the MAC is over.
        mac: how it is proven.
        parts: SafeContents in clear, or sealed.
    """

    safe: bytes
    mac: Mac
    parts: tuple[bytes | Sealed, ...]


@dataclass
class Bags:
    """What one SafeContents holds, or several together."""

    keys: list[Sealed] = field(default_factory=list)
    certificates: list[tuple[bytes, str]] = field(default_factory=list)


def read_outline(data: bytes) -> Outline:
    """Read a container down to what is encrypted.

    Strict DER, where RFC 7292 allows BER as well: everything that the household writes is DER.

    Raises:
        Refused: container-unreadable, key-rounds-absurd, encryption-unknown.
    """
    if len(data) > LONGEST:
        raise Refused("container-unreadable", length=len(data))
    try:
        outer = der.Reader(data)
        reader = outer.inside(der.SEQUENCE)
        outer.end()
        if reader.integer() != 3:
            raise der.Malformed("another version than 3")
        safe = _data_content(reader.inside(der.SEQUENCE))
        mac = _mac(reader.inside(der.SEQUENCE))
        reader.end()
        parts = der.Reader(safe, 3).inside(der.SEQUENCE)
        found: list[bytes | Sealed] = []
        while parts.more():
            found.append(_part(parts.inside(der.SEQUENCE)))
            if len(found) > MOST_PARTS:
                raise der.Malformed("too many parts")
    except der.Malformed:
        raise Refused("container-unreadable", length=len(data)) from None
    return Outline(safe, mac, tuple(found))


def read_bags(content: bytes, into: Bags) -> None:
    """Add the shrouded keys and certificates of one SafeContents; other bags are passed over.

    Raises:
        der.Malformed: it is none.
        Refused: key-rounds-absurd, encryption-unknown.
    """
    outer = der.Reader(content, 6)
    bags = outer.inside(der.SEQUENCE)
    outer.end()
    count = 0
    while bags.more():
        count += 1
        if count > MOST_PARTS:
            raise der.Malformed("too many bags")
        bag = bags.inside(der.SEQUENCE)
        kind = bag.object_id()
        value = bag.inside(der.explicit(0))
        friendly = _friendly_name(bag.inside(der.SET)) if bag.more() else ""
        bag.end()
        if kind == SHROUDED_KEY_BAG:
            into.keys.append(_sealed(value.inside(der.SEQUENCE), der.OCTET_STRING))
        elif kind == CERTIFICATE_BAG:
            into.certificates.append((_certificate(value.inside(der.SEQUENCE)), friendly))


def _data_content(info: der.Reader) -> bytes:
    """ContentInfo of type data."""
    if info.object_id() != DATA:
        raise der.Malformed("signed by a key, not a passphrase")
    content = info.inside(der.explicit(0))
    info.end()
    octets = content.take(der.OCTET_STRING)
    content.end()
    return octets


def _part(info: der.Reader) -> bytes | Sealed:
    kind = info.object_id()
    content = info.inside(der.explicit(0))
    info.end()
    if kind == DATA:
        octets = content.take(der.OCTET_STRING)
        content.end()
        return octets
    if kind != ENCRYPTED_DATA:
        raise der.Malformed("a part under a public key")
    encrypted = content.inside(der.SEQUENCE)
    content.end()
    encrypted.integer()
    inner = encrypted.inside(der.SEQUENCE)
    encrypted.end()
    if inner.object_id() != DATA:
        raise der.Malformed("an encrypted part that is not data")
    return _sealed(inner, der.implicit(0))


def _sealed(reader: der.Reader, tag: int) -> Sealed:
    scheme, data = pbes.read_scheme(reader), reader.take(tag)
    reader.end()
    return Sealed(scheme, data)


def _mac(reader: der.Reader) -> Mac:
    """MacData of RFC 7292 section 4; rounds default to 1."""
    info, salt = reader.inside(der.SEQUENCE), reader.take(der.OCTET_STRING)
    rounds = pbes.check_rounds(reader.integer() if reader.more() else 1)
    reader.end()
    algorithm, digest = info.inside(der.SEQUENCE), info.take(der.OCTET_STRING)
    info.end()
    name = algorithm.object_id()
    if name not in MAC_HASHES:
        raise Refused("encryption-unknown", algorithm=name)
    if algorithm.more():
        algorithm.take(der.NULL)
    algorithm.end()
    if len(digest) != _MAC_LENGTHS[MAC_HASHES[name]]:
        raise der.Malformed("a MAC of the wrong length")
    return Mac(MAC_HASHES[name], digest, salt, rounds)


def _certificate(bag: der.Reader) -> bytes:
    if bag.object_id() != X509_CERTIFICATE:
        raise der.Malformed("a certificate of another kind")
    value = bag.inside(der.explicit(0))
    bag.end()
    certificate = value.take(der.OCTET_STRING)
    value.end()
    return certificate


def _friendly_name(attributes: der.Reader) -> str:
    """The friendlyName attribute (RFC 2985 section 5.5.1, a BMPString), empty where there is none."""
    found = ""
    while attributes.more():
        attribute = attributes.inside(der.SEQUENCE)
        kind, values = attribute.object_id(), attribute.inside(der.SET)
        if kind == FRIENDLY_NAME:
            found = values.take(der.BMP_STRING).decode("utf-16-be", "replace")
    return found
