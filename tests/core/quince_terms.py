"""Quince Cottage in the shapes that the settings sheet has to tell apart."""

from __future__ import annotations

import ipaddress
from dataclasses import replace

from hearthkey.core.household import Household

FOUR, SIX, INNER = map(ipaddress.ip_network, ("198.51.100.0/24", "2001:db8:51::/64", "203.0.113.0/24"))

BOTH = Household(
    name="Quince Cottage",
    gateway_host="home.quince.example",
    identity_suffix="quince.example",
    home_subnets=(FOUR, SIX),
    tunnel_subnet=INNER,
    dns_servers=("198.51.100.1", "2001:db8:51::1"),
    tunnel="split",
    practice=True,
)
"""Home in both families, split tunnel."""

FULL = replace(BOTH, tunnel="full")
OLD_LINE = replace(FULL, home_subnets=(FOUR,), dns_servers=())
"""IPv4 alone, all traffic through home."""
