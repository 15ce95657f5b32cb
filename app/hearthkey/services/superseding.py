"""Lets old passes go once others have taken their place, and takes back a renewal that was not handed over."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace

from hearthkey.core import renewal
from hearthkey.core.errors import Refused
from hearthkey.core.passes import Pass
from hearthkey.core.plans import Changes, SupersedePlan, TakeBackPlan
from hearthkey.core.revocation import Reason
from hearthkey.core.sentences import renewal as sentences
from hearthkey.services import looking
from hearthkey.services.erasing import Erasing
from hearthkey.services.gateway_ports import GatewayChange
from hearthkey.services.opening import Keyholder
from hearthkey.services.ports import Clock, Vault
from hearthkey.services.renewal_ports import RenewalRegister
from hearthkey.services.stopping import Stopping


class Superseding:
    """The verb "supersede", and the way back of "renew"."""

    def __init__(
        self, register: RenewalRegister, vault: Vault, keyholder: Keyholder, clock: Clock, stopping: Stopping
    ) -> None:
        self._register = register
        self._keyholder = keyholder
        self._clock = clock
        self._stopping = stopping
        self._erasing = Erasing(register, vault)

    def preview_supersede(self, passes: Sequence[Pass]) -> SupersedePlan:
        """Decide which old passes of a device go because the householder says so.

        Raises:
            Refused: nothing-to-supersede, supersede-leaves-none.
        """
        now, everybody, follows = self._clock.now(), self._register.passes(), self._register.follows()
        renewed = renewal.renewals(everybody, follows, now)
        chosen = tuple(one for one in looking.living(passes, now) if one.serial in renewed)
        if not chosen:
            raise Refused("nothing-to-supersede", title=looking.newest(passes).title)
        if not all(renewal.may_supersede(one, everybody, follows, now) for one in chosen):
            raise Refused("supersede-leaves-none", title=chosen[0].title)
        return SupersedePlan(chosen, self._register.list_high_water() + 1, proved=False)

    def supersede(self, plan: SupersedePlan) -> Changes:
        """Let old passes go for good (RFC 5280 section 5.3.1, superseded), and erase what waits here for them.

        Raises:
            Refused: supersede-leaves-none, household-locked, clock-behind, authority-ended.
            Unavailable: as the register.
        """
        now = self._clock.now()
        everybody, follows = self._register.passes(), self._register.follows()
        for one in plan.chosen:
            if not renewal.may_supersede(one, everybody, follows, now):
                raise Refused("supersede-leaves-none", title=one.title)
        return self._withdraw(
            plan.chosen,
            Reason.SUPERSEDED,
            "supersede",
            lambda number: sentences.superseded(plan, number),
        )

    def proved(self) -> SupersedePlan | None:
        """Old passes that may go now, because what follows them was seen to get in; None where there are none.

        Those that a proof names go first; those whose overlap is over come with the next plan, for the diary says why.
        """
        now, passes, follows = self._clock.now(), self._register.passes(), self._register.follows()
        over = [
            one
            for one in renewal.over_once_proved(passes, follows, now)
            if renewal.may_supersede(one, passes, follows, now)
        ]
        if not over:
            return None
        named = renewal.named(over, passes, follows, now)
        number = self._register.list_high_water() + 1
        return SupersedePlan(named or tuple(over), number, proved=True, overlap_over=not named)

    def follow_up(self) -> Changes | None:
        """Let go what is over, if the household is unlocked; after a proof, a hand-over and at each unlock.

        A proof and the end of an overlap are two entries of the diary, and two lists.

        Returns:
            None where nothing was over, or nothing can be signed now.

        Raises:
            Refused, Unavailable: as `supersede`.
        """
        if self._keyholder.locked or self._register.read_only:
            return None
        done: Changes | None = None
        while (plan := self.proved()) is not None:
            more = self.supersede(plan)
            done = more if done is None else _both(done, more)
        return done

    def preview_take_back(self, passes: Sequence[Pass]) -> TakeBackPlan:
        """Decide which renewal of a device is taken back.

        Raises:
            Refused: nothing-to-take-back, renewal-in-use.
        """
        now = self._clock.now()
        made = {one.new for one in self._register.follows()}
        waiting = [one for one in looking.living(passes, now) if one.serial in made and one.handed_over is None]
        if not waiting:
            raise Refused("nothing-to-take-back", title=looking.newest(passes).title)
        if waiting[-1].proved is not None:
            raise Refused("renewal-in-use", title=waiting[-1].title)
        return TakeBackPlan(waiting[-1], self._register.list_high_water() + 1)

    def take_back(self, plan: TakeBackPlan) -> Changes:
        """Withdraw a pass that waits, and erase its key and passphrase; the pass that it was to follow stays.

        Copies of its bundle may have left, so it goes on the list like any other (RFC 5280 section 5.3.1,
        cessationOfOperation).

        Raises:
            Refused: household-locked, clock-behind, authority-ended.
            Unavailable: as the register.
        """
        return self._withdraw(
            (plan.chosen,),
            Reason.CESSATION_OF_OPERATION,
            "take-back",
            lambda number: sentences.taken_back(plan.chosen, number),
        )

    def _withdraw(
        self, chosen: tuple[Pass, ...], reason: Reason, verb: str, sentence_of: Callable[[int], str]
    ) -> Changes:
        """Unlike a loss, this says nothing of secrets beside the certificates: the device is in good hands."""
        now = self._clock.now()
        waiting = tuple(one for one in chosen if one.handed_over is None)

        def act(change: GatewayChange) -> None:
            for one in chosen:
                change.withdraw(one.serial, reason, now)
            self._erasing.withdrawn(change, waiting)

        done = self._stopping.sign(act, verb, chosen, sentence_of)
        return replace(done, cautions=(*done.cautions, *self._erasing.follow(waiting)))


def _both(one: Changes, other: Changes) -> Changes:
    """Two supersessions as one, for whoever tells of them; only the newest list counts."""
    return replace(
        other,
        sentence=f"{one.sentence} {other.sentence}",
        serials=(*one.serials, *other.serials),
        cautions=tuple(dict.fromkeys((*one.cautions, *other.cautions))),
    )
