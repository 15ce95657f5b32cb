"""The lines of a paper as QR codes: frames of text, a few to a page, and back.

A frame, all of it in the alphanumeric set of ISO/IEC 18004:

    HKP1/<first>/<check>/<body>

    first    2 digits: the number of the first line in it
    check    CRC-32 (ISO 3309, as in zlib), 8 hex digits, upper case, of the frame without `<check>/`
    body     base45 (RFC 9285) of the octets of up to 17 lines

The codes are of level Q, so that a crease or a stain does not matter, and of version 20 at most.
"""

from __future__ import annotations

import re
import zlib
from collections.abc import Iterable, Sequence
from itertools import pairwise
from typing import Literal

from qrcode.constants import ERROR_CORRECT_Q
from qrcode.main import QRCode
from qrcode.util import QRData

from hearthkey.core.errors import Bug, Refused
from hearthkey.core.paper import MOST_LINES, OCTETS, PaperLine
from hearthkey.formats import base45
from hearthkey.formats.codes import LARGEST_VERSION, QUIET_ZONE, Matrix

MOST_IN_ONE = 17
"""Lines in one frame: 425 octets, 638 characters, which is version 20 at level Q (ISO/IEC 18004 table 7)."""

_ALPHANUMERIC: Literal[2] = 2
"""Mode indicator 0010 (ISO/IEC 18004 table 2); the package's own name for it is not typed narrowly enough."""
_FRAME = re.compile(r"(HKP1/([0-9]{2})/)([0-9A-F]{8})/([0-9A-Z $%*+\-./:]{1,640})")
_NEWER = re.compile(r"HKP[2-9][0-9]{0,3}/")


def frames(lines: Sequence[PaperLine]) -> tuple[str, ...]:
    """Cut lines into frames for one code each, about equally long."""
    count = -(-len(lines) // MOST_IN_ONE)
    cuts = [len(lines) * number // count for number in range(count + 1)]
    made = []
    for start, stop in pairwise(cuts):
        head = f"HKP1/{lines[start].number:02}/"
        body = base45.encode(b"".join(one.octets for one in lines[start:stop]))
        made.append(f"{head}{_check(head, body)}/{body}")
    return tuple(made)


def matrix(frame: str) -> Matrix:
    """Lay out the modules of a frame's QR code: level Q, at most version 20, quiet zone included.

    Raises:
        Bug: frame-unfit, for a text that is not a frame of ours.
    """
    if not _FRAME.fullmatch(frame):
        raise Bug("frame-unfit", length=len(frame))
    code = QRCode(error_correction=ERROR_CORRECT_Q, border=QUIET_ZONE)
    code.add_data(QRData(frame.encode("ascii"), mode=_ALPHANUMERIC))
    code.make(fit=True)
    if code.version > LARGEST_VERSION:
        raise Bug("frame-unfit", length=len(frame))
    return tuple(tuple(bool(module) for module in row) for row in code.get_matrix())


def lines_in(texts: Iterable[str]) -> tuple[PaperLine, ...]:
    """The lines in what was read off codes, in any order, repeats allowed; other codes are passed over.

    A frame that is damaged is passed over too: its lines are then missing, and are told so by their numbers.

    Raises:
        Refused: paper-newer.
    """
    found: dict[int, PaperLine] = {}
    for text in texts:
        if _NEWER.match(text):
            raise Refused("paper-newer", seen=text[3:4], known=1)
        for one in _lines(text.rstrip("\r\n")):
            found[one.number] = one
    return tuple(found[number] for number in sorted(found))


def _lines(frame: str) -> Iterable[PaperLine]:
    read = _FRAME.fullmatch(frame)
    if read is None:
        return
    head, first, check, body = read.groups()
    if check != _check(head, body):
        return
    octets = base45.decode(body)
    for at in range(0, len(octets), OCTETS):
        number = int(first) + at // OCTETS
        if len(octets) - at >= OCTETS and 1 <= number <= MOST_LINES:
            yield PaperLine(number, octets[at : at + OCTETS])


def _check(head: str, body: str) -> str:
    return f"{zlib.crc32((head + body).encode('ascii')):08X}"
