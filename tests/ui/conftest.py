"""What every test of the window stands on: one application in our own style, and one theme."""

from __future__ import annotations

import gc
from collections.abc import Callable, Iterator

import pytest
from PySide6.QtCore import QEvent, QLocale, SignalInstance
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot
from pytestqt.wait_signal import SignalBlocker

from hearthkey.ui.theme.style import SheetStyle
from hearthkey.ui.theme.theme import Theme

PATIENCE = 60_000
"""Milliseconds until a wait is given up."""

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


@pytest.fixture(autouse=True)
def english() -> None:
    """What the tests expect is English, whatever the desktop speaks on which they run."""
    QLocale.setDefault(QLocale.c())


class PatientBot(QtBot):
    """Waits longer before it gives up: two test runs share a computer, and no verdict hangs on how long one took."""

    def waitUntil(self, callback: Callable[[], bool | None], *, timeout: int = PATIENCE) -> None:  # noqa: N802 - pytest-qt's name
        """Wait until something has happened."""
        super().waitUntil(callback, timeout=max(timeout, PATIENCE))

    def waitSignal(  # noqa: N802 - as above
        self,
        signal: SignalInstance,
        *,
        timeout: int = PATIENCE,
        raising: bool | None = None,
        check_params_cb: Callable[..., bool] | None = None,
    ) -> SignalBlocker:
        """Wait until a signal came."""
        patience = max(timeout, PATIENCE)
        return super().waitSignal(signal, timeout=patience, raising=raising, check_params_cb=check_params_cb)


@pytest.fixture
def qtbot(qapp: QApplication, request: pytest.FixtureRequest) -> QtBot:
    """The bot of pytest-qt, with more patience."""
    assert qapp is not None
    return PatientBot(request)


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
