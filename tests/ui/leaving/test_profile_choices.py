"""The choices for profiles on the hand-over page: who is asked, what is kept, and what leaves then."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QAbstractButton
from pytestqt.qtbot import QtBot

from hearthkey.core.bundle import Form
from hearthkey.core.connect_choices import BY_CA, BY_GATEWAY, ConnectChoices
from hearthkey.ui.clipboard import SecretClipboard
from hearthkey.ui.pages.two_channels import Side
from hearthkey.ui.pages.ways_out import WayOut
from hearthkey.ui.theme.theme import Theme
from tests.ui.leaving.household import LAPTOP, Scene, waiting

PHONE = replace(LAPTOP, kind="iphone")
AWAY = ConnectChoices(by_itself=True, own_wifi=("attic", "kitchen"))


@pytest.fixture
def last() -> ConnectChoices:
    """What was chosen before."""
    return ConnectChoices()


@pytest.fixture
def phone(qtbot: QtBot, theme: Theme, tmp_path: Path, clipboard: SecretClipboard, last: ConnectChoices) -> Scene:
    """The page, open on a device that takes a profile."""
    made = Scene(theme, tmp_path, clipboard, replace(waiting(1), passes=(PHONE,)))
    made.errands.chosen_last = last
    qtbot.addWidget(made.page)
    made.page.show()
    made.page.open(PHONE.serial)
    return made


@pytest.mark.parametrize(("kind", "asked"), [("iphone", True), ("mac", True), ("android", False), ("windows", False)])
def test_only_who_takes_a_profile_is_asked(scene: Scene, kind: str, asked: bool) -> None:  # noqa: FBT001 - a parameter
    """If this failed, somebody would choose what no file of theirs ever says."""
    scene.page.left.rows.show_pass(replace(LAPTOP, kind=kind))
    assert scene.page.left.rows.choices.isVisible() is asked


@pytest.mark.parametrize("last", [AWAY])
def test_what_was_chosen_last_is_chosen_again_and_leaves(phone: Scene) -> None:
    """If this failed, the Wi-Fis would be typed for every phone, or something else would leave than is shown."""
    choices = phone.page.left.rows.choices
    assert (choices.wifis.text(), choices.wifis.isVisible()) == ("attic, kitchen", True)
    choices.wifis.setText("attic ,  O’Nest,")
    choices.signed.segments()[1].click()
    phone.page.left.rows.rows[WayOut.PROFILE].button.click()
    assert phone.errands.calls == [
        ("choose", ConnectChoices(by_itself=True, own_wifi=("attic", "O’Nest"), signer=BY_GATEWAY)),
        ("export", (PHONE.serial, Form.PROFILE, phone.picked.folder)),
    ]
    assert phone.page.panel.shown() is Side.SAVED


def test_connecting_by_itself_is_chosen_with_the_keyboard_and_says_what_is_readable(phone: Scene) -> None:
    """If this failed, somebody would give away what the home's network is called without having been told."""
    choices = phone.page.left.rows.choices
    assert not choices.wifis.isVisible()
    QTest.keyClick(choices.connects.taken(), Qt.Key.Key_Right)
    assert choices.wifis.isVisible()
    assert "readable in the profile" in choices.wifis.accessibleDescription()
    assert all(one.accessibleName() for one in choices.stops())
    assert phone.errands.asked("choose") == [ConnectChoices(by_itself=True)]


@pytest.mark.parametrize("last", [ConnectChoices(by_itself=True)])
@pytest.mark.parametrize("way", [WayOut.PROFILE, WayOut.TICKET, WayOut.STICK])
def test_a_name_that_no_wifi_has_is_told_in_place(phone: Scene, way: WayOut) -> None:
    """If this failed, a profile would leave that never knows when it is at home."""
    choices = phone.page.left.rows.choices
    choices.wifis.setText("x" * 40)
    phone.page.go(way)
    assert phone.errands.calls == []
    assert "32" in choices.wifis.accessibleDescription()
    QTest.keyClicks(choices.wifis, "y")
    assert "readable" in choices.wifis.accessibleDescription()
    choices.connects.segments()[0].click()
    assert phone.errands.asked("choose") == [ConnectChoices()]


@pytest.mark.parametrize("last", [ConnectChoices(signer=BY_CA)])
def test_a_choice_of_the_command_line_is_not_lost(phone: Scene) -> None:
    """If this failed, opening this page would take the CA's signature from all profiles that follow."""
    choices = phone.page.left.rows.choices
    assert (choices.signed.value(), choices.caution.isVisible()) == (BY_CA, True)
    choices.connects.segments()[1].click()
    assert phone.errands.asked("choose") == [ConnectChoices(by_itself=True, signer=BY_CA)]


def test_the_signature_of_the_ca_is_chosen_with_the_keyboard_and_says_what_it_takes(phone: Scene) -> None:
    """If this failed, the CA's signature could be chosen at the command line alone, or without its caution."""
    choices = phone.page.left.rows.choices
    assert not choices.caution.isVisible()
    choices.signed.segments()[0].setFocus()
    for _step in range(2):
        QTest.keyClick(choices.signed, Qt.Key.Key_Right)
    assert phone.errands.asked("choose")[-1] == ConnectChoices(signer=BY_CA)
    assert "household has to be open" in choices.caution.text()
    assert choices.caution.isVisible()
    choices.signed.segments()[0].click()
    assert not choices.caution.isVisible()


@pytest.mark.parametrize("last", [AWAY])
@pytest.mark.parametrize(("wide", "scale"), [(640, 1.0), (1280, 2.0), (1280, 1.0)])
def test_no_choice_is_cut(qtbot: QtBot, theme: Theme, phone: Scene, wide: int, scale: float) -> None:
    """If this failed, the words of a choice would be cut in a small window or with large type."""
    theme.choose("lamp", scale)
    phone.page.resize(wide, 718)

    def fits(one: QAbstractButton) -> bool:
        return one.width() >= one.sizeHint().width()

    choices = phone.page.left.rows.choices
    every = [*choices.connects.segments(), *choices.signed.segments()]
    qtbot.waitUntil(lambda: all(map(fits, every)))
    assert phone.page.width() == wide


def test_what_is_known_to_go_wrong_stands_beside(phone: Scene) -> None:
    """If this failed, the householder would meet a trap that is written down, with a relative looking on."""
    told = phone.page.panel.rest.text()
    assert phone.errands.last is not None
    traps = phone.errands.last.kinds.of("iphone").traps()
    assert traps
    assert all(trap in told for trap in traps)
    phone.page.panel.rest.warn(())
    assert not any(trap in phone.page.panel.rest.text() for trap in traps)


@pytest.mark.parametrize("last", [ConnectChoices(by_itself=True)])
def test_what_was_taken_back_is_shown_and_what_is_typed_stays(phone: Scene) -> None:
    """If this failed, Ctrl+Z would change what the next profile says and not what is shown; or eat half a name."""
    choices, last = phone.page.left.rows.choices, phone.errands.last
    assert last is not None
    QTest.keyClicks(choices.wifis, "att")
    phone.page.show_snapshot(last)
    assert choices.wifis.text() == "att"
    phone.errands.chosen_last = ConnectChoices(signer=BY_GATEWAY)
    phone.page.show_snapshot(last)
    assert choices.signed.value() == BY_GATEWAY
    assert not choices.wifis.isVisible()
    assert phone.errands.calls == []
