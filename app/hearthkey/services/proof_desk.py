"""The desk of an open proof: the server's thread asks it, whoever opened it hears from it and keeps the proof."""

from __future__ import annotations

import queue
import threading
from collections.abc import Sequence
from datetime import datetime, timedelta
from types import TracebackType
from typing import Self

from hearthkey.core import proof_doors
from hearthkey.core.passes import Pass
from hearthkey.core.proof_doors import Ending, Event, ProofDoor, Verdict
from hearthkey.core.proofs import Proof, Way
from hearthkey.core.secret import Secret
from hearthkey.core.sentences import proofs as sentences
from hearthkey.core.tickets import Asked
from hearthkey.formats import proof_page, visitor
from hearthkey.services.ports import Clock, Register
from hearthkey.services.ticket_ports import Answer, Server
from hearthkey.services.writing_diary import note

PATIENCE = 2.0
"""Seconds that a device has to take its page before the proof is told; whoever hears of it may close the server."""


class Door:
    """The port `services.ticket_ports.Desk`: every request, and the one door, under one lock."""

    def __init__(self, door: ProofDoor, clock: Clock) -> None:
        self._lock = threading.Lock()
        self._door = door
        self._clock = clock
        self._began = clock.monotonic()
        self._held: list[Event] = []
        self._held_since = 0.0
        self.events: queue.SimpleQueue[Event] = queue.SimpleQueue()

    def _now(self) -> datetime:
        """The time by a clock that nobody can turn back, so that a door closes when it says."""
        return self._door.opened + timedelta(seconds=int(self._clock.monotonic() - self._began))

    def _keep(self, door: ProofDoor, events: Sequence[Event]) -> None:
        self._door = door
        for one in events:
            if one.ending is Ending.PROVED:
                self._held.append(one)
                self._held_since = self._clock.monotonic()
            else:
                self.events.put(one)

    def _let_go(self) -> None:
        while self._held:
            self.events.put(self._held.pop(0))

    def answer(self, asked: Asked) -> Answer:
        """See the port."""
        with self._lock:
            outcome = proof_doors.ask(self._door, asked, self._now())
            self._keep(outcome.door, outcome.events)
        language = visitor.language_of(asked.languages)
        body = proof_page.page(outcome.verdict, language)
        seen = outcome.verdict is Verdict.IN
        status, headers = proof_page.status(outcome.verdict), proof_page.headers(language)
        return Answer(status, headers, body, delay=outcome.delay, download=seen)

    def sent(self, *, whole: bool) -> None:
        """See the port. The request alone is the proof; that the page was read too only says when to tell of it."""
        del whole
        with self._lock:
            self._let_go()

    def over(self) -> bool:
        """See the port."""
        with self._lock:
            self._keep(*proof_doors.tick(self._door, self._now()))
            if self._clock.monotonic() - self._held_since >= PATIENCE:
                self._let_go()
            return self._door.over(self._now())

    def extend(self) -> datetime:
        """Ten minutes more."""
        with self._lock:
            self._door = proof_doors.extend(self._door, self._now())
            return self._door.until

    def withdraw(self) -> None:
        """Close it from here."""
        with self._lock:
            self._let_go()
            self._keep(*proof_doors.close(self._door, Ending.WITHDRAWN, self._now()))

    @property
    def door(self) -> ProofDoor:
        """The door as it is now."""
        with self._lock:
            return self._door

    @property
    def seconds_left(self) -> int:
        """Until it closes by itself; 0 once it is closed."""
        with self._lock:
            if self._door.ending is not None:
                return 0
            return max(0, int((self._door.until - self._now()).total_seconds()))


class OpenProof:
    """A door that a device can open. Leave its `with` block to close it; `hear` and `close` from one thread."""

    def __init__(self, door: Door, server: Server, chosen: Pass, register: Register, clock: Clock) -> None:
        self._door = door
        self._server = server
        self._chosen = chosen
        self._register = register
        self._clock = clock

    @property
    def link(self) -> Secret[str]:
        """The link, for a code on the screen; it gives nothing away, and opens for whoever is in the tunnel."""
        return self._door.door.link

    @property
    def until(self) -> datetime:
        """When it closes by itself, UTC."""
        return self._door.door.until

    @property
    def seconds_left(self) -> int:
        """Until then; 0 once it is closed. May be asked from any thread."""
        return self._door.seconds_left

    @property
    def ending(self) -> Ending | None:
        """Why it is closed, or None while it is open."""
        return self._door.door.ending

    @property
    def stirring(self) -> bool:
        """Whether there is something to hear. May be asked from any thread."""
        self._door.over()
        return not self._door.events.empty()

    def extend(self) -> datetime:
        """Give it ten minutes more and return its new end. May be asked from any thread.

        Raises:
            Refused: proof-closed, proof-long-enough.
        """
        return self._door.extend()

    def hear(self, seconds: float) -> Event | None:
        """Wait for the next thing that happens; a proof is written down, with its diary entry, before it is told.

        Returns:
            None where nothing happened for that long.

        Raises:
            Unavailable: as the register.
        """
        # The server's thread lets time pass as well; should it ever end early, the door still does.
        self._door.over()
        try:
            heard = self._door.events.get(timeout=seconds) if seconds > 0 else self._door.events.get_nowait()
        except queue.Empty:
            return None
        if heard.ending is Ending.PROVED:
            self._keep(heard)
        return heard

    def _keep(self, heard: Event) -> None:
        proof = Proof(heard.at, Way.TUNNEL, heard.address)
        try:
            keep(self._register, self._chosen, proof, sentences.kept(self._chosen, heard), self._clock)
        except BaseException:
            self._door.events.put(heard)  # it did happen, and can be heard once more
            raise

    def close(self) -> None:
        """Close door and server; what was proved by then is kept. Closing again is fine.

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


def keep(register: Register, chosen: Pass, proof: Proof, sentence: str, clock: Clock) -> None:
    """Write a proof and its diary entry, both or neither.

    Raises:
        Unavailable: as the register.
    """
    with register.change() as change:
        change.add_proof(chosen.serial, proof)
        note(register, change, verb="prove", sentence=sentence, now=clock.now())
