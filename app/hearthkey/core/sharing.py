"""Splits a secret so that any few of its shares bring it back, and fewer say nothing about it.

Adi Shamir, "How to Share a Secret", Communications of the ACM 22 (1979), page 612: a polynomial whose constant term is
the secret, over the field of FIPS 197 section 4.2 (octets modulo x^8 + x^4 + x^3 + x + 1), one for each octet.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping

from hearthkey.core.errors import Bug

_FIELD = 0x11B
"""x^8 + x^4 + x^3 + x + 1 (FIPS 197 section 4.2)."""
MOST = 15
"""Shares that are made. The field would allow `PLACES`, and what others made may stand at any of them."""
PLACES = 255


def multiply(first: int, second: int) -> int:
    """The product of two octets in the field; without a table or a branch that depends on them."""
    product = 0
    for _ in range(8):
        product ^= first & -(second & 1)
        first = (first << 1) ^ (_FIELD & -(first >> 7))
        second >>= 1
    return product


def inverse(octet: int) -> int:
    """What an octet has to be multiplied by to make 1: its 254th power, for the 255th is 1; 0 has none and gives 0."""
    result, power = 1, octet
    for _ in range(7):
        power = multiply(power, power)
        result = multiply(result, power)
    return result


def split(secret: bytes, threshold: int, count: int, below: Callable[[int], int]) -> tuple[bytes, ...]:
    """Split a secret into `count` shares, of which any `threshold` bring it back.

    Args:
        below: draws a whole number from 0 to its argument, exclusive.

    Returns:
        The shares at 1, 2, 3 and so on, each as long as the secret.

    Raises:
        Bug: sharing-odd, for numbers that make no sense.
    """
    if not 2 <= threshold <= count <= MOST:
        raise Bug("sharing-odd", threshold=threshold, count=count)
    polynomials = [(octet, *(below(256) for _ in range(threshold - 1))) for octet in secret]
    return tuple(bytes(_at(one, place) for one in polynomials) for place in range(1, count + 1))


def join(shares: Mapping[int, bytes]) -> bytes:
    """Bring a secret back from shares by their places; it is right if there are enough of them and all are right.

    Raises:
        Bug: sharing-odd, for shares of different lengths or at places that there are not.
    """
    lengths = {len(one) for one in shares.values()}
    if len(lengths) != 1 or not all(1 <= place <= PLACES for place in shares):
        raise Bug("sharing-odd", threshold=len(shares), count=len(lengths))
    weights = {place: _weight(place, shares) for place in shares}
    joined = bytearray(lengths.pop())
    for place, share in shares.items():
        for at, octet in enumerate(share):
            joined[at] ^= multiply(octet, weights[place])
    return bytes(joined)


def _at(polynomial: tuple[int, ...], place: int) -> int:
    value = 0
    for coefficient in reversed(polynomial):
        value = multiply(value, place) ^ coefficient
    return value


def _weight(place: int, places: Mapping[int, bytes]) -> int:
    """Lagrange's weight of a place at 0; in this field minus is plus is exclusive or."""
    weight = 1
    for other in places:
        if other != place:
            weight = multiply(weight, multiply(other, inverse(other ^ place)))
    return weight
