"""Secrets longer than the smallest keyring takes lie there in parts, and go as a whole."""

from __future__ import annotations

import pytest

from hearthkey.adapters.vault_keyring import SMALLEST_KEYRING, KeyringVault
from hearthkey.core.errors import Unavailable
from hearthkey.core.secret import Secret
from tests.keyring.backends import Unchosen


class Small(Unchosen):
    """A keyring that keeps what the smallest one would (wincred.h: 5 * 512 octets), and breaks when it is told to."""

    def __init__(self) -> None:
        super().__init__()
        self.kept: dict[str, str] = {}
        self.breaks_at = 1_000

    def set_password(self, service: str, username: str, password: str) -> None:
        """Keep a secret."""
        del service
        if len(password) > SMALLEST_KEYRING or len(self.kept) >= self.breaks_at:
            raise ConnectionResetError
        self.kept[username] = password

    def get_password(self, service: str, username: str) -> str | None:
        """Give it back."""
        del service
        return self.kept.get(username)

    def delete_password(self, service: str, username: str) -> None:
        """Forget it."""
        del service
        self.kept.pop(username, None)


LONG = "".join(chr(97 + number % 26) for number in range(4_321))


def test_a_long_secret_comes_back_whole_and_goes_whole() -> None:
    """If this fails, an RSA CA that was made elsewhere cannot be kept, or parts of its key stay for ever."""
    small = Small()
    vault = KeyringVault(backend=small)
    vault.put("quince/ca", Secret(LONG))
    assert len(small.kept) == 5
    kept = vault.get("quince/ca")
    assert kept is not None
    assert kept.reveal() == LONG
    vault.delete("quince/ca")
    assert small.kept == {}
    assert vault.get("quince/ca") is None


def test_a_short_secret_lies_there_as_it_is() -> None:
    """If this fails, households of earlier versions are not opened any more."""
    small = Small()
    KeyringVault(backend=small).put("quince/ca", Secret("q" * SMALLEST_KEYRING))
    assert small.kept == {"quince/ca": "q" * SMALLEST_KEYRING}


@pytest.mark.parametrize("breaks_at", [0, 1, 2, 3, 4])
def test_a_keyring_that_breaks_in_between_leaves_nothing_after_the_next_start(breaks_at: int) -> None:
    """If this fails, parts of a CA key stay in the keyring of somebody who has no household."""
    small = Small()
    small.breaks_at = breaks_at
    vault = KeyringVault(backend=small)
    with pytest.raises(Unavailable):
        vault.put("quince/ca", Secret(LONG))
    assert vault.get("quince/ca") is None
    vault.delete("quince/ca")
    assert small.kept == {}


def test_a_part_that_is_gone_makes_the_secret_gone() -> None:
    """If this fails, half a key is taken for a whole one."""
    small = Small()
    vault = KeyringVault(backend=small)
    vault.put("quince/ca", Secret(LONG))
    del small.kept["quince/ca/2"]
    assert vault.get("quince/ca") is None
