"""Cycles are collected on the window's thread, and only there."""

from __future__ import annotations

import gc
import threading
import weakref
from collections.abc import Iterator

import pytest
from PySide6.QtCore import QObject
from pytestqt.qtbot import QtBot

from hearthkey.ui.collecting import ENOUGH, Collecting


class Knot:
    """Something that holds itself, and tells on which thread it was let go."""

    threads: list[str]

    def __init__(self, threads: list[str]) -> None:
        self.itself = self
        weakref.finalize(self, lambda: threads.append(threading.current_thread().name))


@pytest.fixture
def thawed() -> Iterator[None]:
    """The rest of the tests have their collector back."""
    yield
    gc.unfreeze()
    gc.enable()


def knots(threads: list[str]) -> None:
    """Make more of them than a collector that begins by itself would wait for."""
    for _ in range(3 * gc.get_threshold()[0]):
        Knot(threads)


def test_a_worker_lets_go_of_nothing_that_the_window_may_own(qtbot: QtBot, thawed: None) -> None:
    """A worker's thread would delete widgets, which ends the app."""
    assert thawed is None
    parent, threads = QObject(), list[str]()
    collecting = Collecting(lambda: True, parent)
    worker = threading.Thread(target=knots, args=(threads,), name="household lane")
    worker.start()
    worker.join()
    assert threads == []
    collecting.begin()
    worker = threading.Thread(target=knots, args=(threads,), name="household lane")
    worker.start()
    worker.join()
    qtbot.waitUntil(lambda: bool(threads))
    assert set(threads) == {threading.current_thread().name}


def test_everything_is_looked_through_once_in_a_while_and_only_at_rest(qtbot: QtBot, thawed: None) -> None:
    """What grew old in a cycle would stay for ever, or ten thousand devices on their way would hold the window up."""
    assert thawed is None
    del qtbot
    parent, threads, at_rest = QObject(), list[str](), [False]
    collecting = Collecting(lambda: at_rest[0], parent)
    old = Knot(threads)
    gc.collect(0)
    gc.collect(1)
    del old
    for _ in range(ENOUGH):
        kept = [[] for _ in range(2 * gc.get_threshold()[0])]  # type: ignore[var-annotated]  # anything that is tracked
        collecting.collect()
        del kept
    gc.collect(0)
    collecting.collect()
    assert threads == []
    at_rest[0] = True
    collecting.collect()
    assert len(threads) == 1
