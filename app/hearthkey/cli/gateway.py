"""`hearthkey gateway`, `deliver` and `pack`."""

from __future__ import annotations

import contextlib
from argparse import Namespace
from dataclasses import replace

from hearthkey.cli import asking
from hearthkey.cli.teller import Teller
from hearthkey.core.delivery import Delivered, DeliveryPlan, Differs
from hearthkey.core.errors import HearthkeyError, Refused, Unavailable
from hearthkey.core.in_force import GatewayState, house_ends
from hearthkey.core.network import Caution
from hearthkey.core.outlook import HOUSE_DUE
from hearthkey.core.pack_options import PackOptions
from hearthkey.core.sentences import errors
from hearthkey.core.sentences import gateway as words
from hearthkey.core.sentences.diary import day
from hearthkey.core.target import By, Target, target
from hearthkey.services.house import House


def gateway_verb(house: House, arguments: Namespace, teller: Teller) -> None:
    """Show how the gateway stands, or say where it is."""
    if arguments.forget:
        changes = house.targeting.forget()
        teller.result([changes.sentence], {"done": changes.sentence})
        return
    if places(arguments):
        _choose(house, arguments, teller)
        return
    options = _options(house.register.pack_options(), arguments)
    if options != house.register.pack_options():
        changes = house.targeting.set_options(options)
        teller.result([changes.sentence], {"done": changes.sentence})
        return
    if arguments.look:
        told = house.delivering.look()
        teller.aside(str(words.delivery(told)))
    state = house.watching.state()
    teller.result(_lines(house, state), _data(state))


def places(arguments: Namespace) -> bool:
    """Whether something is said about where the gateway is."""
    said = (arguments.ssh, arguments.folder, arguments.port, arguments.user, arguments.reload, arguments.host_key)
    return any(one is not None for one in said)


def _choose(house: House, arguments: Namespace, teller: Teller) -> None:
    known = house.register.target()
    chosen = _typed(arguments, known)
    shown = house.targeting.host_key(chosen)
    if shown is not None and (known is None or known.host_key != shown.line or known.host != chosen.host):
        teller.aside(f"{words.where(chosen)} shows the host key {shown.fingerprint}.")
        if arguments.host_key is not None and arguments.host_key != shown.fingerprint:
            raise Refused("host-key-differs", seen=shown.fingerprint, wanted=arguments.host_key[:80])
        if arguments.host_key is None:
            teller.cautions([Caution("compare-host-key", shown.fingerprint)])
            asking.agree(arguments, teller, "Is that the gateway’s own?")
    changes = house.targeting.choose(chosen, shown)
    teller.result([changes.sentence, "Next: hearthkey deliver"], {"done": changes.sentence})


def _typed(arguments: Namespace, known: Target | None) -> Target:
    """What was typed; where neither a host nor a folder was, the rest is about the place that is known."""
    if arguments.ssh is None and arguments.folder is None and known is not None:
        by, folder, host = known.by.value, known.folder, known.host
        port, user, reload = known.port, known.user, known.reload
    else:
        by, folder, host = By.SSH if arguments.ssh else By.FOLDER, arguments.folder or "", arguments.ssh or ""
        port, user, reload = 0, "", ""
    return target(
        by,
        folder,
        host=host,
        port=port if arguments.port is None else arguments.port,
        user=user if arguments.user is None else arguments.user,
        reload=reload if arguments.reload is None else arguments.reload,
    )


def _options(now: PackOptions, arguments: Namespace) -> PackOptions:
    asked = {
        "masquerade": arguments.masquerade,
        "outer_mtu": arguments.outer_mtu,
        "tunnel_interface": arguments.tunnel_interface,
        "web_upstream": arguments.web_page,
        "forwards_for_others": arguments.also_router,
    }
    return replace(now, **{name: value for name, value in asked.items() if value is not None})


