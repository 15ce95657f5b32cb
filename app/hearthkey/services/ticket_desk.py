"""The desk of an open ticket: the server's thread asks it, the householder's thread hears from it."""

from __future__ import annotations

import math
import queue
import threading
from collections.abc import Mapping, Sequence
from datetime import datetime, timedelta
from types import TracebackType
from typing import Self

from hearthkey.core import tickets
from hearthkey.core.passes import Pass
from hearthkey.core.secret import Secret
from hearthkey.core.sentences import tickets as sentences
from hearthkey.core.ticket_events import Ending, Event, Happened
from hearthkey.core.tickets import Asked, Ticket, Verdict
from hearthkey.formats import pickup_page, visitor
from hearthkey.formats.pickup_page import PickUp
from hearthkey.services.copying import TicketCopy
from hearthkey.services.ports import Clock, Register
from hearthkey.services.ticket_ports import Answer, Server
from hearthkey.services.writing_diary import note


class Door:
    """The desk as the server's thread sees it: every request, and the one ticket, under one lock.

    Attributes:
        taken: the form that was fetched last; empty before one was.
    """

    def __init__(self, ticket: Ticket, about: PickUp, files: Mapping[str, bytes], clock: Clock) -> None:
        self._lock = threading.Lock()
        self._ticket = ticket
        self._about = about
        self._files = files
        self._clock = clock
        self._began = clock.monotonic()
        self.taken = ""
        self.events: queue.SimpleQueue[Event] = queue.SimpleQueue()

    def _now(self) -> datetime:
        """The time by a clock that nobody can turn back, so that a ticket ends when it says."""
        return self._ticket.opened + timedelta(seconds=self._clock.monotonic() - self._began)

    def _keep(self, ticket: Ticket, events: Sequence[Event]) -> None:
        self._ticket = ticket
        for one in events:
            self.events.put(one)

    def answer(self, asked: Asked) -> Answer:
        """See `services.ticket_ports.Desk`."""
        with self._lock:
            now = self._now()
            outcome = tickets.ask(self._ticket, asked, now)
            self._keep(outcome.ticket, outcome.events)
        language = visitor.language_of(asked.languages)
        status = pickup_page.status(outcome.verdict)
        if outcome.verdict is Verdict.FILE and outcome.offer is not None:
            headers, self.taken = pickup_page.file_headers(outcome.offer), outcome.offer.form
            return Answer(status, headers, self._files[outcome.offer.form], download=True)
        if outcome.verdict is Verdict.PAGE:
            minutes = math.ceil((outcome.ticket.until - now).total_seconds() / 60)
            seen = visitor.family_of(asked.agent)
            body = pickup_page.pick_up(self._about, seen=seen, language=language, minutes=minutes)
        else:
            body = pickup_page.notice(outcome.verdict, language)
        return Answer(status, pickup_page.page_headers(language), body, delay=outcome.delay)

    def sent(self, *, whole: bool) -> None:
        """See `services.ticket_ports.Desk`."""
        with self._lock:
            self._keep(*tickets.sent(self._ticket, whole=whole, now=self._now()))

    def over(self) -> bool:
        """See `services.ticket_ports.Desk`."""
        with self._lock:
            self._keep(*tickets.tick(self._ticket, self._now()))
            return self._ticket.over(self._now())

    def extend(self) -> datetime:
        """Ten minutes more."""
        with self._lock:
            self._ticket = tickets.extend(self._ticket, self._now())
            return self._ticket.until

    def withdraw(self) -> None:
        """Close from the desk."""
        with self._lock:
            self._keep(*tickets.close(self._ticket, Ending.WITHDRAWN, self._now()))

    @property
    def ticket(self) -> Ticket:
        """The ticket as it is now."""
        with self._lock:
            return self._ticket


class OpenTicket:
    """A ticket that a phone can use. Leave its `with` block to close it; use it from one thread."""

    def __init__(
        self, door: Door, server: Server, chosen: Pass, register: Register, clock: Clock, copy: TicketCopy
    ) -> None:
        self._door = door
        self._server = server
        self._chosen = chosen
        self._register = register
        self._clock = clock
        self._copy = copy

    @property
    def link(self) -> Secret[str]:
        """The link, for a code on the screen; whoever has it can pick the bundle up."""
        return self._door.ticket.link

    @property
    def port(self) -> int:
        """Where the server listens."""
        return self._door.ticket.port

    @property
    def until(self) -> datetime:
        """When it ends, UTC."""
        return self._door.ticket.until

    @property
    def ending(self) -> Ending | None:
        """Why it is closed, or None while it is open."""
        return self._door.ticket.ending

    def extend(self) -> datetime:
        """Give it ten minutes more and return its new end.

        Raises:
            Refused: ticket-closed, ticket-long-enough.
        """
        return self._door.extend()

    def hear(self, seconds: float) -> Event | None:
        """Wait for the next thing that happens, and write its closing into the diary.

        Returns:
            None where nothing happened for that long.

        Raises:
            Unavailable: as the register.
        """
        # The server's thread lets time pass as well; should it ever end early, the ticket still does.
        self._door.over()
        try:
            heard = self._door.events.get(timeout=seconds) if seconds > 0 else self._door.events.get_nowait()
        except queue.Empty:
            return None
        if heard.what is Happened.CLOSED:
            sentence = sentences.ended(self._chosen.title, heard)
            with self._register.change() as change:
                note(self._register, change, verb="ticket", sentence=sentence, now=self._clock.now())
                if heard.ending is Ending.PICKED_UP:
                    self._copy.picked_up(change, self._door.taken, heard.address)
                else:
                    self._copy.stayed(change)
        return heard

    def close(self) -> None:
        """Close ticket and server; the diary says how it ended. Closing again is fine.

        Raises:
            Unavailable: as the register.
        """
        self._server.close()
        self._door.withdraw()
        while self.hear(0) is not None:
            pass

    def __enter__(self) -> Self:
        return self

    def __exit__(
        self, family: type[BaseException] | None, error: BaseException | None, trace: TracebackType | None
    ) -> None:
        self.close()
