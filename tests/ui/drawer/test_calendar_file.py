"""The calendar file of the day list: what the family's calendar reads, and reads again."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from datetime import timedelta
from pathlib import Path

import pytest
from icalendar import Calendar
from PySide6.QtCore import QObject
from PySide6.QtWidgets import QWidget

from hearthkey.adapters.files import DiskFiles
from hearthkey.core.errors import Unavailable
from hearthkey.ui.drawer.calendar_file import CalendarFile
from hearthkey.ui.drawer.days_page import days
from hearthkey.ui.sight import sight
from hearthkey.ui.tasks import Failed, Then
from hearthkey.ui.theme.theme import Theme
from tests.ui.drawer.conftest import Room
from tests.ui.drawer.household import FakeErrands


class Writing(FakeErrands):
    """Errands that write on the real disk, as the app does, in the same moment."""

    def write_dates(
        self, file: Path, make: Callable[[], bytes], context: QObject, then: Then[Path], failed: Failed
    ) -> None:
        """Write the file."""
        if not self._fails("write_dates", context, failed):
            then(DiskFiles().write(file.parent, file.name, make()))


@pytest.fixture
def writing() -> Writing:
    """A household whose files are real."""
    return Writing()


@pytest.fixture
def foot(theme: Theme, writing: Writing, tmp_path: Path, room: Room) -> CalendarFile:
    """The button with its dialog answered at once: the file that it proposes."""

    def pick(_parent: QWidget, _title: str, proposed: Path, _kind: str, then: Callable[[Path], None]) -> None:
        then(proposed)

    made = CalendarFile(theme, writing, tmp_path, pick=pick)
    made.setParent(room)
    return made


def _events(folder: Path) -> dict[str, str]:
    (path,) = folder.iterdir()
    found = Calendar.from_ical(path.read_bytes()).walk("VEVENT")
    return {str(event["uid"]): str(event["summary"]) for event in found}


def test_every_day_of_the_list_is_in_the_file_and_writing_it_again_updates_it(
    foot: CalendarFile, writing: Writing, tmp_path: Path
) -> None:
    """Broken: the calendar misses a day, keeps one that is gone, or shows every day twice after the second writing."""
    seen = writing.last
    assert seen is not None
    foot.button.click()
    first, listed = _events(tmp_path), days(seen)
    assert listed is not None
    assert len(first) == len(sight(seen).duties or ())
    assert (tmp_path / "quince-cottage-dates.ics").exists()
    assert "It lies in" in foot.outcome.text()
    writing.show(replace(seen, at=seen.at + timedelta(days=1), passes=seen.passes[1:]))
    foot.button.click()
    again = _events(tmp_path)
    assert again.keys() < first.keys()
    assert {key: first[key] for key in again} == again


def test_a_file_that_could_not_be_written_is_said(foot: CalendarFile, writing: Writing) -> None:
    """Broken: the family trusts a calendar that was never written."""
    writing.troubles["write_dates"] = Unavailable("disk-full", path="/media/stick")
    foot.button.click()
    assert "full" in foot.outcome.text()
