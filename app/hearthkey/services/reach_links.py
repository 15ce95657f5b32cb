"""What can be said of each link, from what was seen: decisions only, nothing is asked here."""

from __future__ import annotations

import hashlib
from collections.abc import Iterable, Sequence

from hearthkey.core.errors import Fact
from hearthkey.core.host import IKE_PORT
from hearthkey.core.household import Household
from hearthkey.core.names import as_address
from hearthkey.core.proposals import Proposal
from hearthkey.core.reach.chain import Link, Place, Side, Verdict
from hearthkey.core.reach.scopes import Address, Scope, scope_of
from hearthkey.core.transforms import Kind
from hearthkey.formats.ike_values import Message, Said, WireTransform
from hearthkey.formats.ike_write import address_mark
from hearthkey.services.conversing import Heard, Outcome
from hearthkey.services.reach_plan import CheckPlan
from hearthkey.services.reach_ports import Answers, Known, Peer

LONGEST_TTL = 300
"""Seconds that an answer about a changing address may be kept; common practice, no source."""
MOST_ADDRESSES = 4
"""A home has one address of either version, or two while it moves from one line to another."""


def _shown(addresses: Iterable[Address]) -> tuple[str, ...]:
    return tuple(map(str, addresses))


def _router(plan: CheckPlan) -> str | None:
    return None if plan.router is None else str(plan.router[0])


def name_link(plan: CheckPlan, answers: Answers, seconds: float) -> Link:
    """Whether the name leads home."""

    def link(verdict: Verdict, finding: str) -> Link:
        facts: dict[str, Fact] = {
            "host": plan.host,
            "addresses": _shown(answers.addresses),
            "ttl": answers.ttl,
            "count": answers.count,
            "router": _router(plan),
            "seconds": round(seconds),
        }
        return Link(Place.NAME, verdict, finding, facts)

    if as_address(plan.host) is not None:
        return link(Verdict.OK, "name-is-address")
    if answers.known is not Known.FOUND:
        silent = answers.known is Known.SILENT
        return link(Verdict.UNKNOWN if silent else Verdict.BROKEN, f"name-{answers.known.value}")
    if answers.count > MOST_ADDRESSES:
        return link(Verdict.BROKEN, "name-crowded")
    if plan.router is not None and _public(plan, plan.router[1]) and differs(answers.addresses, plan.router[0]):
        return link(Verdict.BROKEN, "name-differs")
    return link(Verdict.OK, "name-answers" if answers.ttl <= LONGEST_TTL else "name-slow")


def _public(plan: CheckPlan, scope: Scope) -> bool:
    """Whether an address counts everywhere; the practice household lives at those that are kept for documents."""
    return scope is Scope.GLOBAL or (scope is Scope.DOCUMENTATION and plan.household.practice)


def differs(addresses: Iterable[Address], router: Address) -> bool:
    """Whether a name leads elsewhere than to the router; over IPv6 the gateway has an address of its own."""
    same = [one for one in addresses if one.version == router.version]
    return router.version == 4 and bool(same) and router not in same


def address_link(plan: CheckPlan, addresses: Sequence[Address], side: Side, unheard: Sequence[Address]) -> Link:
    """Whether the addresses can be reached from outside in principle.

    Args:
        unheard: those that this laptop has no way to.
    """

    def link(verdict: Verdict, finding: str, address: Address | None = None) -> Link:
        about = address or (addresses[0] if addresses else None)
        facts: dict[str, Fact] = {
            "host": plan.host,
            "addresses": _shown(addresses),
            "address": None if about is None else str(about),
            "family": None if about is None else about.version,
            "router": _router(plan),
        }
        return Link(Place.ADDRESS, verdict, finding, facts)

    if not addresses:
        return link(Verdict.UNKNOWN, "address-unasked")
    for one in addresses:
        finding = _unfit(plan, one, side)
        if finding is not None:
            return link(Verdict.UNKNOWN if finding == "address-home" else Verdict.BROKEN, finding, one)
    if plan.router is not None and plan.router[1] is Scope.SHARED and any(one.version == 4 for one in addresses):
        return link(Verdict.BROKEN, "address-shared", plan.router[0])
    if plan.router is not None and plan.router[1] is Scope.PRIVATE:
        return link(Verdict.BROKEN, "address-behind")
    if len(unheard) == len(addresses):
        return link(Verdict.UNKNOWN, "address-other-family")
    return link(Verdict.OK, "address-fit")


