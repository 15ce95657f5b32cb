"""Walks a window through steps while a timer beats: where the beat stops, the window does not answer."""

from __future__ import annotations

import time
from collections.abc import Callable, Sequence

from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QApplication

from hearthkey.ui.window import Window

_BEAT = 5
_WAIT = 50
_AFTER = 200
"""Milliseconds: between two beats, between two looks whether a step is over, and after each step at least."""


def gaps(app: QApplication, window: Window, steps: Sequence[Callable[[], None]]) -> list[float]:
    """Take one step after another, each once the last one's work is done.

    Returns:
        The longest time between two beats before the first step and after each, seconds.
    """
    found = [0.0]
    last = [time.perf_counter()]
    left = list(steps)

    def beat() -> None:
        now = time.perf_counter()
        found[-1] = max(found[-1], now - last[0])
        last[0] = now

    def on() -> None:
        if window.outside.tasks.waiting:
            QTimer.singleShot(_WAIT, window, on)
        elif left:
            found.append(0.0)
            left.pop(0)()
            QTimer.singleShot(_AFTER, window, on)
        else:
            app.exit()

    timer = QTimer(window, interval=_BEAT)
    timer.timeout.connect(beat)
    timer.start()
    on()
    app.exec()
    return found
