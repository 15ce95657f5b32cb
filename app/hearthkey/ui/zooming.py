"""How much of time the board shows: by keys and in the menu, and remembered."""

from __future__ import annotations

from PySide6.QtCore import QObject
from PySide6.QtGui import QAction, QActionGroup, QKeySequence
from PySide6.QtWidgets import QMenu

from hearthkey.ui.announcing import announce
from hearthkey.ui.board.axis import Zoom
from hearthkey.ui.window import Window


class Zooming(QObject):
    """A month, a year, or all of it: Alt+1, Alt+2, Alt+3.

    Args:
        before: the entry of the household's menu that it stands over.
    """

    def __init__(self, window: Window, before: QAction) -> None:
        super().__init__(window)
        self.setObjectName("zooming")
        self._window = window
        self._menu = QMenu(self.tr("Time on the sheet"), window.menu)
        window.menu.insertMenu(before, self._menu)
        self._group = QActionGroup(self)
        self.actions: dict[Zoom, QAction] = {}
        for zoom, words, key in (
            (Zoom.MONTH, self.tr("One month ahead"), "Alt+1"),
            (Zoom.YEAR, self.tr("One year ahead"), "Alt+2"),
            (Zoom.ALL, self.tr("All of it, folded"), "Alt+3"),
        ):
            self._add(zoom, words, key)
        window.board.show_time(window.outside.memory.zoom())
        self.actions[window.board.zoom].setChecked(True)
        window.board.zoomed.connect(self._zoomed)

    def _add(self, zoom: Zoom, words: str, key: str) -> None:
        action = QAction(words, self._group)
        action.setCheckable(True)
        action.setShortcut(QKeySequence(key))
        action.triggered.connect(lambda _on=False: self._window.board.show_time(zoom))
        self._window.addAction(action)
        self._menu.addAction(action)
        self.actions[zoom] = action

    def _zoomed(self, zoom: Zoom) -> None:
        """Say how the axis lies now, and remember it."""
        self.actions[zoom].setChecked(True)
        self._window.outside.memory.keep_zoom(zoom)
        announce(self._window.board.header, self._window.board.header.accessibleDescription().splitlines()[0])
