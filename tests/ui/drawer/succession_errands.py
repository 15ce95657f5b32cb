"""The succession's part of the errands' stand-in: a plan of values, and what was asked for."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import datetime, timedelta

from PySide6.QtCore import QObject

from hearthkey.core import succession
from hearthkey.core.errors import HearthkeyError
from hearthkey.core.plans import Changes
from hearthkey.core.secret import Secret
from hearthkey.core.succession import Carries, Cause, DeviceStep, Plan, Step, Succession
from hearthkey.ui.tasks import Failed, Then
from tests.ui.drawer.reach_errands import ReachFake

DEVICES = (
    ("Ines’s phone", Carries.DONE),
    ("Ines’s tablet", Carries.HANDED_OVER),
    ("Tomasz’s laptop", Carries.MADE),
    ("Odile’s tablet", Carries.OLD),
)


class SuccessionFake(ReachFake):
    """Quince Cottage on its way to the next CA, as far as `taken` says.

    Attributes:
        taken: the steps that were taken.
        cause: why.
        devices: each with how far it is.
        steps_asked: what was asked for, in order.
        step_fails: the error that the next step is answered with.
    """

    taken: Mapping[Step, datetime] = {}
    cause = Cause.PLANNED
    devices: tuple[tuple[str, Carries], ...] = DEVICES
    steps_asked: tuple[str, ...] = ()
    step_fails: HearthkeyError | None = None

    def plan_of(self, cause: Cause) -> Plan:
        """The plan as it stands."""
        seen = self.last
        assert seen is not None
        assert seen.authority is not None
        found = Succession(seen.authority, seen.authority, b"", self.cause, self.taken) if self.taken else None
        steps = tuple(
            DeviceStep(title, title, carries, seen.at + timedelta(days=300), ("0a",), "0b")
            for title, carries in self.devices
        )
        end = seen.authority.not_after
        return succession.plan(
            found,
            steps if found else (),
            cause=cause,
            old_end=end,
            last_safe_day=end - timedelta(days=900),
            seen=True,
            now=seen.at,
        )

    def look_succession(self, cause: Cause, context: QObject, then: Then[Plan], failed: Failed) -> None:
        """Show the plan, where there is a household."""
        del context, failed
        if self.last is not None and self.last.authority is not None:
            then(self.plan_of(cause))

    def _taken(self, what: str, then: Then[Changes], failed: Failed) -> None:
        self.steps_asked = (*self.steps_asked, what)
        error, self.step_fails = self.step_fails, None
        if error is not None:
            failed(error)
        else:
            then(Changes(f"It was {what}."))

    def begin_succession(
        self, passphrase: Secret[str], cause: Cause, context: QObject, then: Then[Changes], failed: Failed
    ) -> None:
        """See the real one."""
        del context
        self._taken(f"begun with {len(passphrase.reveal())} letters, {cause.value}", then, failed)

    def succession_stolen(self, context: QObject, then: Then[Changes], failed: Failed) -> None:
        """See the real one."""
        del context
        self._taken("turned", then, failed)

    def go_on_succession(self, context: QObject, then: Then[Changes], failed: Failed, *, told: bool) -> None:
        """See the real one."""
        del context
        self._taken(f"gone on, told {told}", then, failed)

    def take_back_succession(self, context: QObject, then: Then[Changes], failed: Failed) -> None:
        """See the real one."""
        del context
        self._taken("taken back", then, failed)

    def finish_succession(
        self, context: QObject, then: Then[Changes], failed: Failed, *, told: bool, anyway: bool
    ) -> None:
        """See the real one."""
        del context
        self._taken(f"finished, told {told}, anyway {anyway}", then, failed)
