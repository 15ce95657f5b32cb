"""Guards CA keys at once, for tests in which the slowness on purpose is not the question."""

from __future__ import annotations

from dataclasses import dataclass, field

from hearthkey.core.errors import Refused
from hearthkey.core.secret import Secret
from hearthkey.formats import paper_der
from hearthkey.pki.keys import AuthorityKey


@dataclass
class QuickLocksmith:
    """The port `services.ports.Locksmith`; a text means nothing to anybody else.

    Args:
        guarded: key and passphrase by text.
    """

    guarded: dict[str, tuple[AuthorityKey, Secret[str]]] = field(default_factory=dict)

    def seal(self, key: AuthorityKey, passphrase: Secret[str]) -> str:
        """See the port."""
        text = paper_der.key_text(f"guarded {len(self.guarded)}".encode().ljust(400, b"."))
        self.guarded[text] = (key, passphrase)
        return text

    def open_guard(self, text: str, passphrase: Secret[str]) -> AuthorityKey:
        """See the port."""
        key, wanted = self.guarded[text]
        if wanted != passphrase:
            raise Refused("wrong-passphrase")
        return key
