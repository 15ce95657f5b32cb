"""Sentences about the deputy's parts."""

from __future__ import annotations

_TYPE_AGAIN = "Compare each word with the paper, in order, and type them once more. Nothing was changed."

REFUSED: dict[str, tuple[str, str]] = {
    "deputy-words-count": ("A part has {wanted} words; these are {count}.", _TYPE_AGAIN),
    "deputy-word-unknown": ("Word {place} is not one of those that parts are made of.", _TYPE_AGAIN),
    "deputy-part-wrong": (
        "One of the words is another one than on the paper, or two have changed places.",
        _TYPE_AGAIN,
    ),
    "deputy-part-newer": (
        "This part was made by a newer app (version {seen}); this one knows {known}.",
        "Install the newer app, then do it again.",
    ),
    "deputy-code-other": (
        "No code of a part is on this.",
        "Take a picture of the one square code on the part’s sheet, or type its words.",
    ),
    "deputy-parts-mixed": (
        "These parts belong to different sets ({sets}): together they open nothing.",
        "Look for parts that have the same set printed on them.",
    ),
    "deputy-part-twice": (
        "Part {number} was given twice, and twice the same is one.",
        "Ask somebody who has a part with another number.",
    ),
    "deputy-parts-too-few": (
        "{have} of the {need} parts that it takes: with fewer nobody learns anything, and nothing opens.",
        "Ask somebody who has another part of the same set.",
    ),
    "deputy-part-of-another": (
        "This part is whole, but it is of set {seen}, and no such set was made here.",
        "Look for a part with set {known} printed on it.",
    ),
    "deputy-part-old": (
        "This part is whole, but of the older set {seen}. Copies that are made now go by set {known}.",
        "Give its holder the part of the new set, and destroy this one.",
    ),
    "deputy-part-unlike": (
        "This part says that it is part {number} of set {seen}, but it is not the one that was made here.",
        "Ask where the paper came from, and make a new set.",
    ),
    "deputy-no-set": ("No parts were made for a deputy yet.", "Make them first: hearthkey deputy make."),
    "deputy-copy-without": (
        "This sealed copy was made before there were parts, so parts do not open it.",
        "Take a newer copy, or the household’s passphrase.",
    ),
    "deputy-copy-of-set": (
        "This sealed copy goes by set {wanted}; these parts are of set {seen}.",
        "Take a copy that was made while set {seen} was in use, or parts of set {wanted}.",
    ),
    "deputy-lock-damaged": (
        "What the parts open in this copy is damaged. Nothing was changed.",
        "Take another copy; the app keeps the last ten, and sticks keep theirs.",
    ),
    "deputy-own-passphrase": (
        "Sealed copies have a passphrase of their own, and this is not it.",
        "Give it along, so that the parts can stand for both.",
    ),
    "deputy-beside-copy": (
        "A sealed copy lies in this folder. Parts beside a copy would let anybody in who finds the folder.",
        "Choose another folder, best on another stick.",
    ),
    "copy-beside-part": (
        "Parts for a deputy lie in this folder. A copy beside them would let anybody in who finds the folder.",
        "Choose another folder, or take the parts away first.",
    ),
    "deputy-part-needed": (
        "The words of a part are wanted, and nobody can be asked here.",
        "Give a file with them, or a picture of the code: --part FILE.",
    ),
    "deputy-folder-needed": ("Nobody said where the papers go.", "Name a folder: --into DIR."),
    "deputy-copy-needed": (
        "Nobody said which sealed copy the parts are to open.",
        "Name it: hearthkey deputy restore FILE.",
    ),
    "deputy-no-spares": (
        "There are no stop lists that a deputy could take along: none is signed for the household as it is now.",
        "Unlock the household once, then do it again.",
    ),
    "deputy-letter-too-long": (
        "The letter does not fit on one page.",
        "Choose a shorter note of whom to call.",
    ),
}
