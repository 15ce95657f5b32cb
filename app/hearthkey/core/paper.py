"""What stands on paper so that hands can type it: numbered lines of base32, each with a checksum of its own.

    07  ABCDE FGHIJ KLMNO PQRST UVWXY Z2345 67ABC DEFGH  IJKLM

    number    2 digits, from 01
    groups    8 of 5 characters: 25 octets in base32 (RFC 4648 section 6, no padding)
    checksum  1 group: CRC-24 (RFC 9580 section 6.1.1) of the number, as one octet, and the 25 octets; and a zero bit

The octets of all lines one after the other are a content in DER (ITU-T X.690), whose own length says how many lines
there are, then the first 8 octets of its SHA-256, then zeros to the end of the last line. A code on the same paper
carries some of the same lines, so that what cannot be read off one can be typed.
"""

from __future__ import annotations

import base64
import binascii
import hashlib
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field

from hearthkey.core.errors import Bug, Refused

OCTETS = 25
"""In a line: 40 characters."""
GROUP = 5
CHARACTERS = OCTETS * 8 // GROUP
CHECKED = CHARACTERS + GROUP
MOST_LINES = 51
"""What fits on one page in type that can be read without a glass, and into three codes."""
DIGEST = 8
"""Octets of SHA-256 behind the content: enough to tell a slip from the real thing; it keeps nobody out."""

_MISTAKEN = str.maketrans("018", "OIB")
"""Digits that base32 does not have, and what whoever typed them saw (RFC 4648 section 3.4 has the same idea)."""
_NOT_ONE_OF_OURS = 20
"""Characters after a number under which a line of text is not meant to be one of these."""

_POLYNOMIAL, _BEGINNING = 0x1864CFB, 0xB704CE


def crc_24(data: bytes) -> int:
    """CRC-24 as in RFC 9580 section 6.1.1: it notices every error within 24 neighbouring bits."""
    value = _BEGINNING
    for octet in data:
        value ^= octet << 16
        for _ in range(8):
            value <<= 1
            if value & 0x1000000:
                value ^= _POLYNOMIAL
    return value


@dataclass(frozen=True)
class PaperLine:
    """One line.

    Args:
        number: from 1.
        octets: `OCTETS` of them.
    """

    number: int
    octets: bytes

    @property
    def groups(self) -> tuple[str, ...]:
        """Its groups of five characters, the checksum last."""
        check = crc_24(bytes([self.number]) + self.octets) << 1
        text = base64.b32encode(self.octets).decode("ascii") + _base32(check)
        return tuple(text[at : at + GROUP] for at in range(0, CHECKED, GROUP))


def _base32(number: int) -> str:
    alphabet = "ABCDEFGHIJKLMNOPQRSTUVWXYZ234567"
    return "".join(alphabet[number >> shift & 31] for shift in range(20, -1, -5))


