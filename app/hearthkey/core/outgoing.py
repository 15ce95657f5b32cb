"""What a succession of the CA means for passes: those of the old CA get in until it goes, whatever they say."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace
from datetime import datetime

from hearthkey.core.passes import Pass


@dataclass(frozen=True)
class Outgoing:
    """Passes that have to be followed by others before the old CA goes.

    Args:
        old: serials of those that the old CA issued.
        goes: the day on which it is to go by the plan, UTC.
    """

    old: frozenset[str]
    goes: datetime


def until_it_goes(passes: Iterable[Pass], outgoing: Outgoing | None, now: datetime) -> list[Pass]:
    """The passes with the ends that they really have; past the planned day the old CA may go any day, from today on."""
    if outgoing is None:
        return list(passes)
    goes = max(outgoing.goes, now.replace(hour=23, minute=59, second=59, microsecond=0))
    return [
        replace(one, not_after=goes) if one.serial in outgoing.old and one.not_after > goes else one for one in passes
    ]
