"""Work off the window's thread comes home, and a closed window asks for none."""

from __future__ import annotations

from PySide6.QtCore import QObject
from pytestqt.qtbot import QtBot

from hearthkey.core.errors import HearthkeyError
from hearthkey.ui.tasks import Tasks


def give_up(error: HearthkeyError) -> None:
    """What nobody expects."""
    raise error


def test_what_a_closed_window_asks_for_is_not_done(qtbot: QtBot) -> None:
    """A result that arrives while the window closes would ask for more, and end in an error nobody can mend."""
    tasks, here, done = Tasks(), QObject(), list[str]()
    tasks.lane(lambda: "first", here, done.append, give_up)
    qtbot.waitUntil(lambda: done == ["first"])
    tasks.close()
    for where in (tasks.lane, tasks.pool, tasks.road):
        where(lambda: "late", here, done.append, give_up)
    assert tasks.waiting == 0
    qtbot.wait(20)
    assert done == ["first"]
