"""What every vault promises, whoever keeps the secrets; each vault's tests inherit from here."""

from __future__ import annotations

import pytest

from hearthkey.core.secret import Secret
from hearthkey.services.ports import Vault

LONGEST = 1280
"""Characters that the smallest keyring holds."""
NAME = "0123456789abcdef/pass/5a0b1c2d3e4f60718293a4b5c6d7e8f901234567"


class VaultContract:
    """Inherit from it in a class ``Test...`` and give a fixture ``vault``: an empty vault."""

    @pytest.fixture
    def vault(self) -> Vault:
        """An empty vault."""
        raise NotImplementedError

    def test_an_empty_vault_answers_with_nothing(self, vault: Vault) -> None:
        """Broken if it fails: "there is none" and "no answer" cannot be told apart."""
        assert vault.get(NAME) is None

    @pytest.mark.parametrize("text", ["q", "plum kettle ivory", "two\nlines\n", " spaces ", "Grüße 🍐", "q" * LONGEST])
    def test_what_is_put_is_got_back(self, vault: Vault, text: str) -> None:
        """Broken if it fails: a key text comes back changed, and opens no more."""
        vault.put(NAME, Secret(text))
        assert vault.get(NAME) == Secret(text)

    def test_the_last_put_counts(self, vault: Vault) -> None:
        """Broken if it fails: an old passphrase is shown for a new bundle."""
        vault.put(NAME, Secret("old"))
        vault.put(NAME, Secret("new"))
        assert vault.get(NAME) == Secret("new")

    def test_names_are_kept_apart(self, vault: Vault) -> None:
        """Broken if it fails: one device's passphrase opens another's bundle, or is erased with it."""
        vault.put(NAME, Secret("one"))
        vault.put(NAME + "0", Secret("other"))
        vault.delete(NAME)
        assert vault.get(NAME) is None
        assert vault.get(NAME + "0") == Secret("other")

    def test_forgetting_what_is_not_there_is_fine(self, vault: Vault) -> None:
        """Broken if it fails: what a crash cut short can never be finished."""
        vault.delete(NAME)
        vault.put(NAME, Secret("once"))
        vault.delete(NAME)
        vault.delete(NAME)
        assert vault.get(NAME) is None

    def test_it_says_where_it_is(self, vault: Vault) -> None:
        """Broken if it fails: the next start looks for the CA key in the wrong place."""
        assert vault.place in {"keyring", "file"}
