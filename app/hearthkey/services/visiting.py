"""Keeps the days on which the householder meets somebody; renewals are planned by them."""

from __future__ import annotations

from datetime import datetime, timedelta

from hearthkey.core.errors import Refused
from hearthkey.core.plans import Changes
from hearthkey.core.renewal import SLOWEST_VISIT, Visit
from hearthkey.core.sentences import renewal as sentences
from hearthkey.core.sentences.diary import day as day_of
from hearthkey.services.goodbye import of_person
from hearthkey.services.ports import Clock
from hearthkey.services.renewal_ports import RenewalRegister
from hearthkey.services.writing_diary import note


class Visiting:
    """The verb "visit"."""

    def __init__(self, register: RenewalRegister, clock: Clock) -> None:
        self._register = register
        self._clock = clock

    def ahead(self) -> list[Visit]:
        """Visits that are still to come, the first day first; today counts.

        Raises:
            Unavailable: as the register.
        """
        now = self._clock.now()
        return [one for one in self._register.visits() if one.day + timedelta(days=1) > now]

    def checked(self, person: str, day: datetime) -> Visit:
        """A visit as it would be kept.

        Args:
            person: whom.
            day: any moment of that day, UTC.

        Raises:
            Refused: person-unknown, visit-over.
        """
        known = of_person(self._register.passes(), person)[0].person
        begins = day.replace(hour=0, minute=0, second=0, microsecond=0)
        if begins + timedelta(days=1) <= self._clock.now():
            raise Refused("visit-over", day=day_of(begins))
        return Visit(known, begins)

    def plan(self, visit: Visit) -> Changes:
        """Keep a visit; keeping it twice is fine.

        Raises:
            Unavailable: as the register.
        """
        sentence = sentences.visit_planned(visit.person, visit.day)
        if visit not in self._register.visits():
            with self._register.change() as change:
                change.plan_visit(visit.person, visit.day)
                note(self._register, change, verb="visit", sentence=sentence, now=self._clock.now())
        return Changes(sentence)

    def call_off(self, person: str, day: datetime) -> Changes:
        """Forget a visit.

        Raises:
            Refused: person-unknown, visit-unknown.
            Unavailable: as the register.
        """
        known = of_person(self._register.passes(), person)[0].person
        visit = Visit(known, day.replace(hour=0, minute=0, second=0, microsecond=0))
        if visit not in self._register.visits():
            raise Refused("visit-unknown", person=known, day=day_of(day))
        sentence = sentences.visit_dropped(known, day)
        with self._register.change() as change:
            change.drop_visit(known, visit.day)
            note(self._register, change, verb="visit", sentence=sentence, now=self._clock.now())
        return Changes(sentence)

    def covers(self, visit: Visit) -> datetime:
        """What ends by then is renewed at this visit: the day of the next one, or half a year later.

        Raises:
            Unavailable: as the register.
        """
        later = [one.day for one in self.ahead() if one.person == visit.person and one.day > visit.day]
        # A pass that ends on the day of the next visit would end before it.
        until = min(later, default=visit.day + SLOWEST_VISIT)
        return until.replace(hour=23, minute=59, second=59)
