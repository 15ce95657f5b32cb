"""What the deputy's parts open: the passphrases of a sealed copy, locked under what was split.

An age text under a passphrase (age-encryption.org/v1, scrypt): the passphrase is what was split, as 32 hex digits in
lower case, so that any age tool opens it. Inside are lines of JSON (RFC 8259).
"""

from __future__ import annotations

import json
from dataclasses import dataclass

import pyrage

from hearthkey.core.errors import Refused
from hearthkey.core.secret import Secret
from hearthkey.pki import guard

LONGEST_TEXT = 8192
"""Characters. Two passphrases of 1,024 make about 3,300."""


@dataclass(frozen=True)
class Passphrases:
    """What opens a sealed copy.

    Args:
        household: the household's passphrase.
        own: the copies' own, where they have one.
    """

    household: Secret[str]
    own: Secret[str] | None = None


def lock(opens: Passphrases, secret: Secret[bytes]) -> str:
    """Lock them under 128 random bits. Takes about a second: the library measures scrypt whatever it is given."""
    told = {"household": opens.household.reveal(), "own": None if opens.own is None else opens.own.reveal()}
    plain = json.dumps(told, sort_keys=True).encode("ascii")
    return pyrage.passphrase.encrypt(plain, secret.reveal().hex(), armored=True).decode("ascii")


def unlock(text: str, secret: Secret[bytes]) -> Passphrases:
    """Open them.

    Raises:
        Refused: deputy-lock-damaged, also where another secret was split; guard-too-heavy.
    """
    damaged = Refused("deputy-lock-damaged")
    if len(text) > LONGEST_TEXT or not text.isascii():
        raise damaged
    try:
        plain = pyrage.passphrase.decrypt(text.encode("ascii"), secret.reveal().hex())
    except pyrage.DecryptError as error:
        told = guard.refusal(str(error), len(text))
        if told.code == "guard-too-heavy":
            raise told from None
        raise damaged from None
    try:
        found = json.loads(plain)
        own = found["own"]
        return Passphrases(Secret(str(found["household"])), None if own is None else Secret(str(own)))
    except (ValueError, KeyError, TypeError):
        raise damaged from None
