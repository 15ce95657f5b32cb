"""`hearthkey ticket`: a bundle is picked up on the home network."""

from __future__ import annotations

import sys
from argparse import Namespace

from hearthkey.cli.teller import Teller
from hearthkey.core.bundle import Form
from hearthkey.core.errors import Refused
from hearthkey.core.sentences import tickets as sentences
from hearthkey.core.ticket_events import Ending, Event, Happened
from hearthkey.formats import link_code
from hearthkey.services import looking
from hearthkey.services.house import House
from hearthkey.services.picking_up import TicketPlan
from hearthkey.services.ticket_desk import OpenTicket

_PATIENCE = 0.5
"""Seconds between two looks; a key press is heard at once all the same."""


def ticket_verb(house: House, arguments: Namespace, teller: Teller) -> None:
    """Open a ticket, show its link, tell what happens, and end once the bundle was picked up."""
    chosen = looking.waiting(looking.find(house.register.passes(), arguments.device))
    forms = [Form(name) for name in arguments.form or ()]
    plan = house.picking_up.preview(chosen, forms, arguments.address)
    if arguments.plan:
        _show_plan(house, plan, teller)
        return
    if not plan.address.fit:
        teller.aside(f"Caution: {plan.address.shown} is {sentences.standing(plan.address)}.")
    with house.picking_up.open(plan, teller.progress) as opened:
        if plan.firewall is not None:
            teller.aside(f"Caution: {sentences.firewall(plan.firewall, plan.near, opened.port)}")
        _show_link(plan, opened, teller)
        closing = _listen(opened, teller)
    if closing.ending is not Ending.PICKED_UP:
        raise Refused("ticket-closed")
    title = f"{chosen.person} {chosen.device}"
    teller.result(
        [
            str(sentences.event(closing)),
            f"Clear the screen, then the passphrase may be shown: hearthkey show '{title}' --words",
            f"Once it works on the device: hearthkey hand-over '{title}'",
        ],
        {"device": chosen.title, "form": plan.forms[0].value, "picked_up_by": closing.address, "at": closing.at},
    )


def _show_plan(house: House, plan: TicketPlan, teller: Teller) -> None:
    rows = [(one, str(sentences.standing(one))) for one in house.picking_up.addresses()]
    teller.result(
        [
            f"{plan.chosen.title} could pick its bundle up at {plan.address.shown}.",
            *(f"  {'ok  ' if one.fit else 'no  '}  {one.shown}: {told}" for one, told in rows),
        ],
        {
            "device": plan.chosen.title,
            "address": str(plan.address.address),
            "addresses": [
                {"address": str(one.address), "interface": one.interface, "standing": one.standing.value}
                for one, _ in rows
            ],
        },
    )


def _show_link(plan: TicketPlan, opened: OpenTicket, teller: Teller) -> None:
    # To standard error: a link that can be used once is no result to be kept in a file.
    coloured = sys.stderr.isatty()
    for line in link_code.lines(link_code.matrix(opened.link), coloured=coloured):
        teller.aside(line)
    teller.aside(opened.link.reveal())
    teller.aside(
        f"For {plan.chosen.title}, at {plan.address.shown}, until {opened.until:%H:%M} UTC, once. Ctrl+C closes it."
    )


def _listen(opened: OpenTicket, teller: Teller) -> Event:
    while True:
        heard = opened.hear(_PATIENCE)
        if heard is None:
            continue
        if heard.what is Happened.CLOSED:
            if heard.ending is not Ending.PICKED_UP:
                teller.aside(str(sentences.event(heard)))
            return heard
        teller.aside(str(sentences.event(heard)))
