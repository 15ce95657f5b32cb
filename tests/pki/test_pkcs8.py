"""A key under a passphrase: round trips, other hands' files, hostile files."""

from __future__ import annotations

import pytest
from cryptography.hazmat.primitives import serialization
from hypothesis import given, settings
from hypothesis import strategies as st

from hearthkey.core.errors import Refused
from hearthkey.core.secret import Secret
from hearthkey.pki import keys, pbes, pkcs8
from tests.pki.forge import with_rounds
from tests.pki.quince import PASSPHRASE, Quince

QUICK = 1_000
"""Rounds for tests that are not about rounds."""


@pytest.fixture(scope="module")
def sealed(home: Quince) -> bytes:
    """The device's key at few rounds."""
    return pkcs8.seal_key(home.device.key, PASSPHRASE, QUICK)


def test_default_is_600000_rounds(home: Quince) -> None:
    """If this fails, an exported key is cheaper to guess at than promised (OWASP: 600,000)."""
    sealed = pkcs8.seal_key(home.device.key, PASSPHRASE)
    scheme, _ = pkcs8.read_sealed(sealed)
    assert (scheme.title, scheme.rounds) == ("AES-256-CBC, PBKDF2-HMAC-SHA256", 600_000)
    assert pkcs8.open_key(sealed, PASSPHRASE) == home.device.key


def test_two_sealings_share_nothing(home: Quince) -> None:
    """If this fails, salt or vector repeat. RFC 8018 section 4.1."""
    one, two = (pkcs8.read_sealed(pkcs8.seal_key(home.device.key, PASSPHRASE, QUICK))[0] for _ in range(2))
    assert len({one.salt, two.salt, one.vector, two.vector}) == 4
    assert len(one.salt) == 16


def test_the_library_opens_ours(sealed: bytes, home: Quince) -> None:
    """If this fails, our structure is not what RFC 5958 and RFC 8018 say."""
    password = PASSPHRASE.reveal().encode()
    key = serialization.load_der_private_key(sealed, password)
    assert isinstance(key, keys.PrivateKey)
    assert keys.to_pkcs8(key) == home.device.key


def test_bytes_and_text_are_the_same_passphrase(sealed: bytes, home: Quince) -> None:
    """If this fails, a passphrase read from a file opens nothing."""
    assert pkcs8.open_key(sealed, Secret(PASSPHRASE.reveal().encode())) == home.device.key


@pytest.mark.parametrize("wrong", ["", "plum", PASSPHRASE.reveal().upper(), PASSPHRASE.reveal() + " "])
def test_wrong_passphrase_gives_no_hint(sealed: bytes, wrong: str) -> None:
    """If this fails, an error tells a guesser how near he is."""
    with pytest.raises(Refused) as caught:
        pkcs8.open_key(sealed, Secret(wrong))
    assert (caught.value.code, caught.value.facts, caught.value.__cause__) == ("wrong-passphrase", {}, None)


def test_a_padding_that_looks_right_proves_nothing(home: Quince) -> None:
    """If this fails, one wrong passphrase in 256 gives out garbage as a key. RFC 8018 section 6.1.1."""
    sealed = pkcs8.seal_key(home.device.key, PASSPHRASE, 1)
    codes = set()
    for number in range(600):
        with pytest.raises(Refused) as caught:
            pkcs8.open_key(sealed, Secret(f"guess {number}"))
        codes.add(caught.value.code)
    assert codes == {"wrong-passphrase"}


def test_absurd_rounds_are_refused_before_deriving(home: Quince, sealed: bytes) -> None:
    """If this fails, a small file keeps the app busy for hours."""
    for rounds in (0, pbes.MOST_ROUNDS + 1):
        with pytest.raises(Refused) as caught:
            pkcs8.seal_key(home.device.key, PASSPHRASE, rounds)
        assert caught.value.code == "key-rounds-absurd"
    for rounds in (0, pbes.MOST_ROUNDS + 1, 1 << 400):
        with pytest.raises(Refused) as caught:
            pkcs8.open_key(with_rounds(sealed, rounds), PASSPHRASE)
        assert caught.value.code == "key-rounds-absurd"


@pytest.mark.parametrize("data", [b"", b"0", bytes(300), b"\x30\x80\x00\x00", b"0" * 70_000])
def test_garbage_is_refused(data: bytes) -> None:
    """If this fails, a wrong file reaches the householder as a crash."""
    with pytest.raises(Refused) as caught:
        pkcs8.open_key(data, PASSPHRASE)
    assert caught.value.code == "key-unreadable"


def test_an_open_key_is_no_sealed_one(home: Quince) -> None:
    """If this fails, an unprotected key passes as a protected one."""
    with pytest.raises(Refused) as caught:
        pkcs8.open_key(home.device.key.reveal(), PASSPHRASE)
    assert caught.value.code == "key-unreadable"


@settings(max_examples=80)
@given(data=st.data())
def test_damaged_keys_end_in_a_known_refusal(data: st.DataObject, sealed: bytes, home: Quince) -> None:
    """If this fails, a damaged key reaches the householder as a crash, or opens as another key."""
    changed = bytearray(sealed)
    changed[data.draw(st.integers(0, len(changed) - 1))] ^= 1 << data.draw(st.integers(0, 7))
    cut = sealed[: data.draw(st.integers(0, len(sealed) - 1))]
    for damaged in (bytes(changed), cut):
        try:
            assert pkcs8.open_key(damaged, PASSPHRASE) == home.device.key
        except Refused as error:
            assert error.code in {  # noqa: PT017  # whether it raises is left to the damage
                "key-unreadable",
                "wrong-passphrase",
                "encryption-unknown",
                "key-rounds-absurd",
                "key-type-unknown",
            }
