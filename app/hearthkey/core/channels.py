"""The two-channel guard: what opens a bundle or the CA key never stands beside what leads to it."""

from __future__ import annotations

from collections.abc import Container, Iterable
from dataclasses import dataclass
from enum import Enum
from itertools import pairwise

from hearthkey.core.errors import Bug
from hearthkey.core.secret import Secret

LIKE_WORDS = 3
"""So many words of the list in a row are no accident: few words of a usual sentence are on it. Our own measure."""


class Carries(Enum):
    """What a piece of text gives to whoever reads it."""

    NOTHING = "nothing"
    BUNDLE = "bundle"
    """The bundle, its file's name, a link or a code that leads to it, or the message that it travels with."""
    KEY = "key"
    """The CA key under the household's passphrase, which then are the words."""
    WORDS = "words"
    """The passphrase, or a part of it."""


@dataclass(frozen=True)
class Piece:
    """A text and what it gives away."""

    text: str
    carries: Carries = Carries.NOTHING


def composed(pieces: Iterable[Piece], words: Secret[str] | None = None) -> tuple[str, ...]:
    """The texts of a page or a message, once it is sure that no page has both.

    Args:
        pieces: all that stands on it.
        words: the passphrase, where it is known: then no piece that is not said to carry it may hold two of its words
            in a row, whatever the piece says of itself.

    Raises:
        Bug: both-channels. A fault of ours: nothing is shown, printed, sent or copied.
    """
    found = tuple(pieces)
    carried = {one.carries for one in found}
    if Carries.WORDS in carried and carried & {Carries.BUNDLE, Carries.KEY}:
        raise Bug("both-channels")
    if words is not None and any(one.carries is not Carries.WORDS and gives_away(one.text, words) for one in found):
        raise Bug("both-channels")
    return tuple(one.text for one in found)


def gives_away(text: str, words: Secret[str]) -> bool:
    """Whether two neighbouring words of a passphrase stand next to each other in a text, whatever divides them."""
    wanted = words.reveal().casefold().split()
    seen = _letters_only(text)
    if len(wanted) < 2:
        return bool(wanted) and f" {wanted[0]} " in f" {seen} "
    return any(f" {first} {second} " in f" {seen} " for first, second in pairwise(wanted))


def reads_like_words(text: str, listed: Container[str]) -> bool:
    """Whether so many words of the list stand in a row that somebody may have typed a passphrase, or a part of one.

    Args:
        listed: the words that passphrases are made of.
    """
    row = 0
    for word in _letters_only(text).split():
        row = row + 1 if word in listed else 0
        if row == LIKE_WORDS:
            return True
    return False


def _letters_only(text: str) -> str:
    return " ".join("".join(one if one.isalpha() else " " for one in text.casefold()).split())
