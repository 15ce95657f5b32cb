"""What stands between the householder and the CA key: what it means, what works meanwhile, the way on."""

from __future__ import annotations

from typing import NamedTuple

from hearthkey.core.sentences.sentence import Sentence

_DOORS = {
    "no-household": "Nobody has a key yet. Start with `hearthkey found`.",
    "ready": "The CA key is there, encrypted; the passphrase opens it.",
    "keyring-empty": "The keyring answers but has no CA key of this household. Bring the key text back from a copy; do "
    "not found it anew, or every device needs a new bundle.",
    "keyring-locked": "The keyring is closed. Nothing is lost: open it (log in to the desktop, or unlock it).",
    "keyring-silent": "The keyring does not answer. Nothing is lost: look for a question it may be asking on another "
    "screen, or log out and in.",
    "keyring-absent": "There is no keyring that can be used here. Nothing is lost: start the app in the desktop where "
    "the household was founded.",
}


def say(door: str) -> str:
    """The sentence for a state of `services.opening.Door`."""
    return _DOORS[door]


class Shut(NamedTuple):
    """Something is shut, in the words of the window.

    Args:
        headline: what it is.
        means: what it means for the family.
        way: the one way on.
    """

    headline: str
    means: str
    way: str


_STILL = "Everyone who could get in still can."

SHUT = {
    "keyring-empty": Shut(
        "The keyring has no CA key of this household.",
        f"{_STILL} Nothing new can be signed until the key text is back.",
        "Bring the key text back from a copy of the keyring. Founded anew, every device would need a new bundle.",
    ),
    "keyring-locked": Shut(
        "The keyring of this desktop is locked. Nothing is lost.",
        f"{_STILL} The CA key is needed for new passes and new lists only.",
        "Unlock it in the desktop’s password settings, or log out and in.",
    ),
    "keyring-silent": Shut(
        "The keyring of this desktop does not answer. Nothing is lost.",
        f"{_STILL} The CA key is needed for new passes and new lists only.",
        "Look for a question that it may be asking on another screen; else log out and in.",
    ),
    "keyring-absent": Shut(
        "There is no keyring here that can be used. Nothing is lost.",
        f"{_STILL} The CA key lies in the keyring under which the household was founded.",
        "Open the app in that desktop.",
    ),
    "only-looking": Shut(
        "This window only looks.",
        "Another copy of the app has the household open, or its folder cannot be written to. Nothing is lost.",
        "Close the other copy, or see to the folder’s permissions.",
    ),
    "diary-broken": Shut(
        "The diary does not fit together from entry {number} on.",
        "Somebody or something changed it after it was written, or cut its end off. Who gets in is not touched by "
        "that.",
        "Compare it with what you remember. The newest sealed copy still has what stood there. If somebody else has "
        "used this computer, stop what you do not know.",
    ),
    "register-damaged": Shut(
        "The register is damaged, so nothing can be shown.",
        f"{_STILL} The gateway does not need this computer.",
        "Leave the folder as it is, make a copy of it, and bring back the newest copy that works.",
    ),
    "register-unreadable": Shut(
        "The register cannot be read, so nothing can be shown.",
        f"{_STILL} The gateway does not need this computer.",
        "See to the disk and the folder’s permissions.",
    ),
    "register-newer": Shut(
        "The register was written by a newer app.",
        f"{_STILL} Nothing was changed.",
        "Use the newer app.",
    ),
}
"""By a state of `services.opening.Door`, a code of `Unavailable`, or one of the window's own two."""


def shut(state: str, **facts: object) -> tuple[Sentence, Sentence, Sentence] | None:
    """Headline, meaning and way on of something that is shut; None for what has no page of its own."""
    told = SHUT.get(state)
    if told is None:
        return None
    headline, means, way = (Sentence(text, facts) for text in told)
    return headline, means, way
