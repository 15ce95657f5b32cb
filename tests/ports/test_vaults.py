"""The vault of the tests and the vault in files keep what every vault promises."""

from __future__ import annotations

import stat
from pathlib import Path

import pytest

from hearthkey.adapters.files import DiskFiles
from hearthkey.adapters.vault_file import FileVault
from hearthkey.core.errors import Unavailable
from hearthkey.core.secret import Secret
from hearthkey.services.ports import Vault
from tests.fakes.vault import FakeVault
from tests.ports.vault_contract import NAME, VaultContract


class TestFakeVault(VaultContract):
    """Broken if it fails: the tests of the verbs rest on a vault that no real one is like."""

    @pytest.fixture
    def vault(self) -> Vault:
        """One in memory."""
        return FakeVault()

    @pytest.mark.parametrize(
        "trouble", ["keyring-locked", "keyring-silent", "keyring-absent", "keyring-unsafe", "keyring-failed"]
    )
    def test_trouble_is_told_by_every_call(self, trouble: str) -> None:
        """Broken if it fails: a closed keyring looks like an empty one in the tests."""
        vault = FakeVault()
        vault.trouble = trouble
        with pytest.raises(Unavailable, match=trouble):
            vault.get(NAME)
        with pytest.raises(Unavailable, match=trouble):
            vault.put(NAME, Secret("q"))
        with pytest.raises(Unavailable, match=trouble):
            vault.delete(NAME)


class TestFileVault(VaultContract):
    """Broken if it fails: a household without a keyring loses its secrets."""

    @pytest.fixture
    def vault(self, tmp_path: Path) -> Vault:
        """One in a folder of its own."""
        return FileVault(tmp_path / "keys", DiskFiles())

    def test_secrets_are_for_their_owner_alone(self, tmp_path: Path) -> None:
        """Broken if it fails: other users of the computer read the passphrases of waiting bundles."""
        FileVault(tmp_path / "keys", DiskFiles()).put(NAME, Secret("plum"))
        (kept,) = (tmp_path / "keys").iterdir()
        assert stat.S_IMODE(kept.stat().st_mode) == 0o600
        assert stat.S_IMODE((tmp_path / "keys").stat().st_mode) == 0o700

    def test_a_name_never_leaves_the_folder(self, tmp_path: Path) -> None:
        """Broken if it fails: a secret is written wherever its name points."""
        vault = FileVault(tmp_path / "keys", DiskFiles())
        vault.put("../../elsewhere", Secret("plum"))
        assert [path.parent for path in tmp_path.rglob("*.txt")] == [tmp_path / "keys"]
