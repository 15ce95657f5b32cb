"""Sentences about what somebody asked of the way in."""

from __future__ import annotations

REFUSED: dict[str, tuple[str, str]] = {
    "router-address-odd": (
        '"{text}" is not an address.',
        "Look for the internet address on the router’s own pages, for instance 203.0.113.7, and give that.",
    ),
    "rate-odd": (
        "A rate of {number} kbit/s cannot be reckoned with; {lowest} to {highest} can.",
        "Give kilobits in a second: 40 Mbit/s are 40000.",
    ),
}
