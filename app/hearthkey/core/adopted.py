"""Passes that were made elsewhere: what is known of each, and what the list has said of it so far."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import datetime

from hearthkey.core.found_household import FoundCertificate, FoundEntry
from hearthkey.core.revocation import UNSAID, Reason

LABEL = 40
"""Characters of a device's label that are taken from a certificate."""


@dataclass(frozen=True)
class Adopted:
    """Where a pass came from.

    Args:
        serial: hex, lower case.
        subject: as its certificate has it, RFC 4514 text.
        file: where it was found.
    """

    serial: str
    subject: str
    file: str


@dataclass(frozen=True)
class ToBeNamed:
    """A pass of which nobody has said yet whose it is.

    Args:
        adopted: where it came from.
        device: what it is called meanwhile.
        not_after: its end, UTC.
    """

    adopted: Adopted
    device: str
    not_after: datetime


@dataclass(frozen=True)
class Whose:
    """Whose device a pass is that was made elsewhere.

    Args:
        person, device: as they are shown; what the take-over called them while nobody has said.
        named: when somebody said it, UTC, or None.
    """

    person: str
    device: str
    named: datetime | None


_STAND_INS = {2: Reason.KEY_COMPROMISE, 9: Reason.AFFILIATION_CHANGED, 10: Reason.KEY_COMPROMISE}
_LISTED = frozenset({2, 9, 10})


def reason_of(entry: FoundEntry) -> tuple[Reason, int | None]:
    """The reason that the household keeps, and the number for the list where that is another.

    RFC 5280 section 5.3.1: unspecified (0) should be left out, 7 does not exist, and removeFromCRL (8) belongs on
    delta lists only. On a whole list none of the three lets anybody back in, so the serial stays, without a reason.
    """
    if entry.reason in set(Reason):
        return Reason(entry.reason), None
    stand_in = _STAND_INS.get(UNSAID if entry.reason is None else entry.reason, Reason.CESSATION_OF_OPERATION)
    return stand_in, entry.reason if entry.reason in _LISTED else UNSAID


def identity_of(one: FoundCertificate) -> str:
    """What a device is known by: its first DNS name, else its first other name, else its subject."""
    named = sorted(one.names, key=lambda name: not name.startswith("dns:"))
    return named[0].partition(":")[2] if named else one.subject or f"serial {one.serial:x}"


def labels(devices: Iterable[FoundCertificate]) -> dict[str, str]:
    """A label for each identity, no two of which look alike, from what the certificates say.

    Returns:
        By identity.
    """
    made: dict[str, str] = {}
    taken: set[str] = set()
    for one in devices:
        identity = identity_of(one)
        if identity in made:
            continue
        wanted = _plain(one.common_name or identity) or f"{one.serial:x}"[:16]
        label, number = wanted, 1
        while label.casefold() in taken:
            number += 1
            label = f"{wanted} {number}"
        taken.add(label.casefold())
        made[identity] = label
    return made


def _plain(text: str) -> str:
    """What people may read as a name, without marks that turn or hide the text around them."""
    kept = "".join(character if character.isalnum() or character in " .-_@'’" else " " for character in text)
    short = " ".join(kept.split())[:LABEL].strip()
    return short if any(character.isalnum() for character in short) else ""
