"""Sentences about moving day, and about host names that are let go."""

from __future__ import annotations

REFUSED: dict[str, tuple[str, str]] = {
    "move-empty": (
        "Nothing is new, so there is nothing to plan.",
        "Say what changes: the provider, the router, the host name, the subnets at home or the gateway box.",
    ),
    "move-same-host": (
        "The gateway is reached at {host} already.",
        "Give the new host name, or leave it out where it stays.",
    ),
    "move-same-home": (
        "At home is {subnets} already.",
        "Give the subnets that will be at home, or leave them out where they stay.",
    ),
    "move-wants-name": (
        "Bundles carry the address {host}, which another provider’s line does not have.",
        "Give a host name of your own as well. Devices learn it first, and then the line can change.",
    ),
    "move-none": ("No move is planned.", "Plan one first: say what will be new."),
    "move-there": ("A move is under way already.", "End it or call it off before you plan another."),
    "move-step-unknown": ("This move has no step {step}.", "Look at the list for the steps that it has."),
    "move-step-done": ("That step is done already.", "Look at the list for the next one."),
    "move-step-open": ("That step is not done yet, so there is nothing to take back.", "Look at the list for what is."),
    "move-step-early": (
        "{first} comes before {step}; the other way round somebody would be cut off.",
        "Do {first} first.",
    ),
    "move-step-needed": (
        "{by} was done because {step} was.",
        "Take {by} back first.",
    ),
    "move-devices-left": (
        "Still without a new bundle: {devices}.",
        "Hand them theirs first. Whoever has none is cut off when the old goes.",
    ),
    "move-not-seen": (
        "The settings do not show that yet.",
        "Make the change itself first, with hearthkey settle or on the household’s page; then tick it.",
    ),
    "move-not-over": ("There are steps that are not done.", "Do them, or call the move off."),
    "former-host-unknown": (
        "The gateway answers to no former name {host}.",
        "Look at hearthkey settle --touches for the names that it still answers to.",
    ),
    "former-host-used": (
        "{host} is the only name that some devices know: {devices}.",
        "Hand them a new bundle first. Without the name they turn away from the gateway.",
    ),
}
