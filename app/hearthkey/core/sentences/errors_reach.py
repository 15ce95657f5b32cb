"""Sentences about what somebody asked of the way in."""

from __future__ import annotations

REFUSED: dict[str, tuple[str, str]] = {
    "router-address-odd": (
        '"{text}" is not an address.',
        "Look for the internet address on the router’s own pages, for instance 203.0.113.7, and give that.",
    ),
    "gateway-inside-odd": (
        '"{text}" is not an address that a gateway can have at home.',
        "Give the address that the router’s pages show for it, for instance 198.51.100.2.",
    ),
    "gateway-inside-elsewhere": (
        "{text} does not lie in home’s {home}, so the router has no way to it.",
        "Give the gateway’s address at home, or put the home subnets right with hearthkey settle.",
    ),
    "rate-unreadable": ('"{text}" is not a rate.', "Give megabits in a second as a number, for instance 40 or 2.5."),
    "outer-mtu-unreadable": ('"{text}" is not a number of octets.', "Give a whole number, for instance 1492."),
    "rate-odd": (
        "A rate of {number} kbit/s cannot be reckoned with; {lowest} to {highest} can.",
        "Give kilobits in a second: 40 Mbit/s are 40000.",
    ),
    "ike-malformed": (
        "What answered on the gateway’s port makes no sense from {what} on.",
        "Look at what the router sends that port to; it may not be the gateway.",
    ),
}
