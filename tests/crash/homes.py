"""Households to crash: how one is put back to where it was, and where its secrets are looked at."""

from __future__ import annotations

import re
import shutil
from pathlib import Path

from hearthkey.core.household import FILE
from tests.crash.nursery import Nursery, Run
from tests.keyring.desktop import Desktop


class Home:
    """A household on disk and in a vault, of which the state that it is put back to is kept.

    Args:
        desktop: the login that it lives in.
        nursery: runs its verbs.
        root: an empty folder.
        place: ``keyring`` or ``file``.
    """

    def __init__(self, desktop: Desktop, nursery: Nursery, root: Path, place: str) -> None:
        self.data = root / "household"
        self.folder = root / "bundles"
        self.place = place
        self.desktop = desktop
        self._nursery = nursery
        self._saved = root / "saved"
        self._saved_secrets: dict[str, str] = {}

    def run(self, verb: str, stop_at: int = 0, *, thin: bool = False) -> Run:
        """Run a verb, and kill it at its `stop_at`-th moment; `thin` as in `moments.Moments`."""
        return self._nursery.run(verb, self.data, place=self.place, folder=self.folder, stop_at=stop_at, thin=thin)

    def save(self) -> None:
        """Keep the present state."""
        shutil.copytree(self.data, self._saved / "household")
        shutil.copytree(self.folder, self._saved / "bundles")
        if self.place != FILE:
            self._saved_secrets = self.desktop.secrets()

    def put_back(self) -> None:
        """Bring back the state that was saved, or emptiness where none was."""
        for name, here in (("household", self.data), ("bundles", self.folder)):
            shutil.rmtree(here, ignore_errors=True)
            if (self._saved / name).exists():
                shutil.copytree(self._saved / name, here)
        if self.place != FILE and self.desktop.secrets() != self._saved_secrets:
            self.desktop.put_back(self._saved_secrets)

    def secrets(self) -> dict[str, str]:
        """All secrets of the household in its vault, half-written ones too, by their name as a file."""
        if self.place != FILE:
            return {re.sub(r"[^a-z0-9]+", ".", name): value for name, value in self.desktop.secrets().items()}
        kept = self.data / "keys"
        paths = kept.iterdir() if kept.exists() else ()
        return {path.name.removesuffix(".txt"): path.read_text(encoding="ascii") for path in paths}

    def list_devices(self) -> tuple[int, dict[str, object]]:
        """Run `hearthkey list --json`, as somebody does who wonders what happened."""
        return self._nursery.list_devices(self.data)
