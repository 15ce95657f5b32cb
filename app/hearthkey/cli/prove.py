"""`hearthkey prove`: a device outside opens a link through the tunnel, or somebody tells that it works."""

from __future__ import annotations

import sys
from argparse import Namespace

from hearthkey.cli.asking import agree
from hearthkey.cli.renewing import after_proof
from hearthkey.cli.teller import Teller
from hearthkey.core.errors import Refused
from hearthkey.core.home_addresses import HomeAddress, Standing
from hearthkey.core.passes import Pass
from hearthkey.core.proof_doors import Ending, Event, Happened
from hearthkey.core.sentences import proofs as sentences
from hearthkey.core.sentences import tickets
from hearthkey.formats import link_code
from hearthkey.services import looking
from hearthkey.services.house import House
from hearthkey.services.proof_desk import OpenProof
from hearthkey.services.proving import ProofPlan

_PATIENCE = 0.5
"""Seconds between two looks; a key press is heard at once all the same."""


def prove_verb(house: House, arguments: Namespace, teller: Teller) -> None:
    """Show a link, tell what happens, and end once it was opened through the tunnel; or write down what was told."""
    chosen = house.proving.choose(looking.find(house.register.passes(), arguments.device))
    if arguments.told:
        _told(house, chosen, arguments, teller)
        return
    plan = house.proving.preview(chosen, arguments.address, arguments.gateway_inside)
    if arguments.plan:
        _show_plan(house, plan, teller)
        return
    if not _fits(plan.address):
        teller.aside(f"Caution: {plan.address.shown} is {tickets.standing(plan.address)}.")
    with house.proving.open(plan) as opened:
        _show_link(plan, opened, teller)
        closing = _listen(chosen, opened, teller)
    if closing.ending is not Ending.PROVED:
        raise Refused("proof-closed")
    after_proof(house, arguments, teller)
    teller.result(
        [str(sentences.event(chosen.title, closing))],
        {"device": chosen.title, "serial": chosen.serial, "proved": closing.at, "address": closing.address},
    )


def _told(house: House, chosen: Pass, arguments: Namespace, teller: Teller) -> None:
    plan = house.proving.preview_told(chosen)
    said = str(sentences.told(chosen, beside=plan.beside))
    if arguments.plan:
        teller.result([said], {"device": chosen.title, "serial": chosen.serial})
        return
    teller.aside(said)
    agree(arguments, teller)
    changes = house.proving.told(plan)
    after_proof(house, arguments, teller)
    teller.result([changes.sentence], {"device": chosen.title, "serial": chosen.serial, "way": "told"})


def _fits(address: HomeAddress) -> bool:
    """Whether a device in the tunnel can be expected to reach it; on the gateway itself the tunnel's end is."""
    return address.fit or address.standing is Standing.TUNNEL


def _show_plan(house: House, plan: ProofPlan, teller: Teller) -> None:
    by = plan.ground
    known = house.proving.addresses()
    teller.result(
        [
            str(sentences.offered(plan.chosen, plan.address.shown)),
            str(sentences.counts(hides=by.hides, inside=by.inside, tunnel=by.tunnel)),
            *(f"  {'ok  ' if _fits(one) else 'no  '}  {one.shown}" for one in known),
        ],
        {
            "device": plan.chosen.title,
            "serial": plan.chosen.serial,
            "address": str(plan.address.address),
            "counts": {
                "tunnel": str(by.tunnel),
                "gateway_hides": by.hides,
                "gateway_inside": None if by.inside is None else str(by.inside),
            },
            "addresses": [
                {"address": str(one.address), "interface": one.interface, "standing": one.standing.value}
                for one in known
            ],
        },
    )


def _show_link(plan: ProofPlan, opened: OpenProof, teller: Teller) -> None:
    by = plan.ground
    for line in link_code.lines(link_code.matrix(opened.link), coloured=sys.stderr.isatty()):
        teller.aside(line)
    teller.aside(opened.link.reveal())
    teller.aside(
        f"For {plan.chosen.title}: Wi-Fi off, connect, open this, until {opened.until:%H:%M} UTC. Ctrl+C closes it."
    )
    if by.hides:
        teller.aside(str(sentences.counts(hides=True, inside=by.inside, tunnel=by.tunnel)))


def _listen(chosen: Pass, opened: OpenProof, teller: Teller) -> Event:
    while True:
        heard = opened.hear(_PATIENCE)
        if heard is None:
            continue
        if heard.what is Happened.CLOSED:
            if heard.ending is not Ending.PROVED:
                teller.aside(str(sentences.event(chosen.title, heard)))
            return heard
        teller.aside(str(sentences.event(chosen.title, heard)))
