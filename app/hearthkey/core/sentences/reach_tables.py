"""The sentences of the network plan; `core.sentences.reach` picks among them."""

from __future__ import annotations

MANY = 20
"""Nobody counts films beyond it."""

NAME = (
    "{subject} is a name. Devices look it up each time, so the address behind it can change and no device has to be "
    "told."
)
BARE = (
    "{subject} stands in every bundle as it is. If the provider changes it, every device needs a new bundle; with a "
    "name, none does."
)

GATEWAY = {
    "global": "{subject} is a public address: whoever is away gets there, if the router lets UDP 500 and 4500 through "
    "to the gateway.",
    "global-6": "{subject} is a public address of IPv6: whoever is away gets there, if the router’s firewall lets "
    "UDP 500, UDP 4500 and ESP (IP protocol 50) through to the gateway. From networks without IPv6 there is no way.",
    "private": "{subject} counts inside a home only (RFC 1918). Whoever is away does not get there. Give the name or "
    "address that the world knows.",
    "shared": "{subject} is shared by the provider between customers (RFC 6598). Whoever is away does not get there, "
    "whatever the router forwards. Ask the provider for a public address, or use IPv6.",
    "unique-local": "{subject} counts inside a home only (RFC 4193). Whoever is away does not get there. Give the "
    "name or address that the world knows.",
    "link-local": "{subject} is known to the next cable or Wi-Fi only (RFC 3927, RFC 4291 section 2.5.6). Whoever is "
    "away does not get there.",
    "loopback": "With {subject} a device means itself (RFC 1122 section 3.2.1.3). Nobody gets in by it.",
    "documentation": "{subject} is an address for examples (RFC 5737, RFC 3849). Nobody gets in by it; it is fine for "
    "practising.",
    "unfit": "{subject} is an address that no gateway can have (RFC 6890). Nobody gets in by it.",
}

ROUTER = {
    "global": "The router says {subject}, a public address. Where a page outside shows the same one, forwarding can "
    "work; where it shows another, the provider shares that one (RFC 6598 section 5.1).",
    "global-6": "The router says {subject}, a public address of IPv6. It needs no forwarding, but the router’s "
    "firewall has to let UDP 500, UDP 4500 and ESP (IP protocol 50) through to the gateway’s own address.",
    "private": "The router says {subject}, a private address (RFC 1918): it stands behind another router. Whoever is "
    "away gets in only when both forward, the outer one to {subject}.",
    "shared": "The router says {subject}: the provider shares its addresses between customers (RFC 6598). Forwarding "
    "at home cannot work. Ask the provider for a public address, or use IPv6.",
    "unique-local": "The router says {subject}, a private address of IPv6 (RFC 4193). Look for the one that begins "
    "with 2 or 3.",
    "link-local": "The router says {subject}, which is known to the next cable only. It may have no internet just "
    "now; look for another address on its pages.",
    "documentation": "The router says {subject}, an address for examples (RFC 5737, RFC 3849).",
    "unfit": "The router says {subject}, which is no address on the internet (RFC 6890). Look for another on its "
    "pages.",
}

GRADES = {
    ("home", "quiet"): "Home’s {subnet} is hardly met elsewhere.",
    ("home", "seldom"): "Home’s {subnet} may be met elsewhere. Whoever sits in such a network does not get home from "
    "there.",
    ("home", "often"): "Home’s {subnet} is met in many places. Whoever sits in such a network does not get home from "
    "there.",
    ("tunnel", "quiet"): "The tunnel’s {subnet} is hardly met elsewhere.",
    ("tunnel", "seldom"): "The tunnel’s {subnet} may be met elsewhere. Whoever sits in such a network may lose what "
    "is there, or the tunnel.",
    ("tunnel", "often"): "The tunnel’s {subnet} is met in many places. Whoever sits in such a network may lose what "
    "is there, or the tunnel.",
}

PLACES = {
    "home": "Other homes: routers come with addresses in {subnet}.",
    "phone": "Phones that share their connection give out addresses in {subnet}.",
    "computer": "Computers that share their connection, or run others inside, use addresses in {subnet}.",
    "lodging": "Hotels, trains and guest networks give out addresses in {subnet}.",
    "work": "Employers use addresses in {subnet}.",
    "provider": "Providers use addresses in {subnet} between themselves and their customers (RFC 6598).",
}

