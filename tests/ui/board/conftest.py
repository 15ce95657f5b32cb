"""A board on the practice household."""

from __future__ import annotations

import pytest
from pytestqt.qtbot import QtBot

from hearthkey.ui.board.view import BoardView
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.ways import Ways
from tests.ui.practice import snapshot


@pytest.fixture
def ways() -> Ways:
    """Where clicks lead."""
    return Ways()


@pytest.fixture
def board(qtbot: QtBot, theme: Theme, ways: Ways) -> BoardView:
    """The practice household on a sheet of the common size."""
    view = BoardView(theme, ways)
    qtbot.addWidget(view)
    view.resize(1280, 545)
    view.show(snapshot())
    view.show()
    return view
