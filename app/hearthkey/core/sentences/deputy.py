"""What is said about the deputy's parts."""

from __future__ import annotations

from hearthkey.core.deputy import SetNote
from hearthkey.core.phrases import Phrase


def made(note: SetNote) -> Phrase:
    """A set was made."""
    return Phrase(
        "{count} parts were made for whoever takes over, set {name}: any {least} of them open the sealed copies that "
        "are made from now on.",
        {"count": len(note.parts), "name": note.name, "least": note.threshold},
    )


def tried(number: int, name: str) -> Phrase:
    """A part was tried."""
    return Phrase("Part {number} of set {name} was tried, and it is right.", {"number": number, "name": name})


def stop_set(count: int, number: int) -> Phrase:
    """Spare stop lists were given away."""
    facts = {"count": count, "number": number}
    if count == 1:
        return Phrase(
            "1 stop list beside revocation list {number} was written for a deputy, who can stop devices with it.", facts
        )
    return Phrase(
        "{count} stop lists beside revocation list {number} were written for a deputy, who can stop devices with them.",
        facts,
    )
