"""Rows that are made anew whenever what they tell has changed."""

from __future__ import annotations

from PySide6.QtWidgets import QLayout


def empty(layout: QLayout) -> None:
    """Take everything out of a layout, with all that stands in the layouts inside it.

    Hidden at once, for Qt ends a widget only when the event loop comes round again.
    """
    while (item := layout.takeAt(0)) is not None:
        widget, inner = item.widget(), item.layout()
        if widget is not None:
            widget.hide()
            widget.deleteLater()
        if inner is not None:
            empty(inner)
