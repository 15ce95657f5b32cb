"""A household that answers the window at once, or when the test says so, and remembers what it was asked."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from functools import partial
from pathlib import Path

import shiboken6
from PySide6.QtCore import QObject

from hearthkey.core.delivery import Delivered
from hearthkey.core.errors import HearthkeyError, Refused
from hearthkey.core.passes import Pass
from hearthkey.core.plans import Changes, FoundPlan, LetInPlan, SparePlanned, StopPlan
from hearthkey.core.revocation import Reason
from hearthkey.core.secret import Secret
from hearthkey.services import passphrases
from hearthkey.services.founding import Founding, FoundRequest
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.errands import Errands
from hearthkey.ui.tasks import Failed, Then

WORDS = ("plum", "kettle", "ivory", "lantern", "gravel", "otter", "quilt")
PASSPHRASE = " ".join(WORDS)


class FakeErrands(Errands):
    """Stands where the real errands stand.

    Args:
        snapshot: what there is.

    Attributes:
        calls: what was asked, in order, as (verb, argument).
        hold: keep answers back until `answer`.
        refuse: by verb, the error that it ends in.
        founding: judges what is typed about a household.
        besides: identities that the narrowest spare list stops too.
        everybody: a spare list for everybody lies ready.
        ticked: steps after a loss that are done.
    """

    def __init__(self, snapshot: Snapshot, founding: Founding | None = None) -> None:
        QObject.__init__(self)
        self.last = snapshot
        self.founding = founding
        self.calls: list[tuple[str, object]] = []
        self.hold = False
        self.refuse: dict[str, HearthkeyError] = {}
        self._held: list[Callable[[], None]] = []
        self._lists = 42
        self.besides: frozenset[str] = frozenset()
        self.everybody = False
        self.ticked: frozenset[str] = frozenset()

    def asked(self, verb: str) -> list[object]:
        """The arguments that a verb was asked with."""
        return [argument for called, argument in self.calls if called == verb]

    def answer(self) -> None:
        """Give the answers that were kept back."""
        held, self._held = self._held, []
        for give in held:
            give()

    def now_is(self, snapshot: Snapshot) -> None:
        """The household looks different now."""
        self.last = snapshot
        self.seen.emit(snapshot)

    def _give(
        self, verb: str, argument: object, context: QObject, give: Callable[[], None], failed: Failed | None
    ) -> None:
        self.calls.append((verb, argument))
        error = self.refuse.get(verb)
        if error is not None:
            give = partial(failed or self.trouble.emit, error)
        if self.hold:
            self._held.append(lambda: give() if shiboken6.isValid(context) else None)
        else:
            give()

    def _here(self) -> Snapshot:  # type: ignore[override]  # the fake house is its snapshot
        assert self.last is not None
        return self.last

    def _of(self, identity: str) -> tuple[Pass, ...]:
        return tuple(one for one in self._here().passes if one.identity == identity)

    # Opening

    def open(self, *, furnish: bool = False) -> None:
        """See the real one."""
        self._give("open", furnish, self, lambda: self.seen.emit(self._here()), None)

    def refresh(self) -> None:
        """See the real one."""
        self._give("refresh", None, self, lambda: self.seen.emit(self._here()), None)

    def unlock(self, passphrase: Secret[str], context: QObject, then: Then[None], failed: Failed) -> None:
        """Open with the one passphrase there is."""
        if passphrase != Secret(PASSPHRASE):
            self._give("unlock", None, context, partial(failed, Refused("wrong-passphrase")), failed)
            return

        def give() -> None:
            self.now_is(replace(self._here(), locked=False))
            then(None)

        self._give("unlock", None, context, give, failed)

    def unlock_now(self) -> None:
        """The household was opened elsewhere."""
        self.now_is(replace(self._here(), locked=False))

    # Stopping

    def preview_stop(self, identity: str, context: QObject, then: Then[StopPlan], failed: Failed) -> None:
        """See the real one."""
        plan = StopPlan(self._of(identity), 5, self._lists + 1)
        self._give("preview_stop", identity, context, lambda: then(plan), failed)

    def stop(self, plan: StopPlan, context: QObject, then: Then[Changes] | None, failed: Failed | None) -> None:
        """See the real one."""
        self._withdraw("stop", plan.chosen, Reason.CERTIFICATE_HOLD, context, then, failed)

    def preview_loss(
        self, identity: str, context: QObject, then: Then[StopPlan | SparePlanned], failed: Failed
    ) -> None:
        """See the real one; while locked there is a spare list if the snapshot says so."""
        here = self._here()
        if not (here.locked and here.stoppable_locked):
            self.preview_stop(identity, context, then, failed)
            return
        besides = tuple(one for one in here.passes if one.identity in self.besides)
        plan = SparePlanned(self._of(identity), besides, 5 - len(besides), self._lists + 1)
        self._give("preview_spare", identity, context, lambda: then(plan), failed)

    def preview_everybody(self, context: QObject, then: Then[SparePlanned], failed: Failed) -> None:
        """See the real one; offered where the test says so."""
        here = self._here()
        if self.everybody:
            plan = SparePlanned(here.passes[:2], (), 0, self._lists + 1)
            self._give("preview_everybody", None, context, lambda: then(plan), failed)
        else:
            self._give("preview_everybody", None, context, lambda: failed(Refused("no-list-for-everybody")), failed)

    def lose(
        self, plan: StopPlan | SparePlanned, context: QObject, then: Then[Changes] | None, failed: Failed | None
    ) -> None:
        """See the real one."""
        verb = "stop" if isinstance(plan, StopPlan) else "stop_by_spare"
        chosen = plan.chosen if isinstance(plan, StopPlan) else plan.everyone
        self._withdraw(verb, chosen, Reason.CERTIFICATE_HOLD, context, then, failed)

    def keep_ready(self) -> None:
        """Nothing lies ready here."""

    def deliver_list(self, context: QObject, then: Then[Delivered] | None, failed: Failed) -> None:
        """See the real one; it ends as the test says."""
        del then
        self._give("deliver_list", None, context, lambda: None, failed)

    def publish_list(self, folder: Path, context: QObject, then: Then[tuple[str, ...]], failed: Failed) -> None:
        """See the real one."""
        self._give("publish_list", folder, context, lambda: then((str(folder / "list-43.crl"),)), failed)

    def tick(self, serial: str, step: str, *, done: bool) -> None:
        """See the real one."""
        self.calls.append(("tick", (serial, step, done)))
        self.ticked = self.ticked | {step} if done else self.ticked - {step}

    def ticks(self, serial: str, context: QObject, then: Then[frozenset[str]]) -> None:
        """See the real one."""
        del context
        self.calls.append(("ticks", serial))
        then(frozenset(self.ticked))

    def preview_let_in(self, identity: str, context: QObject, then: Then[LetInPlan], failed: Failed) -> None:
        """See the real one."""
        plan = LetInPlan(self._of(identity), 0, self._lists + 1)
        self._give("preview_let_in", identity, context, lambda: then(plan), failed)

    def let_in(self, plan: LetInPlan, context: QObject, then: Then[Changes] | None, failed: Failed | None) -> None:
        """See the real one."""
        self._withdraw("let_in", plan.chosen, None, context, then, failed)

    def _withdraw(
        self,
        verb: str,
        chosen: tuple[Pass, ...],
        reason: Reason | None,
        context: QObject,
        then: Then[Changes] | None,
        failed: Failed | None,
    ) -> None:
        def give() -> None:
            self._lists += 1
            here = self._here()
            since = None if reason is None else here.at
            passes = tuple(replace(one, reason=reason, since=since) if one in chosen else one for one in here.passes)
            files = (f"lists/list-{self._lists}.pem", f"lists/list-{self._lists}.crl")
            changes = Changes(f"{chosen[0].title}: {verb}.", (chosen[0].serial,), self._lists, files)
            self.now_is(replace(here, passes=passes))
            self.done.emit(changes)
            if then is not None:
                then(changes)

        self._give(verb, chosen[0].identity, context, give, failed)

    # Founding

    def offer_passphrase(self, context: QObject, then: Then[Secret[str]]) -> None:
        """Seven words, each time in another order."""
        turn = len(self.asked("offer")) % len(WORDS)
        offered = Secret(" ".join(WORDS[turn:] + WORDS[:turn]))
        self._give("offer", None, context, lambda: then(offered), None)

    def judge_passphrase(self, text: str, context: QObject, then: Then[Secret[str]], failed: Failed) -> None:
        """The real judge, without its thread."""
        try:
            secret = passphrases.chosen(text)
        except HearthkeyError as error:
            self._give("judge", None, context, partial(failed, error), failed)
            return
        self._give("judge", None, context, lambda: then(secret), failed)

    def preview_found(self, request: FoundRequest, context: QObject, then: Then[FoundPlan], failed: Failed) -> None:
        """The real judge, without its thread."""
        assert self.founding is not None
        try:
            plan = self.founding.preview(request)
        except HearthkeyError as error:
            self._give("preview_found", request, context, partial(failed, error), failed)
            return
        self._give("preview_found", request, context, lambda: then(plan), failed)

    def found(
        self,
        plan: FoundPlan,
        passphrase: Secret[str],
        place: str,
        context: QObject,
        then: Then[Changes] | None = None,
        failed: Failed | None = None,
    ) -> None:
        """Remember what would have been founded."""

        def give() -> None:
            changes = Changes(f"{plan.household.name} was founded.", list_number=1)
            self.done.emit(changes)
            if then is not None:
                then(changes)

        self._give("found", (plan, passphrase, place), context, give, failed)
