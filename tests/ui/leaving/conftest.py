"""The clipboard and the hand-over page for every test of how a bundle leaves."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from hearthkey.ui.clipboard import SecretClipboard
from hearthkey.ui.theme.theme import Theme
from tests.ui.leaving.household import LAPTOP, Scene


@pytest.fixture
def clipboard(qapp: QApplication) -> Iterator[SecretClipboard]:
    """The clipboard of the desktop, empty."""
    qapp.clipboard().clear()
    made = SecretClipboard(qapp.clipboard())
    yield made
    made.clear()


@pytest.fixture
def scene(qtbot: QtBot, theme: Theme, tmp_path: Path, clipboard: SecretClipboard) -> Scene:
    """The page, open on Tomasz's laptop."""
    made = Scene(theme, tmp_path, clipboard)
    qtbot.addWidget(made.page)
    made.page.show()
    made.page.activateWindow()
    qtbot.waitUntil(made.page.isActiveWindow, timeout=5000)
    made.page.open(LAPTOP.serial)
    return made
