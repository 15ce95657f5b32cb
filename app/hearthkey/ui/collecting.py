"""Collects cycles of Python objects on the window's thread alone, a few at a time."""

from __future__ import annotations

import gc
from collections.abc import Callable

from PySide6.QtCore import QObject, QTimer

EVERY = 100
"""Milliseconds between two collections of what is new."""

ENOUGH = 20
"""After so many of them everything is looked through that is not passed over, as soon as nothing is under way."""

_NEW, _ALL = 0, 2
"""Generations as `gc.collect` counts them."""


class Collecting(QObject):
    """Takes the collector of cycles out of Python's hands, for it begins on whichever thread asks for memory.

    A worker would delete widgets there, which Qt does not survive; and a walk through everything
    holds every thread for some 50 ms.

    Args:
        idle: whether no work is under way, which can hold a great many objects for a while.
    """

    def __init__(self, idle: Callable[[], bool], parent: QObject) -> None:
        super().__init__(parent)
        gc.disable()
        self._idle = idle
        self._turns = 0
        self._timer = QTimer(self, interval=EVERY)
        self._timer.timeout.connect(self.collect)

    def begin(self) -> None:
        """Pass over what is there now, because nearly all of it stays until the window closes, and collect from now on.

        What is passed over and let go of is freed by its count all the same.
        """
        gc.freeze()
        self._timer.start()

    def collect(self) -> None:
        """Collect what is new; once in a while everything, when nothing is under way."""
        if gc.get_count()[_NEW] > gc.get_threshold()[_NEW]:
            gc.collect(_NEW)
            self._turns += 1
        elif self._turns >= ENOUGH and self._idle():
            gc.collect(_ALL)
            self._turns = 0
