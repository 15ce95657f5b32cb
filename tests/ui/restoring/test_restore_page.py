"""A household comes back in the window: looked into first, then restored, over the real register."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtCore import QMimeData, QPoint, QPointF, Qt, QUrl
from PySide6.QtGui import QDragEnterEvent, QDropEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from hearthkey.core.household import FILE
from hearthkey.ui.drawer.sealed_page import SealedPage
from hearthkey.ui.printing.key_paper_page import KeyPaperPage
from hearthkey.ui.restoring.typed_lines import numbers
from tests.fakes.home import PASSPHRASE
from tests.ui.restoring.conftest import Blank, Kept


def open_copy(blank: Blank, kept: Kept, words: str = PASSPHRASE.reveal()) -> None:
    """Choose the copy and open it."""
    page = blank.page
    page.take_files([kept.copy])
    blank.rest()
    page.line.setFocus()
    QTest.keyClicks(page.line, words)
    QTest.keyClick(page.line, Qt.Key.Key_Return)
    blank.rest()


def test_what_is_inside_is_told_before_anything_is_written(blank: Blank, kept: Kept) -> None:
    """Broken if it fails: somebody brings back the wrong household, or one of long ago."""
    page = blank.begin()
    assert not page.open_button.isEnabled()
    open_copy(blank, kept)
    facts = " | ".join(page.sheet.facts.texts())
    assert "Newest list number: 2" in facts
    assert "Devices: Ines’s phone, Tomasz’s laptop, Odile’s tablet" in facts
    assert "Stopped or revoked: 1" in facts
    assert "25 November 2026" in facts
    assert page.sheet.title.text() == "Quince Cottage (practice)"
    assert page.line.text() == ""
    assert not blank.founded()
    assert blank.world.vault.secrets == {}


def test_it_comes_back_by_keyboard_and_says_what_is_next(blank: Blank, kept: Kept) -> None:
    """Broken if it fails: a dead laptop takes the household with it, or nobody looks at the gateway afterwards."""
    page = blank.begin()
    open_copy(blank, kept)
    QTest.keyClick(page.sheet.commit, Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)
    blank.wait(lambda: page.sheet.done)
    assert blank.founded()
    assert blank.window.pages.currentWidget() is page
    assert "was brought back" in page.sheet.voice.text()
    assert "list numbers go on above the highest one seen" in page.sheet.caution.text()
    assert not page.form.isVisible()
    page.sheet.to_gateway.click()
    assert blank.window.pages.currentWidget() is blank.window.sheet
    assert blank.window.drawer.is_open
    last = blank.window.outside.errands.last
    assert last is not None
    assert [one.title for one in last.passes if one.reason is not None] == ["Odile’s tablet"]


def test_esc_leads_back_and_nothing_was_written(blank: Blank, kept: Kept) -> None:
    """Broken if it fails: whoever only looked cannot leave, or has left something behind."""
    page = blank.begin()
    open_copy(blank, kept)
    QTest.keyClick(page.sheet.commit, Qt.Key.Key_Escape)
    assert blank.window.pages.currentWidget() is blank.window.founding
    blank.window.outside.errands.refresh()
    blank.rest()
    assert blank.window.pages.currentWidget() is blank.window.founding
    assert not blank.founded()
    page = blank.begin()
    assert page.sheet.inside is None
    assert page.line.text() == ""


def test_a_wrong_passphrase_and_a_broken_file_are_told_on_the_page(blank: Blank, kept: Kept, tmp_path: Path) -> None:
    """Broken if it fails: a slip of the hand ends somewhere else than where it can be mended."""
    page = blank.begin()
    open_copy(blank, kept, "wrong words")
    assert "does not open" in page.note.text()
    assert page.line.hasFocus()
    half = tmp_path / "half.sealed.tar"
    half.write_bytes(kept.copy.read_bytes()[:20_000])
    page.take_files([half])
    blank.rest()
    QTest.keyClicks(page.line, PASSPHRASE.reveal())
    page.open_button.click()
    blank.rest()
    assert "not whole" in page.note.text()
    strange = tmp_path / "strange.bin"
    strange.write_bytes(b"\xff\xfe\x00")
    page.take_files([strange])
    blank.rest()
    assert "strange.bin is neither a picture" in page.note.text()
    assert not blank.founded()


@pytest.mark.parametrize("trouble", ["keyring-locked", "keyring-absent"])
def test_a_keyring_that_does_not_answer_is_told_at_once_and_a_key_file_does(
    blank: Blank, kept: Kept, trouble: str
) -> None:
    """Broken if it fails: on a computer without a keyring nobody gets the household back."""
    blank.world.vault.trouble = trouble
    page = blank.begin()
    assert "in a file" in page.where.question.told()
    open_copy(blank, kept)
    page.sheet.commit.click()
    blank.rest()
    assert not blank.founded()
    assert "in a file" in page.where.question.told()
    page.where.choice.take(FILE)
    page.where.choice.chosen.emit(FILE)
    assert "lie as files" in page.where.question.told()
    page.sheet.commit.click()
    blank.wait(lambda: page.sheet.done)
    assert list((blank.data / "keys").iterdir())


def test_a_paper_comes_back_from_typed_lines(blank: Blank, kept: Kept) -> None:
    """Broken if it fails: without a scanner the paper is lost, or one slip costs everything that was typed."""
    page = blank.begin()
    page.by_hand.button.click()
    slipped = [*kept.rows[:9], kept.rows[9][:3] + "77777" + kept.rows[9][8:], *kept.rows[11:]]
    page.typed.field.setPlainText("\n".join(slipped))
    page.typed.look()
    assert "A slip in line 10" in page.typed.state.text()
    assert "10–11" in page.typed.state.text()
    page.typed.field.setPlainText("\n".join(kept.rows))
    page.typed.look()
    assert "have been read" in page.typed.state.text()
    page.line.setText(PASSPHRASE.reveal())
    page.open_button.click()
    blank.rest()
    assert "Devices: not on paper" in page.sheet.facts.texts()
    page.sheet.commit.click()
    blank.wait(lambda: page.sheet.done)
    assert "Then enrol everybody anew" in page.sheet.caution.text()
    page.sheet.to_board.click()
    assert blank.window.pages.currentWidget() is blank.window.sheet
    blank.wait(lambda: bool(list(blank.data.glob("sealed/*"))))


def test_the_key_is_put_on_paper_from_the_page_of_the_copies(
    blank: Blank, kept: Kept, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Broken if it fails: nobody finds the paper, its key prints a device's sheet, or Esc leads nowhere."""
    page = blank.begin()
    open_copy(blank, kept)
    page.sheet.commit.click()
    blank.wait(lambda: page.sheet.done)
    window, asked = blank.window, []
    monkeypatch.setattr(KeyPaperPage, "print", lambda _page: asked.append("print"))
    window.ways.sealed.emit()
    assert window.pages.currentWidget() is window.sheet
    sealed = window.drawer.page()
    assert isinstance(sealed, SealedPage)
    sealed.paper_button.click()
    paper = window.pages.currentWidget()
    assert isinstance(paper, KeyPaperPage)
    blank.wait(lambda: bool(paper.sheets))
    QTest.keyClick(window, Qt.Key.Key_P, Qt.KeyboardModifier.ControlModifier)
    assert asked == ["print"]
    QTest.keyClick(paper.tongue, Qt.Key.Key_Escape)
    assert window.pages.currentWidget() is window.sheet
    assert paper.sheets == ()


