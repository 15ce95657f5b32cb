"""Sentences about the succession of the CA."""

from __future__ import annotations

REFUSED: dict[str, tuple[str, str]] = {
    "succession-underway": (
        "The next CA is there already, beside the old one. Nothing was changed.",
        "Go on with it: hearthkey succession shows what comes next, and for whom.",
    ),
    "succession-none": (
        "No CA follows another at the moment, so there is no step to take.",
        "Look at the plan with hearthkey succession; it says by which day to begin.",
    ),
    "succession-not-planned": (
        "The next CA was begun because of a theft or a loss already. Nothing was changed.",
        "Go on with it: hearthkey succession shows what comes next, and for whom.",
    ),
    "succession-last-step": (
        "What is left is to put the old CA away, and that cannot be taken back.",
        "When every device is through, say so with hearthkey succession finish.",
    ),
    "succession-too-early": (
        "The old CA cannot go yet: the gateway still shows the certificate that it signed.",
        "Take the steps before that one; hearthkey succession shows them.",
    ),
    "succession-not-seen": (
        "The gateway was not seen to hold what the last step made for it. Nothing was changed.",
        "Deliver to the gateway, then go on.",
    ),
    "succession-tell": (
        "Nobody here can look at the gateway, so the app cannot know whether it has the files of the last step.",
        "Bring it the gateway pack and try one device; then go on and say so with --told.",
    ),
    "succession-devices-left": (
        "Not through yet: {titles}. They would stand outside.",
        "Give each its new bundle and see it get in, or wait until its old pass has ended.",
    ),
    "succession-new-passes": (
        "The next CA cannot be taken back while somebody gets in by it: {titles}.",
        "Revoke those passes first, or go on.",
    ),
    "succession-no-way-back": (
        "From here there is no step back.",
        "Go on; hearthkey succession shows the next step.",
    ),
    "succession-key-missing": (
        "The keyring has only one of the two CA keys, so that lists would be signed by half. Nothing was changed.",
        "Unlock the household, or bring the keys back from a sealed copy.",
    ),
    "succession-cannot-stop": (
        "{titles} cannot be stopped by a list: the pass is the old CA’s, whose key is lost. Nothing was changed.",
        "Give the others their new bundles and put the old CA away; that ends all of its passes at once.",
    ),
    "succession-cannot-vouch": (
        "The CA cannot vouch for the next one, so that devices would turn away from the gateway. Nothing was changed.",
        "Let the devices go first: hearthkey succession begin --lost. Then no pass of this CA can be stopped any more.",
    ),
    "succession-gateway-waits": (
        "With a new certificate the gateway would turn away every device that does not have the new CA yet.",
        "Give the devices their new bundles first; the gateway’s certificate follows in the succession.",
    ),
}
