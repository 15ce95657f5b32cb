"""Reads private keys as other programs write them, small slips included."""

from __future__ import annotations

from cryptography.hazmat.primitives.asymmetric import ec
from cryptography.hazmat.primitives.asymmetric.types import PrivateKeyTypes
from cryptography.hazmat.primitives.serialization import load_der_private_key

from hearthkey.pki import der
from hearthkey.pki.found_values import TROUBLE

EC_PUBLIC_KEY = "1.2.840.10045.2.1"
_CURVES: dict[str, ec.EllipticCurve] = {
    "1.2.840.10045.3.1.7": ec.SECP256R1(),
    "1.3.132.0.34": ec.SECP384R1(),
    "1.3.132.0.35": ec.SECP521R1(),
}
"""RFC 5480 section 2.1.1.1."""


def load_private(data: bytes) -> PrivateKeyTypes | None:
    """Read an unencrypted key, PKCS#8 or the forms that are older; None for what is none.

    An EC key has as many octets as its curve (RFC 5915 section 3). GnuTLS 3.7 writes one more where the first bit is
    set (seen with certtool 3.7.9), which the library refuses; such a key is read by a walk of our own.
    """
    try:
        return load_der_private_key(data, password=None)
    except TROUBLE:
        pass
    try:
        return _long_ec(data)
    except (der.Malformed, *TROUBLE):
        return None


def _long_ec(data: bytes) -> ec.EllipticCurvePrivateKey | None:
    body = der.Reader(data).inside(der.SEQUENCE)
    curve = None
    if body.integer() == 0:
        algorithm = body.inside(der.SEQUENCE)
        if algorithm.object_id() != EC_PUBLIC_KEY:
            return None
        curve = algorithm.object_id()
        body = der.Reader(body.take(der.OCTET_STRING)).inside(der.SEQUENCE)
        body.integer()
    number = body.take(der.OCTET_STRING)
    if body.more() and body.peek() == der.explicit(0):
        curve = body.inside(der.explicit(0)).object_id()
    found = None if curve is None else _CURVES.get(curve)
    if found is None or len(number) != (found.key_size + 7) // 8 + 1 or number[0]:
        return None
    return ec.derive_private_key(int.from_bytes(number, "big"), found)