def _unfit(plan: CheckPlan, address: Address, side: Side) -> str | None:
    """What is wrong with one address."""
    scope = scope_of(address)
    if _public(plan, scope):
        return None
    if scope is Scope.SHARED:
        return "address-shared"
    if scope in {Scope.PRIVATE, Scope.UNIQUE_LOCAL, Scope.LINK_LOCAL, Scope.LOOPBACK}:
        return "address-home" if side is Side.INSIDE else "address-private"
    return "address-unfit"


def port_link(port: int, talks: Sequence[tuple[Peer, Heard]], side: Side) -> Link:
    """Whether a port answers, at every address that was tried."""
    place = Place.PORT_500 if port == IKE_PORT else Place.PORT_4500

    def link(verdict: Verdict, finding: str, peer: Peer, heard: Heard, other: str | None = None) -> Link:
        facts: dict[str, Fact] = {"address": str(peer.address), "port": port, "packets": heard.packets, "other": other}
        return Link(place, verdict, finding, facts | {"milliseconds": round(heard.after * 1000)})

    if not talks:
        return Link(place, Verdict.UNKNOWN, "not-reached")
    spoke = [one for one in talks if one[1].spoke]
    mute = [one for one in talks if not one[1].spoke]
    if spoke and mute and side is not Side.INSIDE:
        return link(Verdict.BROKEN, "port-partly", *spoke[0], other=str(mute[0][0].address))
    if spoke:
        return link(Verdict.OK, "port-answers", *spoke[0])
    outcome = mute[0][1].outcome
    if outcome is Outcome.SILENT and side is Side.INSIDE:
        return link(Verdict.UNKNOWN, "port-silent-inside", *mute[0])
    # Without a way out there was no socket to ask through: some network on the way said this.
    unsaid = outcome is Outcome.UNROUTABLE and side is Side.INSIDE
    return link(Verdict.UNKNOWN if unsaid else Verdict.BROKEN, f"port-{outcome.value}", *mute[0])


def best(talks: Iterable[tuple[Peer, Heard]]) -> tuple[Peer, Heard] | None:
    """The talk that says most about the gateway: an answer before a refusal before noise."""
    spoke = [one for one in talks if one[1].spoke]
    order = list(Outcome)
    return min(spoke, key=lambda one: order.index(one[1].outcome), default=None)


_GATEWAY = {Outcome.OTHER: "gateway-other", Outcome.OLDER: "gateway-older", Outcome.UPSET: "gateway-upset"}


def gateway_link(talk: tuple[Peer, Heard] | None) -> Link:
    """Whether what answers is a gateway."""
    if talk is None:
        return Link(Place.GATEWAY, Verdict.UNKNOWN, "not-reached")
    peer, heard = talk
    facts: dict[str, Fact] = {"address": str(peer.address), "version": heard.number, "note": heard.number}
    finding = _GATEWAY.get(heard.outcome)
    if finding is None:
        return Link(Place.GATEWAY, Verdict.OK, "gateway-answers", {"address": str(peer.address)})
    return Link(Place.GATEWAY, Verdict.BROKEN, finding, facts)


def proposals_link(plan: CheckPlan, talk: tuple[Peer, Heard] | None) -> Link:
    """Whether the gateway and the household's devices speak alike."""
    heard = None if talk is None else talk[1]
    if heard is not None and heard.outcome is Outcome.NO_PROPOSAL:
        return Link(Place.PROPOSALS, Verdict.BROKEN, "proposals-refused")
    if heard is not None and heard.outcome is Outcome.OTHER_GROUP:
        return Link(Place.PROPOSALS, Verdict.BROKEN, "proposals-group", {"group": heard.number})
    chosen = None if heard is None or heard.message is None else heard.message.chosen
    if chosen is None or heard is None or heard.outcome is not Outcome.ANSWERED:
        return Link(Place.PROPOSALS, Verdict.UNKNOWN, "not-reached")
    names = _named(chosen.transforms, plan.proposals)
    if names is None:
        return Link(Place.PROPOSALS, Verdict.BROKEN, "proposals-foreign")
    return Link(Place.PROPOSALS, Verdict.OK, "proposals-taken", {"chosen": ", ".join(names)})


