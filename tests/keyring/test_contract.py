"""The vault over a real keyring daemon keeps what every vault promises."""

from __future__ import annotations

import pytest

from hearthkey.adapters.vault_keyring import KeyringVault
from hearthkey.services.ports import Vault
from tests.keyring.backends import secret_service
from tests.keyring.desktop import Desktop
from tests.ports.vault_contract import VaultContract


class TestKeyringVault(VaultContract):
    """The contract, asked of gnome-keyring-daemon."""

    @pytest.fixture
    def vault(self, open_login: Desktop, monkeypatch: pytest.MonkeyPatch) -> Vault:
        """An empty keyring."""
        monkeypatch.setenv("DBUS_SESSION_BUS_ADDRESS", open_login.address)
        return KeyringVault(backend=secret_service())
