"""What the window asks while one CA follows another."""

from __future__ import annotations

from PySide6.QtCore import QObject

from hearthkey.core.plans import Changes
from hearthkey.core.secret import Secret
from hearthkey.core.succession import Cause, Plan
from hearthkey.services.turning_stolen import turn_stolen
from hearthkey.ui.reach_errands import ReachErrands
from hearthkey.ui.tasks import Failed, Then


class SuccessionErrands(ReachErrands):
    """The succession's part of the errands; see `Lane` for the shape of each."""

    def look_succession(self, cause: Cause, context: QObject, then: Then[Plan], failed: Failed) -> None:
        """The steps with their days."""
        self._ask(lambda: self._here().succeeding.look(cause), context, then, failed)

    def begin_succession(
        self, passphrase: Secret[str], cause: Cause, context: QObject, then: Then[Changes], failed: Failed
    ) -> None:
        """Make the next CA."""

        def work() -> Changes:
            house = self._here()
            changes = house.succeeding.begin(passphrase, cause, progress=self._progress)
            house.sealing.make_ready(passphrase)
            return changes

        self._change(work, context, then, failed)

    def succession_stolen(self, context: QObject, then: Then[Changes], failed: Failed) -> None:
        """Go on with what was planned as after a theft."""
        self._change(lambda: turn_stolen(self._here().register, self._here().clock), context, then, failed)

    def go_on_succession(self, context: QObject, then: Then[Changes], failed: Failed, *, told: bool) -> None:
        """Take the next step but the last."""
        self._change(lambda: self._here().succeeding.go_on(told=told, progress=self._progress), context, then, failed)

    def take_back_succession(self, context: QObject, then: Then[Changes], failed: Failed) -> None:
        """Take the last step back."""
        self._change(lambda: self._here().succeeding.take_back(progress=self._progress), context, then, failed)

    def finish_succession(
        self, context: QObject, then: Then[Changes], failed: Failed, *, told: bool, anyway: bool
    ) -> None:
        """Put the old CA away."""
        self._change(lambda: self._here().succeeding.finish(told=told, anyway=anyway), context, then, failed)
