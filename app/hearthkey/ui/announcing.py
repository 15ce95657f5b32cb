"""Says something to a screen reader when the focus stays where it is."""

from __future__ import annotations

from PySide6.QtGui import QAccessible, QAccessibleAnnouncementEvent
from PySide6.QtWidgets import QWidget


def announce(widget: QWidget, sentence: str) -> None:
    """Announce a sentence; an empty one is not said."""
    if sentence:
        QAccessible.updateAccessibility(QAccessibleAnnouncementEvent(widget, sentence))
