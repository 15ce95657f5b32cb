"""Making keys, and the CA key that shows nothing."""

from __future__ import annotations

import copy
import pickle

import pytest

from hearthkey.core.errors import Refused
from hearthkey.core.keysets import KEY_SETS
from hearthkey.core.secret import Secret
from hearthkey.pki import keys
from hearthkey.pki.keys import AuthorityKey


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


@pytest.mark.parametrize("key_type", ["P-256", "RSA-3072"])
def test_authority_key_is_p384_only(key_type: str) -> None:
    """If this fails, a device key from a mixed-up file could become the CA key."""
    with pytest.raises(Refused) as caught:
        AuthorityKey.from_pkcs8(keys.make_key(key_type))
    assert caught.value.code == "authority-key-type"


def test_authority_key_shows_nothing_and_is_never_copied() -> None:
    """If this fails, the CA key can end up in a log, a cache or another process."""
    key = AuthorityKey.make()
    assert repr(key) == str(key) == "AuthorityKey(…)"
    for leak in (pickle.dumps, copy.copy, copy.deepcopy):
        with pytest.raises(TypeError):
            leak(key)
