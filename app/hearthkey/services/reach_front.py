"""The links of the web front: TCP, TLS, whose certificate it shows, whom it asks for and lets in, and its clock."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from datetime import datetime

from hearthkey.core.errors import Fact, Refused
from hearthkey.core.forwarding import WEB_PORT
from hearthkey.core.reach.chain import Link, Place, Side, Verdict
from hearthkey.core.reach.scopes import Address
from hearthkey.pki import front_look, judge, read
from hearthkey.pki.front_look import FrontSeen
from hearthkey.services import reach_in
from hearthkey.services.reach_plan import CheckPlan
from hearthkey.services.reach_ports import Dials, Failure

SECONDS = 3.0
"""For connecting and for all that follows."""
LARGEST_GAP = 300
"""Seconds that two clocks may differ: less than that spoils no certificate (common practice, no source)."""
_LATER = (Place.FRONT_TLS, Place.FRONT_CERTIFICATE, Place.FRONT_ASKS, Place.FRONT_IN)
_TIMES = {"certificate-ended", "certificate-not-yet"}


def links(plan: CheckPlan, addresses: Sequence[Address], side: Side, dials: Dials, now: datetime) -> Iterator[Link]:
    """Connect to the first address that takes connections, and look; each link as soon as it is known."""
    if not addresses:
        yield Link(Place.FRONT, Verdict.UNKNOWN, "not-reached")
        yield from _unreached(_LATER)
        return
    address = addresses[0]
    facts: dict[str, Fact] = {"address": str(address), "port": WEB_PORT}
    with dials(address, WEB_PORT, SECONDS) as stream:
        if isinstance(stream, Failure):
            inside = side is Side.INSIDE and stream is Failure.SILENT
            otherwise = "front-silent-inside" if inside else "front-silent"
            finding = "front-refused" if stream is Failure.REFUSED else otherwise
            yield Link(Place.FRONT, Verdict.UNKNOWN if inside else Verdict.BROKEN, finding, facts)
            yield from _unreached(_LATER)
            return
        yield Link(Place.FRONT, Verdict.OK, "front-answers", facts)
        seen = front_look.look(stream, plan.host)
    if seen.failed:
        yield Link(Place.FRONT_TLS, Verdict.BROKEN, "tls-failed", {"port": WEB_PORT, "seen": seen.failed})
        yield from _unreached(_LATER[1:])
        return
    yield Link(Place.FRONT_TLS, Verdict.OK, "tls-speaks", {"version": seen.version})
    certificate = _certificate(plan, seen, now)
    yield certificate
    yield _asks(plan, seen)
    # Where nobody is asked, getting in shows nothing.
    if certificate.verdict is Verdict.OK and seen.asks:
        yield reach_in.link(plan, address, seen.chain[0], dials)
    else:
        yield Link(Place.FRONT_IN, Verdict.UNKNOWN, "not-reached")
    yield _clock(seen, now)


def _unreached(places: Sequence[Place]) -> Iterator[Link]:
    yield from (Link(one, Verdict.UNKNOWN, "not-reached") for one in places)
    yield Link(Place.CLOCK, Verdict.UNKNOWN, "clock-untold")


def _certificate(plan: CheckPlan, seen: FrontSeen, now: datetime) -> Link:
    def broken(finding: str, told: str = "") -> Link:
        return Link(Place.FRONT_CERTIFICATE, Verdict.BROKEN, finding, {"host": plan.host, "seen": told})

    try:
        judge.check_path(seen.chain[0], plan.authorities, None, now, intermediates=seen.chain[1:])
        judge.check_name(seen.chain[0], plan.host)
        until = read.certificate_facts(seen.chain[0]).not_after
    except (Refused, IndexError) as error:
        code = error.code if isinstance(error, Refused) else ""
        if code in _TIMES:
            return broken("certificate-ended", str(error.facts.get("seen", "")) if isinstance(error, Refused) else "")
        return broken("certificate-name" if code == "name-differs" else "certificate-others")
    facts: dict[str, Fact] = {"host": plan.host, "until": f"{until:%Y-%m-%d}"}
    return Link(Place.FRONT_CERTIFICATE, Verdict.OK, "certificate-ours", facts)


def _asks(plan: CheckPlan, seen: FrontSeen) -> Link:
    if not seen.asks:
        return Link(Place.FRONT_ASKS, Verdict.BROKEN, "asks-nobody")
    if not seen.names:
        return Link(Place.FRONT_ASKS, Verdict.UNKNOWN, "asks-anybody")
    if set(seen.names) & set(front_look.subjects(plan.authorities)):
        return Link(Place.FRONT_ASKS, Verdict.OK, "asks-ours")
    return Link(Place.FRONT_ASKS, Verdict.BROKEN, "asks-others")


def _clock(seen: FrontSeen, now: datetime) -> Link:
    if seen.date is None:
        return Link(Place.CLOCK, Verdict.UNKNOWN, "clock-untold")
    gap = abs(round((seen.date - now).total_seconds()))
    if gap > LARGEST_GAP:
        return Link(Place.CLOCK, Verdict.BROKEN, "clock-wrong", {"minutes": min(gap // 60, 1 << 40)})
    return Link(Place.CLOCK, Verdict.OK, "clock-right", {"seconds": gap})
