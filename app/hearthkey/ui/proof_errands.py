"""What the window asks when something is to be proved: a door opened and heard on the lane, watched from the window."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime

from PySide6.QtCore import QObject

from hearthkey.core.errors import Unavailable
from hearthkey.core.home_addresses import HomeAddress
from hearthkey.core.plans import Changes
from hearthkey.core.proof_doors import Ending, Event
from hearthkey.core.proofs import Ground
from hearthkey.formats import link_code
from hearthkey.services.proof_desk import OpenProof
from hearthkey.services.proving import ToldPlan
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.renewal_errands import RenewalErrands
from hearthkey.ui.tasks import Failed, Then


@dataclass(frozen=True)
class ShownProof:
    """A door that stands open, as the window shows it.

    Args:
        link: to be opened on the device.
        code: the same as a QR code, PNG.
        address: where it is.
        ground: what addresses are judged by.
    """

    link: str
    code: bytes
    address: HomeAddress
    ground: Ground


class ProofErrands(RenewalErrands):
    """The proofs' part of what the window asks; one door at a time."""

    _proof: OpenProof | None = None

    def proof_addresses(self, context: QObject, then: Then[tuple[HomeAddress, ...]], failed: Failed) -> None:
        """This computer's addresses, those that devices in the tunnel can reach first."""
        self._ask(self._known_addresses, context, then, failed)

    def open_proof(
        self,
        serial: str,
        address: str | None,
        inside: str | None,
        context: QObject,
        then: Then[ShownProof],
        failed: Failed,
    ) -> None:
        """Open a door for a pass; one that stands open is closed first."""

        def work() -> ShownProof:
            self._shut_proof()
            house = self._here()
            plan = house.proving.preview(self._device(serial)[-1], address, inside)
            opened = house.proving.open(plan)
            self._proof = opened
            # The register closes when the household does; the door has to be shut before that.
            self._open.callback(opened.close)
            link = opened.link
            code = house.pictures.png(link_code.matrix(link))
            return ShownProof(link.reveal(), code, plan.address, plan.ground)

        self._ask(work, context, then, failed)

    @property
    def proof_seconds(self) -> int | None:
        """Until the open door closes by itself; None where none is open."""
        return None if self._proof is None else self._proof.seconds_left

    @property
    def proof_stirs(self) -> bool:
        """Whether there is something to hear from the open door."""
        return self._proof is not None and self._proof.stirring

    def hear_proof(self, context: QObject, then: Then[Event | None], failed: Failed) -> None:
        """Hear the next thing from the open door; what was proved is kept, and seen by everybody, before it is told."""

        def work() -> tuple[Event | None, Snapshot | None]:
            heard = None if self._proof is None else self._proof.hear(0)
            proved = heard is not None and heard.ending is Ending.PROVED
            return heard, self._look(ask_keyring=False) if proved else None

        def over(result: tuple[Event | None, Snapshot | None]) -> None:
            heard, snapshot = result
            if snapshot is not None:
                self._saw(snapshot)
                self._soon.start()
            then(heard)

        self._ask(work, context, over, failed)

    def extend_proof(self, context: QObject, then: Then[datetime], failed: Failed) -> None:
        """Ten minutes more for the open door."""

        def work() -> datetime:
            if self._proof is None:
                raise Unavailable("register-unreadable", path="", seen="no door")
            return self._proof.extend()

        self._ask(work, context, then, failed)

    def shut_proof(self) -> None:
        """Close the door, where one is open; what was proved by then is kept and seen."""
        if self._proof is None:
            return

        def work() -> Snapshot:
            self._shut_proof()
            return self._look(ask_keyring=False)

        self._ask(work, self, self._saw, None)

    def _shut_proof(self) -> None:
        opened, self._proof = self._proof, None
        if opened is not None:
            opened.close()

    def preview_told(self, serial: str, context: QObject, then: Then[ToldPlan], failed: Failed) -> None:
        """What writing down a proof by hand would do."""
        self._ask(lambda: self._here().proving.preview_told(self._device(serial)[-1]), context, then, failed)

    def told(self, plan: ToldPlan, context: QObject, then: Then[Changes] | None, failed: Failed | None) -> None:
        """Write it down."""
        self._change(lambda: self._here().proving.told(plan), context, then, failed)

    def _known_addresses(self) -> tuple[HomeAddress, ...]:
        return self._here().proving.addresses()
