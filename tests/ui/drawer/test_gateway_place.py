"""Saying where the gateway's files go: fields, first contact, a changed key, and going back on it."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget
from pytestqt.qtbot import QtBot

from hearthkey.core.errors import Unavailable
from hearthkey.core.target import By, HostKey, Target
from hearthkey.ui.drawer.gateway_place import GatewayPlacePage
from hearthkey.ui.gallery.gateway_states import DOOR, KEY
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.ways import Ways
from tests.ui.drawer.conftest import Room
from tests.ui.drawer.gateway_errands import GatewayFake

OTHER_KEY = HostKey("ssh-ed25519 AAAAC3NzaC1lZDI1NTE5AAAAIAAA", "SHA256:qqqq")


def folder(_parent: QWidget, _title: str, _start: Path, then: Callable[[Path], None]) -> None:
    """Somebody chooses the stick."""
    then(Path("/media/ines/stick"))


def page_in(state: str, theme: Theme, room: Room, ways: Ways) -> tuple[GatewayPlacePage, GatewayFake]:
    """The page, open."""
    errands = GatewayFake(state)
    page = GatewayPlacePage(theme, errands, ways, Path("/home/ines"), pick=folder)
    room.open(page)
    return page, errands


def type_door(page: GatewayPlacePage) -> None:
    """Fill the fields in as somebody would."""
    for line, text in (
        (page.fields.host, "home.quince.example"),
        (page.fields.user, "ines"),
        (page.fields.folder, "door"),
        (page.fields.reload, "sudo /usr/local/bin/read-lists"),
    ):
        QTest.keyClicks(line, text)


def asked(errands: GatewayFake) -> list[object]:
    """What was asked, by name."""
    return [one[0] for one in errands.asked]


def test_first_contact_is_compared_by_a_person(theme: Theme, room: Room, ways: Ways, qtbot: QtBot) -> None:
    """Broken: whoever sits in between is trusted for good."""
    page, errands = page_in("no-target", theme, room, ways)
    type_door(page)
    QTest.keyClick(page.fields.reload, Qt.Key.Key_Return)
    assert asked(errands) == ["host_key"]
    assert page.card.isVisible()
    assert not page.fields.isVisible()
    assert page.card.shown.value().startswith("SHA256: bbXp uKG6 zhzd")
    assert page.card.command.value() == "ssh-keygen -l -f /etc/ssh/ssh_host_ed25519_key.pub"
    assert not page.card.alarm.isVisible()
    assert QApplication.focusWidget() is page.card.shown
    with qtbot.waitSignal(ways.gateway):
        page.card.same_button.click()
    assert errands.asked[-1] == ("choose_target", DOOR, KEY)


def test_another_key_keeps_nothing(theme: Theme, room: Room, ways: Ways) -> None:
    """Broken: an answer of no is taken for a yes, or everything has to be typed anew."""
    page, errands = page_in("no-target", theme, room, ways)
    type_door(page)
    page.go_on()
    page.card.other_button.click()
    assert asked(errands) == ["host_key"]
    assert page.fields.isVisible()
    assert page.fields.host.text() == "home.quince.example"
    assert "Nothing was sent and nothing was kept." in page.line.text()


def test_a_changed_key_stops_with_its_sentence(theme: Theme, room: Room, ways: Ways) -> None:
    """Broken: a changed key is shown as calmly as a new one."""
    page, errands = page_in("in-force", theme, room, ways)
    errands.key = OTHER_KEY
    page.go_on()
    assert asked(errands) == ["host_key"]
    assert "shows another host key than before: SHA256:qqqq" in page.card.alarm.text()


def test_a_known_key_is_not_asked_about_again(theme: Theme, room: Room, ways: Ways) -> None:
    """Broken: people learn to press "It is the same" without looking."""
    page, errands = page_in("in-force", theme, room, ways)
    page.fields.reload.setText("")
    page.go_on()
    assert asked(errands) == ["host_key", "choose_target"]


def test_what_is_typed_after_the_comparison_is_compared_anew(theme: Theme, room: Room, ways: Ways) -> None:
    """Broken: the key of one host is pinned to another."""
    page, errands = page_in("no-target", theme, room, ways)
    type_door(page)
    page.go_on()
    room.drawer.shut()
    room.open(page)
    assert page.fields.isVisible()
    QTest.keyClicks(page.fields.host, ".org")
    page.go_on()
    assert asked(errands) == ["host_key", "host_key"]
    assert errands.asked[-1] == ("host_key", Target(By.SSH, "door", "home.quince.example.org", user="ines",
                                                    reload="sudo /usr/local/bin/read-lists"))  # fmt: skip


def test_a_folder_is_chosen_without_a_key(theme: Theme, room: Room, ways: Ways, qtbot: QtBot) -> None:
    """Broken: who has no ssh can carry nothing."""
    page, errands = page_in("no-target", theme, room, ways)
    page.fields.by.segments()[1].click()
    assert not page.fields.host.isVisible()
    page.fields.choose.click()
    with qtbot.waitSignal(ways.gateway):
        page.go_on_button.click()
    assert errands.asked == [("choose_target", Target(By.FOLDER, "/media/ines/stick"), None)]


def test_each_way_keeps_its_own_folder(theme: Theme, room: Room, ways: Ways) -> None:
    """Broken: the stick's path is sent to the gateway as a folder there."""
    page, _ = page_in("in-force", theme, room, ways)
    page.fields.by.segments()[1].click()
    assert page.fields.folder.text() == ""
    page.fields.choose.click()
    page.fields.by.segments()[0].click()
    assert page.fields.folder.text() == "door"


