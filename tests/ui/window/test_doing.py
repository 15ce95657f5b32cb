"""Stopping, taking it back, locking and closing, in the window and on the real household."""

from __future__ import annotations

import threading
from pathlib import Path

from PySide6.QtCore import QTimer
from pytestqt.qtbot import QtBot

from hearthkey.bootstrap import open_house
from hearthkey.core.errors import HearthkeyError
from hearthkey.core.household import FILE
from hearthkey.core.passes import Pass, State
from hearthkey.core.secret import Secret
from hearthkey.services import practice
from hearthkey.services.enrolling import EnrolRequest
from hearthkey.ui.preferences import Memory, Preferences
from hearthkey.ui.window import Window
from tests.ui.window.conftest import Opener


def give_up(error: HearthkeyError) -> None:
    """What nobody expects."""
    raise error


def unlocked(window: Window, qtbot: QtBot) -> None:
    """Open the CA key."""
    window.outside.errands.unlock(Secret(practice.PASSPHRASE), window, lambda _none: None, give_up)
    qtbot.waitUntil(lambda: window.outside.errands.last is not None and not window.outside.errands.last.locked)


def the_laptop(window: Window) -> Pass:
    """Tomasz's laptop, as the window sees it."""
    assert window.outside.errands.last is not None
    return next(one for one in window.outside.errands.last.passes if (one.person, one.device) == ("Tomasz", "laptop"))


def state(window: Window) -> State:
    """What it is now."""
    assert window.outside.errands.last is not None
    return the_laptop(window).state(window.outside.errands.last.at)


def test_a_stop_can_be_taken_back_from_the_footer(window: Window, qtbot: QtBot) -> None:
    """Broken if it fails: a slip at "lost or stolen" costs a search for the way back."""
    unlocked(window, qtbot)
    errands = window.outside.errands
    errands.preview_stop(
        the_laptop(window).identity, window, lambda plan: errands.stop(plan, window, None, give_up), give_up
    )
    qtbot.waitUntil(lambda: state(window) is State.STOPPED)
    assert "was stopped with revocation list" in window.footer.text()
    window.footer.undo_button.click()
    qtbot.waitUntil(lambda: state(window) is State.WAITING)
    assert "was taken back with revocation list" in window.footer.text()


def test_locking_is_shown(window: Window, qtbot: QtBot) -> None:
    """Broken if it fails: the window says open while the key is gone, or the other way round."""
    unlocked(window, qtbot)
    window.ways.lock.emit()
    qtbot.waitUntil(lambda: window.outside.errands.last is not None and window.outside.errands.last.locked)


def test_a_lane_that_hangs_leaves_the_window_alive(window: Window, qtbot: QtBot) -> None:
    """Broken if it fails: a keyring that does not answer freezes everything."""
    gate, beats = threading.Event(), []
    window.outside.tasks.lane(gate.wait, window, lambda _result: None, give_up)
    timer = QTimer(window, interval=1)
    timer.timeout.connect(lambda: beats.append(1))
    timer.start()
    qtbot.waitUntil(lambda: len(beats) > 5)
    window.ways.new_device.emit("")
    assert window.drawer.is_open
    gate.set()
    qtbot.waitUntil(lambda: window.outside.tasks.waiting == 0)


def test_closing_during_work_asks_nothing_and_loses_nothing(opened: Opener, cottage: Path, qtbot: QtBot) -> None:
    """Broken if it fails: a window that is closed at the wrong moment leaves half a device."""
    window = opened(cottage)
    unlocked(window, qtbot)
    window.outside.errands.enrol(EnrolRequest("Odile", "tablet", "linux"), window, None, give_up)
    window.close()
    with open_house(cottage, place=FILE, writing=True) as house:
        names = {(one.person, one.device) for one in house.register.passes()}
        assert house.register.loose_secrets() == []
        assert len(names) in {8, 9}
        assert all(house.register.sealed(one.serial) for one in house.register.passes() if one.handed_over is None)


def test_what_was_chosen_is_remembered(opened: Opener, cottage: Path) -> None:
    """Broken if it fails: every evening begins with the wrong size of type."""
    window = opened(cottage)
    window.resize(900, 640)
    window.outside.memory.keep(Preferences(theme="lamp", scale=1.25, idle_minutes=5))
    window.close()
    memory = Memory(cottage)
    assert memory.preferences() == Preferences(theme="lamp", scale=1.25, idle_minutes=5)
    assert not memory.place().isEmpty()


def test_the_window_only_arranges() -> None:
    """Broken if it fails: the window has begun to know things."""
    source = Path(__file__).parents[3] / "app" / "hearthkey" / "ui" / "window.py"
    assert len(source.read_text(encoding="utf-8").splitlines()) < 200
