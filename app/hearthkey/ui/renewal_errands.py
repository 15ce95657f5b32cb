"""What the window asks when passes are renewed, a device is replaced, or somebody leaves."""

from __future__ import annotations

from datetime import datetime

from PySide6.QtCore import QObject

from hearthkey.core import renewal
from hearthkey.core.plans import Changes, RenewPlan, ReplacePlan, SupersedePlan, TakeBackPlan
from hearthkey.services.goodbye import GoodbyePlan
from hearthkey.services.renewing import Round
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.sheet_errands import SheetErrands
from hearthkey.ui.tasks import Failed, Then


class RenewalErrands(SheetErrands):
    """The renewals' part of what the window asks."""

    def keep_ready(self) -> None:
        """What is over by a proof goes first, so that the spare lists are signed after it."""
        self.follow_up()
        super().keep_ready()

    def follow_up(self) -> None:
        """Let old passes go whose new ones were proved, where the household is unlocked."""
        seen = self.last
        if seen is None or seen.locked or seen.read_only:
            return
        if not renewal.over_once_proved(seen.passes, seen.follows, seen.at):
            return

        def work() -> tuple[Changes | None, Snapshot]:
            done = self._here().superseding.follow_up()
            return done, self._look(ask_keyring=False)

        def over(result: tuple[Changes | None, Snapshot]) -> None:
            done, snapshot = result
            self._saw(snapshot)
            if done is not None:
                self.done.emit(done)
                self._soon.start()

        self._ask(work, self, over, None)

    def preview_round(
        self, identities: tuple[str, ...], overlap_days: int, context: QObject, then: Then[Round], failed: Failed
    ) -> None:
        """What renewing these devices would do."""

        def work() -> Round:
            passes = [self._device(identity) for identity in identities]
            return self._here().renewing.plan_named(passes, overlap_days=overlap_days)

        self._ask(work, context, then, failed)

    def renew(self, plan: RenewPlan, context: QObject, then: Then[Changes], failed: Failed) -> None:
        """Renew one device; what is kept ready follows only when `round_over` says so."""

        def work() -> tuple[Changes, Snapshot]:
            changes = self._here().undoing.watch(lambda: self._here().renewing.renew(plan))
            return changes, self._look(ask_keyring=False)

        def over(result: tuple[Changes, Snapshot]) -> None:
            changes, snapshot = result
            self._saw(snapshot)
            then(changes)

        self._ask(work, context, over, failed)

    def round_over(self) -> None:
        """A round has ended or was stopped: sign and copy what it leaves to be signed and copied."""
        self._soon.start()

    def preview_supersede(self, identity: str, context: QObject, then: Then[SupersedePlan], failed: Failed) -> None:
        """What letting the old passes of a device go would do."""
        self._ask(lambda: self._here().superseding.preview_supersede(self._device(identity)), context, then, failed)

    def supersede(self, plan: SupersedePlan, context: QObject, then: Then[Changes] | None, failed: Failed) -> None:
        """Let them go."""
        self._change(lambda: self._here().superseding.supersede(plan), context, then, failed)

    def preview_take_back(self, identity: str, context: QObject, then: Then[TakeBackPlan], failed: Failed) -> None:
        """What taking a renewal back would do."""
        self._ask(lambda: self._here().superseding.preview_take_back(self._device(identity)), context, then, failed)

    def take_back(self, plan: TakeBackPlan, context: QObject, then: Then[Changes] | None, failed: Failed) -> None:
        """Take it back."""
        self._change(lambda: self._here().superseding.take_back(plan), context, then, failed)

    def preview_another(
        self, identity: str, label: str, kind: str, context: QObject, then: Then[ReplacePlan], failed: Failed
    ) -> None:
        """What putting another device in the place of one would do."""
        self._ask(lambda: self._here().replacing.preview(self._device(identity), label, kind), context, then, failed)

    def another(self, plan: ReplacePlan, context: QObject, then: Then[Changes] | None, failed: Failed) -> None:
        """Put it there."""
        self._change(lambda: self._here().replacing.apply(plan, progress=self._progress), context, then, failed)

    def preview_goodbye(self, person: str, context: QObject, then: Then[GoodbyePlan], failed: Failed) -> None:
        """What somebody's leaving would do."""
        self._ask(lambda: self._here().goodbye.preview(person), context, then, failed)

    def see_off(self, plan: GoodbyePlan, context: QObject, then: Then[Changes] | None, failed: Failed) -> None:
        """Withdraw all that is theirs."""
        self._change(lambda: self._here().goodbye.apply(plan), context, then, failed)

    def plan_visit(
        self, person: str, day: datetime, context: QObject, then: Then[Changes] | None, failed: Failed
    ) -> None:
        """Keep a visit."""

        def work() -> Changes:
            visiting = self._here().visiting
            return visiting.plan(visiting.checked(person, day))

        self._change(work, context, then, failed)

    def call_off(
        self, person: str, day: datetime, context: QObject, then: Then[Changes] | None, failed: Failed
    ) -> None:
        """Call a visit off."""
        self._change(lambda: self._here().visiting.call_off(person, day), context, then, failed)
