"""Sentences about the household, its devices and passes."""

from __future__ import annotations

REFUSED: dict[str, tuple[str, str]] = {
    "no-household": (
        "There is no household in this data folder yet.",
        "Start with hearthkey found, or name another folder with --data.",
    ),
    "household-exists": (
        "A household lives in this data folder already.",
        "For another one, name another folder with --data.",
    ),
    "household-locked": ("The household is locked.", "Open it with its passphrase."),
    "keyring-empty": (
        "The keyring answers, but has no CA key of this household. Who gets in still does; nothing new can be signed.",
        "Bring the key text back from a copy of the keyring. Founded anew, every device would need a new bundle.",
    ),
    "guard-of-another": (
        "The CA key that opened belongs to another household.",
        "Bring back the key text of this household; it was kept in the same keyring when the household was founded.",
    ),
    "guard-unreadable": (
        "What the keyring keeps as CA key is damaged.",
        "Bring the key text back from a copy. Devices that get in still do.",
    ),
    "guard-too-heavy": (
        "Opening the CA key would take more memory or time than this computer can give.",
        "Open it once on a stronger computer with any age tool, and encrypt it again there.",
    ),
    "authority-ended": (
        "The CA ended on {end}; nothing that it signed counts after that day.",
        "Found a household anew in another data folder, and give every device a new bundle.",
    ),
    "gateway-secret-lost": (
        "The keyring has no secret for the gateway’s key, so nothing can be rehearsed against it.",
        "Bring the keyring back from a copy, or use the keyring under which the household was founded.",
    ),
    "not-practice": ("This is a real household.", "Only a practice household may be forgotten."),
    "tour-folder-taken": ("{path} holds something that is no tour.", "Name an empty or new folder with --into."),
    "already-used": (
        "A name, serial or list number would have been used a second time ({seen}).",
        "Nothing was changed. Do it again; if it stays, the register needs a look.",
    ),
    "device-exists": (
        "{title} has a pass already.",
        "For a new key in the same device add --replace; for another device give it a name of its own.",
    ),
    "device-revoked": (
        "{title} had a pass that is over.",
        "For the same device add --replace; for another device give it a name of its own.",
    ),
    "device-unknown": ('No device is called "{text}".', "hearthkey list shows all of them."),
    "device-ambiguous": ('"{text}" could be {choices}.', "Say whose and which."),
    "enrolled-twice": ("{title} is asked for twice.", "Leave one out. Nothing was made."),
    "pass-unknown": ("There is no pass {text}.", "hearthkey list shows all of them."),
    "pass-handed-over": (
        "{title} was handed over: its key exists on that device alone and is never sent again.",
        "If the bundle was lost, replace it: hearthkey add PERSON DEVICE --kind KIND --replace.",
    ),
    "pass-not-alive": (
        "The pass of {title} is {state}.",
        "For a new one: hearthkey add PERSON DEVICE --kind KIND --replace.",
    ),
    "passphrase-lost": (
        "The keyring has no passphrase for the bundle of {title}, so it can never be opened.",
        "Replace it: hearthkey add PERSON DEVICE --kind KIND --replace.",
    ),
    "already-stopped": (
        "{title} is stopped already.",
        "To let it in again: hearthkey let-in. For good: hearthkey revoke.",
    ),
    "not-stopped": ("{title} is not stopped.", "There is nothing to let back in."),
    "revoked-already": ("{title} was revoked already.", "There is nothing left to do."),
    "revoked-is-final": (
        "{title} was revoked, and that is final.",
        "Give it a new pass: hearthkey add PERSON DEVICE --kind KIND --replace.",
    ),
    "list-unknown": ("There is no revocation list {number}.", "hearthkey lists shows all of them."),
    # files that the householder names
    "file-missing": ("There is no file {path}.", "Check the name."),
    "file-not-a-file": ("{path} is not a file.", "Name the file itself, not a folder or a device."),
    "file-too-large": (
        "{path} is larger than {limit} octets; nothing that this app writes is.",
        "Check that it is the right file.",
    ),
    "file-unreadable": ("{path} cannot be read: {seen}", "Check that it is a text file and that you may read it."),
    "too-many-files": ("More than {limit} files were named.", "Name the files of one bundle."),
    "table-malformed": (
        "Line {line} of {path} does not fit.",
        "The first line names the columns person,device,kind and, if wanted, until and guest; each line has them all.",
    ),
    "table-empty": ("{path} names no device.", "Write one line for each under the line of column names."),
}
