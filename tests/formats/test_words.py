"""The word list that passphrases are drawn from is the published one."""

from __future__ import annotations

import gzip
import hashlib
import math
from pathlib import Path

PACKED = (Path(__file__).parents[2] / "resources" / "words" / "eff-large.txt.gz").read_bytes()
WORDS = gzip.decompress(PACKED).decode("ascii").splitlines()


def test_the_list_is_the_eff_large_word_list() -> None:
    """Broken if it fails: passphrases come from another list than the licence note and the bits promised say.

    The sum is over the words as published in 2016 (dice numbers left out), joined by LF.
    """
    assert len(WORDS) == 6**5 == 7776
    joined = "\n".join(WORDS).encode("ascii")
    assert hashlib.sha256(joined).hexdigest() == "abae49761b88f3f1ba31ef944bea1f61b795a3cd7e1cfb7d276ed45bf77967ba"


def test_seven_words_are_ninety_bits() -> None:
    """Broken if it fails: a repeated word, or a word with the separator in it, lowers what is promised."""
    assert len(set(WORDS)) == len(WORDS)
    assert not any(" " in word for word in WORDS)
    assert math.floor(7 * math.log2(len(WORDS))) == 90
