"""What a household leaves on paper: the encrypted CA key, and what is needed to go on with it elsewhere."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime

from hearthkey.core.household import Household
from hearthkey.core.revocation import Reason

LISTED = 16
"""Withdrawals on paper at most, the newest; fewer where the page has no room. The gateway's list has them all."""


@dataclass(frozen=True)
class Withdrawn:
    """A pass that may not get in.

    Args:
        serial: hex, lower case.
        since: UTC.
        reason: why.
    """

    serial: str
    since: datetime
    reason: Reason


@dataclass(frozen=True)
class PaperContents:
    """Everything on the paper, as values.

    Args:
        made: when, UTC, whole seconds.
        household: its settings.
        key_set: name of the key set that the gateway signs with.
        list_mark: the highest list number ever given.
        certificate: the CA's, DER.
        key: the CA key under the household's passphrase, in the age format (age-encryption.org/v1), binary.
        withdrawn: at most `LISTED`, the newest first.
        more_withdrawn: how many there are besides.
        living: how many passes were in use, none of which the paper names.
    """

    made: datetime
    household: Household
    key_set: str
    list_mark: int
    certificate: bytes
    key: bytes
    withdrawn: tuple[Withdrawn, ...]
    more_withdrawn: int
    living: int
