"""Lost or stolen while locked, on its way to the gateway, and what else to do."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QScrollArea
from pytestqt.qtbot import QtBot

from hearthkey.core.errors import Unavailable
from hearthkey.core.in_force import GatewayNote, GatewayState, Standing
from hearthkey.core.sentences.aftercare import AFTER_A_LOSS
from hearthkey.core.target import By, Target
from hearthkey.services.snapshot import NO_GATEWAY, Snapshot
from hearthkey.ui.lost.on_the_way import OnTheWay
from tests.ui.overlay.household import PASSPHRASE
from tests.ui.overlay.room import Open, Room
from tests.ui.practice import NOW, PASSES, snapshot

TARGET = Target(By.SSH, "door", host="gateway.quince.example")


def seen(standing: Standing, number: int, *, locked: bool = True) -> Snapshot:
    """A household whose gateway holds a list of that number."""
    note = GatewayNote(looked=NOW, set_id="set", list_number=number, list_until=NOW)
    here = snapshot(locked=locked)
    assert here.household is not None
    household = replace(here.household, practice=False)
    return replace(
        here, household=household, stoppable_locked=True, gateway_state=GatewayState(standing, TARGET, note, 43)
    )


def way(here: Room) -> OnTheWay:
    """The line about the gateway."""
    return here.sheet.body.outcome.way


def test_locked_with_spare_lists_two_letters_and_enter_are_all(room: Open) -> None:
    """Broken if it fails: whoever has the phone gets in while somebody looks for the paper with the words."""
    here = room(replace(snapshot(locked=True), stoppable_locked=True))
    here.type("in")
    here.press(Qt.Key.Key_Return)
    assert here.errands.asked("stop_by_spare") == [PASSES[0].identity]
    assert not here.sheet.body.asking.gate.isVisible()
    assert here.voice == "Ines’s phone was stopped with list 43."


def test_the_sheet_says_that_no_passphrase_is_needed(room: Open) -> None:
    """Broken if it fails: somebody in a hurry goes looking for words that are not needed."""
    here = room(replace(snapshot(locked=True), stoppable_locked=True))
    here.type("in")
    asking = here.sheet.body.asking
    assert asking.findChildren(type(asking.voice))
    assert "No passphrase: a spare stop list lies ready." in asking._aside.text()  # noqa: SLF001 - a label has no other door


def test_others_who_would_stop_are_named_and_there_is_a_choice(room: Open) -> None:
    """Broken if it fails: a second loss takes a third person’s access without a word."""
    here = room(replace(snapshot(locked=True), stoppable_locked=True))
    here.errands.besides = frozenset({PASSES[1].identity})
    here.type("in")
    here.sheet.body.asking.losing.preview()
    assert here.voice.startswith("Ines’s phone stops getting in, and with it Ines’s tablet")
    assert here.sheet.body.asking.other.isVisible()
    here.sheet.body.asking.other.click()
    assert here.sheet.body.asking.gate.isVisible()
    QTest.keyClicks(here.sheet.body.asking.gate.row.line, PASSPHRASE)
    here.press(Qt.Key.Key_Return)
    assert here.errands.asked("stop") == [PASSES[0].identity]
    assert here.errands.asked("stop_by_spare") == []


def test_without_a_narrow_list_everybody_can_be_stopped_for_now(room: Open) -> None:
    """Broken if it fails: no passphrase at hand means no way to stop anything."""
    here = room(snapshot(locked=True))
    here.errands.everybody = True
    here.type("in")
    here.sheet.body.asking.losing.preview()
    other = here.sheet.body.asking.other
    assert other.text() == "Everybody, for now"
    other.click()
    assert here.errands.asked("stop_by_spare") == [PASSES[0].identity]
    assert not here.sheet.body.outcome.undo_button.isVisible()


def test_in_force_is_said_only_of_what_was_read_back(room: Open) -> None:
    """Broken if it fails: the sheet promises that a thief is out while he is not."""
    here = room(seen(Standing.IN_FORCE, 42))
    here.type("in")
    here.press(Qt.Key.Key_Return)
    assert way(here).line.text().startswith("Not in force yet.")
    here.errands.now_is(seen(Standing.IN_FORCE, 43))
    assert way(here).line.text().startswith("In force. The gateway was read back at")
    assert not way(here).again.isVisible()
    here.errands.now_is(seen(Standing.UNKNOWN, 43))
    assert way(here).line.text().startswith("In force.")


def test_a_gateway_out_of_reach_is_said_with_what_can_be_done(room: Open, tmp_path: Path) -> None:
    """Broken if it fails: the householder believes it is done, or has nothing to do but wait."""
    here = room(seen(Standing.WAITING, 42))
    here.type("in")
    here.press(Qt.Key.Key_Return)
    here.errands.visit_failed.emit(Unavailable("gateway-read-back", name="list.crl"))
    told = way(here).line.text()
    assert told.startswith("Not in force yet. ")
    assert told.endswith("It keeps trying.")
    way(here).again.click()
    assert here.errands.asked("deliver_list") == [None]
    way(here)._pick = lambda _parent, _title, _start, then: then(tmp_path)  # noqa: SLF001 - the desktop's own dialog
    way(here).stick.click()
    assert here.errands.asked("publish_list") == [tmp_path]
    assert str(tmp_path) in way(here).line.text()


def test_without_a_place_for_the_gateway_s_files_it_says_to_carry_them(room: Open) -> None:
    """Broken if it fails: the list lies on the laptop, and nobody knows that somebody has to carry it."""
    here = room(replace(seen(Standing.NO_TARGET, 42), gateway_state=NO_GATEWAY))
    here.type("in")
    here.press(Qt.Key.Key_Return)
    assert way(here).line.text().startswith("Carry the list to the gateway now.")
    assert not way(here).again.isVisible()
    assert way(here).stick.isVisible()


def test_what_else_to_do_is_ticked_and_remembered(room: Open) -> None:
    """Broken if it fails: on the second day nobody knows whether the bank was told."""
    here = room(replace(snapshot(locked=True), stoppable_locked=True))
    here.errands.ticked = frozenset({"sim"})
    here.type("in")
    here.press(Qt.Key.Key_Return)
    ticks = here.sheet.body.outcome.aftercare.ticks
    assert [step.key for step in AFTER_A_LOSS] == list(ticks)
    assert [key for key, tick in ticks.items() if tick.isChecked()] == ["sim"]
    QTest.keyClick(ticks["mail"], Qt.Key.Key_Space)
    assert here.errands.asked("tick") == [(PASSES[0].serial, "mail", True)]
    assert all(tick.accessibleName() for tick in ticks.values())


@pytest.mark.parametrize(("height", "scrolls"), [(800, False), (640, False), (480, True)])
def test_what_there_is_room_for_is_whole(room: Open, qtbot: QtBot, height: int, scrolls: bool) -> None:  # noqa: FBT001 - a case
    """Broken if it fails: a scroll bar that nothing needs takes the room that makes it needed."""
    here = room(replace(snapshot(locked=True), stoppable_locked=True), (1280, height))
    here.type("od")
    body = here.sheet.body
    qtbot.waitUntil(lambda: body.asking.losing.plan is not None)
    qtbot.wait(50)  # the rows find their place
    here.press(Qt.Key.Key_Return)
    qtbot.wait(50)  # and so does what happened
    (area,) = here.sheet.findChildren(QScrollArea)
    assert area.verticalScrollBar().isVisible() is scrolls
    assert body.height() >= body.heightForWidth(body.width())