SUBNETS = {
    "shared": "{subnet} belongs to providers (RFC 6598). On mobile networks a device may have an address of it "
    "already.",
    "link-local": "What has an address in {subnet} is reached on its own cable or Wi-Fi only (RFC 3927, RFC 4291 "
    "section 2.5.6), never through a tunnel.",
    "loopback": "With {subnet} every device means itself (RFC 1122 section 3.2.1.3), so nothing at home is reached.",
    "documentation": "{subnet} is for examples (RFC 5737, RFC 3849): fine for practising, not for a home.",
    "multicast": "Nothing can have an address in {subnet} (RFC 5771, RFC 4291 section 2.7), so nothing at home is "
    "reached.",
    "reserved": "{subnet} is set aside (RFC 6890); many devices do not take an address of it.",
    "global": "{subnet} holds public addresses. If the provider did not give them to this house, whoever owns them "
    "is out of reach.",
    "global-6": "{subnet} is public, as usual with IPv6. Many providers change it; then devices look for home where "
    "it is no more.",
    "mixed": "{subnet} is wider than any range for homes (RFC 1918, RFC 4193), so some of the internet is out of "
    "reach.",
}

PROPOSALS = {
    ("tunnel", "needed"): "For the tunnel, {subnet} was drawn by lot and is hardly met elsewhere.",
    ("tunnel", "spare"): "The tunnel’s subnet can stay. If it ever has to change, {subnet} was drawn by lot.",
    ("home", "needed"): "For home, {subnet} was drawn by lot instead of {instead} and is hardly met elsewhere. Every "
    "thing at home gets a new address: change it in the router first, then in the household’s settings.",
    ("home", "spare"): "Home’s subnet can stay. If it ever has to change, {subnet} was drawn by lot.",
    ("home-ipv6", "spare"): "Home has no IPv6 here. {subnet} was drawn for it (RFC 4193 section 3.2.2): it stays when "
    "the provider changes. Whoever is away reaches it once there are addresses of IPv6 inside the tunnel too. Were a "
    "hundred such homes joined, two would have the same once in {once} million times.",
}

ROOM = (
    "The gateway pack goes by an outer MTU of {outer} octets: behind NAT and with the longest head, {inner} are left "
    "for a packet inside, {mss4} for TCP over IPv4 and {mss6} over IPv6."
)
TOO_NARROW = (
    "{inner} octets are less than the 1280 that IPv6 counts on (RFC 8200 section 5), so IPv6 inside is sent in pieces."
)

SPLIT = "Into the tunnel go {through}. Everything else goes its own way."
FULL = "Everything goes into the tunnel: {through}."

GAPS = {
    "beside": "IPv{family} passes the tunnel by. Wherever a device has IPv{family}, what it does there is seen by the "
    "network that it sits in. Both {family} and {other} have to go in, or IPv{family} be switched off on the device.",
    "unaddressed": "Devices get no IPv{family} address inside, so what becomes of IPv{family} is for each device to "
    "say: it may pass the tunnel by.",
    "unreached": "Devices get no IPv{family} address inside, so nobody reaches {subject}.",
    "dns-beside": "The DNS server {subject} is not reached through the tunnel, so names at home are asked outside, or "
    "not found.",
    "names-outside": "No DNS server is set. Names are asked of the network that a device sits in; names at home are "
    "not known there.",
}

NO_RATE = "What to expect of films and calls can be said with --upload, the rate at which the line sends, in kbit/s."
LINE_SLOWER = "The line is what everybody waits for: {rate} Mbit/s out of the house are left inside the tunnel."
BOARD_SLOWER = "The gateway is what everybody waits for: {rate} Mbit/s are left inside the tunnel."

USES = {
    ("call", 0): "A call would break up.",
    ("call", 1): "One call goes well.",
    ("call", 2): "{count} calls go well at once.",
    ("video-call", 0): "A video call would stand still now and then.",
    ("video-call", 1): "One video call goes well.",
    ("video-call", 2): "{count} video calls go well at once.",
    ("film", 0): "A film from home would stop to wait.",
    ("film", 1): "One film from home goes well.",
    ("film", 2): "{count} films from home go well at once.",
    ("large-film", 0): "A film in the largest size would stop to wait.",
    ("large-film", 1): "One film in the largest size goes well.",
    ("large-film", 2): "{count} films in the largest size go well at once.",
}

PHOTOS = {
    0: "A photo from home takes longer than a minute.",
    1: "One photo from home takes about a minute.",
    2: "{count} photos from home go through in a minute.",
}