def test_help_leads_nowhere_while_there_is_no_household(blank: Blank) -> None:
    """Broken if it fails: a key shows a board without a household."""
    page = blank.begin()
    blank.window.ways.help.emit("")
    assert blank.window.pages.currentWidget() is page


def test_files_can_be_dropped(blank: Blank, kept: Kept) -> None:
    """Broken if it fails: what is dragged from the stick is not taken."""
    page = blank.begin()
    carried = QMimeData()
    carried.setUrls([QUrl.fromLocalFile(str(kept.copy))])
    button, keys = Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier
    enter = QDragEnterEvent(QPoint(20, 20), Qt.DropAction.CopyAction, carried, button, keys)
    QApplication.sendEvent(page.drop, enter)
    assert enter.isAccepted()
    page.drop.dropEvent(QDropEvent(QPointF(20, 20), Qt.DropAction.CopyAction, carried, button, keys))
    blank.rest()
    assert page.drop.words.text() == kept.copy.name
    assert page.line.hasFocus()


@pytest.mark.parametrize("scale", [1.0, 2.0])
def test_everything_has_a_name_and_the_tab_key_goes_down(blank: Blank, kept: Kept, scale: float) -> None:
    """Broken if it fails: a screen reader says "button" and nothing else, or the focus jumps about."""
    blank.window.theme.choose("paper", scale)
    page = blank.begin()
    page.by_hand.button.click()
    open_copy(blank, kept)
    page.drop.button.setFocus()
    walked = []
    for _ in range(30):
        one = QApplication.focusWidget()
        if one is None or one in walked or not page.isAncestorOf(one):
            break
        assert one.accessibleName()
        walked.append(one)
        QTest.keyClick(one, Qt.Key.Key_Tab)
    assert walked.index(page.line) > walked.index(page.drop.button)
    assert page.sheet.commit in walked
    places = [one.mapTo(page.form, QPoint(0, 0)).y() for one in walked if page.form.isAncestorOf(one)]
    assert places == sorted(places)
    blank.window.theme.choose("paper", 1.0)


def test_numbers_are_drawn_together() -> None:
    """Broken if it fails: forty numbers are read out one by one."""
    assert numbers((1,)) == "1"
    assert numbers((3, 16, 17, 18, 30, 31)) == "3, 16–18, 30–31"
    assert numbers(()) == ""
