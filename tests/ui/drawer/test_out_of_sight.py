"""A page that nobody sees works nothing out; a low page keeps nothing from what is on it."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

import pytest
from pytestqt.qtbot import QtBot

from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.drawer.combo import Combo
from hearthkey.ui.drawer.device_page import DevicePage
from hearthkey.ui.drawer.diary_page import DiaryPage
from hearthkey.ui.drawer.enrol_page import EnrolPage
from hearthkey.ui.drawer.page import Page
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.ways import Ways
from tests.ui.drawer.conftest import Room
from tests.ui.drawer.household import FakeErrands
from tests.ui.practice import NOW, made_pass, snapshot


def test_a_page_out_of_sight_catches_up_when_it_is_opened(room: Room, theme: Theme, errands: FakeErrands) -> None:
    """Every look would be shown on every page there is, or a page would open on what was."""
    page, seen = Page(theme, "Somewhere"), list[Snapshot]()
    page.follow(errands.seen, seen.append)
    looks = [snapshot(NOW + timedelta(minutes=number)) for number in range(4)]
    errands.show(looks[0])
    errands.show(looks[1])
    assert seen == []
    room.open(page)
    assert seen == [looks[1]]
    errands.show(looks[2])
    assert seen == looks[1:3]
    room.drawer.shut()
    errands.show(looks[3])
    assert seen == looks[1:3]
    room.open(page)
    assert seen == looks[1:4]


@pytest.mark.parametrize("kind", ["device", "enrol", "diary"])
def test_large_pages_work_nothing_out_while_they_are_hidden(
    theme: Theme, errands: FakeErrands, ways: Ways, kind: str, monkeypatch: pytest.MonkeyPatch, qtbot: QtBot
) -> None:
    """With ten thousand devices every look would stop the window for pages that nobody sees."""
    page: Page = DiaryPage(theme, errands)
    if kind != "diary":
        page = (DevicePage if kind == "device" else EnrolPage)(theme, errands, ways)
    qtbot.addWidget(page)
    shown: list[Snapshot] = []
    monkeypatch.setattr(page, "_show", shown.append)
    assert errands.last is not None
    errands.show(replace(errands.last, locked=True))
    assert shown == []
    page.show()
    assert len(shown) == 1


def test_people_who_came_meanwhile_are_offered(room: Room, theme: Theme, errands: FakeErrands, ways: Ways) -> None:
    """A device could not be made for somebody who came while the page was put aside."""
    page = EnrolPage(theme, errands, ways)
    room.open(page)
    room.drawer.shut()
    assert errands.last is not None
    came = made_pass("Casimir", "phone", made=NOW, ends=NOW + timedelta(days=700))
    errands.show(replace(errands.last, passes=(*errands.last.passes, came)))
    room.open(page)
    assert "Casimir" in [one.text() for one in page.form.whose.few.segments()]


def test_ten_thousand_entries_are_offered_and_found(theme: Theme, qtbot: QtBot) -> None:
    """A list of all devices would measure each of them before the first is seen."""
    combo = Combo(theme, "Which one?")
    qtbot.addWidget(combo)
    combo.offer([(f"{number}", f"device {number}") for number in range(10_000)])
    assert combo.key() == ""
    combo.take("7777")
    assert (combo.key(), combo.currentText()) == ("7777", "device 7777")
    wide = combo.sizeHint().width()
    combo.offer([("a", "one"), ("b", "two")])
    assert combo.key() == ""
    assert combo.sizeHint().width() < wide
    combo.take("7777")
    assert combo.currentIndex() == -1


@pytest.mark.parametrize(("high", "rolls"), [(612, False), (180, True)])
def test_last_row_scrolls_on_a_low_page(
    room: Room, theme: Theme, errands: FakeErrands, ways: Ways, qtbot: QtBot, high: int, *, rolls: bool
) -> None:
    """In a low window a page's last row would leave its content no room."""
    page = DevicePage(theme, errands, ways)
    assert errands.last is not None
    page.show_device(errands.last.passes[0].identity)
    room.open(page)
    page.stop_button.setFocus()
    room.resize(640, high)
    assert page.content.isAncestorOf(page.stop_button) is rolls
    qtbot.waitUntil(lambda: page.roll.height() > 0.6 * high)
    assert page.stop_button.hasFocus()
    room.resize(640, 612)
    assert not page.content.isAncestorOf(page.stop_button)
    assert page.stop_button.isVisible()
    assert page.stop_button.hasFocus()
