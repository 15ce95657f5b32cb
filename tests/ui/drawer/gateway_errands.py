"""A stand-in for the gateway's errands: it writes down what it was asked, and a test says how a visit ends."""

from __future__ import annotations

import threading
from dataclasses import replace
from pathlib import Path

from PySide6.QtCore import QObject

from hearthkey.core.delivery import Delivered, DeliveryPlan
from hearthkey.core.errors import HearthkeyError
from hearthkey.core.in_force import GatewayNote, GatewayState, Standing
from hearthkey.core.pack_options import PackOptions
from hearthkey.core.plans import Changes
from hearthkey.core.target import HostKey, Target
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.gallery.gateway_states import KEY, STATES
from hearthkey.ui.tasks import Failed, Then
from tests.ui.drawer.household import FakeErrands
from tests.ui.practice import snapshot


def seen(state: str, *, locked: bool = True) -> Snapshot:
    """Quince Cottage with a gateway in one of the states of the pictures."""
    return STATES[state](snapshot(locked=locked))


class GatewayFake(FakeErrands):
    """Quince Cottage and its gateway.

    Attributes:
        key: the host key that the server shows.
    """

    def __init__(self, state: str = "in-force") -> None:
        super().__init__(seen(state))
        self.key: HostKey | None = KEY

    def begin(self, name: str) -> None:
        """A visit is under way, whoever asked for it."""
        self.asked.append((name,))
        self._cancel = threading.Event()
        self.visit_began.emit()

    def end(self, result: Delivered | DeliveryPlan | HearthkeyError, after: Snapshot | None = None) -> None:
        """It is over: as in the real one, everybody sees the household before anybody is told."""
        self._cancel = None
        self.show(self._now() if after is None else after)
        (self.visit_failed if isinstance(result, HearthkeyError) else self.visited).emit(result)

    @property
    def cancelled(self) -> bool:
        """Whether the visit that is under way was asked to end."""
        return self._cancel is not None and self._cancel.is_set()

    def deliver(self, context: QObject, then: Then[Delivered] | None, failed: Failed) -> None:
        """Deliver."""
        del context, then, failed
        self.begin("deliver")

    def deliver_list(self, context: QObject, then: Then[Delivered] | None, failed: Failed) -> None:
        """Deliver the list."""
        del context, then, failed
        self.begin("deliver-list")

    def look_at_gateway(self, context: QObject, then: Then[DeliveryPlan] | None, failed: Failed) -> None:
        """Look."""
        del context, then, failed
        self.begin("look")

    def host_key(self, target: Target, context: QObject, then: Then[HostKey | None], failed: Failed) -> None:
        """Show the host key."""
        self.asked.append(("host_key", target))
        if not self._fails("host_key", context, failed):
            then(self.key)

    def choose_target(
        self, target: Target, compared: HostKey | None, context: QObject, then: Then[Changes] | None, failed: Failed
    ) -> None:
        """Take a target."""
        self.asked.append(("choose_target", target, compared))
        if not self._fails("choose_target", context, failed):
            pinned = target if compared is None else target.pinned(compared)
            self._turn(GatewayState(Standing.NEVER, pinned, GatewayNote(), 42), then)

    def forget_target(self, context: QObject, then: Then[Changes] | None, failed: Failed) -> None:
        """Deliver nowhere."""
        self.asked.append(("forget_target",))
        if not self._fails("forget_target", context, failed):
            self._turn(GatewayState(Standing.NO_TARGET, None, GatewayNote(), 42), then)

    def _turn(self, state: GatewayState, then: Then[Changes] | None) -> None:
        self.show(replace(self._now(), gateway_state=state))
        if then is not None:
            then(Changes("Done."))

    def set_pack_options(
        self, options: PackOptions, context: QObject, then: Then[Changes] | None, failed: Failed
    ) -> None:
        """Keep choices."""
        self.asked.append(("set_pack_options", options))
        if not self._fails("set_pack_options", context, failed):
            self.show(replace(self._now(), pack_options=options))
            if then is not None:
                then(Changes("The choices were kept."))

    def save_pack(self, folder: Path, context: QObject, then: Then[Changes] | None, failed: Failed) -> None:
        """Write the files."""
        self.asked.append(("save_pack", folder))
        if not self._fails("save_pack", context, failed) and then is not None:
            then(Changes(f"The gateway’s files were written to {folder}.", files=("a", "b")))
