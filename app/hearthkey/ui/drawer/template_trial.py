"""Tries a template while it is typed: after a pause, and one answer at a time."""

from __future__ import annotations

from PySide6.QtCore import QObject, QTimer, Signal

from hearthkey.core.errors import HearthkeyError
from hearthkey.core.templates import Template
from hearthkey.services.templating import Shown
from hearthkey.ui.errands import Errands

PAUSE = 400
"""Milliseconds without a key, after which what is typed is tried."""


class TemplateTrial(QObject):
    """Asks what a template would write; an answer to what has been typed over meanwhile is dropped.

    Signals:
        shown: Shown, for what was last asked.
        failed: HearthkeyError, for what was last asked.
    """

    shown = Signal(object)
    failed = Signal(object)

    def __init__(self, errands: Errands, parent: QObject) -> None:
        super().__init__(parent)
        self._errands = errands
        self._wanted: tuple[Template, str | None] | None = None
        self._asked: tuple[Template, str | None] | None = None
        self._pause = QTimer(self, singleShot=True, interval=PAUSE)
        self._pause.timeout.connect(self._ask)

    @property
    def settled(self) -> bool:
        """Whether nothing is waited for."""
        return self._asked is None and not self._pause.isActive()

    def soon(self, template: Template, serial: str | None) -> None:
        """Try it once the keys rest."""
        self._wanted = (template, serial)
        self._pause.start()

    def now(self, template: Template, serial: str | None) -> None:
        """Try it at once, for nobody is typing."""
        self._wanted = (template, serial)
        self._ask()

    def drop(self) -> None:
        """There is nothing to try."""
        self._wanted = None
        self._pause.stop()

    def _ask(self) -> None:
        self._pause.stop()
        if self._wanted is None or self._asked is not None:
            return
        self._asked = self._wanted
        template, serial = self._asked
        self._errands.preview(template, serial, self, self._came, self._refused)

    def _came(self, shown: Shown) -> None:
        if self._still_wanted():
            self.shown.emit(shown)

    def _refused(self, error: HearthkeyError) -> None:
        if self._still_wanted():
            self.failed.emit(error)

    def _still_wanted(self) -> bool:
        asked, self._asked = self._asked, None
        if self._wanted is not None and self._wanted != asked and not self._pause.isActive():
            self._ask()
        return asked == self._wanted
