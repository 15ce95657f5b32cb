"""The day list: what has come due first, each with its button."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

from PySide6.QtTest import QSignalSpy
from PySide6.QtWidgets import QApplication

from hearthkey.ui.controls.labels import Prose
from hearthkey.ui.drawer.days_page import days
from hearthkey.ui.gallery.many_states import household
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.ways import Ways
from tests.ui.drawer.conftest import Room
from tests.ui.drawer.household import FakeErrands
from tests.ui.drawer.pages import days as page_of
from tests.ui.drawer.pages import sealed


def test_every_line_leads_somewhere(theme: Theme, errands: FakeErrands, ways: Ways, room: Room) -> None:
    """Broken: somebody is told what to do, and has to look for where."""
    page = page_of(theme, errands, ways)
    room.open(page)
    about_one = (ways.renew, ways.device, ways.prove)
    heard = [QSignalSpy(one) for one in (*about_one, ways.sealed, ways.sign_list, ways.renew_gateway, ways.succession)]
    for button in page.buttons:
        button.click()
    assert sum(spy.count() for spy in heard) == len(page.buttons) > 5
    assert all(": " in button.accessibleName() for button in page.buttons)


def test_what_has_come_due_stands_first_and_a_copy_that_was_tried_goes(
    theme: Theme, errands: FakeErrands, ways: Ways, room: Room
) -> None:
    """Broken: the list goes on asking for what was done."""
    page = page_of(theme, errands, ways)
    room.open(page)
    assert [button.text() for button in page.buttons[:2]] == ["Renew it", "Copies"]
    first = errands.last
    assert first is not None
    sealed(theme, errands, ways)
    assert "Copies" not in [button.text() for button in page.buttons[:2]]
    errands.show(replace(first, at=first.at + timedelta(days=200)))
    found = days(errands.last or first)
    assert found is not None
    assert max(one.act_on for one in found.now) <= first.at + timedelta(days=200) < found.later[0].act_on


def test_the_first_that_is_to_be_done_has_the_focus(theme: Theme, errands: FakeErrands, ways: Ways, room: Room) -> None:
    """Broken: the list came while the page was closed, so Enter makes a calendar file instead of the first thing."""
    page = page_of(theme, errands, ways)
    seen = errands.last
    assert seen is not None
    errands.show(replace(seen, at=seen.at + timedelta(days=200)))
    before = list(page.buttons)
    room.open(page)
    assert page.buttons != before, "the rows were made on opening"
    assert QApplication.focusWidget() is page.buttons[0]


def test_before_there_is_a_household_there_is_nothing_to_do(errands: FakeErrands) -> None:
    """Broken: the first evening begins with a fault."""
    seen = errands.last
    assert seen is not None
    assert days(replace(seen, authority=None)) is None


def test_three_hundred_devices_make_a_short_list_that_names_them_all_on_request(
    theme: Theme, errands: FakeErrands, ways: Ways, room: Room
) -> None:
    """Broken: opening the list of a large family takes many seconds, or the list leaves somebody out."""
    seen = errands.last
    assert seen is not None
    errands.show(household(seen, 300))
    page = page_of(theme, errands, ways)
    room.open(page)
    assert len(page.buttons) < 25
    assert page.buttons[0].accessibleName().startswith("Give Ines’s phone its next pass")
    fold = page.folds[-1 if len(page.folds) == 1 else 1]
    before = fold.findChildren(Prose)
    fold.button.click()
    (names,) = [one for one in fold.findChildren(Prose) if one not in before]
    assert "Tomasz’s" in names.text()
    assert names.text().count("\n") > 250
    assert fold.button.accessibleName().endswith("Hide them")
    fold.button.click()
    assert not fold.unfolded
    assert fold.button.accessibleName().endswith("Name them")
