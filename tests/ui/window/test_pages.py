"""Which page the window shows for what it sees."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from hearthkey.bootstrap import open_house
from hearthkey.core.household import FILE
from hearthkey.services.opening import Door
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.window import Window
from tests.ui.window.conftest import Opener

SHUT = [Door.KEYRING_LOCKED, Door.KEYRING_SILENT, Door.KEYRING_EMPTY, Door.KEYRING_ABSENT]


def seen(window: Window) -> Snapshot:
    """What the window last saw."""
    assert window.outside.errands.last is not None
    return window.outside.errands.last


def test_nobody_has_a_household_yet(opened: Opener, tmp_path: Path) -> None:
    """Broken if it fails: a new householder looks at an empty sheet."""
    window = opened(tmp_path / "new")
    assert window.pages.currentWidget() is window.founding
    assert not window.top.lost.isVisible()


def test_a_household_opens_on_its_sheet(window: Window) -> None:
    """Broken if it fails: the first key press goes nowhere."""
    assert window.pages.currentWidget() is window.sheet
    focus = QApplication.focusWidget()
    assert focus is not None
    assert window.board.isAncestorOf(focus)
    assert window.windowTitle() == "Quince Cottage (practice)"


@pytest.mark.parametrize("door", SHUT)
def test_a_shut_keyring_is_told_and_can_be_passed_by(window: Window, door: Door) -> None:
    """Broken if it fails: a closed keyring looks like a lost household, or keeps the householder from looking."""
    window.outside.errands.seen.emit(replace(seen(window), door=door, locked=True))
    assert window.pages.currentWidget() is window.closed
    window.closed.go_on.click()
    assert window.pages.currentWidget() is window.sheet


def test_a_second_copy_only_looks(opened: Opener, cottage: Path) -> None:
    """Broken if it fails: two copies of the app write to one household."""
    with open_house(cottage, place=FILE, writing=True):
        window = opened(cottage)
        assert seen(window).read_only
        assert window.pages.currentWidget() is window.closed
        window.closed.go_on.click()
        assert window.pages.currentWidget() is window.sheet
        assert not window.top.new_device.isEnabled()


def test_a_broken_diary_is_told_first(window: Window) -> None:
    """Broken if it fails: somebody alters the past and nobody hears of it."""
    window.outside.errands.seen.emit(replace(seen(window), diary_misfit=3))
    assert window.pages.currentWidget() is window.closed


def test_the_tray_leads_to_the_hand_over_page_and_back(window: Window, qtbot: QtBot) -> None:
    """Broken if it fails: a waiting bundle cannot be handed over from where it waits."""
    waiting = next(one for one in seen(window).passes if (one.person, one.device) == ("Tomasz", "laptop"))
    window.ways.hand_over.emit(waiting.serial)
    assert window.pages.currentWidget() is window.hand_over
    window.ways.back.emit()
    qtbot.waitUntil(lambda: window.pages.currentWidget() is window.sheet)
