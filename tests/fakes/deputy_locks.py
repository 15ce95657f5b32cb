"""What a deputy's parts open, without scrypt: the secret is only compared."""

from __future__ import annotations

import json

from hearthkey.core.errors import Refused
from hearthkey.core.secret import Secret
from hearthkey.pki.deputy_lock import Passphrases


class QuickDeputyLocks:
    """The port `services.sealed_ports.DeputyLocks`; `tests/ports/test_deputy_locks.py` holds it to the real one."""

    def lock(self, opens: Passphrases, secret: Secret[bytes]) -> str:
        """See the port."""
        own = None if opens.own is None else opens.own.reveal()
        return json.dumps([secret.reveal().hex(), opens.household.reveal(), own])

    def unlock(self, text: str, secret: Secret[bytes]) -> Passphrases:
        """See the port."""
        try:
            right, household, own = json.loads(text)
        except ValueError:
            raise Refused("deputy-lock-damaged") from None
        if secret.reveal().hex() != right:
            raise Refused("deputy-lock-damaged")
        return Passphrases(Secret(household), None if own is None else Secret(own))
