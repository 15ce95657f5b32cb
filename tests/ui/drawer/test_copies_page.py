"""The page of copies that left, and the question about a stick on a device's page."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from datetime import timedelta
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from hearthkey.core.copies import Came, Copy, CopyFile, CopyWay, Found
from hearthkey.core.errors import Refused, Unavailable
from hearthkey.ui.drawer.copies_page import OPEN_ONES, CopiesPage
from hearthkey.ui.drawer.device_page import DevicePage
from hearthkey.ui.drives import Drive
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.ways import Ways
from tests.ui.drawer.conftest import Room
from tests.ui.drawer.household import FakeErrands
from tests.ui.drawer.pages import identity_of

QUINCE = Drive("QUINCE", Path("/media/ines/QUINCE"), "/dev/sdb1", 14_200_000_000)


def stick(errands: FakeErrands, person: str, device: str, number: int = 1, place: str = "QUINCE") -> Copy:
    """A copy on a stick, five hours old."""
    assert errands.last is not None
    of = next(one for one in errands.last.passes if (one.person, one.device) == (person, device))
    made = errands.last.at - timedelta(hours=5)
    files = (CopyFile("phone.p12", "0" * 32),)
    return Copy(of.serial, "pkcs12", CopyWay.STICK, place, f"/media/ines/{place}", files, made, Came.MADE, None, number)


@pytest.fixture
def page(theme: Theme, errands: FakeErrands, room: Room) -> CopiesPage:
    """The page of the household's copies: two of Ines, one of Tomasz."""
    first = stick(errands, "Ines", "phone")
    errands.left = (
        first,
        replace(first, number=2, way=CopyWay.TICKET, place="198.51.100.41", folder="", made=first.made),
        stick(errands, "Tomasz", "laptop", 3),
    )
    made = CopiesPage(theme, errands)
    made.show_device("")
    room.open(made)
    return made


@pytest.fixture
def device(theme: Theme, errands: FakeErrands, ways: Ways, room: Room) -> Callable[[str, str], DevicePage]:
    """Opens the page of a device."""

    def opened(person: str, label: str) -> DevicePage:
        made = DevicePage(theme, errands, ways)
        made.show_device(identity_of(errands, person, label))
        room.open(made)
        return made

    return opened


def shown(page: DevicePage) -> list[str]:
    """The buttons of the question that can be pressed."""
    mine = page.stick
    return [one.text().replace("&", "") for one in mine.buttons() if one.isVisible()]


def test_copies_stand_by_device(page: CopiesPage) -> None:
    """Broken: nobody sees whose copies they are, or a screen reader hears less than the eye sees."""
    model = page.model
    assert [model.heads(row) for row in range(model.rowCount())] == [True, False, True]
    heard = model.data(model.index(0), Qt.ItemDataRole.AccessibleTextRole)
    assert isinstance(heard, str)
    assert heard.startswith("Ines’s phone, ")
    assert "not known to be gone" in heard
    assert page.summary.text() == "3 copies. Of 3 nobody knows whether they are gone."


def test_one_device_has_its_own_list(page: CopiesPage, errands: FakeErrands) -> None:
    """Broken: the copies of one device are looked for among all."""
    page.show_device(identity_of(errands, "Tomasz", "laptop"))
    assert page.title.text() == "Copies of Tomasz’s laptop"
    assert [page.model.copy_at(row).copy.number for row in range(page.model.rowCount())] == [3]
    page.whole.click()
    assert page.model.rowCount() == 3


def test_without_copies_nothing_can_be_done(errands: FakeErrands, page: CopiesPage) -> None:
    """Broken: buttons stand there that have nothing to do anything with."""
    errands.left = ()
    page.refresh()
    assert page.summary.text().startswith("No copy has left this computer.")
    assert not page.gone.isVisible()
    assert not page.shown.isVisible()


