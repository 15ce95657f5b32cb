"""What is said about proofs: what happens at the door, what the diary keeps, what the sheet shows."""

from __future__ import annotations

from hearthkey.core.passes import Pass
from hearthkey.core.phrases import Phrase
from hearthkey.core.proof_doors import Ending, Event, Happened
from hearthkey.core.proofs import Proof, Seen, Way
from hearthkey.core.sentences.sentence import Sentence
from hearthkey.core.tickets import MOST_WRONG

_EVENTS = {
    Happened.AT_HOME: "At home: nothing proved yet. {address} is in the network at home, not in the tunnel. Wi-Fi off, "
    "connect, then open the link again.",
    Happened.HIDDEN: "Nothing proved yet. {address} is an address at home: either the device is in the Wi-Fi at home, "
    "or the gateway hides it behind its own address. If {address} is the gateway’s, say so, and it counts.",
    Happened.WRONG: "{address} tried a wrong link.",
    Happened.ELSEWHERE: "{address} asked from neither the tunnel nor home, and got nothing.",
    Happened.QUIET: "Nothing has arrived yet. Is the device connected, and does the gateway hold its newest files? "
    "A firewall on this computer may be closed too.",
}
_ENDINGS = {
    Ending.PROVED: "{title} is in: the link was opened through the tunnel, from {address}.",
    Ending.EXPIRED: "The time is over and nothing was proved. The link is closed.",
    Ending.GUESSED: f"Somebody tried {MOST_WRONG} wrong links, the last time from {{address}}. The link is closed.",
    Ending.WITHDRAWN: "The link was closed here.",
}
_THROUGH_GATEWAY = (
    "{title} is in: the link was opened through the gateway, which shows itself as {address}. Which device in the "
    "tunnel it was, or the gateway’s own computer, that address cannot say."
)
_KEPT = "{title} was seen to get in: its link was opened through the tunnel, from {address}."
_KEPT_THROUGH_GATEWAY = "{title} was seen to get in: its link was opened through the gateway, from {address}."
_KEPT_TOLD = "{person} told that {title} gets in, on mobile data."
_KEPT_TOLD_NEW = "{person} told that {title} gets in with its new pass, on mobile data."

_WAYS = {
    Way.TUNNEL: "seen to get in, from {address}",
    Way.TOLD: "said to get in, on mobile data",
    Way.OTHER: "seen to get in",
}


def event(title: str, one: Event) -> Sentence:
    """What happened, for whoever opened the door."""
    facts = {"title": title, "address": one.address}
    if one.ending is None:
        return Sentence(_EVENTS[one.what], facts)
    if one.ending is Ending.PROVED and one.seen is Seen.GATEWAY:
        return Sentence(_THROUGH_GATEWAY, facts)
    return Sentence(_ENDINGS[one.ending], facts)


def kept(chosen: Pass, one: Event) -> Phrase:
    """For the diary: a link was opened from inside."""
    template = _KEPT_THROUGH_GATEWAY if one.seen is Seen.GATEWAY else _KEPT
    return Phrase(template, {"title": chosen.title, "address": one.address})


def kept_told(chosen: Pass, *, beside: bool = False) -> Phrase:
    """For the diary: somebody told that it works; `beside` as in `told`."""
    return Phrase(_KEPT_TOLD_NEW if beside else _KEPT_TOLD, {"title": chosen.title, "person": chosen.person})


def told(chosen: Pass, *, beside: bool = False) -> Sentence:
    """What writing it down by hand would do.

    Args:
        beside: the device gets in with an older pass as well, so that it has to be said with which.
    """
    if beside:
        return Sentence(
            "{title} then counts as proved with its new pass, because {person} says so, and the old pass goes for "
            "good. That stays written down and cannot be taken back. Write it down only if the device was connected "
            "with the new profile, and Wi-Fi was off.",
            {"title": chosen.title, "person": chosen.person},
        )
    return Sentence(
        "{title} then counts as proved today, because {person} says so. That stays written down and cannot be taken "
        "back. It is worth something only if Wi-Fi was off.",
        {"title": chosen.title, "person": chosen.person},
    )


def offered(chosen: Pass, where: str) -> Sentence:
    """What opening the door would do."""
    return Sentence(
        "{title} proves that it gets in by opening a link at {where} through the tunnel.",
        {"title": chosen.title, "where": where},
    )


def counts(*, hides: bool, inside: object, tunnel: object) -> Sentence:
    """What will count as a proof, and what cannot be told."""
    facts = {"inside": inside, "tunnel": tunnel}
    if not hides:
        return Sentence("What comes from {tunnel} counts. From the network at home it proves nothing.", facts)
    if inside is None:
        return Sentence(
            "The gateway hides devices behind its own address at home, so a request through the tunnel may look like "
            "one from home. Name that address, and it counts; without it only what comes from {tunnel} does.",
            facts,
        )
    return Sentence(
        "What comes from {tunnel} counts, and from the gateway’s own address {inside}. Which device in the tunnel it "
        "was, or the gateway’s own computer, that address cannot say.",
        facts,
    )


def way(proof: Proof) -> Sentence:
    """How it was seen, for a life line."""
    return Sentence(_WAYS[proof.way], {"address": proof.address})
