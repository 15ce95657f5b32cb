"""`hearthkey dates`: what has to be done by when, and as a calendar file."""

from __future__ import annotations

from argparse import Namespace

from hearthkey.cli.teller import Teller
from hearthkey.core.errors import Refused
from hearthkey.core.sentences import duties as words
from hearthkey.core.sentences.diary import day
from hearthkey.services import dating
from hearthkey.services.house import House
from hearthkey.services.opening import the_authority


def dates_verb(house: House, arguments: Namespace, teller: Teller) -> None:
    """Show the days, or write them."""
    household, now = house.register.household(), house.clock.now()
    if household is None:
        raise Refused("no-household")
    found = dating.duties_of(house.register, now)
    if arguments.into is None:
        teller.result(
            [f"{day(one.act_on)}: {words.title(one)}. {words.reason(one)}" for one in found],
            {"dates": [{"key": one.key, "on": one.act_on, "until": one.until} for one in found]},
        )
        return
    data = dating.as_calendar(found, household, the_authority(house.register), now)
    path = house.files.write(arguments.into, dating.file_name(household), data)
    teller.result([str(path)], {"files": [str(path)]})
