"""What the window asks about copies that left."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path

from PySide6.QtCore import QObject

from hearthkey.core.copies import Told
from hearthkey.core.errors import HearthkeyError
from hearthkey.core.plans import Changes
from hearthkey.services import copying
from hearthkey.services.tidying import Looked
from hearthkey.ui.drives import Drive, plugged_in
from hearthkey.ui.tasks import Failed, Then
from hearthkey.ui.template_errands import TemplateErrands


@dataclass(frozen=True)
class CopiesSeen:
    """A look at the list of copies.

    Args:
        found: by person and device, the newest first.
        drives: the sticks that are plugged in.
        at: when that was, UTC.
    """

    found: tuple[Told, ...]
    drives: tuple[Drive, ...]
    at: datetime


class CopyErrands(TemplateErrands):
    """The copies' part of what the window asks.

    Sticks are looked for beside the lane: one that hangs must not stand before the next stop.
    """

    look_for_drives: Callable[[], tuple[Drive, ...]] = staticmethod(plugged_in)

    def copies(self, identity: str, context: QObject, then: Then[CopiesSeen]) -> None:
        """Every copy of a device; with an empty identity, of the household."""

        def work(drives: tuple[Drive, ...]) -> CopiesSeen:
            house = self._here()
            mine = [one for one in house.register.passes() if one.identity == identity] if identity else None
            return CopiesSeen(house.tidying.all(mine), drives, house.clock.now())

        self._with_drives(
            lambda drives: self._tasks.lane(lambda: work(drives), context, then, self.trouble.emit), context
        )

    def look_at_copy(self, number: int, context: QObject, then: Then[Looked], failed: Failed) -> None:
        """Whether a copy is still where it was written."""

        def ask(drives: tuple[Drive, ...]) -> None:
            self._ask(lambda: self._here().tidying.look(number, _places(drives)), context, then, failed)

        self._with_drives(ask, context)

    def tidy_copy(self, number: int, context: QObject, then: Then[Changes], failed: Failed) -> None:
        """Delete what is still ours of a copy."""

        def ask(drives: tuple[Drive, ...]) -> None:
            self._change(lambda: self._here().tidying.tidy(number, _places(drives)), context, then, failed)

        self._with_drives(ask, context)

    def copy_is_gone(self, number: int, context: QObject, then: Then[Changes], failed: Failed) -> None:
        """The householder says that a copy is gone."""
        self._change(lambda: self._here().tidying.mark_tidied(number), context, then, failed)

    def copy_is_not_gone(self, number: int, context: QObject, then: Then[Changes], failed: Failed) -> None:
        """It is not gone after all."""
        self._change(lambda: self._here().tidying.take_back(number), context, then, failed)

    def dragged(self, serial: str, *, taken: bool) -> None:
        """A drag is over, or its file has gone without one."""

        def work() -> None:
            house = self._here()
            if taken:
                copying.dragged_out(house.register, serial, house.clock.now())
            else:
                copying.not_dragged(house.register, serial)

        self._tasks.lane(work, self, lambda _none: None, self.trouble.emit)

    def _with_drives(self, then: Then[tuple[Drive, ...]], context: QObject) -> None:
        def without(_error: HearthkeyError) -> None:
            then(())

        self._tasks.pool(self.look_for_drives, context, then, without)


def _places(drives: tuple[Drive, ...]) -> list[tuple[str, Path]]:
    return [(one.name, one.path) for one in drives]
