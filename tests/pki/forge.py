"""Writes what nobody should be given: keys that announce absurd costs."""

from __future__ import annotations

from hearthkey.pki import der, pbes


def with_rounds(shrouded: bytes, rounds: int) -> bytes:
    """The same EncryptedPrivateKeyInfo, announcing other rounds."""
    outer = der.Reader(shrouded).inside(der.SEQUENCE)
    scheme, rest = pbes.read_scheme(outer), outer.take(der.OCTET_STRING)
    prf = der.element(der.SEQUENCE, der.object_id(pbes.HMAC_SHA256), der.NULL_ELEMENT)
    salt = der.element(der.OCTET_STRING, scheme.salt)
    costs = der.element(der.SEQUENCE, salt, der.integer(rounds), prf)
    derivation = der.element(der.SEQUENCE, der.object_id(pbes.PBKDF2), costs)
    vector = der.element(der.OCTET_STRING, scheme.vector)
    encryption = der.element(der.SEQUENCE, der.object_id(pbes.AES_256_CBC), vector)
    parameters = der.element(der.SEQUENCE, derivation, encryption)
    algorithm = der.element(der.SEQUENCE, der.object_id(pbes.PBES2), parameters)
    return der.element(der.SEQUENCE, algorithm, der.element(der.OCTET_STRING, rest))
