"""What is said about tickets: addresses, what happens at the door, and what the diary keeps."""

from __future__ import annotations

from hearthkey.core.firewalls import Firewall
from hearthkey.core.home_addresses import HomeAddress, Standing
from hearthkey.core.network import Subnet
from hearthkey.core.passes import Pass
from hearthkey.core.phrases import AND, Listing, Phrase
from hearthkey.core.sentences.sentence import Sentence
from hearthkey.core.sentences.words import FORMS
from hearthkey.core.ticket_events import Ending, Event, Happened
from hearthkey.core.tickets import MOST_CUT_OFF, MOST_WRONG

STANDINGS = {
    Standing.HOME: "in the home subnets",
    Standing.NEAR: "not in the home subnets, so only a phone in the same network ({network}) gets through",
    Standing.TUNNEL: "the inside of a tunnel; a phone that is not set up yet cannot reach it",
    Standing.BRIDGE: "a network inside this computer, for containers and virtual machines; no phone reaches it",
    Standing.LINK_LOCAL: "an address without a router (link-local); a link cannot name it",
    Standing.PUBLIC: "reachable from the internet, so nothing is offered there",
    Standing.LOOPBACK: "this computer itself; no phone reaches it",
}
"""How an address stands to a phone at home."""

_EVENTS = {
    Happened.OPENED: "The page was opened by {address}.",
    Happened.SENDING: "{address} is downloading.",
    Happened.INTERRUPTED: "The download to {address} broke off; it can be tried again.",
    Happened.WRONG: "{address} tried a wrong link.",
    Happened.OUTSIDE: "{address} asked from outside the home network and got nothing.",
    Happened.QUIET: "Nothing has arrived yet. Is the phone in the same Wi-Fi, and not in the one for guests? "
    "A firewall on this computer may be closed too.",
}
_ENDINGS = {
    Ending.PICKED_UP: "It was picked up by {address}. The ticket is closed.",
    Ending.EXPIRED: "The time is over and nobody picked it up. The ticket is closed.",
    Ending.GUESSED: f"Somebody tried {MOST_WRONG} wrong links, the last time from {{address}}. The ticket is closed.",
    Ending.CUT_OFF: f"The download broke off {MOST_CUT_OFF} times. The ticket is closed.",
    Ending.WITHDRAWN: "The ticket was closed here.",
}
_OPENING = {
    Firewall.UFW: "{commands}; take it back afterwards with sudo ufw delete and the same words.",
    Firewall.FIREWALLD: "sudo firewall-cmd --add-port={port}/tcp --timeout=15m; it goes by itself.",
    Firewall.NFTABLES: "let TCP port {port} from {networks} in for a quarter of an hour, in the input chain.",
}
_KEPT = {
    Ending.PICKED_UP: "The bundle of {title} was picked up by {address}.",
    Ending.EXPIRED: "The ticket of {title} ended; nobody had picked it up.",
    Ending.GUESSED: f"The ticket of {{title}} was closed after {MOST_WRONG} wrong links, the last from {{address}}.",
    Ending.CUT_OFF: f"The ticket of {{title}} was closed after {MOST_CUT_OFF} downloads that broke off.",
    Ending.WITHDRAWN: "The ticket of {title} was closed before anybody picked it up.",
}


def standing(address: HomeAddress) -> Sentence:
    """How an address stands."""
    return Sentence(STANDINGS[address.standing], {"network": address.network})


def event(one: Event) -> Sentence:
    """What happened, for the desk."""
    template = _EVENTS[one.what] if one.ending is None else _ENDINGS[one.ending]
    return Sentence(template, {"address": one.address})


def firewall(kind: Firewall, near: tuple[Subnet, ...], port: int) -> Sentence:
    """A firewall on this computer may be in the way; how to open the one port, for whoever administers it."""
    networks = tuple(str(one) for one in near)
    commands = "; ".join(f"sudo ufw allow from {one} to any port {port} proto tcp" for one in networks)
    return Sentence(
        "{name} seems to be on here and may refuse the phone. If the code does not open: {how}",
        {
            "name": kind.value,
            "how": Sentence(_OPENING[kind], {"networks": networks, "commands": commands, "port": port}),
        },
    )


def opened(chosen: Pass, form_values: tuple[str, ...], address: HomeAddress) -> Phrase:
    """For the diary: a ticket was opened."""
    forms = [Phrase(FORMS[one]) if one in FORMS else one for one in form_values]
    return Phrase(
        "The bundle of {title} was rehearsed and offered for pick-up at {address}, as {forms}.",
        {"title": chosen.title, "address": address.shown, "forms": Listing(forms, AND)},
    )


def ended(title: str, one: Event) -> Phrase:
    """For the diary: a ticket was closed."""
    if one.ending is None:
        raise ValueError(one.what)
    return Phrase(_KEPT[one.ending], {"title": title, "address": one.address})
