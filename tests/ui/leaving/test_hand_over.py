"""The hand-over page: every way out, what it says, and the end."""

from __future__ import annotations

from dataclasses import replace

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtTest import QSignalSpy, QTest
from PySide6.QtWidgets import QLabel

from hearthkey.core.bundle import Form
from hearthkey.core.errors import Unavailable
from hearthkey.core.kinds import OLD, DeviceKind
from hearthkey.core.rehearsal import Rehearsal, RehearsalFailed, Step
from hearthkey.ui.clipboard import SecretClipboard
from hearthkey.ui.pages import ways_out
from hearthkey.ui.pages.two_channels import Side
from hearthkey.ui.pages.ways_out import WayOut
from tests.fakes.kinds import KINDS
from tests.ui.leaving.household import LAPTOP, PASSPHRASE, STICK, WORDS, Scene, drawn


def test_it_opens_with_what_follows_and_nothing_on_screen(scene: Scene) -> None:
    """If this failed, the page would not say whom it is about, or would begin with a secret."""
    assert scene.page.head.sentence.text() == "Hand over Tomasz’s laptop"
    assert "until 11 May 2028" in scene.page.head.meaning.text()
    assert scene.page.panel.shown() is Side.REST
    assert scene.page.left.rows.rows[WayOut.TICKET].button.hasFocus()
    assert scene.errands.calls == []


@pytest.mark.parametrize(
    ("way", "form"), [(WayOut.FILE, Form.PKCS12), (WayOut.BUNDLE, Form.BUNDLE), (WayOut.ARCHIVE, Form.ARCHIVE)]
)
def test_a_file_is_saved_where_it_was_chosen(scene: Scene, way: WayOut, form: Form) -> None:
    """If this failed, the file would be another one, or elsewhere, or nobody would be told where."""
    heard = QSignalSpy(scene.page.folder_chosen)
    scene.page.left.rows.rows[way].button.click()
    assert scene.errands.asked("export") == [(LAPTOP.serial, form, scene.picked.folder)]
    assert scene.page.panel.shown() is Side.SAVED
    saved = scene.page.panel.saved
    assert (scene.picked.folder / saved.name.text()).is_file()
    assert str(scene.picked.folder) in saved.folder.text()
    assert saved.outcome.text() == "Written and read back."
    assert "laptop" in saved.now.text()
    assert scene.page.left.rows.rows[way].taken
    assert heard.at(0) == [str(scene.picked.folder)]
    scene.page.go(way)
    assert scene.picked.asked[1] == scene.picked.folder


def test_a_stick_is_chosen_written_and_let_go(scene: Scene) -> None:
    """If this failed, the householder would pull a stick that is still being written."""
    scene.page.left.rows.rows[WayOut.STICK].button.click()
    assert scene.page.panel.shown() is Side.STICKS
    row = scene.page.panel.sticks.rows[0]
    assert row.hasFocus()
    assert "QUINCE" in row.text()
    row.click()
    assert scene.errands.asked("export") == [(LAPTOP.serial, Form.PKCS12, STICK.path)]
    outcome = scene.page.panel.saved.outcome
    assert outcome.text() == "Written and read back. Leave QUINCE in while it is unmounted."
    drive, free, by_hand = scene.sticks.let_go_of[0]
    assert drive == STICK
    free()
    assert outcome.text() == "Written, read back and unmounted. You may pull QUINCE now."
    by_hand()
    assert outcome.text() == "Written and read back. Eject QUINCE in the file manager, then pull it."


def test_without_a_stick_it_says_what_to_do(scene: Scene) -> None:
    """If this failed, an empty list would stand there without a way on."""
    scene.sticks.drives = ()
    scene.page.go(WayOut.STICK)
    assert scene.page.panel.sticks.rows == []
    assert scene.page.panel.sticks.again.hasFocus()
    scene.sticks.drives = (STICK,)
    scene.page.panel.sticks.again.click()
    assert len(scene.page.panel.sticks.rows) == 1
    scene.page.panel.sticks.other.click()
    assert scene.page.panel.shown() is Side.SAVED


