"""The rows of the settings sheet about keys: what is proposed for IKE and ESP, and how long keys live."""

from __future__ import annotations

from collections.abc import Iterable

from hearthkey.core.proposals import Proposal
from hearthkey.core.transforms import Kind, Protocol, Transform
from hearthkey.core.tunnel import CHILD_REKEY, HOUR, IKE_REKEY, LONGEST_CHILD, Terms
from hearthkey.formats.sheet import Block, Heading, Row


def ike_rows(terms: Terms) -> list[Block]:
    """What is agreed first, and proves who is who."""
    hours = terms.reauthentication // HOUR
    why = f"Exactly these values, and none beside them, are the suite of {terms.suite}." if terms.suite else ""
    return [
        Heading("IKE SA"),
        *_proposals(terms.of(Protocol.IKE), "RFC 8247 section 2", why),
        Row(
            "New keys after",
            (f"{IKE_REKEY // HOUR} hours",),
            "Common practice; no standard names a number.",
            "RFC 7296 section 2.8",
        ),
        Row(
            "Proving anew after",
            (f"{hours} {_hours(hours)}, then the session ends",),
            "New keys prove nothing anew: the open session of a stolen device lives on until it has to show its "
            "certificate again and the list is asked. A day is the longest this household allows.",
            "RFC 7296 section 2.8.3; RFC 4478 tells devices the time",
        ),
    ]


def _hours(number: int) -> str:
    return "hour" if number == 1 else "hours"


def esp_rows(terms: Terms) -> list[Block]:
    """What carries the packets."""
    return [
        Heading("ESP, inside it"),
        Row(
            "Mode",
            (f"tunnel; Extended Sequence Numbers: {_counting(terms)}",),
            "Whole packets travel inside, with their inner addresses.",
            "RFC 4303 sections 2.2.1 and 3.1.2",
        ),
        *_proposals(terms.of(Protocol.ESP), "RFC 8221 sections 5 and 6", ""),
        Row(
            "New keys after",
            (f"{CHILD_REKEY // HOUR} {_hours(CHILD_REKEY // HOUR)}, end after {LONGEST_CHILD // HOUR} hours",),
            "Common practice. The key exchange above is used then; the first keys come from IKE.",
            "RFC 7296 sections 1.3.3 and 2.8",
        ),
    ]


def _proposals(found: tuple[Proposal, ...], source: str, why: str) -> list[Block]:
    """The rows of a protocol's proposals; reason and source stand once, under the last."""
    last = len(found) - 1
    order = "In this order: the strongest that a device knows is taken." if last else ""
    told = " ".join(part for part in (order, why) if part)
    return [
        Row(
            f"Proposal {place + 1}" if last else "Proposal",
            _transforms(one),
            told if place == last else "",
            source if place == last else "",
        )
        for place, one in enumerate(found)
    ]


def _transforms(one: Proposal) -> tuple[str, ...]:
    cipher, integrity = one.encryption, one.integrity
    bits = f", {cipher.bits} bits" if cipher.bits else ""
    lines = [
        f"encryption: {cipher.name} ({cipher.number}){bits}",
        "integrity: " + ("NONE (0), encryption sees to it" if integrity is None else _shown((integrity,))),
    ]
    if one.of(Kind.PRF):
        lines.append(f"pseudorandom function: {_shown(one.of(Kind.PRF))}")
    return (*lines, f"key exchange: {_shown(one.of(Kind.KE))}")


def _shown(found: Iterable[Transform]) -> str:
    return ", ".join(f"{part.name} ({part.number})" for part in found)


def _counting(terms: Terms) -> str:
    """The ESN transforms of all ESP proposals (RFC 7296 section 3.3.2, transform type 5)."""
    words = {1: "yes (1)", 0: "no (0)"}
    found = dict.fromkeys(part.number for one in terms.of(Protocol.ESP) for part in one.of(Kind.ESN))
    return " or ".join(words[number] for number in found)
