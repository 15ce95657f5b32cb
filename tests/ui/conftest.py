"""What every test of the window stands on: one application in our own style, and one theme."""

from __future__ import annotations

import gc
from collections.abc import Iterator

import pytest
from PySide6.QtCore import QEvent
from PySide6.QtWidgets import QApplication

from hearthkey.ui.theme.style import SheetStyle
from hearthkey.ui.theme.theme import Theme

_KEPT: list[object] = []
"""Qt does not keep a style alive by itself, and every widget of every test uses it."""


@pytest.fixture(autouse=True)
def cycles_wait(qapp: QApplication) -> Iterator[None]:
    """Let cycles of widgets be collected between the tests: a lane's thread would delete them there, as in the app."""
    gc.disable()
    yield
    for left in qapp.topLevelWidgets():
        left.deleteLater()
    qapp.sendPostedEvents(None, QEvent.Type.DeferredDelete)
    gc.enable()


@pytest.fixture
def theme(qapp: QApplication) -> Iterator[Theme]:
    """The paper theme at normal size, worn by the application."""
    chosen = Theme(name="paper")
    style = SheetStyle(chosen)
    _KEPT.extend((chosen, style))
    qapp.setStyle(style)
    chosen.dress()
    yield chosen
    chosen.choose("paper", 1.0)
