"""`hearthkey settle`."""

from __future__ import annotations

from argparse import Namespace

from hearthkey.cli import asking
from hearthkey.cli.teller import Teller
from hearthkey.core.errors import Refused
from hearthkey.core.former_hosts import still_use
from hearthkey.core.sentences import settling as sentences
from hearthkey.core.sentences.moving import kept
from hearthkey.core.sentences.touches import of
from hearthkey.core.settling import SettlePlan
from hearthkey.core.touches import touches
from hearthkey.services.house import House
from hearthkey.services.settling import SettleRequest

_NONE = ["none"]


def settle_verb(house: House, arguments: Namespace, teller: Teller) -> None:
    """Say what a change of the settings means, and make it; or, of every change, how many devices it would touch."""
    if arguments.touches:
        _touches(house, teller)
        return
    plan = house.settling.preview(_request(arguments))
    told = [str(one) for one in sentences.plan(plan)]
    teller.cautions(plan.cautions)
    if arguments.plan:
        teller.result(told, {"plan": " ".join(told), **_data(plan)})
        return
    if not plan.changes_nothing:
        for sentence in told:
            teller.aside(sentence)
        asking.agree(arguments, teller, "Change it?")
    if plan.needs_key:
        asking.unlock(house, arguments, teller)
    changes = house.settling.apply(plan, progress=teller.progress)
    lines = [changes.sentence]
    if plan.reaches_gateway and house.register.target() is not None:
        lines.append("Next: hearthkey deliver")
    teller.result(lines, {"done": changes.sentence, **_data(plan)})


def _touches(house: House, teller: Teller) -> None:
    household = house.register.household()
    if household is None:
        raise Refused("no-household")
    passes, now = house.register.passes(), house.clock.now()
    found = touches(household, passes, now)
    former = {one: still_use(one, passes, now) for one in house.register.former_hosts()}
    teller.result(
        [*(str(of(one)) for one in found), *(str(kept(one, users)) for one, users in former.items())],
        {
            "touches": {one.change.value: list(one.devices) for one in found},
            "former_hosts": {one.host: list(users) for one, users in former.items()},
        },
    )


def _request(arguments: Namespace) -> SettleRequest:
    return SettleRequest(
        name=arguments.name,
        gateway_host=arguments.gateway_host,
        home_subnets=arguments.home_subnet,
        tunnel_subnet=arguments.tunnel_subnet,
        identity_suffix=arguments.identity_suffix,
        dns_servers=() if arguments.dns_server == _NONE else arguments.dns_server,
        tunnel=arguments.tunnel,
        renew_gateway=arguments.renew_gateway,
        let_go=arguments.let_go,
    )


def _data(plan: SettlePlan) -> dict[str, object]:
    return {
        "different": {one.setting.value: one.reach.value for one in plan.touches},
        "new_bundles": list(plan.devices),
        "in_tray": list(plan.rewritten),
        "new_certificate": plan.new_certificate,
        "cautions": [one.code for one in plan.cautions],
    }
