"""Writes the packet rules and the kernel settings of a Linux computer that is the gateway.

Packet rules: the language of nft(8). Kernel settings: sysctl.d(5) and the kernel's own
Documentation/networking/ip-sysctl.rst. Every line carries its reason; see `formats.commented`.
"""

from __future__ import annotations

from hearthkey.core.host import HostFacts
from hearthkey.formats import packet_rules
from hearthkey.formats.commented import Block, Line, Note, Part, write

TABLE = packet_rules.TABLE


def nftables(facts: HostFacts) -> str:
    """Write the packet rules: one table of our own, to be loaded with ``nft -f``; ASCII.

    Loading it again changes nothing, and it takes effect as a whole or not at all. What is no business of the
    tunnel is let alone where the computer forwards for others, and not forwarded at all where it does not.
    """
    return write(
        [
            Note(
                "What may pass between the tunnel and home, on the computer that is the gateway. "
                f"Load this file with: nft -f FILE. To take it away again: nft delete table {TABLE}"
            ),
            *_notes(facts),
            Line(
                "Name a table of our own, so that the next line finds one even the first time. "
                "No other table is touched, and none is emptied.",
                f"table {TABLE}",
            ),
            Line(
                "Take away what was loaded before. The whole file is one transaction: there is no moment "
                "without rules, and if one line is refused the old rules stay.",
                f"delete table {TABLE}",
            ),
            Block("All rules of this file, for both versions of IP.", f"table {TABLE}", packet_rules.chains(facts)),
        ]
    )


def _notes(facts: HostFacts) -> list[Part]:
    """What the householder has to see to, before the rules help."""
    notes: list[Part] = []
    if not facts.tunnel_interface:
        notes.append(
            Note(
                "Written for a kernel that unpacks the tunnel itself (IPsec). Where packets come out of an interface "
                "made for the tunnel, have the file written with the name of that interface: with this one nothing "
                "would pass there."
            )
        )
    if not facts.masquerade:
        inner = " and ".join(map(str, facts.tunnel_subnets))
        notes.append(
            Note(
                "Devices keep their own addresses at home (no masquerading was chosen). So the router at home needs a "
                f"route that leads {inner} to this computer, unless this computer is the router; without it answers "
                "get lost."
            )
        )
    return notes


def sysctl(facts: HostFacts) -> str:
    """Write the kernel settings, for a file in /etc/sysctl.d or ``sysctl -p FILE``; ASCII.

    That rp_filter is not asked about what IPsec unpacked: fib_validate_source in the kernel's net/ipv4/fib_frontend.c.
    """
    parts: list[Part] = [
        Note(
            "What the kernel has to be told so that this computer passes packets between the tunnel and home. "
            "It becomes a router by this: load the packet rules first, which say what may pass."
        )
    ]
    if 4 in facts.families:
        parts.append(
            Line(
                "Pass IPv4 packets on. The kernel sets other IPv4 settings of every interface back to what suits a "
                "router when this changes (ip-sysctl.rst), so settings of your own belong behind this line.",
                "net.ipv4.ip_forward = 1",
            )
        )
    if 6 in facts.families:
        parts += _ipv6(facts.outer_interface or "INTERFACE")
    parts.append(
        Note(
            "rp_filter stays as it is, strict or not: what the kernel itself has unpacked from IPsec is not asked for "
            "its way back, and what comes out of a tunnel interface has its way back through that interface."
        )
    )
    return write(parts)


def _ipv6(outer: str) -> list[Part]:
    return [
        Note(
            "An interface whose accept_ra is 1 stops listening to router advertisements once IPv6 is forwarded "
            "(ip-sysctl.rst), and loses its way to the internet with them. Where the kernel learns the router from "
            "advertisements, take the # away from the line below this; it has to stand before forwarding. Where "
            "addresses are fixed, or a network service listens in place of the kernel, leave it: 2 means to believe "
            "whoever advertises on that network. The slashes are for interface names with a dot (sysctl.d(5)).",
            f"net/ipv6/conf/{outer}/accept_ra = 2",
        ),
        Line(
            "Pass IPv6 packets on, between all interfaces; which of them may is for packet rules to say "
            "(ip-sysctl.rst).",
            "net.ipv6.conf.all.forwarding = 1",
        ),
    ]
