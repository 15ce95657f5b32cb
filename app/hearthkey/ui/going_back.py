"""Takes the last change back and does it again, and offers that in the footer while the change is fresh."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QObject

from hearthkey.core.errors import HearthkeyError
from hearthkey.services.undoing import Offer
from hearthkey.ui.errands import Errands
from hearthkey.ui.footer import Footer
from hearthkey.ui.text import mended


class GoingBack(QObject):
    """The way back, and forth again."""

    def __init__(self, errands: Errands, footer: Footer, parent: QObject) -> None:
        super().__init__(parent)
        self._errands = errands
        self._footer = footer
        self._remembered = 0

    def offered(self) -> Callable[[], None] | None:
        """What the footer's button does after a verb, None where that one cannot be taken back."""
        offer = Offer() if self._errands.last is None else self._errands.last.offer
        fresh = offer.remembered > self._remembered
        self._remembered = offer.remembered
        return self.undo if fresh and not offer.final else None

    def undo(self) -> None:
        """Take the last change back; the footer says what was, or why not."""
        self._errands.undo(self, None, self._trouble)

    def redo(self) -> None:
        """Do it again after all."""
        self._errands.redo(self, None, self._trouble)

    def _trouble(self, error: HearthkeyError) -> None:
        self._footer.say(mended(error))
        self._errands.refresh_then(lambda: None)
