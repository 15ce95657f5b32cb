"""What an error means for the family, and the one way on."""

from __future__ import annotations

from typing import NamedTuple

from hearthkey.core.errors import Bug, Cancelled, HearthkeyError, Unavailable
from hearthkey.core.sentences import (
    errors_adopting,
    errors_bundles,
    errors_copies,
    errors_delivery,
    errors_deputy,
    errors_diary,
    errors_forms,
    errors_gateway,
    errors_host,
    errors_household,
    errors_kinds,
    errors_moving,
    errors_paper,
    errors_proofs,
    errors_reach,
    errors_renewal,
    errors_sealed,
    errors_settings,
    errors_settling,
    errors_sheets,
    errors_succession,
    errors_templates,
    errors_tickets,
    errors_tunnel,
    errors_world,
)
from hearthkey.core.sentences.sentence import Sentence

REFUSED = (
    errors_settings.REFUSED
    | errors_adopting.REFUSED
    | errors_household.REFUSED
    | errors_host.REFUSED
    | errors_bundles.REFUSED
    | errors_copies.REFUSED
    | errors_delivery.REFUSED
    | errors_diary.REFUSED
    | errors_deputy.REFUSED
    | errors_forms.REFUSED
    | errors_gateway.REFUSED
    | errors_kinds.REFUSED
    | errors_paper.REFUSED
    | errors_proofs.REFUSED
    | errors_renewal.REFUSED
    | errors_moving.REFUSED
    | errors_reach.REFUSED
    | errors_sealed.REFUSED
    | errors_settling.REFUSED
    | errors_sheets.REFUSED
    | errors_succession.REFUSED
    | errors_templates.REFUSED
    | errors_tickets.REFUSED
    | errors_tunnel.REFUSED
)

UNAVAILABLE = (
    errors_world.UNAVAILABLE
    | errors_adopting.UNAVAILABLE
    | errors_delivery.UNAVAILABLE
    | errors_gateway.UNAVAILABLE
    | errors_sheets.UNAVAILABLE
    | errors_tickets.UNAVAILABLE
)


class Told(NamedTuple):
    """An error in words.

    Args:
        means: what it means.
        do: what to do now.
    """

    means: Sentence
    do: Sentence


def say(error: HearthkeyError) -> Told:
    """The sentences for an error; a code without any is told by its facts."""
    if isinstance(error, Bug):
        means, _ = errors_world.BUG.get(error.code, ("{told}", ""))
        return Told(Sentence(means, {"told": str(error), **error.facts}), Sentence(errors_world.OUR_FAULT, {}))
    if isinstance(error, Cancelled):
        means, do = errors_gateway.CANCELLED
        return Told(Sentence(means, {}), Sentence(do, {}))
    table = UNAVAILABLE if isinstance(error, Unavailable) else REFUSED
    means, do = table.get(error.code, ("{code}", errors_world.OUR_FAULT))
    facts = {"code": error.code, **error.facts}
    return Told(Sentence(means, facts), Sentence(do, facts))
