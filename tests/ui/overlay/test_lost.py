"""Lost or stolen: the sheet, by keyboard."""

from __future__ import annotations

from datetime import timedelta

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from hearthkey.core.errors import Refused
from hearthkey.core.passes import State
from tests.ui.overlay.household import PASSPHRASE
from tests.ui.overlay.room import Open
from tests.ui.practice import NOW, PASSES, made_pass, snapshot


def test_two_letters_and_enter_stop_a_phone(room: Open) -> None:
    """Broken if it fails: the ten-second way takes longer, or asks something."""
    here = room()
    here.type("in")
    here.press(Qt.Key.Key_Return)
    assert here.errands.asked("stop") == [PASSES[0].identity]
    assert here.voice == "Ines’s phone was stopped with list 43."
    assert here.sheet.body.outcome.way.line.text().startswith("Nothing of the practice household is sent.")
    assert any("was stopped with list 43" in words for words in here.spoken)
    assert here.window.focusWidget() is here.sheet.body.outcome.close_button
    here.press(Qt.Key.Key_Return)
    assert not here.sheet.isVisible()
    assert here.behind.hasFocus()


def test_down_chooses_another_row_and_says_so(room: Open) -> None:
    """Broken if it fails: only the first match can be stopped, or somebody without eyes does not know which."""
    here = room()
    here.type("in")
    here.press(Qt.Key.Key_Down)
    assert here.spoken[-1] == "Ines’s tablet: 3 weeks left, then it ends, 2 of 4"
    here.press(Qt.Key.Key_Return)
    assert here.errands.asked("stop") == [PASSES[1].identity]


def test_the_sentence_is_about_the_row(room: Open, qtbot: QtBot) -> None:
    """Broken if it fails: the sentence names one device and the button stops another."""
    here = room()
    here.type("in")
    qtbot.waitUntil(lambda: here.voice.startswith("Ines’s phone stops getting in once the gateway holds list 43."))
    assert here.sheet.body.asking.commit.accessibleName() == "Stop Ines’s phone"
    here.press(Qt.Key.Key_Down)
    qtbot.waitUntil(lambda: here.voice.startswith("Ines’s tablet stops"))
    assert here.sheet.body.asking.commit.accessibleName() == "Stop Ines’s tablet"


def test_enter_before_the_plan_has_come_stops_as_soon_as_it_comes(room: Open) -> None:
    """Broken if it fails: who is quicker than the household has to press Enter twice."""
    here = room()
    here.errands.hold = True
    here.type("in")
    here.press(Qt.Key.Key_Return)
    assert here.errands.asked("stop") == []
    here.errands.hold = False
    here.errands.answer()
    assert here.errands.asked("stop") == [PASSES[0].identity]


def test_enter_before_the_plan_means_the_row_of_that_moment_alone(room: Open) -> None:
    """Broken if it fails: Enter, then another letter, stops a device that was chosen by the letter."""
    here = room()
    here.errands.hold = True
    here.type("in")
    here.press(Qt.Key.Key_Return)
    here.press(Qt.Key.Key_Down)
    here.errands.hold = False
    here.errands.answer()
    assert here.errands.asked("stop") == []


def test_enter_pressed_twice_stops_once(room: Open) -> None:
    """Broken if it fails: an impatient finger signs two lists."""
    here = room()
    here.type("in")
    here.errands.hold = True
    here.press(Qt.Key.Key_Return)
    here.errands.answer()
    here.press(Qt.Key.Key_Return)
    here.press(Qt.Key.Key_Return)
    assert len(here.errands.asked("stop")) == 1


def test_locked_it_asks_in_place_and_goes_on_by_itself(room: Open) -> None:
    """Broken if it fails: with the household locked a lost phone cannot be stopped, or only after a detour."""
    here = room(snapshot(locked=True))
    here.type("in")
    here.press(Qt.Key.Key_Return)
    asking = here.sheet.body.asking
    assert asking.gate.isVisible()
    assert here.errands.asked("stop") == []
    assert here.window.focusWidget() is asking.gate.row.line
    QTest.keyClicks(asking.gate.row.line, PASSPHRASE)
    here.press(Qt.Key.Key_Return)
    assert here.errands.asked("stop") == [PASSES[0].identity]
    assert here.voice.startswith("Ines’s phone was stopped")


def test_a_wrong_passphrase_stops_nothing_and_may_be_typed_again(room: Open) -> None:
    """Broken if it fails: a slip of the fingers closes the way."""
    here = room(snapshot(locked=True))
    here.type("in")
    here.press(Qt.Key.Key_Return)
    row = here.sheet.body.asking.gate.row
    QTest.keyClicks(row.line, "plum")
    here.press(Qt.Key.Key_Return)
    assert row.isVisible()
    assert here.errands.asked("stop") == []
    row.line.clear()
    QTest.keyClicks(row.line, PASSPHRASE)
    here.press(Qt.Key.Key_Return)
    assert here.errands.asked("stop") == [PASSES[0].identity]