def _named(chosen: Sequence[WireTransform], proposals: Iterable[Proposal]) -> tuple[str, ...] | None:
    """The chosen transforms by name, if one proposal holds them all and has each of its types once.

    Beside a cipher that protects integrity itself, NONE may be named for it (RFC 7296 section 3.3.3).
    """
    picked = [one for one in chosen if (one.kind, one.number) != (Kind.INTEG, 0)]
    for one in proposals:
        known = {(int(each.kind), each.number, each.bits): str(each) for each in one.transforms}
        found = [known[key] for each in picked if (key := (each.kind, each.number, each.bits)) in known]
        if len(found) == len(picked) and sorted(each.kind for each in picked) == sorted({key[0] for key in known}):
            return tuple(found)
    return None


def trust_link(marks: Sequence[bytes], talk: tuple[Peer, Heard] | None) -> Link:
    """Whether the gateway asks for certificates of this household.

    Args:
        marks: SHA-1 of the SubjectPublicKeyInfo of each of the household's CAs (RFC 7296 section 3.7).
    """
    message = None if talk is None else talk[1].message
    if message is None or message.chosen is None:
        return Link(Place.TRUST, Verdict.UNKNOWN, "not-reached")
    asked = message.authorities
    if not asked:
        return Link(Place.TRUST, Verdict.UNKNOWN, "trust-unsaid")
    if set(marks) & set(asked):
        return Link(Place.TRUST, Verdict.OK, "trust-ours")
    if len(asked) == 1:
        return Link(Place.TRUST, Verdict.BROKEN, "trust-one-other")
    return Link(Place.TRUST, Verdict.BROKEN, "trust-others", {"count": len(asked)})


def rewritten_link(talk: tuple[Peer, Heard] | None, here: tuple[str, int] | None) -> Link:
    """Which addresses were changed on the way (RFC 7296 section 2.23); nothing of it is wrong."""
    message = None if talk is None else talk[1].message
    if talk is None or message is None or message.chosen is None or here is None:
        return Link(Place.REWRITTEN, Verdict.UNKNOWN, "not-reached")
    notes = message.notes
    if not {Said.NAT_DETECTION_SOURCE_IP, Said.NAT_DETECTION_DESTINATION_IP} <= set(notes):
        return Link(Place.REWRITTEN, Verdict.OK, "rewritten-unsaid")
    peer = talk[0]
    theirs = notes[Said.NAT_DETECTION_SOURCE_IP] != _mark(message, str(peer.address), peer.port)
    ours = notes[Said.NAT_DETECTION_DESTINATION_IP] != _mark(message, *here)
    finding = {(False, False): "none", (True, False): "here", (False, True): "there", (True, True): "both"}
    return Link(Place.REWRITTEN, Verdict.OK, f"rewritten-{finding[ours, theirs]}")


def _mark(message: Message, address: str, port: int) -> bytes:
    return address_mark(message.initiator, message.responder, address, port)


def comes_from(message: Message | None, address: Address) -> bool:
    """Whether the gateway saw this laptop under an address, whatever the port: 65,535 tries of a hash.

    A laptop that the gateway sees under home's own address stands behind the same router.
    """
    seen = None if message is None else message.notes.get(Said.NAT_DETECTION_DESTINATION_IP)
    if message is None or seen is None:
        return False
    begun = hashlib.sha1(message.initiator + message.responder + address.packed, usedforsecurity=False)
    for port in range(1, 1 << 16):
        tried = begun.copy()
        tried.update(port.to_bytes(2, "big"))
        if tried.digest() == seen:
            return True
    return False


def side_of(household: Household, here: Iterable[str], there: Sequence[Address], *, at_home: bool) -> Side:
    """Where this laptop stands, by the addresses that its packets to the gateway begin at."""
    ours = [as_address(one.partition("%")[0]) for one in here]
    if not ours:
        return Side.NOWHERE
    inner = (*household.home_subnets, household.tunnel_subnet)
    near = any(
        one is not None
        and (
            one.is_loopback or one in there or any(one.version == subnet.version and one in subnet for subnet in inner)
        )
        for one in ours
    )
    return Side.INSIDE if near or at_home else Side.OUTSIDE
