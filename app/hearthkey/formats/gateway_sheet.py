"""The settings sheet: what a gateway is told, for somebody who types it into any gateway's pages."""

from __future__ import annotations

from hearthkey.core import pack
from hearthkey.core.host import IKE_PORT, NAT_PORT
from hearthkey.core.room import IPV6_LOWEST
from hearthkey.core.tunnel import Signing, Terms
from hearthkey.formats.proposal_rows import esp_rows, ike_rows
from hearthkey.formats.sheet import Block, Heading, Note, Row, Title, text


def sheet(terms: Terms) -> str:
    """Write the sheet as plain text: 78 columns, to be saved as UTF-8."""
    return text(blocks(terms))


def blocks(terms: Terms) -> tuple[Block, ...]:
    """The sheet as blocks, for text and for paper."""
    return (
        Title(f"{terms.household}: what the gateway is told"),
        *_before(terms),
        *_who(terms),
        *_signing(terms),
        *ike_rows(terms),
        *esp_rows(terms),
        *_traffic(terms),
        *_way(terms),
        *_secret(terms),
    )


def _before(terms: Terms) -> list[Block]:
    found: list[Block] = []
    if terms.practice:
        found.append(Note("This is the practice household. No gateway is ever told this.", urgent=True))
    found.append(
        Note(
            "Every value is named as the standards name it, with its number at IANA in brackets. "
            "Programs use names of their own, so look for the number where a name does not match. "
            "What a gateway does not ask for, it decides itself. Tunnels are IKEv2 (RFC 7296); IKEv1 stays off."
        )
    )
    return found


def _who(terms: Terms) -> list[Block]:
    ours = terms.gateway
    return [
        Heading("Who is who"),
        Row(
            "Gateway’s identity",
            (f"{ours.kind} ({ours.number}): {ours.value}",),
            "Devices ask for exactly this, and find it in the gateway’s certificate.",
            "RFC 7296 section 3.5, RFC 4945 section 3.1",
        ),
        *(
            Row(
                "Also answers to",
                (f"{former.kind} ({former.number}): {former.value}",),
                "Devices with an older bundle ask for this; it stands in the same certificate. Have the gateway show "
                "whichever of its identities a device asks for.",
                "RFC 7296 section 3.5, RFC 4945 section 3.1",
            )
            for former in terms.former
        ),
        Row(
            "Gateway’s certificate",
            (f"{pack.GATEWAY_CERTIFICATE}.pem", f"{pack.GATEWAY_KEY}.pem, its key, without passphrase"),
            "The key lets the gateway start with nobody there, so only the gateway may read it.",
            "RFC 7468",
        ),
        Row(
            "Devices’ identities",
            (f"ID_FQDN (2): CODE.{terms.identity_suffix}",),
            "Each device has its own code, which stands in its certificate as dNSName. Take whoever holds a "
            "certificate of the CA below: then no list of devices has to be kept here.",
            "RFC 4945 section 3.1.2",
        ),
        Row(
            "Trusted CA",
            (f"{pack.AUTHORITY_CERTIFICATE}.pem",),
            "This one and no other: whoever another CA signed for does not live here.",
            "RFC 5280 section 6.1",
        ),
        Row(
            "Revocation list",
            (f"{pack.LIST_PEM} or {pack.LIST_DER}, asked at every authentication",),
            "A device is stopped when this list says so. Where the list is missing or past its date, refuse everybody. "
            "Have it read anew after each delivery.",
            "RFC 5280 section 6.3",
        ),
    ]


def _signing(terms: Terms) -> list[Block]:
    return [
        Heading("How each side proves itself"),
        Row(
            "Method",
            ("Digital Signature (14), both ways",),
            "It names the hash, so nobody falls back to SHA-1 unseen. What follows “else” is for whoever does not know "
            "it. No shared password in its place.",
            "RFC 7427, RFC 8247 section 3",
        ),
        Row("Gateway signs with", (_signs(terms.gateway_signing),)),
        Row("Devices sign with", tuple(map(_signs, terms.device_signings))),
    ]


def _signs(one: Signing) -> str:
    return (
        f"{one.key_type}: {one.algorithm}, hash {one.hash_name} ({one.hash_number}); "
        f"else {one.older} ({one.older_number})"
    )


