"""Closing the window: what waits is dropped, what runs is finished, and the last thing is always done."""

from __future__ import annotations

import threading
from functools import partial

from PySide6.QtCore import QObject
from pytestqt.qtbot import QtBot

from hearthkey.core.errors import HearthkeyError
from hearthkey.ui.tasks import Tasks


class Work:
    """One piece of work that runs until it is told to end, and what was done."""

    def __init__(self) -> None:
        self.begun, self.go_on = threading.Event(), threading.Event()
        self.done: list[str] = []

    def first(self) -> None:
        """Run until told."""
        self.begun.set()
        self.go_on.wait(60)
        self.done.append("first")

    def waiting(self) -> None:
        """Wait behind it."""
        self.done.append("waiting")

    def last(self) -> None:
        """Say on which thread."""
        self.done.append(threading.current_thread().name)


def test_the_last_thing_is_done_on_the_lane_and_what_waits_is_dropped(qtbot: QtBot) -> None:
    """If this failed, closing during work would leave the household open, with its key in memory."""
    for _ in range(20):
        tasks, context, work = Tasks(), QObject(), Work()
        failed: list[HearthkeyError] = []
        tasks.lane(work.first, context, _nothing, failed.append)
        work.begun.wait(60)
        tasks.lane(work.waiting, context, _nothing, failed.append)
        ending = threading.Timer(0, work.go_on.set)
        ending.start()
        tasks.close(work.last)
        ending.join()
        assert work.done[0] == "first"
        assert work.done[-1].startswith("household lane")
        qtbot.waitUntil(partial(_is_home, tasks), timeout=60_000)
        assert failed == []


def _nothing(_none: None) -> None:
    """Nobody waits for it."""


def _is_home(tasks: Tasks) -> bool:
    return tasks.waiting == 0
