"""The lock of sealed copies without scrypt: real age keys, and a passphrase that is only compared."""

from __future__ import annotations

import json

from hearthkey.core.errors import Refused
from hearthkey.core.secret import Secret
from hearthkey.pki import copy_lock
from hearthkey.pki.copy_lock import Lock, Opened


class QuickLocks:
    """The port `services.sealed_ports.CopyLocks`; `tests/ports/test_copy_locks.py` holds it against the real one."""

    def __init__(self) -> None:
        self.made = 0

    def make(self, passphrase: Secret[str], mark_key: Secret[str]) -> Lock:
        """See the port."""
        self.made += 1
        public, private = copy_lock.draw()
        return Lock(public, json.dumps([passphrase.reveal(), private.reveal(), mark_key.reveal()]))

    def unlock(self, locked: str, passphrase: Secret[str]) -> Opened:
        """See the port."""
        try:
            right, private, mark_key = json.loads(locked)
        except ValueError:
            raise Refused("copy-damaged", part="identity.age") from None
        if passphrase != Secret(right):
            raise Refused("wrong-passphrase")
        return Opened(Secret(private), Secret(mark_key))
