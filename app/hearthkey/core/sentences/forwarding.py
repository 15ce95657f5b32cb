"""What the forwarding sheet says, a sentence or two to each thing."""

from __future__ import annotations

# RFC 2131 (DHCP), RFC 6092 (firewalls in home routers) and RFC 3596 (AAAA) are cited from memory.

TITLE = "{household}: what the router lets through"
PRACTICE = "This is the practice household. No router is ever told this."
LEAD = (
    "Whoever is away gets in only if the router at home passes these on to the gateway. Every router calls it "
    "otherwise; the words to look for stand beside each thing."
)

HEADINGS = {
    "fixed": "First: the gateway keeps its address",
    "forward": "Then: pass these on",
    "firewall": "IPv6: let these through",
    "closed": "Leave everything else closed",
    "check": "See whether it works",
    "name": "When the address of the house changes",
}

FIXED_LABEL = "Gateway at home"
FIXED = "Always the same, given by the router; else what is passed on goes to another device one day, or nowhere."
FIXED_LOOK = "Look for: DHCP reservation, static lease."
BLANK = "address: ____________________"

OPENINGS = {
    "ike": "The first words of every tunnel.",
    "nat": "Everything after that, for devices behind a router of their own: nearly all of them.",
    "web": "The web front of the gateway. Leave it out if it is only used from inside.",
}
SOURCES = {
    "ike": "RFC 7296 section 2",
    "nat": "RFC 7296 section 2.23, RFC 3948",
    "web": "RFC 9110 section 4.2.2",
    "fixed": "RFC 2131 section 1",
    "through": "RFC 6092 section 3.2.4",
    "families": "RFC 1035 section 3.4.1, RFC 3596 section 2.1",
    "ttl": "RFC 1035 section 3.2.1",
}
"""Where each thing is said, by its key; documents have one name in every language."""
OUTSIDE = "outside: {protocol}, port {port}"
INSIDE = "inside: {inside}, port {port}"
SAME = "Both ports are the same: devices know no other."
FORWARD_LOOK = "Look for: port forwarding, virtual server, NAT rules, permit access."
THROUGH = "No forwarding: the router’s firewall lets these through to the gateway’s own IPv6 address."
THROUGH_LABEL = "To the gateway"
THROUGH_LOOK = "Its second half should stay the same. Look for: IPv6 firewall, pinholes."
THROUGH_VALUE = "{protocol}, port {port}"
THROUGH_ESP = "ESP, which is IP protocol {number}"

CLOSED = {
    "host": (
        "Exposed host",
        "off",
        "Also called DMZ. It would show the gateway whole, with everything that listens on it.",
    ),
    "pages": (
        "Router’s own pages",
        "from home only",
        "Remote administration stays off; through the tunnel they are reached all the same.",
    ),
    "shell": (
        "TCP 22, 3389, 5900",
        "closed",
        "Logging in and screens from afar go through the tunnel, never beside it.",
    ),
    "automatic": (
        "Openings by devices",
        "off for the gateway",
        "Also called UPnP or PCP: the gateway needs none beside these, and nobody sees what was opened.",
    ),
}

CHECK = {
    "address": (
        "Same address?",
        "the network plan tells",
        (
            "Compare what the router’s pages show with what a page outside shows. Where they differ, the provider "
            "shares one between customers, and forwarding cannot work (RFC 6598 section 5.1)."
        ),
    ),
    "outside": (
        "From outside",
        "one device proves it",
        "On a phone: Wi-Fi off, then connect. From inside the house it proves nothing, even if it works.",
    ),
    "twice": (
        "Two routers?",
        "both pass it on",
        (
            "Where the provider’s box stands before a router of your own, the first passes on to the second, the "
            "second to the gateway."
        ),
    ),
}

NAME = {
    "bare": "{host} stands in every bundle. When the provider changes it, nobody gets in until every device has a new "
    "bundle; with a name, that does not happen.",
    "name": "{host} has to lead to the house. If the provider changes the address now and then, a name service that "
    "follows it is needed. It has to do this:",
}
NAME_ROWS = {
    "families": (
        "Both families",
        "A and AAAA",
        (
            "One for each kind of address that the gateway is reached at, and none for one at which it is not: devices "
            "try both, and wait for the one that does not answer."
        ),
    ),
    "ttl": (
        "Short memory",
        "TTL {shortest} to {longest} seconds",
        "So long devices may go on with the old address after a change (the numbers are common practice).",
    ),
    "update": (
        "On change",
        "at once, by router or gateway",
        "Whoever sees the change first tells the service, with a password that is used for nothing else.",
    ),
}
ROUTER_LABEL = "Router outside"
