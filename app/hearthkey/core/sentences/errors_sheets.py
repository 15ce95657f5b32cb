"""Sentences about what goes along with a bundle."""

from __future__ import annotations

REFUSED: dict[str, tuple[str, str]] = {
    "sheet-too-long": (
        "The sheet for {title} does not fit on one page in readable type.",
        "Shorten the device’s name or whom to call.",
    ),
    "sheet-too-many-steps": (
        "There are {count} steps, and a sheet takes {limit}.",
        "Shorten the steps of this device kind.",
    ),
    "language-unknown": (
        "No sheet can be written in {text}; there are {known}.",
        "Choose one of them.",
    ),
    "paper-unknown": (
        "No paper is called {text}; there are {known}.",
        "Choose one of them.",
    ),
    "call-gives-away": (
        "That reads like a part of a passphrase, and the sheet goes along with the bundle.",
        "Give a name and a number. The words go on the card, or are said.",
    ),
    "call-too-long": (
        "Whom to call has {length} characters; {limit} fit.",
        "A name and a number are enough.",
    ),
}

UNAVAILABLE: dict[str, tuple[str, str]] = {
    "printer-gone": (
        "The printer {name} does not take the page.",
        "Look whether it is on, or save the page as PDF and print it elsewhere.",
    ),
}
