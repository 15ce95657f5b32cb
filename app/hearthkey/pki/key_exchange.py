"""Public values for a key exchange that is begun and never finished: the probe asks, and keeps no secret.

RFC 3526 section 3 (the 2048-bit group), RFC 5903 section 7 (x and y of a point, each as long as the prime) and RFC
8031 section 3.1 (Curve25519).
"""

from __future__ import annotations

from collections.abc import Callable

from cryptography.hazmat.primitives.asymmetric import ec, x25519
from cryptography.hazmat.primitives.serialization import Encoding, PublicFormat

from hearthkey.core.errors import Refused

# RFC 3526 section 3.
PRIME_2048 = int(
    "FFFFFFFFFFFFFFFFC90FDAA22168C234C4C6628B80DC1CD129024E088A67CC74020BBEA63B139B22514A08798E3404DD"
    "EF9519B3CD3A431B302B0A6DF25F14374FE1356D6D51C245E485B576625E7EC6F44C42E9A637ED6B0BFF5CB6F406B7ED"
    "EE386BFB5A899FA5AE9F24117C4B1FE649286651ECE45B3DC2007CB8A163BF0598DA48361C55D39A69163FA8FD24CF5F"
    "83655D23DCA3AD961C62F356208552BB9ED529077096966D670C354E4ABC9804F1746C08CA18217C32905E462E36CE3B"
    "E39E772C180E86039B2783A2EC07A28FB5C55DF06F4C52C9DE2BCBF6955817183995497CEA956AE515D2261898FA0510"
    "15728E5A8AACAA68FFFFFFFFFFFFFFFF",
    16,
)
_OCTETS = 256


def _modp(bits: Callable[[int], int]) -> bytes:
    """By hand, for the library gives finite fields up; twice the group's strength of 112 bits (RFC 3526 section 8)."""
    return pow(2, bits(256) | 1 << 255, PRIME_2048).to_bytes(_OCTETS, "big")


def _point(curve: ec.EllipticCurve) -> bytes:
    key = ec.generate_private_key(curve).public_key()
    return key.public_bytes(Encoding.X962, PublicFormat.UncompressedPoint)[1:]


def _curve25519() -> bytes:
    return x25519.X25519PrivateKey.generate().public_key().public_bytes_raw()


_MAKERS: dict[int, Callable[[], bytes]] = {
    19: lambda: _point(ec.SECP256R1()),
    20: lambda: _point(ec.SECP384R1()),
    31: _curve25519,
}


def public_value(group: int, bits: Callable[[int], int]) -> bytes:
    """Draw a key pair of a key exchange method, and keep of it the public half as RFC 7296 section 3.4 sends it.

    Args:
        group: method 14, 19, 20 or 31.
        bits: draws a whole number of so many random bits.

    Raises:
        Refused: transform-unknown, where a household offers a group that nothing here can make a value of.
    """
    if group == 14:
        return _modp(bits)
    make = _MAKERS.get(group)
    if make is None:
        raise Refused("transform-unknown", text=f"key exchange method {group}")
    return make()
