"""Turns of the wheel into steps of the zoom, from whatever turns it: notches, or a finger on a touchpad."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import QWheelEvent

NOTCH = 120
"""Eighths of a degree times 8: what a wheel with notches gives at each, and what touchpads add up to."""


class Turning:
    """Adds up what was turned with Ctrl held."""

    def __init__(self) -> None:
        self._turned = 0

    def steps(self, event: QWheelEvent) -> int | None:
        """Steps of the zoom, positive for farther; None where the wheel scrolls."""
        if not event.modifiers() & Qt.KeyboardModifier.ControlModifier:
            self._turned = 0
            return None
        turned = event.angleDelta().y()
        if turned * self._turned < 0:
            self._turned = 0
        self._turned += turned
        steps = int(self._turned / NOTCH)
        self._turned -= steps * NOTCH
        return -steps
