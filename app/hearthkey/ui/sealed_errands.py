"""What the window asks of sealed copies: one after every change, without being asked."""

from __future__ import annotations

from pathlib import Path

import shiboken6
from PySide6.QtCore import QObject

from hearthkey.core import deputy
from hearthkey.core.errors import HearthkeyError
from hearthkey.core.plans import Changes
from hearthkey.core.sealed import CopyNote
from hearthkey.core.secret import Secret
from hearthkey.core.target import Target
from hearthkey.formats import sealed_tar
from hearthkey.services.carrying_copies import Load
from hearthkey.services.ports import silent
from hearthkey.ui.deputy_errands import DeputyErrands
from hearthkey.ui.tasks import Failed, Then


class SealedErrands(DeputyErrands):
    """The sealed copies' part of the errands; see `Lane` for the shape of each."""

    _carrying = False

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
        """Make a copy in the app's own folder where something was done since, and one for the gateway."""

        def work() -> Load | None:
            house = self._here()
            if house.register.read_only or house.register.household() is None:
                return None
            house.sealing.keep_up()
            return house.carrying_copies.load() if not self._carrying and house.carrying_copies.behind() else None

        def over(load: Load | None) -> None:
            if load is not None:
                self._bring(load, self, None, self.trouble.emit, told=False)

        self._tasks.lane(work, self, over, self.trouble.emit)

    # At the gateway

    def carry_copy(self, context: QObject, then: Then[Changes], failed: Failed) -> None:
        """Make a copy and bring it to the gateway; later ones follow by themselves."""

        def work() -> Load:
            return self._here().carrying_copies.load(progress=self._progress)

        def over(load: Load) -> None:
            self._bring(load, context, then, failed, told=True)

        self._tasks.lane(work, context, over, failed)

    def _bring(self, load: Load, context: QObject, then: Then[Changes] | None, failed: Failed, *, told: bool) -> None:
        """The way there may take as long as the network does, so the lane goes on meanwhile."""
        self._carrying = True

        def work() -> None:
            self._here().carrying_copies.bring(load, progress=self._progress if told else silent)

        def over(_none: None) -> None:
            self._carrying = False
            if told:
                self._change(lambda: self._here().carrying_copies.note(load, told=True), context, then, failed)
            else:
                self._tasks.lane(note, self, lambda _changes: self.refresh(), self.trouble.emit)

        def note() -> Changes:
            return self._here().carrying_copies.note(load, told=False)

        def trouble(error: HearthkeyError) -> None:
            self._carrying = False
            self.step.emit("")
            if shiboken6.isValid(context):
                failed(error)

        self._tasks.road(work, self, over, trouble)

    def try_fetched(
        self, note: CopyNote, passphrase: Secret[str], context: QObject, then: Then[Changes], failed: Failed
    ) -> None:
        """Fetch a copy from the gateway, and open it for real."""

        def over(data: bytes) -> None:
            def opens() -> Changes:
                return self._here().sealing.try_copy(data, passphrase, progress=self._progress)

            self._change(opens, context, then, failed)

        def target() -> Target:
            return self._here().carrying_copies.target_of(note)

        def fetch(there: Target) -> None:
            self._tasks.road(lambda: self._here().carrying_copies.fetch_from(there, note), context, over, failed)

        self._tasks.lane(target, context, fetch, failed)