def _traffic(terms: Terms) -> list[Block]:
    inner = terms.pool
    through = "All their traffic goes through home." if terms.full else "Only what is at home goes through the tunnel."
    bits = 32 if inner.subnet.version == 4 else 128
    found: list[Block] = [
        Heading("What goes through"),
        Row(
            "Home’s side",
            tuple(f"{one.kind} ({one.number}): {one.subnet}, from {one.first} to {one.last}" for one in terms.home),
            f"{through} Any protocol, ports 0 to 65535.",
            "RFC 7296 section 3.13",
        ),
        Row(
            "Device’s side",
            (f"its inner address alone (/{bits})",),
            "No device can send in another’s name.",
            "RFC 7296 section 2.9",
        ),
        Row(
            "Inner addresses",
            (f"{inner.attribute} ({inner.number}): {inner.subnet}, from {inner.first} to {inner.last}",),
            "They lie apart from everything at home. The first is often the gateway’s own.",
            "RFC 7296 section 3.15",
        ),
        Row(
            "DNS for devices",
            tuple(f"{one.attribute} ({one.number}): {one.address}" for one in terms.servers) or ("none",),
            "Names at home are known there alone." if terms.servers else "Devices go on asking whom they ask now.",
            "RFC 7296 section 3.15",
        ),
    ]
    return found + _gaps(terms)


def _gaps(terms: Terms) -> list[Block]:
    """What the household's addresses leave open."""
    found: list[Block] = [
        Note(
            f"Home has no IPv{family} here, so a device’s IPv{family} goes its own way, beside the tunnel. "
            "Where everything is to go through home, that has to be switched off on the device."
        )
        for family in terms.beside
    ]
    if terms.unreached:
        own, shown = terms.pool.subnet.version, ", ".join(map(str, terms.unreached))
        told = f"Devices get IPv{own} addresses alone inside the tunnel, so they cannot reach {shown}."
        if terms.full:
            told += (
                f" What they do with the rest of IPv{10 - own} is for each device to say: it may pass the tunnel by."
            )
        found.append(Note(told))
    return found


def _way(terms: Terms) -> list[Block]:
    low = (
        f" IPv6 wants {IPV6_LOWEST}, so inside the tunnel it is sent in pieces."
        if terms.inner_mtu < IPV6_LOWEST
        else ""
    )
    return [
        Heading("On the way"),
        Row(
            "Open to the gateway",
            (f"UDP {IKE_PORT} and UDP {NAT_PORT}", "without NAT also IP protocol 50 (ESP)"),
            "The router at home passes these on to the gateway, over IPv4 and IPv6. The tunnel needs no more.",
            "RFC 7296 section 2.23, RFC 4303 section 2",
        ),
        Row(
            "NAT traversal",
            ("on; a keepalive of one octet after 20 idle seconds",),
            f"Devices sit behind routers. They begin on {IKE_PORT}, find the NAT and move to {NAT_PORT}.",
            "RFC 3947, RFC 3948 section 4",
        ),
        Row(
            "IKE fragmentation",
            ("on; datagrams of 1280 octets over IPv6, 576 over IPv4",),
            "Certificates make long messages, and many routers drop the pieces that IP itself would cut.",
            "RFC 7383 section 2.5.1",
        ),
        Row(
            "Inner MTU",
            (f"{terms.inner_mtu} octets, for an outer MTU of {terms.outer_mtu}",),
            f"What is left of a packet for the longest proposal above.{low}",
            "RFC 4303 section 2, RFC 3948 section 2.1",
        ),
        Row(
            "TCP MSS",
            (f"{terms.mss4} octets over IPv4, {terms.mss6} over IPv6",),
            "Connections agree on it at once, even where the message that a packet was too long gets lost.",
            "RFC 9293 section 3.7.1",
        ),
    ]


def _secret(terms: Terms) -> list[Block]:
    if not terms.extra_secret:
        return []
    return [
        Heading("Extra secret beside the certificate"),
        Row(
            "Which",
            ("extra-secrets.txt: a line per device, identity and secret in base64", "PPK_ID type: PPK_ID_FIXED (2)"),
            "What is recorded today stays closed to the computers of later years. IKE itself is covered from its next "
            "keys on, so let it take new ones before anything else is sent.",
            "RFC 8784 sections 5.1 and 6",
        ),
        Row(
            "Without it",
            ("refused once every device has it; until then NO_PPK_AUTH (16437) is taken",),
            "The gateway announces USE_PPK (16435). Not every device can take part: try one before refusing the rest.",
            "RFC 8784 section 3",
        ),
    ]
