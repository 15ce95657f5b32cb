"""A firewall on this computer that may stand between a phone and a pick-up."""

from __future__ import annotations

from enum import StrEnum


class Firewall(StrEnum):
    """Those that can be recognised without being an administrator."""

    UFW = "ufw"
    FIREWALLD = "firewalld"
    NFTABLES = "nftables"
