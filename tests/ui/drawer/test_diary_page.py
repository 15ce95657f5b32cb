"""The diary's page: looking something up, whose entries, and taking it along."""

from __future__ import annotations

import json
from collections.abc import Callable
from dataclasses import replace
from datetime import timedelta
from pathlib import Path

import pytest
from PySide6.QtCore import QObject, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QWidget
from pytestqt.qtbot import QtBot

from hearthkey.core.diary_search import spots
from hearthkey.core.errors import Unavailable
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.drawer.diary_model import DiaryModel
from hearthkey.ui.drawer.diary_page import DiaryPage
from hearthkey.ui.tasks import Failed, Then
from hearthkey.ui.theme.theme import Theme
from tests.ui.drawer.conftest import Room
from tests.ui.drawer.household import FakeErrands
from tests.ui.practice import DIARY, NOW, PASSES, entries


class Writing(FakeErrands):
    """Keeps what would be written."""

    def __init__(self) -> None:
        super().__init__()
        self.files: dict[str, bytes] = {}

    def write_diary(
        self, folder: Path, name: str, make: Callable[[], bytes], context: QObject, then: Then[Path], failed: Failed
    ) -> None:
        """Keep the file."""
        if not self._fails("write_diary", context, failed):
            self.files[name] = make()
            then(folder / name)


@pytest.fixture
def writing() -> Writing:
    """Errands that keep what is written."""
    return Writing()


@pytest.fixture
def page(room: Room, theme: Theme, writing: Writing) -> DiaryPage:
    """The diary, open."""

    def pick(parent: QWidget, title: str, start: Path, then: Callable[[Path], None]) -> None:
        del parent, title
        then(start / "stick")

    made = DiaryPage(theme, writing, Path("/media"), pick=pick)
    room.open(made)
    return made


def seen(writing: Writing) -> Snapshot:
    """What the window sees."""
    assert writing.last is not None
    return writing.last


def numbers(page: DiaryPage) -> list[int]:
    """Which entries are shown, oldest first."""
    return [one.number for one in page.model.shown()]


def test_whose_entries_are_chosen_from_those_that_are_named(page: DiaryPage) -> None:
    """Broken: the filter offers people who are nowhere in the diary, or takes one for another."""
    offered = [page.whose.itemText(row) for row in range(page.whose.count())]
    assert offered == ["Everybody", "Ines’s old phone", "Tomasz’s laptop", "Tomasz’s old phone"]
    page.whose.setCurrentIndex(3)
    assert numbers(page) == [2]
    page.whose.setCurrentIndex(0)
    assert numbers(page) == [1, 2, 3, 4]


def test_a_person_s_entries_are_those_of_all_their_devices(page: DiaryPage, writing: Writing) -> None:
    """Broken: what happened to somebody has to be gathered from device to device."""
    told = ((one.at, one.verb, one.sentence) for one in DIARY)
    writing.show(replace(seen(writing), diary=entries(*told, (NOW, "sheet", "Tomasz reads Polish."))))
    page.whose.take("Tomasz/")
    assert numbers(page) == [2, 4, 5]
    writing.show(replace(seen(writing), diary=DIARY))
    assert page.whose.currentText() == "Everybody"
    assert numbers(page) == [1, 2, 3, 4]


def test_f3_walks_through_what_was_found_without_taking_the_focus(page: DiaryPage) -> None:
    """Broken: the next place has to be looked for with the eyes, or typing on is interrupted."""
    page.line.setFocus()
    QTest.keyClicks(page.line, "tomasz's")
    QTest.keyClick(page.line, Qt.Key.Key_Return)
    assert page.list.currentIndex().row() == 0
    QTest.keyClick(page.line, Qt.Key.Key_F3)
    assert page.model.entry(page.list.currentIndex().row()).number == 2
    QTest.keyClick(page.line, Qt.Key.Key_F3)
    assert page.model.entry(page.list.currentIndex().row()).number == 4
    QTest.keyClick(page.line, Qt.Key.Key_F3, Qt.KeyboardModifier.ShiftModifier)
    assert page.model.entry(page.list.currentIndex().row()).number == 2
    page.line.setText("nothing like that")
    page.find_next(1)
    assert page.model.rowCount() == 0


def test_found_letters_are_marked_where_they_stand() -> None:
    """Broken: the line under what was found stands under other letters where an accent came before."""
    assert spots("Große Ines, ines", ("ines", "gross")) == [(0, 4), (6, 4), (12, 4)]
    assert spots("Łódź’s", ("dz's",)) == [(2, 4)]


def test_what_is_shown_is_written_as_text_and_for_machines(page: DiaryPage, writing: Writing) -> None:
    """Broken: an export holds other entries than the list, or the codes change with the language."""
    page.line.setText("old phone")
    page.find_next(1)
    page.write(json_lines=False)
    page.write(json_lines=True)
    (text, text_data), (lines, lines_data) = writing.files.items()
    assert (text, lines) == (
        "quince-cottage-diary-2026-05-12-093000.txt",
        "quince-cottage-diary-2026-05-12-093000.jsonl",
    )
    assert text_data.decode().splitlines()[:4] == [
        "The diary of Quince Cottage (practice)",
        "2 entries.",
        "The chain holds.",
        "",
    ]
    assert [json.loads(line)["verb"] for line in lines_data.splitlines()] == ["stop", "revoke"]
    assert "It lies in /media/stick/stick as" in page.outcome.text()


def test_a_file_that_could_not_be_written_is_said(page: DiaryPage, writing: Writing) -> None:
    """Broken: somebody carries an empty stick away."""
    writing.troubles["write_diary"] = Unavailable("disk-full", path="/media/stick")
    page.write(json_lines=True)
    assert "full" in page.outcome.text()


def test_a_broken_chain_leads_to_the_sealed_copies(page: DiaryPage, writing: Writing, qtbot: QtBot) -> None:
    """Broken: the page says that something is missing and not where it still stands."""
    assert page.copies_button.isHidden()
    writing.show(replace(seen(writing), diary_misfit=3))
    assert "The newest sealed copy still has what stood there" in page.chain.text()
    with qtbot.waitSignal(page.copies):
        page.copies_button.click()


def test_ten_thousand_entries_are_taken_apart_once(monkeypatch: pytest.MonkeyPatch) -> None:
    """Broken: every letter that is typed costs as much as reading the whole diary anew."""
    begin = NOW - timedelta(days=5000)
    told = ((begin + timedelta(hours=n), "stop", f"{PASSES[n % 9].title} was stopped, {n}.") for n in range(10_000))
    model = DiaryModel()
    model.show_entries(entries(*told), PASSES)
    model.choose(person="Odile")
    model.search("stopped")

    def again(_text: str) -> str:
        raise AssertionError

    monkeypatch.setattr("hearthkey.ui.drawer.diary_model.folded", again)
    model.search("stopped 77")
    model.search("stopped 777")
    assert {one.sentence.split("’")[0] for one in model.shown()} == {"Odile"}
