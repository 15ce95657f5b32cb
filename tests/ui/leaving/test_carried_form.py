"""What is dragged, or lies on a stick, is what the device can open."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest
from pytestqt.qtbot import QtBot

from hearthkey.core.bundle import Form
from hearthkey.ui.clipboard import SecretClipboard
from hearthkey.ui.pages.ways_out import WayOut
from hearthkey.ui.theme.theme import Theme
from tests.ui.leaving.household import LAPTOP, STICK, Scene
from tests.ui.leaving.test_drag import Hand
from tests.ui.practice import snapshot

FITTING = [
    ("iphone-older", Form.PROFILE),
    ("mac-older", Form.PROFILE),
    ("android-older", Form.PKCS12),
    ("windows", Form.PKCS12),
    ("linux", Form.PKCS12),
]
"""Kinds whose importer takes profiles alone, and kinds that open a container."""


@pytest.mark.parametrize(("kind", "form"), FITTING)
def test_a_stick_holds_what_the_device_opens(
    qtbot: QtBot, theme: Theme, tmp_path: Path, clipboard: SecretClipboard, kind: str, form: Form
) -> None:
    """Broken if it fails: the phone calls the container that was carried to it a wrong password."""
    one = replace(LAPTOP, kind=kind)
    scene = Scene(theme, tmp_path, clipboard, snapshot(passes=(one,)))
    qtbot.addWidget(scene.page)
    scene.page.show()
    scene.page.open(one.serial)
    scene.page.go(WayOut.STICK)
    scene.page.panel.sticks.rows[0].click()
    assert scene.errands.asked("export") == [(one.serial, form, STICK.path)]


@pytest.mark.parametrize(("kind", "form"), FITTING)
def test_what_is_dragged_is_what_the_device_opens(
    qtbot: QtBot, theme: Theme, tmp_path: Path, kind: str, form: Form
) -> None:
    """Broken if it fails: a file dropped into a message cannot be opened where it arrives."""
    hand = Hand(qtbot, theme, tmp_path, replace(LAPTOP, kind=kind))
    hand.press()
    hand.move(4)
    assert [(LAPTOP.serial, form)] == [asked[:2] for asked in hand.errands.asked("export") if isinstance(asked, tuple)]
