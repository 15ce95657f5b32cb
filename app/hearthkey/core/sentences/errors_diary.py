"""Sentences about the diary and about what is taken back."""

from __future__ import annotations

REFUSED: dict[str, tuple[str, str]] = {
    "diary-names-nobody": (
        "No entry of the diary names {text}. It names: {known}.",
        "Take one of these, or search for a word with --search.",
    ),
    "diary-file-there": (
        "There is a file at {path} already. It was left as it is.",
        "Give the diary a name of its own.",
    ),
}
