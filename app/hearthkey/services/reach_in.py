"""The last link of the web front: whether a device of the household really gets in there."""

from __future__ import annotations

from hearthkey.core.errors import Fact
from hearthkey.core.forwarding import WEB_PORT
from hearthkey.core.reach.chain import Link, Place, Verdict
from hearthkey.core.reach.scopes import Address
from hearthkey.pki import front_look
from hearthkey.pki.front_look import Entered
from hearthkey.services.reach_plan import CheckPlan
from hearthkey.services.reach_ports import Dials, Failure

SECONDS = 2.0
"""For connecting and for all that follows: the front was heard a moment ago."""
_TURNED_AWAY = {400, 403}
"""What the server block of the pack answers to a certificate that it does not take, and to none."""
_MISDIRECTED = 421
"""RFC 9110 section 15.5.20."""
_FAILED = 500
"""From here on it is the server's fault (RFC 9110 section 15.6)."""


def link(plan: CheckPlan, address: Address, certificate: bytes, dials: Dials) -> Link:
    """Connect once more, as a device whose bundle waits here.

    Args:
        certificate: what the front showed, DER; the device is shown to nobody else.
    """
    if plan.trial is None:
        return Link(Place.FRONT_IN, Verdict.UNKNOWN, "in-untried")
    with dials(address, WEB_PORT, SECONDS) as stream:
        if isinstance(stream, Failure):
            return Link(Place.FRONT_IN, Verdict.UNKNOWN, "not-reached")
        entered = front_look.enter(stream, plan.host, certificate, plan.trial.credential)
    facts: dict[str, Fact] = {
        "person": plan.trial.person,
        "device": plan.trial.device,
        "host": plan.host,
        "seen": _seen(entered),
    }
    return _judged(entered, facts)


def _judged(entered: Entered, facts: dict[str, Fact]) -> Link:
    status = entered.status
    if entered.turned_away or status in _TURNED_AWAY:
        return Link(Place.FRONT_IN, Verdict.BROKEN, "in-refused", facts)
    if status is None:
        return Link(Place.FRONT_IN, Verdict.UNKNOWN, "not-reached")
    if status == _MISDIRECTED:
        return Link(Place.FRONT_IN, Verdict.BROKEN, "in-misnamed", facts)
    if status >= _FAILED:
        return Link(Place.FRONT_IN, Verdict.BROKEN, "in-no-page", facts)
    return Link(Place.FRONT_IN, Verdict.OK, "in-opens", facts)


def _seen(entered: Entered) -> str:
    return entered.failed if entered.status is None else f"HTTP {entered.status}"
