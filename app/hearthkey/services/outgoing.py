"""Finds the passes that have to move to the new CA, once it issues what is made."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import datetime

from hearthkey.core.outgoing import Outgoing
from hearthkey.core.passes import LIVING, Pass
from hearthkey.core.succession import DeviceStep, succession_due
from hearthkey.services.device_steps import device_steps
from hearthkey.services.gateway_ports import GatewayRegister
from hearthkey.services.generations import issued_by


def outgoing(register: GatewayRegister, passes: Iterable[Pass], now: datetime) -> Outgoing | None:
    """Who has to move; None where nobody has to, or a new pass would be the old CA's again.

    Raises:
        Unavailable: as the register.
    """
    found = register.succession()
    goes = succession_due(found)
    if found is None or goes is None or not found.new_issues:
        return None
    return Outgoing(issued_by(register, found.old, [one for one in passes if one.state(now) in LIVING]), goes)


def under_way(register: GatewayRegister, passes: Iterable[Pass], now: datetime) -> tuple[DeviceStep, ...]:
    """How far each device is; none before the new CA issues what is made, for nobody can move until then.

    Raises:
        Unavailable: as the register.
    """
    found = register.succession()
    return device_steps(register, found, passes, now) if found is not None and found.moving else ()