def test_keys_choose_and_settle_a_copy(page: CopiesPage, errands: FakeErrands) -> None:
    """Broken: without a mouse no copy can be settled, or saying so cannot be taken back."""
    page.list.setFocus()
    for _ in range(2):
        QTest.keyClick(page.list, Qt.Key.Key_Down)
    QTest.keyClick(page.gone, Qt.Key.Key_Space)
    chosen = page.list.currentIndex().row()
    number = page.model.copy_at(chosen).copy.number
    assert errands.asked == [("copy_is_gone", number)]
    assert page.list.hasFocus()
    assert page.outcome.isVisible()
    assert (page.back.isVisible(), page.gone.isVisible()) == (True, False)
    page.back.click()
    assert errands.asked[-1] == ("copy_is_not_gone", number)
    assert page.gone.isVisible()


def test_only_what_is_open_is_shown_when_asked(page: CopiesPage, errands: FakeErrands) -> None:
    """Broken: what is settled hides what is not."""
    page.list.setCurrentIndex(page.model.index(0))
    page.gone.click()
    page.shown.segments()[1].click()
    assert page.shown.value() == OPEN_ONES
    assert page.model.rowCount() == 2
    assert len(errands.left) == 3


@pytest.mark.parametrize(
    ("found", "deletes"), [(Found.OURS, True), (Found.PARTLY, True), (Found.CHANGED, False), (Found.GONE, False)]
)
def test_only_what_is_still_ours_can_be_deleted(
    page: CopiesPage, errands: FakeErrands, found: Found, *, deletes: bool
) -> None:
    """Broken: a file of somebody else is offered for deletion; or nothing is said of what a stick keeps."""
    errands.lies = found
    page.list.setCurrentIndex(page.model.index(page.model.row_of(1)))
    page.look.click()
    assert page.delete.isVisible() is deletes
    assert ("A stick may keep what was in it" in page.outcome.text()) is deletes
    if deletes:
        page.leave_it.click()
        assert not page.delete.isVisible()
        page.look.click()
        page.delete.click()
        assert errands.asked[-1] == ("tidy_copy", 1)


def test_a_copy_elsewhere_is_not_looked_for(page: CopiesPage) -> None:
    """Broken: a look is offered at a phone."""
    page.list.setCurrentIndex(page.model.index(page.model.row_of(2)))
    assert (page.look.isVisible(), page.gone.isVisible()) == (False, True)


def test_codes_on_the_screen_are_nobodys_to_tidy(page: CopiesPage, errands: FakeErrands) -> None:
    """Broken: what left no file is counted as not known to be gone, or a file of it is offered for deletion."""
    errands.left = (replace(errands.left[0], form="codes", way=CopyWay.SCREEN, place="", folder="", files=()),)
    page.refresh()
    page.list.setCurrentIndex(page.model.index(0))
    assert "was only on the screen" in page.summary.text()
    told = page.model.data(page.model.index(0), Qt.ItemDataRole.AccessibleTextRole)
    assert "Codes, shown on this screen left no file here; a photo of it still needs the passphrase" in str(told)
    assert not page.look.isVisible()
    page.shown.take(OPEN_ONES)
    page.shown.chosen.emit(OPEN_ONES)
    assert page.model.rowCount() == 0


def test_trouble_is_said_beside_the_copy(page: CopiesPage, errands: FakeErrands) -> None:
    """Broken: a pulled stick ends in silence."""
    errands.troubles["look_at_copy"] = Unavailable("folder-gone", path="/media/ines/QUINCE", seen="")
    page.list.setCurrentIndex(page.model.index(page.model.row_of(1)))
    page.look.click()
    assert "is gone; a stick may have been pulled" in page.outcome.text()


