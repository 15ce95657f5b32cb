"""A household as somebody typed it, checked and filled in: the same when it is founded and when it is changed."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from hearthkey.core import names, network
from hearthkey.core.household import Household
from hearthkey.services import hostnames

QUIET = "quiet"
"""Stands for a tunnel subnet that is to be proposed."""


def describe(
    *,
    name: str,
    gateway_host: str,
    home_subnets: Sequence[str],
    tunnel_subnet: str | None,
    identity_suffix: str | None,
    dns_servers: Sequence[str],
    tunnel: str,
    practice: bool,
    below: Callable[[int], int],
) -> Household:
    """Check what was typed and fill in what was left out.

    Args:
        tunnel_subnet: None or ``quiet`` has one proposed.
        identity_suffix: None takes the default from the host.
        below: draws a whole number from 0 to its argument, exclusive.

    Raises:
        Refused: whatever the checks of `core` find.
    """
    host = hostnames.gateway_host(gateway_host)
    home = tuple(network.subnet(text, "home subnet") for text in home_subnets)
    inner = (
        network.quiet_tunnel_subnet(home, below)
        if tunnel_subnet is None or tunnel_subnet.strip() == QUIET
        else network.subnet(tunnel_subnet, "tunnel subnet")
    )
    network.check_apart(home, inner)
    household = Household(
        name=names.display_name(name, "household name"),
        gateway_host=host,
        identity_suffix=names.identity_suffix(
            names.default_suffix(host)
            if identity_suffix is None
            else hostnames.to_ascii(identity_suffix, "identity suffix")
        ),
        home_subnets=home,
        tunnel_subnet=inner,
        dns_servers=tuple(network.dns_server(text) for text in dns_servers),
        tunnel=network.tunnel_kind(tunnel),
        practice=practice,
    )
    names.display_name(household.certified_name, "household name")
    return household
