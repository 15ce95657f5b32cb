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
    "undo-nothing": (
        "There is nothing to take back. What was done before the app was opened is not kept for that.",
        "The diary has all of it.",
    ),
    "redo-nothing": (
        "There is nothing to do again.",
        "The diary has all that was done.",
    ),
    "undo-enrolled": (
        "The pass of {title} has a number of its own that stays on record, so it is not undone.",
        "Revoke it to take it back; its key is then erased here.",
    ),
    "undo-renewed": (
        "The new pass of {title} does not wait in the tray any more, so the renewal is not undone.",
        "Prove it on the device, or replace the pass.",
    ),
    "undo-replaced": (
        "{title} took another device’s place, and its pass stays on record, so that is not undone.",
        "Let the other one back in, and revoke this one, each on its page.",
    ),
    "undo-taken-back": (
        "The next pass of {title} was withdrawn and its key erased. That is never undone.",
        "Renew it again.",
    ),
    "undo-superseded": (
        "The old pass of {title} went for good. That is never undone.",
        "Its new pass gets in; renew it if it needs another.",
    ),
    "undo-succession": (
        "What was signed for the next CA stays on record, so the step is not undone here.",
        "Go one step back, or on, on the page of the next CA. Once the old CA is put away there is no way back.",
    ),
    "undo-handed-over": (
        "{title} was handed over, and its key exists on the device alone. That is not undone.",
        "Stop it if it must not get in.",
    ),
    "undo-revoked": (
        "{title} was revoked for good. That is never undone.",
        "Give it a new pass.",
    ),
    "undo-proved": (
        "That {title} was seen to get in stays written down. No proof is taken back.",
        "Stop it if it must not get in.",
    ),
    "undo-deleted": (
        "Files of a copy of {title} were deleted. They do not come back.",
        "Write it again from the tray, if it waits there.",
    ),
    "undo-changed-since": (
        "This is not taken back any more: it was changed again since.",
        "Change it by hand, as it should be now.",
    ),
    "undo-in-force": (
        "This is not taken back any more: the gateway holds revocation list {number}, so it is in force.",
        "Let the device back in, or stop it, and deliver that.",
    ),
    "undo-handed-over-since": (
        "This is not taken back any more: a bundle was handed over since.",
        "Change the settings by hand; the app then says whose device needs a new bundle.",
    ),
    "undo-named-since": (
        "This is not taken back any more: {title} has got another pass under that name since.",
        "Give the device a pass under its right name, and revoke those of {title}.",
    ),
    "undo-delivered-since": (
        "This is not taken back any more: the gateway has it since the last delivery.",
        "Change it by hand, and deliver that.",
    ),
}
