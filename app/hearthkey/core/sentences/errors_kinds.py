"""Sentences about the files of device kinds."""

from __future__ import annotations

_START = "hearthkey kinds --start NAME FILE writes one that is whole, to be corrected."

REFUSED: dict[str, tuple[str, str]] = {
    # reading one
    "kind-file-too-large": ("{file} is larger than {limit} octets.", "Take a file of one device kind. " + _START),
    "kind-file-unreadable": (
        "{file} cannot be read as TOML: {seen}.",
        "Look at its quotes and brackets there. " + _START,
    ),
    "kind-file-other": (
        "{file} does not say that it describes a device kind.",
        'Let its first line be format = "{wanted}". ' + _START,
    ),
    "kind-file-newer": (
        "{file} is of version {version}; this app reads {known}.",
        "Use a newer hearthkey, or write the file anew for this one.",
    ),
    "kind-file-missing": ("{file} does not say {place}.", "Add it; the page device-kind-1.md tells what it means."),
    "kind-file-unknown": ("{file} says {place}, which nobody obeys.", "Take it out, or use one of {known}."),
    "kind-file-type": ("{place} in {file} is not written as it has to be.", "Write {wanted}."),
    "kind-file-language": ("{place} in {file} is missing.", "Say it in every language: {known}."),
    "kind-file-length": ("{place} in {file} is empty or too long.", "Use 1 to {limit} characters."),
    "kind-file-hidden": (
        "{place} in {file} holds a line end, a tab, or a character that cannot be seen.",
        "Type the text anew on one line rather than pasting it.",
    ),
    "kind-file-choice": ('{place} in {file} is "{text}", which is not known.', "Choose from {known}."),
    "kind-file-count": (
        "{file} has {count} entries under {place}.",
        "Let there be at least one and at most {limit}.",
    ),
    "kind-file-name": (
        '"{text}" in {file} will not do as a kind’s name.',
        "Use small letters without accents, figures, and hyphens between them.",
    ),
    "kind-file-form-twice": ("{file} names the form {text} twice.", "Name it once, in its order."),
    "kind-file-field-twice": ("{place} in {file} gives {text} a second label.", "Keep the one that the device shows."),
    "kind-file-steps-missing": (
        "{file} says that the device takes {text}, but not what to do with it there.",
        "Write at least one [[steps.{text}]], or take {text} out of forms.",
    ),
    "kind-file-steps-extra": (
        "{file} has steps for {text}, which is not among its forms.",
        "Add {text} to forms, or take [[steps.{text}]] out.",
    ),
    "kind-file-called": (
        "{file} describes {name}, so it is not clear which of the two it is about.",
        "Call the file {name}.toml.",
    ),
    "kind-file-closed": ("{file} cannot be opened ({seen}).", "See to its permissions, or take it away."),
    # keeping one
    "kind-not-own": (
        "{name} is not one of your own kinds, so there is nothing to take away.",
        "hearthkey kinds marks your own.",
    ),
    "kind-file-there": ("{path} is there already.", "Choose another name, so that nothing of yours is lost."),
}
