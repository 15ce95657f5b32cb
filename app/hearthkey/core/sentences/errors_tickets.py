"""Sentences about tickets."""

from __future__ import annotations

REFUSED: dict[str, tuple[str, str]] = {
    "ticket-address-none": (
        "This computer has no address that a phone at home can reach ({known}).",
        "Join the Wi-Fi at home. If you are there already, name the address: --address.",
    ),
    "ticket-address-unknown": (
        "{text} is no address of this computer; it has {known}.",
        "Name one of those, or its interface.",
    ),
    "ticket-address-unfit": (
        "Nothing is offered at {address} ({standing}).",
        "Choose an address in the home network.",
    ),
    "ticket-form-unfit": (
        "A ticket takes what is a single file, and {form} is not.",
        "Choose pkcs12, archive or bundle.",
    ),
    "ticket-closed": ("The ticket is closed.", "Open a new one; the old code leads nowhere any more."),
    "ticket-long-enough": (
        "A ticket lives {minutes} minutes at most.",
        "Open a new one, with a new code, once this one has ended.",
    ),
}

UNAVAILABLE: dict[str, tuple[str, str]] = {
    "ticket-address-gone": (
        "The address {address} could not be used ({seen}).",
        "Check that this computer is still in the network, then try again.",
    ),
    "addresses-unknown": (
        "This computer’s addresses could not be read ({seen}).",
        "Install iproute2, or name the way out yourself: export writes the bundle to a stick.",
    ),
}
