"""Keeps spare stop lists ready, and stops with one of them when the household is locked."""

from __future__ import annotations

from collections.abc import Sequence

from hearthkey.core.errors import Refused
from hearthkey.core.passes import Pass, State
from hearthkey.core.plans import Changes, SparePlanned
from hearthkey.core.revocation import Reason
from hearthkey.core.sentences import diary
from hearthkey.core.spares import SignedSpare, SpareList, choose, plan_spares, wider
from hearthkey.core.succession import Cause
from hearthkey.services import looking
from hearthkey.services.gateway_ports import GatewayRegister
from hearthkey.services.listing import Listing, sign_by_all
from hearthkey.services.opening import Keyholder, the_authority
from hearthkey.services.ports import Clock
from hearthkey.services.stopping import out_of_sight
from hearthkey.services.writing_diary import note


class Sparing:
    """The verb "stop" without a passphrase.

    Spare lists lie in the register and leave it in two ways only: by being used, and in a deputy's stop set.
    """

    def __init__(self, register: GatewayRegister, keyholder: Keyholder, clock: Clock, listing: Listing) -> None:
        self._register = register
        self._keyholder = keyholder
        self._clock = clock
        self._listing = listing

    def fresh(self, passes: Sequence[Pass] | None = None) -> bool:
        """Whether every device that gets in can be stopped with what lies ready.

        Args:
            passes: every pass, where somebody has just read them.
        """
        newest = self._register.newest_list()
        now = self._clock.now()
        found = self._register.passes() if passes is None else passes
        getting_in = {one.serial for one in found if one.gets_in(now)}
        everybody = [one for one in self._register.spare_lists() if not one.subject]
        if newest is None or self._register.used_spares():
            return False
        if not getting_in:
            return True
        return any(one.base == newest.number and one.serials == getting_in for one in everybody)

    def renew(self) -> int:
        """Sign spare lists for the household as it is: one for each device, each person, and everybody.

        Returns:
            How many; none while the old CA's key is lost.

        Raises:
            Refused: household-locked, no-household, authority-ended.
            Unavailable: as the register.
        """
        self._keyholder.key()
        if self._without_old_key():
            return 0
        authority = the_authority(self._register)
        newest = self._register.newest_list()
        now = self._clock.now()
        if now >= authority.not_after:
            raise Refused("authority-ended", end=diary.day(authority.not_after))
        if newest is None or self._register.used_spares():
            # Whoever was stopped by a spare list stands in the register; an ordinary list says it again under
            # a number of its own, and the new spare lists are based on that.
            with self._register.change() as change:
                newest = self._listing.add_next(change)
            self._listing.publish_or_say(newest)
        plans = plan_spares(
            self._register.passes(),
            self._register.entries(),
            highest_number=self._register.list_high_water(),
            previous_update=newest.this_update,
            authority_end=authority.not_after,
            now=max(now, newest.this_update),
        )
        signed = [
            SignedSpare(
                SpareList(plan.scope, plan.subject, plan.serials, newest.number, plan.to_sign.number),
                sign_by_all(plan.to_sign, self._register, self._keyholder, now),
            )
            for plan in plans
        ]
        with self._register.change() as change:
            change.replace_spares(signed)
        return len(signed)

    def _without_old_key(self) -> bool:
        """Whether nobody can sign in advance for the old CA, so that no spare list would keep what it promises."""
        found = self._register.succession()
        return found is not None and found.underway and found.cause is Cause.LOST

    def preview_stop(self, passes: Sequence[Pass]) -> SparePlanned:
        """Decide which spare list stops a device, and whom it stops besides.

        Args:
            passes: all passes of one device.

        Raises:
            Refused: already-stopped, pass-not-alive, no-spare-list.
        """
        now = self._clock.now()
        chosen = tuple(one for one in looking.living(passes, now) if one.state(now) is not State.STOPPED)
        if not chosen:
            last = looking.newest(passes)
            state = last.state(now)
            code = "already-stopped" if state is State.STOPPED else "pass-not-alive"
            raise Refused(code, title=last.title, state=state.value)
        spare = self._choose(frozenset(one.serial for one in chosen))
        if spare is None:
            raise Refused("no-spare-list", title=chosen[0].title)
        return self._planned(spare, chosen)

    def preview_everybody(self) -> SparePlanned:
        """Decide the list that stops everybody.

        Raises:
            Refused: no-spare-list.
        """
        newest = self._register.newest_list()
        spare = wider(
            self._register.spare_lists(),
            newest_number=0 if newest is None else newest.number,
            used=self._register.used_spares(),
        )
        if spare is None:
            raise Refused("no-list-for-everybody")
        return self._planned(spare, ())

    def _choose(self, wanted: frozenset[str]) -> SpareList | None:
        newest = self._register.newest_list()
        return choose(
            self._register.spare_lists(),
            wanted,
            newest_number=0 if newest is None else newest.number,
            used=self._register.used_spares(),
        )

    def _planned(self, spare: SpareList, chosen: tuple[Pass, ...]) -> SparePlanned:
        now = self._clock.now()
        on_it = [one for one in self._register.passes() if one.serial in spare.serials and one.gets_in(now)]
        asked = {one.serial for one in chosen} if chosen else {one.serial for one in on_it}
        unaffected = sum(1 for one in self._register.passes() if one.gets_in(now) and one.serial not in spare.serials)
        return SparePlanned(
            chosen=tuple(one for one in on_it if one.serial in asked),
            besides=tuple(one for one in on_it if one.serial not in asked),
            unaffected=unaffected,
            list_number=spare.number,
            sharing=unaffected if self._register.pack_options().household_secret else 0,
        )

    def stop(self, plan: SparePlanned) -> Changes:
        """Make a spare list the newest list.

        Raises:
            Refused: no-spare-list, where it was replaced since the plan was made.
            Unavailable: as the register.
        """
        signed = self._register.signed_spare(plan.list_number)
        newest = self._register.newest_list()
        if signed is None or (newest is not None and newest.number >= signed.number):
            raise Refused("no-spare-list", title=diary.titles(plan.everyone))
        now = self._clock.now()
        sentence = diary.stopped_by_spare(plan)
        with self._register.change() as change:
            for one in plan.everyone:
                change.withdraw(one.serial, Reason.CERTIFICATE_HOLD, now)
            out_of_sight(change, plan.everyone, now)
            change.add_list(signed)
            change.use_spare(signed.number, now)
            note(self._register, change, verb="stop", sentence=sentence, now=now)
        files, cautions = self._listing.publish_or_say(signed)
        serials = tuple(one.serial for one in plan.everyone)
        return Changes(sentence, serials, signed.number, files, cautions)
