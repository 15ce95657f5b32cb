"""Taking over a household that was made by hand, on the founding page, over the real lane."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QMimeData, QPointF, Qt, QUrl
from PySide6.QtGui import QDropEvent
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from hearthkey.core.errors import HearthkeyError
from hearthkey.core.household import KEYRING
from hearthkey.core.passes import State
from hearthkey.core.secret import Secret
from hearthkey.services.adopting import AdoptRequest, Prepared
from hearthkey.services.founding import FoundRequest
from hearthkey.ui.drawer.device_page import DevicePage
from hearthkey.ui.errands import Errands
from hearthkey.ui.pages.founding import FoundingPage
from hearthkey.ui.tasks import Tasks
from hearthkey.ui.theme.signs import Sign
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.ways import Ways
from tests.adopt.by_hand import DAY, HOST, LOCK, Shape, family
from tests.fakes.home import PASSPHRASE, World, opener
from tests.ui.overlay.looking import beyond, cut, nameless, settle

PATIENCE = 60_000
"""Milliseconds after which the lane is taken to be stuck; no verdict depends on less."""


class Evening:
    """The founding page of a computer without a household, beside a folder with one that was made by hand."""

    def __init__(self, qtbot: QtBot, theme: Theme, root: Path) -> None:
        self._qtbot = qtbot
        self.folder = root / "by-hand"
        self.errands = Errands(Tasks(), opener(World()), root / "data", place=KEYRING, service="practice")
        self.errands.open()
        self.until(lambda: self.errands.last is not None)
        self.ways = Ways()
        self.page = FoundingPage(theme, self.errands, self.ways, practice=lambda: None)
        self.page.adopt.side._pick = lambda _parent, _title, _start, then, _word: then(self.folder)  # noqa: SLF001  # in place of the desktop's dialog
        qtbot.addWidget(self.page)
        self.page.resize(1280, 768)
        with qtbot.waitActive(self.page):
            self.page.show()
            self.page.activateWindow()

    def until(self, reached: Callable[[], bool]) -> None:
        """Wait for the lane."""
        self._qtbot.waitUntil(reached, timeout=PATIENCE)

    def look(self) -> None:
        """Turn the page, and choose the folder."""
        self.page.so_far.adopt.click()
        self.page.adopt.side.choose.click()
        self.until(lambda: self.page.adopt.overview is not None)

    def unlock(self, words: bytes = LOCK) -> None:
        """Type the passphrase of the CA's key."""
        side = self.page.adopt.side
        before = self.page.adopt.overview
        QTest.keyClicks(side.lock, words.decode())
        QTest.keyClick(side.lock, Qt.Key.Key_Return)
        self.until(lambda: self.page.adopt.overview is not before)

    def fill(self) -> None:
        """Say what the household is called, and confirm its passphrase."""
        form, words = self.page.form, self.page.passphrase
        for line, text in ((form.name, "Quince Cottage"), (form.host, HOST), (form.home, "198.51.100.0/24")):
            line.clear()
            QTest.keyClicks(line, text)
        self.until(lambda: words._offered is not None)  # noqa: SLF001  # drawn on the lane
        offered = words._offered  # noqa: SLF001  # as above
        assert offered is not None
        QTest.keyClicks(words.again, offered.reveal())


@pytest.fixture
def evening(qtbot: QtBot, theme: Theme, tmp_path: Path) -> Iterator[Evening]:
    """The first evening of somebody who has a CA already."""
    made = Evening(qtbot, theme, tmp_path)
    yield made
    made.errands.close()


def test_a_household_is_taken_over_by_keyboard(evening: Evening, qtbot: QtBot) -> None:
    """Broken if it fails: who has a CA has to use a terminal, or founds a second one."""
    family(evening.folder)
    page = evening.page
    assert page.commit.text() == "Found the household"
    page.so_far.adopt.setFocus()
    QTest.keyClick(page.so_far.adopt, Qt.Key.Key_Space)
    assert page.commit.text() == "Take it over"
    assert page.focusWidget() is page.adopt.side.choose
    QTest.keyClick(page.adopt.side.choose, Qt.Key.Key_Space)
    evening.until(lambda: page.adopt.overview is not None)
    assert page.focusWidget() is page.adopt.side.lock
    assert "the passphrase of the CA’s key" in page.note.text()
    evening.unlock()
    evening.fill()
    evening.until(page.commit.isEnabled)
    assert "3 passes are taken over" in page.voice.text()
    assert "The gateway keeps its certificate." in page.voice.text()
    with qtbot.waitSignal(evening.ways.back, timeout=PATIENCE):
        QTest.keyClick(page.passphrase.again, Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)
    seen = evening.errands.last
    assert seen is not None
    assert sorted(one.state(seen.at) for one in seen.passes) == [State.IN_USE, State.IN_USE, State.REVOKED]
    assert {one.person for one in seen.passes} == {"Somebody"}
    assert page.adopt.side.lock.text() == ""


