"""Sentences about sealed copies."""

from __future__ import annotations

REFUSED: dict[str, tuple[str, str]] = {
    "copy-damaged": (
        "This sealed copy is not whole: {part} is damaged or missing. Nothing was changed.",
        "Take another copy; the app keeps the last ten, and sticks keep theirs.",
    ),
    "copy-at-another-gateway": (
        "This copy was brought to {place}, and the gateway is {where} now.",
        "Take a copy that lies at this gateway, in the app’s own folder or on a stick.",
    ),
    "copy-none-at-gateway": (
        "No sealed copy was ever brought to the gateway.",
        "Bring one there: hearthkey seal --gateway.",
    ),
    "copy-not-at-gateway": (
        "The copy {name} is not at {where} any more.",
        "Bring another one there; the copies in the app’s own folder and on sticks are as they were.",
    ),
    "copy-too-large": (
        "This file is larger than a sealed copy can be ({limit} octets).",
        "Choose the file that ends in .sealed.tar.",
    ),
    "copy-newer": (
        "This copy was made by a newer app ({seen}); this one knows {known}.",
        "Install the newer app, then do it again.",
    ),
    "copy-not-marked": (
        "This copy opens, but it was not made by this household’s app: its mark is wrong. Nothing was changed.",
        "Take another copy, and ask who gave you this one.",
    ),
    "copy-key-of-another": (
        "The CA key in this copy belongs to another household than the rest of it.",
        "Take another copy, and ask who gave you this one.",
    ),
    "copy-of-another": (
        "This is a copy of another household ({household}).",
        "Choose one of this household.",
    ),
    "copy-other-past": (
        "The copy’s diary ({entries} entries) does not fit this one ({here}): one was cut off, or is another’s.",
        "Keep this copy. Compare the two diaries before anything else is signed here.",
    ),
    "copy-not-ready": (
        "No sealed copy can be made yet: what it is closed with has not been drawn.",
        "Unlock the household once, then do it again.",
    ),
}
