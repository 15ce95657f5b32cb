"""Sentences about renewals, replaced devices, and who leaves."""

from __future__ import annotations

REFUSED: dict[str, tuple[str, str]] = {
    "overlap-out-of-range": (
        "An overlap of {text} days is none that can be kept.",
        "Give a whole number from 1 to {longest}; 30 is usual.",
    ),
    "renewal-waits": (
        "{title} has a bundle in the tray already. A second one would only be taken for the first.",
        "Hand it over, or take it back first: hearthkey renew DEVICE --take-back.",
    ),
    "renewal-ends-sooner": (
        "The new pass of {title} would end on {new}, before the old one does ({old}).",
        "Choose a later day, or renew it later.",
    ),
    "renewal-none": (
        "Nobody’s pass has to be renewed by then.",
        "Nothing to do; hearthkey dates shows what comes.",
    ),
    "nothing-to-supersede": (
        "No pass of {title} has another one that follows it.",
        "Renew it first, or revoke it if nobody needs it.",
    ),
    "supersede-leaves-none": (
        "{title} would be left without a pass that is known to work. Nothing was changed.",
        "Hand the new bundle over and prove it; then the old pass goes.",
    ),
    "nothing-to-take-back": (
        "No renewal of {title} waits in the tray.",
        "What was handed over cannot be taken back, only stopped or revoked.",
    ),
    "renewal-in-use": (
        "The next pass of {title} was seen to get in, so the device has it already.",
        "Hand it over. The old pass can go then.",
    ),
    "person-unknown": (
        "Nobody called {text} has a device here.",
        "hearthkey list shows everybody.",
    ),
    "person-has-none": (
        "{person} has no pass that gets in, or could again.",
        "Nothing has to be withdrawn.",
    ),
    "visit-over": (
        "{day} is over.",
        "Give a day that is still to come.",
    ),
    "visit-unknown": (
        "No visit of that day is planned: {person}, {day}.",
        "hearthkey visit shows those that are.",
    ),
}
