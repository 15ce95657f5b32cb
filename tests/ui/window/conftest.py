"""The real window on a real household: Quince Cottage, furnished once and copied for each test."""

from __future__ import annotations

import shutil
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from pytestqt.qtbot import QtBot

from hearthkey.bootstrap import open_house
from hearthkey.core.household import FILE
from hearthkey.services import practice
from hearthkey.ui import app as starting
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.window import Window

Opener = Callable[..., Window]


@pytest.fixture(scope="session")
def furnished(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A furnished household that nobody has open."""
    data = tmp_path_factory.mktemp("cottage") / "data"
    with open_house(data, place=FILE, writing=True) as house:
        practice.furnish(house)
    return data


@pytest.fixture
def cottage(furnished: Path, tmp_path: Path) -> Path:
    """A copy of it."""
    return Path(shutil.copytree(furnished, tmp_path / "data"))


@pytest.fixture
def opened(qtbot: QtBot, theme: Theme) -> Iterator[Opener]:
    """Opens windows on data folders, waits until they show what is there, and closes them at the end."""
    windows: list[Window] = []

    def open_on(data: Path) -> Window:
        window = starting.window(theme, open_house, data, practice=True)
        windows.append(window)
        window.show()
        window.outside.errands.open()
        qtbot.waitUntil(lambda: window.outside.errands.last is not None, timeout=20_000)
        return window

    yield open_on
    for window in windows:
        window.close()


@pytest.fixture
def window(opened: Opener, cottage: Path) -> Window:
    """The window on the furnished household."""
    return opened(cottage)
