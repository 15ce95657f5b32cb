"""`hearthkey dates`: what has to be done by when, and as a calendar file."""

from __future__ import annotations

from argparse import Namespace

from hearthkey.cli.teller import Teller
from hearthkey.core import duties, sealed
from hearthkey.core.duties import Duty
from hearthkey.core.errors import Refused
from hearthkey.core.household import Household
from hearthkey.core.in_force import house_ends
from hearthkey.core.keepsakes import keepsake_duties
from hearthkey.core.names import file_stem
from hearthkey.core.outgoing import until_it_goes
from hearthkey.core.sentences import duties as words
from hearthkey.core.sentences.diary import day
from hearthkey.core.succession import succession_due
from hearthkey.formats import calendar
from hearthkey.services.house import House
from hearthkey.services.keeping_sakes import keepsakes
from hearthkey.services.opening import the_authority
from hearthkey.services.outgoing import outgoing


def dates_verb(house: House, arguments: Namespace, teller: Teller) -> None:
    """Show the days, or write them."""
    household, found = _duties(house)
    if arguments.into is None:
        teller.result(
            [f"{day(one.act_on)}: {words.title(one)}. {words.reason(one)}" for one in found],
            {"dates": [{"key": one.key, "on": one.act_on, "until": one.until} for one in found]},
        )
        return
    data = calendar.write(
        [calendar.Day(one.key, one.act_on, str(words.title(one)), str(words.reason(one))) for one in found],
        household=household.certified_name,
        owner=the_authority(house.register).short,
        made=house.clock.now(),
    )
    path = house.files.write(arguments.into, f"{file_stem(household.name, 'household')}-dates.ics", data)
    teller.result([str(path)], {"files": [str(path)]})


def _duties(house: House) -> tuple[Household, tuple[Duty, ...]]:
    household, newest = house.register.household(), house.register.newest_list()
    gateway = house.register.gateway()
    if household is None or newest is None or gateway is None:
        raise Refused("no-household")
    list_end, gateway_end = house_ends(house.register.gateway_note(), newest, gateway.not_after)
    parts = house.register.deputy_set()
    passes, began, now = house.register.passes(), house.register.diary()[0].at, house.clock.now()
    known = keepsakes(house.register, passes, began, now)
    dates = duties.House(
        list_end,
        gateway_end,
        house.register.authorities()[0].not_after,
        sealed.due(house.register.sealed_copies(), began),
        succession_due(house.register.succession()),
        None if parts is None else parts.due,
        () if known is None else keepsake_duties(known),
    )
    return household, duties.forecast(
        dates,
        until_it_goes(passes, outgoing(house.register, passes, now), now),
        {one.serial for one in passes if one.proved is not None},
        now,
        follows=house.register.follows(),
        visits=house.register.visits(),
    )
