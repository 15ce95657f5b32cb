"""Takes the last thing back, where it can be: a stop is lifted, a let-in is stopped again."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QObject

from hearthkey.core.errors import HearthkeyError
from hearthkey.core.passes import State
from hearthkey.core.plans import Changes, LetInPlan, StopPlan
from hearthkey.ui.errands import Errands
from hearthkey.ui.footer import Footer
from hearthkey.ui.text import mended


class GoingBack(QObject):
    """Knows the way back from Changes, if there is one."""

    def __init__(self, errands: Errands, footer: Footer, parent: QObject) -> None:
        super().__init__(parent)
        self._errands = errands
        self._footer = footer

    def for_changes(self, changes: Changes) -> Callable[[], None] | None:
        """What Undo would do, or None."""
        snapshot = self._errands.last
        if snapshot is None or changes.list_number is None or not changes.serials:
            return None
        touched = [one for one in snapshot.passes if one.serial in changes.serials]
        if len({one.identity for one in touched}) != 1:  # one click takes back what one device was meant by
            return None
        states = {one.state(snapshot.at) for one in touched}
        identity = touched[0].identity
        if states == {State.STOPPED}:
            return lambda: self._errands.preview_let_in(identity, self, self._let_in, self._trouble)
        if State.STOPPED not in states and State.REVOKED not in states:
            return lambda: self._errands.preview_stop(identity, self, self._stop, self._trouble)
        return None

    def _let_in(self, plan: LetInPlan) -> None:
        self._errands.let_in(plan, self, None, self._trouble)

    def _stop(self, plan: StopPlan) -> None:
        self._errands.stop(plan, self, None, self._trouble)

    def _trouble(self, error: HearthkeyError) -> None:
        self._footer.say(mended(error))