def test_codes_are_counted_once_they_are_drawn(scene: Scene) -> None:
    """If this failed, nobody would know how many codes are to be scanned."""
    sentence = scene.page.left.rows.rows[WayOut.CODES].sentence
    assert sentence.text().startswith("A handful of codes")
    scene.page.left.rows.rows[WayOut.CODES].button.click()
    assert sentence.text().startswith(f"{len(drawn())} codes")
    assert scene.page.panel.codes.picture.hasFocus()


def test_covering_and_uncovering_comes_back_to_the_same_code(scene: Scene) -> None:
    """If this failed, the person would have to find the place again after saying the passphrase."""
    scene.page.go(WayOut.CODES)
    scene.page.panel.codes.step(2)
    assert scene.page.left.passphrase_button.text() == "Cover the code, show the passphrase"
    scene.page.left.passphrase_button.click()
    assert scene.page.panel.passphrase.words.words() == list(WORDS)
    assert scene.page.left.passphrase_button.text() == "Hide the passphrase, show the code"
    scene.page.panel.passphrase.hide_button.click()
    assert scene.page.panel.shown() is Side.CODES
    assert scene.page.panel.codes.number == 3


def test_the_passphrase_is_copied_by_button_and_by_key(scene: Scene, clipboard: SecretClipboard) -> None:
    """If this failed, Ctrl+C would take a way round the clipboard's rules, or none at all."""
    scene.page.left.passphrase_button.click()
    words = scene.page.panel.passphrase.words
    assert words.hasFocus()
    QTest.keyClick(words, Qt.Key.Key_C, Qt.KeyboardModifier.ControlModifier)
    assert QGuiApplication.clipboard().text() == PASSPHRASE
    clipboard.clear()
    assert QGuiApplication.clipboard().text() == ""
    scene.page.panel.passphrase.copy_button.click()
    assert QGuiApplication.clipboard().text() == PASSPHRASE
    assert clipboard.seconds_left > 0
    labels = scene.page.panel.passphrase.findChildren(QLabel)
    assert not any(label.textInteractionFlags() & Qt.TextInteractionFlag.TextSelectableByMouse for label in labels)


def test_a_failed_rehearsal_says_where_it_stopped(scene: Scene) -> None:
    """If this failed, a bundle would not leave and nobody would know why."""
    stopped = Step("list", passed=False, seen="list 43", code="certificate-revoked", facts={"seen": "list 43"})
    scene.errands.refuse["export"] = RehearsalFailed(Rehearsal("pkcs12", (stopped,)))
    scene.page.go(WayOut.FILE)
    card = scene.page.panel.trouble
    assert scene.page.panel.shown() is Side.TROUBLE
    assert "revocation list" in card.told.text()
    assert "“list”" in card.step.text()
    assert "Nothing left this computer." in card.step.text()
    scene.errands.refuse.clear()
    card.again.click()
    assert scene.page.panel.shown() is Side.SAVED


def test_trouble_with_the_keyring_comes_back_to_what_was_covered(scene: Scene) -> None:
    """If this failed, a locked keyring would cost the codes on screen."""
    scene.page.go(WayOut.CODES)
    scene.errands.refuse["passphrase"] = Unavailable("keyring-locked")
    scene.page.left.passphrase_button.click()
    assert scene.page.panel.shown() is Side.TROUBLE
    assert "keyring" in scene.page.panel.trouble.told.text()
    scene.page.panel.trouble.back.click()
    assert scene.page.panel.shown() is Side.CODES


def test_the_present_step_stands_in_words(scene: Scene) -> None:
    """If this failed, a second of work would look like a window that hangs."""
    scene.errands.hold = True
    scene.page.go(WayOut.CODES)
    scene.errands.step.emit("Rehearsing the codes")
    assert scene.page.panel.shown() is Side.WORKING
    assert scene.page.panel.working.text() == "Rehearsing the codes …"
    scene.page.go(WayOut.FILE)
    assert scene.errands.asked("export") == []
    scene.errands.answer()
    assert scene.page.panel.shown() is Side.CODES


