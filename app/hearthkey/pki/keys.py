"""Private keys: making them, what is public of them, and the CA key as a thing that shows nothing."""

from __future__ import annotations

from typing import NoReturn

from cryptography.exceptions import UnsupportedAlgorithm
from cryptography.hazmat.primitives import hashes
from cryptography.hazmat.primitives.asymmetric import ec, rsa
from cryptography.hazmat.primitives.serialization import (
    Encoding,
    NoEncryption,
    PrivateFormat,
    PublicFormat,
    load_der_private_key,
)

from hearthkey.core.errors import Refused
from hearthkey.core.keysets import P_256, P_384, RSA_3072
from hearthkey.core.secret import Secret

PrivateKey = ec.EllipticCurvePrivateKey | rsa.RSAPrivateKey
PublicKey = ec.EllipticCurvePublicKey | rsa.RSAPublicKey


def make_key(key_type: str) -> Secret[bytes]:
    """Make a key pair with OpenSSL's randomness.

    Args:
        key_type: one of `core.keysets`.

    Returns:
        Unencrypted PKCS#8 DER (RFC 5958).

    Raises:
        Refused: key-type-unknown.
    """
    if key_type == RSA_3072:
        return to_pkcs8(rsa.generate_private_key(public_exponent=65537, key_size=3072))
    curves = {P_256: ec.SECP256R1, P_384: ec.SECP384R1}
    if key_type not in curves:
        raise Refused("key-type-unknown", text=key_type[:40], known=(RSA_3072, *curves))
    return to_pkcs8(ec.generate_private_key(curves[key_type]()))


def to_pkcs8(key: PrivateKey) -> Secret[bytes]:
    """Write a key as unencrypted PKCS#8 DER."""
    return Secret(key.private_bytes(Encoding.DER, PrivateFormat.PKCS8, NoEncryption()))


def load(key: Secret[bytes], *, foreign: bool = False) -> PrivateKey:
    """Read unencrypted PKCS#8 DER.

    Args:
        foreign: whether the key comes from a file that anybody may have written; then the arithmetic
            of an RSA key is checked, which takes a tenth of a second.

    Raises:
        Refused: key-unreadable, key-type-unknown.
    """
    try:
        found = load_der_private_key(key.reveal(), password=None, unsafe_skip_rsa_key_validation=not foreign)
    except (ValueError, TypeError, UnsupportedAlgorithm):
        raise Refused("key-unreadable") from None  # the cause may quote the key
    if not isinstance(found, ec.EllipticCurvePrivateKey | rsa.RSAPrivateKey):
        raise Refused("key-type-unknown", text=type(found).__name__, known=(RSA_3072, P_256, P_384))
    return found


def public_der(key: Secret[bytes]) -> bytes:
    """The public half, SubjectPublicKeyInfo DER (RFC 5280 section 4.1.2.7).

    Raises:
        Refused: as `load`.
    """
    return spki(load(key).public_key())


def spki(key: PublicKey) -> bytes:
    """Write a public key as SubjectPublicKeyInfo DER."""
    return key.public_bytes(Encoding.DER, PublicFormat.SubjectPublicKeyInfo)


SMALLEST_RSA, LARGEST_RSA = 2048, 8192
"""Bits of a CA key. SP 800-57 part 1 table 2 ends 1,024 bits in 2013; beyond 8,192 a phone waits for seconds."""

_CURVES: dict[str, hashes.SHA256 | hashes.SHA384 | hashes.SHA512] = {
    "secp256r1": hashes.SHA256(),
    "secp384r1": hashes.SHA384(),
    "secp521r1": hashes.SHA512(),
}
"""Curves that a CA key may have, each with a hash that is as strong (FIPS 186-5 section 6.1.1)."""


AUTHORITY_TYPES = (P_384, P_256, "P-521", f"RSA-{SMALLEST_RSA}", f"RSA-{LARGEST_RSA}")


class AuthorityKey:
    """The CA key. It prints nothing, is never pickled, and signs only inside this ring.

    One that the app makes is P-384. One that was made elsewhere may be P-256, P-521 or RSA as well.
    """

    __slots__ = ("_key",)

    def __init__(self, key: PrivateKey) -> None:
        self._key = key

    @classmethod
    def make(cls) -> AuthorityKey:
        """Make a new CA key with OpenSSL's randomness."""
        return cls(ec.generate_private_key(ec.SECP384R1()))

    @classmethod
    def from_pkcs8(cls, key: Secret[bytes]) -> AuthorityKey:
        """Read it from unencrypted PKCS#8 DER.

        Raises:
            Refused: key-unreadable, authority-key-type.
        """
        found = load(key)
        if isinstance(found, ec.EllipticCurvePrivateKey):
            fits, seen = found.curve.name in _CURVES, found.curve.name
        else:
            fits, seen = SMALLEST_RSA <= found.key_size <= LARGEST_RSA, f"RSA-{found.key_size}"
        if not fits:
            raise Refused("authority-key-type", seen=seen, wanted=AUTHORITY_TYPES)
        return cls(found)

    def to_pkcs8(self) -> Secret[bytes]:
        """Write it as unencrypted PKCS#8 DER."""
        return to_pkcs8(self._key)

    def public_der(self) -> bytes:
        """The public half, SubjectPublicKeyInfo DER."""
        return spki(self._key.public_key())

    def signer(self) -> PrivateKey:
        """Give the key to a builder that signs. Every call is a place to look at in a review."""
        return self._key

    def hash(self) -> hashes.SHA256 | hashes.SHA384 | hashes.SHA512:
        """What it signs with: as strong as the curve, and for RSA the one that everything reads."""
        key = self._key
        return _CURVES[key.curve.name] if isinstance(key, ec.EllipticCurvePrivateKey) else hashes.SHA256()

    def __repr__(self) -> str:
        return "AuthorityKey(…)"

    def __reduce_ex__(self, protocol: object) -> NoReturn:
        raise TypeError("the CA key is never pickled or copied")
