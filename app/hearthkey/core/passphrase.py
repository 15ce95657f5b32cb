"""Passphrases made by lot from a word list, and how much guessing they stand."""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence

from hearthkey.core.errors import Refused
from hearthkey.core.secret import Secret

WORDS = 7
"""Seven of 7,776 words are 90 bits: enough without any key stretching (EFF large word list)."""

SHORTEST_TYPED = 15
"""Characters. NIST SP 800-63B-4, section 3.1.1.2: a single factor has at least 15 (from memory)."""

SEPARATOR = " "
"""Four words of the list contain a hyphen, so a hyphen cannot stand between words."""


def make(words: Sequence[str], below: Callable[[int], int], count: int = WORDS) -> Secret[str]:
    """Draw a passphrase.

    Args:
        words: the list to draw from.
        below: draws a whole number from 0 to its argument, exclusive.
        count: how many words.
    """
    return Secret(SEPARATOR.join(words[below(len(words))] for _ in range(count)))


def bits(list_length: int, count: int = WORDS) -> float:
    """Entropy in bits of `count` words drawn from a list of that length."""
    return count * math.log2(list_length)


def typed(text: str) -> Secret[str]:
    """Check what any passphrase has to be, before its strength is judged.

    Only printable ASCII: the same letter can be two different byte sequences, a foreign keyboard
    may lack it, and some importers read it differently (RFC 7292 appendix B.1 wants BMPString).

    Raises:
        Refused: passphrase-empty, passphrase-not-ascii, passphrase-too-short, passphrase-too-long.
    """
    plain = text.strip()
    if not plain:
        raise Refused("passphrase-empty")
    for place, character in enumerate(plain, 1):
        if not " " <= character <= "~":
            raise Refused("passphrase-not-ascii", place=place)
    if len(plain) < SHORTEST_TYPED:
        raise Refused("passphrase-too-short", limit=SHORTEST_TYPED)
    if len(plain) > 1024:
        raise Refused("passphrase-too-long", limit=1024)
    return Secret(plain)
