"""What lies over the board, in a window where nothing moves."""

from __future__ import annotations

import pytest
from pytestqt.qtbot import QtBot

from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.theme.theme import Theme
from tests.ui.overlay.evening import Evening
from tests.ui.overlay.room import Open, Room
from tests.ui.practice import snapshot


@pytest.fixture(autouse=True)
def still(monkeypatch: pytest.MonkeyPatch) -> None:
    """Nothing slides, so that no test waits for it."""
    monkeypatch.setattr(Theme, "still", property(lambda _theme: True))


@pytest.fixture
def room(qtbot: QtBot, theme: Theme, monkeypatch: pytest.MonkeyPatch) -> Open:
    """Make a room; what is announced in it is kept."""

    def make(seen: Snapshot | None = None, size: tuple[int, int] = (1280, 800)) -> Room:
        made = Room(qtbot, theme, seen or snapshot(), size)
        for part in ("asking", "outcome"):
            monkeypatch.setattr(f"hearthkey.ui.lost.{part}.announce", lambda _where, words: made.spoken.append(words))
        return made

    return make


@pytest.fixture
def evening(qtbot: QtBot, theme: Theme) -> Evening:
    """The first evening."""
    return Evening(qtbot, theme)
