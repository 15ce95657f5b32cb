"""One step of setting up a device: what to say, and what whoever holds it sees then."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True)
class Step:
    """A step as text in one language; labels of the device's own system stand in that language's quotation marks.

    Args:
        do: what to do, said to whoever holds the device; one or two short sentences.
        sees: what the device shows once it is done; empty where that is plain.
    """

    do: str
    sees: str = ""
