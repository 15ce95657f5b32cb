"""The deputy's parts: what opens a sealed copy, split so that any two of three people can do it together.

A part is 24 octets: version and threshold (4 bits each), how many parts there are and which this is (4 bits each), the
set's name (16 bits), the share (128 bits), and the first 32 bits of the SHA-256 of all that behind a text of its own.
It is written as fifteen words of the list that passphrases are drawn from, and as 48 hex digits in a code.
"""

from __future__ import annotations

import hashlib
import hmac
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from itertools import pairwise

from hearthkey.core import sharing
from hearthkey.core.errors import Refused
from hearthkey.core.secret import Secret

THRESHOLD, COUNT = 2, 3
"""Any two of three: one may be lost, and nobody can do it alone."""
SECRET_BITS = 128
"""Security strength of 128 bits: acceptable for 2031 and beyond (NIST SP 800-57 part 1, revision 5, table 4)."""
WORDS = 15
"""7,776 to the power of 15 is a little above 2 to the power of 192: all of a part, and nothing left over to choose."""
TOO_LONG = timedelta(days=365)
"""After that long a part is to be tried again. A choice of ours: the yearly drill."""
CODE = "HKD1/"
"""What the text of a code begins with; the rest is hex: all of it is in the alphanumeric set of ISO/IEC 18004."""

PART_FILE, COPY_ENDING = "deputy-part-", ".sealed.tar"
"""How the files of parts begin and those of sealed copies end, by which the two are kept out of one folder."""

_VERSION = 1
_OCTETS, _SHARE, _CHECK = 24, 16, 4
_ABOUT = b"hearthkey deputy part 1\n"


@dataclass(frozen=True)
class Part:
    """One part of a set.

    Args:
        set_name: four hex digits, the same on each part of a set.
        number: which, from 1.
        threshold: how many bring the secret back.
        count: how many there are.
        share: 128 bits.
    """

    set_name: str
    number: int
    threshold: int
    count: int
    share: Secret[bytes]

    @property
    def octets(self) -> Secret[bytes]:
        """All of it, with its checksum."""
        head = bytes((_VERSION << 4 | self.threshold, self.count << 4 | self.number)) + bytes.fromhex(self.set_name)
        plain = head + self.share.reveal()
        return Secret(plain + _check(plain))

    @property
    def mark(self) -> str:
        """SHA-256 of it, hex: by this a part is known again, and nobody learns 128 random bits from it."""
        return hashlib.sha256(self.octets.reveal()).hexdigest()


@dataclass(frozen=True)
class PartNote:
    """What the register remembers of a part.

    Args:
        number: which.
        mark: as `Part.mark`.
        tried: when it was last seen to be right, UTC, or None.
    """

    number: int
    mark: str
    tried: datetime | None


@dataclass(frozen=True)
class SetNote:
    """What the register remembers of a set.

    Args:
        name: four hex digits.
        made: when, UTC.
        threshold: how many parts bring the secret back.
        lock: public half of what closed the copies then; with another one the parts open nothing that is made now.
        locked: what opens a copy, locked under what was split; ASCII armour. It lies in every copy.
        parts: by number.
    """

    name: str
    made: datetime
    threshold: int
    lock: str
    locked: str
    parts: tuple[PartNote, ...]

    @property
    def due(self) -> datetime:
        """The day on which a part is to be tried: a year after the one that waited longest was made or tried."""
        return min(one.tried or self.made for one in self.parts) + TOO_LONG


def split(secret: Secret[bytes], set_name: str, below: Callable[[int], int]) -> tuple[Part, ...]:
    """Split what opens a sealed copy.

    Args:
        secret: 128 bits.
        below: draws a whole number from 0 to its argument, exclusive.
    """
    shares = sharing.split(secret.reveal(), THRESHOLD, COUNT, below)
    return tuple(Part(set_name, number, THRESHOLD, COUNT, Secret(one)) for number, one in enumerate(shares, 1))


