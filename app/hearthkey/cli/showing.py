"""`hearthkey show`."""

from __future__ import annotations

from argparse import Namespace
from collections.abc import Sequence

from hearthkey.cli.board import pass_data
from hearthkey.cli.teller import Teller
from hearthkey.core.errors import Refused
from hearthkey.core.network import Caution
from hearthkey.core.passes import Pass, State
from hearthkey.core.renewal import Follow
from hearthkey.core.sentences import doors
from hearthkey.core.sentences import proofs as sentences
from hearthkey.core.sentences.diary import day
from hearthkey.formats import pem
from hearthkey.pki.read import certificate_facts
from hearthkey.services import looking
from hearthkey.services.house import House
from hearthkey.services.opening import Door, knock


def show_verb(house: House, arguments: Namespace, teller: Teller) -> None:
    """Show a device, its passphrase, or the household."""
    if arguments.device is None:
        _household(house, teller, with_pem=arguments.pem)
    elif arguments.words:
        chosen = looking.waiting(looking.find(house.register.passes(), arguments.device))
        words = house.bundling.passphrase(chosen).reveal()
        teller.aside(f"The passphrase of {chosen.title}. Say it; do not send it with the file.")
        teller.result([words], {"device": chosen.title, "passphrase": words})
    else:
        _device(house, arguments, teller)


def _device(house: House, arguments: Namespace, teller: Teller) -> None:
    found = looking.find(house.register.passes(), arguments.device)
    now, follows = house.clock.now(), house.register.follows()
    lines: list[str] = []
    data: list[dict[str, object]] = []
    for one in found:
        facts = certificate_facts(house.register.certificate(one.serial))
        kind = house.kinds.of(one.kind)
        if one.kind not in house.kinds:
            teller.cautions([Caution("kind-gone", one.kind)])
        state = one.state(now)
        lines += [
            f"{one.title}: {state.value}, until {day(one.not_after)}",
            f"  kind           {kind.words()}",
            f"  why            {kind.why()}",
            f"  identity       {one.identity}",
            f"  key            {facts.key_type}, key set {one.key_set}, {one.container} container",
            f"  serial         {one.serial}",
            f"  SHA-256        {facts.fingerprint}",
            f"  valid          {one.not_before:%Y-%m-%d %H:%M} to {one.not_after:%Y-%m-%d %H:%M} UTC",
        ]
        if one.handed_over is not None:
            lines.append(f"  handed over    {day(one.handed_over)}; its key exists on the device alone")
        lines += [f"  follows        {old.old}, both until {day(old.overlap_ends)}" for old in _before(one, follows)]
        lines += [f"  proved         {day(proof.at)}, {sentences.way(proof)}" for proof in one.proofs[-1:]]
        if one.reason is not None and one.since is not None:
            lines.append(f"  on the list    since {day(one.since)}, {one.reason.rfc_name}")
        lines.append(f"  next           {_next(state, one.title)}")
        told = pass_data(one, now) | {
            "fingerprint": facts.fingerprint,
            "subject": facts.subject,
            "issuer": facts.issuer,
            "follows": [old.old for old in _before(one, follows)],
        }
        if arguments.pem:
            text = pem.encode("CERTIFICATE", house.register.certificate(one.serial))
            lines.append(text.rstrip())
            told["pem"] = text
        data.append(told)
    teller.result(lines, {"passes": data})


def _before(one: Pass, follows: Sequence[Follow]) -> list[Follow]:
    return [follow for follow in follows if follow.new == one.serial]


def _next(state: State, title: str) -> str:
    return {
        State.WAITING: "export it, then hand it over",
        State.IN_USE: f"nothing; if {title} is lost, stop it; before it ends, renew it",
        State.STOPPED: "let it back in, or revoke it",
        State.REVOKED: "nothing: it never gets in again",
        State.ENDED: "a new pass (renew)",
    }[state]


def _household(house: House, teller: Teller, *, with_pem: bool) -> None:
    household, authority = house.register.household(), house.register.authority()
    gateway, newest = house.register.gateway(), house.register.newest_list()
    if household is None or authority is None or gateway is None or newest is None:
        raise Refused("no-household")
    door = knock(house.register, house.vault)
    if authority.key_place == "file":
        teller.cautions([Caution("kept-in-files", str(house.data / "keys"))])
    lines = [
        household.certified_name,
        f"  gateway        {gateway.host}, certificate until {day(gateway.not_after)}",
        f"  CA             until {day(authority.not_after)}, SHA-256 {authority.fingerprint}",
        f"  list           number {newest.number}, good until {day(newest.next_update)}",
        f"  home           {', '.join(map(str, household.home_subnets))}",
        f"  tunnel         {household.tunnel}, inner addresses from {household.tunnel_subnet}",
        f"  DNS inside     {', '.join(household.dns_servers) or 'none'}",
        f"  identities     code.{household.identity_suffix}",
        f"  keyring        {doors.say(door)}",
    ]
    text = pem.encode("CERTIFICATE", authority.certificate)
    if with_pem:
        lines.append(text.rstrip())
    teller.result(
        lines,
        {
            "household": household.certified_name,
            "practice": household.practice,
            "gateway": {"host": gateway.host, "serial": gateway.serial, "not_after": gateway.not_after},
            "authority": {"sha256": authority.fingerprint, "not_after": authority.not_after, "pem": text},
            "list": {"number": newest.number, "good_until": newest.next_update},
            "home_subnets": [str(one) for one in household.home_subnets],
            "tunnel": household.tunnel,
            "tunnel_subnet": str(household.tunnel_subnet),
            "dns_servers": list(household.dns_servers),
            "identity_suffix": household.identity_suffix,
            "keyring": door.value,
            "ready": door is Door.READY,
        },
    )
