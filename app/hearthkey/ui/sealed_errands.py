"""What the window asks of sealed copies: one after every change, without being asked."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QObject

from hearthkey.core import deputy
from hearthkey.core.plans import Changes
from hearthkey.core.secret import Secret
from hearthkey.formats import sealed_tar
from hearthkey.ui.deputy_errands import DeputyErrands
from hearthkey.ui.tasks import Failed, Then


class SealedErrands(DeputyErrands):
    """The sealed copies' part of the errands; see `Lane` for the shape of each."""

    def open_copies(self, passphrase: Secret[str]) -> None:
        """Draw what copies are closed with, right after a passphrase opened the CA key; only ever once."""
        self._tasks.lane(
            lambda: self._here().sealing.make_ready(passphrase), self, lambda _none: self.keep_copy(), self.trouble.emit
        )

    def seal(self, folder: Path, context: QObject, then: Then[Changes], failed: Failed) -> None:
        """Write a copy to a folder or a stick."""

        def work() -> Changes:
            if folder.is_dir():
                deputy.check_no_parts(one.name for one in folder.iterdir())
            return self._here().sealing.seal(folder, progress=self._progress)[1]

        self._change(work, context, then, failed)

    def try_copy(
        self, file: Path, passphrase: Secret[str], context: QObject, then: Then[Changes], failed: Failed
    ) -> None:
        """Open a copy for real."""

        def work() -> Changes:
            house = self._here()
            data = house.files.read(file, sealed_tar.LARGEST)
            return house.sealing.try_copy(data, passphrase, progress=self._progress)

        self._change(work, context, then, failed)

    def keep_copy(self) -> None:
        """Make a copy in the app's own folder where something was done since the last one."""

        def work() -> None:
            house = self._here()
            if not house.register.read_only and house.register.household() is not None:
                house.sealing.keep_up()

        self._tasks.lane(work, self, lambda _none: None, self.trouble.emit)