def joined(parts: Sequence[Part]) -> Secret[bytes]:
    """Bring back what was split.

    Raises:
        Refused: deputy-parts-mixed, deputy-part-twice, deputy-parts-too-few.
    """
    if len({(one.set_name, one.threshold, one.count) for one in parts}) > 1:
        raise Refused("deputy-parts-mixed", sets=tuple(sorted({one.set_name for one in parts})))
    numbers = [one.number for one in parts]
    twice = next((one for one in numbers if numbers.count(one) > 1), None)
    if twice is not None:
        raise Refused("deputy-part-twice", number=twice)
    if not parts or len(parts) < parts[0].threshold:
        raise Refused("deputy-parts-too-few", have=len(parts), need=parts[0].threshold if parts else THRESHOLD)
    return Secret(sharing.join({one.number: one.share.reveal() for one in parts}))


def check_apart(names: Iterable[str]) -> None:
    """Look at what lies in a folder before parts are written there.

    Raises:
        Refused: deputy-beside-copy.
    """
    if any(one.endswith(COPY_ENDING) for one in names):
        raise Refused("deputy-beside-copy")


def check_no_parts(names: Iterable[str]) -> None:
    """Look at what lies in a folder before a sealed copy is written there.

    Raises:
        Refused: copy-beside-part.
    """
    if any(one.startswith(PART_FILE) for one in names):
        raise Refused("copy-beside-part")


def words_of(part: Part, words: Sequence[str]) -> Secret[str]:
    """A part as fifteen words."""
    number, found = int.from_bytes(part.octets.reveal(), "big"), []
    for _ in range(WORDS):
        number, place = divmod(number, len(words))
        found.append(words[place])
    return Secret(" ".join(reversed(found)))


def from_words(text: str, words: Sequence[str]) -> Part:
    """Read a part from its words, as somebody typed or copied them.

    Commas do not matter; where each word has its number before it, the numbers say the order, for a sheet that is
    copied line by line has the three columns mixed.

    Raises:
        Refused: deputy-words-count, deputy-word-unknown, and as `_part`.
    """
    places = {word: place for place, word in enumerate(words)}
    typed = _in_order([one for raw in text.casefold().split() if (one := raw.strip(".,;:()"))])
    if len(typed) != WORDS:
        raise Refused("deputy-words-count", count=len(typed), wanted=WORDS)
    number = 0
    for place, word in enumerate(typed, 1):
        if word not in places:
            raise Refused("deputy-word-unknown", place=place)
        number = number * len(words) + places[word]
    if number >> 8 * _OCTETS:
        raise Refused("deputy-part-wrong")
    return _part(number.to_bytes(_OCTETS, "big"))


def _in_order(tokens: list[str]) -> list[str]:
    numbered = {int(one): word for one, word in pairwise(tokens) if one.isdecimal() and len(one) < 3}
    if set(numbered) == set(range(1, WORDS + 1)):
        return [numbered[place] for place in sorted(numbered)]
    return [one for one in tokens if not one.isdecimal()]


def code_of(part: Part) -> Secret[str]:
    """A part as the text of a code."""
    return Secret(CODE + part.octets.reveal().hex().upper())


def from_code(text: str) -> Part:
    """Read a part from the text of its code.

    Raises:
        Refused: deputy-code-other, and as `_part`.
    """
    body = text.strip().upper().removeprefix(CODE)
    if body == text.strip().upper() or len(body) != 2 * _OCTETS or set(body) - set("0123456789ABCDEF"):
        raise Refused("deputy-code-other")
    return _part(bytes.fromhex(body))


def read(text: str, words: Sequence[str]) -> Part:
    """Read a part from whichever of the two somebody has.

    Raises:
        Refused: as `from_words` and `from_code`.
    """
    return from_code(text) if text.strip().upper().startswith(CODE) else from_words(text, words)


def _part(octets: bytes) -> Part:
    """Read a part.

    Raises:
        Refused: deputy-part-wrong, deputy-part-newer.
    """
    plain, check = octets[:-_CHECK], octets[-_CHECK:]
    if not hmac.compare_digest(_check(plain), check):
        raise Refused("deputy-part-wrong")
    version, threshold, count, number = plain[0] >> 4, plain[0] & 15, plain[1] >> 4, plain[1] & 15
    if version != _VERSION:
        raise Refused("deputy-part-newer", seen=version, known=_VERSION)
    if not (2 <= threshold <= count and 1 <= number <= count):
        raise Refused("deputy-part-wrong")
    return Part(plain[2:4].hex().upper(), number, threshold, count, Secret(plain[4 : 4 + _SHARE]))


def _check(plain: bytes) -> bytes:
    return hashlib.sha256(_ABOUT + plain).digest()[:_CHECK]
