"""What a program at the other end said, as a fact that can be shown."""

from __future__ import annotations

_LONGEST = 300


def shown(said: bytes) -> str:
    """The first 300 characters, without control characters or any other that cannot be seen (Unicode category C, Z)."""
    text = "".join(one if one.isprintable() else " " for one in said.decode("utf-8", "replace"))
    return " ".join(text.split())[:_LONGEST]


def line_with(said: bytes, part: str) -> str:
    """The line that says it, else everything."""
    for line in said.splitlines():
        if part.encode() in line:
            return shown(line)
    return shown(said)
