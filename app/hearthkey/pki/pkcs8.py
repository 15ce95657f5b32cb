"""A private key under a passphrase: EncryptedPrivateKeyInfo of RFC 5958 section 3, by PBES2.

Written by hand because the library fixes the rounds at 2,048.
"""

from __future__ import annotations

from cryptography.hazmat.primitives.ciphers import Cipher, algorithms, modes

from hearthkey.core.errors import Refused
from hearthkey.core.secret import Secret
from hearthkey.pki import der, keys, pbes

LONGEST = 64 * 1024
"""Bytes. An RSA-3072 key takes 1,900."""


def seal_key(key: Secret[bytes], passphrase: Secret[str] | Secret[bytes], rounds: int = pbes.ROUNDS) -> bytes:
    """Encrypt with AES-256-CBC under PBKDF2-HMAC-SHA256 (RFC 8018 section 6.2), DER.

    Args:
        key: unencrypted PKCS#8 DER.
        rounds: 1 to 10,000,000.

    Raises:
        Refused: key-rounds-absurd.
    """
    pbes.check_rounds(rounds)
    salt, vector = pbes.salt(), pbes.salt()
    scheme = pbes.Scheme("AES-256-CBC", 32, "PBKDF2-HMAC-SHA256", rounds, salt, vector)
    derived, _ = pbes.derive(scheme, passphrase)
    encryptor = Cipher(algorithms.AES(derived), modes.CBC(vector)).encryptor()
    plain = key.reveal()
    count = 16 - len(plain) % 16
    sealed = encryptor.update(plain + bytes([count]) * count) + encryptor.finalize()
    return der.element(der.SEQUENCE, _algorithm(salt, rounds, vector), der.element(der.OCTET_STRING, sealed))


def open_key(data: bytes, passphrase: Secret[str] | Secret[bytes], *, foreign: bool = True) -> Secret[bytes]:
    """Decrypt, after the cost was judged, and return unencrypted PKCS#8 DER.

    Args:
        data: EncryptedPrivateKeyInfo, DER.
        passphrase: what it is under.
        foreign: as in `keys.load`; no only for what this app sealed itself.

    Raises:
        Refused: key-unreadable, key-rounds-absurd, encryption-unknown, wrong-passphrase.
    """
    scheme, sealed = read_sealed(data)
    return unseal(scheme, sealed, passphrase, foreign=foreign)


def read_sealed(data: bytes) -> tuple[pbes.Scheme, bytes]:
    """Read how a key is encrypted, and the encrypted octets, without deriving anything.

    Raises:
        Refused: key-unreadable, key-rounds-absurd, encryption-unknown.
    """
    try:
        if len(data) > LONGEST:
            raise der.Malformed("too long for a key")
        outer = der.Reader(data)
        reader = outer.inside(der.SEQUENCE)
        outer.end()
        scheme, sealed = pbes.read_scheme(reader), reader.take(der.OCTET_STRING)
        reader.end()
    except der.Malformed:
        raise Refused("key-unreadable") from None
    return scheme, sealed


def unseal(
    scheme: pbes.Scheme, sealed: bytes, passphrase: Secret[str] | Secret[bytes], *, foreign: bool = True
) -> Secret[bytes]:
    """Decrypt what `read_sealed` found.

    A wrong passphrase now and then leaves a padding that looks right, so what comes out must be a
    key as well.

    Raises:
        Refused: key-unreadable, wrong-passphrase.
    """
    try:
        plain = Secret(pbes.decrypt(scheme, sealed, passphrase))
    except der.Malformed:
        raise Refused("key-unreadable") from None
    except pbes.BadPadding:
        raise Refused("wrong-passphrase") from None
    if not _looks_like_key(plain):
        raise Refused("wrong-passphrase")
    keys.load(plain, foreign=foreign)
    return plain


def _looks_like_key(plain: Secret[bytes]) -> bool:
    """Whether it is one SEQUENCE that begins with version 0 or 1 (RFC 5958 section 2)."""
    try:
        outer = der.Reader(plain.reveal())
        version = outer.inside(der.SEQUENCE).integer()
        outer.end()
    except der.Malformed:
        return False
    return version in {0, 1}


def _algorithm(salt: bytes, rounds: int, vector: bytes) -> bytes:
    """PBES2-params of RFC 8018 appendix A.4."""
    prf = der.element(der.SEQUENCE, der.object_id(pbes.HMAC_SHA256), der.NULL_ELEMENT)
    costs = der.element(der.SEQUENCE, der.element(der.OCTET_STRING, salt), der.integer(rounds), prf)
    derivation = der.element(der.SEQUENCE, der.object_id(pbes.PBKDF2), costs)
    encryption = der.element(der.SEQUENCE, der.object_id(pbes.AES_256_CBC), der.element(der.OCTET_STRING, vector))
    parameters = der.element(der.SEQUENCE, derivation, encryption)
    return der.element(der.SEQUENCE, der.object_id(pbes.PBES2), parameters)
