"""Encryption under a passphrase as key files name it: which scheme, at what cost, and undoing it.

PBES2 of RFC 8018 section 6.2 with PBKDF2 or scrypt (RFC 7914 section 7), and the 3DES scheme of
RFC 7292 appendix C. A cost is judged as soon as it is read, before anything is derived from it.
"""

from __future__ import annotations

import hashlib
import os
from dataclasses import dataclass

from cryptography.hazmat.decrepit.ciphers.algorithms import TripleDES
from cryptography.hazmat.primitives import hashes
from cryptography.hazmat.primitives.ciphers import Cipher, algorithms, modes
from cryptography.hazmat.primitives.kdf.pbkdf2 import PBKDF2HMAC

from hearthkey.core.errors import Refused
from hearthkey.core.secret import Secret
from hearthkey.pki import der

ROUNDS = 600_000
"""OWASP Password Storage Cheat Sheet: PBKDF2-HMAC-SHA256."""

MOST_ROUNDS = 10_000_000
"""RFC 8018 section 4.2 names this as appropriate for especially critical keys."""

MOST_MEMORY = 1 << 30
"""Bytes. scrypt needs 128 times N times r (RFC 7914 section 2); the largest example there is this."""

PBES2, PBKDF2, SCRYPT = "1.2.840.113549.1.5.13", "1.2.840.113549.1.5.12", "1.3.6.1.4.1.11591.4.11"
HMAC_SHA256, AES_256_CBC = "1.2.840.113549.2.9", "2.16.840.1.101.3.4.1.42"
OLD_3DES = "1.2.840.113549.1.12.1.3"

_HASHES = {
    "1.2.840.113549.2.7": "sha1",
    "1.2.840.113549.2.8": "sha224",
    HMAC_SHA256: "sha256",
    "1.2.840.113549.2.10": "sha384",
    "1.2.840.113549.2.11": "sha512",
}
_PRF_HASHES: dict[str, hashes.HashAlgorithm] = {
    "sha1": hashes.SHA1(),  # noqa: S303  # other hands' files; RFC 8018 appendix A.2 makes it the default
    "sha224": hashes.SHA224(),
    "sha256": hashes.SHA256(),
    "sha384": hashes.SHA384(),
    "sha512": hashes.SHA512(),
}
_MAKERS = {"sha1": hashlib.sha1, "sha256": hashlib.sha256, "sha384": hashlib.sha384, "sha512": hashlib.sha512}
_CIPHERS = {
    "2.16.840.1.101.3.4.1.2": ("AES-128-CBC", 16),
    "2.16.840.1.101.3.4.1.22": ("AES-192-CBC", 24),
    AES_256_CBC: ("AES-256-CBC", 32),
    "1.2.840.113549.3.7": ("3DES-CBC", 24),
}


class BadPadding(ValueError):
    """The padding does not come out right; whoever called turns it into a `Refused`."""


@dataclass(frozen=True)
class Scheme:
    """One encryption as an AlgorithmIdentifier names it.

    Args:
        cipher: "AES-256-CBC" or the like.
        key_length: octets.
        derivation: "PBKDF2-HMAC-SHA256", "scrypt" or "PKCS12-SHA1".
        rounds: iterations, or N for scrypt.
        salt: as it stands.
        vector: initialisation vector; derived, so empty here, for PKCS12-SHA1.
        blocks, lanes: r and p of scrypt.
    """

    cipher: str
    key_length: int
    derivation: str
    rounds: int
    salt: bytes
    vector: bytes = b""
    blocks: int = 1
    lanes: int = 1

    @property
    def title(self) -> str:
        """Cipher and derivation in one line, for people who ask."""
        return f"{self.cipher}, {self.derivation}"


def salt() -> bytes:
    """Sixteen random octets for a salt or an initialisation vector (RFC 8018 section 4.1: at least eight)."""
    return os.urandom(16)  # noqa: TID251  # like the keys that OpenSSL makes in this ring: a secret has no other source


