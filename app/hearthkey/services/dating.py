"""The days on which something has to be done, of a household, and as a calendar file."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import datetime

from hearthkey.core import duties, sealed
from hearthkey.core.duties import Duty
from hearthkey.core.errors import Refused
from hearthkey.core.household import Authority, Household
from hearthkey.core.in_force import house_ends
from hearthkey.core.keepsakes import keepsake_duties
from hearthkey.core.names import file_stem
from hearthkey.core.outgoing import until_it_goes
from hearthkey.core.sentences import duties as words
from hearthkey.core.sentences.sentence import Sentence
from hearthkey.core.succession_days import succession_duties
from hearthkey.formats import calendar
from hearthkey.services.keeping_sakes import keepsakes
from hearthkey.services.outgoing import outgoing, under_way
from hearthkey.services.renewal_ports import RenewalRegister


def file_name(household: Household) -> str:
    """What the calendar file of a household is called, always the same, so that writing it again updates it."""
    return f"{file_stem(household.name, 'household')}-dates.ics"


def as_calendar(
    found: Sequence[Duty],
    household: Household,
    authority: Authority,
    made: datetime,
    say: Callable[[Sentence], str] = str,
) -> bytes:
    """The days as a calendar file (RFC 5545).

    Args:
        made: now, UTC.
        say: a sentence in the language in which the family reads its calendar.
    """
    days = [calendar.Day(one.key, one.act_on, say(words.title(one)), say(words.reason(one))) for one in found]
    return calendar.write(days, household=household.certified_name, owner=authority.short, made=made)


def duties_of(register: RenewalRegister, now: datetime) -> tuple[Duty, ...]:
    """Everything that has to be done, soonest first.

    Args:
        now: UTC.

    Raises:
        Refused: no-household.
        Unavailable: as the register.
    """
    newest, gateway = register.newest_list(), register.gateway()
    if register.household() is None or newest is None or gateway is None:
        raise Refused("no-household")
    list_end, gateway_end = house_ends(register.gateway_note(), newest, gateway.not_after)
    parts, passes, began = register.deputy_set(), register.passes(), register.diary()[0].at
    known = keepsakes(register, passes, began, now)
    dates = duties.House(
        list_end,
        gateway_end,
        register.authorities()[0].not_after,
        sealed.due(register.sealed_copies(), began),
        succession_duties(register.succession(), under_way(register, passes, now), now),
        None if parts is None else parts.due,
        () if known is None else keepsake_duties(known),
    )
    proved = {one.serial for one in passes if one.proved is not None}
    capped = until_it_goes(passes, outgoing(register, passes, now), now)
    return duties.forecast(dates, capped, proved, now, follows=register.follows(), visits=register.visits())
