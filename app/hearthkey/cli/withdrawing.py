"""`hearthkey stop`, `let-in`, `revoke` and `lists`."""

from __future__ import annotations

from argparse import Namespace
from collections.abc import Mapping, Sequence

from hearthkey.cli import asking
from hearthkey.cli.teller import Teller
from hearthkey.core.errors import HearthkeyError
from hearthkey.core.network import Caution
from hearthkey.core.plans import Changes, SparePlanned
from hearthkey.core.revocation import final_reason
from hearthkey.core.sentences import gateway, plans
from hearthkey.core.sentences.diary import day, titles
from hearthkey.services import looking
from hearthkey.services.house import House
from hearthkey.services.opening import the_authority

_LONG_AWAY = 24
"""Hours after which a fresh key is wiser than letting the old one back in (common practice, no source)."""


def stop_verb(house: House, arguments: Namespace, teller: Teller) -> None:
    """Stop a device; nothing is asked, because it can be undone."""
    found = looking.find(house.register.passes(), arguments.device)
    plan = house.stopping.preview_stop(found) if arguments.passphrase_file is not None else house.losing.preview(found)
    if isinstance(plan, SparePlanned):
        _stop_by_spare(house, plan, arguments, teller)
        return
    if _only_planned(arguments, teller, str(plans.stop(plan))):
        return
    asking.unlock(house, arguments, teller)
    done(house, house.stopping.stop(plan), teller, [Caution("open-connection", "")])


def _stop_by_spare(house: House, plan: SparePlanned, arguments: Namespace, teller: Teller) -> None:
    """Stop with a list that was signed in advance: it needs no passphrase."""
    if plan.besides:
        teller.cautions([Caution("stops-besides", titles(plan.besides))])
    if _only_planned(arguments, teller, str(gateway.spare(plan))):
        return
    if plan.besides:
        asking.agree(arguments, teller, "Stop them all?")
    done(house, house.losing.stop(plan), teller, [Caution("open-connection", "")])


def let_in_verb(house: House, arguments: Namespace, teller: Teller) -> None:
    """Let a device back in."""
    plan = house.stopping.preview_let_in(looking.find(house.register.passes(), arguments.device))
    if _only_planned(arguments, teller, str(plans.let_in(plan))):
        return
    if plan.hours_away >= _LONG_AWAY:
        teller.cautions([Caution("away-long", str(plan.hours_away))])
    asking.agree(arguments, teller, "Let it back in?")
    asking.unlock(house, arguments, teller)
    done(house, house.stopping.let_in(plan), teller, [])


def revoke_verb(house: House, arguments: Namespace, teller: Teller) -> None:
    """Revoke a device for good."""
    found = looking.find(house.register.passes(), arguments.device)
    plan = house.stopping.preview_revoke(found, final_reason(arguments.reason))
    if _only_planned(arguments, teller, str(plans.revoke(plan))):
        return
    asking.agree(arguments, teller, "Revoke it for good?")
    asking.unlock(house, arguments, teller)
    done(house, house.stopping.revoke(plan), teller, [Caution("open-connection", "")])


def lists_verb(house: House, arguments: Namespace, teller: Teller) -> None:
    """Show, sign or write lists."""
    the_authority(house.register)
    if arguments.sign:
        asking.unlock(house, arguments, teller)
        done(house, house.listing.sign_anew(), teller, [])
        return
    if arguments.clock_was_ahead:
        asking.unlock(house, arguments, teller)
        done(house, house.listing.set_right(), teller, [])
        return
    if arguments.into is not None:
        chosen = house.listing.numbered(arguments.number)
        files = house.listing.publish(chosen, arguments.into)
        teller.result(files, {"number": chosen.number, "files": list(files)})
        return
    found = house.register.lists()
    teller.result(
        [f"{one.number:4}  signed {day(one.this_update)}, good until {day(one.next_update)}" for one in found],
        {"lists": [{"number": one.number, "signed": one.this_update, "good_until": one.next_update} for one in found]},
    )


def _only_planned(arguments: Namespace, teller: Teller, told: str) -> bool:
    if arguments.plan:
        teller.result([told], {"plan": told})
        return True
    teller.aside(told)
    return False


def done(
    house: House,
    changes: Changes,
    teller: Teller,
    cautions: list[Caution],
    lines: Sequence[str] = (),
    data: Mapping[str, object] | None = None,
) -> None:
    """Bring the list to the gateway, where it is known, and say what came of a verb that signed one.

    Args:
        cautions: what to say besides.
        lines, data: the end of the result, for people and for machines.

    Raises:
        Refused, Unavailable: as `Delivering.deliver`, after all was said.
    """
    failed: HearthkeyError | None = None
    if not house.keyholder.locked:
        house.sparing.renew()
    if house.register.target() is not None:
        try:
            house.delivering.deliver(only_list=True, progress=teller.progress)
        except HearthkeyError as error:
            failed = error
    in_force = house.register.gateway_note().list_number == changes.list_number and failed is None
    waits = [] if in_force else [Caution("not-in-force", str(changes.list_number))]
    teller.cautions([*changes.cautions, *waits, *cautions])
    teller.result(
        [changes.sentence, *changes.files, *lines],
        {
            "done": changes.sentence,
            "serials": list(changes.serials),
            "list_number": changes.list_number,
            "in_force": in_force,
            "files": list(changes.files),
            **(data or {}),
        },
    )
    if failed is not None:
        raise failed