def check_rounds(rounds: int) -> int:
    """Return an iteration count that can be afforded.

    Raises:
        Refused: key-rounds-absurd.
    """
    if not 1 <= rounds <= MOST_ROUNDS:
        raise Refused("key-rounds-absurd", rounds=min(rounds, 1 << 62), limit=MOST_ROUNDS)
    return rounds


def read_scheme(outer: der.Reader) -> Scheme:
    """Take an AlgorithmIdentifier from a reader.

    Raises:
        der.Malformed: it is none.
        Refused: encryption-unknown, key-rounds-absurd.
    """
    reader = outer.inside(der.SEQUENCE)
    name = reader.object_id()
    if name not in {PBES2, OLD_3DES}:
        raise Refused("encryption-unknown", algorithm=name)
    parameters = reader.inside(der.SEQUENCE)
    reader.end()
    if name == OLD_3DES:
        salt, rounds = parameters.take(der.OCTET_STRING), check_rounds(parameters.integer())
        parameters.end()
        return Scheme("3DES-CBC", 24, "PKCS12-SHA1", rounds, salt)
    derivation = parameters.inside(der.SEQUENCE)
    encryption = parameters.inside(der.SEQUENCE)
    parameters.end()
    cipher_id = encryption.object_id()
    if cipher_id not in _CIPHERS:
        raise Refused("encryption-unknown", algorithm=cipher_id)
    cipher, key_length = _CIPHERS[cipher_id]
    vector = encryption.take(der.OCTET_STRING)
    encryption.end()
    if len(vector) != (8 if cipher == "3DES-CBC" else 16):
        raise der.Malformed("an initialisation vector of the wrong length")
    return _with_derivation(derivation, cipher, key_length, vector)


def _with_derivation(reader: der.Reader, cipher: str, key_length: int, vector: bytes) -> Scheme:
    name = reader.object_id()
    if name not in {PBKDF2, SCRYPT}:
        raise Refused("encryption-unknown", algorithm=name)
    parameters = reader.inside(der.SEQUENCE)
    reader.end()
    salt, rounds = parameters.take(der.OCTET_STRING), parameters.integer()
    if name == SCRYPT:
        blocks, lanes = parameters.integer(), parameters.integer()
        _check_scrypt(rounds, blocks, lanes)
    else:
        blocks = lanes = 1
        check_rounds(rounds)
    if parameters.more() and parameters.peek() == der.INTEGER and parameters.integer() != key_length:
        raise der.Malformed("a key length that does not fit the cipher")
    derivation = "scrypt" if name == SCRYPT else f"PBKDF2-HMAC-{_read_hash(parameters).upper()}"
    parameters.end()
    return Scheme(cipher, key_length, derivation, rounds, salt, vector, blocks, lanes)


def _read_hash(parameters: der.Reader) -> str:
    """The PRF; RFC 8018 appendix A.2: HMAC with SHA-1 where none is named."""
    if not parameters.more():
        return "sha1"
    reader = parameters.inside(der.SEQUENCE)
    name = reader.object_id()
    if reader.more():
        reader.take(der.NULL)
    reader.end()
    if name not in _HASHES:
        raise Refused("encryption-unknown", algorithm=name)
    return _HASHES[name]


