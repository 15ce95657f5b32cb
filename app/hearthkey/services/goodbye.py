"""Somebody leaves the household: all of their passes go for good, and what else is to be changed is said."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from hearthkey.core import goodbye
from hearthkey.core.errors import Refused
from hearthkey.core.goodbye import Chore
from hearthkey.core.passes import Pass
from hearthkey.core.plans import Changes, RevokePlan
from hearthkey.core.revocation import Reason
from hearthkey.core.templates import DEVICE
from hearthkey.services import looking
from hearthkey.services.ports import Clock
from hearthkey.services.renewal_ports import RenewalRegister
from hearthkey.services.stopping import Stopping


@dataclass(frozen=True)
class GoodbyePlan:
    """A person about to leave.

    Args:
        person: who.
        revoke: what happens to their passes.
        chores: what else to change, and what of it was found to concern this household.
    """

    person: str
    revoke: RevokePlan
    chores: tuple[Chore, ...]

    @property
    def chosen(self) -> tuple[Pass, ...]:
        """Their passes, each of which goes."""
        return self.revoke.chosen


class Goodbye:
    """The verb "leaves"."""

    def __init__(self, register: RenewalRegister, clock: Clock, stopping: Stopping) -> None:
        self._register = register
        self._clock = clock
        self._stopping = stopping

    def preview(self, person: str) -> GoodbyePlan:
        """Decide what goes when a person leaves.

        Raises:
            Refused: person-unknown, person-has-none.
        """
        theirs = of_person(self._register.passes(), person)
        if not looking.living(theirs, self._clock.now()):
            raise Refused("person-has-none", person=theirs[0].person)
        plan = self._stopping.preview_revoke(theirs, Reason.AFFILIATION_CHANGED)
        options = self._register.pack_options()
        chores = goodbye.chores(
            shared_secret=options.household_secret and plan.unaffected > 0,
            device_templates=tuple(one.name for one in self._register.templates() if one.of == DEVICE),
            by_hand=self._register.target() is None,
        )
        return GoodbyePlan(theirs[0].person, plan, chores)

    def apply(self, plan: GoodbyePlan) -> Changes:
        """Withdraw their passes for good and call their visits off.

        Raises:
            Refused, Unavailable: as `Stopping.revoke`.
        """
        done = self._stopping.revoke(plan.revoke)
        theirs = [one for one in self._register.visits() if one.person.casefold() == plan.person.casefold()]
        if theirs:
            with self._register.change() as change:
                for visit in theirs:
                    change.drop_visit(visit.person, visit.day)
        return replace(done, serials=tuple(one.serial for one in plan.chosen))


def of_person(passes: Sequence[Pass], person: str) -> list[Pass]:
    """All passes of a person.

    Raises:
        Refused: person-unknown.
    """
    folded = " ".join(person.casefold().split())
    found = [one for one in passes if one.person.casefold() == folded]
    if not found:
        raise Refused("person-unknown", text=person[:80])
    return found
