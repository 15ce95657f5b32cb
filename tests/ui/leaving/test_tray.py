"""The tray: a card for every bundle that waits, and every way by mouse and by keys."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QSignalSpy, QTest
from PySide6.QtWidgets import QMenu
from pytestqt.qtbot import QtBot

from hearthkey.core.revocation import Reason
from hearthkey.ui.pages.ways_out import WayOut, fitting
from hearthkey.ui.runtime import Runtime
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.tray import Tray
from hearthkey.ui.ways import Ways
from tests.fakes.kinds import KINDS
from tests.ui.leaving.household import LAPTOP, FakeErrands, waiting
from tests.ui.practice import NOW, PASSES, snapshot


class Band:
    """A tray in the test's hands."""

    def __init__(self, qtbot: QtBot, theme: Theme, folder: Path, errands: FakeErrands | None = None) -> None:
        self.errands = errands or FakeErrands()
        self.ways = Ways()
        self.runtime = Runtime(folder)
        self.tray = Tray(theme, self.errands, self.ways, self.runtime)
        qtbot.addWidget(self.tray)
        self.tray.resize(1280, 66)
        self.tray.show()
        self.tray.activateWindow()
        qtbot.waitUntil(lambda: self.tray.isActiveWindow() or not self.tray.cards(), timeout=5000)


def test_who_waits_has_a_card_and_nobody_else(qtbot: QtBot, theme: Theme, tmp_path: Path) -> None:
    """If this failed, a bundle would be nowhere to be found, or a stopped pass could be handed over."""
    band = Band(qtbot, theme, tmp_path)
    assert [card.one.title for card in band.tray.cards()] == ["Tomasz’s laptop"]
    stopped = tuple(replace(one, reason=Reason.CERTIFICATE_HOLD, since=NOW) if one == LAPTOP else one for one in PASSES)
    heard = QSignalSpy(band.tray.waits)
    band.errands.now_is(snapshot(passes=stopped))
    assert band.tray.cards() == []
    assert heard.at(0) == [0]
    assert not band.tray.isVisible()


def test_a_new_bundle_leaves_the_other_cards_and_the_focus_alone(qtbot: QtBot, theme: Theme, tmp_path: Path) -> None:
    """If this failed, a card would be taken away under the mouse or the focus would be lost at every look."""
    band = Band(qtbot, theme, tmp_path, FakeErrands(waiting(2)))
    first = band.tray.cards()[0]
    first.setFocus()
    band.errands.now_is(waiting(3))
    assert band.tray.cards()[0] is first
    assert first.hasFocus()
    assert len(band.tray.cards()) == 3


def test_a_handed_over_bundle_takes_its_file_with_it(qtbot: QtBot, theme: Theme, tmp_path: Path) -> None:
    """If this failed, a key that exists on its device alone would still lie in the runtime folder."""
    band = Band(qtbot, theme, tmp_path, FakeErrands(waiting(2)))
    gone, stays = (card.one.serial for card in band.tray.cards())
    for serial in (gone, stays):
        (band.runtime.path_for(serial) / "reader.p12").write_bytes(b"x")
    band.errands.hand_over(gone, band.tray, None, None)
    assert band.runtime.file_of(gone) is None
    assert band.runtime.file_of(stays) is not None
    band.runtime.tidy()


def test_arrows_go_along_and_enter_goes_on(qtbot: QtBot, theme: Theme, tmp_path: Path) -> None:
    """If this failed, somebody without a mouse could not get at the second bundle."""
    band = Band(qtbot, theme, tmp_path, FakeErrands(waiting(3)))
    cards = band.tray.cards()
    cards[0].setFocus()
    QTest.keyClick(cards[0], Qt.Key.Key_Right)
    assert band.tray.chosen() == cards[1].one
    assert cards[1].hasFocus()
    QTest.keyClick(cards[1], Qt.Key.Key_Right)
    QTest.keyClick(cards[2], Qt.Key.Key_Right)
    assert band.tray.chosen() == cards[2].one
    heard = QSignalSpy(band.ways.hand_over)
    QTest.keyClick(cards[2], Qt.Key.Key_Return)
    assert heard.at(0) == [cards[2].one.serial]


def test_every_way_has_a_button_and_a_place_in_the_menu(qtbot: QtBot, theme: Theme, tmp_path: Path) -> None:
    """If this failed, a way out would exist by drag only."""
    band = Band(qtbot, theme, tmp_path)
    heard = QSignalSpy(band.ways.hand_over_by)
    for button in band.tray.ways.values():
        button.click()
    assert [heard.at(number) for number in range(heard.count())] == [
        [LAPTOP.serial, way] for way in ("ticket", "stick", "file", "archive")
    ]
    card = band.tray.cards()[0]
    card.menu_wanted.emit(card.mapToGlobal(card.rect().bottomLeft()))
    menu = band.tray.findChild(QMenu)
    assert menu is not None
    acts = [action for action in menu.actions() if not action.isSeparator() and action.menu() is None]
    assert len(acts) == 1 + len(fitting(KINDS.of(LAPTOP.kind))) == len(WayOut) - 1  # no profile, no script, but PEM
    acts[-1].trigger()
    assert heard.at(4) == [LAPTOP.serial, "codes"]
    menu.close()


def test_a_click_chooses_whose_ways_are_offered(qtbot: QtBot, theme: Theme, tmp_path: Path) -> None:
    """If this failed, the button beside the cards could send off another device's bundle."""
    band = Band(qtbot, theme, tmp_path, FakeErrands(waiting(2)))
    first, second = band.tray.cards()
    for card in (second, first):
        QTest.mouseClick(card, Qt.MouseButton.LeftButton)
        assert band.tray.chosen() == card.one
        assert card.chosen
        assert band.tray.hand_over.accessibleName().endswith(card.one.title)
    assert band.errands.calls == []


def test_every_stop_of_the_tab_key_has_a_name(qtbot: QtBot, theme: Theme, tmp_path: Path) -> None:
    """If this failed, a screen reader would say "button" and no more."""
    band = Band(qtbot, theme, tmp_path, FakeErrands(waiting(9)))
    control, named = band.tray.nextInFocusChain(), 0
    while control is not None and control is not band.tray:
        if band.tray.isAncestorOf(control) and control.focusPolicy() & Qt.FocusPolicy.TabFocus:
            assert control.accessibleName(), control
            named += 1
        control = control.nextInFocusChain()
    assert named >= 9 + 5


@pytest.mark.parametrize(("wide", "scale"), [(1280, 1.0), (1024, 1.0), (640, 1.0), (1280, 2.0)])
def test_nothing_lies_over_anything(qtbot: QtBot, theme: Theme, tmp_path: Path, wide: int, scale: float) -> None:
    """If this failed, a button would be cut off or lie on a card in a narrow window or with large type."""
    theme.choose("paper", scale)
    band = Band(qtbot, theme, tmp_path, FakeErrands(waiting(9)))
    band.tray.resize(wide, band.tray.height())

    def stands() -> bool:
        shown = [band.tray.hand_over, *(button for button in band.tray.ways.values() if button.isVisible())]
        boxes = [button.geometry() for button in shown]
        whole = all(box.width() >= one.sizeHint().width() for box, one in zip(boxes, shown, strict=True))
        apart = not any(one.intersects(other) for one in boxes for other in boxes if one is not other)
        return whole and apart and all(box.right() < wide for box in boxes)

    qtbot.waitUntil(stands, timeout=5000)
    assert band.tray.width() == wide
    assert band.tray.height() == theme.px(66)
