"""A pass: one device certificate with its key, as a thing with a life."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from enum import StrEnum

from hearthkey.core.household import possessive
from hearthkey.core.phrases import Phrase
from hearthkey.core.proofs import Proof
from hearthkey.core.revocation import Reason


class State(StrEnum):
    """Where a pass stands in its life; the words are those on the sheet."""

    WAITING = "waiting"
    IN_USE = "in use"
    STOPPED = "stopped"
    REVOKED = "revoked"
    ENDED = "ended"


GETTING_IN = frozenset({State.WAITING, State.IN_USE})
"""Whose holder the gateway lets in; a waiting pass needs only its device."""

LIVING = GETTING_IN | {State.STOPPED}
"""Who gets in, or would if not stopped."""


@dataclass(frozen=True)
class Pass:
    """What the register knows of one pass.

    Args:
        person, device: whose, and which; both as people read them.
        kind: name of the device kind.
        identity: the IKE ID and SAN dNSName, a code.
        serial: hex, lower case.
        key_set: name of the key set.
        container: PKCS#12 container of the hand-over file.
        guest: whether it was made to end in days.
        not_before, not_after: UTC, both inclusive (RFC 5280 section 4.1.2.5).
        handed_over: when the key left for its device, else None.
        reason: why it stands on the newest list, else None.
        since: when it was put on the list, else None.
        proofs: each time it was seen to get in, the first of them first.
        key_lost: its key should wait here and does not, for a sealed copy that was brought back has none.
    """

    person: str
    device: str
    kind: str
    identity: str
    serial: str
    key_set: str
    container: str
    guest: bool
    not_before: datetime
    not_after: datetime
    handed_over: datetime | None
    reason: Reason | None
    since: datetime | None
    proofs: tuple[Proof, ...] = ()
    key_lost: bool = False

    @property
    def proved(self) -> datetime | None:
        """When it was last seen to get in, or None."""
        return self.proofs[-1].at if self.proofs else None

    @property
    def title(self) -> Phrase:
        """Whose device it is, for sentences."""
        return possessive(self.person, self.device)

    @property
    def key_is_here(self) -> bool:
        """Whether its key waits here: it was neither handed over nor lost nor withdrawn for good."""
        return self.handed_over is None and not self.key_lost and self.reason in {None, Reason.CERTIFICATE_HOLD}

    def gets_in(self, now: datetime) -> bool:
        """Whether the gateway lets it in at a moment."""
        return self.state(now) in GETTING_IN

    def state(self, now: datetime) -> State:
        """Tell the state at a moment."""
        return state_of(reason=self.reason, ended=now > self.not_after, handed_over=self.handed_over is not None)


def state_of(*, reason: int | None, ended: bool, handed_over: bool) -> State:
    """Decide a pass's state. Final outranks ended, ended outranks stopped."""
    if reason is not None and reason != Reason.CERTIFICATE_HOLD:
        return State.REVOKED
    if ended:
        return State.ENDED
    if reason is not None:
        return State.STOPPED
    return State.IN_USE if handed_over else State.WAITING
