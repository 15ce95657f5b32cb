"""A vault in memory that can be closed, silent or absent when a test says so."""

from __future__ import annotations

from hearthkey.core.errors import Fact, Unavailable
from hearthkey.core.household import KEYRING
from hearthkey.core.secret import Secret

_FACTS: dict[str, dict[str, Fact]] = {
    "keyring-silent": {"seconds": 20},
    "keyring-unsafe": {"backend": "practice.PlaintextKeyring"},
    "keyring-failed": {"seen": "it says no"},
}


class FakeVault:
    """The port `services.ports.Vault`.

    Args:
        secrets: what it keeps, by name.
        trouble: code of the Unavailable that every call raises, or None while all is well.
        patience: how many more calls go well before `trouble` begins.
    """

    place = KEYRING

    def __init__(self, secrets: dict[str, str] | None = None) -> None:
        self.secrets = {} if secrets is None else secrets
        self.trouble: str | None = None
        self.patience = 0

    def _answer(self) -> None:
        if self.trouble is None:
            return
        if self.patience > 0:
            self.patience -= 1
            return
        raise Unavailable(self.trouble, **_FACTS.get(self.trouble, {}))

    def get(self, name: str) -> Secret[str] | None:
        """See the port."""
        self._answer()
        return Secret(self.secrets[name]) if name in self.secrets else None

    def put(self, name: str, secret: Secret[str]) -> None:
        """See the port."""
        self._answer()
        self.secrets[name] = secret.reveal()

    def delete(self, name: str) -> None:
        """See the port."""
        self._answer()
        self.secrets.pop(name, None)
