"""Joining judged by shares that others published: those of SLIP-0039, which shares over the same field."""

from __future__ import annotations

import hashlib
import hmac

import pytest

from hearthkey.core import sharing
from hearthkey.core.errors import Bug

# SLIP-0039, its vectors.json, the fourth vector ("Basic sharing 2-of-3 (128 bits)", passphrase TREZOR): identifier
# 25653, iteration exponent 2. The two shares by their member index, as its word list and its section on the format of
# shares turn "shadow pistol academic acid ..." and "shadow pistol academic always ..." into octets.
IDENTIFIER, EXPONENT = 25653, 2
SHARES = {
    0: bytes.fromhex("06ab48fef4bedc8ce58baeef0a73f76e"),
    2: bytes.fromhex("08fb14b66e692e25dfe2edf53289ed62"),
}
MASTER_SECRET = bytes.fromhex("b43ceb7e57a0ea8766221624d01b0864")
SECRET_AT, DIGEST_AT = 255, 254


def at(place: int, shares: dict[int, bytes]) -> bytes:
    """What the polynomial through the shares is at a place: moving all of them by it makes that place the zero."""
    return sharing.join({index ^ place: share for index, share in shares.items()})


def opened(encrypted: bytes) -> bytes:
    """The four rounds that SLIP-0039 puts around a secret before it is shared (its section on encryption)."""
    left, right = encrypted[:8], encrypted[8:]
    salt = b"shamir" + IDENTIFIER.to_bytes(2, "big")
    for number in reversed(range(4)):
        turn = hashlib.pbkdf2_hmac(
            "sha256", bytes([number]) + b"TREZOR", salt + right, (10000 << EXPONENT) // 4, len(right)
        )
        left, right = right, bytes(a ^ b for a, b in zip(left, turn, strict=True))
    return right + left


def test_published_shares_give_the_published_secret() -> None:
    """Broken if it fails: what we call sharing is something that nobody else would bring back."""
    secret, digest = at(SECRET_AT, SHARES), at(DIGEST_AT, SHARES)
    assert digest[:4] == hmac.new(digest[4:], secret, hashlib.sha256).digest()[:4]
    assert opened(secret) == MASTER_SECRET


@pytest.mark.parametrize("changed", [0, 2])
def test_one_bit_of_a_published_share_gives_another_secret(changed: int) -> None:
    """Broken if it fails: the check above would pass with any shares."""
    other = dict(SHARES)
    other[changed] = bytes([other[changed][0] ^ 1, *other[changed][1:]])
    secret, digest = at(SECRET_AT, other), at(DIGEST_AT, other)
    assert digest[:4] != hmac.new(digest[4:], secret, hashlib.sha256).digest()[:4]


def test_a_place_outside_the_field_is_a_fault() -> None:
    """Broken if it fails: a share from nowhere would be joined into nonsense."""
    with pytest.raises(Bug):
        sharing.join({256: b"ab", 2: b"ab"})
