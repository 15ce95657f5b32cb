"""The subnets and the gateway address of a household, checked against each other."""

from __future__ import annotations

import ipaddress
from collections.abc import Callable, Iterable
from dataclasses import dataclass

from hearthkey.core.errors import Refused
from hearthkey.core.names import as_address

Subnet = ipaddress.IPv4Network | ipaddress.IPv6Network

SPLIT, FULL = "split", "full"
"""Split: devices reach the home subnets only. Full: all their traffic goes through home."""

_DRAWS = 200
"""Draws that all miss show that the home takes up a range, but for one chance in many."""


@dataclass(frozen=True)
class Caution:
    """Something that will not stop the householder, but that they should know first.

    Args:
        code: which sentence tells it; the table stands in `core.sentences.cautions`.
        subject: what it is about, as the sentence shows it.
    """

    code: str
    subject: str


def subnet(text: str, what: str) -> Subnet:
    """Read a subnet in prefix notation, for instance 198.51.100.0/24.

    Raises:
        Refused: subnet-malformed, subnet-has-host-bits, subnet-too-wide.
    """
    try:
        found: Subnet = ipaddress.ip_network(text.strip(), strict=False)
    except ValueError as error:
        raise Refused("subnet-malformed", what=what, text=text[:80]) from error
    if "/" not in text or "%" in text:
        raise Refused("subnet-malformed", what=what, text=text[:80])
    if ipaddress.ip_interface(text.strip()).ip != found.network_address:
        raise Refused("subnet-has-host-bits", what=what, text=text.strip(), meant=str(found))
    if found.prefixlen == 0:
        raise Refused("subnet-too-wide", what=what, text=text.strip())
    return found


def check_apart(home: Iterable[Subnet], tunnel: Subnet) -> None:
    """Refuse subnets that overlap: an address has to lie in one place only.

    Raises:
        Refused: subnets-missing, subnets-overlap, subnet-too-small.
    """
    seen: list[Subnet] = [tunnel]
    homes = list(home)
    if not homes:
        raise Refused("subnets-missing")
    if tunnel.num_addresses < 4:
        raise Refused("subnet-too-small", text=str(tunnel))
    for one in homes:
        for other in seen:
            if one.version == other.version and one.overlaps(other):
                raise Refused("subnets-overlap", one=str(one), other=str(other))
        seen.append(one)


def quiet_tunnel_subnet(home: Iterable[Subnet], below: Callable[[int], int]) -> Subnet:
    """Propose a /24 out of 10/8 (RFC 1918) by lot, away from the home subnets.

    Tethering phones and home routers hand out 192.168 and the ends of 10/8 (common practice, no
    source), so the second octet is drawn from 20 to 250. Where the home takes up 10/8, the draw is
    from 172.16/12.

    Args:
        home: the subnets at home.
        below: draws a whole number from 0 to its argument, exclusive.

    Raises:
        Refused: no-quiet-subnet, where the home takes up both.
    """
    homes = [one for one in home if isinstance(one, ipaddress.IPv4Network)]
    for first, lowest, count in ((10, 20, 231), (172, 16, 16)):
        for _ in range(_DRAWS):
            candidate = ipaddress.IPv4Network((f"{first}.{lowest + below(count)}.{below(256)}.0", 24))
            if not any(candidate.overlaps(one) for one in homes):
                return candidate
    raise Refused("no-quiet-subnet")


def gateway_cautions(host: str) -> tuple[Caution, ...]:
    """Say where a gateway host will not be reached from outside, or ties bundles to an address.

    RFC 1918, RFC 4193, RFC 3927 and RFC 4291 (private and link-local), RFC 6598 (shared by the
    provider), RFC 6762 (.local), RFC 6761 (localhost), RFC 8375 (home.arpa).
    """
    address = as_address(host)
    if address is None:
        only_home = host == "localhost" or host.endswith((".localhost", ".local", ".home.arpa"))
        single = "." not in host
        return (Caution("gateway-only-at-home", host),) if only_home or single else ()
    shared = ipaddress.ip_network("100.64.0.0/10")
    if address.version == 4 and address in shared:
        return (Caution("gateway-shared-address", host),)
    documentation = any(
        address.version == network.version and address in network
        for network in map(ipaddress.ip_network, ("192.0.2.0/24", "198.51.100.0/24", "203.0.113.0/24", "2001:db8::/32"))
    )
    if not documentation and (address.is_private or address.is_loopback or address.is_link_local):
        return (Caution("gateway-only-at-home", host),)
    return (Caution("gateway-bare-address", host),)


def dns_cautions(servers: Iterable[str], home: Iterable[Subnet], tunnel: Subnet) -> tuple[Caution, ...]:
    """Say which DNS servers lie outside home, so that questions about home would leave it."""
    inside = [*home, tunnel]
    return tuple(
        Caution("dns-outside", server)
        for server in servers
        if not any(
            network.version == ipaddress.ip_address(server).version and ipaddress.ip_address(server) in network
            for network in inside
        )
    )


def dns_server(text: str) -> str:
    """Check the address of a DNS server and return it in its shortest form.

    Raises:
        Refused: dns-malformed.
    """
    address = as_address(text)
    if address is None or address.is_unspecified or address.is_multicast:
        raise Refused("dns-malformed", text=text[:80])
    return str(address)


def tunnel_kind(text: str) -> str:
    """Check the word for what goes through the tunnel.

    Raises:
        Refused: tunnel-kind-unknown.
    """
    if text not in {SPLIT, FULL}:
        raise Refused("tunnel-kind-unknown", text=text[:40])
    return text