def test_locked_since_the_last_look_asks_too(room: Open) -> None:
    """Broken if it fails: after ten idle minutes the sheet says "locked" and nothing else."""
    here = room()
    here.errands.refuse["stop"] = Refused("household-locked")
    here.type("in")
    here.press(Qt.Key.Key_Return)
    assert here.sheet.body.asking.gate.isVisible()
    del here.errands.refuse["stop"]
    QTest.keyClicks(here.sheet.body.asking.gate.row.line, PASSPHRASE)
    here.press(Qt.Key.Key_Return)
    assert len(here.errands.asked("stop")) == 2


def test_another_row_forgets_the_question_for_the_passphrase(room: Open) -> None:
    """Broken if it fails: the passphrase is asked for one device and stops another."""
    here = room(snapshot(locked=True))
    here.type("in")
    here.press(Qt.Key.Key_Return)
    here.field.setFocus()
    here.press(Qt.Key.Key_Down)
    assert not here.sheet.body.asking.gate.isVisible()


def test_no_match_says_so(room: Open) -> None:
    """Broken if it fails: an empty sheet leaves somebody waiting."""
    here = room()
    here.type("zz")
    assert here.voice == "No person and no device has these letters."
    assert here.sheet.body.asking.field.count() == "0 of 9 devices"
    here.press(Qt.Key.Key_Return)
    assert here.errands.asked("stop") == []


def test_many_matches_ask_for_another_letter(room: Open) -> None:
    """Broken if it fails: what is not among the first six seems not to exist."""
    many = tuple(
        made_pass("Ines", f"phone {n}", made=NOW, ends=NOW + timedelta(days=99), code=f"c{n}") for n in range(40)
    )
    here = room(snapshot(passes=many))
    here.type("in")
    assert here.sheet.body.asking.field.count() == "6 of 40; one more letter"
    assert len(here.names()) == 6


def test_nobody_has_a_pass_yet(room: Open) -> None:
    """Broken if it fails: an empty household offers a search that can find nothing."""
    here = room(snapshot(passes=()))
    here.ways.lost.emit("")
    assert here.voice == "Nobody has a pass yet, so nothing can be lost."


def test_a_grey_row_says_why_and_does_nothing(room: Open) -> None:
    """Broken if it fails: Enter on a revoked device ends in an error."""
    here = room()
    here.type("ines old")
    assert here.voice == "Ines’s old phone gets in no more. There is nothing to stop."
    assert not here.sheet.body.asking.commit.isVisible()
    here.press(Qt.Key.Key_Return)
    assert here.errands.calls == []


def test_a_second_copy_says_where_to_stop(room: Open) -> None:
    """Broken if it fails: a window that only looks promises to stop."""
    here = room(snapshot(read_only=True))
    here.type("in")
    assert here.voice == "Another copy of the app has this household open. Stop it there."
    here.press(Qt.Key.Key_Return)
    assert here.errands.asked("stop") == []


@pytest.mark.parametrize("by_key", [True, False])
def test_undo_lets_it_back_in(room: Open, *, by_key: bool) -> None:
    """Broken if it fails: a wrong stop cannot be taken back on the spot."""
    here = room()
    here.type("in")
    here.press(Qt.Key.Key_Return)
    if by_key:
        here.press(Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    else:
        QTest.mouseClick(here.sheet.body.outcome.undo_button, Qt.MouseButton.LeftButton)
    assert here.errands.asked("let_in") == [PASSES[0].identity]
    assert here.voice == "Ines’s phone was let back in with list 44. It gets in once the gateway holds that list."
    assert not here.sheet.body.outcome.undo_button.isVisible()
    assert here.errands.last is not None
    assert here.errands.last.passes[0].state(NOW) is State.IN_USE


def test_undo_with_the_household_locked_asks(room: Open) -> None:
    """Broken if it fails: locked in between, a wrong stop stays."""
    here = room()
    here.type("in")
    here.press(Qt.Key.Key_Return)
    here.errands.refuse["let_in"] = Refused("household-locked")
    here.sheet.body.outcome.undo()
    gate = here.sheet.body.outcome.gate
    assert gate.isVisible()
    del here.errands.refuse["let_in"]
    QTest.keyClicks(gate.row.line, PASSPHRASE)
    QTest.keyClick(gate.row.line, Qt.Key.Key_Return)
    assert here.voice.startswith("Ines’s phone was let back in")
