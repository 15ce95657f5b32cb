"""Secrets as files of mode 0600, for a computer without a keyring."""

from __future__ import annotations

import re
from pathlib import Path

from hearthkey.core.errors import Unavailable
from hearthkey.core.secret import Secret
from hearthkey.services.ports import Files

_LARGEST = 64 * 1024


class FileVault:
    """The port `services.ports.Vault` over a folder.

    The CA key text is encrypted whatever the place; passphrases of waiting bundles are not, so
    whoever reads this folder reads them. Every screen of such a household says so.
    """

    place = "file"

    def __init__(self, folder: Path, files: Files) -> None:
        self.folder = folder
        self._files = files

    def _path(self, name: str) -> Path:
        return self.folder / (re.sub(r"[^a-z0-9]+", ".", name) + ".txt")

    def get(self, name: str) -> Secret[str] | None:
        """See the port."""
        path = self._path(name)
        return Secret(self._files.read(path, _LARGEST).decode()) if path.exists() else None

    def put(self, name: str, secret: Secret[str]) -> None:
        """See the port."""
        self._files.write(self.folder, self._path(name).name, secret.reveal().encode())

    def delete(self, name: str) -> None:
        """See the port."""
        try:
            self._path(name).unlink(missing_ok=True)
        except OSError as error:
            raise Unavailable("folder-read-only", path=str(self.folder), seen=error.strerror or "") from error
