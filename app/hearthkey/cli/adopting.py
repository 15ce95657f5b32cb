"""`hearthkey look-over`, `adopt` and `name-pass`."""

from __future__ import annotations

import getpass
from argparse import Namespace

from hearthkey.cli import asking
from hearthkey.cli.founding import request_of
from hearthkey.cli.teller import Teller
from hearthkey.core.adopt_plan import AdoptPlan
from hearthkey.core.errors import Refused
from hearthkey.core.found_findings import gather
from hearthkey.core.found_household import FoundCertificate
from hearthkey.core.network import Caution
from hearthkey.core.secret import Secret
from hearthkey.core.sentences import adopting
from hearthkey.core.sentences import found as sentences
from hearthkey.core.sentences.diary import day
from hearthkey.services.adopting import AdoptRequest
from hearthkey.services.house import House
from hearthkey.services.looking_over import Overview


def look_over_verb(house: House, arguments: Namespace, teller: Teller) -> None:
    """Say what is there, what is weak or broken, and what would go on."""
    words = () if arguments.key_passphrase is None else (asking.from_file(arguments.key_passphrase),)
    seen = house.looking_over.look(
        arguments.folder, passphrases=words, host=arguments.gateway_host, progress=teller.progress
    )
    teller.result(told(seen), data(seen))


def adopt_verb(house: House, arguments: Namespace, teller: Teller) -> None:
    """Take over a household that was made by hand."""
    prepared = house.adopting.preview(
        AdoptRequest(arguments.folder, request_of(arguments)), _key_passphrases(arguments), progress=teller.progress
    )
    lines = [str(one) for one in adopting.plan(prepared.plan)]
    cautions = [*prepared.plan.cautions, Caution("local-law", "")]
    if arguments.key_file:
        cautions.append(Caution("kept-in-files", str(house.data / "keys")))
    teller.cautions(cautions)
    if arguments.plan:
        teller.result(lines, {"plan": " ".join(lines), **_plan_data(prepared.plan)})
        return
    for line in lines:
        teller.aside(line)
    if not arguments.yes and arguments.passphrase_file is None:
        asking.agree(arguments, teller, "Take it over?")
    secret = asking.new_passphrase(house, arguments, teller)
    changes = house.adopting.apply(prepared, secret, progress=teller.progress)
    files, not_written = house.listing.publish_or_say(house.listing.numbered(None))
    teller.cautions(not_written)
    house.sealing.make_ready(secret)
    house.sparing.renew()
    teller.cautions([Caution("write-it-down", str(house.data / "sealed"))])
    following = "Next: hearthkey name-pass, to say whose the passes are; then hearthkey deliver."
    teller.result(
        [changes.sentence, following],
        {"adopted": changes.sentence, **_plan_data(prepared.plan), "files": list(files)},
    )


def name_pass_verb(house: House, arguments: Namespace, teller: Teller) -> None:
    """Say whose a pass is; without a serial, list those that wait."""
    if arguments.serial is None:
        waiting = house.naming.waiting()
        lines = [
            f"{one.adopted.serial}  until {day(one.not_after)}  {one.device}  ({one.adopted.subject})"
            for one in waiting
        ]
        teller.result(
            lines or ["No pass waits to be named."],
            {
                "waiting": [
                    {
                        "serial": one.adopted.serial,
                        "device": one.device,
                        "subject": one.adopted.subject,
                        "file": one.adopted.file,
                        "not_after": one.not_after,
                    }
                    for one in waiting
                ]
            },
        )
        return
    if arguments.person is None or arguments.device is None:
        raise Refused("name-words-missing")
    changes = house.naming.name(arguments.serial, arguments.person, arguments.device)
    teller.result([changes.sentence], {"named": changes.sentence})


def _key_passphrases(arguments: Namespace) -> tuple[Secret[str], ...]:
    """What locks the key that was made by hand: from a file, or asked for at a terminal; empty means unlocked."""
    if arguments.key_passphrase is not None:
        return (asking.from_file(arguments.key_passphrase),)
    if arguments.passphrase_file is not None or not asking.at_a_terminal():
        return ()
    typed = getpass.getpass("Passphrase of the CA’s key in the folder (empty if it has none): ").strip()
    return (Secret(typed),) if typed else ()


def _plan_data(plan: AdoptPlan) -> dict[str, object]:
    return {
        "household": plan.household.certified_name,
        "kept_gateway": plan.kept_gateway is not None,
        "passes": [one.about.serial for one in plan.passes],
        "withdrawn": [one.serial for one in plan.entries],
        "list_number": plan.list_number,
    }


def told(seen: Overview) -> list[str]:
    """A look, for people."""
    lines = [str(one) for one in sentences.summary(seen.home)]
    for one in gather(seen.findings):
        lines += ["", f"{sentences.GRAVE[one.first.grave]}: {sentences.what(one.first)}"]
        lines.append(f"  {sentences.effect(one.first)}")
        if one.files:
            lines.append(f"  {sentences.where(one)}")
        if one.first.clause:
            lines.append(f"  {one.first.clause}")
    ready = "It can be taken over." if not seen.stops else "It cannot be taken over as it is."
    return [*lines, "", ready]


def data(seen: Overview) -> dict[str, object]:
    """A look, for machines."""
    home = seen.home
    return {
        "folder": str(seen.folder),
        "files": home.folder.files,
        "authority": None if home.authority is None else _certificate(home.authority),
        "key": home.key is not None,
        "gateways": [_certificate(one) for one in home.gateways],
        "devices": [_certificate(one) | {"withdrawn": home.is_withdrawn(one)} for one in home.devices],
        "withdrawn": [
            {"serial": f"{one.serial:x}", "since": one.since, "reason": one.reason} for one in home.withdrawn
        ],
        "highest_list": home.highest_list,
        "findings": [
            {
                "code": one.code,
                "file": one.file,
                "grave": one.grave.value,
                "clause": one.clause,
                "what": str(sentences.what(one)),
                "effect": str(sentences.effect(one)),
            }
            for one in seen.findings
        ],
        "adoptable": not seen.stops,
    }


def _certificate(one: FoundCertificate) -> dict[str, object]:
    return {
        "file": one.file,
        "subject": one.subject,
        "serial": f"{one.serial:x}",
        "names": list(one.names),
        "key_type": one.key_type,
        "not_before": one.not_before,
        "not_after": one.not_after,
        "sha256": one.fingerprint,
    }
