"""A household at the table: three devices wait, and tickets open, tell and close as the test says."""

from __future__ import annotations

import ipaddress
from dataclasses import dataclass, replace
from datetime import datetime, timedelta
from typing import cast

from PySide6.QtCore import QObject, QTimer
from PySide6.QtWidgets import QLabel, QPushButton, QWidget

from hearthkey.core.bundle import Form
from hearthkey.core.certificates import end_of_day
from hearthkey.core.home_addresses import HomeAddress, Medium, Standing
from hearthkey.core.passes import Pass
from hearthkey.core.secret import Secret
from hearthkey.core.ticket_events import Ending, Event, Happened
from hearthkey.formats import link_code
from hearthkey.services.snapshot import Snapshot
from hearthkey.services.ticket_desk import OpenTicket
from hearthkey.ui.desk.desk import Desk
from hearthkey.ui.pages.two_channels import Side
from hearthkey.ui.tasks import Failed, Then
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.ticket_errands import Opened
from hearthkey.ui.ways import Ways
from tests.ui.leaving.household import LAPTOP, FakeErrands, FakeSticks
from tests.ui.practice import NOW, PASSES, made_pass, snapshot

TABLET = made_pass("Odile", "tablet", made=LAPTOP.not_before + timedelta(days=1), ends=LAPTOP.not_after)
GUEST = made_pass("Guest", "tablet", made=NOW, ends=end_of_day(2026, 5, 15), guest=True)
TABLE = (TABLET, LAPTOP, GUEST)
"""A phone's cousin, a computer, and a guest's device; all of them wait."""

HOME = ipaddress.ip_network("198.51.100.0/24")
WIFI = HomeAddress("wlan0", Medium.WIFI, ipaddress.ip_address("198.51.100.23"), HOME, Standing.HOME)
PHONE = "198.51.100.45"


def without_table() -> tuple[Pass, ...]:
    """Everybody else's."""
    return tuple(one for one in PASSES if one != LAPTOP)


def at_table() -> Snapshot:
    """The household with them."""
    return snapshot(passes=(*without_table(), *TABLE))


@dataclass(eq=False)
class FakeTicket:
    """A ticket that leads nowhere.

    Args:
        link: what its code says; another one for each ticket.
    """

    link: Secret[str]


class TableErrands(FakeErrands):
    """Tickets without a network.

    Attributes:
        doors: the tickets that stand open.
        heard: what happened at them, to be told at the next look.
    """

    def __init__(self) -> None:
        super().__init__(at_table())
        self.doors: list[FakeTicket] = []
        self.heard: list[Event] = []
        self.made = 0

    def open_ticket(
        self, serial: str, form: Form, address: str | None, context: QObject, then: Then[Opened], failed: Failed
    ) -> None:
        """Open one at once, or when the test says so."""

        def give() -> None:
            self.made += 1
            link = Secret(f"http://198.51.100.23:49152/k7m2qd4xw9c6hbsnz5vt3r{self.made:04d}")
            ticket = FakeTicket(link)
            self.doors.append(ticket)
            until = NOW + timedelta(minutes=10)
            door = cast("OpenTicket", ticket)
            then(Opened(door, link, link_code.matrix(link), until, 600, WIFI, (WIFI,), ""))

        self._give("open_ticket", (serial, form, address), context, give, failed)

    def close_ticket(self, ticket: OpenTicket, then: object = None) -> None:
        """Close it; one that was closed stays closed."""
        del then
        self.doors = [one for one in self.doors if cast("OpenTicket", one) is not ticket]

    def hear_ticket(self, ticket: OpenTicket, context: QObject, then: Then[tuple[Event, ...]], failed: Failed) -> None:
        """What the test laid ready; a ticket that has ended closes itself."""
        del context, failed
        told, self.heard = tuple(self.heard), []
        if any(one.what is Happened.CLOSED for one in told):
            self.close_ticket(ticket)
        then(told)

    def extend_ticket(self, ticket: OpenTicket, context: QObject, then: Then[datetime], failed: Failed) -> None:
        """Ten minutes more."""
        del ticket, context, failed
        then(NOW + timedelta(minutes=20))


class Table:
    """The desk with everything around it in the test's hands."""

    def __init__(self, theme: Theme) -> None:
        self.errands = TableErrands()
        self.ways = Ways()
        self.window = QWidget()
        self.desk = Desk(theme, self.errands, self.ways, FakeSticks(), self.window)
        self.sitting = self.desk.sitting

    def happens(self, what: Happened, ending: Ending | None = None) -> None:
        """Something happens at the door, and the desk looks."""
        self.errands.heard.append(Event(what, NOW, PHONE, ending))
        look = self.sitting.leaving.pickup.findChildren(QTimer)[0]
        look.timeout.emit()

    def fetched(self) -> None:
        """The device has its file."""
        self.happens(Happened.CLOSED, Ending.PICKED_UP)

    def asked(self) -> None:
        """It has its file, the words were shown and covered, and whoever sits there wants to go on."""
        if self.sitting.leaving.screen.side is not Side.PASSPHRASE:
            self.sitting.act()
        self.fetched()
        self.sitting.act()
        self.sitting.onward()

    def links(self) -> list[str]:
        """Of every door that stands open."""
        return [one.link.reveal() for one in self.errands.doors]


def everything_said(root: QWidget) -> str:
    """Every text, name and description of what is visible, as eyes and a screen reader find it."""
    found = [root.windowTitle()]
    for one in root.findChildren(QWidget):
        if one.isVisibleTo(root):
            found += [one.accessibleName(), one.accessibleDescription(), one.toolTip()]
            found += [one.text()] if isinstance(one, QLabel | QPushButton) else []
    return "\n".join(found)


def handed(one: Pass) -> Pass:
    """The same, in use."""
    return replace(one, handed_over=NOW)
