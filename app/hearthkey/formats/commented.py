"""Writes settings files in which every line says what it does and why, because none can be written without."""

from __future__ import annotations

import textwrap
from collections.abc import Iterable, Sequence
from dataclasses import dataclass

WIDTH = 100
"""Columns that a comment fills at most, so that it can be read in a terminal."""
_STEP = "    "


@dataclass(frozen=True)
class Note:
    """Something to know where no line of settings stands.

    Args:
        told: one or more sentences.
        text: a line that somebody may want, written as a comment; empty for none.
    """

    told: str
    text: str = ""


@dataclass(frozen=True)
class Line:
    """One line of settings.

    Args:
        told: what it does and why; stands above it.
        text: the line.
    """

    told: str
    text: str


@dataclass(frozen=True)
class Block:
    """Lines in braces.

    Args:
        told: what they are together.
        head: what stands before the brace.
        parts: in order.
    """

    told: str
    head: str
    parts: Sequence[Part]


Part = Note | Line | Block


def write(parts: Iterable[Part]) -> str:
    """Write parts as text: comments after ``#``, LF, an LF at the end."""
    return "\n".join(_lines(parts, "")).strip("\n") + "\n"


def _lines(parts: Iterable[Part], indent: str) -> list[str]:
    lines: list[str] = []
    for part in parts:
        if isinstance(part, Note | Block) and lines:
            lines.append("")
        mark = indent + "# "
        lines += textwrap.wrap(
            part.told,
            WIDTH,
            initial_indent=mark,
            subsequent_indent=mark,
            break_long_words=False,
            break_on_hyphens=False,
        )
        if isinstance(part, Line):
            lines.append(indent + part.text)
        elif isinstance(part, Note):
            lines += [mark + part.text, ""] if part.text else [""]
        else:
            lines += [f"{indent}{part.head} {{", *_lines(part.parts, indent + _STEP), f"{indent}}}  # {part.head}"]
    return [line for place, line in enumerate(lines) if line or (place and lines[place - 1])]
