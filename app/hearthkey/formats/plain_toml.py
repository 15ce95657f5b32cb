"""The plain part of TOML 1.0 that bundle files keep to, so that every key has one line and reading is cheap.

One key to a line, bare keys, each table named once, no table within a table, arrays of strings on one line;
only multi-line strings go on, and those hold no backslash. Whatever is so written is TOML 1.0, and tomllib
reads the values; this module only finds the lines, and refuses what would make reading slow or deep.
"""

from __future__ import annotations

import re
import tomllib
from collections.abc import Mapping

from hearthkey.core.errors import Refused

LONGEST_LINE = 4096
"""Characters, in lines outside multi-line strings."""
MOST_KEYS = 64

_TABLE = re.compile(r"\[([a-z_]{1,40})\][ \t]*(?:#.*)?")
_KEY = re.compile(r"([a-z_]{1,40})[ \t]*=[ \t]*(.*)")
_SKIPPED = re.compile(r"[ \t]*(?:#.*)?")
_TEXT = re.compile(r'"(?:[^"\\]|\\.)*"|\'[^\']*\'')
_AT_LINE = re.compile(r"\(at line ([0-9]+),")

# Control characters, line separators, and what turns the direction of the text around it (UAX #9):
# a file that shows something other than what it says is not read at all.
_HIDDEN = re.compile(
    "[\x00-\x08\x0b\x0c\x0e-\x1f\x7f-\x9f\u061c\u200e\u200f\u2028\u2029\u202a-\u202e\u2066-\u2069\ufeff]|\r(?!\n)"
)

Lines = Mapping[tuple[str, str], int]
"""Line of each key, by table ("" at the top) and key; a table's own line stands under the key ""."""


def as_text(data: bytes) -> str:
    """Decode UTF-8, with or without a byte order mark.

    Raises:
        Refused: bundle-not-text, bundle-hidden-character; both with `line`.
    """
    try:
        text = data.decode("utf-8-sig")
    except UnicodeDecodeError as error:
        raise Refused("bundle-not-text", line=data.count(b"\n", 0, error.start) + 1) from error
    hidden = hidden_character(text)
    if hidden is not None:
        line = text.count("\n", 0, hidden) + 1
        raise Refused("bundle-hidden-character", line=line, character=f"U+{ord(text[hidden]):04X}")
    return text


def hidden_character(text: str) -> int | None:
    """Find the first character that shows nothing or turns the text around: its place from 0, or None."""
    found = _HIDDEN.search(text)
    return None if found is None else found.start()


def lines_of(text: str) -> Lines:
    """Find the line of every key, from 1.

    Raises:
        Refused: bundle-line-unreadable with `line`, for whatever is outside the plain part of TOML.
    """
    lines: dict[tuple[str, str], int] = {("", ""): 1}
    table, quote, number = "", None, 0
    for number, raw in enumerate(text.split("\n"), 1):
        line = raw.removesuffix("\r")
        if quote is not None:
            if "\\" in line:
                raise Refused("bundle-line-unreadable", line=number)
            quote = None if quote in line else quote
            continue
        if len(line) > LONGEST_LINE:
            raise Refused("bundle-line-unreadable", line=number)
        if _SKIPPED.fullmatch(line):
            continue
        header = _TABLE.fullmatch(line)
        key = _KEY.fullmatch(line)
        if header is not None:
            table = header[1]
            place = (table, "")
        elif key is not None:
            place = (table, key[1])
            quote = _opened_quote(key[2], number)
        else:
            raise Refused("bundle-line-unreadable", line=number)
        if place in lines or len(lines) > MOST_KEYS:
            raise Refused("bundle-line-unreadable", line=number)
        lines[place] = number
    if quote is not None:
        raise Refused("bundle-line-unreadable", line=number)
    return lines


def values_of(text: str) -> dict[str, object]:
    """Read the values of a text that `lines_of` has let pass.

    Raises:
        Refused: bundle-line-unreadable with `line`.
    """
    try:
        return tomllib.loads(text)
    except ValueError as error:
        where = _AT_LINE.search(str(error))
        line = int(where[1]) if where is not None else text.count("\n") + 1
        raise Refused("bundle-line-unreadable", line=line) from error


def _opened_quote(value: str, number: int) -> str | None:
    """Tell which multi-line quote a value leaves open; refuse a table or an array within a value."""
    for quote in ('"""', "'''"):
        if value.startswith(quote):
            if "\\" in value:
                raise Refused("bundle-line-unreadable", line=number)
            return None if quote in value[3:] else quote
    bare = _TEXT.sub("", value).split("#", 1)[0]
    if "{" in bare or bare.count("[") > 1:
        raise Refused("bundle-line-unreadable", line=number)
    return None
