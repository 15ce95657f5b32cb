"""A pick-up in its states, without a network: the practice household's laptop at its documentation address."""

from __future__ import annotations

import ipaddress
from datetime import UTC, datetime, timedelta
from typing import cast

from hearthkey.core.firewalls import Firewall
from hearthkey.core.home_addresses import HomeAddress, Medium, Standing
from hearthkey.core.secret import Secret
from hearthkey.core.sentences import tickets as sentences
from hearthkey.core.ticket_events import Ending, Event, Happened
from hearthkey.formats import link_code
from hearthkey.services.ticket_desk import OpenTicket
from hearthkey.ui.pages.two_channels import Side
from hearthkey.ui.pages.ways_out import WayOut
from hearthkey.ui.text import said
from hearthkey.ui.ticket_errands import Opened
from hearthkey.ui.window import Window

AT = datetime(2026, 5, 12, 10, 4, tzinfo=UTC)
_HOME = ipaddress.ip_network("198.51.100.0/24")
_PORT = 49152
_LINK = Secret(f"http://198.51.100.23:{_PORT}/k7m2qd4xw9c6hbsnz5vt3r8yja")
"""A link of the length of ours that leads nowhere (RFC 5737)."""
_WIFI = HomeAddress("wlan0", Medium.WIFI, ipaddress.ip_address("198.51.100.23"), _HOME, Standing.HOME)


class _Nowhere:
    """A ticket that nobody can use."""

    def close(self) -> None:
        """It never was open."""


def open_ticket(firewall: str = "") -> Opened:
    """A ticket that stands open on the Wi-Fi, with what is known of a firewall."""
    return Opened(
        cast("OpenTicket", _Nowhere()),
        _LINK,
        link_code.matrix(_LINK),
        AT + timedelta(minutes=10),
        372,
        _WIFI,
        (_WIFI,),
        firewall,
    )


def _show(window: Window, side: Side) -> None:
    leaving = window.hand_over.leaving
    leaving.way = WayOut.TICKET
    leaving.screen = leaving.screen.ask().answer(leaving.screen.question + 1, side)
    leaving.changed.emit()


def _begin(window: Window, opened: Opened, *events: Event) -> None:
    pickup = window.hand_over.leaving.pickup
    pickup.show(opened, events)
    _show(window, Side.TICKET)


def opened(window: Window) -> None:
    """Just opened; a firewall seems to be on."""
    told = said(sentences.firewall(Firewall.UFW, (_HOME,), _PORT))
    _begin(window, open_ticket(told))


def visited(window: Window) -> None:
    """The phone's page is open."""
    _begin(window, open_ticket(), Event(Happened.OPENED, AT, "198.51.100.45"))


def quiet(window: Window) -> None:
    """Nothing has arrived for a while."""
    _begin(window, open_ticket(), Event(Happened.QUIET, AT))


def picked_up(window: Window) -> None:
    """The phone has its file."""
    leaving = window.hand_over.leaving
    leaving.pickup.ending = Event(Happened.CLOSED, AT, "198.51.100.45", Ending.PICKED_UP)
    _show(window, Side.OVER)
