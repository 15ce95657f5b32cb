"""Sentences about proofs."""

from __future__ import annotations

REFUSED: dict[str, tuple[str, str]] = {
    "proof-not-in": (
        "{title} does not get in ({state}), so there is nothing to prove.",
        "Let it back in, or give it a new pass; then prove it.",
    ),
    "proof-address-not-home": (
        "Devices in the tunnel reach {home} and nothing else, and {address} is not in there.",
        "Join the network at home with this computer, or let the whole traffic go through home.",
    ),
    "proof-inside-odd": (
        "{text} is no address at home ({home}), so it is not the gateway’s inner one.",
        "Look for the gateway’s own address in the network at home.",
    ),
    "proof-inside-own": (
        "{address} is this computer’s own address, so it would prove nothing.",
        "Name the gateway’s own address in the network at home.",
    ),
    "proof-inside-needless": (
        "The gateway leaves devices their addresses ({tunnel}), so a request from {address} proves nothing.",
        "Leave that address out. If the gateway does hide devices, say so on its page or with hearthkey gateway.",
    ),
    "proof-closed": ("The link is closed.", "Open a new one; the old code leads nowhere any more."),
    "proof-long-enough": (
        "A link lives {minutes} minutes at most.",
        "Open a new one, with a new code, once this one has ended.",
    ),
}
