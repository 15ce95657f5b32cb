"""What the window asks about the gateway: register work on the lane, visits to the gateway on a road of their own."""

from __future__ import annotations

import threading
from collections.abc import Callable
from functools import partial
from pathlib import Path
from typing import TypeVar

import shiboken6
from PySide6.QtCore import QObject, Signal

from hearthkey.core.delivery import Delivered, DeliveryPlan
from hearthkey.core.errors import HearthkeyError
from hearthkey.core.pack_options import PackOptions
from hearthkey.core.plans import Changes, SparePlanned, StopPlan
from hearthkey.core.target import HostKey, Target
from hearthkey.services.delivering import Delivering
from hearthkey.ui.restore_errands import RestoreErrands
from hearthkey.ui.tasks import Failed, Then

T = TypeVar("T")


class GatewayErrands(RestoreErrands):
    """The gateway's part of what the window asks.

    A visit may hang as long as the network does, so it never stands in the lane's way: it has a
    connection to the register of its own, and one visit is made at a time.

    Signals:
        visit_began: a visit is under way.
        visited: it ended well: Delivered or DeliveryPlan; whoever hears of it has seen the household since.
        visit_failed: it did not: HearthkeyError.
    """

    visit_began = Signal()
    visited = Signal(object)
    visit_failed = Signal(object)

    _cancel: threading.Event | None = None

    @property
    def visiting(self) -> bool:
        """Whether a visit is under way."""
        return self._cancel is not None

    def deliver(self, context: QObject, then: Then[Delivered] | None, failed: Failed) -> None:
        """Deliver what waits and read it back; tells after another look at the household."""
        self._visit(lambda on, cancel: on.deliver(progress=self._progress, cancel=cancel), context, then, failed)

    def deliver_list(self, context: QObject, then: Then[Delivered] | None, failed: Failed) -> None:
        """Deliver the newest list alone; what else waits goes on waiting for the householder's word."""

        def act(on: Delivering, cancel: threading.Event) -> Delivered:
            return on.deliver(only_list=True, progress=self._progress, cancel=cancel)

        self._visit(act, context, then, failed)

    def look_at_gateway(self, context: QObject, then: Then[DeliveryPlan] | None, failed: Failed) -> None:
        """Read what is there, and what a delivery would change."""
        self._visit(lambda on, cancel: on.look(cancel=cancel), context, then, failed)

    def cancel_visit(self) -> None:
        """End the visit that is under way; the gateway keeps a whole set."""
        if self._cancel is not None:
            self._cancel.set()

    def _visit(
        self,
        act: Callable[[Delivering, threading.Event], T],
        context: QObject,
        then: Then[T] | None,
        failed: Failed,
    ) -> None:
        if self._cancel is not None:
            return
        cancel = self._cancel = threading.Event()
        self.visit_began.emit()

        def work() -> T:
            with self._here().visit() as delivering:
                return act(delivering, cancel)

        def over(result: T) -> None:
            self._cancel = None
            self.step.emit("")
            self.refresh_then(partial(told, result))

        def told(result: T) -> None:
            self.visited.emit(result)
            if then is not None and shiboken6.isValid(context):
                then(result)

        def trouble(error: HearthkeyError) -> None:
            self._cancel = None
            self.step.emit("")
            self.refresh_then(partial(told_trouble, error))

        def told_trouble(error: HearthkeyError) -> None:
            self.visit_failed.emit(error)
            if shiboken6.isValid(context):
                failed(error)

        # Sent with this object as its context, so that a visit's end is noticed even when its page has gone.
        self._tasks.road(work, self, over, trouble)

    def host_key(self, target: Target, context: QObject, then: Then[HostKey | None], failed: Failed) -> None:
        """What the server shows to say who it is."""
        self._tasks.pool(lambda: self._here().targeting.host_key(target), context, then, failed)

    def choose_target(
        self, target: Target, compared: HostKey | None, context: QObject, then: Then[Changes] | None, failed: Failed
    ) -> None:
        """Take a target whose host key was compared."""
        self._change(lambda: self._here().targeting.choose(target, compared), context, then, failed)

    def forget_target(self, context: QObject, then: Then[Changes] | None, failed: Failed) -> None:
        """Deliver nowhere any more."""

        def work() -> Changes:
            return self._here().targeting.forget()

        self._change(work, context, then, failed)

    def set_pack_options(
        self, options: PackOptions, context: QObject, then: Then[Changes] | None, failed: Failed
    ) -> None:
        """Keep the choices for the gateway's files."""
        self._change(lambda: self._here().targeting.set_options(options), context, then, failed)

    def save_pack(self, folder: Path, context: QObject, then: Then[Changes] | None, failed: Failed) -> None:
        """Write the gateway's files into a folder."""
        self._change(lambda: self._here().packing.save(folder), context, then, failed)

    def publish_list(self, folder: Path, context: QObject, then: Then[tuple[str, ...]], failed: Failed) -> None:
        """Write the newest list into a folder, to be carried to the gateway by hand."""

        def work() -> tuple[str, ...]:
            listing = self._here().listing
            return listing.publish(listing.numbered(None), folder)

        self._ask(work, context, then, failed)

    # Losing a device

    def preview_loss(
        self, identity: str, context: QObject, then: Then[StopPlan | SparePlanned], failed: Failed
    ) -> None:
        """What stopping a device would do, by whatever list there is."""
        self._ask(lambda: self._here().losing.preview(self._device(identity)), context, then, failed)

    def preview_everybody(self, context: QObject, then: Then[SparePlanned], failed: Failed) -> None:
        """What stopping everybody would do."""

        def work() -> SparePlanned:
            return self._here().sparing.preview_everybody()

        self._ask(work, context, then, failed)

    def lose(
        self, plan: StopPlan | SparePlanned, context: QObject, then: Then[Changes] | None, failed: Failed | None
    ) -> None:
        """Stop it."""
        self._change(lambda: self._here().losing.stop(plan), context, then, failed)

    def keep_ready(self) -> None:
        """While unlocked: sign an old list anew, and spare lists where somebody could not be stopped without."""

        def work() -> bool:
            house = self._here()
            if house.keyholder.locked or house.register.read_only or house.register.household() is None:
                return False
            signed = house.listing.sign_if_old() is not None
            stale = not house.sparing.fresh()
            if stale:
                house.sparing.renew()
            return signed or stale

        def over(changed: bool) -> None:  # noqa: FBT001 - a result, not an option
            if changed:
                self.refresh()

        self._tasks.lane(work, self, over, self.trouble.emit)

    def tick(self, serial: str, step: str, *, done: bool) -> None:
        """Note that a step after a loss is done, or is not after all."""

        def work() -> None:
            house = self._here()
            with house.register.change() as change:
                change.tick(serial, step, house.clock.now() if done else None)

        self._tasks.lane(work, self, lambda _none: None, self.trouble.emit)

    def ticks(self, serial: str, context: QObject, then: Then[frozenset[str]]) -> None:
        """The steps that are done after a loss."""
        self._ask(lambda: self._here().register.ticks(serial), context, then, None)
