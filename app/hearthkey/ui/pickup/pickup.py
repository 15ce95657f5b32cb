"""One pick-up while it lasts: its code, its clock, what happens at the door, and how it ended."""

from __future__ import annotations

from collections.abc import Callable
from datetime import datetime

from PySide6.QtCore import QElapsedTimer, QObject, QTimer, Signal

from hearthkey.core.bundle import Form
from hearthkey.core.errors import HearthkeyError
from hearthkey.core.passes import Pass
from hearthkey.core.ticket_events import Event, Happened
from hearthkey.ui.errands import Errands
from hearthkey.ui.ticket_errands import Opened

LOOK = 400
"""Milliseconds between two looks at what happened at the door."""


class Pickup(QObject):
    """Opens a ticket, hears of it, closes it; never more than one at a time.

    Signals:
        changed: the ticket, its time or what happened at its door.
        second: another second has gone; how many are left.
        ended: it is closed; the Event says how.
    """

    changed = Signal()
    second = Signal(int)
    ended = Signal(object)

    def __init__(self, errands: Errands, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._errands = errands
        self.chosen: Pass | None = None
        self.opened: Opened | None = None
        self.heard: tuple[Event, ...] = ()
        self.ending: Event | None = None
        self._life = 0
        self._until: datetime | None = None
        self._since = QElapsedTimer()
        self._look = QTimer(self, interval=LOOK)
        self._look.timeout.connect(self._hear)
        self._tick = QTimer(self, interval=1000)
        self._tick.timeout.connect(lambda: self.second.emit(self.left))

    @property
    def left(self) -> int:
        """Seconds until it ends; 0 where none is open."""
        if self.opened is None or self.ending is not None:
            return 0
        return max(0, self._life - self._since.elapsed() // 1000)

    @property
    def is_open(self) -> bool:
        """Whether a phone can pick something up."""
        return self.opened is not None and self.ending is None

    def open(
        self,
        chosen: Pass,
        form: Form,
        address: str | None,
        then: Callable[[], None],
        failed: Callable[[HearthkeyError], None],
    ) -> None:
        """Open a ticket, after closing the one that is open.

        Args:
            address: one of this computer's, or None for the best.
            then: called once it is open and may be shown; unless it was closed meanwhile.
        """
        self.close()
        self.chosen = chosen

        def came(opened: Opened) -> None:
            if self.chosen is not chosen:
                self._errands.close_ticket(opened.ticket)
                return
            self.show(opened)
            self._look.start()
            self._tick.start()
            then()
            self.changed.emit()

        self._errands.open_ticket(chosen.serial, form, address, self, came, failed)

    def show(self, opened: Opened, heard: tuple[Event, ...] = ()) -> None:
        """Take a ticket that is open, from its first second on."""
        self.opened, self.heard, self.ending = opened, heard, None
        self._life, self._until = opened.seconds, opened.until
        self._since.start()

    def extend(self) -> None:
        """Ten minutes more, where it may still live so long."""
        opened = self.opened
        if opened is None or not self.is_open:
            return

        def longer(until: datetime) -> None:
            self._life += 0 if self._until is None else int((until - self._until).total_seconds())
            self._until = until
            self.second.emit(self.left)
            self.changed.emit()

        self._errands.extend_ticket(opened.ticket, self, longer, self._errands.trouble.emit)

    def close(self) -> None:
        """Close it, and forget its link."""
        self._look.stop()
        self._tick.stop()
        opened, self.opened, self.chosen = self.opened, None, None
        if opened is not None:
            self._errands.close_ticket(opened.ticket)

    def _hear(self) -> None:
        opened = self.opened
        if opened is None:
            return

        def told(events: tuple[Event, ...]) -> None:
            if self.opened is not opened or not events:
                return
            self.heard += events
            closing = next((one for one in events if one.what is Happened.CLOSED), None)
            if closing is not None:
                self._look.stop()
                self._tick.stop()
                self.ending = closing
                self.ended.emit(closing)
            self.changed.emit()

        self._errands.hear_ticket(opened.ticket, self, told, self._errands.trouble.emit)
