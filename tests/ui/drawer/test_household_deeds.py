"""The deeds on the household's page: the list signed anew, the gateway's next certificate, each with its passphrase."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from hearthkey.core.errors import Unavailable
from hearthkey.core.household import FormerHost
from hearthkey.ui.drawer.household_page import HouseholdPage
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.ways import Ways
from tests.ui.drawer.conftest import Room
from tests.ui.drawer.household import PASSPHRASE, FakeErrands
from tests.ui.drawer.pages import lock
from tests.ui.practice import HOUSEHOLD


@pytest.fixture
def page(room: Room, theme: Theme, errands: FakeErrands, ways: Ways) -> HouseholdPage:
    """The page, open in the drawer."""
    made = HouseholdPage(theme, errands, ways)
    room.open(made)
    return made


def test_the_gateway_is_renewed_even_when_locked(page: HouseholdPage, errands: FakeErrands) -> None:
    """Broken: the certificate that closes the house when it ends cannot be followed by another."""
    lock(errands)
    page.renew_button.click()
    assert page.unlock.line.hasFocus()
    QTest.keyClicks(page.unlock.line, PASSPHRASE)
    page.renew_button.click()
    assert page.note.text().startswith("The gateway got a new certificate for home.quince.example until 13 August 2028")
    assert page.renew_button.hasFocus()
    assert errands.last is not None
    assert errands.last.household == HOUSEHOLD


def test_one_passphrase_is_for_the_deed_that_asked_last(page: HouseholdPage, errands: FakeErrands) -> None:
    """Broken: the passphrase that was given for the list makes a certificate too, or instead."""
    lock(errands)
    page.renew_button.click()
    page.sign_button.click()
    QTest.keyClicks(page.unlock.line, PASSPHRASE)
    QTest.keyClick(page.unlock.line, Qt.Key.Key_Return)
    assert errands.asked == [("unlock", PASSPHRASE), ("sign_list",)]


def test_the_list_is_signed_anew_even_when_locked(page: HouseholdPage, errands: FakeErrands) -> None:
    """Broken: a list that is about to end cannot be followed by the next."""
    lock(errands)
    page.sign_button.click()
    assert page.unlock.line.hasFocus()
    QTest.keyClicks(page.unlock.line, PASSPHRASE)
    page.sign_button.click()
    assert errands.asked == [("unlock", PASSPHRASE), ("sign_list",)]
    assert page.note.text().startswith("Revocation list 43 was signed. It takes effect when the gateway holds list 43.")


def test_trouble_with_the_list_is_said(page: HouseholdPage, errands: FakeErrands) -> None:
    """Broken: a full disk looks like success."""
    errands.troubles["sign_list"] = Unavailable("disk-full", path="/home")
    page.sign_button.click()
    assert page.trouble.isVisible()
    assert page.trouble.text().startswith("The disk is full (/home).")


def test_a_household_that_is_not_founded_has_nothing_to_change(
    room: Room, theme: Theme, errands: FakeErrands, ways: Ways
) -> None:
    """Broken: an empty page offers a deed that can only fail."""
    assert errands.last is not None
    errands.show(replace(errands.last, household=None, authority=None, gateway=None, newest_list=None))
    page = HouseholdPage(theme, errands, ways)
    room.open(page)
    assert not page.sign_button.isEnabled()
    assert not page.settlement.isVisible()
    assert not page.commit.isEnabled()


def test_a_clock_that_was_ahead_is_put_right_by_the_same_button(qtbot: QtBot, theme: Theme) -> None:
    """Broken: the window refuses every signature for two years, and the way on is a command."""
    errands = FakeErrands()
    seen = errands.last
    assert seen is not None
    assert seen.newest_list is not None
    ahead = replace(seen.newest_list, this_update=seen.at + timedelta(days=700))
    errands.show(replace(seen, locked=False, newest_list=ahead))
    page = HouseholdPage(theme, errands, Ways())
    qtbot.addWidget(page)
    assert page.sign_button.text() == "The clock was ahead, and is right now: sign the list by it"
    page.sign_button.click()
    assert errands.asked == [("sign_list", "righted")]


def test_a_former_host_goes_once_nobody_knows_it_alone(qtbot: QtBot, theme: Theme) -> None:
    """Broken: a former name stays in the gateway's certificate for ever, or goes while a device needs it."""
    errands = FakeErrands()
    seen = errands.last
    assert seen is not None
    assert seen.household is not None
    seen = replace(seen, household=replace(seen.household, practice=False))
    errands.show(replace(seen, locked=False, former_hosts=(FormerHost("old.quince.example", seen.at),)))
    page = HouseholdPage(theme, errands, Ways())
    qtbot.addWidget(page)
    assert not page.settlement.let_go.isEnabled()
    assert "know no other name" in page.settlement.former.text()
    errands.show(
        replace(seen, locked=False, former_hosts=(FormerHost("old.quince.example", seen.at - timedelta(days=3650)),))
    )
    page.settlement.let_go.click()
    assert "answers to old.quince.example no more" in page.settlement.besides.text()
    assert page.commit.isEnabled()
