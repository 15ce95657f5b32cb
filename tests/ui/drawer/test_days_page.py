"""The day list: what has come due first, each with its button."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

from PySide6.QtTest import QSignalSpy

from hearthkey.ui.drawer.days_page import days
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
    assert page.buttons[0].text() == "Copies"
    first = errands.last
    assert first is not None
    sealed(theme, errands, ways)
    assert all(button.text() != "Copies" for button in page.buttons[:1])
    errands.show(replace(first, at=first.at + timedelta(days=200)))
    found = days(errands.last or first)
    assert found is not None
    assert found.now[0].act_on <= found.now[-1].act_on <= first.at + timedelta(days=200) < found.later[0].act_on


def test_before_there_is_a_household_there_is_nothing_to_do(errands: FakeErrands) -> None:
    """Broken: the first evening begins with a fault."""
    seen = errands.last
    assert seen is not None
    assert days(replace(seen, authority=None)) is None
