"""What else to change when somebody leaves the household; a certificate is only one of the ways in."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum


class Kind(StrEnum):
    """One thing to change."""

    SHARED_SECRET = "shared-secret"  # noqa: S105 - not a password
    TEMPLATES = "templates"
    DELIVER = "deliver"
    WIFI = "wifi"
    ROUTER = "router"
    ACCOUNTS = "accounts"
    PASSPHRASE = "passphrase"  # noqa: S105 - not a password
    COPIES = "copies"
    DOORS = "doors"


@dataclass(frozen=True)
class Chore:
    """One thing to change, and what it is about.

    Args:
        kind: what.
        subject: names, where there are any.
    """

    kind: Kind
    subject: str = ""


def chores(*, shared_secret: bool, device_templates: tuple[str, ...], by_hand: bool) -> tuple[Chore, ...]:
    """What is to be changed, this household's own things first.

    Args:
        shared_secret: whether others share a secret with them.
        device_templates: names of templates that were written for devices; secrets may stand in them.
        by_hand: whether the list has to be carried to the gateway.
    """
    found = [Chore(Kind.SHARED_SECRET)] if shared_secret else []
    if device_templates:
        found.append(Chore(Kind.TEMPLATES, ", ".join(device_templates)))
    if by_hand:
        found.append(Chore(Kind.DELIVER))
    return (
        *found,
        *(Chore(one) for one in (Kind.WIFI, Kind.ROUTER, Kind.ACCOUNTS, Kind.PASSPHRASE, Kind.COPIES, Kind.DOORS)),
    )
