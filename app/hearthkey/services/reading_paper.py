"""Reads the household's paper, from pictures and from typed text, as often as it takes."""

from __future__ import annotations

from collections.abc import Callable

from hearthkey.core import paper
from hearthkey.core.errors import Refused
from hearthkey.core.paper import Gathered
from hearthkey.formats import paper_frames

ReadCodes = Callable[[bytes], tuple[str, ...]]
"""The texts of all codes on a picture."""

LARGEST = 20 << 20
"""Octets of one file."""

_PICTURES = (b"\x89PNG\r\n\x1a\n", b"\xff\xd8\xff")


def gathered(data: bytes, name: str, so_far: Gathered, read_codes: ReadCodes) -> Gathered:
    """With what is in one more file.

    Args:
        data: a PNG, a JPEG, or plain text with lines of the paper.
        name: how the file is called, for the sentence.

    Raises:
        Refused: paper-file-unknown, paper-of-another, paper-newer, picture-too-large, picture-unreadable.
    """
    if data.startswith(_PICTURES):
        return so_far.with_lines(paper_frames.lines_in(read_codes(data)))
    try:
        text = data.decode("utf-8-sig")
    except UnicodeDecodeError:
        raise Refused("paper-file-unknown", name=name) from None
    if "\0" in text or text.startswith("%PDF-"):
        raise Refused("paper-file-unknown", name=name)
    return typed(text, so_far)


def typed(text: str, so_far: Gathered) -> Gathered:
    """With the lines that hands typed.

    Raises:
        Refused: paper-of-another.
    """
    found = paper.read_typed(text)
    return so_far.with_lines(found.lines, found.bad)
