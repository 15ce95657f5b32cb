"""Making keys, and the CA key that shows nothing."""

from __future__ import annotations

import copy
import pickle

import pytest
from cryptography.hazmat.primitives.asymmetric import ec

from hearthkey.core.errors import Refused
from hearthkey.core.keysets import KEY_SETS
from hearthkey.core.secret import Secret
from hearthkey.pki import keys
from hearthkey.pki.keys import AuthorityKey
from tests.pki import rfc9500


@pytest.mark.parametrize("key_type", sorted({one.key_type for one in KEY_SETS.values()}))
def test_every_key_set_has_a_key(key_type: str) -> None:
    """If this fails, a device kind cannot be enrolled."""
    key = keys.make_key(key_type)
    assert keys.public_der(key) == keys.spki(keys.load(key, foreign=True).public_key())
    assert keys.make_key(key_type) != key


def test_unknown_key_types_are_refused() -> None:
    """If this fails, a typing error makes another kind of key than was asked for."""
    with pytest.raises(Refused) as caught:
        keys.make_key("RSA-1024")
    assert caught.value.code == "key-type-unknown"


@pytest.mark.parametrize("octets", [b"", b"0", b"\x30\x03\x02\x01\x00"])
def test_broken_keys_are_refused_without_quoting_them(octets: bytes) -> None:
    """If this fails, pieces of a key reach a log."""
    with pytest.raises(Refused) as caught:
        keys.public_der(Secret(octets))
    assert (caught.value.code, caught.value.facts, caught.value.__cause__) == ("key-unreadable", {}, None)


def test_authority_key_comes_back() -> None:
    """If this fails, the household cannot sign after a restart."""
    key = AuthorityKey.make()
    assert AuthorityKey.from_pkcs8(key.to_pkcs8()).public_der() == key.public_der()


@pytest.mark.parametrize(
    "made",
    [ec.generate_private_key(ec.SECP256K1()), ec.generate_private_key(ec.SECP224R1()), rfc9500.key("testRSA1024")],
    ids=["secp256k1", "P-224", "RSA-1024"],
)
def test_authority_key_is_of_a_kind_that_phones_verify(made: keys.PrivateKey) -> None:
    """If this fails, a household signs what nobody verifies, or what can be forged."""
    with pytest.raises(Refused) as caught:
        AuthorityKey.from_pkcs8(keys.to_pkcs8(made))
    assert caught.value.code == "authority-key-type"


@pytest.mark.parametrize(
    ("made", "wanted"),
    [
        (ec.generate_private_key(ec.SECP256R1()), "sha256"),
        (ec.generate_private_key(ec.SECP384R1()), "sha384"),
        (ec.generate_private_key(ec.SECP521R1()), "sha512"),
        (rfc9500.key("testRSA2048"), "sha256"),
    ],
    ids=["P-256", "P-384", "P-521", "RSA-2048"],
)
def test_an_authority_key_that_was_made_elsewhere_signs_as_strongly_as_it_is(
    made: keys.PrivateKey, wanted: str
) -> None:
    """If this fails, a household made by hand cannot be taken over, or signs too weakly. FIPS 186-5 section 6.1.1."""
    key = AuthorityKey.from_pkcs8(keys.to_pkcs8(made))
    assert key.hash().name == wanted
    assert AuthorityKey.from_pkcs8(key.to_pkcs8()).public_der() == key.public_der()


def test_authority_key_shows_nothing_and_is_never_copied() -> None:
    """If this fails, the CA key can end up in a log, a cache or another process."""
    key = AuthorityKey.make()
    assert repr(key) == str(key) == "AuthorityKey(…)"
    for leak in (pickle.dumps, copy.copy, copy.deepcopy):
        with pytest.raises(TypeError):
            leak(key)