def deliver_verb(house: House, arguments: Namespace, teller: Teller) -> None:
    """Deliver what waits, read it back, and say when somebody with the passphrase is needed."""
    if arguments.plan:
        plan = house.delivering.look()
        teller.result([str(words.delivery(plan)), *_files(plan)], {"plan": str(words.delivery(plan))})
        return
    if arguments.passphrase_file is not None:
        asking.unlock(house, arguments, teller)
    try:
        _say(house.delivering.deliver(progress=teller.progress), teller)
        _needed(house)
    except HearthkeyError as error:
        if arguments.notify:
            told = errors.say(error)
            _notify(house, str(told.means), str(told.do))
        raise


def _notify(house: House, title: str, text: str) -> None:
    with contextlib.suppress(Unavailable):  # the same goes to standard error and into the exit code
        house.notices.say(title, text)


def _say(done: Delivered, teller: Teller) -> None:
    cautions = [Caution("taken-over", ", ".join(done.taken_over))] if done.taken_over else []
    if done.clock_off is not None and abs(done.clock_off) > 120:
        cautions.append(Caution("gateway-clock", str(done.clock_off)))
    teller.cautions(cautions)
    sent = {0: "nothing had to be sent", 1: "one file sent"}.get(done.uploaded, f"{done.uploaded} files sent")
    teller.result(
        [f"Revocation list {done.list_number} is in force at {words.where(done.plan.target)}; {sent}."],
        {
            "in_force": done.list_number,
            "set": done.plan.set_id,
            "sent": done.uploaded,
            "at": done.at,
            "clock_off": done.clock_off,
            "taken_over": list(done.taken_over),
        },
    )


def _needed(house: House) -> None:
    """Refuse where a date comes near that only the passphrase can move, so that a timer's mail says so."""
    newest, gateway = house.register.newest_list(), house.register.gateway()
    if newest is None or gateway is None:
        return
    until = min(house_ends(house.register.gateway_note(), newest, gateway.not_after))
    if until - house.clock.now() <= HOUSE_DUE:
        raise Refused("passphrase-needed-by", day=day(until))


def pack_verb(house: House, arguments: Namespace, teller: Teller) -> None:
    """Write the gateway pack into a folder."""
    if arguments.words:
        secret = house.packing.archive_passphrase().reveal()
        teller.result([secret], {"passphrase": secret})
        return
    if arguments.archive:
        changes = house.packing.save_archive(arguments.into)
    else:
        teller.cautions([Caution("pack-has-key", "")])
        changes = house.packing.save(arguments.into)
    teller.result([changes.sentence, *changes.files], {"done": changes.sentence, "files": list(changes.files)})


def _files(plan: DeliveryPlan) -> list[str]:
    return [f"  {how.value:8} {name}" for name, how in plan.files.items() if how is not Differs.SAME]


def _lines(house: House, state: GatewayState) -> list[str]:
    now = house.clock.now()
    lines = [str(words.standing(state, now))]
    if state.target is not None:
        lines.append(f"Files go to {words.where(state.target)}.")
        lines += [f"After a delivery it runs: {state.target.reload}"] if state.target.reload else []
    if state.clock_wrong:
        lines.append(f"Its clock is {state.note.clock_off} seconds off.")
    return lines


def _data(state: GatewayState) -> dict[str, object]:
    note, where = state.note, state.target
    return {
        "standing": state.standing.value,
        "list_in_force": note.list_number,
        "list_good_until": note.list_until,
        "newest_list": state.newest_number,
        "gateway_certificate_until": note.gateway_until,
        "read": note.looked,
        "delivered": note.delivered,
        "not_reached": note.failed,
        "failure": note.failure,
        "clock_off": note.clock_off,
        "waiting": list(state.waiting),
        "target": None if where is None else _target_data(where),
    }


def _target_data(where: Target) -> dict[str, object]:
    return {
        "way": where.by.value,
        "host": where.host,
        "port": where.port,
        "user": where.user,
        "folder": where.folder,
        "reload": where.reload,
    }
