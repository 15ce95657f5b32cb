"""A bundle as a handful of QR codes: numbered, checked frames of text, their modules, and back.

A frame, all of it in the alphanumeric set of ISO/IEC 18004:

    HK1/<bundle>/<index>/<count>/<check>/<body>

    bundle   first 8 hex digits, upper case, of the SHA-256 of the compressed bytes
    index    2 digits, from 01
    count    2 digits, the same in each frame of a bundle
    check    CRC-32 (ISO 3309, as in zlib), 8 hex digits, upper case, of the frame without `<check>/`
    body     a piece of the base45 text (RFC 9285) of the compressed bytes

The bytes are compressed by zlib (RFC 1950). Pieces are equally long, give or take one character.
"""

from __future__ import annotations

import hashlib
import re
import zlib
from collections import Counter
from collections.abc import Iterable
from dataclasses import dataclass
from itertools import pairwise
from typing import Literal

from qrcode.constants import ERROR_CORRECT_M
from qrcode.main import QRCode
from qrcode.util import QRData

from hearthkey.core.errors import Bug, Refused
from hearthkey.formats import base45

Matrix = tuple[tuple[bool, ...], ...]
"""Modules by rows, True is dark; the quiet zone is part of it."""

LARGEST_VERSION = 20
"""97 modules a side: a phone still reads it from a laptop's screen."""
CAPACITY = 970
"""Alphanumeric characters in version 20, level M (ISO/IEC 18004 table 7)."""
QUIET_ZONE = 4
"""Light modules on every side (ISO/IEC 18004 section 6.3.8)."""
MOST_FRAMES = 99
LARGEST = 1 << 20
"""Octets, before compression and after."""

_ALPHANUMERIC: Literal[2] = 2
"""Mode indicator 0010 (ISO/IEC 18004 table 2); the package's own name for it is not typed narrowly enough."""
_HEAD = len("HK1/00000000/00/00/00000000/")
_FRAME = re.compile(r"(HK1/([0-9A-F]{8})/([0-9]{2})/([0-9]{2})/)([0-9A-F]{8})/([0-9A-Z $%*+\-./:]{1,942})")
_NEWER = re.compile(r"HK[2-9][0-9]{0,3}/")


@dataclass(frozen=True)
class _Frame:
    place: str
    bundle: str
    index: int
    count: int
    body: str


def frames(data: bytes) -> tuple[str, ...]:
    """Cut data into frames for one code each.

    Raises:
        Refused: codes-too-large, codes-too-many.
    """
    if len(data) > LARGEST:
        raise Refused("codes-too-large", size=len(data), limit=LARGEST)
    packed = zlib.compress(data, 9)
    bundle = _name_of(packed)
    text = base45.encode(packed)
    count = -(-len(text) // (CAPACITY - _HEAD))
    if count > MOST_FRAMES:
        raise Refused("codes-too-many", count=count, limit=MOST_FRAMES)
    cuts = [len(text) * number // count for number in range(count + 1)]
    return tuple(
        _written(bundle, index, count, text[start:stop]) for index, (start, stop) in enumerate(pairwise(cuts), 1)
    )


def matrix(frame: str) -> Matrix:
    """Lay out the modules of a frame's QR code: level M, at most version 20, quiet zone included.

    Raises:
        Bug: frame-unfit, for a text that is not a frame of ours.
    """
    if not _FRAME.fullmatch(frame) or len(frame) > CAPACITY:
        raise Bug("frame-unfit", length=len(frame))
    code = QRCode(error_correction=ERROR_CORRECT_M, border=QUIET_ZONE)
    code.add_data(QRData(frame.encode("ascii"), mode=_ALPHANUMERIC))
    code.make(fit=True)
    if code.version > LARGEST_VERSION:
        raise Bug("frame-unfit", length=len(frame))
    return tuple(tuple(bool(module) for module in row) for row in code.get_matrix())


def join(texts: Iterable[str]) -> bytes:
    """Put a bundle together again from what was read off its codes, in any order, repeats allowed.

    Args:
        texts: one for each code read. A line end that a reader appended is taken off; spaces count.

    Raises:
        Refused: codes-none; codes-not-ours, codes-damaged (with `frames`, the places in `texts`, from 1);
            codes-newer; codes-foreign (`frames` as before, `bundles` the names met); codes-missing
            (`missing` the indexes, `count`); codes-too-large.
    """
    found = _sorted_out(list(texts))
    own = _one_bundle(found)
    bodies: dict[int, str] = {}
    for frame in own:
        if frame.count != own[0].count or bodies.setdefault(frame.index, frame.body) != frame.body:
            raise Refused("codes-damaged", frames=(frame.place,))
    count = own[0].count
    missing = tuple(str(index) for index in range(1, count + 1) if index not in bodies)
    if missing:
        raise Refused("codes-missing", missing=missing, count=count)
    packed = base45.decode("".join(bodies[index] for index in range(1, count + 1)))
    if _name_of(packed) != own[0].bundle:
        raise Refused("codes-damaged", frames=())
    return _inflated(packed)


def _name_of(packed: bytes) -> str:
    return hashlib.sha256(packed).hexdigest()[:8].upper()


def _written(bundle: str, index: int, count: int, body: str) -> str:
    head = f"HK1/{bundle}/{index:02}/{count:02}/"
    return f"{head}{_check(head, body)}/{body}"


def _check(head: str, body: str) -> str:
    return f"{zlib.crc32((head + body).encode('ascii')):08X}"


def _sorted_out(texts: list[str]) -> list[_Frame]:
    """Read each text as a frame; name those that are none or whose check does not fit."""
    found: list[_Frame] = []
    strange: list[str] = []
    damaged: list[str] = []
    for number, text in enumerate(texts, 1):
        line = text.rstrip("\r\n")
        read = _FRAME.fullmatch(line)
        if read is None:
            if _NEWER.match(line):
                raise Refused("codes-newer", frames=(str(number),))
            (damaged if line.startswith("HK1/") else strange).append(str(number))
            continue
        head, bundle, index, count, check, body = read.groups()
        if check != _check(head, body) or not 1 <= int(index) <= int(count):
            damaged.append(str(number))
        else:
            found.append(_Frame(str(number), bundle, int(index), int(count), body))
    if strange:
        raise Refused("codes-not-ours", frames=tuple(strange))
    if damaged:
        raise Refused("codes-damaged", frames=tuple(damaged))
    if not found:
        raise Refused("codes-none")
    return found


def _one_bundle(found: list[_Frame]) -> list[_Frame]:
    """Name frames of another bundle: those that are not of the bundle most frames are of."""
    tally = Counter(frame.bundle for frame in found)
    main = tally.most_common(1)[0][0]
    foreign = tuple(frame.place for frame in found if frame.bundle != main)
    if foreign:
        raise Refused("codes-foreign", frames=foreign, bundles=tuple(sorted(tally)))
    return found


def _inflated(packed: bytes) -> bytes:
    """Decompress, but never more than `LARGEST` octets."""
    stream = zlib.decompressobj()
    try:
        data = stream.decompress(packed, LARGEST + 1)
    except zlib.error as error:
        raise Refused("codes-damaged", frames=()) from error
    if len(data) > LARGEST:
        raise Refused("codes-too-large", size=len(data), limit=LARGEST)
    if not stream.eof or stream.unused_data:
        raise Refused("codes-damaged", frames=())
    return data
