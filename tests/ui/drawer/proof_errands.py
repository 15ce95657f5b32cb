"""A stand-in for the errands of a proof: a door that a test opens, and through which it lets things happen."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime, timedelta
from ipaddress import ip_address

from PySide6.QtCore import QObject

from hearthkey.core.home_addresses import HomeAddress
from hearthkey.core.passes import Pass
from hearthkey.core.plans import Changes
from hearthkey.core.proof_doors import Ending, Event, Happened
from hearthkey.core.proofs import Proof, Seen, Way
from hearthkey.services.proving import ToldPlan
from hearthkey.ui.gallery.proof_states import CABLE, GROUND, LINK, WIFI, drawn_code
from hearthkey.ui.proof_errands import ShownProof
from hearthkey.ui.tasks import Failed, Then
from tests.ui.drawer.household import FakeErrands


class ProvingErrands(FakeErrands):
    """Quince Cottage with a door that may be opened.

    Attributes:
        is_open: whether a door stands open.
        seconds: until it closes.
        events: what can be heard.
        addresses: of this computer.
    """

    is_open = False
    seconds = 600
    addresses: tuple[HomeAddress, ...] = (WIFI,)

    def __init__(self) -> None:
        super().__init__()
        self.events: list[Event] = []
        self.proving = ""

    @property
    def proof_seconds(self) -> int | None:
        """Until the open door closes."""
        return self.seconds if self.is_open else None

    @property
    def proof_stirs(self) -> bool:
        """Whether there is something to hear."""
        return bool(self.events)

    def happen(self, what: Happened, address: str, ending: Ending | None = None, seen: Seen | None = None) -> None:
        """Let something happen at the door."""
        self.events.append(Event(what, self._now().at, address, ending, seen))

    def proof_addresses(self, context: QObject, then: Then[tuple[HomeAddress, ...]], failed: Failed) -> None:
        """Those that the test laid ready."""
        if not self._fails("proof_addresses", context, failed):
            then(self.addresses)

    def open_proof(
        self,
        serial: str,
        address: str | None,
        inside: str | None,
        context: QObject,
        then: Then[ShownProof],
        failed: Failed,
    ) -> None:
        """Open it."""
        self.asked.append(("open_proof", address, inside))
        if self._fails("open_proof", context, failed):
            return
        self.is_open, self.proving = True, serial
        where = CABLE if address == str(CABLE.address) else WIFI
        hides = self._now().pack_options.masquerade
        by = replace(GROUND, hides=hides, inside=None if inside is None else ip_address(inside))
        then(ShownProof(LINK, drawn_code(), where, by))

    def hear_proof(self, context: QObject, then: Then[Event | None], failed: Failed) -> None:
        """Hear the next thing; a proof is seen first."""
        if self._fails("hear_proof", context, failed):
            return
        heard = self.events.pop(0)
        if heard.ending is Ending.PROVED:
            self._keep(self.proving, Proof(heard.at, Way.TUNNEL, heard.address))
        then(heard)

    def extend_proof(self, context: QObject, then: Then[datetime], failed: Failed) -> None:
        """Ten minutes more."""
        if not self._fails("extend_proof", context, failed):
            self.seconds += 600
            then(self._now().at + timedelta(seconds=self.seconds))

    def shut_proof(self) -> None:
        """Close it."""
        self.is_open = False

    def preview_told(self, serial: str, context: QObject, then: Then[ToldPlan], failed: Failed) -> None:
        """Plan to write down what was told."""
        if not self._fails("preview_told", context, failed):
            then(ToldPlan(next(one for one in self._now().passes if one.serial == serial)))

    def told(self, plan: ToldPlan, context: QObject, then: Then[Changes] | None, failed: Failed | None) -> None:
        """Write it down."""
        self.asked.append(("told", plan.chosen.title))
        if not self._fails("told", context, failed):
            passes = self._keep(plan.chosen.serial, Proof(self._now().at, Way.TOLD))
            self._change(passes, Changes("Told.", (plan.chosen.serial,)), then)

    def _keep(self, serial: str, proof: Proof) -> tuple[Pass, ...]:
        passes = tuple(
            replace(one, proofs=(*one.proofs, proof)) if one.serial == serial else one for one in self._now().passes
        )
        self.show(replace(self._now(), passes=passes))
        return passes