def lines_of(content: bytes) -> tuple[PaperLine, ...]:
    """Cut a content into lines.

    Raises:
        Refused: paper-too-large.
        Bug: paper-not-der.
    """
    if length_told(content) != len(content):
        raise Bug("paper-not-der", length=len(content))
    whole = content + hashlib.sha256(content).digest()[:DIGEST]
    count = -(-len(whole) // OCTETS)
    if count > MOST_LINES:
        raise Refused("paper-too-large", lines=count, limit=MOST_LINES)
    whole = whole.ljust(count * OCTETS, b"\0")
    return tuple(PaperLine(at + 1, whole[at * OCTETS : (at + 1) * OCTETS]) for at in range(count))


def length_told(beginning: bytes) -> int | None:
    """How long the DER value is that begins like this (X.690 sections 8.1.3.4 and 8.1.3.5); None if it is none."""
    if len(beginning) < 4 or beginning[0] != 0x30:
        return None
    first = beginning[1]
    if first < 0x80:
        return 2 + first
    octets = first - 0x80
    return 2 + octets + int.from_bytes(beginning[2 : 2 + octets], "big") if octets in {1, 2} else None


@dataclass(frozen=True)
class Typed:
    """What typed text came to.

    Args:
        lines: those whose checksum fits.
        bad: numbers of lines whose checksum does not, each once, in order.
    """

    lines: tuple[PaperLine, ...]
    bad: tuple[int, ...]


def read_typed(text: str) -> Typed:
    """Read lines that hands or a PDF reader gave, in any order; lines that do not begin with a number are passed over.

    Small letters are taken for large ones, and the digits 0, 1 and 8, which are never meant, for O, I and B.
    """
    good: dict[int, PaperLine] = {}
    bad: set[int] = set()
    for line in text.splitlines():
        found = _one_line(line)
        if isinstance(found, PaperLine):
            good[found.number] = found
        elif found is not None:
            bad.add(found)
    return Typed(tuple(good[number] for number in sorted(good)), tuple(sorted(bad - good.keys())))


def _one_line(line: str) -> PaperLine | int | None:
    """A line, or the number of one that does not fit, or None for something else."""
    parts = line.replace(".", " ").replace(":", " ").replace("-", " ").split()
    body = "".join(parts[1:]).upper().translate(_MISTAKEN)
    if not parts or not (parts[0].isascii() and parts[0].isdigit() and len(parts[0]) <= 2):
        return None
    if len(body) < _NOT_ONE_OF_OURS:
        return None
    number = int(parts[0])
    try:
        octets = base64.b32decode(body[:CHARACTERS], casefold=False)
    except (binascii.Error, ValueError):
        return number
    if len(body) != CHECKED or not 1 <= number <= MOST_LINES or len(octets) != OCTETS:
        return number
    read = PaperLine(number, octets)
    return read if read.groups[-1] == body[CHARACTERS:] else number


@dataclass(frozen=True)
class Gathered:
    """What has been read of a paper so far, from codes and by hand; nothing that was right is ever asked for again.

    Args:
        lines: octets by number.
        bad: numbers of lines that were typed and do not fit.
    """

    lines: Mapping[int, bytes] = field(default_factory=dict)
    bad: tuple[int, ...] = ()

    def with_lines(self, more: Iterable[PaperLine], bad: Iterable[int] = ()) -> Gathered:
        """With these as well.

        Raises:
            Refused: paper-of-another, where a line is there already and says something else.
        """
        lines = dict(self.lines)
        for one in more:
            if lines.setdefault(one.number, one.octets) != one.octets:
                raise Refused("paper-of-another", line=one.number)
        return Gathered(lines, tuple(sorted((set(self.bad) | set(bad)) - lines.keys())))

    @property
    def count(self) -> int | None:
        """How many lines there are in all; None before the first one has been read."""
        if 1 not in self.lines:
            return None
        told = length_told(self.lines[1])
        return None if told is None else -(-(told + DIGEST) // OCTETS)

    @property
    def missing(self) -> tuple[int, ...]:
        """Numbers of lines that are still wanted, those that do not fit among them.

        Before the first line has been read nobody knows how many there are; then the gaps up to the last one count.
        """
        last = self.count or max([1, *self.lines, *self.bad])
        return tuple(number for number in range(1, last + 1) if number not in self.lines)

    @property
    def whole(self) -> bool:
        """Whether nothing is wanted any more."""
        return self.count is not None and not self.missing

    def content(self) -> bytes:
        """The content, once everything has been read.

        Raises:
            Refused: paper-unread, where nothing was read; paper-incomplete and paper-slips with the lines still wanted;
                paper-of-another, where lines of two papers were read, so that the sum over all does not fit.
        """
        if not self.lines and not self.bad:
            raise Refused("paper-unread")
        if 1 in self.lines and self.count is None:
            raise Refused("paper-of-another", line=1)
        if not self.whole:
            missing, slips = (tuple(map(str, found)) for found in (self.missing, self.bad))
            if slips:
                raise Refused("paper-slips", slips=slips, missing=missing, read=len(self.lines))
            raise Refused("paper-incomplete", missing=missing, read=len(self.lines))
        count = self.count or 0
        whole = b"".join(self.lines[number] for number in range(1, count + 1))
        length = length_told(whole) or 0
        content, rest = whole[:length], whole[length:]
        if rest != hashlib.sha256(content).digest()[:DIGEST].ljust(len(rest), b"\0") or max(self.lines) > count:
            raise Refused("paper-of-another", line=max(self.lines))
        return content
