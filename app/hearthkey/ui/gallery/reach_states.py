"""The pages about the way in, in the states that look different."""

from __future__ import annotations

from dataclasses import replace

from hearthkey.core.errors import Fact
from hearthkey.core.reach.chain import Chain, LastChecks, Link, Place, Side, Verdict
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.drawer.forwarding_page import ForwardingPage
from hearthkey.ui.drawer.network_page import NetworkPage
from hearthkey.ui.drawer.way_in_page import WayInPage
from hearthkey.ui.gallery.looks import PLAIN, SPECIAL
from hearthkey.ui.window import Window


def network(window: Window) -> None:
    """The plan, with what the householder knows."""
    if not isinstance(window.drawer.page(), NetworkPage):
        window.ways.network_plan.emit()
    page = window.drawer.page()
    if isinstance(page, NetworkPage) and not page.router.text():
        page.router.setText("100.64.7.9")
        page.upload.setText("10")
        page.known.open(shown=False)
        page.table.open(shown=True)
        page.look()


def forwarding(window: Window) -> None:
    """The sheet for a gateway whose address is known."""
    if not isinstance(window.drawer.page(), ForwardingPage):
        window.ways.forwarding.emit()
    page = window.drawer.page()
    if isinstance(page, ForwardingPage) and not page.inside.text():
        page.inside.setText("198.51.100.2")
        page.look()


_HOME: dict[str, Fact] = {"host": "home.quince.example", "addresses": ("203.0.113.9",), "ttl": 300}
_THERE: dict[str, Fact] = {
    "address": "203.0.113.9",
    "port": 500,
    "milliseconds": 31,
    "packets": 3,
    "chosen": "ENCR_AES_GCM_16 256, PRF_HMAC_SHA2_384, Curve25519",
}
_FITS = (Link(Place.NAME, Verdict.OK, "name-answers", _HOME), Link(Place.ADDRESS, Verdict.OK, "address-fit", _HOME))


def _way_in(window: Window) -> tuple[WayInPage, Snapshot] | None:
    if not isinstance(window.drawer.page(), WayInPage):
        window.ways.way_in.emit()
    page, seen = window.drawer.page(), window.outside.errands.last
    return (page, seen) if isinstance(page, WayInPage) and seen is not None else None


def unchecked(window: Window) -> None:
    """Nobody has checked yet: the household as it really is, whatever an earlier state let the panels see."""
    found = _way_in(window)
    if found is not None:
        _, seen = found
        window.outside.errands.seen.emit(seen)


def walking(window: Window) -> None:
    """A check under way: the packet is at the gateway's ports."""
    found = _way_in(window)
    if found is not None:
        page, _ = found
        page.voice.speak(page.tr("On the way …"))
        page.side.speak("")
        known = {one.place: one for one in _FITS}
        page.path.show_links([one for one in Place if "front" not in one.value], known, live=True)


def stopped(window: Window) -> None:
    """The way in stops at port 4500, from outside."""
    found = _way_in(window)
    if found is not None:
        page, seen = found
        page.show_chain(stopped_chain(seen))


def stopped_chain(seen: Snapshot) -> Chain:
    """A check from outside that stops at port 4500."""
    links = (
        *_FITS,
        Link(Place.PORT_500, Verdict.OK, "port-answers", _THERE),
        Link(Place.PORT_4500, Verdict.BROKEN, "port-silent", {**_THERE, "port": 4500}),
        Link(Place.GATEWAY, Verdict.OK, "gateway-answers", _THERE),
        Link(Place.PROPOSALS, Verdict.OK, "proposals-taken", _THERE),
        Link(Place.TRUST, Verdict.OK, "trust-ours"),
        Link(Place.REWRITTEN, Verdict.OK, "rewritten-there"),
        Link(Place.CLOCK, Verdict.UNKNOWN, "clock-untold"),
    )
    return Chain("home.quince.example", seen.at, Side.OUTSIDE, links)


def turned_away(window: Window) -> None:
    """Everything is in order but the last: the web front lets no device in."""
    found = _way_in(window)
    if found is not None:
        page, seen = found
        page.show_chain(turned_away_chain(seen))


def turned_away_chain(seen: Snapshot) -> Chain:
    """A check from outside that stops at the last link of the web front."""
    until = {"host": "home.quince.example", "until": "2028-05-12"}
    tried = {"person": "Tomasz", "device": "laptop", "seen": "HTTP 400"}
    links = (
        *_FITS,
        Link(Place.TRUST, Verdict.OK, "trust-ours"),
        Link(Place.FRONT, Verdict.OK, "front-answers", {**_THERE, "port": 443}),
        Link(Place.FRONT_TLS, Verdict.OK, "tls-speaks", {"version": "TLSv1.3"}),
        Link(Place.FRONT_CERTIFICATE, Verdict.OK, "certificate-ours", until),
        Link(Place.FRONT_ASKS, Verdict.OK, "asks-ours"),
        Link(Place.FRONT_IN, Verdict.BROKEN, "in-refused", tried),
        Link(Place.CLOCK, Verdict.OK, "clock-right", {"seconds": 0}),
    )
    return Chain("home.quince.example", seen.at, Side.OUTSIDE, links)


def on_the_board(window: Window) -> None:
    """The strip with the last check from outside: each link a sign, and where it stops in words."""
    window.ways.back.emit()
    window.ways.back.emit()
    seen = window.outside.errands.last
    if seen is not None and seen.household is not None:
        real = replace(seen.household, practice=False)
        window.outside.errands.seen.emit(replace(seen, household=real, way_in=LastChecks(None, stopped_chain(seen))))


STATES = {
    "board-way-in": (on_the_board, PLAIN[:2]),
    "way-in": (unchecked, PLAIN[:2]),
    "way-in-walking": (walking, PLAIN[:2]),
    "way-in-stopped": (stopped, PLAIN + SPECIAL[:2]),
    "way-in-turned-away": (turned_away, PLAIN[:2]),
    "network-plan": (network, PLAIN + SPECIAL[:2]),
    "forwarding-sheet": (forwarding, PLAIN + SPECIAL[:1]),
}
"""What each state is called, and in which looks it is drawn."""
