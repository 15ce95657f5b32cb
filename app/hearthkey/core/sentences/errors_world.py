"""Sentences about the world being in the way, and about faults of our own."""

from __future__ import annotations

_SAFE = "Nothing was lost, nothing is half done."

UNAVAILABLE: dict[str, tuple[str, str]] = {
    "keyring-locked": (
        f"The keyring is closed. {_SAFE}",
        "Open it (log in to the desktop, or unlock it in the desktop’s password settings), then do it again.",
    ),
    "keyring-silent": (
        f"The keyring has not answered for {{seconds}} seconds. {_SAFE}",
        "Look for a question it may be asking on another screen; else log out and in, then do it again.",
    ),
    "keyring-absent": (
        f"There is no keyring here that the app can use. {_SAFE}",
        "Start it in the desktop where the household lives. For a new household without a keyring: found --key-file.",
    ),
    "keyring-unsafe": (
        f"The keyring that is set up here ({{backend}}) keeps nothing, or keeps it in the clear. {_SAFE}",
        "Set the desktop’s own keyring, or found the household with --key-file.",
    ),
    "keyring-failed": (f"The keyring answered with a fault: {{seen}}. {_SAFE}", "Log out and in, then do it again."),
    "second-copy": (
        f"Another copy of the app has this household open. {_SAFE}",
        "Close it first. Looking works meanwhile: hearthkey list, show, diary.",
    ),
    "disk-full": (f"The disk is full ({{path}}). {_SAFE}", "Make room, then do it again."),
    "folder-read-only": (
        f"Nothing can be written to {{path}}. {_SAFE}",
        "Choose another folder, or see to its permissions.",
    ),
    "folder-gone": (
        f"{{path}} is gone; a stick may have been pulled. {_SAFE}",
        "Put it back, or choose another folder, then do it again.",
    ),
    "write-failed": (f"What was written to {{path}} did not come back the same. {_SAFE}", "Use another disk or stick."),
    "register-busy": (f"The register is in use. {_SAFE}", "Close the other copy of the app, then do it again."),
    "register-damaged": (
        "The register in {path} is damaged ({seen}).",
        "Leave the folder as it is, make a copy of it, and bring back the newest copy that works.",
    ),
    "register-unreadable": (
        "The register in {path} cannot be read ({seen}).",
        "See to the disk and the folder’s permissions, then do it again.",
    ),
    "register-newer": (
        "The register was written by a newer app (version {have}; this one knows {known}).",
        "Use the newer app. Nothing was changed.",
    ),
    "crew-gone": (f"A helping process of the app was ended from outside. {_SAFE}", "Do it again; others are started."),
    "no-display": (
        f"There is no screen to open the window on. {_SAFE}",
        "Start it in a desktop, or use the verbs: hearthkey --help.",
    ),
    "window-missing": (
        f"The parts of the window are not installed here. {_SAFE}",
        "Start it with sh packaging/run.sh, or use the verbs: hearthkey --help.",
    ),
    "world": (f"The system refused: {{seen}} {{path}}. {_SAFE}", "See to that, then do it again."),
}

BUG: dict[str, tuple[str, str]] = {
    "profile-transform-unknown": ("A profile cannot say what protects this tunnel ({seen}).", ""),
    "script-transform-unknown": ("A script cannot say what protects this tunnel ({seen}).", ""),
    "both-channels": (
        "The passphrase and what it opens were about to stand together, so nothing was shown.",
        "Tell whoever looks after the app what you were doing.",
    ),
    "authority-mismatch": ("The CA key does not belong to the CA certificate.", ""),
    "archive-member-unfit": ("An archive was to hold a file that does not belong there.", ""),
    "bundle-table-lost": ("A bundle lost a part while it was read.", ""),
    "bundle-unwritable": ("A bundle was to be written with a value that does not fit ({key}).", ""),
    "paper-not-der": ("The household’s paper was to carry something that is not DER.", ""),
    "common-networks": ("The table of common subnets that came with the app cannot be read ({seen}).", ""),
    "deputy-parts-open-nothing": ("The parts that were drawn do not bring back what they were made of.", ""),
    "sharing-odd": ("A secret was to be shared in a way that brings nothing back.", ""),
    "frame-unfit": ("A code was to be drawn that does not fit.", ""),
    "gallery-stuck": ("The window did not come to rest in the scene {scene}.", ""),
    "guard-too-long": ("The CA key text came out too long for a keyring.", ""),
    "handshake-without-store": ("A trial connection had nothing to judge by.", ""),
    "kinds-incomplete": ("No kind of device is called {name}.", ""),
    "list-dates-crossed": ("A list was to end before it began.", ""),
    "pass-not-stopped": ("A pass was to be let in that was not stopped.", ""),
    "pass-not-waiting": ("A pass was to be handed over that was not waiting.", ""),
    "practice-changed": ("A practice household was to become a real one, or the other way round.", ""),
    "secret-too-long": ("A secret was too long for a keyring.", ""),
    "waiting-without-key": ("A waiting pass has no key.", ""),
    "unforeseen": ("Something happened that nobody thought of ({seen}).", ""),
}
OUR_FAULT = "This is a fault of the app. Nothing was lost. Do it again; if it stays, tell the makers these words."
