"""Every control of the window has a name and a place in the order of Tab."""

from __future__ import annotations

from collections.abc import Callable

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLabel, QWidget

from hearthkey.ui.window import Window

STATES: list[Callable[[Window], None]] = [
    lambda _window: None,
    lambda window: window.ways.new_device.emit(""),
    lambda window: window.ways.settings.emit(),
    lambda window: window.ways.templates.emit(),
    lambda window: window.ways.diary.emit(),
    lambda window: window.ways.help.emit("board"),
    lambda window: window.ways.gateway.emit(),
    lambda window: window.ways.gateway_place.emit(),
    lambda window: window.ways.lost.emit(""),
    lambda window: window.ways.device.emit(window.outside.errands.last.passes[0].identity),  # type: ignore[union-attr]  # a household is open
]


@pytest.mark.parametrize("bring", STATES)
def test_names_and_order(window: Window, bring: Callable[[Window], None]) -> None:
    """Broken if it fails: a screen reader says "button" and nothing else."""
    bring(window)
    nameless = [
        f"{type(one).__name__} in {type(one.parentWidget()).__name__}"
        for one in window.findChildren(QWidget)
        if _stops(one) and not _named(one)
    ]
    assert nameless == []


def _stops(widget: QWidget) -> bool:
    return widget.isVisible() and bool(widget.focusPolicy() & Qt.FocusPolicy.TabFocus)


def _named(widget: QWidget) -> bool:
    buddies = [one for one in widget.window().findChildren(QLabel) if one.buddy() is widget]
    return bool(widget.accessibleName() or buddies)
