"""The desk for every test of it."""

from __future__ import annotations

import pytest
from pytestqt.qtbot import QtBot

from hearthkey.ui.theme.theme import Theme
from tests.ui.desk.household import TABLE, Table


@pytest.fixture
def table(qtbot: QtBot, theme: Theme) -> Table:
    """The desk, open on the first of three devices."""
    made = Table(theme)
    qtbot.addWidget(made.window)
    made.window.resize(1280, 800)
    made.window.show()
    made.desk.begin(TABLE)
    made.desk.showNormal()  # the one screen of the tests is small
    made.desk.resize(1280, 800)
    qtbot.waitUntil(made.desk.isActiveWindow)
    return made
