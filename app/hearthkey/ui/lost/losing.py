"""From a chosen device to its stop: the plan, the passphrase where it is needed, the act."""

from __future__ import annotations

from functools import partial

from PySide6.QtCore import QObject, Signal

from hearthkey.core.errors import HearthkeyError
from hearthkey.core.plans import Changes, SparePlanned, StopPlan
from hearthkey.core.sentences import gateway, plans
from hearthkey.ui.errands import Errands
from hearthkey.ui.text import said

Plan = StopPlan | SparePlanned


class Losing(QObject):
    """What happens to the device that is chosen.

    While the household is locked a list that was signed in advance stops it. Where none covers it
    alone, the householder chooses: stop others too, for now, or give the passphrase.

    Signals:
        planned: there is a plan; `sentence` tells it.
        words_needed: only the passphrase helps; `everybody` tells whether everybody can be stopped without.
        stopped: Plan and Changes, once it is done.
        failed: HearthkeyError.
    """

    planned = Signal()
    words_needed = Signal()
    stopped = Signal(object, object)
    failed = Signal(object)

    def __init__(self, errands: Errands, parent: QObject) -> None:
        super().__init__(parent)
        self._errands = errands
        self.identity = ""
        self.plan: Plan | None = None
        self.everybody: SparePlanned | None = None
        self.busy = False
        self._wanted = False

    def choose(self, identity: str) -> None:
        """Take a device, or with an empty text none; its plan is asked for by `preview`."""
        self.identity, self.plan, self.everybody = identity, None, None
        self.busy = self._wanted = False

    @property
    def sentence(self) -> str:
        """What the plan does."""
        if self.plan is None:
            return ""
        return said(gateway.spare(self.plan) if isinstance(self.plan, SparePlanned) else plans.stop(self.plan))

    @property
    def needs_words(self) -> bool:
        """Whether the plan wants a signature that only the passphrase gives."""
        locked = self._errands.last is not None and self._errands.last.locked
        return locked and isinstance(self.plan, StopPlan)

    @property
    def besides(self) -> bool:
        """Whether others stop with it."""
        return isinstance(self.plan, SparePlanned) and bool(self.plan.besides)

    def preview(self) -> None:
        """Ask what stopping it would do."""
        if self.identity:
            identity = self.identity
            self._errands.preview_loss(
                identity, self, partial(self._planned, identity), partial(self._failed, identity)
            )

    def _planned(self, identity: str, plan: Plan) -> None:
        if identity != self.identity:
            return
        self.plan = plan
        self.planned.emit()
        if self.needs_words:
            self._errands.preview_everybody(self, partial(self._everybody, identity), lambda _error: None)
        if self._wanted:
            self.stop()

    def _everybody(self, identity: str, plan: SparePlanned) -> None:
        if identity == self.identity:
            self.everybody = plan
            self.planned.emit()

    # The act

    def stop(self) -> None:
        """Stop as planned: at once, or as soon as the plan is here, or after the passphrase."""
        if self.busy or not self.identity:
            return
        if self.plan is None:
            self._wanted = True
            self.preview()
        elif self.needs_words:
            self._wanted = False
            self.words_needed.emit()
        else:
            self._do(self.plan)

    def stop_this_one(self) -> None:
        """Stop nobody besides: with the ordinary plan, which wants the passphrase."""
        failed = partial(self._failed, self.identity)
        self._wanted = True
        self._errands.preview_stop(self.identity, self, partial(self._planned, self.identity), failed)

    def stop_everybody(self) -> None:
        """Stop everybody for now."""
        if self.everybody is not None and not self.busy:
            self._do(self.everybody)

    def go_on(self) -> None:
        """Go on after the passphrase: by now the snapshot of the unlocked household may not have come yet."""
        if self.plan is not None and not self.busy:
            self._do(self.plan)

    def _do(self, plan: Plan) -> None:
        self.busy, self._wanted = True, False
        self._errands.lose(plan, self, partial(self._done, plan), partial(self._failed, self.identity))

    def _done(self, plan: Plan, changes: Changes) -> None:
        self.busy = False
        self.plan = None
        self.stopped.emit(plan, changes)

    def _failed(self, identity: str, error: HearthkeyError) -> None:
        if identity != self.identity:
            return
        self.busy = self._wanted = False
        if error.code == "household-locked":
            self.words_needed.emit()
        else:
            self.failed.emit(error)
