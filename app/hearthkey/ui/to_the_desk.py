"""Leads to the desk, and back from it to the board."""

from __future__ import annotations

from PySide6.QtCore import QObject

from hearthkey.ui.desk.desk import Desk
from hearthkey.ui.sight import sight
from hearthkey.ui.window import Window


class ToTheDesk(QObject):
    """Opens the desk of one window, with all that waits or with those that were named."""

    def __init__(self, window: Window) -> None:
        super().__init__(window)
        self._window = window
        outside = window.outside
        self.desk = Desk(window.theme, outside.errands, window.ways, window.sticks, window)
        self.desk.left.connect(window.ways.closed)
        window.ways.desk.connect(self._begin)
        window.leaving.connect(self.desk.sitting.leave)

    def _begin(self, serials: tuple[str, ...]) -> None:
        last = self._window.outside.errands.last
        if last is None or last.read_only:
            return
        waiting = sight(last).waiting
        chosen = [one for serial, one in waiting.items() if not serials or serial in serials]
        if chosen:
            if self._window.pages.currentWidget() is not self._window.sheet:
                self._window.ways.back.emit()  # so that no page goes on showing what the desk shows
            self.desk.begin(chosen)