def test_the_key_is_erased_only_after_a_second_press(scene: Scene) -> None:
    """If this failed, a slip of the hand would erase a key that is nowhere else yet."""
    back = QSignalSpy(scene.ways.back)
    end = scene.page.left.has_it
    end.begin.click()
    assert scene.errands.asked("hand_over") == []
    assert "never sent again" in end.sentence.text()
    assert end.not_yet.hasFocus()
    end.not_yet.click()
    assert not end.asking
    end.begin.click()
    end.commit.click()
    assert scene.errands.asked("hand_over") == [LAPTOP.serial]
    assert back.count() >= 1
    assert scene.page.leaving.screen.side is Side.REST


def test_a_key_that_could_not_be_erased_is_told_in_place(scene: Scene) -> None:
    """If this failed, the householder would take an erased key for granted."""
    back = QSignalSpy(scene.ways.back)
    scene.errands.refuse["hand_over"] = Unavailable("disk-full", path="register")
    scene.page.left.has_it.begin.click()
    scene.page.left.has_it.commit.click()
    assert "disk is full" in scene.page.left.has_it.trouble()
    assert back.count() == 0


def test_a_pass_that_waits_no_more_leads_back(scene: Scene) -> None:
    """If this failed, the page would go on offering a bundle whose key is gone."""
    back = QSignalSpy(scene.ways.back)
    seen = scene.errands.last
    assert seen is not None
    scene.errands.now_is(seen)
    assert back.count() == 0
    scene.errands.now_is(replace(seen, passes=tuple(one for one in seen.passes if one != LAPTOP)))
    assert back.count() == 1
    scene.page.open("00")
    assert back.count() == 2


def test_esc_goes_one_step_back_at_a_time(scene: Scene) -> None:
    """If this failed, Esc would throw away the whole page where a small step was meant, or do nothing."""
    back = QSignalSpy(scene.ways.back)
    scene.page.go(WayOut.CODES)
    scene.page.panel.codes.grow(big=True)
    assert scene.page.left.isHidden()
    QTest.keyClick(scene.page.panel.codes.picture, Qt.Key.Key_Escape)
    assert not scene.page.left.isHidden()
    scene.page.left.has_it.ask()
    QTest.keyClick(scene.page.left.has_it.not_yet, Qt.Key.Key_Escape)
    assert not scene.page.left.has_it.asking
    scene.page.left.passphrase_button.click()
    QTest.keyClick(scene.page.panel.passphrase.words, Qt.Key.Key_Escape)
    assert scene.page.panel.shown() is Side.CODES
    assert back.count() == 0
    QTest.keyClick(scene.page.panel.codes.picture, Qt.Key.Key_Escape)
    assert back.count() == 1


def test_a_way_from_the_tray_begins_at_once(scene: Scene) -> None:
    """If this failed, "Codes" in the tray would only open the page."""
    scene.page.open(LAPTOP.serial, "codes")
    assert scene.page.panel.shown() is Side.CODES
    scene.page.open(LAPTOP.serial)
    assert scene.page.panel.shown() is Side.REST


def test_a_drag_from_the_page_hides_the_passphrase(scene: Scene) -> None:
    """If this failed, file and passphrase would be in one picture while the card is dragged."""
    scene.page.left.passphrase_button.click()
    scene.drag.began.emit(LAPTOP.serial)
    assert scene.page.panel.shown() is Side.REST


@pytest.mark.parametrize("kind", KINDS.all, ids=lambda kind: kind.name)
def test_every_kind_hears_who_opens_its_file(kind: DeviceKind) -> None:
    """If this failed, somebody would be told that a device opens a file which it does not."""
    made = replace(LAPTOP, kind=kind.name, container=kind.container)
    assert ways_out.sentence(WayOut.FILE, made, kind).startswith("A PKCS#12 file in the container that ")
    other = OLD if kind.container != OLD else "strong"
    assert ways_out.sentence(WayOut.FILE, replace(made, container=other), kind).endswith("as chosen.")
