"""What the window asks about what was done, and is to be done: a file of it, and to take it back."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import QObject

from hearthkey.core.plans import Changes
from hearthkey.ui.lane import Lane
from hearthkey.ui.tasks import Failed, Then


class DiaryErrands(Lane):
    """The diary's part of the errands; see `Lane` for the shape of each."""

    def write_diary(
        self, folder: Path, name: str, make: Callable[[], bytes], context: QObject, then: Then[Path], failed: Failed
    ) -> None:
        """Write what `make` makes of the diary, beside the window."""
        self._ask(lambda: self._here().files.write(folder, name, make()), context, then, failed)

    def write_dates(
        self, file: Path, make: Callable[[], bytes], context: QObject, then: Then[Path], failed: Failed
    ) -> None:
        """Write what `make` makes of the days, over what the file said before."""
        self._ask(lambda: self._here().files.write(file.parent, file.name, make()), context, then, failed)

    def undo(self, context: QObject, then: Then[Changes] | None, failed: Failed) -> None:
        """Take the last change back."""
        self._change(lambda: self._here().undoing.undo(progress=self._progress), context, then, failed)

    def redo(self, context: QObject, then: Then[Changes] | None, failed: Failed) -> None:
        """Do again what was taken back last."""
        self._change(lambda: self._here().undoing.redo(progress=self._progress), context, then, failed)
