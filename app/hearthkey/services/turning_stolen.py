"""Makes a succession that was planned one after a theft: whoever has the old key is not waited for."""

from __future__ import annotations

from hearthkey.core.errors import Refused
from hearthkey.core.plans import Changes
from hearthkey.core.sentences import succession as sentences
from hearthkey.core.succession import Cause
from hearthkey.services.gateway_ports import GatewayRegister
from hearthkey.services.ports import Clock
from hearthkey.services.writing_diary import note


def turn_stolen(register: GatewayRegister, clock: Clock) -> Changes:
    """Say that the key may be in other hands since the succession began; its steps stay, its days come sooner.

    No key is needed, and nothing is signed: what was decided is only that the last step waits for nobody.

    Raises:
        Refused: succession-none; succession-not-planned, where it began after a theft or a loss.
        Unavailable: as the register.
    """
    found = register.succession()
    if found is None or not found.underway:
        raise Refused("succession-none")
    if found.cause is not Cause.PLANNED:
        raise Refused("succession-not-planned")
    sentence, now = sentences.now_stolen(), clock.now()
    with register.change() as change:
        change.succession_stolen()
        note(register, change, verb="succession", sentence=sentence, now=now)
    return Changes(sentence)