@pytest.mark.parametrize(
    ("field", "text", "told"),
    [
        ("host", "", "needs a name or an address"),
        ("host", "-oProxyCommand=x", "no host that ssh could take"),
        ("port", "22a", "22a is no port"),
        ("port", "70000", "70000 is no port"),
        ("user", "a b", "no user name that ssh could take"),
        ("folder", "", "need a folder to go to"),
    ],
)
def test_what_does_not_fit_is_told_at_its_field(
    field: str, text: str, told: str, theme: Theme, room: Room, ways: Ways
) -> None:
    """Broken: somebody reads a sentence at the bottom and looks for the field."""
    page, errands = page_in("in-force", theme, room, ways)
    line = getattr(page.fields, field)
    line.setText(text)
    page.go_on()
    assert told in line.accessibleDescription()
    assert QApplication.focusWidget() is line
    assert errands.asked == []


def test_a_server_that_does_not_answer_is_told(theme: Theme, room: Room, ways: Ways) -> None:
    """Broken: the page waits for ever."""
    page, errands = page_in("in-force", theme, room, ways)
    errands.troubles["host_key"] = Unavailable("gateway-silent", where="home.quince.example", seen="nothing")
    page.go_on()
    assert "has stopped answering" in page.line.text()
    assert page.go_on_button.isEnabled()
    assert not page.fields.host.isReadOnly()


def test_delivering_nowhere_is_asked_once_more(theme: Theme, room: Room, ways: Ways, qtbot: QtBot) -> None:
    """Broken: one slip, and lists are not delivered any more."""
    page, errands = page_in("in-force", theme, room, ways)
    page.forget_button.click()
    assert errands.asked == []
    assert QApplication.focusWidget() is page.forget_no
    page.forget_no.click()
    assert page.fields.isVisible()
    page.forget_button.click()
    with qtbot.waitSignal(ways.gateway):
        page.forget_yes.click()
    assert errands.asked == [("forget_target",)]
    assert page.fields.host.text() == ""


def test_what_was_typed_survives_a_snapshot(theme: Theme, room: Room, ways: Ways) -> None:
    """Broken: the app looks at the household, and what was typed is gone."""
    page, errands = page_in("no-target", theme, room, ways)
    QTest.keyClicks(page.fields.host, "home")
    assert errands.last is not None
    errands.show(errands.last)
    assert page.fields.host.text() == "home"
