"""The pages for parts and for copies say what lies in drawers and no longer does what it says."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from pathlib import Path

import pytest
from pytestqt.qtbot import QtBot

from hearthkey.core.keepsakes import Keepsakes, PaperNote, StopSetNote
from hearthkey.core.succession import Cause, Step, Succession
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.drawer.days_page import DaysPage
from hearthkey.ui.drawer.deputy_page import DeputyPage
from hearthkey.ui.drawer.sealed_page import SealedPage
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.ways import Ways
from tests.ui.drawer.household import FakeErrands


@pytest.fixture
def seen(errands: FakeErrands) -> Snapshot:
    """The household of the pictures, with nothing in its drawers."""
    snapshot = errands.last
    assert snapshot is not None
    assert snapshot.authority is not None
    assert snapshot.newest_list is not None
    known = Keepsakes(
        founded=snapshot.at - timedelta(days=9),
        papers=(),
        stop_set=None,
        parts=None,
        parts_fresh=False,
        authority=snapshot.authority,
        succession=None,
        list_number=14,
        list_since=snapshot.at,
        newcomer=None,
    )
    return replace(snapshot, keepsakes=known)


def test_a_stop_set_is_told_with_its_list(
    qtbot: QtBot, theme: Theme, ways: Ways, errands: FakeErrands, seen: Snapshot, tmp_path: Path
) -> None:
    """Broken if it fails: an old stick lies ready to let somebody in again, and the page looks as if all were well."""
    page = DeputyPage(theme, errands, ways, tmp_path)
    qtbot.addWidget(page)
    page.show_snapshot(seen)
    assert page.given.isHidden()
    known = seen.keepsakes
    assert known is not None
    told = []
    for base, newcomer in ((14, None), (14, seen.at), (12, None)):
        given = StopSetNote(seen.at, base, 40)
        page.show_snapshot(replace(seen, keepsakes=replace(known, stop_set=given, newcomer=newcomer)))
        told.append(page.given.text())
    assert not page.given.isHidden()
    assert "is of list 14, the newest one" in told[0]
    assert "does not know a device" in told[1]
    assert "is of list 12; list 14 is out since" in told[2]


def test_the_page_of_copies_says_whose_key_is_on_paper(
    qtbot: QtBot, theme: Theme, errands: FakeErrands, seen: Snapshot, tmp_path: Path
) -> None:
    """Broken if it fails: nobody learns before the day it is needed that the paper has the older key."""
    page = SealedPage(theme, errands, tmp_path)
    qtbot.addWidget(page)
    known = seen.keepsakes
    assert known is not None
    page.show_snapshot(seen)
    assert page.on_paper.text() == "The key was not put on paper yet."
    printed = replace(known, papers=(PaperNote(seen.at, known.authority.fingerprint),))
    page.show_snapshot(replace(seen, keepsakes=printed))
    assert "has the key, which is good until" in page.on_paper.text()
    newer = replace(known.authority, certificate=b"newer", fingerprint="bb" * 32)
    found = Succession(known.authority, newer, b"", Cause.PLANNED, {Step.BEGIN: seen.at})
    page.show_snapshot(replace(seen, keepsakes=replace(printed, succession=found)))
    assert "has the older CA’s key. Print it anew" in page.on_paper.text()
    both = replace(printed, succession=found, papers=(*printed.papers, PaperNote(seen.at, newer.fingerprint)))
    page.show_snapshot(replace(seen, keepsakes=both))
    assert "has the newer CA’s key" in page.on_paper.text()


def test_the_day_list_leads_to_where_it_is_made(
    qtbot: QtBot, theme: Theme, ways: Ways, errands: FakeErrands, seen: Snapshot
) -> None:
    """Broken if it fails: the list asks for something and its button leads nowhere."""
    known = seen.keepsakes
    assert known is not None
    stale = replace(known, founded=seen.at - timedelta(days=60), stop_set=StopSetNote(seen.at, 12, 40))
    page = DaysPage(theme, errands, ways)
    qtbot.addWidget(page)
    page.show_snapshot(replace(seen, keepsakes=stale))
    buttons = {one.accessibleName(): one for one in page.buttons}
    with qtbot.waitSignal(ways.deputy):
        buttons["Make the deputy’s stop set anew: Make it"].click()
    with qtbot.waitSignal(ways.sealed):
        buttons["Put the household’s key on paper: On paper"].click()
