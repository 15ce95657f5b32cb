"""What is said about the deputy's parts."""

from __future__ import annotations

from hearthkey.core.deputy import SetNote


def made(note: SetNote) -> str:
    """A set was made."""
    return (
        f"{len(note.parts)} parts were made for whoever takes over, set {note.name}: "
        f"any {note.threshold} of them open the sealed copies that are made from now on."
    )


def tried(number: int, name: str) -> str:
    """A part was tried."""
    return f"Part {number} of set {name} was tried, and it is right."


def stop_set(count: int, number: int) -> str:
    """Spare stop lists were given away."""
    lists = "1 stop list" if count == 1 else f"{count} stop lists"
    return f"{lists} beside revocation list {number} were written for a deputy, who can stop devices with them."
