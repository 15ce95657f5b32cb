"""Sentences about copies that left, and what stands in the way of tidying them."""

from __future__ import annotations

REFUSED: dict[str, tuple[str, str]] = {
    "no-room-for-copy": (
        "There is not enough room at {path}: {free} KB are free, {wanted} KB are wanted. Nothing was written.",
        "Make room, or take another folder or stick.",
    ),
    "copy-unknown": ("There is no copy with the number {number}.", "See the list of copies."),
    "copy-tidied-already": ("The copy {number} is gone already.", "Nothing is left to do."),
    "copy-not-tidied": ("Nobody said that the copy {number} is gone.", "Nothing is left to do."),
    "copy-elsewhere": (
        "Where the copy {number} is now cannot be looked at from here.",
        "Delete it where it is, then say here that it is gone.",
    ),
    "copy-away": (
        "{place} cannot be reached now, so nothing was deleted.",
        "Plug the stick in, or make the folder reachable, then do it again.",
    ),
    "copy-changed": (
        "What lies at {place} is not what was written there, so nothing was deleted.",
        "Look at it yourself; once it is gone, say so here.",
    ),
}
