"""Sentences about the gateway's own computer: its interfaces, segments and web front."""

from __future__ import annotations

REFUSED: dict[str, tuple[str, str]] = {
    # packet rules
    "interface-odd": (
        'The {what} "{text}" is not a name that Linux gives.',
        "Take it from the list that the command ip link shows; it has at most {limit} characters.",
    ),
    "interfaces-same": (
        "{name} was named as the outer interface and as the tunnel’s.",
        "Leave the tunnel’s out where the kernel itself unpacks the tunnel.",
    ),
    "host-families-apart": (
        "The tunnel ({tunnel}) and home ({home}) share no version of IP, so no device could reach anything.",
        "Give the household a home subnet of the tunnel’s version.",
    ),
    "mss-out-of-range": (
        "A TCP segment of {number} octets over IPv{family} was asked for; {lowest} to {highest} can be had.",
        "Check the MTU of the line to the internet; it is 1500 or a little less.",
    ),
    # web front
    "web-folder-odd": (
        'The folder "{text}" cannot be written into the web server’s settings.',
        "Give it from the root on, like /etc/home-gateway, without quotes, backslashes and dollar signs.",
    ),
    "web-page-odd": (
        '"{text}" is not the address of a page at home.',
        "Write it like http://127.0.0.1:8080, without a user name and without a question mark.",
    ),
    "web-page-is-front": (
        "{text} is the web front itself, which would ask itself for the page for ever.",
        "Give the address that the page has inside the house.",
    ),
    "web-port-odd": ("{number} is not a TCP port.", "Give one from 1 to 65535; 443 needs no mention in a browser."),
    "web-listen-odd": (
        '"{text}" is not an address to listen on.',
        "Give an address of the gateway, or none for all of them.",
    ),
}