def test_after_hand_over_the_stick_is_asked_about(
    device: Callable[[str, str], DevicePage], errands: FakeErrands
) -> None:
    """Broken: the stick lies in a drawer with the bundle on it, and nobody thinks of it."""
    errands.left = (stick(errands, "Ines", "phone"),)
    page = device("Ines", "phone")
    assert page.stick.question.text().startswith("Was the stick “QUINCE” wiped? The bundle of Ines’s phone")
    assert shown(page) == ["It is wiped", "Look now", "Ask me later"]
    page.stick.wiped.click()
    assert errands.asked[-1] == ("copy_is_gone", 1)
    assert shown(page) == ["It is not wiped after all"]
    page.stick.undo.click()
    assert errands.asked[-1] == ("copy_is_not_gone", 1)
    assert shown(page) == []
    page.ask_about_copies()
    assert shown(page) == ["It is wiped", "Look now", "Ask me later"]


def test_looking_says_what_is_there_before_anything_is_deleted(
    device: Callable[[str, str], DevicePage], errands: FakeErrands
) -> None:
    """Broken: a file is deleted that nobody was asked about."""
    errands.left = (stick(errands, "Ines", "phone"),)
    page = device("Ines", "phone")
    page.stick.look.click()
    assert errands.asked == [("look_at_copy", 1)]
    assert shown(page) == ["Delete the file", "Ask me later"]
    assert page.stick.outcome.text().startswith("It is still there")
    page.stick.delete.click()
    assert errands.asked[-1] == ("tidy_copy", 1)
    assert page.stick.isHidden()
    assert page.first().hasFocus()


@pytest.mark.parametrize("found", [Found.GONE, Found.CHANGED, Found.AWAY])
def test_what_is_not_ours_is_never_offered_for_deletion(
    device: Callable[[str, str], DevicePage], errands: FakeErrands, found: Found
) -> None:
    """Broken: somebody else's file goes."""
    errands.left, errands.lies = (stick(errands, "Ines", "phone"),), found
    page = device("Ines", "phone")
    page.stick.look.click()
    assert "Delete the file" not in shown(page)
    assert "It is wiped" in shown(page)


def test_later_is_once_and_again_when_it_is_plugged_in(
    device: Callable[[str, str], DevicePage], errands: FakeErrands
) -> None:
    """Broken: the question comes back at every turn, or never."""
    errands.left = (stick(errands, "Ines", "phone"),)
    page = device("Ines", "phone")
    page.stick.later.click()
    assert page.first().hasFocus()
    page.ask_about_copies()
    assert shown(page) == []
    errands.drives = (QUINCE,)
    page.ask_about_copies()
    assert shown(page) == ["It is wiped", "Look now", "Ask me later"]
    page.stick.later.click()
    page.ask_about_copies()
    assert shown(page) == []
    errands.drives = ()
    page.ask_about_copies()
    assert shown(page) == []
    errands.drives = (QUINCE,)
    page.ask_about_copies()
    assert shown(page) == ["It is wiped", "Look now", "Ask me later"]


def test_before_hand_over_only_a_stick_that_is_back_is_asked_about(
    device: Callable[[str, str], DevicePage], errands: FakeErrands
) -> None:
    """Broken: somebody is asked to wipe a stick that is on its way to the device."""
    errands.left = (stick(errands, "Tomasz", "laptop"),)
    page = device("Tomasz", "laptop")
    assert shown(page) == []
    errands.drives = (QUINCE,)
    page.ask_about_copies()
    assert shown(page) == ["It is wiped", "Look now", "Ask me later"]


def test_a_refusal_is_said(device: Callable[[str, str], DevicePage], errands: FakeErrands) -> None:
    """Broken: a click does nothing and says nothing."""
    errands.left = (stick(errands, "Ines", "phone"),)
    errands.troubles["tidy_copy"] = Refused("copy-changed", place="QUINCE")
    page = device("Ines", "phone")
    page.stick.look.click()
    page.stick.delete.click()
    assert "is not what was written there" in page.stick.outcome.text()


def test_the_list_is_one_click_from_the_device(
    device: Callable[[str, str], DevicePage], errands: FakeErrands, ways: Ways
) -> None:
    """Broken: the copies of a device are to be found nowhere near it."""
    asked: list[str] = []
    ways.copies.connect(asked.append)
    page = device("Ines", "phone")
    page.copies_button.click()
    assert asked == [identity_of(errands, "Ines", "phone")]
