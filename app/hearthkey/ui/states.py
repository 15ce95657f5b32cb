"""Which sign a pass has today."""

from __future__ import annotations

from datetime import datetime

from hearthkey.core.outlook import is_due
from hearthkey.core.passes import Pass, State
from hearthkey.ui.theme.signs import Sign

_SIGNS = {
    State.WAITING: Sign.WAITING,
    State.IN_USE: Sign.NEVER_PROVED,
    State.STOPPED: Sign.STOPPED,
    State.REVOKED: Sign.REVOKED,
    State.ENDED: Sign.ENDED,
}


def sign_of(one: Pass, now: datetime) -> Sign:
    """The sign of a pass. Final, ended and stopped outrank due, due outranks in use."""
    state = one.state(now)
    if is_due(one, now):
        return Sign.DUE
    if one.guest and state in {State.WAITING, State.IN_USE}:
        return Sign.GUEST
    if state is State.IN_USE and one.proofs:
        return Sign.IN_USE
    return _SIGNS[state]
