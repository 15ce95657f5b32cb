"""`hearthkey list`: what is, without loading anything heavy."""

from __future__ import annotations

from argparse import Namespace
from datetime import datetime

from hearthkey.cli.teller import Teller
from hearthkey.core.errors import Refused
from hearthkey.core.outlook import outlook
from hearthkey.core.passes import Pass, State
from hearthkey.core.sentences import board as words
from hearthkey.core.sentences.diary import day
from hearthkey.core.succession import succession_due
from hearthkey.services.house import House


def pass_data(one: Pass, now: datetime) -> dict[str, object]:
    """A pass for machines."""
    return {
        "name": one.device,
        "person": one.person,
        "kind": one.kind,
        "state": one.state(now).value,
        "identity": one.identity,
        "serial": one.serial,
        "key_set": one.key_set,
        "container": one.container,
        "guest": one.guest,
        "not_before": one.not_before,
        "not_after": one.not_after,
        "handed_over": one.handed_over,
        "proved": one.proved,
        "proved_by": one.proofs[-1].way.value if one.proofs else None,
        "on_list_since": one.since,
        "reason": None if one.reason is None else one.reason.rfc_name,
    }


def list_verb(house: House, arguments: Namespace, teller: Teller) -> None:
    """List people, devices and dates."""
    del arguments
    household = house.register.household()
    newest = house.register.newest_list()
    if household is None or newest is None:
        raise Refused("no-household")
    now = house.clock.now()
    found = house.register.passes()
    if teller.as_json:
        data = {
            "household": household.certified_name,
            "list": {"number": newest.number, "good_until": newest.next_update},
            "devices": [pass_data(one, now) for one in found],
        }
        teller.result([], data)
        return
    gateway = house.register.gateway()
    gateway_end = newest.next_update if gateway is None else gateway.not_after
    list_seen, gateway_seen = house.register.seen_ends()
    seen = outlook(found, list_end=list_seen or newest.next_update, gateway_end=gateway_seen or gateway_end, now=now)
    lines = [f"{words.headline(seen, now)} {words.consequence(seen)}", *_old_ca(house), ""]
    wide = max((len(one.person) for one in found), default=0), max((len(one.device) for one in found), default=0)
    previous = ""
    for one in found:
        who = one.person if one.person != previous else ""
        previous = one.person
        state = one.state(now)
        since = f" {day(one.since)}" if one.since is not None and state in {State.STOPPED, State.REVOKED} else ""
        until = "final" if state is State.REVOKED else day(one.not_after)
        guest = ", guest" if one.guest and state in {State.WAITING, State.IN_USE} else ""
        lines.append(
            f"{who:{wide[0]}}  {one.device:{wide[1]}}  {state.value + since + guest + _proved(one, state):33}  {until}"
        )
    lines += ["" if found else "Nobody gets in yet. Who should? hearthkey add PERSON DEVICE --kind KIND"]
    lines.append(f"Revocation list {newest.number}, good until {day(newest.next_update)}")
    teller.result(lines, {})


def _old_ca(house: House) -> list[str]:
    """That ends may come sooner: whose, only the certificates say, and those are not read here."""
    found = house.register.succession()
    goes = succession_due(found)
    if found is None or goes is None or not found.moving:
        return []
    return [f"On {day(goes)} the old CA goes, and what it made ends by then: hearthkey dates says whose."]


def _proved(one: Pass, state: State) -> str:
    """Whether a device that can get in was seen to."""
    if one.proved is not None and state in {State.WAITING, State.IN_USE}:
        return f", proved {day(one.proved)}"
    return ", never proved" if state is State.IN_USE else ""
