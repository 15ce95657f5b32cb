"""Signed messages: CMS SignedData with the content inside (RFC 5652 section 5), written by a library, read here."""

from __future__ import annotations

from cryptography.exceptions import InvalidSignature
from cryptography.hazmat.primitives import hashes
from cryptography.hazmat.primitives.asymmetric import ec, padding, rsa
from cryptography.hazmat.primitives.serialization import Encoding, pkcs7

from hearthkey.core.errors import Refused
from hearthkey.core.secret import Secret
from hearthkey.pki import der, keys, read
from hearthkey.pki.keys import AuthorityKey, PrivateKey

_SIGNED_DATA = bytes.fromhex("2a864886f70d010702")
_MESSAGE_DIGEST = bytes.fromhex("2a864886f70d010904")
_HASHES = {
    bytes.fromhex("608648016503040201"): hashes.SHA256,
    bytes.fromhex("608648016503040202"): hashes.SHA384,
}
"""id-sha256 and id-sha384 (RFC 5754 section 2)."""


def sign(data: bytes, certificate: bytes, key: AuthorityKey | Secret[bytes], others: tuple[bytes, ...] = ()) -> bytes:
    """Sign data, which stays readable inside; DER.

    Args:
        certificate: of the signer, DER; it is put in.
        key: the CA key, or another private key as unencrypted PKCS#8.
        others: certificates that lead from the signer to what is trusted, DER.

    Raises:
        Refused: key-unreadable, certificate-unreadable.
    """
    private: PrivateKey = key.signer() if isinstance(key, AuthorityKey) else keys.load(key)
    wide = isinstance(private, ec.EllipticCurvePrivateKey) and private.key_size > 256
    digest: hashes.SHA256 | hashes.SHA384 = hashes.SHA384() if wide else hashes.SHA256()
    builder = pkcs7.PKCS7SignatureBuilder().set_data(data).add_signer(read.load(certificate), private, digest)
    for one in others:
        builder = builder.add_certificate(read.load(one))
    return builder.sign(Encoding.DER, [pkcs7.PKCS7Options.Binary, pkcs7.PKCS7Options.NoCapabilities])


def is_signed(data: bytes) -> bool:
    """Whether some bytes begin like a signed message."""
    return _SIGNED_DATA in data[:40]


def open_signed(data: bytes, certificates: tuple[bytes, ...]) -> bytes:
    """The content of a message, once one of these certificates has signed it.

    Raises:
        Refused: signature-wrong, for anything else.
    """
    try:
        content, attributes, digest, signature = _taken_apart(data)
        kind = _HASHES[digest]
        hashed = hashes.Hash(kind())
        hashed.update(content)
        if _digest_told(attributes) != hashed.finalize():
            raise Refused("signature-wrong")
        signed = bytes([der.SET]) + attributes[1:]  # RFC 5652 section 5.4: signed under the tag of a SET
        if not any(_fits(one, signature, signed, kind()) for one in certificates):
            raise Refused("signature-wrong")
    except (der.Malformed, KeyError, ValueError):
        raise Refused("signature-wrong") from None
    return content


def _taken_apart(data: bytes) -> tuple[bytes, bytes, bytes, bytes]:
    """Content, signed attributes (whole), digest algorithm and signature of the one signer."""
    outer = der.Reader(data).inside(der.SEQUENCE)
    if outer.take(der.OBJECT_ID) != _SIGNED_DATA:
        raise der.Malformed("not signed data")
    body = outer.inside(der.explicit(0)).inside(der.SEQUENCE)
    body.take(der.INTEGER)
    body.take(der.SET)
    inside = body.inside(der.SEQUENCE)
    inside.take(der.OBJECT_ID)
    content = inside.inside(der.explicit(0)).take(der.OCTET_STRING)
    body.take(der.explicit(0))
    signer = body.inside(der.SET).inside(der.SEQUENCE)
    signer.take(der.INTEGER)
    signer.take(der.SEQUENCE)
    digest = signer.inside(der.SEQUENCE).take(der.OBJECT_ID)
    attributes = signer.take_whole()
    signer.take(der.SEQUENCE)
    return content, attributes, digest, signer.take(der.OCTET_STRING)


def _digest_told(attributes: bytes) -> bytes:
    reader = der.Reader(attributes).inside(der.explicit(0))
    while reader.more():
        one = reader.inside(der.SEQUENCE)
        if one.take(der.OBJECT_ID) == _MESSAGE_DIGEST:
            return one.inside(der.SET).take(der.OCTET_STRING)
    raise der.Malformed("no digest")


def _fits(certificate: bytes, signature: bytes, signed: bytes, digest: hashes.HashAlgorithm) -> bool:
    public = read.load(certificate).public_key()
    try:
        if isinstance(public, ec.EllipticCurvePublicKey):
            public.verify(signature, signed, ec.ECDSA(digest))
        elif isinstance(public, rsa.RSAPublicKey):
            public.verify(signature, signed, padding.PKCS1v15(), digest)
        else:
            return False
    except InvalidSignature:
        return False
    return True