def _check_scrypt(cost: int, blocks: int, lanes: int) -> None:
    if min(cost, blocks, lanes) < 1 or cost < 2 or cost & (cost - 1):
        raise der.Malformed("scrypt parameters that do not exist")
    if 128 * cost * blocks > MOST_MEMORY or cost * blocks * lanes > MOST_MEMORY // 64:
        raise Refused("key-rounds-absurd", rounds=min(cost * blocks * lanes, 1 << 62), limit=MOST_MEMORY // 64)


def decrypt(scheme: Scheme, data: bytes, passphrase: Secret[str] | Secret[bytes]) -> bytes:
    """Undo an encryption.

    Raises:
        BadPadding: the padding is not one; a right one proves nothing.
        der.Malformed: the data are not whole blocks.
    """
    block = 8 if scheme.cipher == "3DES-CBC" else 16
    if not data or len(data) % block:
        raise der.Malformed("encrypted data that are not whole blocks")
    key, vector = derive(scheme, passphrase)
    algorithm = TripleDES(key) if block == 8 else algorithms.AES(key)
    decryptor = Cipher(algorithm, modes.CBC(vector)).decryptor()
    padded = decryptor.update(data) + decryptor.finalize()
    count = padded[-1]
    if not 1 <= count <= block or padded[-count:] != bytes([count]) * count:
        raise BadPadding
    return padded[:-count]


def derive(scheme: Scheme, passphrase: Secret[str] | Secret[bytes]) -> tuple[bytes, bytes]:
    """Key and initialisation vector of a scheme; the slow step."""
    if scheme.derivation == "PKCS12-SHA1":
        password = bmp_password(passphrase)
        return (
            pkcs12_kdf("sha1", password, scheme.salt, purpose=1, rounds=scheme.rounds, length=24),
            pkcs12_kdf("sha1", password, scheme.salt, purpose=2, rounds=scheme.rounds, length=8),
        )
    plain = passphrase_bytes(passphrase)
    if scheme.derivation == "scrypt":
        key = hashlib.scrypt(
            plain,
            salt=scheme.salt,
            n=scheme.rounds,
            r=scheme.blocks,
            p=scheme.lanes,
            maxmem=MOST_MEMORY + (1 << 26),
            dklen=scheme.key_length,
        )
    else:
        algorithm = _PRF_HASHES[scheme.derivation.rpartition("-")[2].lower()]
        key = PBKDF2HMAC(algorithm, scheme.key_length, scheme.salt, scheme.rounds).derive(plain)
    return key, scheme.vector


def passphrase_bytes(passphrase: Secret[str] | Secret[bytes]) -> bytes:
    """The octets that PBKDF2 and scrypt take: UTF-8 (RFC 8018 section 3 recommends it)."""
    value = passphrase.reveal()
    return value.encode() if isinstance(value, str) else value


def bmp_password(passphrase: Secret[str] | Secret[bytes]) -> bytes:
    """The octets that the KDF of PKCS#12 takes: BMPString, big-endian, with a terminator.

    RFC 7292 appendix B.1.
    """
    value = passphrase.reveal()
    text = value if isinstance(value, str) else value.decode("utf-8", "replace")
    return text.encode("utf-16-be") + b"\0\0"


def pkcs12_kdf(hash_name: str, password: bytes, salt: bytes, *, purpose: int, rounds: int, length: int) -> bytes:
    """Derive octets by RFC 7292 appendix B.2.

    Args:
        hash_name: "sha1", "sha256", "sha384" or "sha512".
        password: see `bmp_password`.
        purpose: 1 key, 2 initialisation vector, 3 MAC key (appendix B.3).
    """
    make = _MAKERS[hash_name]
    block = make().block_size
    spread = _fill(salt, block) + _fill(password, block)
    found = b""
    while True:
        digest = make(bytes([purpose]) * block + spread).digest()
        for _ in range(rounds - 1):
            digest = make(digest).digest()
        found += digest
        if len(found) >= length:
            return found[:length]
        addend = int.from_bytes(_fill(digest, block)[:block], "big") + 1
        mask = (1 << 8 * block) - 1
        spread = b"".join(
            ((int.from_bytes(spread[place : place + block], "big") + addend) & mask).to_bytes(block, "big")
            for place in range(0, len(spread), block)
        )


def _fill(text: bytes, block: int) -> bytes:
    """Repeat a text so that it fills whole blocks; an empty one stays empty."""
    length = -(-len(text) // block) * block
    return (text * (length // max(len(text), 1) + 1))[:length]
