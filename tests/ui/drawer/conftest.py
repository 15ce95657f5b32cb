"""A drawer in a small window, over Quince Cottage, with nothing that moves."""

from __future__ import annotations

import pytest
from PySide6.QtWidgets import QHBoxLayout, QLineEdit, QWidget
from pytestqt.qtbot import QtBot

from hearthkey.ui.drawer.drawer import Drawer
from hearthkey.ui.drawer.page import Page
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.ways import Ways
from tests.ui.drawer.household import FakeErrands
from tests.ui.drawer.renewal_errands import RenewingErrands


class Room(QWidget):
    """A window with a field at the left, standing in for the board, and the drawer at the right."""

    def __init__(self, theme: Theme, ways: Ways) -> None:
        super().__init__()
        self.board = QLineEdit()
        self.drawer = Drawer(theme, ways)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.addWidget(self.board, 1)
        row.addWidget(self.drawer)
        self.resize(1280, 612)

    def open(self, page: Page) -> None:
        """Open a page."""
        self.drawer.open(page)


@pytest.fixture
def still(monkeypatch: pytest.MonkeyPatch) -> None:
    """Nothing moves."""
    monkeypatch.setattr(Theme, "still", property(lambda _theme: True))


@pytest.fixture
def ways() -> Ways:
    """Where clicks lead."""
    return Ways()


@pytest.fixture
def errands(theme: Theme) -> FakeErrands:
    """The household of the pictures."""
    assert theme.name == "paper"
    return RenewingErrands()


@pytest.fixture
def room(qtbot: QtBot, theme: Theme, ways: Ways, still: None) -> Room:
    """The window, shown, its field focused."""
    assert still is None
    made = Room(theme, ways)
    qtbot.addWidget(made)
    with qtbot.waitExposed(made):
        made.show()
    made.activateWindow()
    made.board.setFocus()
    qtbot.waitUntil(made.board.hasFocus)
    return made
