"""Sentences about the household's key on paper."""

from __future__ import annotations

REFUSED: dict[str, tuple[str, str]] = {
    "paper-too-large": (
        "The household’s settings are too long for one sheet: {lines} lines, and there is room for {limit}.",
        "Name fewer subnets and DNS servers, or keep a sealed copy instead of the paper.",
    ),
    "paper-key-unfit": (
        "The CA key in the keyring is written in a way that paper cannot carry ({length} characters).",
        "Keep a sealed copy instead of the paper.",
    ),
    "paper-unread": (
        "Nothing of a household’s paper could be read there.",
        "Scan the page with the codes again, straight, at 200 dots to an inch or more; or type the lines.",
    ),
    "paper-incomplete": (
        "Not all of the paper could be read. Lines read: {read}. Lines still wanted: {missing}.",
        "Scan the page once more, or type only these lines into a text file and give it along with the rest.",
    ),
    "paper-slips": (
        "These lines were typed with a slip: {slips}. Every other line stays right. Lines still wanted: {missing}.",
        "Compare these with the paper, letter by letter, and do it again.",
    ),
    "paper-of-another": (
        "Line {line} does not belong with the others: there are two papers among them.",
        "Give the pages of one paper only, the one with the newest day.",
    ),
    "paper-unreadable": (
        "What stands on this paper is whole, but it is not what a household’s paper says.",
        "Take another paper or a sealed copy, and ask who gave you this one.",
    ),
    "paper-newer": (
        "This paper was made by a newer app ({seen}); this one knows {known}.",
        "Install the newer app, then do it again.",
    ),
    "paper-key-of-another": (
        "The CA key on this paper belongs to another household than the rest of it. Nothing was changed.",
        "Take another paper, and ask who gave you this one.",
    ),
    "paper-of-other-house": (
        "This is the paper of another household ({household}).",
        "Choose the one of this household.",
    ),
    "paper-before-succession": (
        "This paper of {made} was made before the CA’s succession of {since}: its key is the old one.",
        "Print the paper anew, then destroy this one.",
    ),
    "paper-of-dropped-ca": (
        "The key on this paper of {made} is of a CA that was begun here and taken back: no device trusts it.",
        "Print the paper anew, then destroy this one.",
    ),
    "paper-file-unknown": (
        "{name} is neither a picture (PNG or JPEG) nor plain text.",
        "Scan the page as PNG or JPEG, or type its lines into a text file.",
    ),
}
