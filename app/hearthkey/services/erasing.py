"""Erases the key of a waiting pass and its passphrase: at hand-over, and when the pass is withdrawn for good."""

from __future__ import annotations

from collections.abc import Sequence

from hearthkey.core.errors import Unavailable
from hearthkey.core.network import Caution
from hearthkey.core.passes import Pass
from hearthkey.core.revocation import Reason
from hearthkey.services import secret_names
from hearthkey.services.opening import the_authority
from hearthkey.services.ports import Change, Register, Vault


class Erasing:
    """Both go in an order that a crash cannot spoil.

    The key goes with the transaction, which also writes down that its passphrase belongs to nothing any more; the
    passphrase follows, and if the keyring does not answer now, at the next start.
    """

    def __init__(self, register: Register, vault: Vault) -> None:
        self._register = register
        self._vault = vault

    def forgotten(self, change: Change, passes: Sequence[Pass]) -> None:
        """Write down, in the transaction that takes their keys, that the passphrases belong to nothing any more."""
        for name, _ in self._names(passes):
            change.loosen_secret(name, self._vault.place)

    def withdrawn(self, change: Change, waiting: Sequence[Pass]) -> None:
        """Erase the keys of waiting passes in the transaction that withdraws them for good."""
        for one in waiting:
            change.erase_key(one.serial)
        self.forgotten(change, waiting)

    def follow(self, passes: Sequence[Pass]) -> tuple[Caution, ...]:
        """After the transaction: empty the register's log of the keys and take the passphrases out of the vault.

        Raises:
            Unavailable: as the register.
        """
        names = self._names(passes)
        if not names:
            return ()
        scrubbed = self._register.scrub()
        cautions = [] if scrubbed else [Caution("key-erased-later", title) for _, title in names]
        for name, title in names:
            try:
                self._vault.delete(name)
                self._register.forget_loose(name)
            except Unavailable:
                cautions.append(Caution("passphrase-erased-later", title))
        return tuple(cautions)

    def _names(self, passes: Sequence[Pass]) -> list[tuple[str, str]]:
        authority = the_authority(self._register)
        return [(secret_names.bundle_passphrase(authority, one.serial), one.title) for one in passes]


def erase_withdrawn(register: Register) -> None:
    """Erase the keys of passes that were withdrawn for good in another way than by the verb; their passphrases follow.

    So it is where the gateway's list told of a revocation, and where an older version of the app revoked.

    Raises:
        Unavailable: as the register.
    """
    final = [one.serial for one in register.entries() if one.reason is not Reason.CERTIFICATE_HOLD]
    left = [serial for serial in final if register.sealed(serial) is not None]
    authority = register.authority()
    if authority is None or not left:
        return
    with register.change() as change:
        for serial in left:
            change.erase_key(serial)
            change.loosen_secret(secret_names.bundle_passphrase(authority, serial), authority.key_place)
