"""Judges a passphrase that somebody typed."""

from __future__ import annotations

from hearthkey.core.errors import Refused
from hearthkey.core.passphrase import typed
from hearthkey.core.secret import Secret

ENOUGH_GUESSES = 1e14
"""A thousand times the 1e10 at which zxcvbn gives its best mark, and ten on top: age's scrypt does the rest."""

_ZXCVBN_LIMIT = 72


def chosen(text: str) -> Secret[str]:
    """Accept a typed passphrase, if it stands enough guessing.

    Raises:
        Refused: as `core.passphrase.typed`, and passphrase-weak.
    """
    from zxcvbn import zxcvbn  # noqa: PLC0415 - its dictionaries take longer to load than most verbs take

    secret = typed(text)
    verdict = zxcvbn(secret.reveal()[:_ZXCVBN_LIMIT])
    if float(verdict["guesses"]) < ENOUGH_GUESSES:
        raise Refused("passphrase-weak")
    return secret


def confirmed(first: Secret[str], again: str) -> None:
    """Compare the second typing with the first.

    Raises:
        Refused: passphrase-differs.
    """
    if first != Secret(again.strip()):
        raise Refused("passphrase-differs")
