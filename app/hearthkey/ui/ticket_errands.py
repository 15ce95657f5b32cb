"""What the window asks of tickets. A ticket lives on the lane, and ends with it."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from datetime import datetime

from PySide6.QtCore import QObject

from hearthkey.core.bundle import Form
from hearthkey.core.home_addresses import HomeAddress
from hearthkey.core.secret import Secret
from hearthkey.core.sentences import tickets as sentences
from hearthkey.core.ticket_events import Event, Happened
from hearthkey.formats import link_code
from hearthkey.formats.codes import Matrix
from hearthkey.services import looking
from hearthkey.services.ticket_desk import OpenTicket
from hearthkey.ui.copy_errands import CopyErrands
from hearthkey.ui.tasks import Failed, Then
from hearthkey.ui.text import said

MOST_HEARD = 50
"""Events told at one time; whoever asks more often than that waits for the next look."""


@dataclass(frozen=True)
class Opened:
    """A ticket that was just opened.

    Args:
        ticket: only ever used on the lane.
        link: whoever has it can pick the bundle up.
        code: the link as modules, quiet zone included.
        until: when it ends, UTC.
        seconds: how long that is from now.
        address: where it is bound.
        addresses: all that this computer has.
        firewall: what is known of a firewall on this computer, in words; empty where nothing is.
    """

    ticket: OpenTicket
    link: Secret[str]
    code: Matrix
    until: datetime
    seconds: int
    address: HomeAddress
    addresses: tuple[HomeAddress, ...]
    firewall: str


class TicketErrands(CopyErrands):
    """The tickets' part of the errands; see `Lane` for the shape of each."""

    def open_ticket(
        self, serial: str, form: Form, address: str | None, context: QObject, then: Then[Opened], failed: Failed
    ) -> None:
        """Rehearse a form and offer it for pick-up; whatever happens to the window, it closes with the household."""

        def work() -> Opened:
            house = self._here()
            chosen = looking.waiting(looking.find(house.register.passes(), serial))
            plan = house.picking_up.preview(chosen, [form], address)
            ticket = self._open.enter_context(house.picking_up.open(plan, self._progress))
            seconds = int((ticket.until - house.clock.now()).total_seconds())
            link = ticket.link
            return Opened(
                ticket,
                link,
                link_code.matrix(link),
                ticket.until,
                seconds,
                plan.address,
                house.picking_up.addresses(),
                "" if plan.firewall is None else said(sentences.firewall(plan.firewall, plan.near, ticket.port)),
            )

        self._ask(work, context, then, failed)

    def hear_ticket(self, ticket: OpenTicket, context: QObject, then: Then[tuple[Event, ...]], failed: Failed) -> None:
        """What happened at the door since the last look."""

        def work() -> tuple[Event, ...]:
            heard: list[Event] = []
            while len(heard) < MOST_HEARD and (one := ticket.hear(0)) is not None:
                heard.append(one)
                if one.what is Happened.CLOSED:
                    ticket.close()
            return tuple(heard)

        self._tasks.lane(work, context, then, failed)

    def extend_ticket(self, ticket: OpenTicket, context: QObject, then: Then[datetime], failed: Failed) -> None:
        """Ten minutes more."""
        self._tasks.lane(ticket.extend, context, then, failed)

    def close_ticket(self, ticket: OpenTicket, then: Callable[[], None] = lambda: None) -> None:
        """Close it; whoever asked may be gone by then."""
        self._tasks.lane(ticket.close, self, lambda _none: then(), self.trouble.emit)
