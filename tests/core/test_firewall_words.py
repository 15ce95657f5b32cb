"""How a closed firewall is opened for a phone: for every network that it may be in."""

from __future__ import annotations

import ipaddress

import pytest

from hearthkey.core.firewalls import Firewall
from hearthkey.core.sentences import tickets

NEAR = (ipaddress.ip_network("192.0.2.0/24"), ipaddress.ip_network("2001:db8:1::/64"))


@pytest.mark.parametrize("kind", [Firewall.UFW, Firewall.NFTABLES])
def test_every_network_at_home_is_named(kind: Firewall) -> None:
    """Broken if it fails: the port is open for one network and the phone is in the other."""
    told = str(tickets.firewall(kind, NEAR, 8437))
    assert all(str(one) in told for one in NEAR)


def test_each_command_is_whole() -> None:
    """Broken if it fails: somebody pastes half a command."""
    told = str(tickets.firewall(Firewall.UFW, NEAR, 8437))
    assert told.endswith(
        "sudo ufw allow from 192.0.2.0/24 to any port 8437 proto tcp; "
        "sudo ufw allow from 2001:db8:1::/64 to any port 8437 proto tcp; "
        "take it back afterwards with sudo ufw delete and the same words."
    )
