"""What the window asks about kinds of devices: their files, whether a text is one, and to keep it."""

from __future__ import annotations

from PySide6.QtCore import QObject

from hearthkey.core.kinds import DeviceKind
from hearthkey.services.kind_keeping import KindPlan
from hearthkey.ui.diary_errands import DiaryErrands
from hearthkey.ui.tasks import Failed, Then


class KindErrands(DiaryErrands):
    """This part of the errands; see `Lane` for the shape of each.

    What is kept or set aside is known to everybody once the household was opened anew, which locks it.
    """

    def kind_text(self, name: str, context: QObject, then: Then[str], failed: Failed) -> None:
        """The file of a kind, to be read or corrected."""
        self._ask(lambda: self._here().keeping_kinds.text_of(name), context, then, failed)

    def check_kind(self, file: str, text: str, context: QObject, then: Then[KindPlan], failed: Failed) -> None:
        """Whether a text is the file of a kind; `file` is how sentences call it."""
        self._ask(lambda: self._here().keeping_kinds.check(file, text.encode()), context, then, failed)

    def keep_kind(self, plan: KindPlan, context: QObject, then: Then[KindPlan], failed: Failed) -> None:
        """Keep a kind."""

        def work() -> KindPlan:
            self._here().keeping_kinds.keep(plan)
            return plan

        def over(kept: KindPlan) -> None:
            self.open()
            then(kept)

        self._ask(work, context, over, failed)

    def set_kind_aside(self, name: str, context: QObject, then: Then[DeviceKind | None], failed: Failed) -> None:
        """Take a kind of one's own away; ours of that name stands again."""

        def over(ours: DeviceKind | None) -> None:
            self.open()
            then(ours)

        self._ask(lambda: self._here().keeping_kinds.remove(name), context, over, failed)
