"""`hearthkey replace` and `leaves`."""

from __future__ import annotations

from argparse import Namespace

from hearthkey.cli import asking
from hearthkey.cli.teller import Teller
from hearthkey.cli.withdrawing import done
from hearthkey.core.network import Caution
from hearthkey.core.sentences import goodbye
from hearthkey.core.sentences import renewal as sentences
from hearthkey.core.sentences.diary import titles
from hearthkey.services import looking
from hearthkey.services.house import House


def replace_verb(house: House, arguments: Namespace, teller: Teller) -> None:
    """Give a person a new device in place of an old one."""
    found = looking.find(house.register.passes(), arguments.device)
    plan = house.replacing.preview(found, arguments.label, arguments.kind)
    told = str(sentences.replace(plan))
    teller.cautions(plan.enrol.cautions)
    if arguments.plan:
        teller.result([told], {"plan": told})
        return
    teller.aside(told)
    asking.agree(arguments, teller, "Replace it?")
    asking.unlock(house, arguments, teller)
    changes = house.replacing.apply(plan, progress=teller.progress)
    stopped = [Caution("open-connection", "")] if changes.list_number is not None else []
    done(house, changes, teller, stopped)


def leaves_verb(house: House, arguments: Namespace, teller: Teller) -> None:
    """Withdraw everything of a person for good, and say what else to change."""
    plan = house.goodbye.preview(arguments.person)
    told = str(goodbye.plan(plan.person, plan.revoke))
    devices = list(dict.fromkeys(one.title for one in plan.chosen))
    chores = [f"{goodbye.what(one)}: {goodbye.why(one)}" for one in plan.chores]
    data = {"devices": devices, "also_change": chores}
    if arguments.plan:
        teller.result([told, *(f"  {one}" for one in devices), *_also(chores)], {"plan": told, **data})
        return
    teller.aside(f"{told} {titles(plan.chosen)}.")
    asking.agree(arguments, teller, "Revoke them all for good?")
    asking.unlock(house, arguments, teller)
    changes = house.goodbye.apply(plan)
    done(house, changes, teller, [Caution("open-connection", "")], _also(chores), data)


def _also(chores: list[str]) -> list[str]:
    return ["Also change:", *(f"  {one}" for one in chores)]
