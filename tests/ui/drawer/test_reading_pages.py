"""Diary, household, settings, help."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtTest import QAbstractItemModelTester, QTest
from pytestqt.qtbot import QtBot

from hearthkey.ui.drawer.diary_model import DiaryModel
from hearthkey.ui.drawer.diary_page import DiaryPage
from hearthkey.ui.drawer.help_page import HelpPage
from hearthkey.ui.drawer.help_words import HELP
from hearthkey.ui.drawer.settings_page import SettingsPage
from hearthkey.ui.preferences import Preferences
from hearthkey.ui.theme.signs import Sign
from hearthkey.ui.theme.theme import Theme
from tests.ui.drawer.conftest import Room
from tests.ui.drawer.household import FakeErrands
from tests.ui.practice import DIARY, NOW, entries


def sentences(model: DiaryModel) -> list[str]:
    """What the rows say."""
    return [str(model.data(model.index(row))) for row in range(model.rowCount())]


def test_the_diary_reads_newest_first(room: Room, theme: Theme, errands: FakeErrands) -> None:
    """Broken: one has to scroll to see what was done a minute ago."""
    page = DiaryPage(theme, errands)
    room.open(page)
    assert sentences(page.model) == [one.sentence for one in reversed(DIARY)]
    assert page.chain.text() == "The chain holds. 4 entries, each sealed to the last."
    assert page.sign.isHidden()


def test_a_broken_chain_is_said_and_what_it_means(room: Room, theme: Theme, errands: FakeErrands) -> None:
    """Broken: somebody altered the diary and the page does not say so."""
    page = DiaryPage(theme, errands)
    room.open(page)
    assert errands.last is not None
    errands.show(replace(errands.last, diary_misfit=3))
    assert page.chain.text().startswith("The diary does not fit together from entry 3 on")
    assert page.sign.sign is Sign.DUE


def test_search_finds_all_words_in_sentence_or_date(
    room: Room, theme: Theme, errands: FakeErrands, qtbot: QtBot
) -> None:
    """Broken: the entry about one device cannot be found among thousands."""
    page = DiaryPage(theme, errands)
    room.open(page)
    QTest.keyClicks(page.line, "OLD stopped")
    qtbot.waitUntil(lambda: page.model.rowCount() == 1)
    assert page.line.accessibleDescription() == "1 entry found"
    page.line.setText("apr 2026")
    qtbot.waitUntil(lambda: sentences(page.model)[0].startswith("Ines’s old phone was revoked"))
    page.line.setText("")
    qtbot.waitUntil(lambda: page.model.rowCount() == 4)


def test_new_entries_come_in_front_without_a_reset(qtbot: QtBot) -> None:
    """Broken: whoever reads an old entry loses the place with every new one."""
    model = DiaryModel()
    tester = QAbstractItemModelTester(model, QAbstractItemModelTester.FailureReportingMode.Warning)
    assert tester.model() is model
    model.show_entries(DIARY[:3])
    reset: list[None] = []
    model.modelReset.connect(lambda: reset.append(None))
    with qtbot.waitSignal(model.rowsInserted):
        model.show_entries(DIARY)
    assert not reset
    assert sentences(model)[0] == DIARY[3].sentence
    model.search("revoked")
    model.show_entries(DIARY[:2])
    assert sentences(model) == []


def test_copying_takes_the_chosen_entry_or_all(room: Room, theme: Theme, errands: FakeErrands) -> None:
    """Broken: nothing of the diary can be sent to somebody who helps."""
    page = DiaryPage(theme, errands)
    room.open(page)
    page.copy_button.click()
    assert len(QGuiApplication.clipboard().text().splitlines()) == 4
    page.list.setCurrentIndex(page.model.index(1))
    page.list.setFocus()
    QTest.keyClick(page.list, Qt.Key.Key_C, Qt.KeyboardModifier.ControlModifier)
    assert QGuiApplication.clipboard().text().endswith("it was lost or stolen (keyCompromise).")


def test_entries_are_whole_at_any_size(room: Room, theme: Theme, errands: FakeErrands, qtbot: QtBot) -> None:
    """Broken: long sentences are cut off in the list."""
    page = DiaryPage(theme, errands)
    room.open(page)
    first = page.model.index(0)
    qtbot.waitUntil(lambda: page.list.visualRect(first).height() > 0)
    small = page.list.visualRect(first).height()
    theme.choose("paper", 2.0)
    qtbot.waitUntil(lambda: page.list.visualRect(first).height() > 1.5 * small)
    assert page.list.visualRect(first).width() <= page.list.viewport().width()


def test_ten_thousand_entries_open_and_scroll(room: Room, theme: Theme, errands: FakeErrands, qtbot: QtBot) -> None:
    """Broken: the diary of many years holds the window up, or its end cannot be reached."""
    begin = NOW - timedelta(days=5000)
    many = entries(*((begin + timedelta(hours=n), "stop", f"Ines’s phone was stopped, {n}.") for n in range(10_000)))
    assert errands.last is not None
    errands.show(replace(errands.last, diary=many))
    page = DiaryPage(theme, errands)
    room.open(page)
    last = page.model.index(page.model.rowCount() - 1)
    assert page.model.rowCount() == 10_000
    page.list.scrollTo(page.model.index(60))
    page.list.setCurrentIndex(last)
    qtbot.waitUntil(lambda: page.list.visualRect(last).isValid(), timeout=20_000)
    assert page.model.entry(last.row()).number == 1


@pytest.fixture
def applied() -> list[Preferences]:
    """What took effect."""
    return []


@pytest.fixture
def settings(room: Room, theme: Theme, applied: list[Preferences]) -> SettingsPage:
    """The settings, open in the drawer."""
    page = SettingsPage(theme, Preferences(), Path("/home/ines/data"), applied.append)
    room.open(page)
    return page


def test_settings_take_effect_at_once(settings: SettingsPage, applied: list[Preferences]) -> None:
    """Broken: a choice waits for a button that is not there."""
    settings.look.take("lamp")
    settings.type_size.segments()[2].click()
    settings.idle.segments()[0].click()
    assert applied == [
        Preferences("lamp", 1.0, 10),
        Preferences("lamp", 1.5, 10),
        Preferences("lamp", 1.5, 5),
    ]


def test_settings_by_keyboard(settings: SettingsPage, applied: list[Preferences], qtbot: QtBot) -> None:
    """Broken: larger type can be had with a mouse only, by whoever cannot see where it points."""
    settings.type_size.segments()[0].setFocus()
    with qtbot.waitSignal(settings.changed) as told:
        QTest.keyClick(settings.type_size.segments()[0], Qt.Key.Key_Right)
    assert told.args == [Preferences(scale=1.25)]
    assert applied == [Preferences(scale=1.25)]


def test_showing_preferences_gives_out_nothing(settings: SettingsPage, applied: list[Preferences]) -> None:
    """Broken: loading settings writes them again, or shows others than hold."""
    settings.show_preferences(Preferences("contrast-dark", 2.0, 30))
    assert settings.preferences() == Preferences("contrast-dark", 2.0, 30)
    assert applied == []


def test_the_data_folder_is_named_and_opened(room: Room, theme: Theme, qtbot: QtBot) -> None:
    """Broken: nobody finds what has to be copied to be safe."""
    shown: list[Path] = []
    page = SettingsPage(theme, Preferences(), Path("/home/ines/data"), lambda _c: None, show_folder=shown.append)
    room.open(page)
    page.folder_button.click()
    assert shown == [Path("/home/ines/data")]
    with qtbot.waitSignal(page.household):
        page.household_button.click()


@pytest.mark.parametrize("spot", HELP)
def test_each_spot_has_help(spot: str, room: Room, theme: Theme) -> None:
    """Broken: F1 tells about something else, or a whole book."""
    page = HelpPage(theme)
    page.show_spot(spot)
    room.open(page)
    told = [line.text() for line in page.lines if line.isVisible()]
    assert page.title.text() == HELP[spot].title
    assert 3 <= len(told) <= 8
    assert page.legend.isVisible() == (spot == "board")
    assert page.roll.hasFocus()


def test_help_teaches_the_folded_scale(theme: Theme, qtbot: QtBot) -> None:
    """Broken: a first-time reader takes a short line in the years for a short time."""
    page = HelpPage(theme)
    qtbot.addWidget(page)
    assert "The scale folds" in page.roll.accessibleDescription()


def test_an_unknown_spot_gets_the_sheet(theme: Theme, qtbot: QtBot) -> None:
    """Broken: F1 shows nothing where nobody wrote about a spot."""
    page = HelpPage(theme)
    qtbot.addWidget(page)
    page.show_spot("attic")
    assert page.spot == "board"


def test_help_is_scrolled_by_keyboard(room: Room, theme: Theme) -> None:
    """Broken: the legend cannot be reached without a mouse."""
    page = HelpPage(theme)
    room.open(page)
    QTest.keyClick(page.roll, Qt.Key.Key_End)
    bar = page.roll.verticalScrollBar()
    assert bar.value() == bar.maximum() > 0
    QTest.keyClick(page.roll, Qt.Key.Key_Home)
    assert bar.value() == 0


def test_the_diary_tells_wall_clock_time() -> None:
    """Broken: entries stand at hours when nobody was awake."""
    model = DiaryModel()
    at = datetime(2026, 5, 12, 8, 0, tzinfo=UTC)
    model.show_entries(entries((at, "stop", "Ines’s phone was stopped.")))
    assert f"{at.astimezone():%H:%M}" in str(model.data(model.index(0), Qt.ItemDataRole.AccessibleTextRole))