def test_a_wrong_passphrase_is_told_where_it_was_typed(evening: Evening) -> None:
    """Broken if it fails: somebody types on and on, and nothing says that it is the wrong one."""
    family(evening.folder)
    evening.look()
    evening.unlock(b"wrong")
    side = evening.page.adopt.side
    assert side.question.isVisible()
    assert side.question.told() == "This passphrase does not open the CA’s key."
    side.lock.clear()
    evening.unlock()
    assert side.question.told() == "It opens the CA’s key."


def test_what_is_in_the_way_stands_first_and_nothing_can_be_done(evening: Evening) -> None:
    """Broken if it fails: a CA that cannot serve is taken over, or nobody sees why not."""
    family(evening.folder, shape=Shape(ends=-DAY))
    evening.look()
    evening.unlock()
    evening.fill()
    first = evening.page.adopt.side.rows.rows[0]
    assert (first.sign.sign, first.word.text()) == (Sign.REVOKED, "in the way")
    assert "ended on 24 November 2026" in first.what.text()
    assert first.accessibleName().startswith("in the way: The CA’s certificate ended")
    evening.until(lambda: evening.errands._tasks.waiting == 0)  # noqa: SLF001  # nothing more is coming
    assert not evening.page.commit.isEnabled()
    assert "a CA with nothing in its way" in evening.page.note.text()


def test_a_folder_may_be_dropped(evening: Evening) -> None:
    """Broken if it fails: the folder that lies open on the desktop has to be searched for."""
    family(evening.folder)
    evening.page.so_far.adopt.click()
    parcel = QMimeData()
    parcel.setUrls([QUrl.fromLocalFile(str(evening.folder))])
    where, buttons = QPointF(20, 20), Qt.MouseButton.LeftButton
    event = QDropEvent(where, Qt.DropAction.CopyAction, parcel, buttons, Qt.KeyboardModifier.NoModifier)
    evening.page.adopt.side.dropEvent(event)
    evening.until(lambda: evening.page.adopt.overview is not None)
    assert evening.page.adopt.side.path.text() == str(evening.folder)


def test_a_folder_that_is_gone_is_told_and_the_way_back_is_open(evening: Evening) -> None:
    """Broken if it fails: a pulled stick leaves a page that says nothing."""
    page = evening.page
    page.so_far.adopt.click()
    page.adopt.side.choose.click()
    evening.until(lambda: "There is no folder" in page.adopt.side.summary.text())
    page.adopt.side.back.click()
    assert page.commit.text() == "Found the household"
    assert page.so_far.isVisible()
    assert page.heading.sentence.text().startswith("Nobody has a pass yet.")


def _fail(error: HearthkeyError) -> None:
    raise error


def test_a_pass_is_named_in_the_drawer(evening: Evening, qtbot: QtBot, theme: Theme) -> None:
    """Broken if it fails: passes that were taken over are nobody’s for ever, or two people get one."""
    family(evening.folder)
    request = AdoptRequest(evening.folder, FoundRequest("Quince Cottage", HOST, ("198.51.100.0/24",)))
    found: list[Prepared] = []
    page_of, errands = evening.page, evening.errands
    errands.preview_adopt(request, (Secret(LOCK.decode()),), page_of, found.append, _fail)
    evening.until(lambda: bool(found))
    with qtbot.waitSignal(errands.done, timeout=PATIENCE):
        errands.adopt(found[0], PASSPHRASE, KEYRING, page_of, lambda _done: None, _fail)
    page = DevicePage(theme, evening.errands, evening.ways)
    qtbot.addWidget(page)
    page.resize(420, 700)
    page.show_device("a7k2.quince.example")
    page.show()
    card = page.naming
    assert card.isVisible()
    assert (card.device.text(), card.commit.isEnabled()) == ("ines-phone", False)
    QTest.keyClicks(card.person, "Ines")
    with qtbot.waitSignal(card.named, timeout=PATIENCE):
        QTest.keyClick(card.person, Qt.Key.Key_Return)
    assert not card.isVisible()
    assert page.title.text() == "Ines’s ines-phone"
    page.show_device("c9n4.quince.example")
    card.device.setText("ines-phone")
    QTest.keyClicks(card.person, "Ines")
    QTest.keyClick(card.person, Qt.Key.Key_Return)
    evening.until(lambda: "has a pass already" in card.whose._below.text())  # noqa: SLF001  # what stands under it
    assert card.isVisible()


@pytest.mark.parametrize("theme_name", ["paper", "contrast-dark"])
@pytest.mark.parametrize("scale", [1.0, 2.0])
@pytest.mark.parametrize("size", [(1280, 768), (640, 480)])
def test_nothing_is_cut(evening: Evening, theme: Theme, theme_name: str, scale: float, size: tuple[int, int]) -> None:
    """Broken if it fails: with large type or in a small window a finding or a control is cut."""
    family(evening.folder, shape=Shape(identifier=False, ends=100 * DAY))
    theme.choose(theme_name, scale)
    evening.page.resize(*size)
    evening.look()
    settle()
    page = evening.page
    long_path = str(evening.folder)
    assert [text for text in cut(page) if text != long_path] == []
    assert beyond(page) == []
    assert nameless(page) == []
    settle()
    place = page.adopt.side.lock.mapTo(page, page.adopt.side.lock.rect().center()).y()
    assert 0 < place < page.height()
