"""Sentences about taking over a household that was made by hand."""

from __future__ import annotations

REFUSED: dict[str, tuple[str, str]] = {
    "folder-missing": ("There is no folder or file {path}.", "Check its name."),
    "found-stops": (
        "This household cannot be taken over: {why}",
        "{do}",
    ),
    "found-key-locked": (
        "The passphrase does not open the CA’s key.",
        "Type the one that was chosen when the CA was made.",
    ),
    "found-cannot-serve": (
        "What this CA signs would be turned away ({seen}). Nothing was changed.",
        "Found a new household; each device needs a new pass.",
    ),
    "name-words-missing": (
        "It takes a person and a device.",
        "hearthkey name-pass SERIAL --person PERSON --device DEVICE says it.",
    ),
    "pass-named-already": (
        "{serial} belongs to {title} already.",
        "A pass is named once.",
    ),
    "pass-not-adopted": (
        "{serial} is no pass that was made elsewhere.",
        "hearthkey name-pass lists those that wait to be named.",
    ),
}

UNAVAILABLE: dict[str, tuple[str, str]] = {
    "folder-closed": ("{path} could not be read ({seen}).", "Check who may read it, then try again."),
}
