"""What a sheet of paper is made of, and the same as plain text for a screen."""

from __future__ import annotations

import re
import textwrap
from collections.abc import Callable, Iterable
from dataclasses import dataclass, replace

WIDTH = 78
"""Columns of the plain text."""
_LABEL = 22
_STEP = 2
_CLAUSE = re.compile(r"(?<=\bRFC) (?=\d)|(?<=\d) (?=sections? \d)|(?<=\bsection) (?=\d)|(?<=\bsections) (?=\d)")


@dataclass(frozen=True)
class Title:
    """What the sheet is called; once, at the top."""

    text: str


@dataclass(frozen=True)
class Heading:
    """Begins a section."""

    text: str


@dataclass(frozen=True)
class Row:
    """One thing to know.

    Args:
        label: what it is.
        values: one or more lines, exactly as they are to be typed or read.
        why: a sentence or two.
        source: documents and clauses; empty for none.
    """

    label: str
    values: tuple[str, ...]
    why: str = ""
    source: str = ""

    @property
    def told(self) -> str:
        """Reason and source in one line."""
        return " ".join(part for part in (self.why, f"[{self.source}]" if self.source else "") if part)


@dataclass(frozen=True)
class Note:
    """Something to read before the rest.

    Args:
        text: one or more sentences.
        urgent: whether it is to be seen first.
    """

    text: str
    urgent: bool = False


Block = Title | Heading | Row | Note


def reworded(blocks: Iterable[Block], say: Callable[[str], str]) -> tuple[Block, ...]:
    """The same sheet with every text but the sources said in another way, for instance in another language."""
    return tuple(_reworded(one, say) for one in blocks)


def _reworded(block: Block, say: Callable[[str], str]) -> Block:
    if isinstance(block, Row):
        return Row(say(block.label), tuple(map(say, block.values)), say(block.why), block.source)
    return replace(block, text=say(block.text))


def text(blocks: Iterable[Block]) -> str:
    """Write a sheet as text: at most 78 columns, LF, an LF at the end."""
    lines: list[str] = []
    for block in blocks:
        if isinstance(block, Row):
            lines += _row(block)
        elif isinstance(block, Note):
            lines += ["", *_wrapped(("! " if block.urgent else "") + block.text), ""]
        else:
            found = _wrapped(block.text)
            lines += ["", *found, ("=" if isinstance(block, Title) else "-") * max(map(len, found))]
    kept = [line for place, line in enumerate(lines) if line or (place and lines[place - 1])]
    return "\n".join(kept).strip("\n") + "\n"


def _row(row: Row) -> list[str]:
    indent = " " * (_LABEL + _STEP)
    inner = indent + " " * _STEP
    left = textwrap.wrap(row.label, _LABEL) or [""]
    right = [line for value in row.values for line in _wrapped(value, later=" " * _STEP, width=WIDTH - len(indent))]
    height = max(len(left), len(right))
    left += [""] * (height - len(left))
    right += [""] * (height - len(right))
    lines = [f"{one:<{_LABEL}}{' ' * _STEP}{other}".rstrip() for one, other in zip(left, right, strict=True)]
    return [*lines, *(_wrapped(row.told, first=inner, later=inner) if row.told else [])]


def unbroken(told: str) -> str:
    """Tie a document and its section together with no-break spaces (U+00A0), so that no line ends between."""
    return _CLAUSE.sub("\u00a0", told)


def _wrapped(told: str, *, first: str = "", later: str = "", width: int = WIDTH) -> list[str]:
    """Wrap at blanks; only a word that fills a whole line is cut, as a host name of 253 characters is."""
    lines = textwrap.wrap(unbroken(told), width, initial_indent=first, subsequent_indent=later, break_on_hyphens=False)
    return [line.replace("\u00a0", " ") for line in lines]
