"""Replaces a device in one move: a new device of the same person, the old one stopped at once."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from hearthkey.core import phrases
from hearthkey.core.errors import Refused
from hearthkey.core.household import possessive
from hearthkey.core.passes import Pass, State
from hearthkey.core.plans import Changes, FollowPlan, ReplacePlan, StopPlan
from hearthkey.core.renewal import Way
from hearthkey.core.revocation import Reason, SignedList
from hearthkey.core.sentences import diary
from hearthkey.services import looking
from hearthkey.services.enrolling import Enrolling, EnrolRequest
from hearthkey.services.listing import Listing
from hearthkey.services.ports import Clock, Progress, silent
from hearthkey.services.renewal_ports import RenewalChange, RenewalRegister
from hearthkey.services.stopping import out_of_sight
from hearthkey.services.writing_diary import note


class Replacing:
    """The verb "replace"."""

    def __init__(self, register: RenewalRegister, clock: Clock, enrolling: Enrolling, listing: Listing) -> None:
        self._register = register
        self._clock = clock
        self._enrolling = enrolling
        self._listing = listing

    def preview(self, passes: Sequence[Pass], label: str, kind: str) -> ReplacePlan:
        """Decide what takes the place of a device.

        Args:
            passes: all passes of the old device.
            label: what the person calls the new one.
            kind: name of its device kind.

        Raises:
            Refused: pass-not-alive, and as `Enrolling.preview`.
        """
        now = self._clock.now()
        old = tuple(looking.living(passes, now))
        if not old:
            last = looking.newest(passes)
            raise Refused("pass-not-alive", title=last.title, state=last.state(now).value)
        planned = self._enrolling.preview(EnrolRequest(person=old[0].person, device=label, kind=kind))
        enrol = replace(planned, follows=tuple(FollowPlan(one, now, Way.REPLACED) for one in old))
        title = possessive(enrol.person, enrol.device)
        return ReplacePlan(old, enrol, title, self._listing.next_number())

    def apply(self, plan: ReplacePlan, *, progress: Progress = silent) -> Changes:
        """Make the new device its pass and stop the old one, both in one transaction.

        The old one goes for good once the new one was seen to get in; until then it can be let back in.

        Raises:
            Refused: as `Enrolling.apply`, and authority-ended.
            Unavailable: as vault and register.
        """
        signed: list[SignedList] = []
        said: list[str] = []
        now = self._clock.now()
        stopping = tuple(one for one in plan.old if one.state(now) is not State.STOPPED)

        def stop(change: RenewalChange) -> None:
            for one in stopping:
                change.withdraw(one.serial, Reason.CERTIFICATE_HOLD, now)
            out_of_sight(change, stopping, now)
            signed.append(self._listing.add_next(change))
            said.append(diary.stopped(StopPlan(stopping, 0, signed[0].number), signed[0].number))
            note(self._register, change, verb="stop", sentence=said[0], now=now)

        done = self._enrolling.apply(plan.enrol, progress=progress, also=stop if stopping else None)
        if not signed:
            return done
        files, cautions = self._listing.publish_or_say(signed[0])
        return Changes(
            phrases.sentences((done.sentence, said[0])),
            serials=(*done.serials, *(one.serial for one in stopping)),
            list_number=signed[0].number,
            files=files,
            cautions=(*done.cautions, *cautions),
        )
