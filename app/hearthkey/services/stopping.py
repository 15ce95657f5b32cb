"""Stops passes, lets them back in, revokes them: each signs the next revocation list."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace
from datetime import datetime

from hearthkey.core.errors import Refused
from hearthkey.core.passes import Pass, State
from hearthkey.core.plans import Changes, LetInPlan, RevokePlan, StopPlan
from hearthkey.core.revocation import Reason
from hearthkey.core.sentences import diary
from hearthkey.services import looking
from hearthkey.services.erasing import Erasing
from hearthkey.services.gateway_ports import GatewayChange, GatewayRegister
from hearthkey.services.listing import Listing
from hearthkey.services.opening import Keyholder
from hearthkey.services.ports import Clock, Vault
from hearthkey.services.writing_diary import check_clock, note

SHARED_SECRET = ""
"""The owner of the secret that all devices share."""


class Stopping:
    """The verbs "stop", "let-in" and "revoke"."""

    def __init__(
        self, register: GatewayRegister, vault: Vault, keyholder: Keyholder, clock: Clock, listing: Listing
    ) -> None:
        self._erasing = Erasing(register, vault)
        self._register = register
        self._keyholder = keyholder
        self._clock = clock
        self._listing = listing

    def _unaffected(self, chosen: Sequence[Pass]) -> int:
        now = self._clock.now()
        serials = {one.serial for one in chosen}
        return sum(1 for one in self._register.passes() if one.serial not in serials and one.gets_in(now))

    def preview_stop(self, passes: Sequence[Pass]) -> StopPlan:
        """Decide which passes of a device stop.

        Raises:
            Refused: already-stopped, pass-not-alive.
        """
        now = self._clock.now()
        chosen = tuple(one for one in looking.living(passes, now) if one.state(now) is not State.STOPPED)
        if not chosen:
            last = looking.newest(passes)
            state = last.state(now)
            code = "already-stopped" if state is State.STOPPED else "pass-not-alive"
            raise Refused(code, title=last.title, state=state.value)
        unaffected = self._unaffected(chosen)
        sharing = unaffected if self._register.pack_options().household_secret else 0
        return StopPlan(chosen, unaffected, self._listing.next_number(), sharing)

    def stop(self, plan: StopPlan) -> Changes:
        """Put passes on hold (certificateHold) and sign the list that says so.

        Raises:
            Refused: household-locked, clock-behind, authority-ended.
            Unavailable: as the register.
        """

        def act(change: GatewayChange) -> None:
            for one in plan.chosen:
                change.withdraw(one.serial, Reason.CERTIFICATE_HOLD, self._clock.now())
            out_of_sight(change, plan.chosen, self._clock.now())

        return self.sign(act, "stop", plan.chosen, lambda number: diary.stopped(plan, number))

    def preview_let_in(self, passes: Sequence[Pass]) -> LetInPlan:
        """Decide which passes of a device come back.

        Raises:
            Refused: not-stopped, revoked-is-final.
        """
        now = self._clock.now()
        chosen = tuple(one for one in passes if one.state(now) is State.STOPPED)
        if not chosen:
            last = looking.newest(passes)
            code = "revoked-is-final" if last.state(now) is State.REVOKED else "not-stopped"
            raise Refused(code, title=last.title)
        away = max(now - one.since for one in chosen if one.since is not None)
        return LetInPlan(chosen, int(away.total_seconds() // 3600), self._listing.next_number())

    def let_in(self, plan: LetInPlan) -> Changes:
        """Leave stopped passes off the next list.

        Raises:
            Refused: household-locked, clock-behind, authority-ended.
            Unavailable: as the register.
        """

        def act(change: GatewayChange) -> None:
            for one in plan.chosen:
                change.lift(one.serial, self._clock.now())

        return self.sign(act, "let-in", plan.chosen, lambda number: diary.let_in(plan, number))

    def preview_revoke(self, passes: Sequence[Pass], reason: Reason) -> RevokePlan:
        """Decide which passes of a device are withdrawn for good.

        Raises:
            Refused: revoked-already, pass-not-alive, reason-unknown.
        """
        if reason is Reason.CERTIFICATE_HOLD:
            raise Refused("reason-unknown", text=reason.rfc_name, known=())
        now = self._clock.now()
        chosen = tuple(looking.living(passes, now))
        if not chosen:
            last = looking.newest(passes)
            state = last.state(now)
            code = "revoked-already" if state is State.REVOKED else "pass-not-alive"
            raise Refused(code, title=last.title, state=state.value)
        unaffected = self._unaffected(chosen)
        sharing = unaffected if self._register.pack_options().household_secret else 0
        return RevokePlan(chosen, reason, unaffected, self._listing.next_number(), sharing)

    def revoke(self, plan: RevokePlan) -> Changes:
        """Withdraw passes for good, and erase the keys and passphrases that wait here for them.

        One that was on hold keeps the date of the hold (X.509 section 8.5.2.2, from memory).

        Raises:
            Refused: household-locked, clock-behind, authority-ended.
            Unavailable: as the register.
        """

        def act(change: GatewayChange) -> None:
            for one in plan.chosen:
                change.withdraw(one.serial, plan.reason, self._clock.now())
            out_of_sight(change, plan.chosen, self._clock.now())
            self._erasing.withdrawn(change, waiting)

        waiting = tuple(one for one in plan.chosen if one.handed_over is None)
        done = self.sign(act, "revoke", plan.chosen, lambda number: diary.revoked(plan, number))
        return replace(done, cautions=(*done.cautions, *self._erasing.follow(waiting)))

    def sign(
        self,
        act: Callable[[GatewayChange], None],
        verb: str,
        chosen: Sequence[Pass],
        sentence_of: Callable[[int], str],
    ) -> Changes:
        """Do something to passes, sign the list that says so and note it, all in one transaction.

        Raises:
            Refused: household-locked, clock-behind, authority-ended.
            Unavailable: as the register.
        """
        self._keyholder.key()
        now = self._clock.now()
        check_clock(self._register, now)
        with self._register.change() as change:
            act(change)
            signed = self._listing.add_next(change)
            sentence = sentence_of(signed.number)
            note(self._register, change, verb=verb, sentence=sentence, now=now)
        serials = tuple(one.serial for one in chosen)
        files, cautions = self._listing.publish_or_say(signed)
        return Changes(sentence, serials, signed.number, files, cautions)


def out_of_sight(change: GatewayChange, passes: Sequence[Pass], now: datetime) -> None:
    """Note that secrets beside the certificates lie on devices that nobody watches: their own, and the shared one."""
    for owner in {one.identity for one in passes} | {SHARED_SECRET}:
        change.extra_secret_known(owner, now)
