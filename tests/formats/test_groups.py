"""Named Diffie-Hellman groups, worked out from their formulas."""

from __future__ import annotations

import base64
import math

import pytest

from hearthkey.core.errors import Refused
from hearthkey.formats import pem
from hearthkey.formats.groups import GROUPS, LABEL, Group, named, parameters, prime

ALL = pytest.mark.parametrize("group", GROUPS.values(), ids=lambda one: one.name)


def test_the_prime_of_another_group_by_the_same_formula() -> None:
    """Broken if it fails: pi or the formula is wrong. Source: RFC 7296 appendix B.2, group 2, whose prime it prints."""
    printed = (
        "FFFFFFFF FFFFFFFF C90FDAA2 2168C234 C4C6628B 80DC1CD1 29024E08 8A67CC74 020BBEA6 3B139B22 514A0879 8E3404DD "
        "EF9519B3 CD3A431B 302B0A6D F25F1437 4FE1356D 6D51C245 E485B576 625E7EC6 F44C42E9 A637ED6B 0BFF5CB6 F406B7ED "
        "EE386BFB 5A899FA5 AE9F2411 7C4B1FE6 49286651 ECE65381 FFFFFFFF FFFFFFFF"
    )
    second = Group("group 2", 1024, "pi", 129093, "RFC 7296 appendix B.2")
    assert prime(second) == int(printed.replace(" ", ""), 16)


@ALL
def test_what_the_formula_promises(group: Group) -> None:
    """Broken if it fails: 64 ones at either end are missing, so it is no prime of RFC 7919 or RFC 3526."""
    p = prime(group)
    ones = (1 << 64) - 1
    assert p.bit_length() == group.bits
    assert p >> (group.bits - 64) == ones
    assert p & ones == ones
    # behind the first 64 ones stand the digits of the constant, without its whole part for e (RFC 7919 appendix A)
    digits = (p >> (group.bits - 64 - 50)) & ((1 << 50) - 1)
    constant = {"e": math.e, "pi": math.pi}[group.constant]
    assert digits == int(constant * 2**48) & ((1 << 50) - 1)


@pytest.mark.parametrize("name", [one.name for one in GROUPS.values() if one.bits <= 4096])
def test_both_primes(name: str) -> None:
    """Broken if it fails: a key exchange in it can be solved by halves.

    Fermat's test to base 2 for (p-1)/2, then 2^((p-1)/2) = 1: 2 generates that half (RFC 7919 appendix A). OpenSSL's
    own test of all groups stands in tests/interop; the larger ones take too long here.
    """
    p = prime(GROUPS[name])
    q = (p - 1) // 2
    assert pow(2, q - 1, q) == 1
    assert pow(2, q, p) == 1


@ALL
def test_a_file_holds_prime_and_base(group: Group) -> None:
    """Broken if it fails: software that asks for parameters cannot read the file (PKCS #3 section 9)."""
    (der,) = pem.decode(parameters(group), LABEL)
    octets = group.bits // 8
    head, rest = der[:4], der[4:]
    assert head == b"\x30\x82" + len(rest).to_bytes(2, "big")
    assert rest[:5] == b"\x02\x82" + (octets + 1).to_bytes(2, "big") + b"\x00"
    assert int.from_bytes(rest[5 : 5 + octets], "big") == prime(group)
    assert rest[5 + octets :] == b"\x02\x01\x02"


def test_the_file_says_what_it_is() -> None:
    """Broken if it fails: the label is not the one that OpenSSL's dhparam(1) reads."""
    text = parameters(named("ffdhe2048"))
    assert text.startswith("-----BEGIN DH PARAMETERS-----\n")
    assert base64.b64decode("".join(text.splitlines()[1:-1]), validate=True)


def test_an_unknown_group_is_refused() -> None:
    """Broken if it fails: a slip in a name is a traceback."""
    with pytest.raises(Refused) as refused:
        named("ffdhe1024")
    assert refused.value.code == "dh-group-unknown"
    assert refused.value.facts["known"] == tuple(GROUPS)
