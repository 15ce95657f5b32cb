"""What stands on a revocation list, and when an entry may leave it."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import datetime, timedelta
from enum import IntEnum

from hearthkey.core.errors import Refused

GOOD_FOR = timedelta(days=800)
"""Lists here are pushed, not polled: a long date costs no freshness, an overdue list locks all out."""


UNSAID = 0
"""RFC 5280 section 5.3.1: unspecified (0) should not be written, the extension is left out instead."""


class Reason(IntEnum):
    """CRLReason of RFC 5280 section 5.3.1, as far as a household uses it.

    Never 0 (shall be left out instead), 7 (unused) or 8 (delta lists only).
    """

    KEY_COMPROMISE = 1
    AFFILIATION_CHANGED = 3
    SUPERSEDED = 4
    CESSATION_OF_OPERATION = 5
    CERTIFICATE_HOLD = 6

    @property
    def rfc_name(self) -> str:
        """The name in RFC 5280's ASN.1 module."""
        first, *rest = self.name.lower().split("_")
        return first + "".join(word.title() for word in rest)


FINAL_REASONS = tuple(reason for reason in Reason if reason is not Reason.CERTIFICATE_HOLD)


def final_reason(text: str) -> Reason:
    """Read a reason by its RFC 5280 name or number.

    Raises:
        Refused: reason-unknown.
    """
    for reason in FINAL_REASONS:
        if text.lower() in {reason.rfc_name.lower(), str(reason.value)}:
            return reason
    raise Refused("reason-unknown", text=text[:40], known=tuple(reason.rfc_name for reason in FINAL_REASONS))


@dataclass(frozen=True)
class Entry:
    """One certificate on the list.

    Args:
        serial: hex, lower case.
        since: revocationDate, UTC.
        reason: entry extension reasonCode.
        not_after: end of the certificate, UTC.
        listed: the number that a list taken over gave, where it is none of `Reason`.
    """

    serial: str
    since: datetime
    reason: Reason
    not_after: datetime
    listed: int | None = None

    @property
    def written(self) -> int:
        """The number of the reason that the list gives; `UNSAID` where it gives none."""
        return self.reason.value if self.listed is None else self.listed


@dataclass(frozen=True)
class ListPlan:
    """A revocation list to be signed.

    Args:
        number: CRLNumber, RFC 5280 section 5.2.3.
        this_update, next_update: UTC.
        entries: in the order of their serials.
    """

    number: int
    this_update: datetime
    next_update: datetime
    entries: tuple[Entry, ...]


@dataclass(frozen=True)
class ListBeside:
    """What another CA of the household signed under the same number, while one CA follows another.

    Args:
        authority: fingerprint of that CA's certificate.
        der: the signed list.
        older: whether that CA is the older one.
    """

    authority: str
    der: bytes
    older: bool


@dataclass(frozen=True)
class SignedList:
    """A revocation list as the register keeps it.

    Args:
        number: CRLNumber.
        der: the signed list.
        this_update, next_update: UTC.
        signer: fingerprint of the CA's certificate; empty where nobody wrote it down.
        beside: the same said by the household's other CA, while there are two.
    """

    number: int
    der: bytes
    this_update: datetime
    next_update: datetime
    signer: str = ""
    beside: tuple[ListBeside, ...] = ()

    @property
    def ders(self) -> tuple[bytes, ...]:
        """All of them, the oldest CA's first."""
        older = tuple(one.der for one in self.beside if one.older)
        return (*older, self.der, *(one.der for one in self.beside if not one.older))


def plan_list(
    entries: Iterable[Entry],
    *,
    highest_number: int,
    previous_update: datetime | None,
    authority_end: datetime,
    now: datetime,
) -> ListPlan:
    """Decide the next list.

    An entry stays until it has stood on one list issued after its certificate's end (RFC 5280
    section 3.3), so it leaves only where the previous list was already that one.

    Args:
        entries: everything on hold or revoked.
        highest_number: the highest list number ever seen, 0 before the first.
        previous_update: thisUpdate of the newest list, None before the first.
        authority_end: end of the CA; no list outlives it.
        now: thisUpdate.
    """
    kept = [entry for entry in entries if previous_update is None or previous_update <= entry.not_after]
    return ListPlan(
        number=highest_number + 1,
        this_update=now,
        next_update=min(now + GOOD_FOR, authority_end),
        entries=tuple(sorted(kept, key=lambda entry: int(entry.serial, 16))),
    )
