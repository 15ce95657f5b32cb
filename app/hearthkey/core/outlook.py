"""Until when all is well: the first date on which anybody loses access, and for whom."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import datetime, timedelta
from enum import Enum

from hearthkey.core.outgoing import Outgoing, until_it_goes
from hearthkey.core.passes import Pass
from hearthkey.core.renewal import without_bridged

DUE = timedelta(days=30)
"""How long before its end a thing wants the householder."""

HOUSE_DUE = timedelta(days=60)
"""How long before everybody would be refused the householder is warned; at least 30 days are promised."""


class Ends(Enum):
    """What ends first."""

    PASS = "pass"  # noqa: S105 - not a password
    LIST = "list"
    GATEWAY = "gateway"


@dataclass(frozen=True)
class Outlook:
    """What the top line is made from.

    Args:
        until: the first date on which anybody loses access.
        ends: what ends then.
        first: whose pass that is, where it is a pass.
        house_end: when the house closes for everybody: the revocation list or the gateway's certificate ends.
        house_ends: which of the two.
        over: that date has passed for everybody.
        due: it is near enough to want the householder now; a guest's end is meant to come.
        house_due: the date for everybody is near enough to want the householder now, or past.
        getting_in: how many passes get in at present.
        old_ca: that pass would get in longer, were it not for the old CA, which goes.
    """

    until: datetime
    ends: Ends
    first: Pass | None
    house_end: datetime
    house_ends: Ends
    over: bool
    due: bool
    house_due: bool
    getting_in: int
    old_ca: bool = False


def outlook(
    passes: Iterable[Pass],
    *,
    list_end: datetime,
    gateway_end: datetime,
    now: datetime,
    outgoing: Outgoing | None = None,
) -> Outlook:
    """Find the first date on which anybody loses access; the end of a pass that another one outlasts is none.

    Args:
        passes: every pass.
        list_end: nextUpdate of the revocation list in force; past it, gateways that check refuse everybody.
        gateway_end: notAfter of the certificate that the gateway shows; past it, devices that check turn away.
        now: UTC.
        outgoing: which passes go with the old CA, and when; None where none does.
    """
    own = [one for one in passes if one.gets_in(now)]
    living = until_it_goes(own, outgoing, now)
    house_end, house_ends = (list_end, Ends.LIST) if list_end <= gateway_end else (gateway_end, Ends.GATEWAY)
    first = min(without_bridged(living, now), key=lambda one: one.not_after, default=None)
    if first is not None and first.not_after >= house_end:
        first = None
    until, ends = (house_end, house_ends) if first is None else (first.not_after, Ends.PASS)
    meant = first is not None and first.guest
    house_due = house_end - now <= HOUSE_DUE
    return Outlook(
        until=until,
        ends=ends,
        first=first,
        house_end=house_end,
        house_ends=house_ends,
        over=house_end < now,
        due=(until - now <= DUE and not meant) or (first is None and house_due),
        house_due=house_due,
        getting_in=len(living),
        old_ca=first is not None and first not in own,
    )


def is_due(one: Pass, now: datetime) -> bool:
    """Whether a pass that gets in ends soon; a guest's is meant to."""
    return one.gets_in(now) and not one.guest and one.not_after - now <= DUE
